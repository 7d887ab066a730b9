package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Torsion;

/**
 * Strength of an open section or a solid bar that bends about its strong axis and could escape
 * sideways and twist: EN 1993-1-1:2005, 6.3.2.2, the general case, with the critical moment of a
 * section that is symmetric about its bending axis (I-sections, upright channels, flat bars).
 * Elastic section moduli, whatever the class. Bending about the weak axis adds its share, as 6.3.3
 * asks without a force; a force has its own check.
 *
 * <p>Loads are taken at the shear centre, ends held against twist and free to warp and to turn in
 * the weak direction.
 */
final class SidewaysStrength implements Question {
  private static final String SOURCE =
      "EN 1993-1-1:2005, 6.3.2.2 and 6.3.3 without a force (from memory); loads at the shear"
          + " centre";

  /** Other cross-sections than I: curve d (EN 1993-1-1:2005, tables 6.3 and 6.4). */
  private static final double IMPERFECTION = 0.76;

  /** A centre nearer to the bending axis than this part of the section's size is on it. */
  private static final double ROUNDING = 1e-6;

  private static final Symbol MOMENT =
      new Symbol("M₁", Kind.MOMENT, "largest moment along the part, strong axis");
  private static final Symbol WEAK_MOMENT =
      new Symbol("M₂", Kind.MOMENT, "largest moment along the part, weak axis");
  private static final Symbol MODULUS =
      new Symbol("W₁", Kind.SECTION_MODULUS, "elastic section modulus, strong axis");
  private static final Symbol WEAK_MODULUS =
      new Symbol("W₂", Kind.SECTION_MODULUS, "elastic section modulus, weak axis");
  private static final Symbol BAR = new Symbol("λ̄LT", Kind.RATIO, "relative slenderness");
  private static final Symbol PHI = new Symbol("ΦLT", Kind.RATIO, "value to determine χLT");
  private static final Symbol CHI =
      new Symbol("χLT", Kind.RATIO, "reduction factor for lateral-torsional buckling");

  private static final Formula SLENDERNESS =
      new Formula(
          BAR,
          "√({W₁}·{fy}/{Mcr})",
          List.of(MODULUS, Letters.FY, CriticalMoment.MCR),
          "EN 1993-1-1:2005, 6.3.2.2(1)",
          in -> Math.sqrt(in[0] * in[1] / in[2]));
  private static final Formula VALUE =
      new Formula(
          PHI,
          "0.5·(1 + {α}·({λ̄LT} − 0.2) + {λ̄LT}²)",
          List.of(Letters.ALPHA, BAR),
          "EN 1993-1-1:2005, 6.3.2.2(1); α of curve d, tables 6.3 and 6.4",
          in -> 0.5 * (1 + in[0] * (in[1] - 0.2) + in[1] * in[1]));
  private static final Formula REDUCTION =
      new Formula(
          CHI,
          "min(1, 1/({ΦLT} + √({ΦLT}² − {λ̄LT}²)))",
          List.of(PHI, BAR),
          "EN 1993-1-1:2005, eq. 6.56",
          in -> Math.min(1, 1 / (in[0] + Math.sqrt(Math.max(0, in[0] * in[0] - in[1] * in[1])))));
  private static final Formula SHARES =
      new Formula(
          new Symbol("u", Kind.RATIO, "utilisation"),
          "{γ}·({M₁}/({χLT}·{W₁}·{fy}) + {M₂}/({W₂}·{fy}))",
          List.of(Letters.GAMMA, MOMENT, CHI, MODULUS, Letters.FY, WEAK_MOMENT, WEAK_MODULUS),
          "EN 1993-1-1:2005, eq. 6.55 and eq. 6.62 without a force; γM1 = 1.0",
          in -> in[0] * (in[1] / (in[2] * in[3] * in[4]) + in[5] / (in[6] * in[4])));

  @Override
  public String what() {
    return LateralTorsionalBuckling.WHAT;
  }

  @Override
  public LimitState limitState() {
    return LimitState.YIELD;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return member.stock().section().torsion() != Torsion.CLOSED
        && LateralTorsionalBuckling.bendsStrongly(member);
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    Optional<String> open = open(member);
    if (open.isPresent()) {
      return List.of(Finding.notChecked(what(), open.get(), SOURCE));
    }
    Finding found = strength(member, material);
    Optional<String> outside = SteelRange.of(material);
    return List.of(outside.map(found::outside).orElse(found));
  }

  /** Why it cannot be checked. */
  static Optional<String> open(LoadedMember member) {
    Properties section = member.whole().properties();
    if (member.stock().section().torsion() == Torsion.OPEN
        && !RestrainedWarping.of(member).known()) {
      return Optional.of("the section is known by its properties alone, without its warping");
    }
    double off =
        BendingAxis.strong(section) == BendingAxis.Y
            ? section.shearCentreZ()
            : section.shearCentreY();
    return Math.abs(off) > ROUNDING * Math.sqrt(section.area())
        ? Optional.of(
            "the section is not symmetric about its strong axis; the critical moment of such"
                + " sections is not worked out here")
        : Optional.empty();
  }

  private Finding strength(LoadedMember member, RatedMaterial material) {
    List<Step> working = bending(member, material);
    return new Finding(
        what(),
        "whole part, between places held sideways and against twist",
        new Measured(working.get(working.size() - 1).result(), 1, Kind.RATIO),
        working,
        SOURCE);
  }

  /** All lines to the share of the bending resistance that is taken. */
  static List<Step> bending(LoadedMember member, RatedMaterial material) {
    Properties section = member.stock().section().properties();
    BendingAxis strong = BendingAxis.strong(member.whole().properties());
    double yield = material.strength().yield();
    List<Step> working = new ArrayList<>();
    Step critical = critical(member, material.elasticity());
    Step slenderness = SLENDERNESS.with(strong.modulus(section), yield, critical.result());
    working.add(critical);
    working.add(slenderness);
    working.addAll(reduction(slenderness.result()));
    working.add(
        SHARES.with(
            member.factor().value(),
            member.largest(forces -> Math.abs(strong.moment(forces))),
            working.get(working.size() - 1).result(),
            strong.modulus(section),
            yield,
            member.largest(forces -> Math.abs(strong.other().moment(forces))),
            strong.other().modulus(section)));
    return working;
  }

  /** Φ and χ of the general case. */
  static List<Step> reduction(double slenderness) {
    Step value = VALUE.with(IMPERFECTION, slenderness);
    return List.of(value, REDUCTION.with(value.result(), slenderness));
  }

  private static Step critical(LoadedMember member, Elasticity elasticity) {
    Properties section = member.whole().properties();
    BendingAxis strong = BendingAxis.strong(section);
    Member.BucklingLengths lengths = member.member().buckling();
    double length = lengths.twist();
    return new CriticalMoment(
            elasticity, strong.other().secondMoment(section), section.it(), section.iw(), length)
        .step(MomentShape.of(member, strong, length).factor());
  }
}
