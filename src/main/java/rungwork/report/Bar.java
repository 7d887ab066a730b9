package rungwork.report;

import java.util.List;

/**
 * A straight member on a drawing, to scale in its width.
 *
 * @param from its start
 * @param to its end
 * @param width across [px]
 */
record Bar(Spot from, Spot to, double width) {
  /** Distance of hatch lines along the bar [px]. */
  private static final double HATCH = 7;

  /** Draws it in a style-sheet class; the hatch tells it from all others without colour. */
  void draw(Canvas canvas, String css) {
    canvas.polygon(css, corners());
    if (css.contains("over")) {
      hatch(canvas);
    }
  }

  /** The place a part of the way along it. */
  Spot at(double part) {
    return from.towards(to, part);
  }

  /** The room it takes. */
  Box box() {
    return corners().stream().reduce(Box.EMPTY, Box::and, Box::and);
  }

  private List<Spot> corners() {
    Spot across = across(width / 2);
    return List.of(
        from.plus(across.x(), across.y()),
        to.plus(across.x(), across.y()),
        to.plus(-across.x(), -across.y()),
        from.plus(-across.x(), -across.y()));
  }

  private void hatch(Canvas canvas) {
    double length = from.distance(to);
    double lean = Math.min(1, width / length);
    long lines = Math.max(1, Math.round((1 - lean) * length / HATCH));
    Spot across = across(width / 2);
    for (long i = 0; i < lines; i++) {
      double start = (1 - lean) * (i + 0.5) / lines;
      canvas.line(
          "hatch",
          at(start).plus(across.x(), across.y()),
          at(start + lean).plus(-across.x(), -across.y()));
    }
  }

  /** The step of a length square to the bar. */
  private Spot across(double step) {
    double length = Math.max(1e-9, from.distance(to));
    return new Spot(-(to.y() - from.y()) / length * step, (to.x() - from.x()) / length * step);
  }
}
