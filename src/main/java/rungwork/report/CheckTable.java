package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Verdict;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Statement;

/**
 * All checks of a record as comma-separated values (RFC 4180, UTF-8): a row a check, then a row for
 * each thing that was not checked at all. Demand and capacity have a pair of columns for each kind
 * of number that occurs, its unit in the head.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe in front.
 */
final class CheckTable {
  private static final String END = "\r\n";
  private static final int DIGITS = 6;

  /** What begins a formula in a spreadsheet. */
  private static final String FORMULA = "=+-@|%＝＋－＠";

  private final DesignRecord record;
  private final Units units;
  private final List<Kind> kinds;
  private final StringBuilder out = new StringBuilder();

  CheckTable(DesignRecord record, Units units) {
    this.record = record;
    this.units = units;
    kinds = List.copyOf(occurring(record));
  }

  private static TreeSet<Kind> occurring(DesignRecord record) {
    TreeSet<Kind> kinds = new TreeSet<>();
    record
        .sheet()
        .checks()
        .forEach(check -> check.verdict().numbers().ifPresent(n -> kinds.add(n.kind())));
    return kinds;
  }

  String csv() {
    row(head());
    List<Evidence> evidence = record.evidence();
    for (int i = 0; i < evidence.size(); i++) {
      String label = RecordPage.label(i);
      Optional<CheckSheet> sheet = evidence.get(i).sheet();
      sheet.ifPresent(one -> one.checks().forEach(check -> row(cells(label, check))));
    }
    record.notChecked(units).forEach(one -> row(cells(one)));
    return out.toString();
  }

  private List<String> head() {
    List<String> heads =
        new ArrayList<>(
            List.of(
                "evidence",
                "part",
                "what",
                "where",
                "load case",
                "limit state",
                "factors",
                "result",
                "utilisation [1]"));
    for (Kind kind : kinds) {
      String unit = units.scale(kind).unit();
      String shown = " [" + (unit.isEmpty() ? "1" : unit) + "]";
      heads.add("demand" + shown);
      heads.add("capacity" + shown);
    }
    heads.addAll(List.of("reason", "source", "caution"));
    return heads;
  }

  private List<String> cells(String label, Check check) {
    List<String> cells = new ArrayList<>();
    List<String> words =
        List.of(
            label,
            check.part(),
            check.what(),
            check.where(),
            check.loadCase(),
            check.basis().limitState().name().toLowerCase(Locale.ROOT),
            check.basis().factors(),
            result(check));
    words.forEach(each -> cells.add(harmless(each)));
    Optional<Verdict.Measured> numbers = check.verdict().numbers();
    cells.add(numbers.map(n -> number(n.utilisation(), Kind.RATIO)).orElse(""));
    for (Kind kind : kinds) {
      Optional<Verdict.Measured> own = numbers.filter(n -> n.kind() == kind);
      cells.add(own.map(n -> number(n.demand(), kind)).orElse(""));
      cells.add(own.map(n -> number(n.capacity(), kind)).orElse(""));
    }
    List.of(check.verdict().reason(units), check.source(), check.caution())
        .forEach(each -> cells.add(harmless(each)));
    return cells;
  }

  private static String result(Check check) {
    if (check.verdict().numbers().isEmpty()) {
      return "not checked";
    }
    String range = check.made() ? "" : ", outside the formula's range";
    return (check.fails() ? "over the limit" : "within the limit") + range;
  }

  /** A line of what nobody checked: who says so, what, and that it was not checked. */
  private List<String> cells(Statement open) {
    List<String> cells = new ArrayList<>();
    cells.add(harmless(String.join(", ", open.from())));
    cells.add("");
    cells.add(harmless(open.words()));
    cells.addAll(List.of("", "", "", "", "not checked", ""));
    cells.addAll(kinds.stream().flatMap(kind -> List.of("", "").stream()).toList());
    cells.addAll(List.of("", "", ""));
    return cells;
  }

  private String number(double si, Kind kind) {
    return units.scale(kind).number(si, DIGITS);
  }

  private static String harmless(String words) {
    String plain = Markup.printable(words);
    String begins = plain.stripLeading();
    return !begins.isEmpty() && FORMULA.indexOf(begins.charAt(0)) >= 0 ? "'" + plain : plain;
  }

  private void row(List<String> cells) {
    out.append(String.join(",", cells.stream().map(CheckTable::quoted).toList())).append(END);
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }
}
