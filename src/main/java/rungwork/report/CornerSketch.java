package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.loadpath.Corner;
import rungwork.loadpath.CornerForces;
import rungwork.loadpath.MountForce;
import rungwork.loadpath.SuspensionMember;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Mount;

/**
 * A wheel's suspension to scale from the side and from the front, with the ground's force on the
 * tyre and the forces that reach the mounts.
 */
final class CornerSketch {
  private static final double SIZE = 300;
  private static final double LONGEST = 90;
  private static final double SHORTEST = 16;
  private static final double BETWEEN = 190;

  /** How many rows up and down a value may be moved. */
  private static final int ROWS = 6;

  /** A smaller part of the largest force is not drawn. */
  private static final double DRAWN = 0.03;

  private final CornerForces forces;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);
  private final double scale;
  private final double largest;

  private CornerSketch(CornerForces forces, Units units) {
    this.forces = forces;
    this.units = units;
    Box side = around(new Sight(-1, 0, 0, -1));
    Box front = around(new Sight(0, 1, 0, -1));
    scale = SIZE / Math.max(Math.max(side.height(), side.width()), front.width());
    largest = arrows().stream().mapToDouble(Force::size).max().orElse(0);
  }

  static Picture of(CornerForces forces, Units units) {
    return new CornerSketch(forces, units).draw();
  }

  private Picture draw() {
    Sight side = new Sight(-scale, 0, 0, -scale);
    Sight front = new Sight(0, scale, 0, -scale);
    Box left = around(side);
    Box right = around(front);
    Spot aside = new Spot(left.right() + BETWEEN - right.left(), 0);
    canvas.part(
        "from the side",
        () -> view(side, new Spot(0, 0), "from the left side: forward is to the left"));
    canvas.part(
        "from the front",
        () -> view(front, aside, "from the front: the vehicle's left is to the right"));
    String title = "corner " + forces.corner().name() + " to scale, " + forces.loadCase();
    return new Picture(title, canvas.done(title), "Drawn: " + title);
  }

  private void view(Sight sight, Spot shift, String caption) {
    wheel(sight, shift);
    for (SuspensionMember member : forces.corner().members()) {
      canvas.part(member.name(), () -> member(sight, shift, member));
    }
    List<List<Label>> values = new ArrayList<>();
    for (Force force : arrows()) {
      arrow(sight, shift, force).ifPresent(values::add);
    }
    values.forEach(labels::put);
    Box box = around(sight);
    double x = (box.left() + box.right()) / 2 + shift.x();
    double y = box.bottom() + LONGEST + 30;
    canvas.label(Label.middle(new Spot(x, y), caption).css("small"));
  }

  private void wheel(Sight sight, Spot shift) {
    Point centre = forces.corner().hub().centre();
    Point contact = forces.corner().hub().contact();
    double radius = (centre.z() - contact.z()) * scale;
    Spot middle = at(sight, shift, centre);
    if (sight.xx() != 0) {
      canvas.circle("weight", middle, radius);
    } else {
      canvas.rectangle(
          "weight",
          new Box(
              middle.x() - 0.25 * radius,
              middle.y() - radius,
              middle.x() + 0.25 * radius,
              middle.y() + radius));
    }
    canvas.line(
        "edge",
        at(sight, shift, contact).plus(-radius, 0),
        at(sight, shift, contact).plus(radius, 0));
  }

  private void member(Sight sight, Spot shift, SuspensionMember member) {
    Spot outer = at(sight, shift, outer(member));
    for (Mount mount : member.mounts()) {
      Spot inner = at(sight, shift, mount.at());
      canvas.line("limit", inner, outer);
      canvas.circle("hollow", inner, 3.5);
      labels.keepFree(inner, outer);
    }
    canvas.circle("solid", outer, 3);
  }

  private Point outer(SuspensionMember member) {
    if (member instanceof SuspensionMember.Bar bar) {
      return bar.end();
    }
    if (member instanceof SuspensionMember.Arm arm) {
      return arm.ball();
    }
    return member instanceof SuspensionMember.Strut strut
        ? strut.foot()
        : forces.corner().hub().centre();
  }

  /** Draws a force; where its value may stand, or nothing for a force too small to draw. */
  private Optional<List<Label>> arrow(Sight sight, Spot shift, Force force) {
    Spot way = sight.along(force.wrench().fx(), force.wrench().fy(), force.wrench().fz());
    double own = Math.hypot(way.x(), way.y()) / scale;
    if (own <= DRAWN * largest) {
      return Optional.empty();
    }
    double length = SHORTEST + (LONGEST - SHORTEST) * own / largest;
    double k = length / (own * scale);
    Spot tip = at(sight, shift, force.at());
    Spot tail = tip.plus(-k * way.x(), -k * way.y());
    String value = units.scale(Kind.FORCE).show(own, 3);
    canvas.part(
        force.name() + ": " + value,
        () -> new Arrow(tail, tip).draw(canvas, "force", "head-of-force"));
    labels.keepFree(tail, tip);
    return Optional.of(around(tail, tip, value));
  }

  /** Places for a value: behind an arrow's tail, nearest first, then before it. */
  private static List<Label> around(Spot tail, Spot tip, String words) {
    double behind = tail.x() < tip.x() ? -1 : 1;
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      for (double side : new double[] {behind, -behind}) {
        for (double down : new double[] {4 + 14 * row, 4 - 14 * row}) {
          Spot at = tail.plus(side * 8, down);
          places.add((side < 0 ? Label.end(at, words) : Label.at(at, words)).css("small on"));
        }
      }
    }
    return places;
  }

  private static Spot at(Sight sight, Spot shift, Point point) {
    Spot spot = sight.place(point);
    return spot.plus(shift.x(), shift.y());
  }

  /** The ground's push, and each mount's largest. */
  private List<Force> arrows() {
    Corner corner = forces.corner();
    List<Force> arrows = new ArrayList<>();
    arrows.add(new Force("ground", corner.hub().contact(), forces.tyre()));
    for (Mount mount : corner.mounts()) {
      List<MountForce> on = forces.on(mount.name());
      arrows.add(new Force(mount.name(), mount.at(), on.get(on.size() - 1).wrench()));
    }
    return arrows;
  }

  private Box around(Sight sight) {
    List<Point> points = new ArrayList<>();
    Point centre = forces.corner().hub().centre();
    double radius = centre.z() - forces.corner().hub().contact().z();
    points.add(centre.plus(radius, 0, radius));
    points.add(centre.plus(-radius, 0, -radius));
    forces.corner().mounts().forEach(mount -> points.add(mount.at()));
    return sight.around(points);
  }

  /** A force where it acts. */
  private record Force(String name, Point at, Wrench wrench) {
    double size() {
      return Math.hypot(Math.hypot(wrench.fx(), wrench.fy()), wrench.fz());
    }
  }
}
