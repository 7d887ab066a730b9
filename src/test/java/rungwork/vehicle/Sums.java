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
    Load.AlongPart part = (Load.AlongPart) load;
    Load.PerMetre a = part.first();
    Load.PerMetre b = part.last();
    double half = (part.to() - part.from()) / 2;
    // Two triangles, each acting at its third.
    Wrench first = Wrench.force(a.wx(), a.wy(), a.wz()).times(half);
    Wrench last = Wrench.force(b.wx(), b.wy(), b.wz()).times(half);
    return first
        .moved(place(frame, part.beam(), part.from() + 2 * half / 3), ORIGIN)
        .plus(last.moved(place(frame, part.beam(), part.to() - 2 * half / 3), ORIGIN));
  }

  private static Point place(Frame frame, String name, double from) {
    Beam beam = frame.beam(name);
    Point start = frame.startOf(beam);
    Point end = frame.endOf(beam);
    double t = from / frame.length(beam);
    return start.plus(
        t * (end.x() - start.x()), t * (end.y() - start.y()), t * (end.z() - start.z()));
  }
}
