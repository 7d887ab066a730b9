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
    Structure loaded = at(factor);
    int within =
        loaded.members().stream().mapToInt(member -> member.criticalLoadsBelow(action)).sum();
    return within + equations.refactorise(loaded);
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
