package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.check.Caution;
import rungwork.check.Step;
import rungwork.impact.Range;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** What the pages about crashes have in common; above all the cautions, which stand first. */
final class ImpactBlocks {
  private ImpactBlocks() {}

  /** The beginning of such a page: its title and every caution. */
  static List<Block> begin(String title) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(title));
    Stream.of(Caution.IMPACT, Caution.OCCUPANT, Caution.SCREENING)
        .forEach(caution -> blocks.add(new Block.Warning(caution.text())));
    return blocks;
  }

  static Table figures(List<Row> rows) {
    return new Table(List.of(Column.words("figure"), Column.number("low to high")), rows);
  }

  static Row figure(String name, Range range, Units units) {
    return Row.of(name, range.show(units));
  }

  static void remarks(List<Block> blocks, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Block.Heading(heading));
      blocks.add(new Block.Remarks(lines));
    }
  }

  static void working(List<Block> blocks, List<Step> steps, Units units) {
    List<String> lines = new ArrayList<>();
    for (Step step : steps) {
      String line = step.text(units) + "  (" + step.formula().source() + ")";
      if (!lines.contains(line)) {
        lines.add(line);
      }
    }
    blocks.add(
        new Block.Folded(
            "Working, " + lines.size() + " lines",
            List.of(new Block.Calculation("Low end, then high end", lines))));
  }
}
