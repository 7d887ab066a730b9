package rungwork.loadpath;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;

/**
 * Where a mount stands on the frame and how it is turned: the one place where vehicle axes become
 * the axes of {@link rungwork.joint}.
 *
 * @param origin the face's origin, below the hole, in vehicle axes
 * @param along the way of the tab's foot, the face's x
 * @param outward the way out of the face, its z
 */
public record Face(Point origin, Direction along, Direction outward) {
  /** Largest cosine between directions that count as square [1]: rounding of typed components. */
  private static final double SQUARE = 1e-6;

  /** Refuses directions that are not square to each other. */
  public Face {
    double cosine = along.unit().dotProduct(outward.unit());
    if (Math.abs(cosine) > SQUARE) {
      throw new ModelException(
          "the way along a tab's foot and the way out of its face must be square; the cosine"
              + " between them is "
              + Scale.NUMBER.show(cosine));
    }
  }

  /**
   * A direction in vehicle axes.
   *
   * @param x forward [1]
   * @param y to the left [1]
   * @param z up [1]
   */
  public record Direction(double x, double y, double z) {
    /** Towards +x. */
    public static final Direction FORWARD = new Direction(1, 0, 0);

    /** Towards −x. */
    public static final Direction REARWARD = new Direction(-1, 0, 0);

    /** Towards +y. */
    public static final Direction LEFT = new Direction(0, 1, 0);

    /** Towards −y. */
    public static final Direction RIGHT = new Direction(0, -1, 0);

    /** Towards +z. */
    public static final Direction UP = new Direction(0, 0, 1);

    /** Towards −z. */
    public static final Direction DOWN = new Direction(0, 0, -1);

    private static final List<String> WORDS =
        List.of("forward", "rearward", "left", "right", "up", "down");

    /** Refuses a direction to nowhere. */
    public Direction {
      double length = new Vector3D(x, y, z).getNorm();
      if (!(length > 0) || Double.isInfinite(length)) {
        throw new ModelException(
            "a direction of length " + Scale.NUMBER.show(length) + " points nowhere");
      }
    }

    /**
     * The vehicle's direction that it is nearest to.
     *
     * @return such as {@code forward}; with {@code about} before it when it is not exactly that
     */
    public String words() {
      Vector3D unit = unit();
      double[] parts = unit.toArray();
      int largest = 0;
      for (int i = 1; i < parts.length; i++) {
        if (Math.abs(parts[i]) > Math.abs(parts[largest])) {
          largest = i;
        }
      }
      String word = WORDS.get(2 * largest + (parts[largest] > 0 ? 0 : 1));
      return Math.abs(parts[largest]) > 1 - SQUARE ? word : "about " + word;
    }

    Vector3D unit() {
      return new Vector3D(x, y, z).normalize();
    }
  }

  /**
   * A mount's force in the face's axes.
   *
   * @param force what pushes the mount
   * @param factors what capacities are divided by
   * @return the load on the mount's joints
   */
  public FaceLoad load(MountForce force, Factors factors) {
    Point at = force.mount().at();
    Vector3D place = turned(Reaction.Ray.vector(origin, at));
    Wrench w = force.wrench();
    Vector3D f = turned(new Vector3D(w.fx(), w.fy(), w.fz()));
    Vector3D m = turned(new Vector3D(w.mx(), w.my(), w.mz()));
    return new FaceLoad(
        force.loadCase(),
        new Wrench(f.getX(), f.getY(), f.getZ(), m.getX(), m.getY(), m.getZ()),
        new Point(place.getX(), place.getY(), place.getZ()),
        factors);
  }

  /**
   * Where the pin points: square to the foot and to the way out of the face.
   *
   * @return the face's y
   */
  public Direction pin() {
    Vector3D y = outward.unit().crossProduct(along.unit());
    return new Direction(y.getX(), y.getY(), y.getZ());
  }

  private Vector3D turned(Vector3D vector) {
    Vector3D x = along.unit();
    Vector3D z = outward.unit();
    Vector3D y = z.crossProduct(x);
    return new Vector3D(vector.dotProduct(x), vector.dotProduct(y), vector.dotProduct(z));
  }
}
