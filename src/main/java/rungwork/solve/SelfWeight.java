package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * The mass of a frame's own beams, each as a slender uniform bar: ρAL at its middle, ρAL³/12 about
 * every axis across it, nothing about its own.
 */
public final class SelfWeight {
  private final Frame frame;

  /**
   * The own mass of a frame.
   *
   * @param frame the frame
   */
  public SelfWeight(Frame frame) {
    this.frame = frame;
  }

  /**
   * The beams as masses for an {@link InertiaBalance}, each carried by its end nodes.
   *
   * @return a mass for each beam, named after it
   */
  public List<Mass> masses() {
    return frame.beams().stream().map(this::mass).toList();
  }

  /**
   * The beams' inertia as loads along them when the frame accelerates. The line load is uniform, by
   * the acceleration of the beam's middle: exact without turning. What turning adds, a load that
   * grows from the middle, is given as a couple of forces at the ends. Both together do the same to
   * a rigid body as the beam's mass.
   *
   * @param acceleration how the frame accelerates; {@link RigidAcceleration#STANDING} for weights
   * @return a line load for each beam, and the couples
   */
  public List<Load> loads(RigidAcceleration acceleration) {
    List<Load> loads = new ArrayList<>();
    for (Beam beam : frame.beams()) {
      Mass mass = mass(beam);
      Wrench inertia = acceleration.inertia(mass);
      double length = frame.length(beam);
      loads.add(
          new Load.AlongBeam(
              beam.name(), inertia.fx() / length, inertia.fy() / length, inertia.fz() / length));
      Wrench couple = Wrench.moment(inertia.mx(), inertia.my(), inertia.mz());
      loads.addAll(Carriers.of(frame, mass.carriers()).share(couple, mass.at()));
    }
    return loads;
  }

  private Mass mass(Beam beam) {
    Point from = frame.node(beam.start()).at();
    Point to = frame.node(beam.end()).at();
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double z = to.z() - from.z();
    double perMetre = beam.material().elasticity().density() * beam.section().properties().area();
    double kilograms = perMetre * frame.length(beam);
    Mass.Inertia bar =
        new Mass.Inertia(y * y + z * z, x * x + z * z, x * x + y * y, x * y, y * z, z * x);
    return new Mass(
        beam.name(),
        kilograms,
        from.plus(x / 2, y / 2, z / 2),
        bar.times(kilograms / 12),
        List.of(beam.start(), beam.end()),
        1);
  }
}
