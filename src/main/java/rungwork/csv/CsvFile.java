package rungwork.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;

/**
 * A comma-separated file whose first line names its columns.
 *
 * @param name the file's name, for messages
 * @param columns the columns' names
 * @param rows the rows below, those without anything in them left out
 */
public record CsvFile(String name, List<String> columns, List<CsvRow> rows) {

  /** Copies its lists. */
  public CsvFile {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a file that a person brings.
   *
   * @param what what it is, such as {@code pulse file}
   * @param file where it is
   * @return the file
   * @throws ModelException when it is missing, holds no row or is not as this room asks
   */
  public static CsvFile read(String what, Path file) {
    CsvFile read = CsvText.read(what, file).parse();
    if (read.rows.isEmpty()) {
      throw read.refusal(2, read.columns.get(0), "nothing stands there; give one row at least");
    }
    return read;
  }

  /**
   * Reads a text.
   *
   * @param name the file's name, for messages
   * @param text the text in UTF-8
   * @return the file; it may hold no row
   * @throws IOException when the text cannot be read
   * @throws ModelException when it is not as this room asks
   */
  public static CsvFile of(String name, InputStream text) throws IOException {
    return CsvText.of(name, text.readAllBytes()).parse();
  }

  /**
   * Refuses columns, as standing in the first line.
   *
   * @param column which one
   * @param reason what is wrong with it
   * @return the refusal
   */
  public ModelException refusal(String column, String reason) {
    return refusal(1, column, reason);
  }

  private ModelException refusal(long line, String column, String reason) {
    return new CsvPlace(name, line).refusal(column, reason);
  }

  /** Refuses a column without a name and two of one name. */
  CsvFile withUsableColumns() {
    for (int i = 0; i < columns.size(); i++) {
      String column = columns.get(i);
      if (column.isEmpty() && !isBare(i)) {
        throw refusal("column " + (i + 1), "has no name, yet something stands below it");
      }
      if (!column.isEmpty() && columns.indexOf(column) < i) {
        throw refusal(column, "stands twice");
      }
    }
    return this;
  }

  private boolean isBare(int column) {
    return rows.stream().allMatch(row -> row.cells().get(column).isEmpty());
  }

  /** What a message calls a column: its name, or which one it is. */
  static String called(List<String> columns, int column) {
    boolean named = column < columns.size() && !columns.get(column).isEmpty();
    return named ? columns.get(column) : "column " + (column + 1);
  }

  /**
   * The columns that are named.
   *
   * @return their names
   */
  public List<String> named() {
    return IntStream.range(0, columns.size())
        .mapToObj(columns::get)
        .filter(column -> !column.isEmpty())
        .toList();
  }
}
