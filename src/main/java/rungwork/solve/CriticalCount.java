package rungwork.solve;

import java.util.Arrays;

/**
 * How many critical loads of one action lie below a multiple of given normal forces: J = J₀ + s(K),
 * J₀ those of the members between held nodes, s the values below zero of the stiffness matrix
 * (Wittrick and Williams, Q. J. Mech. Appl. Math. 24 (1971) 263–284, from memory). Numbering is
 * done once; each count is one factorisation.
 */
final class CriticalCount {
  private final Structure structure;
  private final Action action;
  private final double[] normalForces;
  private final Equations equations;

  CriticalCount(Structure structure, Action action, double[] normalForces) {
    this.structure = structure;
    this.action = action;
    this.normalForces = normalForces;
    equations = new Equations(structure, action);
  }

  /** The count for the normal forces of a response, each beam cut into equal pieces. */
  static CriticalCount of(Response response, Action action, int pieces) {
    Structure structure = new Cutting(response.frame(), pieces).structure();
    return new CriticalCount(structure, action, response.normalForces(pieces));
  }

  /** The critical loads below a factor; the equations are left factorised there. */
  int below(double factor) {
    return trial(factor).count();
  }

  /**
   * What a factorisation at a factor tells.
   *
   * @param within critical loads of members between held nodes below it
   * @param negatives values below zero of the stiffness matrix
   * @param logDeterminant of that matrix, without its sign
   */
  record Trial(int within, int negatives, double logDeterminant) {
    int count() {
      return within + negatives;
    }

    /** Whether only one critical load lies below, and that not of a single member. */
    boolean isSimple() {
      return within == 0 && negatives == 1;
    }
  }

  /** Factorises at a factor; the equations are left so. */
  Trial trial(double factor) {
    Structure loaded = at(factor);
    int within = 0;
    for (Member member : loaded.members()) {
      within += member.criticalLoadsBelow(action);
    }
    return new Trial(within, equations.refactorise(loaded), equations.logDeterminant());
  }

  /** The structure under a multiple of the normal forces. */
  Structure at(double factor) {
    return structure.under(Arrays.stream(normalForces).map(force -> factor * force).toArray());
  }

  /** The equations, as the last count left them. */
  Equations equations() {
    return equations;
  }
}
