package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwork.check.Caution;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Screening;

/** What passed a screening, the lightest first, what ruled the others out, what was left out. */
final class ScreeningPage {
  /** Of those kept, as many as a reader takes in; all of them are in the screening's table. */
  private static final int SHOWN = 10;

  private ScreeningPage() {}

  static Page of(Screening screening, Units units) {
    List<Block> blocks = StudyBlocks.begin("Screening");
    blocks.add(new Block.VerdictLine(screening.line(units)));
    if (!screening.kept().isEmpty()) {
      blocks.add(kept(screening.kept(), units));
    }
    blocks.add(new Block.Heading("What ruled the others out"));
    blocks.add(counts(screening.ruledOut(), screening.screened()));
    remarks(blocks, "Refused", StudyBlocks.counted(screening.refused(), "combinations"));
    remarks(blocks, "Left out, for an assessment to decide", Screening.leftOut());
    remarks(
        blocks,
        "Not checked for one or more of them",
        screening.kept().stream()
            .flatMap(row -> row.numbers().notChecked().stream())
            .distinct()
            .toList());
    blocks.add(new Block.Warning(Caution.SCREENING.text()));
    return new Page(blocks);
  }

  private static void remarks(List<Block> blocks, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Block.Heading(heading));
      blocks.add(new Block.Remarks(lines));
    }
  }

  private static Table kept(List<Screening.Row> kept, Units units) {
    List<Row> rows = kept.stream().limit(SHOWN).map(row -> row(row, units)).toList();
    return new Table(
        List.of(
            Column.words(
                kept.size() > SHOWN
                    ? "the lightest %d of %d".formatted(SHOWN, kept.size())
                    : "all"),
            Column.number("frame mass", units.scale(Kind.MASS).unit()),
            Column.number("utilisation")),
        rows);
  }

  private static Row row(Screening.Row row, Units units) {
    var numbers = row.numbers();
    return Row.of(
            row.name(),
            units.scale(Kind.MASS).number(numbers.mass(), 4),
            Numbers.decimals(numbers.utilisation(), 2))
        .noting(numbers.what() + " of " + numbers.part() + " under " + numbers.loadCase());
  }

  private static Table counts(Map<String, Integer> counts, int screened) {
    List<Row> rows = new ArrayList<>();
    counts.forEach((reason, count) -> rows.add(Row.of(reason, String.valueOf(count))));
    return new Table(
        List.of(Column.sentence("reason"), Column.number("of " + screened + " screened")), rows);
  }
}
