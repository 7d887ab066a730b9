package rungwork.report;

import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.Scale;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import tech.tablesaw.api.NumberColumn;

/** A study's table, whose heads carry their units already: numbers to four digits. */
final class TablePage {
  private static final int DIGITS = 4;

  private TablePage() {}

  static Page of(tech.tablesaw.api.Table table) {
    List<Column> columns = table.columns().stream().map(TablePage::column).toList();
    List<Row> rows =
        IntStream.range(0, table.rowCount())
            .mapToObj(
                row ->
                    Row.of(
                        table.columns().stream()
                            .map(column -> cell(column, row))
                            .toArray(String[]::new)))
            .toList();
    return new Page(List.of(new Block.Title(table.name()), new Table(columns, rows)));
  }

  private static Column column(tech.tablesaw.columns.Column<?> column) {
    return column instanceof NumberColumn
        ? Column.number(column.name())
        : Column.words(column.name());
  }

  private static String cell(tech.tablesaw.columns.Column<?> column, int row) {
    if (column.isMissing(row)) {
      return "";
    }
    return column instanceof NumberColumn<?, ?> numbers
        ? Scale.NUMBER.number(numbers.getDouble(row), DIGITS)
        : column.getString(row);
  }
}
