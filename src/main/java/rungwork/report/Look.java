package rungwork.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The one look of every page and picture: a style sheet, and which of its classes a utilisation
 * wears.
 *
 * <p>From 0 to 1 a utilisation runs through sixteen steps of <em>cividis</em> (Nuñez, Anderson and
 * Renslow 2018, made for colour-blind readers); above 1 it is the vermilion of Okabe and Ito with a
 * hatch and the word <em>over</em>. The colours stand in the style sheet only.
 */
public final class Look {
  /** Steps of cividis in the style sheet, {@code u0} to {@code u15}. */
  private static final int STEPS = 16;

  private static final String DRAWING = read("drawing.css");
  private static final String SHEET = read("sheet.css");
  private static final String PAGE = read("page.css");
  private static final String PAPER = read("paper.css");

  private Look() {}

  /**
   * The whole style sheet, for a page that holds nothing but what this room makes.
   *
   * @return the rules, needing no escapes inside a {@code style} element
   */
  public static String styleSheet() {
    return PAGE + SHEET + DRAWING;
  }

  /** The part that a drawing needs; every rule is tied to the class {@code rw}. */
  static String drawingStyle() {
    return DRAWING;
  }

  /** The part that a fragment of a page needs; every rule is tied to the class {@code rw}. */
  static String fragmentStyle() {
    return SHEET + DRAWING;
  }

  /** What a document for print needs besides; its words SIZE, TITLE and DATE are to be replaced. */
  static String paperStyle() {
    return PAPER;
  }

  /**
   * The style-sheet class of a utilisation's colour.
   *
   * @param utilisation demand over capacity [1]
   * @return {@code u0} to {@code u15}, or {@code over} above 1
   */
  static String band(double utilisation) {
    if (!(utilisation <= 1)) {
      return "over";
    }
    return "u" + Math.min(STEPS - 1, (int) (Math.max(0, utilisation) * STEPS));
  }

  private static String read(String name) {
    try (InputStream in = Look.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
