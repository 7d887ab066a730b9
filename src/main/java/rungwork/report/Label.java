package rungwork.report;

/**
 * Words on a drawing.
 *
 * @param words the words
 * @param at the place of their base line's start, middle or end
 * @param anchor which of these it is
 * @param css style-sheet classes, such as {@code small on}
 */
record Label(String words, Spot at, Anchor anchor, String css) {
  /** Width of a letter in ems, generous: no font is measured. */
  private static final double EM = 0.6;

  /** Letters beyond which a label is cut: a name without end would shrink its whole drawing. */
  private static final int LONGEST = 160;

  /** Cuts words that never end. */
  Label {
    if (words.length() > LONGEST) {
      words = words.substring(0, words.offsetByCodePoints(LONGEST, -2)) + "…";
    }
  }

  /** Where on a label its place lies. */
  enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    private final String svg;
    private final double part;

    Anchor(String svg, double part) {
      this.svg = svg;
      this.part = part;
    }

    String svg() {
      return svg;
    }
  }

  static Label at(Spot at, String words) {
    return new Label(words, at, Anchor.START, "");
  }

  static Label middle(Spot at, String words) {
    return new Label(words, at, Anchor.MIDDLE, "");
  }

  static Label end(Spot at, String words) {
    return new Label(words, at, Anchor.END, "");
  }

  /** This label in other classes. */
  Label css(String classes) {
    return new Label(words, at, anchor, classes);
  }

  /** This label elsewhere. */
  Label moved(double dx, double dy) {
    return new Label(words, at.plus(dx, dy), anchor, css);
  }

  /** Height of its letters [px], as the style sheet sets it. */
  double size() {
    return css.contains("head") ? 15 : css.contains("small") ? 11.5 : 13;
  }

  /** The room it takes. */
  Box box() {
    double width = words.codePointCount(0, words.length()) * EM * size();
    double left = at.x() - anchor.part * width;
    return new Box(left, at.y() - 0.8 * size(), left + width, at.y() + 0.25 * size());
  }
}
