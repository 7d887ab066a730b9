package rungwork.solve;

import java.util.List;
import rungwork.frame.Frame;

/**
 * A family of elements: the motions of a node that it works with. Motions are counted 0 to 5: along
 * p, q, n of the frame, then turning about them; in a beam's own axes along and about x, y, z.
 *
 * <p>In a flat frame whose sections are symmetric about its plane, plane action and grillage action
 * do not touch each other. Where beams leave the plane, one coupled action takes all six motions.
 */
enum Action {
  /** Plane action: stretching, and bending in the frame's plane (N, Vy, Mz). */
  FRAME("in the frame's plane", 0, 1, 5),
  /** Grillage action: bending out of the frame's plane, and twist (Vz, My, T). */
  GRILLAGE("out of the frame's plane", 2, 3, 4),
  /** All six together, in a frame that is not flat. */
  COUPLED("in space", 0, 1, 2, 3, 4, 5);

  private final String place;
  private final int[] motions;

  Action(String place, int... motions) {
    this.place = place;
    this.motions = motions;
  }

  /** The actions that together are all that a frame does. */
  static List<Action> of(Frame frame) {
    return frame.isFlat() ? List.of(FRAME, GRILLAGE) : List.of(COUPLED);
  }

  /** Where it happens, in words. */
  String place() {
    return place;
  }

  /** The motions of a node that it works with. */
  int[] motions() {
    return motions.clone();
  }

  /** The ways in which it bends members. */
  List<Across> across() {
    return switch (this) {
      case FRAME -> List.of(Across.IN_PLANE);
      case GRILLAGE -> List.of(Across.OUT_OF_PLANE);
      case COUPLED -> List.of(Across.values());
    };
  }
}
