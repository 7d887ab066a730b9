package rungwork.report;

import java.util.List;

/**
 * An arrow on a drawing.
 *
 * @param tail where it starts
 * @param tip where it points
 */
record Arrow(Spot tail, Spot tip) {
  private static final double HEAD = 9;
  private static final double SPREAD = 3.6;

  /** Draws it: a shaft in one style-sheet class, a filled head in another. */
  void draw(Canvas canvas, String shaft, String head) {
    canvas.line(shaft, tail, tip);
    head(canvas, head, tip);
  }

  /** Draws it with two heads, as a moment's arrow along its axis (right-hand rule). */
  void drawDouble(Canvas canvas, String shaft, String head) {
    draw(canvas, shaft, head);
    double length = tail.distance(tip);
    head(canvas, head, tip.towards(tail, length > 0 ? HEAD / length : 0));
  }

  private void head(Canvas canvas, String css, Spot point) {
    double length = Math.max(1e-9, tail.distance(tip));
    double ux = (tip.x() - tail.x()) / length;
    double uy = (tip.y() - tail.y()) / length;
    Spot foot = point.plus(-HEAD * ux, -HEAD * uy);
    canvas.polygon(
        css,
        List.of(point, foot.plus(-SPREAD * uy, SPREAD * ux), foot.plus(SPREAD * uy, -SPREAD * ux)));
  }
}
