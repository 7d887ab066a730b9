package rungwork.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Study.Progress;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Assessment.Screened;
import rungwork.vehicle.Assessment.Stocks;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * The lightest of hundreds of thousands of ladders, by numbers alone: every combination of stocks
 * for the rails and for crossmembers is solved with rigid joints and every check of every member
 * made, without its working; what passes and is light enough to be kept is then screened with every
 * assumption about the joints. What passes is only a candidate: {@link #confirmed} asks an
 * assessment.
 *
 * <p>Never passed is what its assessment fails, since only an assessment passes anything. Ruled out
 * is what fails a check with its members' own lengths: of strength its assessment fails too; a
 * column might pass there if the frame's buckling gave it a shorter length.
 *
 * <p>Nothing is kept of a combination but the lightest {@value #KEPT} that pass and a count of the
 * reasons that ruled the others out, so that a million fit beside each other in little memory.
 */
public final class Screening {
  /** How many of the lightest that pass are kept. */
  public static final int KEPT = 200;

  private static final String OTHER = "could not be modelled for another reason";

  private static final List<String> LEFT_OUT =
      List.of(
          "buckling of the whole frame, the effective lengths and moments of second order that come"
              + " of it",
          "of open sections whose ends are not stated, held warping");

  private final Field field;
  private final Limits limits;
  private final Found found;

  private Screening(Field field, Limits limits, Found found) {
    this.field = field;
    this.limits = limits;
    this.found = found;
  }

  /**
   * What is combined.
   *
   * @param vehicle the vehicle as built
   * @param ladder its frame, for its lines, mounts and the stocks of what does not vary
   * @param events the events
   * @param rails stocks for both rails
   * @param crossmembers stocks for crossmembers, by their names; the others stay as they are
   */
  public record Field(
      Vehicle vehicle,
      Ladder ladder,
      List<Event> events,
      List<Candidate> rails,
      Map<String, List<Candidate>> crossmembers) {
    /**
     * Refuses an empty catalogue, an unknown crossmember and more combinations than can be counted.
     */
    public Field {
      events = List.copyOf(events);
      rails = List.copyOf(rails);
      Map<String, List<Candidate>> all = new LinkedHashMap<>();
      for (var crossmember : ladder.crossmembers()) {
        all.put(crossmember.name(), List.of(Candidate.of(crossmember.stock())));
      }
      crossmembers.keySet().forEach(ladder::crossmember);
      crossmembers.forEach((name, stocks) -> all.put(name, List.copyOf(stocks)));
      refuseEmpty("the rails", rails);
      all.forEach((name, stocks) -> refuseEmpty("the " + name + " crossmember", stocks));
      crossmembers = all;
      long count = rails.size();
      for (List<Candidate> stocks : all.values()) {
        count *= stocks.size();
        if (count > Integer.MAX_VALUE) {
          throw new ModelException(
              "there are more than %d combinations to screen; leave some stocks out"
                  .formatted(Integer.MAX_VALUE));
        }
      }
    }

    private static void refuseEmpty(String what, List<Candidate> stocks) {
      if (stocks.isEmpty()) {
        throw new ModelException("there is no stock to screen for " + what);
      }
    }

    /**
     * How many combinations there are.
     *
     * @return the count
     */
    public int count() {
      return crossmembers.values().stream()
          .mapToInt(List::size)
          .reduce(rails.size(), (a, b) -> a * b);
    }

    /** A combination by its number; crossmembers vary fastest. */
    private List<Candidate> choice(int index) {
      List<Candidate> chosen = new ArrayList<>();
      int rest = index;
      for (List<Candidate> stocks : crossmembers.values()) {
        chosen.add(stocks.get(rest % stocks.size()));
        rest /= stocks.size();
      }
      chosen.add(0, rails.get(rest));
      return chosen;
    }

    Stocks stocks(int index) {
      List<Candidate> chosen = choice(index);
      return new Stocks(
          chosen.get(0).stock(),
          chosen.subList(1, chosen.size()).stream().map(Candidate::stock).toList());
    }

    /** The stocks that vary, by their names. */
    private String name(int index) {
      List<Candidate> chosen = choice(index);
      List<String> words = new ArrayList<>(List.of("rails " + chosen.get(0).name()));
      int place = 1;
      for (var stocks : crossmembers.entrySet()) {
        if (stocks.getValue().size() > 1) {
          words.add(stocks.getKey() + " " + chosen.get(place).name());
        }
        place++;
      }
      return String.join(", ", words);
    }
  }

  /**
   * What a combination must meet.
   *
   * @param parts parts of which nothing may stay unchecked, such as {@code front crossmember}
   * @param utilisation the highest that is let pass, above zero [1]
   * @param stiffness the least torsional stiffness, rigid joints; zero where it is not asked
   *     [N·m/rad]
   */
  public record Limits(List<String> parts, double utilisation, double stiffness) {
    /** Checks made and no more. */
    public static final Limits CHECKS = new Limits(List.of(), 1, 0);

    /** Refuses limits that make no sense. */
    public Limits {
      parts = List.copyOf(parts);
      Guard.positive("limit of utilisation", utilisation, Scale.NUMBER);
      Guard.notNegative("least torsional stiffness", stiffness, Scale.NUMBER);
    }
  }

  /**
   * A combination that passes.
   *
   * @param number of the combination
   * @param name the stocks that vary
   * @param numbers what the screening found
   */
  public record Row(int number, String name, Screened numbers) {
    static final Comparator<Row> LIGHTEST_FIRST =
        Comparator.<Row>comparingDouble(row -> row.numbers.mass()).thenComparingInt(Row::number);
  }

  /**
   * Screens all combinations, on all cores.
   *
   * @param field what is combined
   * @param limits what a combination must meet
   * @param progress is told how far it has come
   * @return the lightest that pass; an interruption keeps what is done
   * @throws ModelException when the first combination cannot be modelled
   */
  public static Screening of(Field field, Limits limits, Progress progress) {
    return of(field, limits, new Answers.Run(Work.cores(), progress));
  }

  /** Screens on a number of threads. */
  static Screening of(Field field, Limits limits, Answers.Run run) {
    Found found = new ScreeningRun(field, limits).run(run);
    return new Screening(field, limits, found);
  }

  /**
   * How many combinations were screened: all, unless it was interrupted.
   *
   * @return the count
   */
  public int screened() {
    return found.screened;
  }

  /**
   * How many passed with rigid joints.
   *
   * @return the count; every assumption about the joints is asked of the lightest of them alone
   */
  public int passed() {
    return found.passed;
  }

  /**
   * Whether an interruption ended it early.
   *
   * @return true when not all combinations were screened
   */
  public boolean isInterrupted() {
    return found.screened < field.count();
  }

  /**
   * The lightest that pass.
   *
   * @return the lightest first, {@value #KEPT} at most
   */
  public List<Row> kept() {
    return found.kept.stream()
        .map(row -> new Row(row.number, field.name(row.number), row.numbers))
        .toList();
  }

  /**
   * What ruled combinations out: a governing check that is over its limit, or another limit.
   *
   * @return how many each ruled out, in alphabetical order
   */
  public Map<String, Integer> ruledOut() {
    return new TreeMap<>(found.ruledOut);
  }

  /**
   * What could not be modelled or solved.
   *
   * @return how many combinations each reason met, the first {@value Found#REASONS} in alphabetical
   *     order told apart
   */
  public Map<String, Integer> refused() {
    Map<String, Integer> all = new LinkedHashMap<>(found.refused);
    if (found.others > 0) {
      all.put(OTHER, found.others);
    }
    return all;
  }

  /**
   * What a screening leaves out of what an assessment looks at.
   *
   * @return one line each
   */
  public static List<String> leftOut() {
    return LEFT_OUT;
  }

  /**
   * Assesses the kept combinations from the lightest on until three meet everything.
   *
   * @param others what they must meet beside the checks
   * @param progress is told how far it has come
   * @return what was found; empty when none passed the screening
   */
  public Optional<Search> confirmed(List<Search.Limit> others, Progress progress) {
    if (found.kept.isEmpty()) {
      return Optional.empty();
    }
    List<Survey.Variant<Ladder>> variants =
        kept().stream()
            .map(
                row ->
                    new Survey.Variant<>(row.name, () -> field.stocks(row.number).on(field.ladder)))
            .toList();
    Function<Ladder, Assessment> assess =
        ladder -> Assessment.of(field.vehicle, ladder, field.events);
    return Optional.of(
        Search.lightest("screened ladders", limits.parts, variants, assess, others, progress));
  }

  /**
   * What was found, in one line.
   *
   * @param units the reader's units
   * @return how many passed, the lightest of them, and that this is no choice yet
   */
  public String line(Units units) {
    String end =
        found.kept.stream()
            .findFirst()
            .map(row -> lightest(row, units))
            .orElse("; none passes with every assumption about the joints: " + counts());
    return "%,d of %,d combinations pass a screening with rigid joints%s%s"
        .formatted(
            found.passed, found.screened, isInterrupted() ? ", which was interrupted" : "", end);
  }

  private String lightest(Row row, Units units) {
    return "; the lightest to pass with every assumption about the joints is %s with a frame of %s, utilisation %s (%s of %s); left out, and for an assessment to decide: %s"
        .formatted(
            field.name(row.number),
            units.show(Kind.MASS, row.numbers.mass()),
            units.show(Kind.RATIO, row.numbers.utilisation()),
            row.numbers.what(),
            row.numbers.part(),
            String.join("; ", LEFT_OUT));
  }

  private String counts() {
    List<String> lines = new ArrayList<>();
    ruledOut().forEach((reason, count) -> lines.add(reason + " rules out " + count));
    refused().forEach((reason, count) -> lines.add(count + " refused: " + reason));
    return String.join("; ", lines);
  }

  /**
   * The kept combinations as a table.
   *
   * @param units the reader's units, which stand in the heads
   * @return a row each, the lightest first
   */
  public Table table(Units units) {
    double kilograms = units.scale(Kind.MASS).inSi();
    List<Row> rows = kept();
    return Table.create(
        "passed the screening; an assessment decides",
        StringColumn.create("combination", rows.stream().map(Row::name).toList()),
        DoubleColumn.create(
            "frame mass [" + units.scale(Kind.MASS).unit() + "]",
            rows.stream().mapToDouble(row -> row.numbers.mass() / kilograms).toArray()),
        DoubleColumn.create(
            "utilisation", rows.stream().mapToDouble(row -> row.numbers.utilisation()).toArray()),
        words("governing check", rows, Screened::what),
        words("part", rows, Screened::part),
        words("load case", rows, Screened::loadCase),
        words("not checked", rows, numbers -> String.join("; ", numbers.notChecked())));
  }

  private static StringColumn words(String head, List<Row> rows, Function<Screened, String> words) {
    return StringColumn.create(head, rows.stream().map(row -> words.apply(row.numbers)).toList());
  }

  @Override
  public String toString() {
    return line(Units.METRIC);
  }
}
