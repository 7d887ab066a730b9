package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Point;

/**
 * The mass of a frame's own beams, each as a slender uniform bar: ρAL at its middle, ρAL³/12 about
 * every axis across it, nothing about its own.
 */
final class SelfWeight {
  private final Frame frame;

  /**
   * The own mass of a frame.
   *
   * @param frame the frame
   */
  SelfWeight(Frame frame) {
    this.frame = frame;
  }

  /**
   * The beams as masses for an {@link InertiaBalance}, each carried by its end nodes.
   *
   * @return a mass for each beam, named after it
   */
  List<Mass> masses() {
    return frame.beams().stream().map(this::mass).toList();
  }

  /**
   * The beams' inertia as loads along them when the frame accelerates: each piece of a beam pushes
   * by its own acceleration, which varies linearly along the beam when the frame turns.
   *
   * @param acceleration how the frame accelerates; {@link RigidAcceleration#STANDING} for weights
   * @return a load along each beam
   */
  List<Load> loads(RigidAcceleration acceleration) {
    List<Load> loads = new ArrayList<>();
    for (Beam beam : frame.beams()) {
      Load.PerMetre first = inertia(beam, acceleration.at(frame.startOf(beam)));
      Load.PerMetre last = inertia(beam, acceleration.at(frame.endOf(beam)));
      loads.add(new Load.AlongPart(beam.name(), 0, frame.length(beam), first, last));
    }
    return loads;
  }

  private static Load.PerMetre inertia(Beam beam, RigidAcceleration there) {
    double m = -perMetre(beam);
    return new Load.PerMetre(m * there.ax(), m * there.ay(), m * there.az());
  }

  private static double perMetre(Beam beam) {
    return beam.material().elasticity().density() * beam.section().properties().area();
  }

  private Mass mass(Beam beam) {
    Point from = frame.startOf(beam);
    Point to = frame.endOf(beam);
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double z = to.z() - from.z();
    double kilograms = perMetre(beam) * frame.length(beam);
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
