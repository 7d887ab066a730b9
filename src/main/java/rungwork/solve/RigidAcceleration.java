package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * How a rigid body accelerates from rest: each of its points by a + α × r. The part that grows with
 * the square of the turning speed is left out, since nothing turns yet.
 *
 * @param about the point that accelerates by ax, ay, az
 * @param ax forward [m/s²]
 * @param ay to the left [m/s²]
 * @param az up [m/s²]
 * @param alphaX about x, right-handed [rad/s²]
 * @param alphaY about y, right-handed (positive: nose down) [rad/s²]
 * @param alphaZ about z, right-handed (positive: nose to the left) [rad/s²]
 */
public record RigidAcceleration(
    Point about, double ax, double ay, double az, double alphaX, double alphaY, double alphaZ) {
  /** Refuses what is not finite. */
  public RigidAcceleration {
    Guard.solved("acceleration", ax + ay + az + alphaX + alphaY + alphaZ);
  }

  /**
   * What the ground gives a vehicle that stands: 9.80665 m/s² up (ISO 80000-3). Its inertia loads
   * are the weights.
   */
  public static final RigidAcceleration STANDING = translation(0, 0, Scale.G.inSi());

  /**
   * An acceleration without turning.
   *
   * @param ax forward [m/s²]
   * @param ay to the left [m/s²]
   * @param az up [m/s²]
   * @return the acceleration, the same everywhere
   */
  public static RigidAcceleration translation(double ax, double ay, double az) {
    return new RigidAcceleration(new Point(0, 0, 0), ax, ay, az, 0, 0, 0);
  }

  /**
   * The inertia of a frame's own beams as loads along them: each piece of a beam pushes by its own
   * acceleration, which varies linearly along the beam when the frame turns. For {@link #STANDING}
   * these are the weights.
   *
   * @param frame the frame that accelerates so
   * @return a load along each beam
   */
  public List<Load> alongBeams(Frame frame) {
    return new SelfWeight(frame).loads(this);
  }

  /**
   * The same motion, told by another point.
   *
   * @param place the other point
   * @return the same motion about that point: its ax, ay, az are that point's
   */
  public RigidAcceleration at(Point place) {
    double x = place.x() - about.x();
    double y = place.y() - about.y();
    double z = place.z() - about.z();
    return new RigidAcceleration(
        place,
        ax + alphaY * z - alphaZ * y,
        ay + alphaZ * x - alphaX * z,
        az + alphaX * y - alphaY * x,
        alphaX,
        alphaY,
        alphaZ);
  }

  /**
   * What a mass does to its carriers (d'Alembert): −m a at its centre of mass and −I α.
   *
   * @param mass the mass; its amplification is not used, see {@link Mass#amplified()}
   * @return the wrench at its centre of mass, in vehicle axes
   */
  public Wrench inertia(Mass mass) {
    RigidAcceleration there = at(mass.at());
    double m = mass.kilograms();
    Mass.Inertia own = mass.own();
    return new Wrench(
        -m * there.ax,
        -m * there.ay,
        -m * there.az,
        -(own.xx() * alphaX - own.xy() * alphaY - own.zx() * alphaZ),
        -(own.yy() * alphaY - own.yz() * alphaZ - own.xy() * alphaX),
        -(own.zz() * alphaZ - own.zx() * alphaX - own.yz() * alphaY));
  }

  /**
   * What masses do to a frame that accelerates: each mass's wrench, shared among its carriers.
   *
   * @param masses the masses
   * @param frame the frame that carries them
   * @return loads at the carriers
   */
  public List<Load> loads(List<Mass> masses, Frame frame) {
    List<Load> loads = new ArrayList<>();
    for (Mass mass : masses) {
      loads.addAll(Carriers.of(frame, mass.carriers()).share(inertia(mass), mass.at()));
    }
    return loads;
  }

  @Override
  public String toString() {
    Scale turning = new Scale("rad/s²", 1);
    return "accelerates ("
        + String.join(", ", Scale.G.show(ax), Scale.G.show(ay), Scale.G.show(az))
        + "), turns faster by ("
        + String.join(", ", turning.show(alphaX), turning.show(alphaY), turning.show(alphaZ))
        + ")";
  }
}
