package rungwork.report;

import rungwork.quantity.Units;
import rungwork.record.DesignRecord;

/**
 * A record on paper: A4 for a reader of metric units, Letter for one of inch-pound units; title and
 * date at each page's head, its number at the foot (CSS Paged Media Module Level 3, margin boxes).
 */
final class RecordPaper {
  /** Letters of a title that fit beside the date. */
  private static final int LONGEST = 70;

  private final DesignRecord record;
  private final Units units;

  RecordPaper(DesignRecord record, Units units) {
    this.record = record;
    this.units = units;
  }

  /** The rules, which hold no character that a style element would need escaped. */
  String style() {
    return Look.paperStyle()
        .replace("SIZE", units == Units.METRIC ? "A4" : "letter")
        .replace("DATE", quoted(record.head().date().map(Object::toString).orElse("not dated")))
        .replace("TITLE", quoted(shortened(record.head().title())));
  }

  private static String shortened(String title) {
    int[] letters = title.codePoints().toArray();
    return letters.length <= LONGEST ? title : new String(letters, 0, LONGEST - 1) + "…";
  }

  /** A CSS string in which all but plain letters and digits is written by its code point. */
  private static String quoted(String words) {
    StringBuilder out = new StringBuilder("\"");
    words.codePoints().forEach(c -> out.append(letter(c)));
    return out.append('"').toString();
  }

  private static String letter(int c) {
    boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == ' ' || c == '-');
    return plain ? Character.toString(c) : "\\%06x".formatted(c);
  }
}
