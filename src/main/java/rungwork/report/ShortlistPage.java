package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Section;
import rungwork.section.Torsion;
import rungwork.study.Shortlist;

/** Sections that meet some conditions, the lightest first. */
final class ShortlistPage {
  /** Longer lists are cut here; a line says so. */
  private static final int MOST = 30;

  private static final List<Trait> TRAITS =
      Trait.ALL.stream().filter(trait -> !trait.equals(Trait.TWIST_STRENGTH)).toList();

  private ShortlistPage() {}

  static Page of(Shortlist list, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Sections, the lightest first"));
    blocks.add(new Block.VerdictLine(list.line(units)));
    if (!list.sections().isEmpty()) {
      blocks.add(table(list, units));
    }
    List<String> remarks = new ArrayList<>();
    if (list.sections().size() > MOST) {
      remarks.add((list.sections().size() - MOST) + " heavier ones are not shown");
    }
    remarks.add("sizes only: no load was looked at, nothing was checked");
    blocks.add(new Block.Remarks(remarks));
    return new Page(blocks);
  }

  private static Table table(Shortlist list, Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("section")));
    columns.add(Numbers.column("depth", Optional.of(Kind.LENGTH), units));
    TRAITS.forEach(
        trait -> columns.add(Column.number(trait.letter(), units.scale(trait.kind()).unit())));
    columns.add(Column.words("twist"));
    return new Table(
        columns, list.sections().stream().limit(MOST).map(one -> row(one, units)).toList());
  }

  private static Row row(Section section, Units units) {
    List<String> cells = new ArrayList<>(List.of(section.name(), depth(section, units)));
    TRAITS.forEach(trait -> cells.add(units.scale(trait.kind()).number(trait.of(section), 4)));
    cells.add(section.torsion() == Torsion.OPEN ? "open: free to warp" : "closed or solid");
    return Row.of(cells.toArray(String[]::new));
  }

  private static String depth(Section section, Units units) {
    return section.outline().loops().isEmpty()
        ? ""
        : Numbers.dimension(Outlines.around(Outlines.loops(section, 1)).height(), units);
  }
}
