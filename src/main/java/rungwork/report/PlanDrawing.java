package rungwork.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Caution;
import rungwork.check.Member;
import rungwork.frame.Frame;
import rungwork.frame.Mass;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** Draws a ladder in plan, the front to the left, so the vehicle's left side lies below. */
final class PlanDrawing {
  private static final double ROW = 15;

  private final LadderPlan plan;
  private final Ladder ladder;
  private final Units units;
  private final PartColours colours;
  private final Frame frame;
  private final Sight sight;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);
  private final Map<String, Bar> bars = new LinkedHashMap<>();
  private final Carried carried;
  private final PlanDimensions dimensions;

  PlanDrawing(LadderPlan plan, Units units) {
    this.plan = plan;
    this.units = units;
    ladder = plan.ladder();
    colours = new PartColours(plan.sheet());
    frame = ladder.frame(Joints.RIGID);
    sight = Sight.plan(plan.scale());
    dimensions = new PlanDimensions(ladder, units, sight, canvas, labels);
    carried =
        plan.vehicle().map(v -> Carried.by(ladder, v)).orElseGet(() -> new Carried(List.of()));
    ladder.members().forEach(member -> bars.put(member.part(), bar(member)));
  }

  Picture draw() {
    plan.vehicle().ifPresent(this::axles);
    members();
    carried.masses().forEach(this::circle);
    ladder.mounts().forEach(this::keepFree);
    utilisations();
    carried.masses().forEach(this::massLabel);
    ladder.mounts().forEach(this::mount);
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

  private void circle(Mass mass) {
    Spot at = sight.place(mass.at());
    canvas.part(massWords(mass), () -> canvas.circle("weight", at, carried.radius(mass)));
  }

  private void massLabel(Mass mass) {
    Spot at = sight.place(mass.at()).plus(0, 4);
    Label middle = Label.middle(at, massWords(mass)).css("small on");
    double half = middle.box().width() / 2;
    List<Label> places = new ArrayList<>();
    for (double row : new double[] {0, 1, -1, 2, -2, 3, -3, 4, -4}) {
      for (double side : new double[] {0, -0.5, 0.5, -1, 1}) {
        places.add(middle.moved(side * (half + carried.radius(mass) + 4), row * ROW));
      }
    }
    labels.put(places);
  }

  private String massWords(Mass mass) {
    return Carried.words(mass, units);
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

  private void mount(Mount mount) {
    Spot at = sight.place(mount.at());
    canvas.part(
        "mount " + mount.name(),
        () -> {
          canvas.line("thin", at, foot(mount));
          canvas.polygon(
              "hollow", List.of(at.plus(0, -4), at.plus(4, 0), at.plus(0, 4), at.plus(-4, 0)));
          if (inside(mount)) {
            labels.put(besideMount(at, mount.name()));
          } else {
            double side = Math.signum(at.y());
            Label put = labels.put(beyondMount(at, mount.name()));
            canvas.line("faint", at.plus(0, side * 5), put.at().plus(0, side > 0 ? -11 : 3));
          }
        });
  }

  /** Numbers and names stay off a mount and its arm. */
  private void keepFree(Mount mount) {
    Spot at = sight.place(mount.at());
    labels.keepFree(Box.EMPTY.and(at).grown(5));
    labels.keepFree(Box.EMPTY.and(at).and(foot(mount)).grown(2));
  }

  private boolean inside(Mount mount) {
    double x = mount.at().x();
    double y = mount.at().y();
    return y < ladder.rail(Side.LEFT).yAt(x) && y > ladder.rail(Side.RIGHT).yAt(x);
  }

  private static List<Label> besideMount(Spot at, String name) {
    List<Label> places = new ArrayList<>();
    for (double row : new double[] {0, 1, -1, 2, -2, 3}) {
      places.add(Label.at(at.plus(7, 4 + row * ROW), name).css("small on"));
      places.add(Label.end(at.plus(-7, 4 + row * ROW), name).css("small on"));
    }
    return places;
  }

  private static List<Label> beyondMount(Spot at, String name) {
    List<Label> places = new ArrayList<>();
    for (int row = 1; row <= 6; row++) {
      double out = Math.signum(at.y()) * (12 + row * ROW);
      places.add(Label.middle(at.plus(0, out), name).css("small on"));
    }
    return places;
  }

  /** Where the arm of a mount meets the line of its member. */
  private Spot foot(Mount mount) {
    return ladder.crossmembers().stream()
        .filter(one -> one.part().equals(mount.member()))
        .findFirst()
        .map(one -> sight.along(one.x(), mount.at().y(), 0))
        .orElseGet(() -> sight.along(mount.at().x(), rail(mount).yAt(mount.at().x()), 0));
  }

  private Rail rail(Mount mount) {
    return ladder.rail(mount.member().equals("left rail") ? Side.LEFT : Side.RIGHT);
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
    carried.masses().forEach(mass -> out.append("\n- ").append(massWords(mass)));
    return out.toString();
  }
}
