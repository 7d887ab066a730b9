package rungwork.study;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.study.Search.Found;
import rungwork.study.Study.Progress;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Ladder;

/** Assesses ladders from the lightest on, block by block, until enough are found. */
final class LightestFirst {
  /**
   * Ladders assessed between two looks at whether enough are found; fixed, so that the answer does
   * not depend on the number of cores.
   */
  private static final int BLOCK = 16;

  private final List<Survey.Variant<Ladder>> variants;
  private final Function<Ladder, Assessment> assess;
  private final Demands demands;
  private final Ladder[] ladders;
  private final String[] refusals;
  private final List<Found> found = new ArrayList<>();
  private final Map<String, Integer> ruledOut = new LinkedHashMap<>();
  private int assessed;
  private boolean interrupted;

  /**
   * Ladders of which nothing is known yet.
   *
   * @param variants the ladders
   * @param assess assesses one; used by several threads at a time
   * @param demands what one must meet
   */
  LightestFirst(
      List<Survey.Variant<Ladder>> variants, Function<Ladder, Assessment> assess, Demands demands) {
    this.variants = List.copyOf(variants);
    this.assess = assess;
    this.demands = demands;
    ladders = new Ladder[variants.size()];
    refusals = new String[variants.size()];
  }

  /** Goes on until so many are found, all are assessed, or the thread that waits is interrupted. */
  void until(int enough, Progress progress) {
    demands.limits().forEach(limit -> ruledOut.put(limit.words(), 0));
    Work.each(ladders.length, Work.cores(), this::build, Progress.NONE);
    int[] order = lightestFirst();
    for (int from = 0;
        from < order.length && found.size() < enough && !interrupted;
        from += BLOCK) {
      int[] block = Arrays.copyOfRange(order, from, Math.min(order.length, from + BLOCK));
      block(block, enough, of(order.length, from, progress));
    }
    progress.at(assessed, assessed, Duration.ZERO);
  }

  private void build(int index) {
    try {
      ladders[index] = variants.get(index).made().get();
    } catch (ModelException refusal) {
      refusals[index] = refusal.getMessage();
    }
  }

  private int[] lightestFirst() {
    return IntStream.range(0, ladders.length)
        .filter(i -> ladders[i] != null)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> ladders[i].mass()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** The progress of a block as part of the whole. */
  private static Progress of(int whole, int before, Progress progress) {
    return (done, total, left) ->
        progress.at(
            before + done,
            whole,
            left.multipliedBy(Math.max(1, (whole - before) / Math.max(1, total))));
  }

  private void block(int[] order, int enough, Progress progress) {
    Assessment[] made = new Assessment[order.length];
    BitSet reached =
        Work.each(
            order.length, Work.cores(), i -> assess(order[i], one -> made[i] = one), progress);
    interrupted = reached.cardinality() < order.length;
    for (int i = 0; i < reached.nextClearBit(0); i++) {
      assessed++;
      if (made[i] != null && meetsAll(made[i]) && found.size() < enough) {
        found.add(new Found(variants.get(order[i]).name(), made[i]));
      }
    }
  }

  private void assess(int index, Consumer<Assessment> made) {
    try {
      made.accept(assess.apply(ladders[index]));
    } catch (ModelException | SolveException refusal) {
      refusals[index] = refusal.getMessage();
    }
  }

  /** Whether nothing rules it out; what does is counted. */
  private boolean meetsAll(Assessment assessment) {
    List<String> objections = demands.objections(assessment);
    objections.forEach(objection -> ruledOut.merge(objection, 1, Integer::sum));
    return objections.isEmpty();
  }

  List<Found> found() {
    return List.copyOf(found);
  }

  /** How many ladders were assessed. */
  int assessed() {
    return assessed;
  }

  /** How many of them each reason ruled out. */
  Map<String, Integer> ruledOut() {
    return new LinkedHashMap<>(ruledOut);
  }

  /** Ladders that could not be modelled or solved, each with the reason, in the order given. */
  Map<String, String> refused() {
    Map<String, String> refused = new LinkedHashMap<>();
    for (int i = 0; i < refusals.length; i++) {
      if (refusals[i] != null) {
        refused.put(variants.get(i).name(), refusals[i]);
      }
    }
    return refused;
  }

  /** Whether it stopped before enough were found. */
  boolean interrupted() {
    return interrupted;
  }
}
