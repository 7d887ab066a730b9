package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Verdict.Measured;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;

/**
 * Normal and shear stress together against yield, at every stress point of every cut. Where a weld
 * lowers the strength, the cuts beside it are a check of their own.
 */
final class CombinedStress implements Question {
  private static final String SOURCE = "EN 1993-1-1:2005, 6.2.1(5)";

  /** Rounding of a place that was computed as weld ± 25 mm [m]. */
  private static final double ROUNDING = 1e-9;

  @Override
  public String what() {
    return "combined stress";
  }

  @Override
  public LimitState limitState() {
    return LimitState.YIELD;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return true;
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    if (member.stock().section().points().isEmpty()) {
      String reason = "section " + member.stock().section().name() + " has no stress points";
      return List.of(Finding.notChecked(what(), reason, SOURCE));
    }
    double gamma = member.factor().value();
    double yield = material.strength().yield();
    double welded = material.strength().weldedYield();
    Step plain = StressFormulas.DESIGN_STRENGTH.with(yield, gamma);
    if (welded == yield) {
      return List.of(finding(what(), member.cuts(), plain, Twist.freest(member)));
    }
    List<Finding> findings = new ArrayList<>();
    List<Cut> clear = member.cuts().stream().filter(cut -> clearOfWelds(cut, member)).toList();
    if (!clear.isEmpty()) {
      findings.add(finding(what(), clear, plain, Twist.freest(member)));
    }
    List<Cut> beside = member.cuts().stream().filter(cut -> besideWeld(cut, member)).toList();
    if (!beside.isEmpty()) {
      Step lowered = StressFormulas.WELDED_STRENGTH.with(welded, gamma);
      findings.add(finding(what() + " beside a weld", beside, lowered, Twist.freest(member)));
    }
    return findings;
  }

  private static Finding finding(String what, List<Cut> cuts, Step capacity, Twist twist) {
    PointStress worst = PointStress.worst(cuts, twist).orElseThrow();
    List<Step> working = new ArrayList<>(worst.working());
    double demand = working.get(working.size() - 1).result();
    working.add(capacity);
    return new Finding(
        what,
        worst.cut().place() + ", " + worst.point().name(),
        new Measured(demand, capacity.result(), Kind.STRESS),
        working,
        SOURCE);
  }

  static boolean besideWeld(Cut cut, LoadedMember member) {
    return distance(cut, member) <= Member.Weld.ZONE + ROUNDING;
  }

  private static boolean clearOfWelds(Cut cut, LoadedMember member) {
    return distance(cut, member) >= Member.Weld.ZONE - ROUNDING;
  }

  /** From the cut to the nearest weld [m]; infinite without one. */
  private static double distance(Cut cut, LoadedMember member) {
    return distance(cut.along(), member.member());
  }

  /** From a place along a member to its nearest weld [m]; infinite without one. */
  static double distance(double along, Member member) {
    return member.welds().stream()
        .mapToDouble(weld -> Math.abs(weld.at() - along))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
