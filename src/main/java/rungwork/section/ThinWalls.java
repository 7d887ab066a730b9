package rungwork.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Shear, torsion and warping of thin walls by their centre lines, open or closed, with one cell or
 * several.
 *
 * <p>The unknowns are how far each junction warps along the beam. A wall's flow follows from the
 * warping of its two ends, ∫q/t ds = G(Δw + θ'·∫(y dz − z dy)), and at each junction the flows that
 * arrive and leave balance. That alone finds the flow in every cell: no cuts, no redundants (common
 * thin-wall theory, V. Z. Vlasov, Thin-Walled Elastic Beams, from memory). Walls meet at their
 * centre lines.
 */
final class ThinWalls {
  /** Ends that are closer are one junction [m]. */
  private static final double JOINED = 1e-8;

  private final List<Strip> strips;
  private final Spot centroid;
  private final Spot second;
  private final double product;
  private final List<Spot> junctions = new ArrayList<>();
  private final int[] starts;
  private final int[] ends;

  ThinWalls(List<Strip> drawn) {
    double area = drawn.stream().mapToDouble(Strip::area).sum();
    centroid =
        drawn.stream()
            .map(strip -> strip.areaMoment(1))
            .reduce(Spot.ORIGIN, Spot::plus)
            .times(1 / area);
    Spot back = centroid.times(-1);
    strips = drawn.stream().map(s -> s.moved(back)).toList();
    second = new Spot(integral(Spot::y, Spot::y), integral(Spot::z, Spot::z));
    product = integral(Spot::y, Spot::z);
    starts = strips.stream().mapToInt(strip -> junction(strip.path().start())).toArray();
    ends = strips.stream().mapToInt(strip -> junction(strip.path().end())).toArray();
  }

  /** Flow of a shear force through the shear centre. */
  Flow shear(Spot force) {
    double determinant = second.y() * second.z() - product * product;
    Spot slope =
        new Spot(
            (second.z() * force.y() - product * force.z()) / determinant,
            (second.y() * force.z() - product * force.y()) / determinant);
    return flow(slope, 0);
  }

  /** Flow around the cells for a unit G·θ', free to warp; none in open walls. */
  Flow twist() {
    return flow(Spot.ORIGIN, 1);
  }

  /** Bredt's term of the cells and a third of b·t³ of every wall [m⁴]. */
  double torsionConstant() {
    double open =
        strips.stream().mapToDouble(s -> s.area() * s.thickness() * s.thickness() / 3).sum();
    return twist().moment() + open;
  }

  /** The sectorial coordinate about the shear centre. */
  Warping warping() {
    double[] flows = flowBetweenHeldJunctions(Spot.ORIGIN, 1);
    double[] moved = balance(flows, new Flow(strips, flows, Spot.ORIGIN));
    double[] sectorial = Arrays.stream(starts).mapToDouble(start -> -moved[start]).toArray();
    return Warping.about(shearCentre().minus(centroid), twist(), sectorial);
  }

  /** The shear centre in the axes in which the walls were drawn. */
  Spot shearCentre() {
    double y = shear(new Spot(0, 1)).moment();
    double z = -shear(new Spot(1, 0)).moment();
    return centroid.plus(new Spot(y, z));
  }

  /** Shear areas along y and z, by energy: V²/∫τ² dA [m²]. */
  Spot shearAreas() {
    return new Spot(1 / shear(new Spot(1, 0)).energy(), 1 / shear(new Spot(0, 1)).energy());
  }

  private Flow flow(Spot slope, double twist) {
    double[] flows = flowBetweenHeldJunctions(slope, twist);
    double[] warping = balance(flows, new Flow(strips, flows, slope));
    for (int i = 0; i < flows.length; i++) {
      flows[i] += stiffness(i) * (warping[ends[i]] - warping[starts[i]]);
    }
    return new Flow(strips, flows, slope);
  }

  /** Each wall's flow at its start if no junction warped. */
  private double[] flowBetweenHeldJunctions(Spot slope, double twist) {
    Flow growth = new Flow(strips, new double[strips.size()], slope);
    double[] flows = new double[strips.size()];
    for (int i = 0; i < flows.length; i++) {
      int wall = i;
      double sweep = strips.get(i).path().sweep();
      flows[i] = stiffness(i) * twist * sweep - Gauss.mean(s -> growth.at(wall, s));
    }
    return flows;
  }

  /**
   * The junctions' warping that makes arriving and leaving flows balance; of walls that hang
   * together, one junction stays.
   */
  private double[] balance(double[] leaving, Flow flow) {
    double[][] matrix = new double[junctions.size()][junctions.size()];
    double[] right = new double[junctions.size()];
    for (int held : heldJunctions()) {
      matrix[held][held] = stiffness(0);
    }
    for (int i = 0; i < leaving.length; i++) {
      join(matrix, starts[i], ends[i], stiffness(i));
      right[starts[i]] += leaving[i];
      right[ends[i]] -= flow.at(i, 1);
    }
    return new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 0)
        .getSolver()
        .solve(new ArrayRealVector(right, false))
        .toArray();
  }

  /** One junction of each part that hangs together, such as of a tube and the sleeve in it. */
  private int[] heldJunctions() {
    int[] first = IntStream.range(0, junctions.size()).toArray();
    for (int round = 0; round < first.length; round++) {
      for (int i = 0; i < starts.length; i++) {
        int least = Math.min(first[starts[i]], first[ends[i]]);
        first[starts[i]] = least;
        first[ends[i]] = least;
      }
    }
    return Arrays.stream(first).distinct().toArray();
  }

  /** Flow for a unit difference of warping between a wall's ends, for a shear modulus of 1. */
  private double stiffness(int wall) {
    return strips.get(wall).thickness() / strips.get(wall).path().length();
  }

  private static void join(double[][] matrix, int start, int end, double stiffness) {
    matrix[start][start] += stiffness;
    matrix[end][end] += stiffness;
    matrix[start][end] -= stiffness;
    matrix[end][start] -= stiffness;
  }

  private int junction(Spot spot) {
    for (int i = 0; i < junctions.size(); i++) {
      if (junctions.get(i).minus(spot).size() < JOINED) {
        return i;
      }
    }
    junctions.add(spot);
    return junctions.size() - 1;
  }

  private double integral(ToDoubleFunction<Spot> one, ToDoubleFunction<Spot> two) {
    return strips.stream()
        .mapToDouble(
            strip ->
                strip.area()
                    * Gauss.mean(
                        s -> {
                          Spot spot = strip.path().at(s);
                          return one.applyAsDouble(spot) * two.applyAsDouble(spot);
                        }))
        .sum();
  }
}
