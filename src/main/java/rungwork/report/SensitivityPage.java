package rungwork.report;

import java.util.List;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Input;
import rungwork.study.Sensitivity;

/** What matters most: for each measure one line and a picture, then the inputs' ranges. */
final class SensitivityPage {
  private SensitivityPage() {}

  static Page of(Sensitivity sensitivity, Units units) {
    List<Block> blocks = StudyBlocks.begin("What matters in " + sensitivity.name());
    for (String measure : sensitivity.measures()) {
      blocks.add(new Block.VerdictLine(sensitivity.line(measure, units)));
      blocks.add(
          new Block.Figure(
              Tornado.of(
                  measure + ", each input alone low and high",
                  sensitivity.designed(measure),
                  sensitivity.swings(measure),
                  value -> sensitivity.show(measure, value, units))));
    }
    blocks.add(inputs(sensitivity, units));
    return StudyBlocks.end(blocks, sensitivity.refusals());
  }

  private static Table inputs(Sensitivity sensitivity, Units units) {
    List<Row> rows =
        sensitivity.swings(sensitivity.measures().get(0)).stream()
            .map(Sensitivity.Swing::input)
            .map(input -> row(input, units))
            .toList();
    return new Table(
        List.of(
            Column.words("input"),
            Column.words("as designed"),
            Column.words("low"),
            Column.words("high"),
            Column.sentence("says who")),
        rows);
  }

  private static Row row(Input input, Units units) {
    return Row.of(
        input.name(),
        units.show(input.kind(), input.value()),
        units.show(input.kind(), input.spread().low()),
        units.show(input.kind(), input.spread().high()),
        input.source());
  }
}
