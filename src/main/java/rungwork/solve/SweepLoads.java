package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The load cases of a sweep as numbers: what acts on the equations of each action, on each member's
 * deformations, on its ends and along it. Values of all cases of one thing lie together.
 */
final class SweepLoads {
  /** Load cases that are solved side by side. */
  static final int CASES = BandFactor.CASES;

  /** Numbers of a line load: at its start along x, y, z and about x, then their growth a metre. */
  static final int LINE = 8;

  final int cases;

  /** Cases, filled up to whole blocks. */
  final int width;

  /** For each action, block by block the equations' loads in the cases of the block. */
  final double[][] equations;

  /** For each beam the forces of its deformations by the loads alone, a value for each case. */
  final double[][] held;

  /** For each beam what loads between its ends do to them, a value for each case. */
  final double[][] ends;

  /** For each beam its line load, a value for each case. */
  final double[][] lines;

  /** How large each case is: forces, and moments over the frame's size [N]. */
  final double[] sizes;

  /** For each case its whole force and moment about the first node over the frame's size [N]. */
  final double[][] resultants;

  /** Loads of nothing. */
  SweepLoads(int cases, int members, int[] equations) {
    this.cases = cases;
    width = (cases + CASES - 1) / CASES * CASES;
    this.equations = new double[equations.length][];
    Arrays.setAll(this.equations, part -> new double[equations[part] * width]);
    held = new double[members][Member.DEFORMATIONS * width];
    ends = new double[members][Member.MOTIONS * width];
    lines = new double[members][LINE * width];
    sizes = new double[cases];
    resultants = new double[cases][6];
  }

  int blocks() {
    return width / CASES;
  }

  /** Where an equation's value in a case stands. */
  private int place(double[] of, int equation, int loadCase) {
    int block = loadCase / CASES;
    return (block * (of.length / width) + equation) * CASES + loadCase % CASES;
  }

  /** Sets what acts on the equations of an action. */
  void equations(int part, int loadCase, double[] values) {
    for (int i = 0; i < values.length; i++) {
      equations[part][place(equations[part], i, loadCase)] = values[i];
    }
  }

  /** Sets what acts on a member. */
  void member(int member, int loadCase, double[] heldForces, double[] endForces, double[] line) {
    spread(held[member], heldForces, loadCase);
    spread(ends[member], endForces, loadCase);
    spread(lines[member], line, loadCase);
  }

  private void spread(double[] into, double[] values, int loadCase) {
    for (int i = 0; i < values.length; i++) {
      into[i * width + loadCase] = values[i];
    }
  }

  /** What is not nothing in one of these cases, to be added to a case of others. */
  Basic basic(int loadCase) {
    List<double[]> from = new ArrayList<>();
    for (int part = 0; part < equations.length; part++) {
      double[] values = new double[equations[part].length / width];
      for (int i = 0; i < values.length; i++) {
        values[i] = equations[part][place(equations[part], i, loadCase)];
      }
      from.add(values);
    }
    for (double[][] arrays : List.of(held, ends, lines)) {
      for (double[] all : arrays) {
        double[] values = new double[all.length / width];
        Arrays.setAll(values, i -> all[i * width + loadCase]);
        from.add(values);
      }
    }
    return new Basic(from, sizes[loadCase], resultants[loadCase]);
  }

  /** Takes all loads out. */
  void clear() {
    for (double[] values : equations) {
      Arrays.fill(values, 0);
    }
    for (int member = 0; member < held.length; member++) {
      Arrays.fill(held[member], 0);
      Arrays.fill(ends[member], 0);
      Arrays.fill(lines[member], 0);
    }
    Arrays.fill(sizes, 0);
    for (double[] resultant : resultants) {
      Arrays.fill(resultant, 0);
    }
  }

  /**
   * Adds multiples of a basic load case to all cases.
   *
   * @param factors how many times it acts in each case, filled up to whole blocks
   */
  void add(Basic basic, double[] factors) {
    for (int a = 0; a < basic.arrays.length; a++) {
      int array = basic.arrays[a];
      double[] into = array(array);
      boolean blocks = array < equations.length;
      int stride = blocks ? CASES : width;
      int block = blocks ? into.length / blocks() : CASES;
      for (int from = 0; from < width; from += CASES) {
        basic.add(a, into, new Rows(from / CASES * block, stride, from), factors);
      }
    }
    for (int c = 0; c < cases; c++) {
      sizes[c] += Math.abs(factors[c]) * basic.size;
      for (int i = 0; i < 6; i++) {
        resultants[c][i] += factors[c] * basic.resultant[i];
      }
    }
  }

  /** What a case leaves out of balance as a whole, over its size [1]. */
  double imbalance(int loadCase) {
    double most = 0;
    for (double part : resultants[loadCase]) {
      most = Math.max(most, Math.abs(part));
    }
    return most == 0 ? 0 : most / sizes[loadCase];
  }

  private double[] array(int index) {
    int rest = index - equations.length;
    if (rest < 0) {
      return equations[index];
    }
    double[][] group = rest < held.length ? held : rest < 2 * held.length ? ends : lines;
    return group[rest % held.length];
  }

  /**
   * Where values for a block of cases stand.
   *
   * @param base of the first row
   * @param stride from row to row
   * @param firstCase of the block
   */
  private record Rows(int base, int stride, int firstCase) {}

  /** The numbers of one load case that are not nothing, array by array. */
  static final class Basic {
    private final int[] arrays;
    private final int[][] places;
    private final double[][] values;
    private final double size;
    private final double[] resultant;

    private Basic(List<double[]> from, double size, double[] resultant) {
      this.size = size;
      this.resultant = resultant;
      List<Integer> found = new ArrayList<>();
      for (int i = 0; i < from.size(); i++) {
        if (Arrays.stream(from.get(i)).anyMatch(value -> value != 0)) {
          found.add(i);
        }
      }
      arrays = found.stream().mapToInt(Integer::intValue).toArray();
      places = new int[arrays.length][];
      values = new double[arrays.length][];
      for (int a = 0; a < arrays.length; a++) {
        double[] all = from.get(arrays[a]);
        places[a] = IntStream.range(0, all.length).filter(i -> all[i] != 0).toArray();
        values[a] = Arrays.stream(places[a]).mapToDouble(i -> all[i]).toArray();
      }
    }

    private void add(int array, double[] into, Rows rows, double[] factors) {
      int[] at = places[array];
      double[] value = values[array];
      for (int i = 0; i < at.length; i++) {
        int row = rows.base + at[i] * rows.stride;
        for (int c = 0; c < CASES; c++) {
          into[row + c] += value[i] * factors[rows.firstCase + c];
        }
      }
    }
  }
}
