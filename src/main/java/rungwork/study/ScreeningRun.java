package rungwork.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.study.Screening.Field;
import rungwork.study.Screening.Limits;
import rungwork.study.Screening.Row;
import rungwork.study.Study.Progress;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Assessment.Screened;
import rungwork.vehicle.Assessment.Stocks;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/**
 * Goes through all combinations, block by block, on some threads: each with rigid joints, then what
 * passes and is light enough to be kept with every assumption about them.
 */
final class ScreeningRun {
  /** Combinations between two looks for an interruption. */
  private static final int BLOCK = 128;

  private final Field field;
  private final Limits limits;
  private final Supplier<Benches> benches;
  private final Found all = new Found();

  /** What is heavier is no longer kept [kg]. */
  private volatile double heaviest = Double.POSITIVE_INFINITY;

  /** What a thread screens with: rigid joints alone, and every assumption about them. */
  private record Benches(Assessment.Screening rigid, Assessment.Screening released) {}

  ScreeningRun(Field field, Limits limits) {
    this.field = field;
    this.limits = limits;
    Ladder first = field.stocks(0).on(field.ladder());
    Supplier<Assessment.Screening> rigid = bench(first, List.of(Joints.RIGID));
    Supplier<Assessment.Screening> released = bench(first, first.joints());
    benches = () -> new Benches(rigid.get(), released.get());
  }

  private Supplier<Assessment.Screening> bench(Ladder first, List<Joints> joints) {
    return Assessment.screening(field.vehicle(), first, field.events(), joints);
  }

  /** What is found; of fewer than all combinations when it is interrupted. */
  Found run(Answers.Run run) {
    int count = field.count();
    int blocks = (count + BLOCK - 1) / BLOCK;
    ThreadLocal<Benches> bench = ThreadLocal.withInitial(benches);
    Progress inBlocks =
        (done, total, left) ->
            run.progress().at((int) Math.min(count, (long) done * BLOCK), count, left);
    Work.each(blocks, run.threads(), block -> add(block(block, bench.get())), inBlocks);
    return all;
  }

  private synchronized void add(Found more) {
    all.add(more);
    heaviest = all.heaviest();
  }

  private Found block(int block, Benches bench) {
    Found found = new Found();
    int end = (int) Math.min(field.count(), (block + 1L) * BLOCK);
    for (int i = block * BLOCK; i < end; i++) {
      try {
        judge(i, bench, found);
      } catch (ModelException | SolveException refusal) {
        found.refuse(refusal.getMessage());
      }
      found.screened++;
    }
    return found;
  }

  private void judge(int number, Benches bench, Found found) {
    Stocks stocks = field.stocks(number);
    Screened rigid = bench.rigid.of(stocks);
    List<String> objections = objections(rigid);
    if (objections.isEmpty()
        && limits.stiffness() > 0
        && !(bench.rigid.torsionalStiffness(stocks) >= limits.stiffness())) {
      objections = List.of("torsional stiffness");
    }
    objections.forEach(found::ruleOut);
    if (objections.isEmpty()) {
      found.passed++;
      if (rigid.mass() <= heaviest) {
        release(number, bench.released.of(stocks, limits.utilisation()), found);
      }
    }
  }

  /** Keeps what passes with every assumption about the joints too. */
  private void release(int number, Screened numbers, Found found) {
    if (objections(numbers).isEmpty()) {
      found.keep(new Row(number, "", numbers));
    }
  }

  private List<String> objections(Screened numbers) {
    List<String> objections = new ArrayList<>();
    if (numbers.utilisation() > limits.utilisation()) {
      objections.add(numbers.what() + " of " + numbers.part());
    }
    for (String part : limits.parts()) {
      if (numbers.notChecked().stream().anyMatch(line -> line.startsWith(part + ": "))) {
        objections.add("the " + part + " is not wholly checked");
      }
    }
    return objections;
  }
}
