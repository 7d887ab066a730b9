package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import rungwork.frame.Point;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.record.Inspection.Moved;
import rungwork.record.Reading;
import rungwork.vehicle.Side;

/**
 * A measured frame against the true one, in plan and in elevation, the front to the left. What it
 * deviates is magnified; the numbers are not.
 */
final class InspectionDrawing {
  private static final double WIDTH = 760;

  /** The largest deviation is drawn no longer than this [px]. */
  private static final double LONGEST = 56;

  /** Room between plan and elevation [px]. */
  private static final double GAP = 120;

  private static final int[] FACTORS = {100, 50, 20, 10, 5, 2, 1};

  private final Inspection seen;
  private final Units units;
  private final List<Moved> moved;
  private final boolean blank;
  private final double scale;
  private final int factor;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);

  InspectionDrawing(Inspection seen, Units units) {
    this.seen = seen;
    this.units = units;
    moved = seen.moved();
    blank = moved.stream().noneMatch(one -> one.inPlan() || one.inHeight());
    double front = seen.mark(Side.LEFT, first()).x();
    double rear = seen.mark(Side.LEFT, last()).x();
    scale = WIDTH / (front - rear);
    factor = factor();
  }

  private String first() {
    return seen.stations().get(0);
  }

  private String last() {
    return seen.stations().get(seen.stations().size() - 1);
  }

  private int factor() {
    double most =
        moved.stream()
            .flatMapToDouble(one -> DoubleStream.of(one.ahead(), one.left(), one.up()))
            .map(Math::abs)
            .max()
            .orElse(0);
    for (int one : FACTORS) {
      if (most * one * scale <= LONGEST) {
        return one;
      }
    }
    return 1;
  }

  Picture draw() {
    plan();
    double below = canvas.box().bottom() + GAP;
    if (!blank) {
      elevation(below);
    }
    legend();
    String title =
        blank
            ? "Marks on ladder " + seen.ladder().name() + " in plan, front to the left"
            : "Ladder "
                + seen.ladder().name()
                + " as measured against true, plan and elevation, front to the left";
    return new Picture(title, canvas.done(title), words());
  }

  private void plan() {
    canvas.part("true frame in plan", () -> frame(blank ? "edge" : "faint", this::truePlan));
    if (blank) {
      canvas.part("diagonals", this::diagonals);
    } else {
      canvas.part("measured frame in plan", () -> frame("edge", this::nowPlan));
    }
    moved.forEach(this::mark);
    moved.forEach(this::planLabel);
    names(plan(seen.mark(Side.LEFT, last())).y());
    front();
  }

  private Spot plan(Point at) {
    return new Spot(-at.x() * scale, at.y() * scale);
  }

  private Spot truePlan(Moved one) {
    return plan(seen.mark(one.side(), one.station()));
  }

  private Spot nowPlan(Moved one) {
    return truePlan(one).plus(-one.ahead() * factor * scale, one.left() * factor * scale);
  }

  /** Rails from mark to mark, and a rung at every crossmember. */
  private void frame(String css, Function<Moved, Spot> place) {
    for (Side side : Side.values()) {
      canvas.polyline(css, on(side).stream().map(place).toList());
    }
    for (int i = 0; i < seen.stations().size(); i++) {
      if (isRung(seen.stations().get(i))) {
        canvas.line(css, place.apply(on(Side.LEFT).get(i)), place.apply(on(Side.RIGHT).get(i)));
      }
    }
  }

  private boolean isRung(String station) {
    return seen.ladder().crossmembers().stream().anyMatch(one -> one.name().equals(station));
  }

  private List<Moved> on(Side side) {
    return moved.stream().filter(one -> one.side() == side).toList();
  }

  private void diagonals() {
    for (int i = 0; i + 1 < seen.stations().size(); i++) {
      for (Side side : Side.values()) {
        canvas.line("dotted", truePlan(on(side).get(i)), truePlan(on(side.other()).get(i + 1)));
      }
    }
  }

  private void mark(Moved one) {
    Spot at = nowPlan(one);
    boolean known = blank || one.inPlan();
    String title = "mark at " + one.station() + " " + one.side().word();
    canvas.part(
        known ? title : title + ": not measured",
        () -> canvas.circle(known ? "hollow" : "unknown", at, 3.5));
    labels.keepFree(Box.EMPTY.and(at).grown(5));
  }

  private void planLabel(Moved one) {
    List<String> parts = new ArrayList<>();
    part(parts, one.ahead(), "ahead", "back");
    part(parts, one.left(), "left", "right");
    if (!one.inPlan() || parts.isEmpty()) {
      return;
    }
    double out = one.side().sign() * 1.0;
    Spot at = nowPlan(one);
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 4; row++) {
      double y = at.y() + (out > 0 ? 18 + 15 * row : -10 - 15 * row);
      for (double dx : new double[] {0, 24, -24}) {
        Spot place = new Spot(at.x() + dx, y);
        String words = one.station() + " " + String.join(", ", parts);
        places.add(Label.middle(place, words).css("small on"));
      }
    }
    labels.put(places);
  }

  private void part(List<String> parts, double value, String above, String below) {
    if (Math.abs(value) > seen.accuracy()) {
      parts.add(amount(Math.abs(value)) + " " + (value > 0 ? above : below));
    }
  }

  private void names(double left) {
    double y = (blank ? left : canvas.box().bottom()) + 34;
    for (String station : seen.stations()) {
      double x = plan(seen.mark(Side.LEFT, station)).x();
      Label name = Label.middle(new Spot(x, y), station).css("small on");
      labels.put(List.of(name, name.moved(0, 15), name.moved(0, 30)));
    }
  }

  private void front() {
    Spot tail = new Spot(canvas.box().left() + 60, canvas.box().top() - 22);
    new Arrow(tail, tail.plus(-60, 0)).draw(canvas, "edge", "solid");
    canvas.label(Label.at(tail.plus(6, 5), "front").css("strong"));
    Spot right = plan(seen.mark(Side.RIGHT, last()));
    Spot left = plan(seen.mark(Side.LEFT, last()));
    canvas.label(Label.at(right.plus(14, 4), "right rail").css("small"));
    canvas.label(Label.at(left.plus(14, 4), "left rail").css("small"));
  }

  private void elevation(double y) {
    Function<Moved, Spot> truth = one -> side(one, 0, y);
    canvas.part(
        "true rails in elevation",
        () -> canvas.polyline("faint", on(Side.LEFT).stream().map(truth).toList()));
    for (Side side : Side.values()) {
      List<Moved> known = on(side).stream().filter(Moved::inHeight).toList();
      if (known.isEmpty()) {
        continue;
      }
      canvas.part(
          "measured " + side.word() + " rail in elevation",
          () -> {
            canvas.polyline(
                side == Side.LEFT ? "edge" : "dashed",
                known.stream().map(one -> side(one, one.up(), y)).toList());
            known.forEach(one -> canvas.circle("hollow", side(one, one.up(), y), 3));
          });
      known.forEach(one -> heightLabel(one, y));
    }
    Spot tail = side(on(Side.LEFT).get(on(Side.LEFT).size() - 1), 0, y);
    canvas.label(Label.at(tail.plus(14, 4), "elevation").css("small"));
  }

  private Spot side(Moved one, double up, double y) {
    Point at = seen.mark(one.side(), one.station());
    double height = at.z() - seen.mark(Side.LEFT, last()).z();
    return new Spot(-at.x() * scale, y - (height + up * factor) * scale);
  }

  private void heightLabel(Moved one, double y) {
    if (!isHigher(one)) {
      return;
    }
    String words =
        one.station()
            + " "
            + one.side().word()
            + " "
            + amount(Math.abs(one.up()))
            + (one.up() > 0 ? " up" : " down");
    Spot at = side(one, one.up(), y);
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 5; row++) {
      double away = one.up() > 0 ? -10 - 14 * row : 18 + 14 * row;
      places.add(Label.middle(at.plus(0, away), words).css("small on"));
    }
    labels.put(places);
  }

  /** Higher or lower by more than is known there. */
  private boolean isHigher(Moved one) {
    return seen.readings().stream()
        .filter(reading -> reading.kind() == Reading.Kind.HEIGHT)
        .filter(reading -> reading.side() == one.side() && reading.from().equals(one.station()))
        .anyMatch(reading -> Math.abs(one.up()) > seen.knownTo(reading));
  }

  private void legend() {
    Box box = canvas.box();
    Spot at = new Spot(box.left(), box.bottom() + 30);
    String unit = "[" + units.scale(Kind.LENGTH).unit() + "]";
    if (blank) {
      canvas.label(Label.at(at, "circles: marks; dotted: diagonals of the bays").css("small"));
      return;
    }
    canvas.label(
        Label.at(at, "thin: true; thick: measured, deviations drawn " + factor + " × as large")
            .css("small"));
    canvas.label(
        Label.at(
                at.plus(0, 17),
                "in elevation left rail full, right rail dashed; numbers "
                    + unit
                    + " where they exceed what is known; dashed circles: not measured")
            .css("small"));
  }

  private String words() {
    StringBuilder out = new StringBuilder("Front to the left; marks at ");
    out.append(String.join(", ", seen.stations()));
    for (Moved one : blank ? List.<Moved>of() : moved) {
      List<String> parts = new ArrayList<>();
      part(parts, one.ahead(), "ahead", "back");
      part(parts, one.left(), "left", "right");
      if (isHigher(one)) {
        part(parts, one.up(), "up", "down");
      }
      if (!parts.isEmpty()) {
        out.append("\n- ").append(one.station()).append(' ').append(one.side().word());
        out.append(": ").append(String.join(", ", parts));
        out.append(" [").append(units.scale(Kind.LENGTH).unit()).append("]");
      }
    }
    return out.toString();
  }

  private String amount(double metres) {
    return InspectionPage.amount(metres, units);
  }
}
