package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Load cases put together from basic ones, again and again with other factors. What each number of
 * a load case is the sum of is worked out once. This is one of the room's inner loops: a number of
 * all cases of a block is summed in eight locals and written once.
 */
final class LoadCombination {
  private static final int CASES = SweepLoads.CASES;

  /** A number that some basic case has: its array, its row there, and where its terms begin. */
  private final int[] array;

  private final int[] row;
  private final int[] start;

  /** Terms of all numbers one after another: which basic case, and its number. */
  private final int[] basicOf;

  private final double[] valueOf;

  private final double[] sizes;
  private final double[][] resultants;

  /**
   * Takes basic load cases.
   *
   * @param basics their numbers
   */
  LoadCombination(SweepLoads basics) {
    sizes = basics.sizes;
    resultants = basics.resultants;
    Terms terms = new Terms();
    for (int index = 0; index < basics.arrays(); index++) {
      for (int i = 0; i < basics.rows(index); i++) {
        terms.add(basics, index, i);
      }
    }
    array = terms.array.stream().mapToInt(Integer::intValue).toArray();
    row = terms.row.stream().mapToInt(Integer::intValue).toArray();
    terms.start.add(terms.basicOf.size());
    start = terms.start.stream().mapToInt(Integer::intValue).toArray();
    basicOf = terms.basicOf.stream().mapToInt(Integer::intValue).toArray();
    valueOf = terms.valueOf.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** What is found while the numbers are gone through. */
  private static final class Terms {
    private final List<Integer> array = new ArrayList<>();
    private final List<Integer> row = new ArrayList<>();
    private final List<Integer> start = new ArrayList<>();
    private final List<Integer> basicOf = new ArrayList<>();
    private final List<Double> valueOf = new ArrayList<>();

    private void add(SweepLoads basics, int index, int i) {
      int before = basicOf.size();
      for (int basic = 0; basic < basics.cases; basic++) {
        double value = basics.value(index, i, basic);
        if (value != 0) {
          basicOf.add(basic);
          valueOf.add(value);
        }
      }
      if (basicOf.size() > before) {
        array.add(index);
        row.add(i);
        start.add(before);
      }
    }
  }

  /** How many basic load cases there are. */
  int size() {
    return sizes.length;
  }

  /**
   * Puts all load cases together anew.
   *
   * @param factors how many times each basic case acts in each load case, a basic case's factors in
   *     all load cases lying together, filled up to whole blocks
   * @param into replaced
   */
  void apply(double[] factors, SweepLoads into) {
    for (int target = 0; target < array.length; target++) {
      double[] numbers = into.array(array[target]);
      for (int block = 0; block < into.blocks(); block++) {
        int to = into.place(array[target], row[target], block);
        sum(target, factors, block * CASES, into.width, numbers, to);
      }
    }
    for (int c = 0; c < into.cases; c++) {
      whole(factors, c, into);
    }
  }

  private void sum(int target, double[] factors, int first, int width, double[] numbers, int to) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    double s4 = 0;
    double s5 = 0;
    double s6 = 0;
    double s7 = 0;
    for (int k = start[target]; k < start[target + 1]; k++) {
      double value = valueOf[k];
      int from = basicOf[k] * width + first;
      s0 += value * factors[from];
      s1 += value * factors[from + 1];
      s2 += value * factors[from + 2];
      s3 += value * factors[from + 3];
      s4 += value * factors[from + 4];
      s5 += value * factors[from + 5];
      s6 += value * factors[from + 6];
      s7 += value * factors[from + 7];
    }
    numbers[to] = s0;
    numbers[to + 1] = s1;
    numbers[to + 2] = s2;
    numbers[to + 3] = s3;
    numbers[to + 4] = s4;
    numbers[to + 5] = s5;
    numbers[to + 6] = s6;
    numbers[to + 7] = s7;
  }

  /** How large a load case is, and its whole force and moment. */
  private void whole(double[] factors, int c, SweepLoads into) {
    double[] whole = into.resultants[c];
    Arrays.fill(whole, 0);
    double size = 0;
    for (int basic = 0; basic < sizes.length; basic++) {
      double factor = factors[basic * into.width + c];
      if (factor != 0) {
        size += Math.abs(factor) * sizes[basic];
        for (int i = 0; i < whole.length; i++) {
          whole[i] += factor * resultants[basic][i];
        }
      }
    }
    into.sizes[c] = size;
  }
}
