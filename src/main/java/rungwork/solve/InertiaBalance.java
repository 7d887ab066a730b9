package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * Forces on a vehicle that nothing holds, answered by the inertia of its masses: six accelerations
 * from the full rigid-body mass matrix, products of inertia and each item's own inertia included.
 *
 * <pre>
 *   m a_G = ΣF,     I_G α = ΣM_G,     I_G = Σ own + Σ m (r² 1 − r rᵀ),     G the centre of mass
 * </pre>
 *
 * <p>(Newton and Euler; any text on rigid-body dynamics.) Masses count as heavy as they are; pass
 * {@link Mass#amplified()} masses for a sudden load on springs and belts.
 */
public final class InertiaBalance {
  /** An axis with less than this part of the largest moment of inertia has none: rounding [1]. */
  private static final double NO_INERTIA = 1e-12;

  /** A moment below this part of all moments needs no answer: rounding [1]. */
  private static final double NO_MOMENT = 1e-10;

  private final List<Mass> masses;
  private final List<AppliedWrench> applied;
  private final Body body;
  private final RigidAcceleration acceleration;

  private InertiaBalance(List<Mass> masses, List<AppliedWrench> applied) {
    this.masses = List.copyOf(masses);
    this.applied = List.copyOf(applied);
    body = Body.of(this.masses);
    acceleration = body.answer(this.applied);
  }

  /**
   * Balances forces by inertia.
   *
   * @param masses all masses of the vehicle
   * @param applied all forces on it
   * @return the balance
   * @throws ModelException when there is no mass, or a moment acts about a line on which all masses
   *     are points
   */
  public static InertiaBalance of(List<Mass> masses, List<AppliedWrench> applied) {
    return new InertiaBalance(masses, applied);
  }

  /**
   * The beams of a frame as masses, each a slender uniform bar carried by its end nodes: ρAL at its
   * middle, ρAL³/12 about every axis across it, nothing about its own.
   *
   * @param frame the frame
   * @return a mass for each beam, named after it
   */
  public static List<Mass> ownMasses(Frame frame) {
    return new SelfWeight(frame).masses();
  }

  /**
   * All masses together.
   *
   * @return their sum [kg]
   */
  public double kilograms() {
    return body.kilograms;
  }

  /**
   * How the vehicle accelerates.
   *
   * @return the acceleration about the centre of mass
   */
  public RigidAcceleration acceleration() {
    return acceleration;
  }

  /**
   * The loads on the frame: what is applied and what the masses answer, each shared among its
   * carriers. Together they are in balance.
   *
   * @param frame the frame that carries the masses
   * @return loads for {@link Solver#unsupported}
   */
  public List<Load> loads(Frame frame) {
    List<Load> loads = new ArrayList<>(acceleration.loads(masses, frame));
    for (AppliedWrench wrench : applied) {
      loads.addAll(Carriers.of(frame, wrench.carriers()).share(wrench.wrench(), wrench.at()));
    }
    return loads;
  }

  /** All masses together as one rigid body: what of a balance no force changes. */
  public static final class Body {
    private final double kilograms;
    private final Point centre;
    private final TurnTensor inertia = new TurnTensor(NO_INERTIA);

    private Body(List<Mass> masses) {
      if (masses.isEmpty()) {
        throw new ModelException("there is no mass whose inertia could answer the load");
      }
      double sum = 0;
      double x = 0;
      double y = 0;
      double z = 0;
      for (Mass mass : masses) {
        sum += mass.kilograms();
        x += mass.kilograms() * mass.at().x();
        y += mass.kilograms() * mass.at().y();
        z += mass.kilograms() * mass.at().z();
      }
      kilograms = sum;
      centre = new Point(x / sum, y / sum, z / sum);
      masses.forEach(this::add);
    }

    /**
     * Puts masses together.
     *
     * @param masses all masses, as heavy as they are
     * @return the body
     * @throws ModelException when there is none
     */
    public static Body of(List<Mass> masses) {
      return new Body(masses);
    }

    private void add(Mass mass) {
      Point at = mass.at();
      inertia.addPoint(
          mass.kilograms(),
          new double[] {at.x() - centre.x(), at.y() - centre.y(), at.z() - centre.z()});
      Mass.Inertia own = mass.own();
      double[][] tensor = {
        {own.xx(), -own.xy(), -own.zx()},
        {-own.xy(), own.yy(), -own.yz()},
        {-own.zx(), -own.yz(), own.zz()}
      };
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          inertia.add(i, j, tensor[i][j]);
        }
      }
    }

    /**
     * How it accelerates.
     *
     * @param applied all forces on it
     * @return the acceleration about its centre of mass
     * @throws ModelException when a moment acts about a line on which all masses are points
     */
    public RigidAcceleration answer(List<AppliedWrench> applied) {
      Wrench total = Wrench.ZERO;
      double moments = 0;
      for (AppliedWrench wrench : applied) {
        Wrench there = wrench.wrench().moved(wrench.at(), centre);
        total = total.plus(there);
        moments += Math.abs(there.mx()) + Math.abs(there.my()) + Math.abs(there.mz());
      }
      TurnTensor.Answer turn = inertia.answer(new double[] {total.mx(), total.my(), total.mz()});
      refuseSpin(turn.rest(), moments);
      double[] alpha = turn.turn();
      return new RigidAcceleration(
          centre,
          total.fx() / kilograms,
          total.fy() / kilograms,
          total.fz() / kilograms,
          alpha[0],
          alpha[1],
          alpha[2]);
    }

    private static void refuseSpin(double[] rest, double moments) {
      double unanswered = Math.hypot(Math.hypot(rest[0], rest[1]), rest[2]);
      if (unanswered > NO_MOMENT * moments) {
        throw new ModelException(
            "a moment of "
                + Scale.NM.show(unanswered)
                + " acts about a line on which all masses are points, so no inertia answers it;"
                + " give a mass its own inertia");
      }
    }
  }

  @Override
  public String toString() {
    return Scale.KG.show(body.kilograms) + ": " + acceleration;
  }
}
