package rungwork.report;

import java.util.ArrayList;
import java.util.List;

/**
 * The names of a plot's curves: one stands beside its top; several do too where their words cover
 * no line and no other word, else all of them stand in a key above the plot.
 *
 * @param tops the curves that are to be named
 * @param width of the plot [px]
 */
record CurveNames(List<Top> tops, double width) {
  private static final double ROW = 15;

  /** Further down to look for room under a single curve's top. */
  private static final int ROWS = 12;

  /** Length of the line that stands for a curve in the key [px]. */
  private static final double SAMPLE = 26;

  /**
   * A curve to be named.
   *
   * @param words its name and greatest number
   * @param css style-sheet classes of its line
   * @param at its highest place
   */
  record Top(String words, String css, Spot at) {
    /** In the curve's colour, its lines behind the words left out. */
    private Label coloured(Label label) {
      return label.css("on " + css.split(" ")[0]);
    }
  }

  CurveNames {
    tops = List.copyOf(tops);
  }

  /** Writes the names beside the tops where there is room; what is left needs a key. */
  CurveNames beside(Labels labels) {
    if (tops.size() == 1) {
      labels.put(underTop(tops.get(0)));
      return new CurveNames(List.of(), width);
    }
    boolean written = labels.putAll(tops.stream().map(this::overTop).toList());
    return written ? new CurveNames(List.of(), width) : this;
  }

  /** Above a curve's top or further and further below it. */
  private List<Label> underTop(Top top) {
    List<Label> places = new ArrayList<>();
    for (int row = -1; row < ROWS; row++) {
      double down = row < 0 ? -7 : 15 + row * ROW;
      Spot place = new Spot(Math.min(top.at().x() + 6, width - 4), top.at().y() + down);
      places.add(
          top.coloured(
              top.at().x() > width * 0.55
                  ? Label.end(place.plus(-12, 0), top.words())
                  : Label.at(place, top.words())));
    }
    return places;
  }

  /** Close above a curve's top, no wider than the plot. */
  private List<Label> overTop(Top top) {
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      Spot place = top.at().plus(0, -7 - row * ROW);
      places.add(Label.at(place.plus(6, 0), top.words()));
      places.add(Label.end(place.plus(-6, 0), top.words()));
      places.add(Label.middle(place, top.words()));
    }
    return places.stream()
        .map(top::coloured)
        .filter(label -> label.box().left() > 0 && label.box().right() < width)
        .toList();
  }

  /** Height of the key [px]. */
  double height() {
    return tops.size() * ROW;
  }

  /** Draws each curve's line and name, a row each; the last row stands at a place. */
  void key(Canvas canvas, Spot last) {
    for (int i = 0; i < tops.size(); i++) {
      Top top = tops.get(i);
      Spot row = last.plus(0, -(tops.size() - 1 - i) * ROW);
      canvas.polyline(top.css(), List.of(row.plus(0, -4), row.plus(SAMPLE, -4)));
      canvas.label(top.coloured(Label.at(row.plus(SAMPLE + 7, 0), top.words())));
    }
  }
}
