package rungwork.check;

import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Torsion;

/**
 * Whether a tube that bends about its strong axis could escape sideways and twist. A square or
 * round tube cannot; for a rectangular tube the slenderness shows whether it may be left out. Open
 * sections and solid bars are asked for their {@link SidewaysStrength}.
 */
final class LateralTorsionalBuckling implements Question {
  static final String WHAT = "lateral-torsional buckling";

  private static final String SOURCE =
      "EN 1993-1-1:2005, 6.3.2.2(4) with the limit of 6.3.2.3(1) (from memory)";

  /** Slenderness up to which the effect may be left out [1]. */
  private static final double LIMIT = 0.4;

  /** Second moments nearer than this part are equal: rounding. */
  private static final double ROUNDING = 1e-6;

  private static final Symbol MCR = new Symbol("Mcr", Kind.MOMENT, "elastic critical moment");
  private static final Symbol WEAK = new Symbol("I₂", Kind.SECOND_MOMENT, "about the weak axis");
  private static final Symbol LENGTH =
      new Symbol("L", Kind.LENGTH, "between places held sideways and against twist");
  private static final Symbol MODULUS =
      new Symbol("W₁", Kind.SECTION_MODULUS, "elastic section modulus, strong axis");

  private static final Formula CRITICAL =
      new Formula(
          MCR,
          "π/{L}·√({E}·{I₂}·{G}·{It})",
          List.of(LENGTH, Letters.E, WEAK, Letters.G, Letters.IT),
          "Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., ch. 6: uniform moment, ends"
              + " held against twist, warping left out",
          in -> Math.PI / in[0] * Math.sqrt(in[1] * in[2] * in[3] * in[4]));
  private static final Formula SLENDERNESS =
      new Formula(
          new Symbol("λ̄LT", Kind.RATIO, "relative slenderness"),
          "√({W₁}·{fy}/{Mcr})",
          List.of(MODULUS, Letters.FY, MCR),
          "EN 1993-1-1:2005, 6.3.2.2(1)",
          in -> Math.sqrt(in[0] * in[1] / in[2]));

  @Override
  public String what() {
    return WHAT;
  }

  @Override
  public LimitState limitState() {
    return LimitState.PROPORTION;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return member.stock().section().torsion() == Torsion.CLOSED && bendsStrongly(member);
  }

  /** Whether a tube with a strong axis is so long that its slenderness is beyond the limit. */
  static boolean isLong(Member member, Section section, RatedMaterial material) {
    return !isAlike(section.properties())
        && working(member, section, material).get(1).result() > LIMIT;
  }

  private static boolean isAlike(Properties section) {
    BendingAxis strong = BendingAxis.strong(section);
    double weakest = strong.other().secondMoment(section);
    return strong.secondMoment(section) - weakest < ROUNDING * weakest;
  }

  /** Whether it bends about a strong axis at all. */
  static boolean bendsStrongly(LoadedMember member) {
    Properties section = member.whole().properties();
    BendingAxis strong = BendingAxis.strong(section);
    double stress =
        member.largest(forces -> Math.abs(strong.moment(forces))) / strong.modulus(section);
    return !isAlike(section) && stress > member.negligibleStress();
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    Optional<String> outside = SteelRange.of(material);
    return List.of(outside.map(tube(member, material)::outside).orElse(tube(member, material)));
  }

  private Finding tube(LoadedMember member, RatedMaterial material) {
    List<Step> working = working(member, material);
    double slenderness = working.get(1).result();
    String where = "whole part, between places held sideways and against twist";
    Verdict verdict =
        slenderness <= LIMIT
            ? new Measured(slenderness, LIMIT, Kind.RATIO)
            : new NotChecked(
                "the tube is so long that it could escape sideways; a resistance to"
                    + " lateral-torsional buckling is not worked out here");
    return new Finding(what(), where, verdict, working, SOURCE);
  }

  private static List<Step> working(LoadedMember member, RatedMaterial material) {
    return working(member.member(), member.stock().section(), material);
  }

  private static List<Step> working(Member member, Section whole, RatedMaterial material) {
    Properties section = whole.properties();
    BendingAxis strong = BendingAxis.strong(section);
    Member.BucklingLengths lengths = member.buckling();
    Step critical =
        CRITICAL.with(
            lengths.twist(),
            material.elasticity().youngsModulus(),
            strong.other().secondMoment(section),
            material.elasticity().shearModulus(),
            section.it());
    double yield = material.strength().yield();
    return List.of(critical, SLENDERNESS.with(strong.modulus(section), yield, critical.result()));
  }
}
