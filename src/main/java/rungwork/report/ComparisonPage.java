package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Cell;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Candidate;
import rungwork.study.Comparison;
import rungwork.study.Outcome;

/** A comparison of candidates: the choice with what was not checked, bars, a table, the reasons. */
final class ComparisonPage {
  private ComparisonPage() {}

  static Page of(Comparison comparison, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Candidates for the " + comparison.part()));
    blocks.add(new Block.VerdictLine(comparison.choiceLine(units)));
    blocks.add(
        new Block.Figure(
            UtilisationBars.of(
                "Highest utilisation of the " + comparison.part() + ", by candidate",
                comparison.outcomes().stream().map(ComparisonPage::entry).toList())));
    blocks.add(table(comparison, units));
    remarks(blocks, "Not the choice", comparison.objections());
    Set<String> open = new LinkedHashSet<>();
    comparison.assessed().forEach(outcome -> open.addAll(outcome.frame().notMade()));
    remarks(blocks, "Not checked for any candidate", List.copyOf(open));
    cautions(blocks, comparison.assessed());
    return new Page(blocks);
  }

  static Page of(Comparison.Choice choice, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.VerdictLine(choice.line(units)));
    cautions(blocks, List.of(choice.outcome()));
    return new Page(blocks);
  }

  private static void cautions(List<Block> blocks, List<Outcome.Assessed> outcomes) {
    Set<Caution> carried = new LinkedHashSet<>(Set.of(Caution.SCREENING));
    outcomes.forEach(outcome -> carried.addAll(outcome.frame().cautions()));
    carried.forEach(caution -> blocks.add(new Block.Warning(caution.text())));
  }

  private static void remarks(List<Block> blocks, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Block.Heading(heading));
      blocks.add(new Block.Remarks(lines));
    }
  }

  private static Optional<Outcome.Assessed> assessed(Outcome outcome) {
    return Optional.of(outcome)
        .filter(Outcome.Assessed.class::isInstance)
        .map(Outcome.Assessed.class::cast);
  }

  private static Optional<Check> ofPart(Outcome outcome) {
    return assessed(outcome).flatMap(one -> one.part().governing());
  }

  private static Optional<Check> ofFrame(Outcome outcome) {
    return assessed(outcome).flatMap(Outcome.Assessed::governing);
  }

  /** The candidate's own bar; what keeps it from being the choice stands behind its number. */
  private static UtilisationBars.Entry entry(Outcome outcome) {
    return new UtilisationBars.Entry(
        outcome.candidate().name(),
        ofPart(outcome).flatMap(check -> check.utilisation().stream().boxed().findFirst()),
        note(outcome),
        assessed(outcome).filter(one -> !one.part().complete()).isPresent() ? "open" : "");
  }

  private static String note(Outcome outcome) {
    boolean elsewhere = ofPart(outcome).filter(check -> !check.fails()).isPresent();
    return switch (outcome.standing()) {
      case ELIGIBLE -> "";
      case DOES_NOT_PASS -> elsewhere ? "but another part does not pass" : "";
      default -> outcome.standing().words();
    };
  }

  private static Table table(Comparison comparison, Units units) {
    List<Column> columns =
        List.of(
            Column.words("candidate"),
            Numbers.column("frame mass", Optional.of(Kind.MASS), units),
            Numbers.column("torsional stiffness", Optional.of(Kind.ROTATIONAL_STIFFNESS), units),
            Column.flag("own utilisation"),
            Column.flag("frame's utilisation"),
            Column.brief("standing"));
    return new Table(columns, comparison.outcomes().stream().map(one -> row(one, units)).toList());
  }

  private static Row row(Outcome outcome, Units units) {
    Optional<Outcome.Assessed> assessed = assessed(outcome);
    return Row.of(
            Cell.of(outcome.candidate().name()),
            Cell.of(assessed.map(one -> number(one.mass(), Kind.MASS, units)).orElse("")),
            Cell.of(
                assessed
                    .map(one -> number(one.torsionalStiffness(), Kind.ROTATIONAL_STIFFNESS, units))
                    .orElse("")),
            cell(ofPart(outcome)),
            cell(ofFrame(outcome)),
            Cell.of(outcome.standing().words()))
        .noting(
            stock(outcome.candidate()),
            ofPart(outcome).map(check -> "own: " + words(check)).orElse(""),
            ofFrame(outcome)
                .filter(check -> !ofPart(outcome).equals(Optional.of(check)))
                .map(check -> "frame: " + words(check))
                .orElse(""));
  }

  private static Cell cell(Optional<Check> check) {
    return check.map(one -> Numbers.cell(one.verdict())).orElse(new Cell("no number", "none"));
  }

  private static String stock(Candidate candidate) {
    return candidate.stock().section().name() + ", " + candidate.stock().material().name();
  }

  private static String words(Check check) {
    return check.what() + " of " + check.part() + " under " + check.loadCase();
  }

  private static String number(double value, Kind kind, Units units) {
    return units.scale(kind).number(value, 4);
  }
}
