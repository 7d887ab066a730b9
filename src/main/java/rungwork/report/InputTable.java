package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Input;

/** The inputs of a study: as designed, how they spread, and who says so. */
final class InputTable {
  /** What a page says of an input's spread. */
  enum Spread {
    /** Its form, such as {@code evenly}. */
    FORM(Column.words("spread"), (input, units) -> input.spread().words()),
    /** Both ends in one cell. */
    RANGE(
        Column.number("low and high"),
        (input, units) -> low(input, units) + " to " + high(input, units)),
    /** The low end. */
    LOW(Column.number("low"), InputTable::low),
    /** The high end. */
    HIGH(Column.number("high"), InputTable::high);

    private final Column column;
    private final BiFunction<Input, Units, String> cell;

    Spread(Column column, BiFunction<Input, Units, String> cell) {
      this.column = column;
      this.cell = cell;
    }
  }

  private InputTable() {}

  static Table of(List<Input> inputs, Units units, Spread... said) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("input"));
    columns.add(Column.number("as designed"));
    for (Spread one : said) {
      columns.add(one.column);
    }
    columns.add(Column.sentence("says who"));
    return new Table(columns, inputs.stream().map(input -> row(input, units, said)).toList());
  }

  private static Row row(Input input, Units units, Spread... said) {
    List<String> cells = new ArrayList<>();
    cells.add(input.name());
    cells.add(units.show(input.kind(), input.value()));
    for (Spread one : said) {
      cells.add(one.cell.apply(input, units));
    }
    cells.add(input.source());
    return Row.of(cells.toArray(String[]::new));
  }

  private static String low(Input input, Units units) {
    return units.show(input.kind(), input.spread().low());
  }

  private static String high(Input input, Units units) {
    return units.show(input.kind(), input.spread().high());
  }
}
