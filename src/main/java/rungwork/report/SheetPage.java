package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Verdict;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Cell;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * A check sheet: the verdict in one line, the cautions, the governing check of each part, the worst
 * of each question with its working folded under it, and all that was not checked or was assumed.
 */
final class SheetPage {
  /** Letters of names that need no more room than a word. */
  private static final int FEW = 20;

  /** Checks that are listed with their working; beyond them a line counts the rest. */
  private static final int LISTED = 120;

  /** What stands above the table of the governing checks and its legend. */
  static final String GOVERNING = "Governing check of each part";

  private final CheckSheet sheet;
  private final Units units;

  private SheetPage(CheckSheet sheet, Units units) {
    this.sheet = sheet;
    this.units = units;
  }

  static Page of(CheckSheet sheet, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(sheet.title()));
    blocks.addAll(body(sheet, units));
    return new Page(blocks);
  }

  /** The sheet without its title, for a page that holds more. */
  static List<Block> body(CheckSheet sheet, Units units) {
    return new SheetPage(sheet, units).blocks();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.VerdictLine(sheet.verdictLine()));
    sheet.cautions().forEach(caution -> blocks.add(new Block.Warning(caution.text())));
    governing(blocks);
    worstOfEach(blocks);
    blocks.addAll(gaps(sheet, units));
    return blocks;
  }

  /** What was not checked within its range, and what was assumed. */
  static List<Block> gaps(CheckSheet sheet, Units units) {
    List<Block> blocks = new ArrayList<>();
    open(blocks, "Shown, but outside a formula's range", sheet.outsideRange(), units);
    open(blocks, "Not checked", sheet.notChecked(), units);
    remarks(blocks, "Not checked at all by this version", sheet.notMade());
    remarks(blocks, "Assumptions", sheet.assumptions());
    return blocks;
  }

  /** Checks with their working folded under each. */
  static List<Block> table(List<Check> checks, Units units) {
    return new SheetPage(CheckSheet.of("checks", checks), units).table(checks);
  }

  private void governing(List<Block> blocks) {
    if (sheet.governingByPart().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(GOVERNING));
    blocks.addAll(table(sheet.governingByPart()));
    sheet.governing().ifPresent(check -> blocks.add(working(check)));
  }

  /** The working of the check that governs all, open to the reader. */
  private Block working(Check check) {
    String heading = "Working of the governing check: " + check.what() + " of " + check.part();
    return new Block.Calculation(heading, Working.lines(check, units));
  }

  private void worstOfEach(List<Block> blocks) {
    List<Check> worst = onePerQuestion();
    if (worst.isEmpty()) {
      return;
    }
    List<Check> listed = worst.subList(0, Math.min(LISTED, worst.size()));
    String summary =
        "Every question asked of every part, its worst case with the working ("
            + listed.size()
            + " of "
            + sheet.checks().size()
            + " checks; the others of the same question are no worse)";
    blocks.add(new Block.Folded(summary, table(listed)));
  }

  /** The worst check of each question of each part; the sheet has them worst first. */
  private List<Check> onePerQuestion() {
    Map<List<String>, Check> first = new LinkedHashMap<>();
    sheet.checks().stream()
        .filter(check -> check.utilisation().isPresent())
        .forEach(check -> first.putIfAbsent(List.of(check.part(), check.what()), check));
    return List.copyOf(first.values());
  }

  private List<Block> table(List<Check> checks) {
    Optional<Kind> kind =
        Numbers.common(
            checks.stream()
                .flatMap(check -> check.verdict().numbers().stream())
                .map(Verdict.Measured::kind)
                .toList());
    List<Column> columns =
        List.of(
            Column.flag("utilisation"),
            Column.words("part"),
            Column.sentence("what"),
            Numbers.column("demand", kind, units),
            Numbers.column("capacity", kind, units));
    List<Basis> bases = checks.stream().map(Check::basis).distinct().toList();
    List<Row> rows = checks.stream().map(check -> row(check, kind, bases)).toList();
    return List.of(new Table(columns, rows), new Block.Remarks(legend(bases)));
  }

  /** Each basis once, by the letter that the rows refer to. */
  private static List<String> legend(List<Basis> bases) {
    return bases.stream()
        .map(
            basis ->
                letter(bases, basis)
                    + " ("
                    + basis.limitState().name().toLowerCase(Locale.ROOT)
                    + "): "
                    + basis.factors())
        .toList();
  }

  private static String letter(List<Basis> bases, Basis basis) {
    return "basis " + (char) ('a' + bases.indexOf(basis));
  }

  private Row row(Check check, Optional<Kind> kind, List<Basis> bases) {
    return Row.of(
            Numbers.cell(check.verdict()),
            Cell.of(check.part()),
            Cell.of(check.what()),
            Cell.of(number(check, Verdict.Measured::demand, kind)),
            Cell.of(number(check, Verdict.Measured::capacity, kind)))
        .noting("under " + check.loadCase(), place(check) + letter(bases, check.basis()))
        .folding(Working.lines(check, units));
  }

  private static String place(Check check) {
    return check.where().isBlank() ? "" : check.where() + "; ";
  }

  private String number(
      Check check, ToDoubleFunction<Verdict.Measured> which, Optional<Kind> column) {
    return check
        .verdict()
        .numbers()
        .map(n -> Numbers.number(which.applyAsDouble(n), n.kind(), column, units))
        .orElse("");
  }

  /** What was not made within its range: one line for each question and reason, its parts named. */
  private static void open(List<Block> blocks, String heading, List<Check> checks, Units units) {
    if (checks.isEmpty()) {
      return;
    }
    Map<List<String>, List<String>> parts = new LinkedHashMap<>();
    for (Check check : checks) {
      parts
          .computeIfAbsent(
              List.of(check.what(), check.verdict().reason(units)), key -> new ArrayList<>())
          .add(check.part());
    }
    List<Row> rows = new ArrayList<>();
    parts.forEach(
        (key, names) -> rows.add(Row.of(key.get(0), String.join(", ", names), key.get(1))));
    boolean few = rows.stream().allMatch(row -> row.cells().get(1).words().length() < FEW);
    Column named = few ? Column.words("parts") : Column.sentence("parts");
    blocks.add(new Block.Heading(heading));
    blocks.add(new Table(List.of(Column.words("what"), named, Column.sentence("why")), rows));
  }

  private static void remarks(List<Block> blocks, String heading, List<String> items) {
    if (!items.isEmpty()) {
      blocks.add(new Block.Heading(heading));
      blocks.add(new Block.Remarks(items));
    }
  }
}
