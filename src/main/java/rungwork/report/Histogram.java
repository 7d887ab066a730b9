package rungwork.report;

import java.util.Arrays;
import java.util.function.DoubleFunction;

/** How many values lie in each of some equal steps, with a limit where there is one. */
final class Histogram {
  private static final double WIDTH = 520;
  private static final double HEIGHT = 170;
  private static final int STEPS = 24;

  private final Canvas canvas = new Canvas();
  private final double low;
  private final double step;
  private final int[] counts = new int[STEPS];
  private final int most;

  private Histogram(double[] values) {
    low = Arrays.stream(values).min().orElse(0);
    double high = Arrays.stream(values).max().orElse(1);
    step = high > low ? (high - low) / STEPS : 1;
    for (double value : values) {
      counts[(int) Math.min(STEPS - 1, (value - low) / step)]++;
    }
    most = Math.max(1, Arrays.stream(counts).max().orElse(1));
  }

  /**
   * A picture.
   *
   * @param title what it shows
   * @param values the values [SI], at least one
   * @param limit where the limit is [SI]; not a number for none
   * @param show a value in the reader's units
   */
  static Picture of(String title, double[] values, double limit, DoubleFunction<String> show) {
    Histogram histogram = new Histogram(values);
    histogram.bars(limit, show);
    histogram.axis(limit, show);
    String text =
        "%s\n- %d values from %s to %s"
            .formatted(
                title,
                values.length,
                show.apply(histogram.low),
                show.apply(histogram.low + STEPS * histogram.step));
    return new Picture(title, histogram.canvas.done(title), text);
  }

  private double x(double value) {
    return WIDTH * (value - low) / (STEPS * step);
  }

  private void bars(double limit, DoubleFunction<String> show) {
    for (int i = 0; i < STEPS; i++) {
      double from = low + i * step;
      double height = HEIGHT * counts[i] / most;
      String css = from >= limit ? "over band" : "steel";
      String words = counts[i] + " from " + show.apply(from) + " to " + show.apply(from + step);
      Spot foot = new Spot(x(from + step / 2), 0);
      if (counts[i] > 0) {
        canvas.part(
            words, () -> new Bar(foot, foot.plus(0, -height), WIDTH / STEPS - 2).draw(canvas, css));
      }
    }
  }

  private void axis(double limit, DoubleFunction<String> show) {
    canvas.line("thin", new Spot(0, 0), new Spot(WIDTH, 0));
    for (int i = 0; i <= 4; i++) {
      double value = low + STEPS * step * i / 4;
      canvas.line("thin", new Spot(x(value), 0), new Spot(x(value), 4));
      canvas.label(Label.middle(new Spot(x(value), 18), show.apply(value)).css("small"));
    }
    if (limit > low && limit < low + STEPS * step) {
      canvas.line("limit", new Spot(x(limit), 0), new Spot(x(limit), -HEIGHT - 8));
      canvas.label(
          Label.middle(new Spot(x(limit), -HEIGHT - 13), "limit " + show.apply(limit))
              .css("small"));
    }
  }
}
