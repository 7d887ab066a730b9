package rungwork.solve;

import rungwork.frame.Freedom;

/**
 * A motion of the frame that nothing, or hardly anything, resists. It is told by the node that
 * moves most, turning compared with moving through the frame's typical beam length.
 */
final class Mechanism {
  /** A node this close to the largest motion counts as moving as much: rounding [1]. */
  private static final double AS_MUCH = 1 - 1e-6;

  private final Structure structure;
  private final double[] motions;

  Mechanism(Structure structure, double[] motions) {
    this.structure = structure;
    this.motions = motions;
  }

  String message(Action action) {
    return "nothing resists "
        + place(action)
        + ": hold it by a support, or join a beam to it there";
  }

  /** The node that moves most, and how, in one action. */
  String place(Action action) {
    return place() + " (" + action.place() + ")";
  }

  /** The node that moves most, and how. */
  String place() {
    int worst = worst();
    Freedom freedom = structure.frame().plane().motions().get(worst % 6);
    return "node " + structure.nodes().get(worst / 6).name() + " " + freedom.motion();
  }

  private int worst() {
    double length = structure.members().stream().mapToDouble(Member::length).average().orElse(1);
    int worst = 0;
    double largest = 0;
    for (int i = 0; i < motions.length; i++) {
      double size = Math.abs(motions[i]) * (i % 6 < 3 ? 1 : length);
      if (size * AS_MUCH > largest) {
        worst = i;
        largest = size;
      }
    }
    return worst;
  }
}
