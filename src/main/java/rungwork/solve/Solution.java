package rungwork.solve;

import java.util.List;

/** The motions of all nodes under a loading, and what follows from them. Frame axes. */
final class Solution {
  /** Turns of refinement at most; each gains some digits unless rounding is all that is left. */
  private static final int REFINEMENTS = 3;

  /** An out-of-balance below this part of the load needs no refinement [1]. */
  private static final double FINE = 1e-12;

  private final Structure structure;
  private final Loading loading;
  private final double[] motions;

  private Solution(Structure structure, Loading loading) {
    this.structure = structure;
    this.loading = loading;
    motions = new double[structure.motions()];
  }

  /** Solves; what is still out of balance is solved for again and added. */
  static Solution of(Structure structure, List<Equations> actions, Loading loading) {
    Solution solution = new Solution(structure, loading);
    double[] rest = solution.unbalanced();
    for (int turn = 0; turn <= REFINEMENTS && solution.imbalance(rest) > FINE; turn++) {
      double[] forces = rest;
      actions.forEach(equations -> equations.addMotions(forces, solution.motions));
      rest = solution.unbalanced();
    }
    return solution;
  }

  double[] motions() {
    return motions;
  }

  /** What the nodes do to the ends of a member: 12 forces in its axes. */
  double[] endForces(int index) {
    Member member = structure.members().get(index);
    double[] ends = member.clamped(loading.line(index));
    member.condensation().release(ends);
    double[] moved = structure.endMotions(member, motions);
    double[][] k = member.condensation().stiffness();
    for (int i = 0; i < ends.length; i++) {
      for (int j = 0; j < moved.length; j++) {
        ends[i] += k[i][j] * moved[j];
      }
    }
    return ends;
  }

  /** The 12 motions of a member's own ends, where a release lets them differ from its nodes'. */
  double[] endMotions(int index) {
    Member member = structure.members().get(index);
    double[] moved = structure.endMotions(member, motions);
    member.condensation().follow(moved, member.clamped(loading.line(index)));
    return moved;
  }

  /** Load, less what members and springs take: at held motions the support takes it. */
  double[] unbalanced() {
    double[] taken = new double[structure.motions()];
    for (int i = 0; i < structure.members().size(); i++) {
      structure.addEndForces(structure.members().get(i), endForces(i), taken);
    }
    double[] rest = loading.nodal().clone();
    for (int i = 0; i < rest.length; i++) {
      rest[i] -= taken[i] + structure.spring(i) * motions[i];
    }
    return rest;
  }

  /** The largest force out of balance where no support takes it, over the load [1]. */
  double imbalance(double[] rest) {
    double largest = 0;
    for (int i = 0; i < rest.length; i++) {
      if (!structure.supported(i)) {
        double force = i % 6 < 3 ? rest[i] : rest[i] / structure.size();
        largest = Math.max(largest, Math.abs(force));
      }
    }
    return loading.size() == 0 ? largest : largest / loading.size();
  }
}
