package rungwork.study;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.study.Study.Progress;

/**
 * Numbers and words of many variants, one of each for every measure. A variant that could not be
 * modelled has its refusal instead; one that was not reached has nothing.
 */
final class Answers {
  private final List<Asked> asked;
  private final double[][] numbers;
  private final String[][] words;
  private final String[] refusals;
  private BitSet reached = new BitSet();

  private Answers(List<Asked> asked, int count) {
    this.asked = asked;
    numbers = new double[asked.size()][count];
    words = new String[asked.size()][count];
    refusals = new String[count];
  }

  /**
   * Asks all variants, on several threads.
   *
   * @param count how many
   * @param variant makes one, by its number
   * @param measures what is asked
   * @param run on what it runs
   */
  static <D> Answers of(int count, IntFunction<D> variant, List<Measure<D>> measures, Run run) {
    Answers answers = new Answers(measures.stream().map(Measure::asked).toList(), count);
    answers.reached =
        Work.each(count, run.threads(), i -> answers.ask(i, variant, measures), run.progress());
    return answers;
  }

  private <D> void ask(int index, IntFunction<D> variant, List<Measure<D>> measures) {
    try {
      D made = variant.apply(index);
      for (int m = 0; m < numbers.length; m++) {
        numbers[m][index] = measures.get(m).of().applyAsDouble(made);
        words[m][index] = measures.get(m).words().apply(made).intern();
      }
    } catch (ModelException | SolveException refusal) {
      refusals[index] = refusal.getMessage();
    }
  }

  /** How many variants there are, reached or not. */
  int count() {
    return refusals.length;
  }

  /** How many were reached. */
  int reached() {
    return reached.cardinality();
  }

  /** Whether a variant was reached and could be modelled. */
  boolean answered(int variant) {
    return reached.get(variant) && refusals[variant] == null;
  }

  /** Why a variant has no answer; empty when it has one. */
  String refusal(int variant) {
    if (!reached.get(variant)) {
      return "not reached: the study was interrupted";
    }
    return refusals[variant] == null ? "" : refusals[variant];
  }

  /** Each refusal once, with how many variants met it. */
  Map<String, Integer> refusals() {
    Map<String, Integer> met = new LinkedHashMap<>();
    IntStream.range(0, count())
        .filter(i -> reached.get(i) && !answered(i))
        .forEach(i -> met.merge(refusals[i], 1, Integer::sum));
    return met;
  }

  /** The measures. */
  List<Asked> asked() {
    return asked;
  }

  /** A measure's place by its name. */
  int measure(String name) {
    return IntStream.range(0, asked.size())
        .filter(i -> asked.get(i).name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "there is no measure named %s; there are %s"
                        .formatted(
                            name, String.join(", ", asked.stream().map(Asked::name).toList()))));
  }

  /** A number; not a number where a variant has none. */
  double number(int measure, int variant) {
    return answered(variant) ? numbers[measure][variant] : Double.NaN;
  }

  /** The words that go with a number; empty where a variant has none. */
  String words(int measure, int variant) {
    return answered(variant) ? words[measure][variant] : "";
  }

  /** All numbers of a measure, of the variants that have one. */
  double[] numbers(int measure) {
    return IntStream.range(0, count())
        .mapToDouble(i -> number(measure, i))
        .filter(value -> !Double.isNaN(value))
        .toArray();
  }

  /**
   * On what a study runs.
   *
   * @param threads how many at a time, at least 1
   * @param progress is told how far it has come
   */
  record Run(int threads, Progress progress) {
    /** All cores, telling nobody. */
    static final Run ALL_CORES = new Run(Work.cores(), Progress.NONE);

    Run {
      if (threads < 1) {
        throw new ModelException("a study runs on 1 thread at least, not on " + threads);
      }
    }
  }
}
