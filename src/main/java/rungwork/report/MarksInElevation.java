package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rungwork.record.Inspection.Moved;
import rungwork.vehicle.Side;

/**
 * The rails of a measured frame against the true ones, seen from the left.
 *
 * @param marks the marks
 * @param canvas drawn on
 * @param labels already there
 */
record MarksInElevation(MeasuredMarks marks, Canvas canvas, Labels labels) {
  /** Draws it about a level of the drawing. */
  void draw(double y) {
    Function<Moved, Spot> truth = one -> marks.side(one, 0, y);
    canvas.part(
        "true rails in elevation",
        () -> canvas.polyline("faint", marks.on(Side.LEFT).stream().map(truth).toList()));
    for (Side side : Side.values()) {
      List<Moved> known = marks.on(side).stream().filter(Moved::inHeight).toList();
      if (known.isEmpty()) {
        continue;
      }
      canvas.part(
          "measured " + side.word() + " rail in elevation",
          () -> {
            canvas.polyline(
                side == Side.LEFT ? "edge" : "dashed",
                known.stream().map(one -> marks.side(one, one.up(), y)).toList());
            known.forEach(one -> canvas.circle("hollow", marks.side(one, one.up(), y), 3));
          });
      known.forEach(one -> heightLabel(one, y));
    }
    Spot tail = marks.side(marks.on(Side.LEFT).get(marks.on(Side.LEFT).size() - 1), 0, y);
    canvas.label(Label.at(tail.plus(14, 4), "elevation").css("small"));
  }

  private void heightLabel(Moved one, double y) {
    if (!marks.isHigher(one)) {
      return;
    }
    String words =
        one.station()
            + " "
            + one.side().word()
            + " "
            + marks.amount(Math.abs(one.up()))
            + (one.up() > 0 ? " up" : " down");
    Spot at = marks.side(one, one.up(), y);
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 5; row++) {
      double away = one.up() > 0 ? -10 - 14 * row : 18 + 14 * row;
      places.add(Label.middle(at.plus(0, away), words).css("small on"));
    }
    labels.put(places);
  }
}
