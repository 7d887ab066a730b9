package rungwork.record;

import java.util.Arrays;
import rungwork.material.Source;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What is used again after a crash and what is replaced: rules to look at a frame by, none of them
 * a permission. Local rules, and a person licensed to certify repairs, decide.
 */
public enum RepairRule {
  /** A fold against a bend. */
  KINK(
      "kinked rail or crossmember",
      "Replaced, not straightened. A kink is a fold of about a right angle or more with a radius of"
          + " %s or less; a long smooth bow is none.",
      read(
          "textbook Auto Collision Repair and Refinishing, Goodheart-Willcox 2017, ch. 4, bend"
              + " against kink"),
      0.003),
  /** Cracks in rails. */
  CRACK(
      "cracked rail",
      "A crack across a rail that runs over its corner radius, or that comes within %s of a"
          + " crossmember on the inner face, condemns the rail; around holes look for more cracks"
          + " with penetrant dye.",
      read("US Army TB 9-2320-335-13&P, para. 32-4"),
      0.0762),
  /** Twist in the rail itself. */
  TWISTED_RAIL(
      "twisted rail", "Replaced.", read("US Army TB 9-2320-335-13&P, para. 32-4, inspection")),
  /** Rungs. */
  CROSSMEMBER(
      "bent crossmember or its bracket",
      "Replaced, not straightened: it sets where everything else sits.",
      read("US Army TB 9-2320-335-13&P, para. 32-4, general")),
  /** Warmth on steel. */
  HEAT(
      "heat",
      "No broad heating to take bends out of a rail; high-strength steel that was heated counts"
          + " as damaged.",
      read(
          "US Army TB 9-2320-335-13&P, para. 32-4, warnings; New Zealand Transport Agency, vehicle"
              + " inspection requirements, heavy trailers 3-1")),
  /** Brackets of suspension, engine, seats. */
  TAB(
      "bent tab, bracket or ear",
      "Cut off and made anew, the tube under it looked at; a tab bent back has used up what it"
          + " could stretch.",
      practice()),
  /** Fasteners. */
  BOLT(
      "fasteners of a mount that was hit",
      "Bolts, rod ends and bushes are replaced as a set; a bolt that has slipped, bent or necked is"
          + " not always seen to have.",
      practice()),
  /** Belts. */
  BELT(
      "belts and their anchorages",
      "A belt that held a person in the hit is replaced with its anchorage bolts; stretched,"
          + " curled, cut or frayed webbing is out in any case.",
      read(
          "for the webbing: New Zealand Transport Agency, vehicle inspection requirements, light"
              + " vehicle repair 5-5; for the rest: common practice, no source")),
  /** What the tape does not reach. */
  HIDDEN(
      "damage that is not seen",
      "One corner was hit, all four are looked at: welds of every crossmember, mounts of heavy"
          + " items, steering and brake parts, the inside of closed tubes. Paint that flaked or a"
          + " bright line in rust shows where steel moved.",
      practice()),
  /** Who decides. */
  LICENSED(
      "who decides",
      "A vehicle whose longitudinal rails or crossmembers were distorted may need a repair"
          + " certificate before it goes on the road again; the local rules and the person licensed"
          + " by them decide, not this sheet.",
      read(
          "as one country's example: New Zealand Transport Agency, vehicle inspection requirements,"
              + " light vehicle repair, 3-3"));

  private final String part;
  private final String text;
  private final Source source;
  private final double[] lengths;

  RepairRule(String part, String text, Source source, double... lengths) {
    this.part = part;
    this.text = text;
    this.source = source;
    this.lengths = lengths;
  }

  /**
   * What it is about.
   *
   * @return for example {@code cracked rail}
   */
  public String part() {
    return part;
  }

  /**
   * The rule.
   *
   * @param units the reader's units
   * @return sentences
   */
  public String text(Units units) {
    Object[] shown =
        Arrays.stream(lengths)
            .mapToObj(length -> units.scale(Kind.LENGTH).show(length, 2))
            .toArray();
    return text.formatted(shown);
  }

  /**
   * Where it stands.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  private static Source read(String reference) {
    return new Source(reference, Source.Tag.READ);
  }

  private static Source practice() {
    return new Source("common practice, no source", Source.Tag.FROM_MEMORY);
  }

  @Override
  public String toString() {
    return part + ": " + text(Units.METRIC);
  }
}
