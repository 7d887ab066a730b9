package rungwork.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungwork.check.CheckSheet;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Joints;
import tech.tablesaw.api.Table;

/**
 * Candidates for one member, each assessed in the whole frame: what it weighs, how stiff the frame
 * is with it, what governs, and whether it may be chosen at all. Immutable.
 *
 * <p>A candidate may be chosen only if nothing in the frame fails and everything asked of its own
 * part was checked within its formula's range. One that cannot be modelled stays in the comparison
 * with the reason.
 */
public final class Comparison {
  private final String part;
  private final List<Outcome> outcomes;

  private Comparison(String part, List<Outcome> outcomes) {
    this.part = part;
    this.outcomes = List.copyOf(outcomes);
  }

  /**
   * The lightest candidate that meets the checks made. Never to be named without what was not
   * checked, which {@link #line} sees to.
   *
   * @param outcome the chosen candidate's
   * @param equallyHeavy how many eligible candidates weigh the same, itself included; it leaves the
   *     frame the stiffest of them
   * @param eligible how many candidates were eligible
   * @param compared how many were compared
   */
  public record Choice(Outcome.Assessed outcome, int equallyHeavy, int eligible, int compared) {
    /**
     * The choice, its reason, and what was not checked, in one line.
     *
     * @param units the reader's units
     * @return the line
     */
    public String line(Units units) {
      return outcome.candidate().name()
          + ": lightest meeting the checks made, with a frame of "
          + units.show(Kind.MASS, outcome.mass())
          + " ("
          + eligible
          + " of "
          + compared
          + " candidates eligible"
          + (equallyHeavy > 1 ? "; the stiffest of " + equallyHeavy + " equally heavy" : "")
          + "); the frame "
          + outcome.frame().verdictLine();
    }

    @Override
    public String toString() {
      return line(Units.METRIC);
    }
  }

  /**
   * Compares candidates.
   *
   * @param part the member that they are for, by its part's name, such as {@code front
   *     crossmember}, or {@code left rail} for all of its bays
   * @param candidates the candidates, no two of one name
   * @param assessment assesses the frame with a candidate in it; what it refuses is kept as a
   *     refusal
   * @return the comparison
   * @throws ModelException when there is no candidate, or two share a name
   */
  public static Comparison of(
      String part, List<Candidate> candidates, Function<Candidate, Assessment> assessment) {
    String named = Guard.name("part to compare candidates for", part);
    refuseUnusable(named, candidates);
    List<Outcome> outcomes = new ArrayList<>();
    for (Candidate candidate : candidates) {
      if (Thread.currentThread().isInterrupted()) {
        throw new SolveException("the comparison was interrupted before " + candidate.name());
      }
      outcomes.add(outcome(named, candidate, assessment));
    }
    return new Comparison(named, outcomes);
  }

  /**
   * The member that the candidates are for.
   *
   * @return its part's name
   */
  public String part() {
    return part;
  }

  /**
   * What came of each candidate.
   *
   * @return the outcomes in the order of the candidates
   */
  public List<Outcome> outcomes() {
    return outcomes;
  }

  /**
   * The candidates whose frame was assessed.
   *
   * @return their outcomes in the order of the candidates
   */
  public List<Outcome.Assessed> assessed() {
    return outcomes.stream()
        .filter(Outcome.Assessed.class::isInstance)
        .map(Outcome.Assessed.class::cast)
        .toList();
  }

  /**
   * The lightest candidate that meets the checks made; of equally heavy ones the stiffest.
   *
   * @return the choice, or nothing when no candidate is eligible
   */
  public Optional<Choice> lightest() {
    List<Outcome.Assessed> eligible =
        assessed().stream().filter(o -> o.standing() == Outcome.Standing.ELIGIBLE).toList();
    return eligible.stream()
        .min(
            Comparator.comparingLong(Comparison::grams)
                .thenComparing(outcome -> -outcome.torsionalStiffness()))
        .map(
            outcome ->
                new Choice(outcome, asHeavy(outcome, eligible), eligible.size(), outcomes.size()));
  }

  private static int asHeavy(Outcome.Assessed chosen, List<Outcome.Assessed> eligible) {
    return (int) eligible.stream().filter(one -> grams(one) == grams(chosen)).count();
  }

  /** Frames that differ by less than a gram weigh the same. */
  private static long grams(Outcome.Assessed outcome) {
    return Math.round(outcome.mass() * 1000);
  }

  /**
   * The choice in one line, with its reason and what was not checked; or why there is none.
   *
   * @param units the reader's units
   * @return the line
   */
  public String choiceLine(Units units) {
    return lightest()
        .map(choice -> choice.line(units))
        .orElse("no candidate for the " + part + " meets the checks made with all of it checked");
  }

  /**
   * The candidates that cannot be the choice, with the reasons.
   *
   * @return one line a candidate, in their order
   */
  public List<String> objections() {
    return outcomes.stream()
        .filter(outcome -> outcome.standing() != Outcome.Standing.ELIGIBLE)
        .map(
            outcome ->
                outcome.candidate().name()
                    + ": "
                    + outcome.standing().words()
                    + ": "
                    + String.join("; ", outcome.objections()))
        .toList();
  }

  /**
   * The comparison as a table.
   *
   * @param units the reader's units, which stand in the heads
   * @return a row for each candidate, in their order; what a refused one lacks is missing
   */
  public Table table(Units units) {
    return new Tabulation(this, units).table();
  }

  /**
   * The comparison as a table in metric units.
   *
   * @return a row for each candidate, in their order
   */
  public Table table() {
    return table(Units.METRIC);
  }

  private static void refuseUnusable(String part, List<Candidate> candidates) {
    if (candidates.isEmpty()) {
      throw new ModelException("there is no candidate for the " + part + "; give one at least");
    }
    Set<String> names = new HashSet<>();
    for (Candidate candidate : candidates) {
      if (!names.add(candidate.name())) {
        throw new ModelException(
            "two candidates for the " + part + " are named " + candidate.name() + "; rename one");
      }
    }
  }

  private static Outcome outcome(
      String part, Candidate candidate, Function<Candidate, Assessment> assessment) {
    Assessment assessed;
    double stiffness;
    try {
      assessed = assessment.apply(candidate);
      stiffness = assessed.torsionalStiffness(Joints.RIGID);
    } catch (ModelException | SolveException refusal) {
      return new Outcome.Refused(candidate, refusal.getMessage());
    }
    refuseUnknownPart(part, assessed.sheet());
    return new Outcome.Assessed(
        candidate, assessed.mass(), stiffness, assessed.sheet(), assessed.sheet().about(part));
  }

  private static void refuseUnknownPart(String part, CheckSheet sheet) {
    if (sheet.about(part).checks().isEmpty()) {
      List<String> parts = sheet.checks().stream().map(check -> check.part()).distinct().toList();
      throw new ModelException(
          "no check is about part " + part + "; there are checks of " + String.join(", ", parts));
    }
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder("Candidates for the " + part + ":");
    for (Outcome.Assessed outcome : assessed()) {
      out.append("\n- ").append(outcome);
    }
    objections().forEach(line -> out.append("\n- ").append(line));
    return out.append('\n').append(choiceLine(Units.METRIC)).toString();
  }
}
