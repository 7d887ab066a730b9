package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Caution;
import rungwork.check.Step;
import rungwork.impact.Range;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * What the pages about crashes have in common; above all the cautions, one at its head, the others
 * at its end.
 */
final class ImpactBlocks {
  private ImpactBlocks() {}

  /** The beginning of such a page: its title and the caution that counts most. */
  static List<Block> begin(String title) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(title));
    blocks.add(new Block.Warning(Caution.IMPACT.text()));
    return blocks;
  }

  /** Its end: the other cautions. */
  static Page end(List<Block> blocks) {
    blocks.add(new Block.Warning(Caution.OCCUPANT.text()));
    blocks.add(new Block.Warning(Caution.SCREENING.text()));
    return new Page(blocks);
  }

  static Table figures(List<Row> rows) {
    return new Table(List.of(Column.sentence("figure"), Column.number("low to high")), rows);
  }

  static Row figure(String name, Range range, Units units) {
    return Row.of(name, range.show(units));
  }

  /** A part of a whole, two decimals. */
  static String part(Range range) {
    String high = Numbers.decimals(range.high(), 2);
    return range.exact() ? high : Numbers.decimals(range.low(), 2) + " to " + high;
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
            List.of(
                new Block.Calculation(
                    "Formula, numbers, result: every input at its low end, then every input at its high end",
                    lines))));
  }
}
