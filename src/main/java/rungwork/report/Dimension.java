package rungwork.report;

/**
 * A dimension as on a workshop drawing: extension lines, a dimension line with oblique strokes, the
 * figure over it.
 *
 * @param from the first place measured
 * @param to the second place measured
 * @param words the figure
 */
record Dimension(Spot from, Spot to, String words) {
  private static final double GAP = 4;
  private static final double STROKE = 4;

  /** Draws the horizontal distance along a line at y [px]. */
  void along(Canvas canvas, double y) {
    Spot a = new Spot(from.x(), y);
    Spot b = new Spot(to.x(), y);
    double side = Math.signum(y - from.y());
    canvas.line("faint", from.plus(0, side * GAP), a.plus(0, side * GAP));
    canvas.line("faint", to.plus(0, side * GAP), b.plus(0, side * GAP));
    measured(canvas, a, b);
    Label label = Label.middle(a.towards(b, 0.5).plus(0, -4), words).css("small on");
    boolean fits = label.box().width() < a.distance(b) - 2 * STROKE;
    canvas.label(fits ? label : label.moved(0, 18));
  }

  /** Draws the vertical distance along a line at x [px]. */
  void up(Canvas canvas, double x) {
    Spot a = new Spot(x, from.y());
    Spot b = new Spot(x, to.y());
    double side = Math.signum(x - from.x());
    canvas.line("faint", from.plus(side * GAP, 0), a.plus(side * GAP, 0));
    canvas.line("faint", to.plus(side * GAP, 0), b.plus(side * GAP, 0));
    measured(canvas, a, b);
    Spot middle = a.towards(b, 0.5).plus(side * 6, 4);
    Label label = side < 0 ? Label.end(middle, words) : Label.at(middle, words);
    canvas.label(label.css("small on"));
  }

  private static void measured(Canvas canvas, Spot a, Spot b) {
    canvas.line("thin", a, b);
    for (Spot end : new Spot[] {a, b}) {
      canvas.line("edge", end.plus(-STROKE, STROKE), end.plus(STROKE, -STROKE));
    }
  }
}
