package rungwork.report;

import java.util.List;
import java.util.function.DoubleFunction;
import rungwork.study.Sensitivity;

/**
 * What each input does to a measure: bars from its value with the input low to that with it high.
 */
final class Tornado {
  private static final double NAMES = 200;
  private static final double WIDTH = 380;
  private static final double PITCH = 28;
  private static final double THICKNESS = 15;

  private final Canvas canvas = new Canvas();
  private final double designed;
  private final DoubleFunction<String> show;
  private double low;
  private double high;

  private Tornado(double designed, List<Sensitivity.Swing> swings, DoubleFunction<String> show) {
    this.designed = designed;
    this.show = show;
    low = designed;
    high = designed;
    for (Sensitivity.Swing swing : swings) {
      reach(swing.low());
      reach(swing.high());
    }
  }

  static Picture of(
      String title, double designed, List<Sensitivity.Swing> swings, DoubleFunction<String> show) {
    Tornado tornado = new Tornado(designed, swings, show);
    StringBuilder text = new StringBuilder(title);
    for (int i = 0; i < swings.size(); i++) {
      String words = tornado.bar(swings.get(i), i * PITCH);
      text.append("\n- ").append(words);
    }
    tornado.middle(swings.size());
    return new Picture(title, tornado.canvas.done(title), text.toString());
  }

  private void reach(double value) {
    if (!Double.isNaN(value)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }

  private double x(double value) {
    return NAMES + 90 + (high == low ? WIDTH / 2 : WIDTH * (value - low) / (high - low));
  }

  private String bar(Sensitivity.Swing swing, double y) {
    String words =
        swing.input().name() + ": " + end(swing.low()) + " low, " + end(swing.high()) + " high";
    canvas.part(
        words,
        () -> {
          canvas.label(Label.end(new Spot(NAMES, y + 4), swing.input().name()));
          side(swing.low(), "low", y);
          side(swing.high(), "high", y);
          numbers(swing, y);
        });
    return words;
  }

  private String end(double value) {
    return Double.isNaN(value) ? "refused" : show.apply(value);
  }

  /** The half with the input low is open, the other one filled: told apart without colour. */
  private void side(double value, String which, double y) {
    if (!Double.isNaN(value) && Math.abs(x(value) - x(designed)) > 0.5) {
      new Bar(new Spot(x(designed), y), new Spot(x(value), y), THICKNESS)
          .draw(canvas, which.equals("low") ? "hollow" : "steel");
    }
  }

  /** One number at each end of the bar, left and right. */
  private void numbers(Sensitivity.Swing swing, double y) {
    double[] ends = {swing.low(), swing.high()};
    boolean lowIsLeft = !(ends[0] > ends[1]);
    double left = lowIsLeft ? ends[0] : ends[1];
    double right = lowIsLeft ? ends[1] : ends[0];
    number(left, lowIsLeft ? "low" : "high", y, true);
    number(right, lowIsLeft ? "high" : "low", y, false);
  }

  private void number(double value, String which, double y, boolean left) {
    if (Double.isNaN(value)) {
      return;
    }
    double at = left ? Math.min(x(value), x(designed)) - 6 : Math.max(x(value), x(designed)) + 6;
    Spot spot = new Spot(at, y + 4);
    String words = left ? show.apply(value) + " " + which : show.apply(value) + " " + which;
    canvas.label((left ? Label.end(spot, words) : Label.at(spot, words)).css("small on"));
  }

  private void middle(int bars) {
    Spot top = new Spot(x(designed), -PITCH * 0.7);
    canvas.line("limit", top, new Spot(top.x(), bars * PITCH - PITCH * 0.3));
    canvas.label(Label.middle(top.plus(0, -5), "as designed " + show.apply(designed)).css("small"));
  }
}
