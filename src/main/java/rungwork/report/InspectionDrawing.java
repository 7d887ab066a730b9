package rungwork.report;

import java.util.List;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.record.Inspection.Moved;

/**
 * A measured frame against the true one, in plan and in elevation, the front to the left. What it
 * deviates is magnified; the numbers are not.
 */
final class InspectionDrawing {
  /** Room between plan and elevation [px]. */
  private static final double GAP = 120;

  private final MeasuredMarks marks;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);

  InspectionDrawing(Inspection seen, Units units) {
    marks = new MeasuredMarks(seen, units);
    this.units = units;
  }

  Picture draw() {
    new MarksInPlan(marks, canvas, labels).draw();
    double below = canvas.box().bottom() + GAP;
    if (!marks.blank()) {
      new MarksInElevation(marks, canvas, labels).draw(below);
    }
    legend();
    String title =
        marks.blank()
            ? "Marks on ladder " + marks.seen().ladder().name() + " in plan, front to the left"
            : "Ladder "
                + marks.seen().ladder().name()
                + " as measured against true, plan and elevation, front to the left";
    return new Picture(title, canvas.done(title), words());
  }

  private void legend() {
    Box box = canvas.box();
    Spot at = new Spot(box.left(), box.bottom() + 30);
    String unit = "[" + units.scale(Kind.LENGTH).unit() + "]";
    if (marks.blank()) {
      canvas.label(Label.at(at, "circles: marks; dotted: diagonals of the bays").css("small"));
      return;
    }
    canvas.label(
        Label.at(
                at,
                "thin: true; thick: measured, deviations drawn " + marks.factor() + " × as large")
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
    out.append(String.join(", ", marks.seen().stations()));
    for (Moved one : marks.blank() ? List.<Moved>of() : marks.all()) {
      List<String> parts = marks.words(one);
      if (!parts.isEmpty()) {
        out.append("\n- ").append(one.station()).append(' ').append(one.side().word());
        out.append(": ").append(String.join(", ", parts));
        out.append(" [").append(units.scale(Kind.LENGTH).unit()).append("]");
      }
    }
    return out.toString();
  }
}
