package rungwork.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import rungwork.fault.Guard;

/**
 * The internal forces along one beam: between the places where loads begin, end or act they are
 * exact polynomials, in second order exact waves or hyperbolas. With q the line loads along its
 * axes and t the torque per length about the line of shear centres:
 *
 * <pre>
 *   dN/dx = −qx    dVy/dx = −qy    dVz/dx = −qz    dT/dx = −t    dMz/dx = −Vy    dMy/dx = Vz
 * </pre>
 */
public final class BeamForces {
  private final Member member;
  private final Span span;

  /**
   * The internal forces of a member.
   *
   * @param member the member
   * @param span what acts on it, forces at its start included
   */
  BeamForces(Member member, Span span) {
    this.member = member;
    this.span = span;
  }

  /**
   * The beam's name.
   *
   * @return its name
   */
  public String beam() {
    return member.beam().name();
  }

  /**
   * Its length.
   *
   * @return the distance between its ends [m]
   */
  public double length() {
    return member.length();
  }

  /**
   * The internal forces at a cut. Where a point load acts, the cut is just beyond it.
   *
   * @param fraction of the length, 0 at the start and 1 at the end [1]
   * @return the six internal forces there
   */
  public InternalForces at(double fraction) {
    double[] state =
        member.normalForce() == 0
            ? span.forcesAt(fraction, member.length())
            : span.at(fraction, member);
    return new InternalForces(
        state[Span.N],
        Across.IN_PLANE.shearAcross(state, member),
        Across.OUT_OF_PLANE.shearAcross(state, member),
        member.torque(state),
        state[Span.MY],
        state[Span.MZ]);
  }

  /**
   * Where some internal force can be largest: both ends, where a line load begins or ends, both
   * sides of each point load, and each place between where a shear force or a line load crosses
   * zero, for there the moment or the shear force is extreme.
   *
   * @return fractions of the length in rising order [1]
   */
  public List<Double> stations() {
    TreeSet<Double> stations = new TreeSet<>(List.of(0.0, 1.0));
    for (double jump : span.jumps()) {
      if (jump > 0) {
        stations.add(Math.nextDown(jump));
      }
    }
    double from = 0;
    for (double to : span.breaks()) {
      stations.add(to);
      addZeros(stations, from, to);
      from = to;
    }
    addZeros(stations, from, 1);
    return List.copyOf(stations);
  }

  private void addZeros(TreeSet<Double> stations, double from, double to) {
    if (member.normalForce() != 0) {
      search(stations, from, to);
      return;
    }
    InternalForces there = at(from);
    double[] shear = {there.vy(), there.vz()};
    for (int axis = 0; axis < 3; axis++) {
      double load = span.perMetre(axis, from, length());
      double growth = span.growth(axis, from);
      add(stations, from, to, -load / growth);
      if (axis > 0) {
        for (double root : roots(-growth / 2, -load, shear[axis - 1])) {
          add(stations, from, to, root);
        }
      }
    }
  }

  /** Under a normal force the shear force is no polynomial: its zeros are looked for. */
  private void search(TreeSet<Double> stations, double from, double to) {
    stations.addAll(Zeros.between(from, to, this::shears));
    add(stations, from, to, -span.perMetre(0, from, length()) / span.growth(0, from));
  }

  /** Both shear forces at a cut, and how much each grows a metre. */
  private double[] shears(double fraction) {
    double[] state = span.at(fraction, member);
    double[] shears = new double[4];
    for (Across across : Across.values()) {
      double load = span.perMetre(across.shear() - Span.N, fraction, length());
      shears[across.ordinal()] = across.shearAcross(state, member);
      shears[2 + across.ordinal()] =
          across.shearGrowth(load, span.curvature(across), state, member);
    }
    return shears;
  }

  private void add(TreeSet<Double> stations, double from, double to, double x) {
    double fraction = from + x / length();
    if (fraction > from && fraction < to) {
      stations.add(fraction);
    }
  }

  /** Where ax² + bx + c is zero; the stable form of the formula, for a may be next to nothing. */
  static double[] roots(double a, double b, double c) {
    double half = -b / 2;
    double q = half + Math.copySign(Math.sqrt(half * half - a * c), half);
    return new double[] {q / a, c / q};
  }

  /**
   * The largest value of one of the six internal forces.
   *
   * @param force one of the six, such as {@code InternalForces::mz}
   * @return where it is largest, exactly
   */
  public Extreme largest(ToDoubleFunction<InternalForces> force) {
    return extremes(force).stream().max(Comparator.comparingDouble(Extreme::value)).orElseThrow();
  }

  /**
   * The smallest value of one of the six internal forces: the most negative.
   *
   * @param force one of the six, such as {@code InternalForces::mz}
   * @return where it is smallest, exactly
   */
  public Extreme smallest(ToDoubleFunction<InternalForces> force) {
    return extremes(force).stream().min(Comparator.comparingDouble(Extreme::value)).orElseThrow();
  }

  private List<Extreme> extremes(ToDoubleFunction<InternalForces> force) {
    List<Extreme> extremes = new ArrayList<>();
    for (double fraction : stations()) {
      extremes.add(new Extreme(fraction, force.applyAsDouble(at(fraction))));
    }
    return extremes;
  }

  /**
   * An extreme value along the beam.
   *
   * @param fraction where, of the length [1]; just before a point load when that side counts
   * @param value the internal force there [N] or [N·m]
   */
  public record Extreme(double fraction, double value) {
    /** Refuses what is not finite. */
    public Extreme {
      Guard.solved("extreme force", fraction + value);
    }
  }
}
