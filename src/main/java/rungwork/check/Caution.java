package rungwork.check;

/**
 * What every reader of a result must know before acting on it. The project's cautions stand here
 * and nowhere else; sheets carry them, pages print them.
 */
public enum Caution {
  /** Carried by every sheet. */
  SCREENING(
      "This is a screening calculation, not an approval. Whether a vehicle may be built and used"
          + " is decided by the local vehicle-construction rules and by a licensed engineer who has"
          + " seen it. Arithmetic does not see the quality of a weld, corrosion, fatigue, old"
          + " damage, or whether the material is what its label says. Never test on the road what"
          + " was only calculated."),
  /** Carried by every result about an impact or about people in one. */
  IMPACT(
      "Injury cannot be predicted from these numbers. They say what the frame does under a stated"
          + " deceleration; they do not say what happens to a person, and nothing here is a promise"
          + " that anyone is protected."),
  /** Carried by every crash that is computed, and by every figure about people in one. */
  OCCUPANT(
      "What is said here about a crash and about people in it compares one design with another and"
          + " does nothing else. A person is one mass on one spring: no head, no neck, no seat, no"
          + " second blow. Published limits were measured on instrumented dummies with restraints"
          + " designed and tested for them; this calculation cannot claim them, and a figure below"
          + " one does not mean that a person would be unhurt.");

  private final String text;

  Caution(String text) {
    this.text = text;
  }

  /**
   * Its first sentence, where there is no room for more.
   *
   * @return one sentence
   */
  public String inBrief() {
    return text.substring(0, text.indexOf('.') + 1);
  }

  /**
   * The caution in full.
   *
   * @return its sentences
   */
  public String text() {
    return text;
  }
}
