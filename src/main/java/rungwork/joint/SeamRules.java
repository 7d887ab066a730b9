package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;

/** What EN 1993-1-8 covers of a seam, and how strong its metal counts beside the parent's. */
final class SeamRules {
  /** Young's modulus from which a material counts as steel [Pa]. */
  private static final double SOFTEST_STEEL = 180e9;

  /** fu of S460, the strongest steel of the standard [Pa]. */
  private static final double STRONGEST = 570e6;

  /** EN 1993-1-8, 4.5.2(2), from memory [m]. */
  private static final double LEAST_THROAT = 0.003;

  /** EN 1993-1-8, 4.5.1(2), from memory; six throats besides [m]. */
  private static final double LEAST_LENGTH = 0.030;

  private SeamRules() {}

  /** Whether rules for welds of steel may be used. */
  static boolean steel(RatedMaterial material) {
    return material.elasticity().youngsModulus() >= SOFTEST_STEEL;
  }

  /** βw of EN 1993-1-8, table 4.1, found by the ultimate strength of its grades. */
  static double correlation(RatedMaterial material) {
    double ultimate = material.strength().ultimate();
    if (ultimate <= 360e6) {
      return 0.8;
    }
    if (ultimate <= 430e6) {
      return 0.85;
    }
    return ultimate <= 510e6 ? 0.9 : 1.0;
  }

  /** What of a weld lies outside EN 1993-1-8, the length of its runs included. */
  static List<Reason> outside(WeldGroup weld) {
    List<Reason> reasons = outside(weld.seam(), weld.parent().material());
    double least = Math.max(LEAST_LENGTH, 6 * weld.seam().throat());
    weld.runs().stream()
        .mapToDouble(run -> counting(run, weld.seam()))
        .filter(length -> length < least * (1 - Rounding.TOLERANCE))
        .min()
        .ifPresent(length -> reasons.add(tooShort(length, least)));
    return reasons;
  }

  /** What of a seam on a material lies outside EN 1993-1-8, whatever its length. */
  static List<Reason> outside(WeldGroup.Seam seam, RatedMaterial material) {
    List<Reason> reasons = new ArrayList<>();
    double throat = seam.throat();
    if (throat < LEAST_THROAT * (1 - Rounding.TOLERANCE)) {
      reasons.add(
          Reason.of(
              "outside EN 1993-1-8: throat {} is under {}",
              Amount.length(throat),
              Amount.length(LEAST_THROAT)));
    }
    double ultimate = Welded.ultimate(material);
    if (ultimate > STRONGEST) {
      reasons.add(
          Reason.of(
              "outside EN 1993-1-8: fu {} is above that of S460",
              new Amount(Kind.STRESS, ultimate)));
    }
    return reasons;
  }

  private static double counting(WeldGroup.Run run, WeldGroup.Seam seam) {
    return run.effective(seam.deduction()).stream().mapToDouble(Pattern.Line::length).sum();
  }

  private static Reason tooShort(double length, double least) {
    return Reason.of(
        "outside EN 1993-1-8: a run of {} is shorter than {}",
        Amount.length(length),
        Amount.length(least));
  }
}
