package rungwork.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * Curves over one axis, each named where it is highest, or in a key above; moments that matter as
 * upright lines with their words above.
 *
 * @param title what it shows
 * @param across what runs to the right
 * @param up what runs upwards
 * @param curves at least one
 * @param marks places on the axis across that have words
 * @param dots places on the curves that have a number or a word
 */
record Plot(
    String title, Axis across, Axis up, List<Curve> curves, List<Mark> marks, List<Dot> dots) {
  /**
   * An axis.
   *
   * @param name what it counts
   * @param kind what it measures
   * @param begins where
   */
  record Axis(String name, Kind kind, Begins begins) {
    /** Where an axis begins. */
    enum Begins {
      AT_ZERO,
      /** At a round number next to the least one shown; for dots, whose height is no size. */
      NEAR_THE_LEAST
    }

    Axis(String name, Kind kind) {
      this(name, kind, Begins.AT_ZERO);
    }

    String head(Units units) {
      String unit = units.scale(kind).unit();
      return unit.isEmpty() ? name : name + " [" + unit + "]";
    }
  }

  /**
   * A curve.
   *
   * @param name as it stands beside it; empty for one that goes with the curve before
   * @param css style-sheet class of its line
   * @param x [SI]
   * @param y [SI]
   */
  record Curve(String name, String css, double[] x, double[] y) {
    int highest() {
      return IntStream.range(0, y.length)
          .boxed()
          .max(Comparator.comparingDouble(i -> y[i]))
          .orElseThrow();
    }
  }

  /**
   * A place across.
   *
   * @param at [SI]
   * @param words what happens there
   */
  record Mark(double at, String words) {}

  /**
   * A place on a curve.
   *
   * @param x across [SI]
   * @param y up [SI]
   * @param words as they stand beside it
   * @param what it says in a reader's words
   */
  record Dot(double x, double y, String words, String what) {}

  Plot {
    curves = List.copyOf(curves);
    marks = List.copyOf(marks);
    dots = List.copyOf(dots);
  }

  static Plot of(String title, Axis across, Axis up, List<Curve> curves) {
    return new Plot(title, across, up, curves, List.of(), List.of());
  }

  Plot with(List<Mark> events) {
    return new Plot(title, across, up, curves, events, dots);
  }

  Plot dotted(List<Dot> places) {
    return new Plot(title, across, up, curves, marks, places);
  }

  Picture picture(Units units) {
    return new Picture(title, new PlotDrawing(this, units).svg(), text(units));
  }

  static String named(Curve curve) {
    return curve.name().isEmpty() ? "the same, other end of the range" : curve.name();
  }

  private String text(Units units) {
    StringBuilder text = new StringBuilder(title);
    Scale high = units.scale(up.kind());
    Scale along = units.scale(across.kind());
    for (Curve curve : curves) {
      int top = curve.highest();
      text.append("\n- ")
          .append(named(curve))
          .append(": highest ")
          .append(high.show(curve.y()[top], 3))
          .append(" at ")
          .append(along.show(curve.x()[top], 3));
    }
    marks.forEach(
        mark ->
            text.append("\n- ").append(along.show(mark.at(), 3)).append(": ").append(mark.words()));
    for (Dot dot : dots) {
      text.append("\n- ").append(dot.what()).append(": ").append(high.show(dot.y(), 3));
      text.append(" at ").append(along.show(dot.x(), 3));
    }
    return text.toString();
  }
}
