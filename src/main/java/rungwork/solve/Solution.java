package rungwork.solve;

import java.util.Arrays;
import java.util.List;

/** The motions of all nodes under a loading, and what follows from them. Frame axes. */
final class Solution {
  /** An out-of-balance below this part of the load needs no refinement [1]. */
  private static final double FINE = 1e-12;

  /** Turns of refinement go on while each leaves less than this part of the last one's rest [1]. */
  private static final double PROGRESS = 0.5;

  /** A normal force below this part of the load is rounding [1]. */
  private static final double NOTHING = 1e-12;

  private final Structure structure;
  private final Loading loading;
  private final Motions motions;

  private Solution(Structure structure, Loading loading) {
    this.structure = structure;
    this.loading = loading;
    motions = new Motions(structure.motions());
  }

  /** Solves; what is still out of balance is solved for again and added, while that helps. */
  static Solution of(Structure structure, List<Equations> actions, Loading loading) {
    Solution solution = new Solution(structure, loading);
    solution.settle();
    double before = Double.POSITIVE_INFINITY;
    double[] rest = solution.unbalanced();
    double now = solution.imbalance(rest);
    while (now > FINE && now < PROGRESS * before) {
      for (Equations equations : actions) {
        equations.addMotions(rest, solution.motions);
      }
      before = now;
      rest = solution.unbalanced();
      now = solution.imbalance(rest);
    }
    return solution;
  }

  private void settle() {
    for (int motion = 0; motion < structure.motions(); motion++) {
      if (structure.held(motion) && loading.settled(motion) != 0) {
        motions.add(motion, loading.settled(motion));
      }
    }
  }

  /** A motion of a node, counted as in {@link Structure}. */
  double motion(int motion) {
    return motions.get(motion);
  }

  /** What the nodes do to the ends of a member: 12 forces in its axes. */
  double[] endForces(int index) {
    Member member = structure.members().get(index);
    double[] forces = loading.held(index).clone();
    double[] deformations = nodalDeformations(index);
    double[][] k = member.condensation().stiffness();
    for (int i = 0; i < forces.length; i++) {
      for (int j = 0; j < deformations.length; j++) {
        forces[i] += k[i][j] * deformations[j];
      }
    }
    double[] ends = member.endForces(forces, loading.free(index));
    if (member.normalForce() != 0) {
      member.addChordForces(ends, byMotions(index, member.chordsByMotions()));
    }
    return ends;
  }

  private double[] nodalDeformations(int index) {
    return byMotions(index, structure.members().get(index).deformationsByMotions());
  }

  private double[] byMotions(int index, double[][] factors) {
    double[] values = new double[factors.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = motions.dot(factors[i], structure.places(index));
    }
    return values;
  }

  /** The internal forces along a member. */
  BeamForces forces(int index) {
    return new BeamForces(structure.members().get(index), held(index));
  }

  /** All that acts on a member, its start held by its node. */
  private Span held(int index) {
    Member member = structure.members().get(index);
    double[] ends = endForces(index);
    if (member.normalForce() != 0) {
      double[] start = start(index);
      ends[1] = Across.IN_PLANE.shearAtStart(ends[1], start[5], member);
      ends[2] = Across.OUT_OF_PLANE.shearAtStart(ends[2], start[4], member);
    }
    return loading.span(index).startingWith(ends);
  }

  /** The deflected shape of a member. */
  Deflection deflection(int index) {
    return new Deflection(structure.members().get(index), start(index), held(index));
  }

  /**
   * The mean normal forces [N]; next to nothing of the load counts as nothing.
   *
   * @param pieces into how many equal pieces each member is cut
   * @return one for each piece, a member's following each other
   */
  double[] normalForces(int pieces) {
    double[] forces = new double[structure.members().size() * pieces];
    for (int i = 0; i < forces.length; i++) {
      int index = i / pieces;
      double from = (double) (i % pieces) / pieces;
      double to = (i % pieces + 1.0) / pieces;
      double mean = held(index).meanNormalForce(from, to, structure.members().get(index));
      forces[i] = Math.abs(mean) > NOTHING * loading.size() ? mean : 0;
    }
    return forces;
  }

  /** The motions of a member's start in its own axes, joints open. */
  private double[] start(int index) {
    int[] places = structure.places(index);
    double[] nodes = new double[Member.MOTIONS];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = motions.get(places[i]);
    }
    double[] start = Arrays.copyOf(structure.members().get(index).axes().toOwn(nodes), 6);
    double[] opened = loading.openingsAtStart(index, nodalDeformations(index));
    for (int i = 0; i < 6; i++) {
      // A joint's opening is the beam's motion against its node, a hinge's turn the node's.
      start[i] += i < 4 ? opened[i] : -opened[i];
    }
    return start;
  }

  /** Load, less what members and springs take: at held motions the support takes it. */
  double[] unbalanced() {
    double[] rest = loading.nodal().clone();
    for (int i = 0; i < rest.length; i++) {
      rest[i] -= springForce(i);
    }
    for (int index = 0; index < structure.members().size(); index++) {
      Member member = structure.members().get(index);
      double[] taken = member.axes().toNodes(endForces(index));
      int[] places = structure.places(index);
      for (int i = 0; i < taken.length; i++) {
        rest[places[i]] -= taken[i];
      }
    }
    return rest;
  }

  /** What a spring takes, by its stretch between the node and its foot. */
  double springForce(int motion) {
    double foot = structure.held(motion) ? 0 : loading.settled(motion);
    return structure.spring(motion) * (motions.get(motion) - foot);
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
