package rungwork.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Torsion;

/**
 * Buckling of a compressed member of an open section: by bending about either axis, or by bending
 * and twisting at once, the worst of the three; together with its bending by the rule for
 * cold-formed members, EN 1993-1-3:2006, 6.2.5(2). Bending about the strong axis counts with its
 * own reduction for escaping sideways. Asked only under compression.
 */
final class OpenColumn implements Question {
  private static final String SOURCE =
      "EN 1993-1-1:2005, 6.3.1 with 6.3.1.4, curve c; with bending EN 1993-1-3:2006, 6.2.5(2) (from"
          + " memory), elastic moduli";

  /** Channels, tees and other open shapes; angles may have the better curve b (table 6.2). */
  private static final ColumnCurve CURVE = ColumnCurve.C;

  /** A product of inertia below this part of the second moments is rounding [1]. */
  private static final double ROUNDING = 1e-6;

  private static final Symbol CHI =
      new Symbol("χ", Kind.RATIO, "least reduction factor for buckling");
  private static final Symbol COLUMN = new Symbol("n", Kind.RATIO, "share of the column");
  private static final Symbol BENDING = new Symbol("m", Kind.RATIO, "share of bending");

  private static final Formula SHARE =
      new Formula(
          COLUMN,
          "{γ}·{N}/({χ}·{A}·{fy})",
          List.of(
              Letters.GAMMA,
              new Symbol("N", Kind.FORCE, "largest compression, counted positive"),
              CHI,
              Letters.A,
              Letters.FY),
          "EN 1993-1-1:2005, eq. 6.46 and 6.47",
          in -> in[0] * in[1] / (in[2] * in[3] * in[4]));
  private static final Formula TOGETHER =
      new Formula(
          new Symbol("u", Kind.RATIO, "utilisation"),
          "{n}^0.8 + {m}^0.8",
          List.of(COLUMN, BENDING),
          "EN 1993-1-3:2006, eq. 6.36",
          in -> Math.pow(in[0], 0.8) + Math.pow(in[1], 0.8));

  @Override
  public String what() {
    return ColumnBuckling.WHAT;
  }

  @Override
  public LimitState limitState() {
    return LimitState.YIELD;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return member.stock().section().torsion() == Torsion.OPEN && ColumnBuckling.compressed(member);
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    Optional<String> reason = open(member);
    if (reason.isPresent()) {
      return List.of(Finding.notChecked(what(), reason.get(), SOURCE));
    }
    Finding found = buckling(member, material);
    return List.of(SteelRange.of(material).map(found::outside).orElse(found));
  }

  /** Why it cannot be checked. */
  private static Optional<String> open(LoadedMember member) {
    Properties section = member.whole().properties();
    if (!RestrainedWarping.of(member).known()) {
      return Optional.of("the section is known by its properties alone, without its warping");
    }
    if (Math.abs(section.iyz()) > ROUNDING * (section.iy() + section.iz())) {
      return Optional.of(
          "the section's principal axes lie at an angle to the frame; its bending and twisting are"
              + " not worked out here");
    }
    return LateralTorsionalBuckling.bendsStrongly(member)
        ? SidewaysStrength.open(member)
        : Optional.empty();
  }

  private Finding buckling(LoadedMember member, RatedMaterial material) {
    double yield = material.strength().yield();
    double area = member.stock().section().properties().area();
    List<List<Step>> ways = ways(member, material);
    List<Step> worst =
        ways.stream().min(Comparator.comparingDouble(OpenColumn::last)).orElseThrow();
    List<Step> working = new ArrayList<>();
    ways.forEach(working::addAll);
    Step share =
        SHARE.with(member.factor().value(), member.largest(f -> -f.n()), last(worst), area, yield);
    working.add(share);
    List<Step> bending = SidewaysStrength.bending(member, material);
    working.addAll(bending);
    working.add(TOGETHER.with(share.result(), last(bending)));
    double utilisation = last(working);
    List<Step> twist = ways.get(2);
    working.add(TwistingColumn.american(area, yield, twist.get(twist.size() - 4).result()));
    return new Finding(
        what(),
        "whole part; effective lengths: " + member.member().buckling().reason(),
        new Measured(utilisation, 1, Kind.RATIO),
        working,
        SOURCE);
  }

  /** Bending about the strong and about the weak axis, and bending and twisting at once. */
  private static List<List<Step>> ways(LoadedMember member, RatedMaterial material) {
    double yield = material.strength().yield();
    double area = member.stock().section().properties().area();
    BendingAxis strong = BendingAxis.strong(member.whole().properties());
    Member.BucklingLengths lengths = member.member().buckling();
    TwistingColumn twisting =
        new TwistingColumn(
            material.elasticity(),
            member.whole().properties(),
            new TwistingColumn.Lengths(lengths.outOfPlane(), lengths.inPlane(), lengths.twist()));
    return List.of(
        ColumnBuckling.column(member, strong, Column.Axis.STRONG).reduction(CURVE, yield),
        ColumnBuckling.column(member, strong.other(), Column.Axis.WEAK).reduction(CURVE, yield),
        twisting.reduction(CURVE, area, yield));
  }

  private static double last(List<Step> steps) {
    return steps.get(steps.size() - 1).result();
  }
}
