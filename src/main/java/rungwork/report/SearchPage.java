package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Search;
import rungwork.vehicle.Joints;

/** The lightest that meet the checks made and the limits, and what ruled the others out. */
final class SearchPage {
  private SearchPage() {}

  static Page of(Search search, Units units) {
    List<Block> blocks =
        new ArrayList<>(List.of(new Block.Title("Lightest: " + search.question())));
    blocks.add(new Block.VerdictLine(search.line(units)));
    if (!search.found().isEmpty()) {
      blocks.add(found(search, units));
    }
    blocks.add(new Block.Heading("What ruled the others out"));
    blocks.add(ruledOut(search, units));
    remarks(
        blocks,
        "Not modelled",
        search.refused().entrySet().stream()
            .map(one -> one.getKey() + ": " + one.getValue())
            .toList());
    remarks(blocks, "Not checked for any of them", search.notChecked());
    Set<Caution> cautions = new LinkedHashSet<>(Set.of(Caution.SCREENING));
    search.found().forEach(one -> cautions.addAll(one.assessment().sheet().cautions()));
    cautions.forEach(caution -> blocks.add(new Block.Warning(caution.text())));
    return new Page(blocks);
  }

  private static void remarks(List<Block> blocks, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Block.Heading(heading));
      blocks.add(new Block.Remarks(lines));
    }
  }

  private static Table found(Search search, Units units) {
    List<Row> rows = new ArrayList<>();
    for (Search.Found one : search.found()) {
      rows.add(
          Row.of(
                  Table.Cell.of(one.name()),
                  Table.Cell.of(units.scale(Kind.MASS).number(one.assessment().mass(), 4)),
                  Table.Cell.of(
                      units
                          .scale(Kind.ROTATIONAL_STIFFNESS)
                          .number(one.assessment().torsionalStiffness(Joints.RIGID), 4)),
                  one.assessment()
                      .sheet()
                      .governing()
                      .map(check -> Numbers.cell(check.verdict()))
                      .orElse(new Table.Cell("no number", "none")))
              .noting(
                  one.assessment()
                      .sheet()
                      .governing()
                      .map(
                          check ->
                              check.what() + " of " + check.part() + " under " + check.loadCase())
                      .orElse("")));
    }
    return new Table(
        List.of(
            Column.words("the lightest"),
            Column.number("frame mass", units.scale(Kind.MASS).unit()),
            Column.number("torsional stiffness", units.scale(Kind.ROTATIONAL_STIFFNESS).unit()),
            Column.flag("utilisation")),
        rows);
  }

  private static Table ruledOut(Search search, Units units) {
    List<Row> rows = new ArrayList<>();
    search
        .ruledOut(units)
        .forEach((reason, count) -> rows.add(Row.of(reason, String.valueOf(count))));
    return new Table(
        List.of(Column.sentence("reason"), Column.number("of " + search.assessed() + " assessed")),
        rows);
  }
}
