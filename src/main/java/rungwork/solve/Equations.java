package rungwork.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import rungwork.fault.SolveException;

/** The stiffness equations of one action, factorised. */
final class Equations {
  /** Number of a motion that has no equation: held, or of another action. */
  private static final int NONE = -1;

  private final Structure structure;
  private final Action action;
  private final int[] number;
  private final int count;
  private final BandFactor factor;
  private final double norm;

  /**
   * Assembles and factorises.
   *
   * @throws SolveException naming a motion that nothing resists
   */
  Equations(Structure structure, Action action) {
    this.structure = structure;
    this.action = action;
    number = new int[structure.motions()];
    count = count();
    factor = new BandFactor(new BandMatrix(count, band()));
    assemble(structure);
    norm = factor.matrix().scaledNorm();
    if (!factor.factorise()) {
      throw new SolveException(
          new Mechanism(structure, motions(factor.freeMotion())).message(action));
    }
  }

  /** The estimated condition of the equations, unknowns scaled alike [1]. */
  double condition() {
    return norm * new Conditioning(factor).inverseNorm();
  }

  /** Where the frame is softest, in words. */
  String softest() {
    return new Mechanism(structure, motions(new Conditioning(factor).softest())).place(action);
  }

  private int count() {
    Arrays.fill(number, NONE);
    int next = 0;
    for (int node : structure.order()) {
      for (int i = 0; i < action.motionsPerNode(); i++) {
        int motion = 6 * node + action.motion(i);
        if (!structure.held(motion)) {
          number[motion] = next++;
        }
      }
    }
    return next;
  }

  private int band() {
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

  /**
   * Fills the equations anew with the same frame under other normal forces and factorises them.
   *
   * @return how many values of their matrix are below zero: none where the frame is stable
   */
  int refactorise(Structure loaded) {
    factor.matrix().clear();
    assemble(loaded);
    return factor.factoriseThrough();
  }

  private void assemble(Structure loaded) {
    BandMatrix matrix = factor.matrix();
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        matrix.add(number[motion], number[motion], structure.spring(motion));
      }
    }
    for (int member = 0; member < structure.members().size(); member++) {
      add(matrix, structure.places(member), loaded.members().get(member).frameStiffness());
    }
  }

  private void add(BandMatrix matrix, int[] places, double[][] k) {
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        if (number[places[i]] != NONE && number[places[j]] != NONE) {
          matrix.add(number[places[i]], number[places[j]], k[i][j]);
        }
      }
    }
  }

  /** Adds the motions that some forces cause; forces of another action are passed over. */
  void addMotions(double[] forces, Motions motions) {
    double[] values = new double[count];
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        values[number[motion]] = forces[motion];
      }
    }
    factor.solve(values);
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        motions.add(motion, values[number[motion]]);
      }
    }
  }

  private double[] motions(double[] values) {
    double[] motions = new double[number.length];
    for (int motion = 0; motion < number.length; motion++) {
      motions[motion] = number[motion] == NONE ? 0 : values[number[motion]];
    }
    return motions;
  }
}
