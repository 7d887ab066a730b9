package rungwork.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Comparison;
import rungwork.study.Outcome;

/**
 * A question, the answers that were looked at, the one that was taken, and why.
 *
 * @param question the question
 * @param options what was looked at, in the order given
 * @param choice the name of the option that was taken; nothing where the question is still open
 * @param reason why this one, or what the answer waits for
 * @param agreements who must still agree
 */
public record Decision(
    String question,
    List<Option> options,
    Optional<String> choice,
    String reason,
    List<Agreement> agreements)
    implements Entry {
  /** Refuses a question without words and a choice that was not looked at. */
  public Decision {
    question = Guard.name("question to decide", question);
    options = List.copyOf(options);
    agreements = List.copyOf(agreements);
    if (reason.isBlank()) {
      throw new ModelException("nothing says why \"" + question + "\" is answered so; say why");
    }
    reason = reason.strip();
    List<String> names = options.stream().map(Option::name).toList();
    if (choice.filter(chosen -> !names.contains(chosen)).isPresent()) {
      throw new ModelException(
          "\""
              + choice.get()
              + "\" was not looked at for \""
              + question
              + "\"; the options are "
              + (names.isEmpty() ? "none yet" : String.join("; ", names)));
    }
  }

  /**
   * One answer that was looked at.
   *
   * @param name its name
   * @param finding what was found about it, in words; may be empty
   * @param outcome what a comparison found about it, if it was compared
   */
  public record Option(String name, String finding, Optional<Outcome> outcome) {
    /** Refuses an option without a name. */
    public Option {
      name = Guard.name("option", name);
      finding = finding.strip();
    }

    /**
     * What was found about it.
     *
     * @param units the reader's units
     * @return words; for a compared candidate frame mass, governing check and standing
     */
    public String words(Units units) {
      return outcome.map(one -> compared(one, units)).orElse(finding);
    }

    private static String compared(Outcome outcome, Units units) {
      return outcome instanceof Outcome.Assessed one
          ? "frame " + units.show(Kind.MASS, one.mass()) + ", " + governed(one)
          : outcome.standing().words() + ": " + String.join("; ", outcome.objections());
    }

    private static String governed(Outcome.Assessed one) {
      return one.governing()
              .map(
                  check ->
                      rungwork.fault.Scale.NUMBER.number(check.utilisation().orElseThrow(), 3)
                          + " of its limit in "
                          + check.what()
                          + " of "
                          + check.part())
              .orElse("no number")
          + "; "
          + one.standing().words();
    }
  }

  /**
   * Somebody who must still agree.
   *
   * @param who such as {@code the inspector}
   * @param about to what; may be empty
   */
  public record Agreement(String who, String about) {
    /** Refuses nobody. */
    public Agreement {
      who = Guard.name("person who must agree", who);
      about = about.strip();
    }
  }

  /**
   * A question that has no answer yet.
   *
   * @param question the question
   * @param options what was looked at so far
   */
  public record Asked(String question, List<Option> options) {
    /** Copies the options and refuses two of one name. */
    public Asked {
      options = List.copyOf(options);
      if (options.stream().map(Option::name).distinct().count() < options.size()) {
        throw new ModelException(
            "two options for \""
                + question
                + "\" are named "
                + options.get(options.size() - 1).name()
                + "; rename one");
      }
    }

    /**
     * One more answer to look at.
     *
     * @param name its name
     * @param finding what was found about it
     * @return the question with it
     */
    public Asked option(String name, String finding) {
      return and(List.of(new Option(name, finding, Optional.empty())));
    }

    /**
     * The candidates of a comparison as answers, each with what was found about it.
     *
     * @param comparison the comparison
     * @return the question with them
     */
    public Asked among(Comparison comparison) {
      return and(
          comparison.outcomes().stream()
              .map(one -> new Option(one.candidate().name(), "", Optional.of(one)))
              .toList());
    }

    private Asked and(List<Option> more) {
      List<Option> all = new ArrayList<>(options);
      all.addAll(more);
      return new Asked(question, all);
    }

    /**
     * Takes one of the answers.
     *
     * @param name the option's name
     * @param reason why this one
     * @return the decision
     */
    public Decision choose(String name, String reason) {
      return new Decision(question, options, Optional.of(name.strip()), reason, List.of());
    }

    /**
     * Leaves the question open.
     *
     * @param reason what the answer waits for
     * @return the open question
     */
    public Decision leaveOpen(String reason) {
      return new Decision(question, options, Optional.empty(), reason, List.of());
    }
  }

  /**
   * Asks a question.
   *
   * @param question such as {@code Which front crossmember?}
   * @return the question, to which options are added
   */
  public static Asked on(String question) {
    return new Asked(Guard.name("question to decide", question), List.of());
  }

  /**
   * Somebody who must still agree.
   *
   * @param who such as {@code the inspector}
   * @param about to what
   * @return the decision with them
   */
  public Decision mustAgree(String who, String about) {
    List<Agreement> all = new ArrayList<>(agreements);
    all.add(new Agreement(who, about));
    return new Decision(question, options, choice, reason, all);
  }
}
