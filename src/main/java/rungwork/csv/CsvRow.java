package rungwork.csv;

import java.util.List;
import java.util.regex.Pattern;
import rungwork.fault.ModelException;

/** A row of a {@link CsvFile}. Cells have no outer blanks. */
public final class CsvRow {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?([0-9]+[.]?[0-9]*|[.][0-9]+)([eE][+-]?[0-9]{1,3})?");

  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]+");

  private final CsvPlace place;
  private final List<String> columns;
  private final List<String> cells;

  CsvRow(CsvPlace place, List<String> columns, List<String> cells) {
    this.place = place;
    this.columns = columns;
    this.cells = List.copyOf(cells);
    refuseRagged();
  }

  private void refuseRagged() {
    if (cells.size() < columns.size()) {
      throw refusal(CsvFile.called(columns, cells.size()), "the row has no such column");
    }
    for (int i = columns.size(); i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        throw refusal("column " + (i + 1), '"' + cells.get(i) + "\" stands under no name");
      }
    }
  }

  List<String> cells() {
    return cells;
  }

  /**
   * What stands in a column.
   *
   * @param column its name
   * @return the words; empty where nothing stands or the file has no such column
   */
  public String text(String column) {
    int at = columns.indexOf(column);
    return at < 0 ? "" : cells.get(at);
  }

  /**
   * What stands in a column that may not be empty.
   *
   * @param column its name
   * @return the words
   * @throws ModelException when nothing stands there
   */
  public String required(String column) {
    if (text(column).isEmpty()) {
      throw refusal(
          column, columns.contains(column) ? "nothing stands there" : "there is no such column");
    }
    return text(column);
  }

  /**
   * The number in a column.
   *
   * @param column its name
   * @return the number, in whatever unit the column is
   * @throws ModelException when nothing or no plain decimal number stands there
   */
  public double number(String column) {
    String text = required(column);
    double value = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    if (!Double.isFinite(value)) {
      throw refusal(column, '"' + text + "\" is not a number" + advice(text));
    }
    return value;
  }

  private static String advice(String text) {
    return WITH_COMMA.matcher(text).matches() ? "; write the decimal sign as a point" : "";
  }

  /**
   * A refusal that names file, line and column.
   *
   * @param column the column's name
   * @param reason what is wrong there
   * @return the refusal
   */
  public ModelException refusal(String column, String reason) {
    return place.refusal(column, reason);
  }
}
