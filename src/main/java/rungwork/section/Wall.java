package rungwork.section;

/**
 * A flat part of a section's wall between its bends or edges, for width-to-thickness ratios.
 *
 * @param name such as {@code top flange}
 * @param width flat width c [m]
 * @param thickness t [m]
 * @param edge how it is held along its edges
 * @param from its first end, {y, z} of the centre line from the centroid [m]
 * @param to its second end, {y, z} of the centre line from the centroid [m]
 */
public record Wall(
    String name, double width, double thickness, Edge edge, double[] from, double[] to) {
  /** Copies its places. */
  public Wall {
    from = from.clone();
    to = to.clone();
  }

  @Override
  public double[] from() {
    return from.clone();
  }

  @Override
  public double[] to() {
    return to.clone();
  }

  /** How a wall is held along its long edges. */
  public enum Edge {
    /** Held along both edges. */
    INTERNAL,
    /** Held along one edge, the other free. */
    OUTSTAND,
    /** The wall of a round tube; its width is the outside diameter. */
    ROUND
  }
}
