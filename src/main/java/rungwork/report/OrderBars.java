package rungwork.report;

import java.util.List;
import rungwork.fault.Scale;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.Range;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** For each part a bar over the vehicle's deceleration, from its low to its high strength. */
final class OrderBars {
  private static final double NAMES = 250;
  private static final double LENGTH = 290;
  private static final double PITCH = 27;
  private static final double THICK = 13;

  /** How many times the first part's high end the axis reaches. */
  private static final double REACH = 3;

  private final OrderOfFailure order;
  private final Units units;
  private final double end;
  private final Canvas canvas = new Canvas();

  OrderBars(OrderOfFailure order, Units units) {
    this.order = order;
    this.units = units;
    double g = units.scale(Kind.ACCELERATION).inSi();
    double least = REACH * order.order().get(0).first().orElseThrow().high() / g;
    end = Math.max(10, 10 * Math.ceil(least / 10)) * g;
  }

  Picture draw() {
    List<Part> known = order.order();
    List<Part> unknown = order.parts().stream().filter(part -> part.first().isEmpty()).toList();
    int rows = known.size() + unknown.size();
    axis(rows * PITCH);
    for (int i = 0; i < known.size(); i++) {
      row(known.get(i), i);
    }
    for (int i = 0; i < unknown.size(); i++) {
      unknown(unknown.get(i), known.size() + i);
    }
    Spot below = new Spot(0, rows * PITCH + 30);
    canvas.label(Label.at(below, "Bar: first gives way, from low to high strength.").css("small"));
    canvas.label(
        Label.at(below.plus(0, 16), "Line: carries no more. Arrow: goes on beyond the axis.")
            .css("small"));
    String title = "Deceleration of the vehicle at which each part gives way";
    return new Picture(title, canvas.done(title), title + ": see the table");
  }

  private void axis(double height) {
    Scale scale = units.scale(Kind.ACCELERATION);
    double whole = end / scale.inSi();
    double step = whole <= 20 ? 5 : whole <= 60 ? 10 : whole <= 150 ? 25 : 50;
    for (double tick = 0; tick <= whole + 1e-9; tick += step) {
      double x = NAMES + tick / whole * LENGTH;
      canvas.line(tick == 0 ? "thin" : "faint", new Spot(x, -8), new Spot(x, height));
      canvas.label(Label.middle(new Spot(x, -14), Numbers.decimals(tick, 0)).css("small"));
    }
    canvas.label(
        Label.at(new Spot(0, -14), "deceleration of the vehicle [" + scale.unit() + "]")
            .css("strong"));
  }

  private void row(Part part, int index) {
    double y = index * PITCH + 14;
    Range first = part.first().orElseThrow();
    canvas.part(
        part.name() + ": " + OrderOfFailure.shown(first, units),
        () -> {
          canvas.circle("hollow", new Spot(10, y), 9.5);
          canvas.label(
              Label.middle(new Spot(10, y + 4), String.valueOf(index + 1)).css("small strong"));
          canvas.label(Label.at(new Spot(27, y + 4), part.name()).css("small"));
          bar(first, y);
          part.ultimate().ifPresent(range -> line(range, y + THICK / 2 + 4));
        });
  }

  private double x(double acceleration) {
    return NAMES + Math.min(1, acceleration / end) * LENGTH;
  }

  private void bar(Range range, double y) {
    if (range.low() < end) {
      Spot from = new Spot(x(range.low()), y);
      Spot to = new Spot(Math.max(x(range.high()), from.x() + 2), y);
      new Bar(from, to, THICK).draw(canvas, "steel");
    }
    if (range.high() >= end) {
      Spot tip = new Spot(NAMES + LENGTH + 12, y);
      new Arrow(tip.plus(-10, 0), tip).draw(canvas, "edge", "solid");
      String words = range.low() < end ? "" : OrderOfFailure.shown(range, units);
      if (!words.isEmpty()) {
        canvas.label(Label.end(new Spot(NAMES + LENGTH - 6, y + 4), words).css("small on"));
      }
    }
  }

  private void line(Range range, double y) {
    if (range.low() < end) {
      Spot from = new Spot(x(range.low()), y);
      Spot to = new Spot(Math.max(x(range.high()), from.x() + 2), y);
      canvas.line("force", from, to);
    }
  }

  private void unknown(Part part, int index) {
    double y = index * PITCH + 14;
    canvas.part(
        part.name() + ": not checked",
        () -> {
          canvas.circle("unknown", new Spot(10, y), 9.5);
          canvas.label(Label.at(new Spot(27, y + 4), part.name()).css("small"));
          canvas.line("dotted", new Spot(NAMES, y), new Spot(NAMES + LENGTH, y));
          canvas.label(
              Label.middle(new Spot(NAMES + LENGTH / 2, y + 4), "not checked").css("small on"));
        });
  }
}
