package rungwork.solve;

import java.util.List;
import java.util.TreeSet;

/**
 * The internal forces along one beam: exact polynomials, since its loads are uniform. With q the
 * line loads along its axes and t the torque per length about the line of shear centres:
 *
 * <pre>
 *   N = N₀ − qx·x      Vy = Vy₀ − qy·x                  Vz = Vz₀ − qz·x
 *   T = T₀ − t·x       My = My₀ + Vz₀·x − qz·x²/2       Mz = Mz₀ − Vy₀·x + qy·x²/2
 * </pre>
 */
public final class BeamForces {
  private final String beam;
  private final double length;
  private final InternalForces start;
  private final double[] line;

  BeamForces(Member member, double[] ends, double[] line) {
    beam = member.beam().name();
    length = member.length();
    start = new InternalForces(-ends[0], -ends[1], -ends[2], -ends[3], -ends[4], -ends[5]);
    this.line = line;
  }

  /**
   * The beam's name.
   *
   * @return its name
   */
  public String beam() {
    return beam;
  }

  /**
   * Its length.
   *
   * @return the distance between its nodes [m]
   */
  public double length() {
    return length;
  }

  /**
   * The internal forces at a cut.
   *
   * @param fraction of the length, 0 at the start and 1 at the end [1]
   * @return the six internal forces there
   */
  public InternalForces at(double fraction) {
    double x = fraction * length;
    return new InternalForces(
        start.n() - line[0] * x,
        start.vy() - line[1] * x,
        start.vz() - line[2] * x,
        start.t() - line[3] * x,
        start.my() + start.vz() * x - line[2] * x * x / 2,
        start.mz() - start.vy() * x + line[1] * x * x / 2);
  }

  /**
   * Where some internal force can be largest: both ends, and each place between them where a shear
   * force crosses zero, for there the moment is extreme.
   *
   * @return fractions of the length in rising order [1]
   */
  public List<Double> stations() {
    TreeSet<Double> fractions = new TreeSet<>(List.of(0.0, 1.0));
    for (double zero : new double[] {start.vy() / line[1], start.vz() / line[2]}) {
      double fraction = zero / length;
      if (fraction > 0 && fraction < 1) {
        fractions.add(fraction);
      }
    }
    return List.copyOf(fractions);
  }
}
