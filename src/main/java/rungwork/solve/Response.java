package rungwork.solve;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Wrench;

/** What a frame does under a load case. Immutable. */
public final class Response {
  /** Of a deflection under a load that grows linearly. */
  private static final int DEGREE = 5;

  private final Structure structure;
  private final Theory theory;
  private final LoadCase loadCase;
  private final Solution solution;
  private final double[] unbalanced;
  private final double residual;

  /** Where equilibrium is asked for. */
  public enum Theory {
    /** On the frame as it was drawn: small loads, far from the critical ones. */
    FIRST_ORDER,
    /** On the frame as the loads have moved it. */
    SECOND_ORDER
  }

  Response(Structure structure, Theory theory, LoadCase loadCase, Solution solution) {
    this.structure = structure;
    this.theory = theory;
    this.loadCase = loadCase;
    this.solution = solution;
    unbalanced = solution.unbalanced();
    residual = solution.imbalance(unbalanced);
  }

  /**
   * Where equilibrium was asked for.
   *
   * @return first or second order
   */
  public Theory theory() {
    return theory;
  }

  /** The frame with its places counted; in second order with the normal forces in its members. */
  Structure structure() {
    return structure;
  }

  /** The mean normal force of each of so many equal pieces of each member [N]. */
  double[] normalForces(int pieces) {
    return solution.normalForces(pieces);
  }

  /**
   * The frame.
   *
   * @return the frame that was solved
   */
  public Frame frame() {
    return structure.frame();
  }

  /**
   * The load case.
   *
   * @return the load case that was solved
   */
  public LoadCase loadCase() {
    return loadCase;
  }

  /**
   * How far a node moves; in a frame without supports, against three far nodes that are held to
   * remove its free motion.
   *
   * @param node its name
   * @return its motion in vehicle axes
   */
  public Displacement displacement(String node) {
    int first = 6 * structure.node(node);
    return displacement(IntStream.range(first, first + 6).mapToDouble(solution::motion).toArray());
  }

  /**
   * What the supports do to a node, springs included.
   *
   * @param node its name
   * @return force and moment on the frame at that node, in vehicle axes; zero where nothing holds
   */
  public Wrench reaction(String node) {
    int first = 6 * structure.node(node);
    double[] reaction = new double[6];
    for (int i = 0; i < 6; i++) {
      int motion = first + i;
      reaction[i] = structure.held(motion) ? -unbalanced[motion] : -solution.springForce(motion);
    }
    Plane plane = structure.frame().plane();
    double[] force = plane.toVehicle(reaction[0], reaction[1], reaction[2]);
    double[] moment = plane.toVehicle(reaction[3], reaction[4], reaction[5]);
    return new Wrench(force[0], force[1], force[2], moment[0], moment[1], moment[2]);
  }

  /**
   * The internal forces along a beam.
   *
   * @param beam its name
   * @return its internal forces; T about the line of shear centres
   */
  public BeamForces forces(String beam) {
    return solution.forces(structure.member(beam));
  }

  /**
   * How far a point of a beam's line of centroids moves: exact, as are the internal forces.
   *
   * @param beam its name
   * @param fraction of the length, 0 at the start and 1 at the end [1]
   * @return the motion there in vehicle axes
   */
  public Displacement deflection(String beam, double fraction) {
    return displacement(solution.deflection(structure.member(beam)).at(fraction));
  }

  /**
   * Where a beam's line of centroids moves or turns most: exactly, for a motion along a beam is a
   * polynomial of the fifth degree at most between the places where loads begin or act.
   *
   * @param beam its name
   * @param motion which motion, in vehicle axes
   * @return where it is farthest from nothing, and its value there with its sign [m] or [rad]
   */
  public BeamForces.Extreme farthest(String beam, Freedom motion) {
    Deflection deflection = solution.deflection(structure.member(beam));
    DoubleUnaryOperator along = fraction -> displacement(deflection.at(fraction)).along(motion);
    return new Stationary(along, DEGREE)
        .places(deflection.breaks()).stream()
            .map(at -> new BeamForces.Extreme(at, along.applyAsDouble(at)))
            .max(Comparator.comparingDouble(extreme -> Math.abs(extreme.value())))
            .orElseThrow();
  }

  /**
   * The equilibrium audit: at every node, what members, springs and loads leave out of balance, the
   * largest over the sum of the loads (moments over the frame's size). For a frame without supports
   * it includes what the places held to remove the free motion carry.
   *
   * @return the residual, at most 1e-9 [1]
   */
  public double residual() {
    return residual;
  }

  private Displacement displacement(double[] motion) {
    Plane plane = structure.frame().plane();
    double[] u = plane.toVehicle(motion[0], motion[1], motion[2]);
    double[] r = plane.toVehicle(motion[3], motion[4], motion[5]);
    return new Displacement(u[0], u[1], u[2], r[0], r[1], r[2]);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "Response to %s: residual %.1e of the load", loadCase.name(), residual);
  }
}
