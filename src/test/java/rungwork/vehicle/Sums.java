package rungwork.vehicle;

import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/** Adds up loads in the plainest way: all moved to the origin. */
final class Sums {
  static final Point ORIGIN = new Point(0, 0, 0);

  private Sums() {}

  static Wrench of(List<Load> loads, Frame frame) {
    Wrench sum = Wrench.ZERO;
    for (Load load : loads) {
      sum = sum.plus(atOrigin(load, frame));
    }
    return sum;
  }

  /** The largest of the six components, moments over one metre. */
  static double largest(Wrench w) {
    double force = Math.max(Math.abs(w.fx()), Math.max(Math.abs(w.fy()), Math.abs(w.fz())));
    double moment = Math.max(Math.abs(w.mx()), Math.max(Math.abs(w.my()), Math.abs(w.mz())));
    return Math.max(force, moment);
  }

  private static Wrench atOrigin(Load load, Frame frame) {
    if (load instanceof Load.AtNode atNode) {
      return atNode.wrench().moved(frame.node(atNode.node()).at(), ORIGIN);
    }
    Load.AlongBeam along = (Load.AlongBeam) load;
    Beam beam = frame.beam(along.beam());
    Point start = frame.node(beam.start()).at();
    Point end = frame.node(beam.end()).at();
    Point middle =
        new Point((start.x() + end.x()) / 2, (start.y() + end.y()) / 2, (start.z() + end.z()) / 2);
    return Wrench.force(along.wx(), along.wy(), along.wz())
        .times(frame.length(beam))
        .moved(middle, ORIGIN);
  }
}
