package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.section.Section.Hole;
import rungwork.section.Section.Net;

/**
 * Drills one hole into one wall of a section.
 *
 * @param diameter d [m]
 * @param fromMiddle of the wall, up, or to the left in a level wall [m]
 */
record Drill(double diameter, double fromMiddle) {
  /** A wall that rises by less than this part of its length is level. */
  private static final double LEVEL = 1e-6;

  private static final String DRILLED = " drilled";

  Section through(Section section, String name) {
    Wall wall = named(section, name);
    Line middle = new Line(wall.from(), wall.to());
    Hole hole = new Hole(wall, diameter, rises(middle) ? fromMiddle : -fromMiddle);
    List<Hole> holes = new ArrayList<>(section.net().map(Net::holes).orElse(List.of()));
    holes.forEach(other -> refuseOverlap(hole, other));
    refuseOutside(wall);
    holes.add(hole);
    String kind = section.name().endsWith(DRILLED) ? section.name() : section.name() + DRILLED;
    double left = wall.width() - diameters(holes, wall) + diameter;
    double share = left / (left - diameter);
    return new Section(
        kind,
        section.properties(),
        section.points().stream().map(point -> sheared(point, wall, share)).toList(),
        section.walls(),
        section.torsion(),
        section.outline(),
        Optional.of(net(section.outline(), holes)));
  }

  private Wall named(Section section, String name) {
    Wall wall =
        section.walls().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow(() -> unknown(section, name));
    if (wall.edge() == Wall.Edge.ROUND) {
      throw new ModelException(
          "a hole in the round wall of %s is not worked out; take a section with flat walls, or the load off the hole"
              .formatted(section.name()));
    }
    if (section.outline().loops().isEmpty()) {
      throw new ModelException(
          "section %s is known by its properties alone; a hole needs its outline"
              .formatted(section.name()));
    }
    return wall;
  }

  private static ModelException unknown(Section section, String name) {
    String known = section.walls().stream().map(Wall::name).collect(Collectors.joining(", "));
    String have = known.isEmpty() ? "it has no flat wall" : "it has " + known;
    return new ModelException(
        "section %s has no wall %s to drill; %s".formatted(section.name(), name, have));
  }

  private static boolean rises(Line wall) {
    Spot along = wall.direction(0);
    return Math.abs(along.z()) > LEVEL ? along.z() > 0 : along.y() > 0;
  }

  private void refuseOutside(Wall wall) {
    String flat = Scale.MM.show(wall.width());
    if (diameter >= wall.width()) {
      throw new ModelException(
          "hole %s is not narrower than the flat part of %s, %s"
              .formatted(Scale.MM.show(diameter), wall.name(), flat));
    }
    double room = (wall.width() - diameter) / 2;
    if (Math.abs(fromMiddle) > room) {
      throw new ModelException(
          "hole %s at %s from the middle of %s runs out of its flat part, %s; it must stay within %s"
              .formatted(
                  Scale.MM.show(diameter),
                  Scale.MM.show(fromMiddle),
                  wall.name(),
                  flat,
                  Scale.MM.show(room)));
    }
  }

  private static void refuseOverlap(Hole one, Hole other) {
    double apart = Math.abs(one.fromMiddle() - other.fromMiddle());
    double least = (one.diameter() + other.diameter()) / 2;
    if (one.wall().equals(other.wall()) && apart < least) {
      throw new ModelException(
          "hole %s in %s runs into the hole of %s beside it; their middles must be %s apart or more"
              .formatted(
                  Scale.MM.show(one.diameter()),
                  one.wall().name(),
                  Scale.MM.show(other.diameter()),
                  Scale.MM.show(least)));
    }
  }

  private static double diameters(List<Hole> holes, Wall wall) {
    return holes.stream()
        .filter(hole -> hole.wall().equals(wall))
        .mapToDouble(Hole::diameter)
        .sum();
  }

  /** In the drilled wall shear is carried by what is left of its flat part. */
  private static StressPoint sheared(StressPoint point, Wall wall, double share) {
    Line middle = new Line(wall.from(), wall.to());
    Spot along = middle.direction(0);
    Spot from = new Spot(point.y(), point.z()).minus(wall.from());
    boolean across = Math.abs(along.cross(from)) < wall.thickness() * 0.51;
    double way = along.y() * from.y() + along.z() * from.z();
    boolean beside = way > 0 && way < middle.length();
    return across && beside ? point.times(share) : point;
  }

  private static Net net(Outline gross, List<Hole> holes) {
    Outline drilled = gross.and(holes.stream().map(hole -> Outline.bore(edge(hole))).toList());
    Moments left = drilled.moments();
    Moments own = left.moved(left.centroid().times(-1));
    return new Net(left.area(), own.zz(), own.yy(), own.yz(), drilled, left.centroid(), holes);
  }

  /** What the hole takes out of its wall: diameter by thickness, run through from y towards z. */
  static List<Segment> edge(Hole hole) {
    Line line = new Line(hole.wall().from(), hole.wall().to());
    Spot along = line.direction(0);
    Spot across = new Spot(-along.z(), along.y()).times(hole.wall().thickness() / 2);
    Spot half = along.times(hole.diameter() / 2);
    Spot middle = line.at(0.5).plus(along.times(hole.fromMiddle()));
    Spot a = middle.minus(half).minus(across);
    Spot b = middle.plus(half).minus(across);
    Spot c = middle.plus(half).plus(across);
    Spot d = middle.minus(half).plus(across);
    return List.of(new Line(a, b), new Line(b, c), new Line(c, d), new Line(d, a));
  }
}
