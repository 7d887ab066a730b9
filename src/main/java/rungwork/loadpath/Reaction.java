package rungwork.loadpath;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.frame.Point;

/**
 * A force of unknown size on a known line, between a body and what holds it.
 *
 * @param member the suspension member that it belongs to
 * @param body the body that it pushes along its line
 * @param holders what is pushed back: a body or a mount; or two mounts that share it in a way that
 *     statics cannot say
 * @param at a point on its line
 * @param along unit vector of its line
 */
record Reaction(String member, String body, List<String> holders, Point at, Vector3D along) {
  Reaction {
    holders = List.copyOf(holders);
  }

  /** One thing holds it. */
  static Reaction between(String member, String body, String holder, Ray ray) {
    return new Reaction(member, body, List.of(holder), ray.at(), ray.along());
  }

  boolean shared() {
    return holders.size() > 1;
  }

  boolean heldBy(String holder) {
    return holders.contains(holder);
  }

  /** A force of stated size: what it does, and how large it is [N]. */
  record Given(Reaction reaction, double force) {}

  /** A point and a direction. */
  record Ray(Point at, Vector3D along) {
    static Vector3D vector(Point from, Point to) {
      return new Vector3D(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    }

    /** Three rays through a point: along a direction, and twice square to it. */
    static List<Ray> triad(Point at, Vector3D direction) {
      Vector3D first = direction.normalize();
      Vector3D second = first.orthogonal();
      return List.of(
          new Ray(at, first), new Ray(at, second), new Ray(at, first.crossProduct(second)));
    }
  }
}
