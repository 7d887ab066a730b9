package rungwork.report;

import java.util.List;
import java.util.Optional;

/** Utilisations side by side against the limit at 1: bars with their numbers. */
final class UtilisationBars {
  private static final double NAMES = 170;
  private static final double UNIT = 300;
  private static final double PITCH = 26;
  private static final double THICKNESS = 15;

  /** Longer bars are cut here; their number says how long they are. */
  private static final double LONGEST = 1.6;

  private UtilisationBars() {}

  /**
   * A bar.
   *
   * @param name what it is for
   * @param utilisation demand over capacity, if there is one
   * @param note what stands behind the number; empty for nothing
   * @param edge {@code open} for a dashed edge, of what was not wholly checked; else empty
   */
  record Entry(String name, Optional<Double> utilisation, String note, String edge) {
    String words() {
      String number = utilisation.map(Numbers::utilisation).orElse("no number");
      return note.isEmpty() ? number : number + ", " + note;
    }
  }

  static Picture of(String title, List<Entry> entries) {
    Canvas canvas = new Canvas();
    for (int i = 0; i < entries.size(); i++) {
      entry(canvas, entries.get(i), i * PITCH);
    }
    limit(canvas, entries.size() * PITCH);
    StringBuilder text = new StringBuilder(title);
    entries.forEach(one -> text.append("\n- ").append(one.name()).append(": ").append(one.words()));
    return new Picture(title, canvas.done(title), text.toString());
  }

  private static void entry(Canvas canvas, Entry entry, double y) {
    Spot start = new Spot(NAMES, y);
    double length = UNIT * Math.min(LONGEST, entry.utilisation().orElse(0.0));
    Spot end = start.plus(Math.max(length, 1), 0);
    canvas.part(
        entry.name() + ": " + entry.words(),
        () -> {
          canvas.label(Label.end(start.plus(-8, 4), entry.name()));
          entry
              .utilisation()
              .ifPresent(value -> bar(canvas, entry, new Bar(start, end, THICKNESS)));
          double right = Math.max(end.x(), start.x()) + 8;
          Label label = Label.at(new Spot(right, y + 4), entry.words()).css("on");
          boolean hidesLimit = right < NAMES + UNIT && label.box().right() > NAMES + UNIT - 4;
          canvas.label(hidesLimit ? label.moved(NAMES + UNIT + 8 - right, 0) : label);
        });
  }

  private static void bar(Canvas canvas, Entry entry, Bar bar) {
    bar.draw(
        canvas,
        ("band " + Look.band(entry.utilisation().orElseThrow()) + " " + entry.edge()).strip());
  }

  private static void limit(Canvas canvas, double height) {
    Spot top = new Spot(NAMES + UNIT, -PITCH * 0.7);
    canvas.line("limit", top, new Spot(top.x(), height - PITCH * 0.3));
    canvas.label(Label.middle(top.plus(0, -5), "limit 1").css("small"));
    canvas.line("thin", new Spot(NAMES, -PITCH * 0.7), new Spot(NAMES, height - PITCH * 0.3));
    canvas.label(Label.middle(new Spot(NAMES, top.y() - 5), "0").css("small"));
  }
}
