package rungwork.report;

import java.util.List;

/** Ratios as bars from 1, to the right for more, to the left for less, on a logarithmic scale. */
final class RatioBars {
  private static final double NAMES = 200;
  private static final double WIDTH = 430;
  private static final double PITCH = 26;
  private static final double THICKNESS = 15;

  /** A bar reaches to twice the middle for this ratio at least [1]. */
  private static final double LEAST_REACH = 2;

  private RatioBars() {}

  /**
   * A bar.
   *
   * @param name what it is for
   * @param ratio above zero [1]
   */
  record Entry(String name, double ratio) {}

  static Picture of(String title, List<Entry> entries) {
    Canvas canvas = new Canvas();
    double low = reach(entries, -1);
    double high = reach(entries, 1);
    double one = NAMES + 60 + WIDTH * low / (low + high);
    for (int i = 0; i < entries.size(); i++) {
      double y = i * PITCH;
      Entry entry = entries.get(i);
      double end = one + WIDTH * Math.log(entry.ratio()) / (low + high);
      canvas.part(
          entry.name() + ": " + times(entry), () -> entry(canvas, entry, one, new Spot(end, y)));
    }
    Spot top = new Spot(one, -PITCH * 0.7);
    canvas.line("limit", top, new Spot(one, entries.size() * PITCH - PITCH * 0.3));
    canvas.label(Label.middle(top.plus(0, -5), "equal").css("small"));
    StringBuilder text = new StringBuilder(title);
    entries.forEach(e -> text.append("\n- ").append(e.name()).append(": ").append(times(e)));
    return new Picture(title, canvas.done(title), text.toString());
  }

  /** How far the scale goes on one side of 1, as a logarithm. */
  private static double reach(List<Entry> entries, int side) {
    double most = entries.stream().mapToDouble(e -> side * Math.log(e.ratio())).max().orElse(0);
    return Math.max(most, side > 0 ? Math.log(LEAST_REACH) : 0.05);
  }

  private static void entry(Canvas canvas, Entry entry, double one, Spot end) {
    canvas.label(Label.end(new Spot(NAMES, end.y() + 4), entry.name()));
    Spot start = new Spot(one, end.y());
    new Bar(start, Math.abs(end.x() - one) < 1 ? start.plus(1, 0) : end, THICKNESS)
        .draw(canvas, "steel");
    Spot beside = new Spot(Math.max(end.x(), one) + 8, end.y() + 4);
    canvas.label(Label.at(beside, times(entry)).css("strong on"));
  }

  private static String times(Entry entry) {
    return "× " + RatioPage.times(entry.ratio());
  }
}
