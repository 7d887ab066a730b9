package rungwork.report;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Scatter;

/** How sure it is: for each measure a histogram, its quantiles and what governs how often. */
final class ScatterPage {
  private static final double[] PARTS = {0.05, 0.25, 0.5, 0.75, 0.95};

  private ScatterPage() {}

  static Page of(Scatter scatter, Units units) {
    List<Block> blocks = StudyBlocks.begin("Scatter of " + scatter.name());
    blocks.add(new Block.Paragraph(scatter.drawn() + "; shares are " + Scatter.NOT_SURVIVAL + "."));
    for (String measure : scatter.measures()) {
      if (scatter.values(measure).length > 0) {
        measure(blocks, scatter, measure, units);
      }
    }
    blocks.add(
        InputTable.of(scatter.inputs(), units, InputTable.Spread.FORM, InputTable.Spread.RANGE));
    return StudyBlocks.end(blocks, StudyBlocks.counted(scatter.refusals(), "settings"));
  }

  private static void measure(List<Block> blocks, Scatter scatter, String measure, Units units) {
    boolean ratio = scatter.kind(measure) == Kind.RATIO;
    blocks.add(new Block.Heading(measure));
    if (ratio) {
      blocks.add(new Block.VerdictLine(scatter.line(measure, 1, units)));
    }
    blocks.add(
        new Block.Figure(
            Histogram.of(
                measure + " of " + scatter.values(measure).length + " settings",
                scatter.values(measure),
                ratio ? 1 : Double.NaN,
                value -> scatter.show(measure, value, units))));
    blocks.add(quantiles(scatter, measure, units));
    Map<String, Scatter.Share> shares = scatter.shares(measure);
    if (shares.size() > 1) {
      blocks.add(StudyBlocks.shares(shares));
    }
  }

  private static Table quantiles(Scatter scatter, String measure, Units units) {
    List<Row> rows =
        Arrays.stream(PARTS)
            .mapToObj(
                part ->
                    Row.of(
                        Numbers.decimals(100 * part, 0),
                        scatter.show(measure, scatter.quantile(measure, part), units)))
            .toList();
    return new Table(
        List.of(Column.number("of settings below", "%"), Column.number("value")), rows);
  }
}
