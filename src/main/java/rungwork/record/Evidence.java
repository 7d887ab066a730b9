package rungwork.record;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.fault.Guard;
import rungwork.quantity.Units;

/**
 * An analysis that a record rests on: what was analysed, the checks it made, and what it says about
 * itself. Any analysis comes into a record as this one thing.
 *
 * @param subject what was analysed, in a few words
 * @param value the analysis itself, which pages draw
 * @param sheet the checks that it made, if it made any
 * @param assumed what it assumed
 * @param open what it did not check
 * @param cautions what a reader must know; {@link Caution#SCREENING} is always among them
 */
public record Evidence(
    String subject,
    Object value,
    Optional<CheckSheet> sheet,
    Lines assumed,
    Lines open,
    Set<Caution> cautions)
    implements Entry {
  /** Adds the caution that no analysis may lose. */
  public Evidence {
    subject = Guard.name("piece of evidence", subject);
    EnumSet<Caution> carried = EnumSet.of(Caution.SCREENING);
    carried.addAll(cautions);
    cautions = Collections.unmodifiableSet(carried);
  }

  /** Sentences in the reader's units. */
  @FunctionalInterface
  public interface Lines {
    /**
     * The sentences.
     *
     * @param units the reader's units
     * @return one after the other
     */
    List<String> in(Units units);
  }

  /**
   * An analysis of the library's, read as evidence.
   *
   * @param analysis such as an assessment, a check sheet, a mount's sheet, a comparison, a search,
   *     an order of failure, a crash, an inspection
   * @return the evidence
   * @throws rungwork.fault.ModelException when it is nothing that a record can rest on
   */
  public static Evidence of(Object analysis) {
    return analysis instanceof Evidence made ? made : Readings.read(analysis);
  }

  /**
   * The same evidence under another heading.
   *
   * @param other what was analysed, in the reader's words
   * @return the evidence
   */
  public Evidence named(String other) {
    return new Evidence(other, value, sheet, assumed, open, cautions);
  }

  /**
   * Whether it is about an impact.
   *
   * @return true where it carries the stronger cautions
   */
  public boolean ofImpact() {
    return cautions.contains(Caution.IMPACT);
  }
}
