package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Member;
import rungwork.frame.Frame;
import rungwork.frame.Point;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.Range;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/** A ladder in plan and from the side, numbered in the order in which its parts give way. */
final class OrderDrawing {
  private static final double WIDTH = 560;
  private static final double RADIUS = 9.5;

  private final OrderOfFailure order;
  private final Ladder ladder;
  private final Frame frame;
  private final Units units;
  private final double scale;
  private final Canvas canvas = new Canvas();
  private final List<Box> taken = new ArrayList<>();

  OrderDrawing(OrderOfFailure order, Units units) {
    this.order = order;
    this.units = units;
    ladder = order.ladder();
    frame = ladder.frame(Joints.RIGID);
    scale =
        WIDTH
            / Sight.plan(1).around(frame.nodes().stream().map(node -> node.at()).toList()).width();
  }

  Picture draw() {
    Sight plan = Sight.plan(scale);
    for (Member member : ladder.members()) {
      canvas.part(member.part(), () -> bar(member, plan).draw(canvas, "steel"));
    }
    order.elastic().forces().forEach(at -> push(plan.place(at)));
    List<Part> parts = order.order();
    for (int i = 0; i < parts.size(); i++) {
      int number = i + 1;
      Part part = parts.get(i);
      canvas.part(number + ": " + part.name(), () -> number(part, number, plan));
    }
    side();
    FrameLines.front(canvas, plan);
    String title = "Where it gives way first: " + order.elastic().hit();
    return new Picture(title, canvas.done(title), words(parts));
  }

  private Bar bar(Member member, Sight plan) {
    var first = frame.beam(member.beams().get(0));
    var last = frame.beam(member.beams().get(member.beams().size() - 1));
    double width = Math.max(4, Outlines.width(first.section()) * scale);
    return new Bar(plan.place(frame.startOf(first)), plan.place(frame.endOf(last)), width);
  }

  /** What the obstacle does, from ahead. */
  private void push(Spot at) {
    canvas.part(
        "obstacle pushes here",
        () -> new Arrow(at.plus(-44, 0), at.plus(-2, 0)).draw(canvas, "force", "head-of-force"));
  }

  /**
   * On the side that gives way first; what is not of the frame at its station between the rails.
   */
  private void number(Part part, int number, Sight plan) {
    if (part.zone() == OrderOfFailure.Zone.WHOLE_FRAME) {
      return;
    }
    Spot wanted =
        member(part)
            .map(member -> bar(member, plan).at(0.5))
            .orElseGet(() -> plan.place(new Point(place(part), aside(), 0)));
    Spot at = free(wanted);
    canvas.circle(part.zone().ofFrame() ? "solid" : "hollow", at, RADIUS);
    String css = part.zone().ofFrame() ? "small strong inverse" : "small strong";
    canvas.label(Label.middle(at.plus(0, 4), String.valueOf(number)).css(css));
    taken.add(around(at));
  }

  /** Beside the middle, where the numbers of crossmembers stand [m]. */
  private double aside() {
    return ladder.rail(Side.LEFT).y() / 2;
  }

  private double place(Part part) {
    double front = ladder.rail(Side.LEFT).x();
    return Math.max(ladder.rail(Side.LEFT).tail(), Math.min(front, part.station()));
  }

  private Spot free(Spot wanted) {
    for (int step = 0; step < 40; step++) {
      int way = step % 2 == 0 ? 1 : -1;
      Spot at = wanted.plus(way * (step + 1) / 2 * 2.2 * RADIUS, 0);
      if (taken.stream().noneMatch(around(at)::overlaps)) {
        return at;
      }
    }
    return wanted;
  }

  private static Box around(Spot at) {
    return new Box(at.x() - RADIUS, at.y() - RADIUS, at.x() + RADIUS, at.y() + RADIUS);
  }

  private Optional<Member> member(Part part) {
    return ladder.members().stream()
        .filter(member -> part.detail().where().startsWith(member.part() + " "))
        .max(java.util.Comparator.comparingInt(member -> member.part().length()));
  }

  /** Heights: the rails, where the obstacle pushes, the centre of mass, the ground. */
  private void side() {
    double ground = canvas.box().bottom() + 40 + highest() * scale;
    List<Spot> line = new ArrayList<>();
    for (String node : ladder.railFeatures(Side.LEFT)) {
      Point at = ladder.node(node).at();
      line.add(new Spot(-at.x() * scale, ground - at.z() * scale));
    }
    canvas.part("rails seen from the side", () -> canvas.polyline("first", line));
    Spot left = new Spot(canvas.box().left(), ground);
    canvas.part("ground", () -> canvas.line("faint", left, new Spot(canvas.box().right(), ground)));
    Point force = order.elastic().forces().get(0);
    Spot pushed = new Spot(-force.x() * scale, ground - force.z() * scale);
    push(pushed);
    canvas.label(
        Label.at(pushed.plus(-44, -10), "obstacle " + height(force)).css("small on second"));
    Point centre = order.elastic().centre();
    Spot heavy = new Spot(-centre.x() * scale, ground - centre.z() * scale);
    canvas.part("centre of mass", () -> canvas.circle("weight", heavy, 7));
    canvas.label(Label.at(heavy.plus(11, 4), "centre of mass " + height(centre)).css("small on"));
    canvas.label(
        Label.end(line.get(line.size() - 1).plus(0, 16), "rails " + height(ladder.level()))
            .css("small on"));
  }

  private double highest() {
    double rails =
        ladder.railFeatures(Side.LEFT).stream()
            .mapToDouble(node -> ladder.node(node).at().z())
            .max()
            .orElseThrow();
    return Math.max(rails, order.elastic().centre().z());
  }

  private String height(Point at) {
    return height(at.z());
  }

  private String height(double z) {
    return units.scale(Kind.LENGTH).show(z, 3) + " up";
  }

  private String words(List<Part> parts) {
    StringBuilder text = new StringBuilder("In this order, at the low strengths:");
    for (int i = 0; i < parts.size(); i++) {
      Range first = parts.get(i).first().orElseThrow();
      text.append("\n").append(i + 1).append(". ").append(parts.get(i).name()).append(": ");
      text.append(OrderOfFailure.shown(first, units));
    }
    return text.toString();
  }
}
