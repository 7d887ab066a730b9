package rungwork.report;

import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Support;

/** A frame as lines. */
final class FrameLines {
  private FrameLines() {}

  /** Draws its beams where they are without load, and its supports. */
  static void draw(Canvas canvas, Frame frame, Sight sight) {
    for (Beam beam : frame.beams()) {
      canvas.part(
          beam.name(),
          () -> {
            Spot start = sight.place(frame.startOf(beam));
            Spot end = sight.place(frame.endOf(beam));
            canvas.line("thin", start, end);
            arm(canvas, sight.place(frame.node(beam.start()).at()), start);
            arm(canvas, sight.place(frame.node(beam.end()).at()), end);
          });
    }
    frame.supports().forEach(support -> support(canvas, frame, sight, support));
  }

  /** A rigid arm from a node to a beam's end. */
  private static void arm(Canvas canvas, Spot node, Spot end) {
    if (!node.equals(end)) {
      canvas.line("thin", node, end);
    }
  }

  private static void support(Canvas canvas, Frame frame, Sight sight, Support support) {
    Spot at = sight.place(frame.node(support.node()).at());
    canvas.part(
        "held at " + support.node(),
        () -> canvas.polygon("hollow", List.of(at, at.plus(6, 10), at.plus(-6, 10))));
  }

  /** Marks where the front is, above all that is drawn. */
  static void front(Canvas canvas, Sight sight) {
    if (sight.xx() == 0) {
      return;
    }
    Spot tail = new Spot(canvas.box().left() + 50, canvas.box().top() - 20);
    new Arrow(tail, tail.plus(-50, 0)).draw(canvas, "edge", "solid");
    canvas.label(Label.at(tail.plus(6, 5), "front").css("strong"));
  }
}
