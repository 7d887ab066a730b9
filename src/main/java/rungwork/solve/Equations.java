package rungwork.solve;

import rungwork.fault.SolveException;

/** The stiffness equations of one action, factorised. */
final class Equations {
  private final Structure structure;
  private final Action action;
  private final Assembly assembly;
  private final double norm;

  /**
   * Assembles and factorises.
   *
   * @throws SolveException naming a motion that nothing resists
   */
  Equations(Structure structure, Action action) {
    this.structure = structure;
    this.action = action;
    assembly = new Assembly(structure, action.motions());
    fill(structure);
    norm = factor().matrix().scaledNorm();
    if (!factor().factorise()) {
      throw new SolveException(
          new Mechanism(structure, assembly.spread(factor().freeMotion())).message(action));
    }
  }

  private BandFactor factor() {
    return assembly.factor();
  }

  private void fill(Structure loaded) {
    assembly.fill(member -> loaded.members().get(member).frameStiffness());
  }

  /** The estimated condition of the equations, unknowns scaled alike [1]. */
  double condition() {
    return norm * new Conditioning(factor()).inverseNorm();
  }

  /** Where the frame is softest, in words. */
  String softest() {
    double[] motions = assembly.spread(new Conditioning(factor()).softest());
    return new Mechanism(structure, motions).place(action);
  }

  /**
   * Fills the equations anew with the same frame under other normal forces and factorises them.
   *
   * @return how many values of their matrix are below zero: none where the frame is stable
   */
  int refactorise(Structure loaded) {
    fill(loaded);
    return factor().factoriseThrough();
  }

  /** The logarithm of the size of the determinant, as factorised last. */
  double logDeterminant() {
    return factor().logDeterminant();
  }

  /** Adds the motions that some forces cause; forces of another action are passed over. */
  void addMotions(double[] forces, Motions motions) {
    double[] values = assembly.gathered(forces);
    factor().solve(values);
    double[] all = assembly.spread(values);
    for (int motion = 0; motion < all.length; motion++) {
      motions.add(motion, all[motion]);
    }
  }
}
