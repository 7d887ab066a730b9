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
    if (load instanceof Load.OnBeam on) {
      return on.wrench().moved(place(frame, on.beam(), on.from()), place);
    }
    if (load instanceof Load.AlongBeam along) {
      double length = frame.length(frame.beam(along.beam()));
      return Wrench.force(along.wx(), along.wy(), along.wz())
          .times(length)
          .moved(place(frame, along.beam(), length / 2), place);
    }
    return load instanceof Load.AlongPart part ? sum(part, frame, place) : Wrench.ZERO;
  }

  /** Two triangles, each acting at its third. */
  private static Wrench sum(Load.AlongPart part, Frame frame, Point place) {
    double length = part.to() - part.from();
    Load.PerMetre a = part.first();
    Load.PerMetre b = part.last();
    Wrench first = Wrench.force(a.wx(), a.wy(), a.wz()).times(length / 2);
    Wrench last = Wrench.force(b.wx(), b.wy(), b.wz()).times(length / 2);
    return first
        .moved(place(frame, part.beam(), part.from() + length / 3), place)
        .plus(last.moved(place(frame, part.beam(), part.from() + 2 * length / 3), place));
  }

  private static Point place(Frame frame, String name, double from) {
    Beam beam = frame.beam(name);
    Point a = frame.startOf(beam);
    Point b = frame.endOf(beam);
    double t = from / frame.length(beam);
    return a.plus(t * (b.x() - a.x()), t * (b.y() - a.y()), t * (b.z() - a.z()));
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
