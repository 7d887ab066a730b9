package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Units;

/** One diagram of an internal force along a run: its curve over the axis, its extremes labelled. */
final class DiagramPanel {
  private static final double WIDTH = 360;
  private static final double GAP = 70;
  private static final double PITCH = 154;
  private static final double HEIGHT = 38;
  private static final int LAST_ROW = 2;

  private final Canvas canvas;
  private final Course course;
  private final Units units;

  DiagramPanel(Canvas canvas, Course course, Units units) {
    this.canvas = canvas;
    this.course = course;
    this.units = units;
  }

  /** Draws it in a column and a row of the sheet. */
  void draw(int column, int row) {
    Spot origin = new Spot(column * (WIDTH + GAP), row * PITCH);
    String unit = units.scale(course.kind()).unit();
    String head = course.name() + " [" + unit + "]";
    canvas.label(Label.at(origin.plus(0, -HEIGHT - 24), head).css("strong"));
    String meaning = "up: " + course.meaning();
    canvas.label(Label.end(origin.plus(WIDTH, -HEIGHT - 24), meaning).css("small"));
    canvas.part(head, () -> curve(origin));
    stops(origin);
    extremes(origin);
    if (row == LAST_ROW) {
      names(origin);
    }
  }

  private void curve(Spot origin) {
    List<Spot> curve = course.run().cuts().stream().map(cut -> spot(origin, cut)).toList();
    List<Spot> area = new ArrayList<>(curve);
    area.add(origin.plus(WIDTH, 0));
    area.add(origin);
    canvas.polygon("tint", area);
    canvas.line("thin", origin, origin.plus(WIDTH, 0));
    canvas.polyline("edge", curve);
  }

  private Spot spot(Spot origin, Run.Cut cut) {
    double largest = course.largest();
    double up = largest == 0 ? 0 : course.upwards() * course.at(cut) / largest;
    return origin.plus(WIDTH * cut.at() / course.run().length(), -HEIGHT * up);
  }

  private void stops(Spot origin) {
    for (Run.Stop stop : course.run().stops()) {
      Spot at = along(origin, stop.at());
      canvas.part(stop.node(), () -> canvas.line("thin", at.plus(0, -3), at.plus(0, 3)));
    }
  }

  /** The names of the nodes on the way, once below all diagrams of a column. */
  private void names(Spot origin) {
    Labels labels = new Labels(canvas);
    for (Run.Stop stop : course.run().stops()) {
      Spot at = along(origin, stop.at()).plus(0, HEIGHT + 34);
      Label.Anchor anchor =
          stop.at() < 0.1 * course.run().length()
              ? Label.Anchor.START
              : stop.at() > 0.9 * course.run().length() ? Label.Anchor.END : Label.Anchor.MIDDLE;
      List<Label> rows = new ArrayList<>();
      for (int row = 0; row < 8; row++) {
        rows.add(new Label(stop.node(), at.plus(0, 14 * row), anchor, "small on"));
      }
      Label put = labels.put(rows);
      canvas.line("faint", at.plus(0, -HEIGHT - 30), put.at().plus(0, -11));
    }
  }

  private Spot along(Spot origin, double place) {
    return origin.plus(WIDTH * place / course.run().length(), 0);
  }

  private void extremes(Spot origin) {
    if (course.largest() == 0) {
      canvas.label(Label.middle(origin.plus(WIDTH / 2, -6), "0").css("small on"));
      return;
    }
    Labels labels = new Labels(canvas);
    extreme(labels, origin, course.highest());
    if (course.at(course.lowest()) < course.at(course.highest())) {
      extreme(labels, origin, course.lowest());
    }
  }

  private void extreme(Labels labels, Spot origin, Run.Cut cut) {
    Spot at = spot(origin, cut);
    double out = at.y() <= origin.y() ? -6 : 15;
    boolean left = cut.at() < course.run().length() * 0.15;
    boolean right = cut.at() > course.run().length() * 0.85;
    String words = course.number(cut, units);
    Spot place = at.plus(0, out);
    Label label =
        left
            ? Label.at(place, words)
            : right ? Label.end(place, words) : Label.middle(place, words);
    canvas.circle("solid", at, 2.5);
    labels.put(List.of(label.css("small on"), label.css("small on").moved(0, out > 0 ? 13 : -13)));
  }
}
