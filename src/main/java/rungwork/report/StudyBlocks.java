package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwork.check.Caution;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Scatter;

/** What the pages of studies have in common. */
final class StudyBlocks {
  private StudyBlocks() {}

  static List<Block> begin(String title) {
    return new ArrayList<>(List.of(new Block.Title(title)));
  }

  /** Ends a page with what the model refused, if anything, and the caution. */
  static Page end(List<Block> blocks, List<String> refusals) {
    if (!refusals.isEmpty()) {
      blocks.add(new Block.Heading("Refused"));
      blocks.add(new Block.Remarks(refusals));
    }
    blocks.add(new Block.Warning(Caution.SCREENING.text()));
    return new Page(blocks);
  }

  /** Each refusal with how often it was met. */
  static List<String> counted(Map<String, Integer> refusals, String what) {
    return refusals.entrySet().stream()
        .map(one -> one.getValue() + " " + what + ": " + one.getKey())
        .toList();
  }

  static Table shares(Map<String, Scatter.Share> shares) {
    List<Row> rows = new ArrayList<>();
    shares.forEach(
        (words, share) ->
            rows.add(
                Row.of(
                    words.isEmpty() ? "no words" : words,
                    percent(share.part()),
                    percent(share.low()) + " to " + percent(share.high()))));
    return new Table(
        List.of(
            Column.sentence("what governs"),
            Column.number("share", "%"),
            Column.words("95 % confidence [%]")),
        rows);
  }

  private static String percent(double part) {
    return Numbers.decimals(100 * part, 1);
  }
}
