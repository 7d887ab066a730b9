package rungwork.report;

/** The line that explains a coloured drawing. */
final class Legend {
  private static final double STEP = 9;
  private static final double HEIGHT = 11;

  private Legend() {}

  /** Draws the scale of utilisations with its base line's start at a place. */
  static void utilisation(Canvas canvas, Spot at) {
    canvas.label(Label.at(at, "utilisation 0").css("small"));
    Spot scale = at.plus(92, -HEIGHT + 1);
    for (int i = 0; i < 16; i++) {
      canvas.rectangle("u" + i, swatch(scale.plus(i * STEP, 0), STEP));
    }
    canvas.label(Label.at(at.plus(92 + 16 * STEP + 5, 0), "1").css("small"));
    Spot over = at.plus(92 + 16 * STEP + 26, -HEIGHT / 2 + 1);
    new Bar(over, over.plus(26, 0), HEIGHT).draw(canvas, "band over");
    canvas.label(Label.at(over.plus(31, HEIGHT / 2 - 1), "over").css("small"));
    Spot open = over.plus(76, 0);
    new Bar(open, open.plus(26, 0), HEIGHT).draw(canvas, "unknown");
    canvas.label(
        Label.at(open.plus(31, HEIGHT / 2 - 1), "not checked; dashed edge: not wholly checked")
            .css("small"));
  }

  private static Box swatch(Spot corner, double width) {
    return new Box(corner.x(), corner.y(), corner.x() + width, corner.y() + HEIGHT);
  }
}
