package rungwork.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rungwork.fault.ModelException;

/**
 * Writes comma-separated values (RFC 4180): cell by cell, line by line. Words that a spreadsheet
 * would take for a formula get an apostrophe in front; numbers stay numbers.
 */
public final class CsvLines {
  private static final String END = "\r\n";

  /** Empty cells at once: more than any table here has columns. */
  private static final int MOST = 1000;

  /** What begins a formula in a spreadsheet, be it behind blanks or marks that nobody sees. */
  private static final Pattern FORMULA =
      Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}\uFFFD]*[-=+@|%＝＋－＠−].*", Pattern.DOTALL);

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?[0-9]+([.][0-9]+)?([eE][-+]?[0-9]+)?");

  private static final Pattern QUOTED = Pattern.compile("[\",\r\n]");

  private final StringBuilder out = new StringBuilder();
  private final List<String> line = new ArrayList<>();

  /**
   * Adds a cell of words.
   *
   * @param words whatever somebody named or wrote; control characters become U+FFFD
   * @return this
   */
  public CsvLines words(String words) {
    String plain = printable(words);
    boolean formula = FORMULA.matcher(plain).matches() && !NUMBER.matcher(plain).matches();
    return cell(formula ? "'" + plain : plain);
  }

  /**
   * Adds a cell with a number.
   *
   * @param number the number, already written, or nothing
   * @return this
   */
  public CsvLines number(String number) {
    return cell(number);
  }

  /**
   * Adds empty cells.
   *
   * @param count how many, from 0 to 1000
   * @return this
   * @throws ModelException when no line has so many
   */
  public CsvLines empty(int count) {
    if (count < 0 || count > MOST) {
      throw new ModelException(
          "%d empty cells do not fit a line; it takes from 0 to %d".formatted(count, MOST));
    }
    for (int i = 0; i < count; i++) {
      cell("");
    }
    return this;
  }

  /**
   * Ends the line.
   *
   * @return this
   */
  public CsvLines end() {
    out.append(String.join(",", line)).append(END);
    line.clear();
    return this;
  }

  private CsvLines cell(String cell) {
    boolean quoted = QUOTED.matcher(cell).find();
    line.add(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
    return this;
  }

  private static String printable(String words) {
    StringBuilder kept = new StringBuilder();
    words.codePoints().map(c -> allowed(c) ? c : 0xFFFD).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean allowed(int c) {
    boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r';
    boolean halfSurrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    return !control && !halfSurrogate;
  }

  /** The lines that are ended. */
  @Override
  public String toString() {
    return out.toString();
  }
}
