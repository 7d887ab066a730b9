package rungwork.report;

import java.util.List;
import java.util.Optional;

/**
 * Utilisations side by side against the limit at 1: a heading, bars with their numbers. A short
 * note stands behind the number, a long one under the bar.
 */
final class UtilisationBars {
  private static final double UNIT = 260;
  private static final double PITCH = 26;
  private static final double THICKNESS = 15;

  /** Further down for what stands under a long note. */
  private static final double ROW = 15;

  /** Letters beyond which a note behind its number would shrink the whole drawing. */
  private static final int LONG_NOTE = 40;

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
      return note.isEmpty() ? number() : number() + ", " + note;
    }

    private String number() {
      return utilisation.map(Numbers::utilisation).orElse("no number");
    }

    private boolean noteUnder() {
      return note.length() > LONG_NOTE;
    }

    private double height() {
      return noteUnder() ? PITCH + ROW : PITCH;
    }
  }

  static Picture of(String title, List<Entry> entries) {
    Canvas canvas = new Canvas();
    limit(canvas, entries.stream().mapToDouble(Entry::height).sum());
    double y = 0;
    for (Entry entry : entries) {
      entry(canvas, entry, y);
      y += entry.height();
    }
    canvas.label(Label.at(new Spot(canvas.box().left(), -PITCH * 0.7 - 25), title).css("strong"));
    StringBuilder text = new StringBuilder(title);
    entries.forEach(one -> text.append("\n- ").append(one.name()).append(": ").append(one.words()));
    return new Picture(title, canvas.done(title), text.toString());
  }

  private static void entry(Canvas canvas, Entry entry, double y) {
    Spot start = new Spot(0, y);
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
          String words = entry.noteUnder() ? entry.number() : entry.words();
          Label label = Label.at(new Spot(right, y + 4), words).css("on");
          boolean hidesLimit = right < UNIT && label.box().right() > UNIT - 4;
          canvas.label(hidesLimit ? label.moved(UNIT + 8 - right, 0) : label);
          if (entry.noteUnder()) {
            canvas.label(Label.at(start.plus(2, PITCH - 4), entry.note()).css("small on"));
          }
        });
  }

  private static void bar(Canvas canvas, Entry entry, Bar bar) {
    bar.draw(
        canvas,
        ("band " + Look.band(entry.utilisation().orElseThrow()) + " " + entry.edge()).strip());
  }

  private static void limit(Canvas canvas, double height) {
    Spot top = new Spot(UNIT, -PITCH * 0.7);
    canvas.line("limit", top, new Spot(top.x(), height - PITCH * 0.3));
    canvas.label(Label.middle(top.plus(0, -5), "limit 1").css("small"));
    canvas.line("thin", new Spot(0, -PITCH * 0.7), new Spot(0, height - PITCH * 0.3));
    canvas.label(Label.middle(new Spot(0, top.y() - 5), "0").css("small"));
  }
}
