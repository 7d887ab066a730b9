package rungwork.solve;

import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Equations for some of the motions of every node: which motion has which equation, and the band
 * matrix that members and springs add up to.
 */
final class Assembly {
  /** Number of a motion that has no equation: held, or not among those asked for. */
  private static final int NONE = -1;

  private final Structure structure;
  private final int[] number;
  private final int count;
  private final BandFactor factor;

  /**
   * Numbers the equations; the matrix is empty yet.
   *
   * @param structure the frame
   * @param ofNode which motions of each node, 0 to 5
   */
  Assembly(Structure structure, int... ofNode) {
    this.structure = structure;
    number = new int[structure.motions()];
    count = count(ofNode);
    factor = new BandFactor(new BandMatrix(count, widest()));
  }

  private int count(int[] ofNode) {
    Arrays.fill(number, NONE);
    int next = 0;
    for (int node : structure.order()) {
      for (int i : ofNode) {
        int motion = 6 * node + i;
        if (!structure.held(motion)) {
          number[motion] = next++;
        }
      }
    }
    return next;
  }

  private int widest() {
    return IntStream.range(0, structure.members().size()).map(this::reach).max().orElse(0);
  }

  private int reach(int member) {
    int first = Integer.MAX_VALUE;
    int last = 0;
    for (int place : structure.places(member)) {
      if (number[place] != NONE) {
        first = Math.min(first, number[place]);
        last = Math.max(last, number[place]);
      }
    }
    return Math.max(0, last - first);
  }

  /** The equation of a motion, counted as in {@link Structure}; below zero where it has none. */
  int number(int motion) {
    return number[motion];
  }

  /** Half-bandwidth of the equations. */
  int band() {
    return factor.matrix().band();
  }

  /** Stiffness of the springs on the equations' motions. */
  double[] springs() {
    double[] all = new double[number.length];
    for (int motion = 0; motion < all.length; motion++) {
      all[motion] = structure.spring(motion);
    }
    return gathered(all);
  }

  /** How many equations there are. */
  int size() {
    return count;
  }

  /** The matrix, as filled last, and what it is factorised into. */
  BandFactor factor() {
    return factor;
  }

  /**
   * Fills the matrix anew.
   *
   * @param stiffness what the nodes feel of a member, 12 × 12 in frame axes
   */
  void fill(IntFunction<double[][]> stiffness) {
    BandMatrix matrix = factor.matrix();
    matrix.clear();
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        matrix.add(number[motion], number[motion], structure.spring(motion));
      }
    }
    for (int member = 0; member < structure.members().size(); member++) {
      add(matrix, structure.places(member), stiffness.apply(member));
    }
  }

  private void add(BandMatrix matrix, int[] places, double[][] k) {
    for (int i = 0; i < places.length; i++) {
      int row = number[places[i]];
      for (int j = 0; row != NONE && j < places.length; j++) {
        int column = number[places[j]];
        if (k[i][j] != 0 && column != NONE) {
          matrix.add(row, column, k[i][j]);
        }
      }
    }
  }

  /** Of values for all motions, those that have an equation, in its order. */
  double[] gathered(double[] all) {
    double[] values = new double[count];
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        values[number[motion]] = all[motion];
      }
    }
    return values;
  }

  /** Values of the equations on all motions; zero where a motion has none. */
  double[] spread(double[] values) {
    double[] all = new double[number.length];
    for (int motion = 0; motion < number.length; motion++) {
      all[motion] = number[motion] == NONE ? 0 : values[number[motion]];
    }
    return all;
  }
}
