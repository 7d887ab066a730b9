package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** Draws a ladder from its left, in the scale of its plan, with heights above the ground. */
final class ElevationDrawing {
  private static final double ROW = 15;

  /** Letters that the names of masses hiding each other may take; else the first one's stands. */
  private static final int LONGEST = 24;

  private final LadderPlan plan;
  private final Ladder ladder;
  private final Units units;
  private final Sight sight;
  private final RailProfile rail;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);

  ElevationDrawing(LadderPlan plan, Units units) {
    this.plan = plan;
    this.units = units;
    ladder = plan.ladder();
    sight = Sight.side(plan.scale());
    rail = new RailProfile(ladder, sight);
  }

  Picture draw() {
    canvas.part("left rail", () -> rail.draw(canvas, labels));
    ladder.crossmembers().forEach(this::crossmember);
    ladder.kickUps().forEach(this::kickUp);
    ladder.mounts().forEach(this::mount);
    plan.vehicle().ifPresent(this::masses);
    mountNames();
    Box drawn = canvas.box();
    ground(drawn);
    plan.vehicle().ifPresent(this::axles);
    heights(drawn);
    lengths();
    FrameLines.front(canvas, sight);
    legend();
    String title = "Ladder " + ladder.name() + " from its left, front to the left";
    return new Picture(title, canvas.done(title), words());
  }

  /** Cut where the rail hides nothing of it: its own outline. */
  private void crossmember(Crossmember one) {
    Spot at = rail.at(one.x());
    canvas.part(
        one.part(),
        () ->
            canvas.loops(
                "cut",
                Outlines.loops(one.stock().section(), plan.scale()).stream()
                    .map(loop -> loop.stream().map(p -> p.plus(at.x(), at.y())).toList())
                    .toList()));
    double under = at.y() + rail.depth(one.x()) / 2 + 13;
    labels.put(List.of(Label.middle(new Spot(at.x(), under), one.name()).css("small on")));
  }

  private void kickUp(Ladder.KickUp one) {
    Spot middle = rail.at((one.foot() + one.head()) / 2);
    String words = (one.rise() < 0 ? "drops " : "rises ") + length(Math.abs(one.rise()));
    Label label =
        Label.middle(middle.plus(0, -rail.depth(Math.min(one.foot(), one.head())) / 2 - 14), words);
    labels.put(List.of(label.css("small on"), label.css("small on").moved(0, -ROW)));
  }

  private void mount(Mount mount) {
    Spot at = sight.place(mount.at());
    canvas.part(
        "mount " + mount.name(),
        () -> {
          canvas.line("thin", at, rail.at(mount.at().x()));
          canvas.polygon(
              "hollow", List.of(at.plus(0, -4), at.plus(4, 0), at.plus(0, 4), at.plus(-4, 0)));
        });
    labels.keepFree(Box.EMPTY.and(at).grown(5));
    labels.keepFree(at, rail.at(mount.at().x()));
  }

  /** One name where the mounts of both sides hide each other: that of the left. */
  private void mountNames() {
    Map<String, Mount> seen = new LinkedHashMap<>();
    ladder.mounts().stream()
        .sorted((a, b) -> Double.compare(b.at().y(), a.at().y()))
        .forEach(mount -> seen.putIfAbsent(key(mount.at()), mount));
    for (Mount mount : seen.values()) {
      Spot at = sight.place(mount.at());
      Label put = labels.put(beside(at, 7, mount.name()));
      if (Math.abs(put.at().y() - at.y()) > ROW) {
        canvas.line("faint", at.plus(0, 5), put.at().plus(0, -11));
      }
    }
  }

  private static List<Label> beside(Spot at, double away, String words) {
    List<Label> places = new ArrayList<>();
    for (int row : new int[] {0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5}) {
      places.add(Label.at(at.plus(away, 4 + row * ROW), words).css("small on"));
      places.add(Label.end(at.plus(-away, 4 + row * ROW), words).css("small on"));
      places.add(Label.middle(at.plus(0, 4 + row * ROW), words).css("small on"));
    }
    return places;
  }

  /** Circles in proportion; one name line for those that hide each other; the centre of all. */
  private void masses(Vehicle vehicle) {
    Carried carried = Carried.by(ladder, vehicle);
    for (Mass mass : carried.masses()) {
      Spot at = sight.place(mass.at());
      String words = Carried.words(mass, units);
      canvas.part(words, () -> canvas.circle("weight", at, carried.radius(mass)));
    }
    centre(vehicle);
    carried.masses().stream()
        .collect(
            Collectors.groupingBy(mass -> key(mass.at()), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(here -> massNames(carried, here));
  }

  private void massNames(Carried carried, List<Mass> here) {
    Mass first = here.get(0);
    String all = here.stream().map(Mass::name).collect(Collectors.joining(", "));
    String words = all.length() <= LONGEST ? all : first.name();
    Spot at = sight.place(first.at());
    List<Label> places = new ArrayList<>();
    for (double row : new double[] {0, 1, -1, 2, -2}) {
      places.add(Label.middle(at.plus(0, 4 + row * ROW), words).css("small on"));
    }
    places.addAll(beside(at, carried.radius(first) + 4, words));
    labels.put(places);
  }

  private void centre(Vehicle vehicle) {
    Point centre = vehicle.centreOfMass();
    Spot at = sight.place(centre);
    String words = "centre of mass " + units.scale(Kind.LENGTH).show(centre.z(), 3) + " up";
    canvas.part(
        words,
        () -> {
          canvas.circle("hollow", at, 6);
          canvas.line("edge", at.plus(-6, 0), at.plus(6, 0));
          canvas.line("edge", at.plus(0, -6), at.plus(0, 6));
        });
    labels.keepFree(Box.EMPTY.and(at).grown(7));
    labels.put(beside(at, 10, words));
  }

  private static String key(Point at) {
    return Math.round(at.x() * 1000) + " " + Math.round(at.z() * 1000);
  }

  private void ground(Box drawn) {
    canvas.part(
        "ground",
        () -> canvas.line("faint", new Spot(drawn.left(), 0), new Spot(drawn.right(), 0)));
  }

  private void axles(Vehicle vehicle) {
    vehicle.wheels().stream()
        .filter(wheel -> wheel.side() == Side.LEFT)
        .forEach(
            wheel -> {
              Spot foot = sight.place(wheel.contact());
              String words = wheel.axle().word() + " axle";
              canvas.part(
                  words, () -> canvas.line("axis", foot, foot.plus(0, -0.3 * plan.scale())));
              labels.put(List.of(Label.middle(foot.plus(0, 14), words).css("small on")));
            });
  }

  /** Above the ground: the tail beside it, and the tip where it is at another height. */
  private void heights(Box drawn) {
    List<Double> stations = rail.stations();
    double tip = stations.get(0);
    double tail = stations.get(stations.size() - 1);
    height(tail, drawn.right() + 30);
    if (Math.abs(ladder.heightAt(tip) - ladder.heightAt(tail)) > 1e-4) {
      height(tip, drawn.left() - 30);
    }
  }

  private void height(double x, double at) {
    Spot up = rail.at(x);
    new Dimension(new Spot(up.x(), 0), up, figure(ladder.heightAt(x))).up(canvas, at);
  }

  /** Kick-ups and ends along the vehicle; the wheelbase under them. */
  private void lengths() {
    double y = 34;
    List<Double> stations = rail.stations();
    if (!ladder.kickUps().isEmpty()) {
      for (int i = 0; i + 1 < stations.size(); i++) {
        span(stations.get(i), stations.get(i + 1), y);
      }
      y += 30;
    }
    if (plan.vehicle().isPresent()) {
      span(0, -plan.vehicle().get().wheelbase(), y);
    }
  }

  private void span(double front, double rear, double y) {
    Spot a = new Spot(rail.at(front).x(), 0);
    Spot b = new Spot(rail.at(rear).x(), 0);
    new Dimension(a, b, figure(front - rear)).along(canvas, y);
  }

  private void legend() {
    Box box = canvas.box();
    List<String> words = new ArrayList<>();
    words.add("seen from the left");
    words.add("heights above the ground to the rails' centroids [" + unit() + "]");
    if (plan.vehicle().isPresent()) {
      words.add("circles: masses, area in proportion");
    }
    if (!ladder.mounts().isEmpty()) {
      words.add("diamonds: mounts");
    }
    canvas.label(
        Label.at(new Spot(box.left(), box.bottom() + 28), String.join("; ", words)).css("small"));
  }

  private String words() {
    StringBuilder out = new StringBuilder("Heights of the rails' centroids above the ground [");
    out.append(unit()).append("]: ");
    out.append(
        rail.stations().stream()
            .map(x -> figure(ladder.heightAt(x)) + " at x " + figure(x))
            .collect(Collectors.joining(", ")));
    return out.toString();
  }

  private String length(double metres) {
    return figure(metres) + " " + unit();
  }

  private String figure(double metres) {
    return Numbers.dimension(metres, units);
  }

  private String unit() {
    return units.scale(Kind.LENGTH).unit();
  }
}
