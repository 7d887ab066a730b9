package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rungwork.record.Inspection.Moved;
import rungwork.vehicle.Side;

/**
 * A measured frame against the true one in plan; with nothing measured, where to put the tape.
 *
 * @param marks the marks
 * @param canvas drawn on
 * @param labels already there
 */
record MarksInPlan(MeasuredMarks marks, Canvas canvas, Labels labels) {
  void draw() {
    canvas.part(
        "true frame in plan", () -> frame(marks.blank() ? "edge" : "faint", marks::truePlan));
    if (marks.blank()) {
      canvas.part("diagonals", this::diagonals);
    } else {
      canvas.part("measured frame in plan", () -> frame("edge", marks::nowPlan));
    }
    marks.all().forEach(this::mark);
    marks.all().forEach(this::planLabel);
    names(marks.plan(Side.LEFT, marks.last()).y());
    front();
  }

  /** Rails from mark to mark, and a rung at every crossmember. */
  private void frame(String css, Function<Moved, Spot> place) {
    for (Side side : Side.values()) {
      canvas.polyline(css, marks.on(side).stream().map(place).toList());
    }
    for (int i = 0; i < marks.seen().stations().size(); i++) {
      if (isRung(marks.seen().stations().get(i))) {
        canvas.line(
            css, place.apply(marks.on(Side.LEFT).get(i)), place.apply(marks.on(Side.RIGHT).get(i)));
      }
    }
  }

  private boolean isRung(String station) {
    return marks.seen().ladder().crossmembers().stream()
        .anyMatch(one -> one.name().equals(station));
  }

  private void diagonals() {
    for (int i = 0; i + 1 < marks.seen().stations().size(); i++) {
      for (Side side : Side.values()) {
        canvas.line(
            "dotted",
            marks.truePlan(marks.on(side).get(i)),
            marks.truePlan(marks.on(side.other()).get(i + 1)));
      }
    }
  }

  private void mark(Moved one) {
    Spot at = marks.nowPlan(one);
    boolean known = marks.blank() || one.inPlan();
    String title = "mark at " + one.station() + " " + one.side().word();
    canvas.part(
        known ? title : title + ": not measured",
        () -> canvas.circle(known ? "hollow" : "unknown", at, 3.5));
    labels.keepFree(Box.EMPTY.and(at).grown(5));
  }

  private void planLabel(Moved one) {
    List<String> parts = marks.wordsInPlan(one);
    if (!one.inPlan() || parts.isEmpty()) {
      return;
    }
    double out = one.side().sign() * 1.0;
    Spot at = marks.nowPlan(one);
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

  private void names(double left) {
    double y = (marks.blank() ? left : canvas.box().bottom()) + 34;
    for (String station : marks.seen().stations()) {
      double x = marks.plan(Side.LEFT, station).x();
      Label name = Label.middle(new Spot(x, y), station).css("small on");
      labels.put(List.of(name, name.moved(0, 15), name.moved(0, 30)));
    }
  }

  private void front() {
    Spot tail = new Spot(canvas.box().left() + 60, canvas.box().top() - 22);
    new Arrow(tail, tail.plus(-60, 0)).draw(canvas, "edge", "solid");
    canvas.label(Label.at(tail.plus(6, 5), "front").css("strong"));
    Spot right = marks.plan(Side.RIGHT, marks.last());
    Spot left = marks.plan(Side.LEFT, marks.last());
    canvas.label(Label.at(right.plus(14, 4), "right rail").css("small"));
    canvas.label(Label.at(left.plus(14, 4), "left rail").css("small"));
  }
}
