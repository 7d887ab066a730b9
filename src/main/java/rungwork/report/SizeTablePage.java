package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.SheetTable;
import rungwork.section.SizeTable;
import rungwork.section.SizeTable.Printed;
import rungwork.section.SizeTable.Size;

/** A table of sizes: what each is, where it comes from, and how far print and sum differ. */
final class SizeTablePage {
  private SizeTablePage() {}

  static Page of(SizeTable table, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Sizes: " + table.name()));
    blocks.add(new Block.Paragraph(compared(table)));
    blocks.add(sizes(table, units));
    blocks.add(
        new Block.Folded(
            "sources",
            List.of(
                new Block.Remarks(table.sizes().stream().map(Size::source).distinct().toList()))));
    return new Page(blocks);
  }

  static Page of(Size size, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Size " + size.section().name()));
    blocks.add(new Block.Paragraph("Source: " + size.source()));
    blocks.add(new Block.Figure(SectionDrawing.of(size.section(), units)));
    if (size.printed().isEmpty()) {
      blocks.add(new Block.Paragraph("nothing printed beside it was at hand to compare"));
    } else {
      blocks.add(printed(size));
    }
    return new Page(blocks);
  }

  static Page of(SheetTable table, Units units) {
    List<Row> rows =
        table.sheets().stream()
            .map(
                sheet ->
                    Row.of(
                        sheet.size(),
                        units.scale(Kind.LENGTH).number(sheet.thickness(), 4),
                        sheet.source()))
            .toList();
    List<Column> columns =
        List.of(
            Column.words("number"),
            Column.number("thickness", units.scale(Kind.LENGTH).unit()),
            Column.sentence("source"));
    return new Page(List.of(new Block.Title("Sheet: " + table.system()), new Table(columns, rows)));
  }

  private static String compared(SizeTable table) {
    List<Printed> all = printed(table).toList();
    if (all.isEmpty()) {
      return table.sizes().size() + " sizes; nothing printed beside them was at hand to compare";
    }
    double worst = all.stream().mapToDouble(one -> Math.abs(one.difference())).max().orElse(0);
    return "%d sizes; %d printed figures compared with the computed ones, the worst differs by %s %%, rounding of its digits included"
        .formatted(table.sizes().size(), all.size(), Scale.NUMBER.number(100 * worst, 2));
  }

  private static Stream<Printed> printed(SizeTable table) {
    return table.sizes().stream().flatMap(size -> size.printed().stream());
  }

  private static Table sizes(SizeTable table, Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("size")));
    Trait.ALL.forEach(
        trait -> columns.add(Column.number(trait.letter(), units.scale(trait.kind()).unit())));
    columns.add(Column.words("figures"));
    List<Row> rows =
        table.sizes().stream()
            .map(
                size -> {
                  List<String> cells = new ArrayList<>(List.of(size.name()));
                  Trait.ALL.forEach(
                      trait ->
                          cells.add(units.scale(trait.kind()).number(trait.of(size.section()), 4)));
                  cells.add(size.tag().words());
                  return Row.of(cells.toArray(String[]::new));
                })
            .toList();
    return new Table(columns, rows);
  }

  private static Table printed(Size size) {
    List<Row> rows =
        size.printed().stream()
            .map(
                one ->
                    Row.of(
                        one.letter(),
                        one.digits(),
                        one.scale().number(one.computed(), 4),
                        one.scale().unit(),
                        Scale.NUMBER.number(100 * one.difference(), 2) + " %"))
            .toList();
    return new Table(
        List.of(
            Column.words("property"),
            Column.number("printed"),
            Column.number("computed"),
            Column.brief("unit"),
            Column.number("difference")),
        rows);
  }
}
