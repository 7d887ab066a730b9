package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * Straight weld lines on several faces that share a wrench elastically: what stands on them is
 * rigid and moves, every length of weld answers with a force along its own movement, alike in all
 * directions. f = F/L + ω × r with ω = J⁻¹·M, J the lines' second moments about their centroid. For
 * lines in one face it is the elastic vector method (Budynas &amp; Nisbett, Shigley's Mechanical
 * Engineering Design, 9th ed., 9-2 and 9-4).
 *
 * @param lines the lines, at least two that do not lie in one straight line
 */
record SpaceLines(List<Line> lines) {
  SpaceLines {
    lines = List.copyOf(lines);
  }

  /**
   * A straight line in space.
   *
   * @param name where it lies
   * @param from where it starts
   * @param to where it ends
   */
  record Line(String name, Vector3D from, Vector3D to) {
    double length() {
      return from.distance(to);
    }
  }

  /**
   * The force on a length of weld at an end of a line.
   *
   * @param name of the line
   * @param at the place
   * @param force on a length [N/m]
   */
  record Share(String name, Vector3D at, Vector3D force) {}

  double length() {
    return lines.stream().mapToDouble(Line::length).sum();
  }

  Vector3D centroid() {
    Vector3D sum = Vector3D.ZERO;
    for (Line line : lines) {
      sum = sum.add(line.length() / 2, line.from()).add(line.length() / 2, line.to());
    }
    return sum.scalarMultiply(1 / length());
  }

  /** The movement's turn times the weld's stiffness on a length [N/m²]. */
  Vector3D turn(Wrench wrench, Point place) {
    Vector3D c = centroid();
    Wrench w = wrench.moved(place, new Point(c.getX(), c.getY(), c.getZ()));
    double[] turn =
        new LUDecomposition(secondMoments(c))
            .getSolver()
            .solve(new ArrayRealVector(new double[] {w.mx(), w.my(), w.mz()}))
            .toArray();
    return new Vector3D(turn);
  }

  /** The shares at both ends of every line: the largest share is at an end. */
  List<Share> shares(Wrench wrench, Point place) {
    Vector3D c = centroid();
    Vector3D turn = turn(wrench, place);
    Vector3D even =
        new Vector3D(wrench.fx(), wrench.fy(), wrench.fz()).scalarMultiply(1 / length());
    List<Share> shares = new ArrayList<>();
    for (Line line : lines) {
      for (Vector3D end : List.of(line.from(), line.to())) {
        shares.add(new Share(line.name(), end, even.add(turn.crossProduct(end.subtract(c)))));
      }
    }
    return shares;
  }

  /** ∫ (r² − r rᵀ) over the lines, by Simpson's rule, exact for straight lines. */
  private RealMatrix secondMoments(Vector3D about) {
    double[][] sum = new double[3][3];
    for (Line line : lines) {
      Vector3D middle = line.from().add(line.to()).scalarMultiply(0.5);
      add(sum, line.from().subtract(about), line.length() / 6);
      add(sum, middle.subtract(about), line.length() * 4 / 6);
      add(sum, line.to().subtract(about), line.length() / 6);
    }
    return new Array2DRowRealMatrix(sum);
  }

  private static void add(double[][] sum, Vector3D r, double weight) {
    double[] p = r.toArray();
    for (int i = 0; i < 3; i++) {
      sum[i][i] += weight * r.getNormSq();
      for (int j = 0; j < 3; j++) {
        sum[i][j] -= weight * p[i] * p[j];
      }
    }
  }
}
