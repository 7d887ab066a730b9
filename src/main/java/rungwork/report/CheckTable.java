package rungwork.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Verdict;
import rungwork.csv.CsvLines;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Statement;

/**
 * All checks of a record as comma-separated values (RFC 4180, UTF-8): a row a check, then a row for
 * each thing that was not checked at all. Demand and capacity have a pair of columns for each kind
 * of number that occurs, its unit in the head.
 */
final class CheckTable {
  private static final int DIGITS = 6;

  private final DesignRecord record;
  private final Units units;
  private final List<Kind> kinds;
  private final CsvLines out = new CsvLines();

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
    head();
    List<Evidence> evidence = record.evidence();
    for (int i = 0; i < evidence.size(); i++) {
      String label = RecordPage.label(i);
      Optional<CheckSheet> sheet = evidence.get(i).sheet();
      sheet.ifPresent(one -> one.checks().forEach(check -> line(label, check)));
    }
    record.notChecked(units).forEach(this::line);
    return out.toString();
  }

  private void head() {
    List.of("evidence", "part", "what", "where", "load case", "limit state", "factors", "result")
        .forEach(out::words);
    out.words("utilisation [1]");
    for (Kind kind : kinds) {
      String unit = units.scale(kind).unit();
      String shown = " [" + (unit.isEmpty() ? "1" : unit) + "]";
      out.words("demand" + shown).words("capacity" + shown);
    }
    out.words("reason").words("source").words("caution").end();
  }

  private void line(String label, Check check) {
    List.of(
            label,
            check.part(),
            check.what(),
            check.where(),
            check.loadCase(),
            check.basis().limitState().name().toLowerCase(Locale.ROOT),
            check.basis().factors(),
            result(check))
        .forEach(out::words);
    Optional<Verdict.Measured> numbers = check.verdict().numbers();
    number(numbers, Verdict.Measured::utilisation, Kind.RATIO);
    for (Kind kind : kinds) {
      Optional<Verdict.Measured> own = numbers.filter(n -> n.kind() == kind);
      number(own, Verdict.Measured::demand, kind);
      number(own, Verdict.Measured::capacity, kind);
    }
    out.words(check.verdict().reason(units)).words(check.source()).words(check.caution()).end();
  }

  private static String result(Check check) {
    if (check.verdict().numbers().isEmpty()) {
      return "not checked";
    }
    String range = check.made() ? "" : ", outside the formula's range";
    return (check.fails() ? "over the limit" : "within the limit") + range;
  }

  /** A line of what nobody checked: who says so, what, and that it was not checked. */
  private void line(Statement open) {
    out.words(String.join(", ", open.from())).empty(1).words(open.words()).empty(4);
    out.words("not checked").empty(1 + 2 * kinds.size() + 3).end();
  }

  private void number(
      Optional<Verdict.Measured> numbers, ToDoubleFunction<Verdict.Measured> of, Kind kind) {
    out.number(numbers.map(n -> units.scale(kind).number(of.applyAsDouble(n), DIGITS)).orElse(""));
  }
}
