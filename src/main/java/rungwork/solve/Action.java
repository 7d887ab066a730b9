package rungwork.solve;

/**
 * A family of elements: the motions of a node that it works with. Motions are counted 0 to 5: along
 * p, q, n of the frame, then turning about them; in a beam's own axes along and about x, y, z.
 *
 * <p>In a flat frame whose sections are symmetric about its plane the two families do not touch
 * each other. A coupled family would list all six motions; nothing else here would change.
 */
enum Action {
  /** Plane action: stretching, and bending in the frame's plane (N, Vy, Mz). */
  FRAME("in the frame's plane", 0, 1, 5),
  /** Grillage action: bending out of the frame's plane, and twist (Vz, My, T). */
  GRILLAGE("out of the frame's plane", 2, 3, 4);

  private final String place;
  private final int[] motions;

  Action(String place, int... motions) {
    this.place = place;
    this.motions = motions;
  }

  /** Where it happens, in words. */
  String place() {
    return place;
  }

  /** The motions of a node that it works with. */
  int[] motions() {
    return motions.clone();
  }
}
