package rungwork.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * What a load case does where it acts.
 *
 * @param frame the loaded frame
 * @param loadCase its loads
 */
record ActingLoads(Frame frame, LoadCase loadCase) {
  private static final Scale PERCENT = new Scale("%", 0.01);

  /** The loads summed at each node, and those along each beam as their resultant. */
  List<ActingLoad> all() {
    Map<String, ActingLoad> sums = new LinkedHashMap<>();
    for (Load load : loadCase.loads()) {
      acting(load).ifPresent(one -> sums.merge(one.place(), one, ActingLoad::plus));
    }
    return List.copyOf(sums.values());
  }

  /** What a load does where it acts; nothing for what only strains the frame. */
  private Optional<ActingLoad> acting(Load load) {
    if (load instanceof Load.AtNode node) {
      return Optional.of(new ActingLoad(node.node(), frame.node(node.node()).at(), node.wrench()));
    } else if (load instanceof Load.OnBeam on) {
      String place = "on %s at %s".formatted(on.beam(), part(on.beam(), on.from()));
      return Optional.of(new ActingLoad(place, along(on.beam(), on.from()), on.wrench()));
    } else if (load instanceof Load.AlongBeam along) {
      double length = frame.length(frame.beam(along.beam()));
      Wrench sum = Wrench.force(along.wx(), along.wy(), along.wz()).times(length);
      return Optional.of(
          new ActingLoad("along " + along.beam(), along(along.beam(), length / 2), sum));
    } else if (load instanceof Load.AlongPart part) {
      return Optional.of(acting(part));
    }
    return Optional.empty();
  }

  /** The resultant of a load that varies linearly: (last − first)·l²/12 turns about its middle. */
  private ActingLoad acting(Load.AlongPart part) {
    double length = part.to() - part.from();
    Load.PerMetre a = part.first();
    Load.PerMetre b = part.last();
    Point middle = along(part.beam(), (part.from() + part.to()) / 2);
    Wrench force =
        Wrench.force(a.wx() + b.wx(), a.wy() + b.wy(), a.wz() + b.wz()).times(length / 2);
    Wrench rest =
        Wrench.force(b.wx() - a.wx(), b.wy() - a.wy(), b.wz() - a.wz())
            .times(length / 12)
            .moved(along(part.beam(), part.to()), along(part.beam(), part.from()));
    Wrench turn = Wrench.moment(rest.mx(), rest.my(), rest.mz());
    return new ActingLoad(words(part), middle, force.plus(turn));
  }

  private String words(Load.AlongPart part) {
    boolean whole = part.from() == 0 && part.to() == frame.length(frame.beam(part.beam()));
    return whole
        ? "along " + part.beam()
        : "along %s, %s–%s"
            .formatted(part.beam(), part(part.beam(), part.from()), part(part.beam(), part.to()));
  }

  /** A place on a beam as a part of its length: the same in every reader's units. */
  private String part(String beam, double from) {
    return PERCENT.show(from / frame.length(frame.beam(beam)), 3);
  }

  private Point along(String name, double from) {
    Beam beam = frame.beam(name);
    Point start = frame.startOf(beam);
    Point end = frame.endOf(beam);
    double t = from / frame.length(beam);
    return start.plus(
        t * (end.x() - start.x()), t * (end.y() - start.y()), t * (end.z() - start.z()));
  }
}
