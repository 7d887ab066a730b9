package rungwork.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.quantity.Units;

/**
 * The answers to all questions asked, worst first, with what was assumed and what was never asked.
 *
 * <p>Order: checks that do not pass; then checks made; then numbers shown outside a formula's
 * range; then what was not checked; last the limits of proportion that are met. Within each, the
 * higher utilisation first. A utilisation says which requirement is nearest to its limit, not which
 * part breaks first: an order of failure needs one basis for all.
 *
 * @param title what the sheet is about
 * @param checks the checks; the constructor puts them in order
 * @param notMade kinds of check that this version does not make at all, such as {@code welds}
 * @param assumptions what was assumed
 * @param cautions what the reader must know; {@link Caution#SCREENING} is always among them
 */
public record CheckSheet(
    String title,
    List<Check> checks,
    List<String> notMade,
    List<String> assumptions,
    Set<Caution> cautions) {
  private static final Comparator<Check> WORST_FIRST =
      Comparator.comparingInt(CheckSheet::group)
          .thenComparingDouble(check -> -check.utilisation().orElse(0))
          .thenComparing(Check::part)
          .thenComparing(Check::what)
          .thenComparing(Check::loadCase)
          .thenComparing(Check::where);

  /** Puts the checks in order and adds the caution that no sheet may lose. */
  public CheckSheet {
    title = Guard.name("check sheet", title);
    checks = checks.stream().sorted(WORST_FIRST).toList();
    notMade = distinct(notMade);
    assumptions = distinct(assumptions);
    EnumSet<Caution> carried = EnumSet.of(Caution.SCREENING);
    carried.addAll(cautions);
    cautions = Collections.unmodifiableSet(carried);
  }

  /**
   * A sheet with nothing but checks.
   *
   * @param title what it is about
   * @param checks the checks
   * @return the sheet
   */
  public static CheckSheet of(String title, List<Check> checks) {
    return new CheckSheet(title, checks, List.of(), List.of(), Set.of());
  }

  /**
   * What a sheet as a whole says.
   *
   * @see CheckSheet#outcome()
   */
  public enum Outcome {
    /** A demand is above its capacity. */
    DOES_NOT_PASS,
    /** Nothing that was checked fails, but no strength was checked at all. */
    NOT_JUDGED,
    /** Every check made is met; what was not checked stands beside it. */
    MEETS_THE_CHECKS_MADE
  }

  /**
   * What the sheet as a whole says; never to be shown without what was not checked.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    if (checks.stream().anyMatch(Check::fails)) {
      return Outcome.DOES_NOT_PASS;
    }
    return governing().filter(Check::made).isPresent()
        ? Outcome.MEETS_THE_CHECKS_MADE
        : Outcome.NOT_JUDGED;
  }

  /**
   * The outcome in one line, always with what was not checked.
   *
   * @return for example {@code meets the checks made, the nearest to its limit 0.82: combined
   *     stress of front crossmember under bump; not checked: welds; bolts}
   */
  public String verdictLine() {
    String gaps = gaps().isEmpty() ? "nothing known" : String.join("; ", gaps());
    return answer() + "; not checked: " + gaps;
  }

  /**
   * The check farthest over its limit, or else nearest to it. A number from outside a formula's
   * range governs only if it is over 1 or there is no other; a limit of proportion that is met
   * never does.
   *
   * @return the check, or nothing when the sheet has no number
   */
  public Optional<Check> governing() {
    return checks.stream().filter(CheckSheet::canGovern).findFirst();
  }

  /**
   * The governing check of each part, the worst part first.
   *
   * @return one check a part, of those parts that have a number
   */
  public List<Check> governingByPart() {
    Map<String, Check> worst = new LinkedHashMap<>();
    checks.stream()
        .filter(CheckSheet::canGovern)
        .forEach(check -> worst.putIfAbsent(check.part(), check));
    return List.copyOf(worst.values());
  }

  /**
   * What could not be checked, one of each question, part and reason however many load cases met
   * it.
   *
   * @return the checks whose verdict is {@link Verdict.NotChecked}
   */
  public List<Check> notChecked() {
    return onceEach(checks.stream().filter(check -> check.verdict() instanceof Verdict.NotChecked));
  }

  /**
   * What was calculated outside a formula's range, one of each question, part and range: the one
   * with the highest number.
   *
   * @return the checks whose verdict is {@link Verdict.OutsideRange}
   */
  public List<Check> outsideRange() {
    return onceEach(
        checks.stream().filter(check -> check.verdict() instanceof Verdict.OutsideRange));
  }

  /**
   * Whether every check on this sheet was made, within its formula's range. What {@link #notMade}
   * lists is beyond this question: it never is.
   *
   * @return false when one was not checked or ran outside its range
   */
  public boolean complete() {
    return checks.stream().allMatch(Check::made);
  }

  /**
   * The part of this sheet that is about one part.
   *
   * @param part the part's name; {@code left rail} takes in every bay of it, such as {@code left
   *     rail, front to dash}
   * @return its sheet, with everything else that this one carries
   */
  public CheckSheet about(String part) {
    List<Check> own =
        checks.stream()
            .filter(check -> check.part().equals(part) || check.part().startsWith(part + ", "))
            .toList();
    return new CheckSheet(title + ": " + part, own, notMade, assumptions, cautions);
  }

  /**
   * Both sheets as one, under this one's title.
   *
   * @param other the other one
   * @return all checks, assumptions and cautions of both
   */
  public CheckSheet merged(CheckSheet other) {
    EnumSet<Caution> carried = EnumSet.copyOf(cautions);
    carried.addAll(other.cautions);
    return new CheckSheet(
        title,
        joined(checks, other.checks),
        joined(notMade, other.notMade),
        joined(assumptions, other.assumptions),
        carried);
  }

  /** Its title and {@link #verdictLine}. */
  @Override
  public String toString() {
    return title + ": " + verdictLine();
  }

  private String answer() {
    return switch (outcome()) {
      case DOES_NOT_PASS -> "does not pass: " + failing();
      case NOT_JUDGED -> "could not be judged";
      case MEETS_THE_CHECKS_MADE -> "meets the checks made, the nearest to its limit " + nearest();
    };
  }

  private String failing() {
    List<Check> failing = checks.stream().filter(Check::fails).toList();
    String rest = failing.size() == 1 ? "" : " and " + (failing.size() - 1) + " more";
    return describe(failing.get(0)) + rest;
  }

  private String nearest() {
    return checks.stream().filter(Check::made).findFirst().map(CheckSheet::describe).orElseThrow();
  }

  private static String describe(Check check) {
    return Scale.NUMBER.number(check.utilisation().orElseThrow(), 3)
        + ": "
        + check.what()
        + " of "
        + check.part()
        + " under "
        + check.loadCase();
  }

  private List<String> gaps() {
    Stream<String> open =
        Stream.concat(notChecked().stream(), outsideRange().stream())
            .map(check -> check.what() + " of " + check.part());
    return distinct(Stream.concat(open, notMade.stream()).toList());
  }

  private static int group(Check check) {
    if (check.fails()) {
      return 0;
    }
    if (check.verdict() instanceof Verdict.OutsideRange) {
      return 2;
    }
    if (check.verdict() instanceof Verdict.NotChecked) {
      return 3;
    }
    return check.basis().limitState() == LimitState.PROPORTION ? 4 : 1;
  }

  /** Of strength every check that has a number, of proportion one that fails. */
  static boolean canGovern(Check check) {
    boolean strength = check.basis().limitState() != LimitState.PROPORTION;
    return check.fails() || (strength && check.utilisation().isPresent());
  }

  private static List<Check> onceEach(Stream<Check> checks) {
    Map<List<String>, Check> first = new LinkedHashMap<>();
    checks.forEach(
        check ->
            first.putIfAbsent(
                List.of(check.what(), check.part(), check.verdict().reason(Units.METRIC)), check));
    return List.copyOf(first.values());
  }

  private static List<String> distinct(Collection<String> lines) {
    return List.copyOf(new LinkedHashSet<>(lines));
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
