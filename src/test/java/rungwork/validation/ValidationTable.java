package rungwork.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import org.apache.commons.csv.CSVFormat;

/** The rows of one test run, sorted, each once. */
final class ValidationTable {
  /** Where a test run leaves its rows. */
  static final Path FILE = Path.of("target", "validation.csv");

  static final String HEADER =
      "case,source,tag,quantity,unit,expected,computed,relative_error,tolerance,passes";

  private static final ValidationTable THIS_RUN = new ValidationTable();

  private final Set<Row> rows = new ConcurrentSkipListSet<>();

  /** The table that all tests of this run share: a test has no other way to reach the run's end. */
  static ValidationTable ofThisRun() {
    return THIS_RUN;
  }

  void add(Row row) {
    rows.add(row);
  }

  List<Row> rows() {
    return List.copyOf(rows);
  }

  /** The rows as CSV with a head, lines ended by a line feed. */
  String csv() {
    StringBuilder text = new StringBuilder(HEADER).append('\n');
    rows.forEach(row -> text.append(line(row)).append('\n'));
    return text.toString();
  }

  private static String line(Row row) {
    return CSVFormat.RFC4180.format(
        row.subject(),
        row.source(),
        row.tag().name().toLowerCase(Locale.ROOT),
        row.quantity(),
        row.unit(),
        row.expected(),
        digits(row.computed(), 10),
        digits(row.relativeError(), 4),
        digits(row.tolerance(), 4),
        row.passes());
  }

  void write(Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, csv());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String digits(double value, int significant) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(significant));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toString();
  }
}
