package rungwork.section;

import java.util.function.ToDoubleBiFunction;

/**
 * How a cross-section warps when it is twisted: under a twist θ' per length a place moves by −θ'·ω
 * along the beam. The sectorial coordinate ω is taken about the shear centre, its mean is nil.
 *
 * <p>Along a centre line dω = r × ds − q/(G·θ'·t)·ds, the area swept from the shear centre less
 * what the flow around a closed cell takes back; across a wall ω changes by the distance from the
 * shear centre along the wall, because its faces are free of shear (V. Z. Vlasov, Thin-Walled
 * Elastic Beams, and S. U. Benscoter 1954 for cells; from memory).
 *
 * @param twist the flow around the cells for a unit G·θ', in walls about their centroid
 * @param starts ω about the centroid at each wall's start, up to a constant [m²]
 * @param pole the shear centre from the centroid [m]
 * @param mean of ω with these starts [m²]
 */
record Warping(Flow twist, double[] starts, Spot pole, double mean) {
  static Warping about(Spot pole, Flow twist, double[] starts) {
    Warping shifted = new Warping(twist, starts, pole, 0);
    double area = shifted.integral((wall, s) -> 1);
    return new Warping(twist, starts, pole, shifted.integral(shifted::at) / area);
  }

  /** ω on the centre line [m²]. */
  double at(int wall, double fraction) {
    Segment path = strip(wall).path();
    double around = twist.at(wall, fraction) * fraction * path.length() / strip(wall).thickness();
    double aboutPole = path.at(fraction).cross(pole);
    return starts[wall] + path.sweep(fraction) - around + aboutPole - mean;
  }

  /** ω at the face of a wall on which a mark stands [m²]. */
  double at(Mark mark) {
    double half = mark.side() * strip(mark.wall()).thickness() / 2;
    return at(mark.wall(), mark.fraction()) - half * along(mark.wall(), mark.fraction());
  }

  /** Warping constant ∫ω² dA of the centre lines, and ∫n²·r² dA across the walls. */
  ShearTorsion.Resistance resistance() {
    return new ShearTorsion.Resistance(
        integral((wall, s) -> Math.pow(at(wall, s), 2)),
        integral((wall, s) -> Math.pow(strip(wall).thickness() * along(wall, s), 2) / 12));
  }

  /** How far a place of a centre line lies from the shear centre along its wall [m]. */
  private double along(int wall, double fraction) {
    Spot from = strip(wall).path().at(fraction).minus(pole);
    Spot direction = strip(wall).path().direction(fraction);
    return from.y() * direction.y() + from.z() * direction.z();
  }

  private double integral(ToDoubleBiFunction<Integer, Double> value) {
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      int wall = i;
      sum += strip(wall).area() * Gauss.mean(s -> value.applyAsDouble(wall, s));
    }
    return sum;
  }

  private Strip strip(int wall) {
    return twist.strips().get(wall);
  }
}
