package rungwork.solve;

import java.util.Random;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Node;
import rungwork.frame.Plane;

/** Flat frames made crooked in the third direction too. */
final class Lifted {
  private final Random random;
  private final Frame flat;

  Lifted(long seed, Frame flat) {
    random = new Random(seed);
    this.flat = flat;
  }

  /** Every node moved along the frame's normal by up to so much either way. */
  Frame by(double most) {
    Frame.Builder lifted = Frame.rising(flat.plane());
    for (Node node : flat.nodes()) {
      double[] up = flat.plane().toVehicle(0, 0, most * (2 * random.nextDouble() - 1));
      lifted.node(node.name(), node.at().plus(up[0], up[1], up[2]));
    }
    flat.beams().forEach(lifted::beam);
    flat.supports().forEach(lifted::support);
    return lifted.build();
  }

  /** Arms that leave the plane as well. */
  static Frame armed(Frame frame, double off) {
    return frame.with(beam -> armed(beam, frame.plane(), off));
  }

  private static Beam armed(Beam beam, Plane plane, double off) {
    End.Arm arm = beam.atEnd().arm();
    double[] up = plane.toVehicle(0, 0, off);
    End end = beam.atEnd().armed(arm.x() + up[0], arm.y() + up[1], arm.z() + up[2]);
    return beam.joined(beam.atStart(), end);
  }

  /** The beam's axes in vehicle axes: x along it, y square to the plane's normal. */
  static double[][] axes(Frame frame, Beam beam) {
    double[] x = unit(run(frame, beam));
    double[] y = unit(cross(frame.plane().toVehicle(0, 0, 1), x));
    return new double[][] {x, y, cross(x, y)};
  }

  private static double[] run(Frame frame, Beam beam) {
    var from = frame.startOf(beam);
    var to = frame.endOf(beam);
    return new double[] {to.x() - from.x(), to.y() - from.y(), to.z() - from.z()};
  }

  private static double[] unit(double[] v) {
    double size = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    return new double[] {v[0] / size, v[1] / size, v[2] / size};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
