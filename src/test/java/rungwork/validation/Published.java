package rungwork.validation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.OptionalDouble;

/** A source of expected values for one subject. Each value asked of it is asserted and recorded. */
public final class Published {
  private final ValidationTable table;
  private final Tag tag;
  private final String source;
  private final String subject;
  private final OptionalDouble allowance;

  Published(
      ValidationTable table, Tag tag, String source, String subject, OptionalDouble allowance) {
    this.table = table;
    this.tag = tag;
    this.source = source;
    this.subject = subject;
    this.allowance = allowance;
  }

  /**
   * Values whose digits were read in the source.
   *
   * @param source author or body, title, edition, table or page
   * @param subject what is calculated, such as {@code 60×40×3}
   * @return the source, to be asked for values
   */
  public static Published read(String source, String subject) {
    return of(Tag.READ, source, subject);
  }

  /**
   * Values that are recalled and were recomputed by an independent route.
   *
   * @param source author or body, title, edition, table or page
   * @param subject what is calculated
   * @return the source, to be asked for values
   */
  public static Published memory(String source, String subject) {
    return of(Tag.MEMORY, source, subject);
  }

  /**
   * Values that follow by arithmetic from definitions.
   *
   * @param source the definition
   * @param subject what is calculated
   * @return the source, to be asked for values
   */
  public static Published identity(String source, String subject) {
    return of(Tag.IDENTITY, source, subject);
  }

  /**
   * Values from a second route of our own.
   *
   * @param source the route
   * @param subject what is calculated
   * @return the source, to be asked for values
   */
  public static Published derived(String source, String subject) {
    return of(Tag.DERIVED, source, subject);
  }

  private static Published of(Tag tag, String source, String subject) {
    return new Published(ValidationTable.ofThisRun(), tag, source, subject, OptionalDouble.empty());
  }

  /**
   * The same source with a tolerance other than half a unit of the last printed digit. The reason
   * is recorded beside the source.
   *
   * @param relative the largest relative error that passes; absolute when zero is expected
   * @param reason why the printed digits cannot be met, such as {@code the book rounds its terms to
   *     three figures}
   * @return the source, to be asked for values
   */
  public Published allowing(double relative, String reason) {
    String noted =
        String.format(Locale.ROOT, "%s [tolerance %.3g %%: %s]", source, 100 * relative, reason);
    return new Published(table, tag, noted, subject, OptionalDouble.of(relative));
  }

  /**
   * Asserts that a computed value agrees with the printed one, and records both.
   *
   * @param quantity the quantity's letter or name
   * @param unit its unit, as printed; empty for a bare number
   * @param printed the value with exactly the digits that count, such as {@code "5.41"} or, for a
   *     value rounded to thousands, {@code "376e3"}
   * @param computed Rungwork's value in the same unit
   * @return this source, for the next value
   */
  public Published value(String quantity, String unit, String printed, double computed) {
    double tolerance = allowance.orElseGet(() -> Row.printedTolerance(printed));
    Row row = new Row(subject, source, tag, quantity, unit, printed, computed, tolerance);
    table.add(row);
    assertTrue(row.passes(), row::toString);
    return this;
  }
}
