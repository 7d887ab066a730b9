package rungwork.solve;

import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/** What loads do together to a rigid body. */
final class Totals {
  private Totals() {}

  static Wrench about(Point place, Frame frame, List<? extends Load> loads) {
    return loads.stream().map(load -> moved(place, frame, load)).reduce(Wrench.ZERO, Wrench::plus);
  }

  private static Wrench moved(Point place, Frame frame, Load load) {
    if (load instanceof Load.AtNode atNode) {
      return atNode.wrench().moved(frame.node(atNode.node()).at(), place);
    }
    Load.AlongBeam along = (Load.AlongBeam) load;
    Beam beam = frame.beam(along.beam());
    Point a = frame.node(beam.start()).at();
    Point b = frame.node(beam.end()).at();
    Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
    return Wrench.force(along.wx(), along.wy(), along.wz())
        .times(frame.length(beam))
        .moved(middle, place);
  }

  /** The largest component, moments taken per metre. */
  static double size(Wrench wrench) {
    double forces =
        Math.max(Math.abs(wrench.fx()), Math.max(Math.abs(wrench.fy()), Math.abs(wrench.fz())));
    double moments =
        Math.max(Math.abs(wrench.mx()), Math.max(Math.abs(wrench.my()), Math.abs(wrench.mz())));
    return Math.max(forces, moments);
  }
}
