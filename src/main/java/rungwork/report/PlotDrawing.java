package rungwork.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rungwork.quantity.Units;

/** A plot being drawn in the reader's units. */
final class PlotDrawing {
  private static final double WIDTH = 620;
  private static final double HEIGHT = 250;
  private static final double ROW = 15;

  /** Of a dot [px]. */
  private static final double RADIUS = 3;

  private static final int ROWS = 6;
  private static final int TICKS = 6;

  /** Points of a curve that are drawn: more show no more. */
  private static final int POINTS = 400;

  private final Canvas canvas = new Canvas();

  /** Numbers that differ by less of their size are one number. */
  private static final double SPREAD = 1e-6;

  private final Plot plot;
  private final Units units;
  private final Ends x;
  private final Ends y;

  PlotDrawing(Plot plot, Units units) {
    this.plot = plot;
    this.units = units;
    x = ends(plot.across(), WIDTH);
    y = ends(plot.up(), HEIGHT);
  }

  String svg() {
    grid();
    plot.marks().forEach(mark -> canvas.part(mark.words(), () -> upright(mark)));
    plot.curves().forEach(curve -> canvas.part(Plot.named(curve), () -> curve(curve)));
    Labels labels = new Labels(canvas);
    if (!plot.dots().isEmpty()) {
      keepFree(labels);
    }
    plot.dots().forEach(dot -> canvas.part(dot.what(), () -> dot(dot, labels)));
    words(labels);
    CurveNames unnamed = names(labels);
    Spot head = new Spot(-40, Math.min(-HEIGHT, canvas.box().top()) - 10);
    canvas.label(Label.at(head, plot.up().head(units)).css("strong"));
    unnamed.key(canvas, head.plus(0, -20));
    canvas.label(Label.at(head.plus(0, -22 - unnamed.height()), plot.title()).css("head"));
    return canvas.done(plot.title());
  }

  /** Ends of an axis in the reader's units, at round numbers. */
  private record Ends(double low, double high, double step, double length) {
    static Ends of(double low, double high, double length) {
      double step = step((high - low) / TICKS);
      double from = Math.floor(low / step + 1e-9) * step;
      double to = Math.ceil(high / step - 1e-9) * step;
      return new Ends(from, to > from ? to : from + step, step, length);
    }

    private static double step(double least) {
      double power = Math.pow(10, Math.floor(Math.log10(Math.max(least, 1e-9))));
      for (double part : new double[] {1, 2, 5}) {
        if (part * power >= least * (1 - 1e-9)) {
          return part * power;
        }
      }
      return 10 * power;
    }

    double place(double value) {
      return (value - low) / (high - low) * length;
    }

    List<Double> ticks() {
      long count = Math.round((high - low) / step);
      return IntStream.rangeClosed(0, (int) count).mapToObj(i -> low + i * step).toList();
    }
  }

  private Ends ends(Plot.Axis axis, double length) {
    DoubleSummaryStatistics shown = shown(axis).summaryStatistics();
    boolean spread = shown.getMax() - shown.getMin() > SPREAD * Math.abs(shown.getMax());
    boolean near = axis.begins() == Plot.Axis.Begins.NEAR_THE_LEAST && spread;
    double low = near ? shown.getMin() : Math.min(0, shown.getMin());
    double high = near ? shown.getMax() : Math.max(0, shown.getMax());
    double unit = units.scale(axis.kind()).inSi();
    return Ends.of(low / unit, high / unit, length);
  }

  /** All numbers that the curves and dots have on an axis [SI]. */
  private DoubleStream shown(Plot.Axis axis) {
    boolean across = axis == plot.across();
    return DoubleStream.concat(
        plot.curves().stream().flatMapToDouble(c -> DoubleStream.of(across ? c.x() : c.y())),
        plot.dots().stream().mapToDouble(dot -> across ? dot.x() : dot.y()));
  }

  private void grid() {
    for (double tick : x.ticks()) {
      double at = x.place(tick);
      canvas.line("faint", new Spot(at, 0), new Spot(at, -HEIGHT));
      canvas.label(Label.middle(new Spot(at, 17), figure(tick, x.step())).css("small"));
    }
    for (double tick : y.ticks()) {
      double at = -y.place(tick);
      canvas.line("faint", new Spot(0, at), new Spot(WIDTH, at));
      canvas.label(Label.end(new Spot(-7, at + 4), figure(tick, y.step())).css("small"));
    }
    double foot = -y.place(Math.max(0, y.low()));
    canvas.line("thin", new Spot(0, foot), new Spot(WIDTH, foot));
    canvas.line("thin", new Spot(0, 0), new Spot(0, -HEIGHT));
    canvas.label(Label.end(new Spot(WIDTH, 35), plot.across().head(units)).css("strong"));
  }

  private static String figure(double value, double step) {
    int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    return Numbers.decimals(value, decimals);
  }

  private void curve(Plot.Curve curve) {
    canvas.polyline(curve.css(), spots(curve));
  }

  private List<Spot> spots(Plot.Curve curve) {
    List<Spot> spots = new ArrayList<>();
    for (int i : drawn(curve)) {
      spots.add(spot(curve.x()[i], curve.y()[i]));
    }
    return spots;
  }

  private Spot spot(double across, double up) {
    return new Spot(
        x.place(across / units.scale(plot.across().kind()).inSi()),
        -y.place(up / units.scale(plot.up().kind()).inSi()));
  }

  /** Keeps the words of dots off the curves and off other dots. */
  private void keepFree(Labels labels) {
    for (Plot.Curve curve : plot.curves()) {
      List<Spot> spots = spots(curve);
      for (int i = 1; i < spots.size(); i++) {
        labels.keepFree(spots.get(i - 1), spots.get(i));
      }
    }
    plot.dots()
        .forEach(dot -> labels.keepFree(Box.EMPTY.and(spot(dot.x(), dot.y())).grown(RADIUS)));
  }

  /** Of each stretch of a long curve its first, its lowest and its highest point. */
  private static int[] drawn(Plot.Curve curve) {
    int count = curve.y().length;
    int stretch = Math.max(1, 3 * count / POINTS);
    if (stretch == 1) {
      return IntStream.range(0, count).toArray();
    }
    IntStream.Builder kept = IntStream.builder();
    for (int from = 0; from < count; from += stretch) {
      int low = from;
      int high = from;
      for (int i = from; i < Math.min(count, from + stretch); i++) {
        low = curve.y()[i] < curve.y()[low] ? i : low;
        high = curve.y()[i] > curve.y()[high] ? i : high;
      }
      kept.add(from).add(low).add(high);
    }
    kept.add(count - 1);
    return kept.build().sorted().distinct().toArray();
  }

  private void upright(Plot.Mark mark) {
    double at = x.place(mark.at() / units.scale(plot.across().kind()).inSi());
    canvas.line("dotted", new Spot(at, 0), new Spot(at, -HEIGHT - 4));
  }

  private void dot(Plot.Dot dot, Labels labels) {
    Spot spot = spot(dot.x(), dot.y());
    canvas.circle("solid", spot, RADIUS);
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      places.add(Label.end(spot.plus(-4, -5 - row * ROW / 2), dot.words()).css("small on"));
      places.add(Label.at(spot.plus(4, 13 + row * ROW / 2), dot.words()).css("small on"));
      places.add(Label.at(spot.plus(5, -5 - row * ROW / 2), dot.words()).css("small on"));
      places.add(Label.end(spot.plus(-5, 13 + row * ROW / 2), dot.words()).css("small on"));
    }
    labels.put(places);
  }

  private void words(Labels labels) {
    double unit = units.scale(plot.across().kind()).inSi();
    for (Plot.Mark mark : plot.marks()) {
      double at = x.place(mark.at() / unit);
      boolean right = at > WIDTH * 0.6;
      List<Label> rows = new ArrayList<>();
      for (int row = 0; row < ROWS; row++) {
        Spot place = new Spot(at + (right ? 3 : -3), -HEIGHT - 9 - row * ROW);
        rows.add(
            (right ? Label.end(place, mark.words()) : Label.at(place, mark.words()))
                .css("small on"));
      }
      labels.put(rows);
    }
  }

  /** Names the curves beside their tops; returns those that need a key. */
  private CurveNames names(Labels labels) {
    List<CurveNames.Top> tops = new ArrayList<>();
    for (Plot.Curve curve : plot.curves()) {
      if (!curve.name().isEmpty()) {
        int top = curve.highest();
        String value = units.scale(plot.up().kind()).show(curve.y()[top], 3);
        String words = curve.name() + ", at most " + value;
        tops.add(new CurveNames.Top(words, curve.css(), spot(curve.x()[top], curve.y()[top])));
      }
    }
    if (tops.size() > 1) {
      keepFree(labels);
    }
    return new CurveNames(tops, WIDTH).beside(labels);
  }
}
