package rungwork.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.fault.ModelException;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Units;
import rungwork.report.Table.Cell;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * Ways to make one mount side by side: the highest utilisation of each of its parts, and what
 * governs each way.
 *
 * @param title what is compared
 * @param ways each way under its name, in order
 */
public record MountTable(String title, Map<String, ChainSheet> ways) implements Shown {
  private static final String MIXED =
      "Each number is the part's highest utilisation, whatever its basis: it says which requirement"
          + " is nearest to its limit, not which part breaks first.";

  /** Refuses a table of nothing. */
  public MountTable {
    ways = Collections.unmodifiableMap(new LinkedHashMap<>(ways));
    if (ways.isEmpty()) {
      throw new ModelException("a comparison of mounts has no way to make one; give it one");
    }
  }

  /**
   * An empty comparison.
   *
   * @param title what is compared
   * @param way the first way's name
   * @param sheet its sheet
   * @return the table with one way
   */
  public static MountTable of(String title, String way, ChainSheet sheet) {
    return new MountTable(title, Map.of(way, sheet));
  }

  /**
   * This table with one more way.
   *
   * @param way its name
   * @param sheet its sheet
   * @return the table
   */
  public MountTable and(String way, ChainSheet sheet) {
    Map<String, ChainSheet> more = new LinkedHashMap<>(ways);
    more.put(way, sheet);
    return new MountTable(title, more);
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(title));
    cautions().forEach(caution -> blocks.add(new Block.Warning(caution.text())));
    List<String> parts = parts();
    List<Column> columns = new ArrayList<>(List.of(Column.sentence("way")));
    parts.forEach(part -> columns.add(Column.flag(part)));
    columns.add(Column.sentence("nearest to its limit"));
    List<Row> rows = new ArrayList<>();
    ways.forEach((way, sheet) -> rows.add(row(way, sheet, parts)));
    blocks.add(new Table(columns, rows));
    blocks.add(new Block.Remarks(List.of(MIXED)));
    blocks.add(new Block.Heading("Not checked, or outside a formula's range"));
    blocks.add(new Block.Remarks(gaps()));
    return new Page(blocks);
  }

  /** What all ways leave open, then what each leaves open besides. */
  private List<String> gaps() {
    Set<String> common = new LinkedHashSet<>(gaps(ways.values().iterator().next()));
    ways.values().forEach(sheet -> common.retainAll(gaps(sheet)));
    List<String> lines = new ArrayList<>(List.of("every way: " + listed(common)));
    ways.forEach(
        (way, sheet) -> {
          Set<String> own = gaps(sheet);
          own.removeAll(common);
          if (!own.isEmpty()) {
            lines.add(way + ", besides: " + listed(own));
          }
        });
    return lines;
  }

  private static Set<String> gaps(ChainSheet sheet) {
    Set<String> gaps = new LinkedHashSet<>();
    sheet.sheet().notChecked().forEach(check -> gaps.add(check.what() + " of " + check.part()));
    sheet.sheet().outsideRange().forEach(check -> gaps.add(check.what() + " of " + check.part()));
    gaps.addAll(sheet.sheet().notMade());
    return gaps;
  }

  private static String listed(Set<String> gaps) {
    return gaps.isEmpty() ? "nothing known" : String.join("; ", gaps);
  }

  private Set<Caution> cautions() {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    ways.values().forEach(sheet -> all.addAll(sheet.sheet().cautions()));
    return all;
  }

  /** Every part that has a number in some way, in the order of the chains. */
  private List<String> parts() {
    List<String> parts = new ArrayList<>();
    for (ChainSheet sheet : ways.values()) {
      sheet.sheet().governingByPart().stream()
          .map(Check::part)
          .filter(part -> !parts.contains(part))
          .sorted()
          .forEach(parts::add);
    }
    return parts;
  }

  private static Row row(String way, ChainSheet sheet, List<String> parts) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(way)));
    for (String part : parts) {
      cells.add(
          governing(sheet, part).map(check -> Numbers.cell(check.verdict())).orElse(Cell.of("–")));
    }
    cells.add(
        Cell.of(
            sheet
                .sheet()
                .governing()
                .map(check -> check.what() + " of " + check.part() + ", " + check.loadCase())
                .orElse("no number")));
    return Row.of(cells.toArray(Cell[]::new));
  }

  private static Optional<Check> governing(ChainSheet sheet, String part) {
    return sheet.sheet().governingByPart().stream()
        .filter(check -> check.part().equals(part))
        .findFirst();
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
