package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.section.Section;

/**
 * Which internal forces a cross-section can carry together: all that lie within a number of flat
 * faces in the space of N, My, Mz and T.
 *
 * <pre>
 *   n·N + y·My + z·Mz + t·T ≤ D(n, y, z, t)       for each face
 *   D = √( (fy ∫|n + y·ζ − z·η| dA)² + (t·Tp)² )  η, ζ: place from the centroid along y, z
 * </pre>
 *
 * <p>A face's normal is a way to yield, and D the work that yielding takes, so each face touches
 * the true surface (Drucker's and Hill's theorems; B. G. Neal, The Plastic Methods of Structural
 * Analysis, from memory). N, My and Mz act together as the outline says, without any formula
 * between them. Torsion counts by reduced yield: what von Mises leaves beside the shear stress of T
 * for normal stress, T as if spread evenly. Tp is the torque at first yield, free to warp: what a
 * closed tube can carry, two thirds of what an open one can. Shear forces are left out.
 *
 * @param faces a row for each: n, y, z, t [1/N, 1/(N·m)] and after them D [1]
 */
public record YieldSurface(List<Face> faces) {
  /**
   * Between its faces the surface bulges past the true one, by less than this part for tubes,
   * channels and solid bars; a test measures it.
   */
  static final double BULGE = 0.09;

  /** Copies its faces. */
  public YieldSurface {
    faces = List.copyOf(faces);
  }

  /**
   * A flat face.
   *
   * @param n its normal's component along N [1/N]
   * @param y along My [1/(N·m)]
   * @param z along Mz [1/(N·m)]
   * @param t along T [1/(N·m)]
   * @param reach D: how far the origin lies inside it, above 0 [1]
   */
  public record Face(double n, double y, double z, double t, double reach) {
    /** Refuses what is not finite, and no reach. */
    public Face {
      Guard.solved("face of a yield surface", n + y + z + t);
      Guard.positive("reach of a yield surface", reach, Scale.NUMBER);
    }

    /** How near some forces are to it: 1 is on it [1]. */
    double use(double force, double momentY, double momentZ, double torque) {
      return (n * force + y * momentY + z * momentZ + t * torque) / reach;
    }
  }

  /**
   * The surface that touches the true one from outside.
   *
   * @param section a section with an outline
   * @param yield the yield strength [Pa]
   * @return its surface
   * @throws ModelException when the strength is not above zero
   */
  public static YieldSurface around(Section section, double yield) {
    return around(section, yield, WAYS);
  }

  /** The same with ways to yield of one's own, such as from {@link #ways}. */
  static YieldSurface around(Section section, double yield, List<double[]> ways) {
    if (section.outline().loops().isEmpty()) {
      throw new ModelException(
          "section %s is known by its properties alone; its plastic strength follows from an outline"
              .formatted(section.name()));
    }
    if (!(Guard.finite("yield strength", yield) > 0)) {
      throw new ModelException(
          "a yield strength of %.0f Pa carries nothing; it must be above 0".formatted(yield));
    }
    Capacities alone = Capacities.of(section, yield);
    List<Face> faces = new ArrayList<>();
    for (double[] way : ways) {
      faces.add(alone.face(section, yield, way));
    }
    return new YieldSurface(faces);
  }

  /**
   * The same surface drawn in until it lies inside the true one.
   *
   * @return this surface, every force less by the bulge of its faces
   */
  public YieldSurface drawnIn() {
    return times(1 / (1 + BULGE));
  }

  /**
   * The surface of a stronger or weaker metal.
   *
   * @param factor on every force, above 0 [1]
   * @return the surface
   */
  public YieldSurface times(double factor) {
    return new YieldSurface(
        faces.stream()
            .map(face -> new Face(face.n, face.y, face.z, face.t, face.reach * factor))
            .toList());
  }

  /**
   * Bending alone, each moment for itself, as elementary plastic theory has it: N and T do not
   * matter.
   *
   * @param aboutY plastic moment about y [N·m]
   * @param aboutZ plastic moment about z [N·m]
   * @return the surface
   */
  public static YieldSurface ofMoments(double aboutY, double aboutZ) {
    return new YieldSurface(
        List.of(
            new Face(0, 1 / aboutY, 0, 0, 1),
            new Face(0, -1 / aboutY, 0, 0, 1),
            new Face(0, 0, 1 / aboutZ, 0, 1),
            new Face(0, 0, -1 / aboutZ, 0, 1)));
  }

  /** How near some forces are to it: 1 is on it [1]. */
  double use(double force, double momentY, double momentZ, double torque) {
    double most = 0;
    for (Face face : faces) {
      most = Math.max(most, face.use(force, momentY, momentZ, torque));
    }
    return most;
  }

  /** Ways to yield, N, My, Mz and T each in parts of what the section carries alone. */
  private static final List<double[]> WAYS = ways(2);

  /** Ways on a cube's surface of {@code 2·half} steps a side, each with five shares of twist. */
  static List<double[]> ways(int half) {
    List<double[]> ways = new ArrayList<>();
    for (int n = -half; n <= half; n++) {
      for (int y = -half; y <= half; y++) {
        for (int z = -half; z <= half; z++) {
          if (Math.max(Math.abs(n), Math.max(Math.abs(y), Math.abs(z))) == half) {
            addTwisted(ways, n, y, z);
          }
        }
      }
    }
    ways.add(new double[] {0, 0, 0, 1});
    ways.add(new double[] {0, 0, 0, -1});
    return ways;
  }

  private static void addTwisted(List<double[]> ways, double n, double y, double z) {
    double size = Math.sqrt(n * n + y * y + z * z);
    for (int third = -2; third <= 2; third++) {
      double twist = third * Math.PI / 6;
      double rest = Math.cos(twist) / size;
      ways.add(new double[] {n * rest, y * rest, z * rest, Math.sin(twist)});
    }
  }

  /** What a section carries of each alone. */
  private record Capacities(double force, double aboutY, double aboutZ, double torque) {
    private static Capacities of(Section section, double yield) {
      double sharpest =
          section.points().stream().mapToDouble(point -> Math.abs(point.perT())).max().orElse(0);
      return new Capacities(
          yield * section.outline().plasticWork(1, 0, 0),
          yield * section.outline().plasticWork(0, 1, 0),
          yield * section.outline().plasticWork(0, 0, 1),
          yield / Math.sqrt(3) / sharpest);
    }

    private Face face(Section section, double yield, double[] way) {
      double n = way[0] / force;
      double y = way[1] / aboutY;
      double z = way[2] / aboutZ;
      double direct = yield * section.outline().plasticWork(n, y, z);
      return new Face(n, y, z, way[3] / torque, Math.hypot(direct, way[3]));
    }
  }
}
