package rungwork.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** What came of a candidate: an assessment, or the reason why there is none. */
public sealed interface Outcome {
  /**
   * The candidate.
   *
   * @return the candidate
   */
  Candidate candidate();

  /**
   * Where the candidate stands.
   *
   * @return {@link Standing#ELIGIBLE} only when nothing fails and everything asked of its own part
   *     was checked
   */
  Standing standing();

  /**
   * Why the candidate cannot be the choice.
   *
   * @return one reason each; none when it can
   */
  List<String> objections();

  /** Where a candidate stands. */
  enum Standing {
    /** It meets the checks made, and all that was asked of its own part was checked. */
    ELIGIBLE("meets the checks made"),
    /** Something asked of its own part was not checked, so nobody may choose it. */
    NOT_CHECKED("not eligible: not wholly checked"),
    /** A demand is above its capacity. */
    DOES_NOT_PASS("does not pass"),
    /** It could not be modelled. */
    NOT_MODELLED("not modelled");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /**
     * The standing in words.
     *
     * @return for example {@code meets the checks made}
     */
    public String words() {
      return words;
    }
  }

  /**
   * A candidate whose frame was assessed.
   *
   * @param candidate the candidate
   * @param mass of the whole ladder [kg]
   * @param torsionalStiffness of the ladder with rigid joints [N·m/rad]
   * @param frame all checks of the ladder with this candidate in it
   * @param part the checks of the member that the candidate is for
   */
  record Assessed(
      Candidate candidate,
      double mass,
      double torsionalStiffness,
      CheckSheet frame,
      CheckSheet part)
      implements Outcome {
    /** Refuses what is not finite. */
    public Assessed {
      Guard.solved("mass of " + candidate.name(), mass);
      Guard.solved("torsional stiffness of " + candidate.name(), torsionalStiffness);
    }

    /**
     * The check of the whole ladder that is nearest to or farthest over its limit.
     *
     * @return the check, or nothing when nothing has a number
     */
    public Optional<Check> governing() {
      return frame.governing();
    }

    @Override
    public Standing standing() {
      return switch (frame.outcome()) {
        case DOES_NOT_PASS -> Standing.DOES_NOT_PASS;
        case NOT_JUDGED -> Standing.NOT_CHECKED;
        case MEETS_THE_CHECKS_MADE ->
            part.complete() && part.governing().isPresent()
                ? Standing.ELIGIBLE
                : Standing.NOT_CHECKED;
      };
    }

    @Override
    public List<String> objections() {
      return switch (standing()) {
        case ELIGIBLE -> List.of();
        case DOES_NOT_PASS ->
            Stream.concat(governing().stream().map(Assessed::describe), open().stream()).toList();
        default -> open();
      };
    }

    private List<String> open() {
      if (part.governing().isEmpty() && part.complete()) {
        return List.of("no strength of it was checked");
      }
      return Stream.concat(
              part.notChecked().stream().map(check -> check.what() + " is not checked"),
              part.outsideRange().stream().map(check -> check.what() + " left a formula's range"))
          .distinct()
          .toList();
    }

    @Override
    public String toString() {
      return candidate.name()
          + ": frame "
          + Units.METRIC.show(Kind.MASS, mass)
          + ", torsional stiffness "
          + Units.METRIC.show(Kind.ROTATIONAL_STIFFNESS, torsionalStiffness)
          + ", governed by "
          + governing().map(Assessed::describe).orElse("nothing");
    }

    private static String describe(Check check) {
      return Scale.NUMBER.number(check.utilisation().orElse(Double.NaN), 3)
          + ": "
          + check.what()
          + " of "
          + check.part()
          + " under "
          + check.loadCase();
    }
  }

  /**
   * A candidate whose frame could not be modelled or solved.
   *
   * @param candidate the candidate
   * @param reason the refusal's message
   */
  record Refused(Candidate candidate, String reason) implements Outcome {
    @Override
    public Standing standing() {
      return Standing.NOT_MODELLED;
    }

    @Override
    public List<String> objections() {
      return List.of(reason);
    }
  }
}
