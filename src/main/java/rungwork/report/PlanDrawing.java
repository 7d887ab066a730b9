package rungwork.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Caution;
import rungwork.check.Member;
import rungwork.frame.Frame;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** Draws a ladder in plan, the front to the left, so the vehicle's left side lies below. */
final class PlanDrawing {
  private final LadderPlan plan;
  private final Ladder ladder;
  private final Units units;
  private final PartColours colours;
  private final Frame frame;
  private final Sight sight;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);
  private final Map<String, Bar> bars = new LinkedHashMap<>();
  private final PlanMasses masses;
  private final PlanMounts mounts;
  private final PlanDimensions dimensions;

  PlanDrawing(LadderPlan plan, Units units) {
    this.plan = plan;
    this.units = units;
    ladder = plan.ladder();
    colours = new PartColours(plan.sheet());
    frame = ladder.frame(Joints.RIGID);
    sight = Sight.plan(plan.scale());
    dimensions = new PlanDimensions(ladder, units, sight, canvas, labels);
    Carried carried =
        plan.vehicle().map(v -> Carried.by(ladder, v)).orElseGet(() -> new Carried(List.of()));
    masses = new PlanMasses(carried, units, sight, canvas, labels);
    mounts = new PlanMounts(ladder, sight, canvas, labels);
    ladder.members().forEach(member -> bars.put(member.part(), bar(member)));
  }

  Picture draw() {
    plan.vehicle().ifPresent(this::axles);
    members();
    masses.circles();
    mounts.keepFree();
    utilisations();
    masses.names();
    mounts.draw();
    railNames();
    Box drawn = canvas.box();
    dimensions.draw(drawn);
    front(drawn);
    legend();
    String title = "Ladder " + ladder.name() + " in plan, front to the left";
    return new Picture(title, canvas.done(title), words());
  }

  private Bar bar(Member member) {
    var first = frame.beam(member.beams().get(0));
    var last = frame.beam(member.beams().get(member.beams().size() - 1));
    double scale = Math.abs(sight.xx());
    return new Bar(
        sight.place(frame.node(first.start()).at()),
        sight.place(frame.node(last.end()).at()),
        Math.max(4, Outlines.width(first.section()) * scale));
  }

  /** Crossmembers first: the rails lie over their ends. */
  private void members() {
    bars.entrySet().stream()
        .sorted(Comparator.comparing(entry -> isRail(entry.getKey())))
        .forEach(
            entry -> {
              canvas.part(
                  colours.title(entry.getKey()),
                  () -> {
                    entry.getValue().draw(canvas, "paper");
                    entry.getValue().draw(canvas, colours.css(entry.getKey()));
                  });
              labels.keepFree(entry.getValue().box());
            });
  }

  private void utilisations() {
    if (plan.sheet().isEmpty()) {
      return;
    }
    bars.forEach(
        (part, bar) -> labels.put(isRail(part) ? besideRail(part, bar) : besideRung(part, bar)));
  }

  private List<Label> besideRail(String part, Bar bar) {
    double out = bar.from().y() > 0 ? bar.width() / 2 + 13 : -bar.width() / 2 - 5;
    List<Label> places = new ArrayList<>();
    for (double t : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
      places.add(Label.middle(bar.at(t).plus(0, out), colours.words(part)).css("strong on"));
    }
    return places;
  }

  private List<Label> besideRung(String part, Bar bar) {
    double out = bar.width() / 2 + 5;
    List<Label> places = new ArrayList<>();
    for (double t : new double[] {0.5, 0.3, 0.7, 0.2, 0.8, 0.9, 0.1}) {
      String words = colours.words(part);
      places.add(Label.at(bar.at(t).plus(out, 5), words).css("strong on"));
      places.add(Label.end(bar.at(t).plus(-out, 5), words).css("strong on"));
    }
    return places;
  }

  private boolean isRail(String part) {
    return ladder.crossmembers().stream().noneMatch(one -> one.part().equals(part));
  }

  private void axles(Vehicle vehicle) {
    vehicle.wheels().stream()
        .filter(wheel -> wheel.side() == Side.LEFT)
        .forEach(
            wheel -> {
              Spot left = sight.place(wheel.contact());
              Spot right = new Spot(left.x(), -left.y());
              canvas.part(wheel.axle().word() + " axle", () -> canvas.line("axis", left, right));
              labels.put(
                  List.of(
                      Label.middle(right.plus(0, -6), wheel.axle().word() + " axle")
                          .css("small on")));
            });
  }

  private void railNames() {
    for (Side side : Side.values()) {
      double x = ladder.rail(side).tail();
      Spot tail = sight.along(x, ladder.rail(side).yAt(x), 0);
      Label name = Label.at(tail.plus(10, -4), side.word() + " rail").css("small on");
      labels.put(List.of(name, name.moved(0, 17), name.moved(20, 0)));
    }
  }

  private void front(Box drawn) {
    Spot tail = new Spot(drawn.left() + 60, drawn.top() - 22);
    new Arrow(tail, tail.plus(-60, 0)).draw(canvas, "edge", "solid");
    canvas.label(Label.at(tail.plus(6, 5), "front").css("strong"));
  }

  private void legend() {
    Box box = canvas.box();
    Spot at = new Spot(box.left(), box.bottom() + 34);
    String caution = "";
    List<String> remarks = new ArrayList<>();
    remarks.add("dimensions [" + units.scale(Kind.LENGTH).unit() + "]");
    if (plan.vehicle().isPresent()) {
      remarks.add("circles: masses, area in proportion");
    }
    remarks.add("diamonds: mounts");
    if (plan.sheet().isPresent()) {
      Legend.utilisation(canvas, at);
      caution = ". " + firstSentence(Caution.SCREENING);
    }
    Spot line = plan.sheet().isPresent() ? at.plus(0, 20) : at;
    canvas.label(Label.at(line, String.join("; ", remarks) + caution).css("small"));
  }

  private static String firstSentence(Caution caution) {
    return caution.text().substring(0, caution.text().indexOf('.') + 1);
  }

  private String words() {
    StringBuilder out = new StringBuilder("Front to the left; stations from the front [");
    out.append(units.scale(Kind.LENGTH).unit()).append("]: ");
    out.append(
        String.join(
            ", ", dimensions.stations().stream().map(x -> Numbers.dimension(x, units)).toList()));
    bars.keySet().forEach(part -> out.append("\n- ").append(colours.title(part)));
    masses.words().forEach(mass -> out.append("\n- ").append(mass));
    return out.toString();
  }
}
