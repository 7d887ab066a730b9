package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Units;

/**
 * One view of a mount on a drawing: metres to the right and up become pixels.
 *
 * @param canvas the drawing
 * @param origin where the face's origin comes to lie
 * @param scale px for a metre
 * @param units the reader's units
 */
record MountView(Canvas canvas, Spot origin, double scale, Units units) {
  /** Corners of a rounded end, both included. */
  private static final int ROUND = 24;

  Spot place(double right, double up) {
    return origin.plus(right * scale, -up * scale);
  }

  /** A filled rectangle. */
  void block(String css, double left, double bottom, double right, double top) {
    canvas.polygon(
        css,
        List.of(place(left, bottom), place(right, bottom), place(right, top), place(left, top)));
  }

  void line(String css, double fromRight, double fromUp, double toRight, double toUp) {
    canvas.line(css, place(fromRight, fromUp), place(toRight, toUp));
  }

  /** A plate with straight sides and the elliptic end that its strength is calculated with. */
  List<Spot> tabOutline(double halfFoot, double halfWidth, double height, double end) {
    List<Spot> outline = new ArrayList<>(List.of(place(-halfFoot, 0), place(halfFoot, 0)));
    for (int i = 0; i <= ROUND; i++) {
      double angle = Math.PI * i / ROUND;
      outline.add(place(halfWidth * Math.cos(angle), height + end * Math.sin(angle)));
    }
    return outline;
  }

  /** A fillet in section: legs along the face and up the plate. */
  void fillet(double right, double leg, double side) {
    canvas.polygon(
        "weld", List.of(place(right, 0), place(right + side * leg, 0), place(right, leg)));
  }

  /** A force's arrow that ends where it acts, its value behind its tail. */
  void force(Spot tip, double right, double up, String value) {
    double length = Math.hypot(right, up);
    Spot tail = tip.plus(-right, up);
    canvas.part(value, () -> new Arrow(tail, tip).draw(canvas, "force", "head-of-force"));
    Spot beyond = tip.plus(-right * (1 + 8 / length), up * (1 + 8 / length) + 4);
    Label label =
        Math.abs(right) < 0.3 * length
            ? Label.middle(beyond.plus(0, up > 0 ? 6 : -4), value)
            : right > 0 ? Label.end(beyond, value) : Label.at(beyond, value);
    canvas.label(label.css("strong on"));
  }

  String length(double metres) {
    return Numbers.dimension(metres, units);
  }

  /** A horizontal dimension at a height [px]. */
  void along(double left, double right, double up, double y) {
    new Dimension(place(left, up), place(right, up), length(right - left)).along(canvas, y);
  }

  /** A vertical dimension at a place [px]. */
  void upright(double bottom, double top, double right, double x) {
    new Dimension(place(right, top), place(right, bottom), length(top - bottom)).up(canvas, x);
  }
}
