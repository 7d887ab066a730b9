package rungwork.check;

import java.util.List;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.section.Wall;

/**
 * What of a closed section is left at least, and what forces can do to it at most, whatever part of
 * its slender walls buckles: of each the most gone that uniform compression takes, wherever along
 * the wall it may be. With L the area gone of a wall, y and z its farthest reach:
 *
 * <pre>
 *   A' = A − ΣL      ey = ΣL·y/A'      ez = ΣL·z/A'      P = |Iyz| + ΣL·y·z + A'·ey·ez
 *   Iy' = Iy − ΣL·z² − A'·ez²          Iz' = Iz − ΣL·y² − A'·ey²        D = Iy'·Iz' − P²
 *   |σ| ≤ |N|/A' + (|My| + |N|·ez)·(Iz·z + P·y)/D + (|Mz| + |N|·ey)·(Iy·y + P·z)/D
 * </pre>
 *
 * <p>(parallel axes and unsymmetric bending, each term at its worst; y and z of a point farther off
 * by ey and ez). Where no wall is slender these are the plain formulas.
 */
final class LeastSection {
  private final double area;
  private final double shiftY;
  private final double shiftZ;
  private final double perMy;
  private final double perMz;
  private final double modulusY;
  private final double modulusZ;

  /**
   * Takes the most off.
   *
   * @param section the whole section
   * @param slender those of its walls that could buckle before they yield, held along both edges
   * @param yield fy [Pa]
   */
  LeastSection(Section section, List<Wall> slender, double yield) {
    Properties p = section.properties();
    Loss loss = new Loss();
    slender.forEach(wall -> loss.add(wall, yield));
    area = p.area() - loss.area;
    shiftY = loss.y / area;
    shiftZ = loss.z / area;
    double iy = p.iy() - loss.zz - area * shiftZ * shiftZ;
    double iz = p.iz() - loss.yy - area * shiftY * shiftY;
    double product = Math.abs(p.iyz()) + loss.yz + area * shiftY * shiftZ;
    double determinant = iy * iz - product * product;
    double mostPerMy = 0;
    double mostPerMz = 0;
    for (StressPoint point : section.points()) {
      double y = Math.abs(point.y()) + shiftY;
      double z = Math.abs(point.z()) + shiftZ;
      mostPerMy = Math.max(mostPerMy, (p.iz() * z + product * y) / determinant);
      mostPerMz = Math.max(mostPerMz, (p.iy() * y + product * z) / determinant);
    }
    boolean isLeft = area > 0 && iy > 0 && iz > 0 && determinant > 0;
    perMy = isLeft ? mostPerMy : Double.POSITIVE_INFINITY;
    perMz = isLeft ? mostPerMz : Double.POSITIVE_INFINITY;
    modulusY = iy / (p.iy() / p.wely() + shiftZ);
    modulusZ = iz / (p.iz() / p.welz() + shiftY);
  }

  /** What walls lose, summed: L, L·y, L·z, L·y², L·z² and L·y·z. */
  private static final class Loss {
    private double area;
    private double y;
    private double z;
    private double yy;
    private double zz;
    private double yz;

    private void add(Wall wall, double yield) {
      double half = wall.thickness() / 2;
      double gone = (1 - EffectiveWidth.leastLeft(wall, yield)) * wall.width() * wall.thickness();
      double reachY = Math.max(Math.abs(wall.from().y()), Math.abs(wall.to().y())) + half;
      double reachZ = Math.max(Math.abs(wall.from().z()), Math.abs(wall.to().z())) + half;
      area += gone;
      y += gone * reachY;
      z += gone * reachZ;
      yy += gone * reachY * reachY;
      zz += gone * reachZ * reachZ;
      yz += gone * reachY * reachZ;
    }
  }

  /** Whether so much is left that anything can be said of it. */
  boolean exists() {
    return perMy < Double.POSITIVE_INFINITY;
  }

  /** A' [m²]. */
  double area() {
    return area;
  }

  /**
   * The largest moment about y of a force along the whole section's centroid, for a force of 1 [m].
   */
  double shiftZ() {
    return shiftZ;
  }

  /** The same about z [m]. */
  double shiftY() {
    return shiftY;
  }

  /**
   * A bound of the normal stress.
   *
   * @param n normal force, without its sign [N]
   * @param my moment about y of what is left, without its sign [N·m]
   * @param mz moment about z [N·m]
   * @return never less than at any stress point [Pa]
   */
  double normalStress(double n, double my, double mz) {
    return n / area + my * perMy + mz * perMz;
  }

  /** The least elastic section modulus about an axis [m³]. */
  double modulus(BendingAxis axis) {
    return axis == BendingAxis.Y ? modulusY : modulusZ;
  }
}
