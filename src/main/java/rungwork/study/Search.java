package rungwork.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Study.Progress;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Ladder;

/**
 * The lightest ladders of many that meet the checks made and some limits.
 *
 * <p><b>The bound.</b> A ladder's mass is known before anything is solved. Ladders are assessed
 * from the lightest on, and the search ends when three are found: every ladder that was not
 * assessed is as heavy as the third or heavier, so none that belongs among the three is passed
 * over.
 */
public final class Search {
  /** How many of the lightest are sought. */
  public static final int BEST = 3;

  private final String question;
  private final List<Limit> limits;
  private final int asked;
  private final LightestFirst run;

  private Search(String question, List<Limit> limits, int asked, LightestFirst run) {
    this.question = question;
    this.limits = limits;
    this.asked = asked;
    this.run = run;
  }

  /**
   * What an assessed ladder must also meet.
   *
   * @param wording in words, in the reader's units
   * @param met whether it does
   */
  public record Limit(Function<Units, String> wording, Function<Assessment, Boolean> met) {
    /**
     * A limit of one's own.
     *
     * @param words in words
     * @param met whether a ladder meets it
     */
    public Limit(String words, Function<Assessment, Boolean> met) {
      this(always(Guard.name("limit", words)), met);
    }

    private static Function<Units, String> always(String words) {
      return units -> words;
    }

    /**
     * The limit in metric words.
     *
     * @return such as {@code frame mass at most 60.00 kg}
     */
    public String words() {
      return wording.apply(Units.METRIC);
    }

    /**
     * A measure must not be worse than a value: at most where less is better, else at least.
     *
     * @param measure the measure
     * @param value the value [SI]
     * @return the limit; a ladder without a number does not meet it
     */
    public static Limit of(Measure<Assessment> measure, double value) {
      boolean less = measure.better() == Measure.Better.LESS;
      String than = measure.name() + (less ? " at most " : " at least ");
      return new Limit(
          units -> than + measure.asked().stated(value, units),
          assessment -> {
            double number = measure.of().applyAsDouble(assessment);
            return less ? number <= value : number >= value;
          });
    }
  }

  /**
   * A ladder that meets everything asked.
   *
   * @param name the variant's
   * @param assessment what was asked of it
   */
  public record Found(String name, Assessment assessment) {}

  /**
   * Searches, on all cores.
   *
   * @param question what for, such as {@code front end}
   * @param parts the parts that vary, of which everything asked must have been checked
   * @param ladders the ladders, no two of one name
   * @param assess assesses one; used by several threads at a time
   * @param limits what it must meet beside the checks
   * @return what was found
   * @throws ModelException when there is no ladder, two share a name, or no check is about a part
   */
  public static Search lightest(
      String question,
      List<String> parts,
      List<Survey.Variant<Ladder>> ladders,
      Function<Ladder, Assessment> assess,
      List<Limit> limits) {
    return lightest(question, parts, ladders, assess, limits, Progress.NONE);
  }

  /**
   * Searches, on all cores, and tells how far it has come.
   *
   * @param question what for, such as {@code front end}
   * @param parts the parts that vary, of which everything asked must have been checked
   * @param ladders the ladders, no two of one name
   * @param assess assesses one; used by several threads at a time
   * @param limits what it must meet beside the checks
   * @param progress is told of the ladders that were assessed, of all
   * @return what was found
   */
  public static Search lightest(
      String question,
      List<String> parts,
      List<Survey.Variant<Ladder>> ladders,
      Function<Ladder, Assessment> assess,
      List<Limit> limits,
      Progress progress) {
    String named = Guard.name("search", question);
    Survey.refuseUnusable(named, ladders);
    Demands demands = new Demands(parts, limits);
    LightestFirst run = new LightestFirst(ladders, assess, demands);
    run.until(BEST, progress);
    return new Search(named, demands.limits(), ladders.size(), run);
  }

  /**
   * What was sought.
   *
   * @return the question
   */
  public String question() {
    return question;
  }

  /**
   * The lightest ladders that meet the checks made and the limits.
   *
   * @return the lightest first, {@value #BEST} at most
   */
  public List<Found> found() {
    return run.found();
  }

  /**
   * How many ladders were assessed; all others are as heavy as the last one found, or heavier.
   *
   * @return the count
   */
  public int assessed() {
    return run.assessed();
  }

  /**
   * How many of the ladders assessed each reason ruled out; one may have several.
   *
   * @return a count for each limit and each other reason that was met
   */
  public Map<String, Integer> ruledOut() {
    return run.ruledOut();
  }

  /**
   * The same in the reader's units.
   *
   * @param units the reader's units
   * @return how many each reason ruled out
   */
  public Map<String, Integer> ruledOut(Units units) {
    Map<String, Integer> shown = new LinkedHashMap<>();
    run.ruledOut().forEach((reason, count) -> shown.put(shown(reason, units), count));
    return shown;
  }

  private String shown(String reason, Units units) {
    return limits.stream()
        .filter(limit -> limit.words().equals(reason))
        .findFirst()
        .map(limit -> limit.wording().apply(units))
        .orElse(reason);
  }

  /**
   * Ladders that could not be modelled or solved.
   *
   * @return the reason for each, by its name
   */
  public Map<String, String> refused() {
    return run.refused();
  }

  /**
   * The choice with its reason and what was not checked, or why there is none.
   *
   * @param units the reader's units
   * @return one line
   */
  public String line(Units units) {
    return run.found().stream()
            .findFirst()
            .map(best -> chosen(best, units))
            .orElse(
                "no ladder for the "
                    + question
                    + " meets the checks made and the limits: "
                    + counts(units))
        + (run.interrupted() ? "; interrupted: lighter ones may have been missed" : "");
  }

  private String chosen(Found best, Units units) {
    int rest = asked - run.refused().size() - run.assessed();
    return "%s: lightest meeting the checks made, with a frame of %s (%d of %d ladders assessed from the lightest on%s); the frame %s"
        .formatted(
            best.name(),
            units.show(Kind.MASS, best.assessment().mass()),
            run.assessed(),
            asked,
            rest > 0 ? ", the other " + rest + " are no lighter" : "",
            best.assessment().sheet().verdictLine());
  }

  private String counts(Units units) {
    List<String> lines = new ArrayList<>();
    ruledOut(units)
        .forEach(
            (reason, count) -> lines.add(reason + " rules out " + count + " of " + run.assessed()));
    if (!run.refused().isEmpty()) {
      lines.add(run.refused().size() + " could not be modelled");
    }
    return String.join("; ", lines);
  }

  /**
   * What was not checked of the ladders found.
   *
   * @return each once
   */
  public List<String> notChecked() {
    LinkedHashSet<String> open = new LinkedHashSet<>();
    run.found().forEach(one -> open.addAll(one.assessment().sheet().notMade()));
    return List.copyOf(open);
  }

  /**
   * The mass of a ladder found.
   *
   * @param place 0 for the lightest
   * @return its mass [kg], if there is one
   */
  public Optional<Double> mass(int place) {
    if (place < 0) {
      throw new ModelException("there is no place " + place + "; 0 is the lightest");
    }
    return run.found().stream().skip(place).findFirst().map(one -> one.assessment().mass());
  }

  @Override
  public String toString() {
    return line(Units.METRIC);
  }
}
