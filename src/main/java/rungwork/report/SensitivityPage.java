package rungwork.report;

import java.util.List;
import rungwork.quantity.Units;
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
    blocks.add(
        InputTable.of(inputs(sensitivity), units, InputTable.Spread.LOW, InputTable.Spread.HIGH));
    return StudyBlocks.end(blocks, sensitivity.refusals());
  }

  private static List<Input> inputs(Sensitivity sensitivity) {
    return sensitivity.swings(sensitivity.measures().get(0)).stream()
        .map(Sensitivity.Swing::input)
        .toList();
  }
}
