package rungwork.joint;

/** Distances from the hole's edge to the plate's free edges, seen along a force. */
final class EdgeDistances {
  private final double halfWidth;
  private final double end;
  private final double height;
  private final double radius;
  private final double x;
  private final double z;

  EdgeDistances(Tab tab, double fx, double fz) {
    halfWidth = tab.plate().width() / 2;
    end = tab.eye().end();
    height = tab.plate().height();
    radius = tab.eye().hole() / 2;
    double length = Math.hypot(fx, fz);
    x = length == 0 ? 0 : fx / length;
    z = length == 0 ? 0 : fz / length;
  }

  /** Whether the force points at a free edge rather than at the face. */
  boolean meetsFreeEdge() {
    return Double.isFinite(reach(x, z));
  }

  /** From the hole's edge to the free edge that the force points at [m]. */
  double along() {
    return reach(x, z) - radius;
  }

  /** From the hole's edge to the nearer free edge beside the force [m]. */
  double across() {
    return Math.min(reach(-z, x), reach(z, -x)) - radius;
  }

  private double reach(double dx, double dz) {
    double upwards = Math.max(dz, 0) / end;
    double reach = 1 / Math.hypot(dx / halfWidth, upwards);
    return -dz * reach > height ? Double.POSITIVE_INFINITY : reach;
  }
}
