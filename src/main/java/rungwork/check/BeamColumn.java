package rungwork.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rungwork.quantity.Kind;

/**
 * A member under a central force and bending about both axes: EN 1993-1-1:2005, 6.3.3 with annex B
 * (method 2; from memory), for sections that do not deform in torsion. Elastic section moduli, as
 * for class 3, whatever the class, and equivalent uniform moment factors of 1, as if the largest
 * moment acted along the whole length: both on the safe side.
 *
 * @param force the largest compression, counted positive [N]
 * @param yield fy [Pa]
 * @param gamma the design factor, on the force and the moments [1]
 * @param strong the strong axis
 * @param weak the weak axis
 */
record BeamColumn(double force, double yield, double gamma, Bent strong, Bent weak) {
  private static final Formula SQUASH =
      new Formula(
          Letters.SQUASH,
          "{A}·{fy}",
          List.of(Letters.A, Letters.FY),
          "EN 1993-1-1:2005, table 6.7",
          in -> in[0] * in[1]);

  private static final Formula STRONG_GOVERNS =
      interaction("₁", 1, "{n₁} + {k₁}·{m₁} + {k₂}·{m₂}", "eq. 6.61 with kyz = kzz");
  private static final Formula WEAK_GOVERNS =
      interaction("₂", 0.8, "{n₂} + 0.8·{k₁}·{m₁} + {k₂}·{m₂}", "eq. 6.62 with kzy = 0.8·kyy");

  /**
   * One of its axes.
   *
   * @param column the column that bends about this axis
   * @param curve its buckling curve
   * @param moment the largest moment about this axis, counted positive [N·m]
   * @param modulus elastic section modulus about this axis [m³]
   */
  record Bent(Column column, ColumnCurve curve, double moment, double modulus) {}

  /** All lines of the calculation; the last is the utilisation. */
  List<Step> working() {
    Step squash = SQUASH.with(strong.column().area(), yield);
    List<Step> working = new ArrayList<>(List.of(squash));
    double[] first = terms(strong, squash.result(), working);
    double[] second = terms(weak, squash.result(), working);
    List<Step> both =
        new ArrayList<>(
            List.of(
                STRONG_GOVERNS.with(first[0], first[2], first[1], second[2], second[1]),
                WEAK_GOVERNS.with(second[0], first[2], first[1], second[2], second[1])));
    both.sort(Comparator.comparingDouble(Step::result));
    working.addAll(both);
    return working;
  }

  /**
   * The utilisation alone, where the reduction of both columns is known already.
   *
   * @param reduced relative slenderness and reduction factor of the strong, then of the weak axis
   */
  double utilisation(double[] reduced) {
    double squash = SQUASH.value(strong.column().area(), yield);
    double n1 = share(strong, reduced[1], squash);
    double n2 = share(weak, reduced[3], squash);
    double m1 = bending(strong);
    double m2 = bending(weak);
    double k1 = strong.column().formulas().growth.value(reduced[0], n1);
    double k2 = weak.column().formulas().growth.value(reduced[2], n2);
    return Math.max(
        STRONG_GOVERNS.value(n1, k1, m1, k2, m2), WEAK_GOVERNS.value(n2, k1, m1, k2, m2));
  }

  private double share(Bent axis, double chi, double squash) {
    return axis.column().formulas().share.value(gamma, force, chi, squash);
  }

  private double bending(Bent axis) {
    return axis.column().formulas().bending.value(gamma, axis.moment(), axis.modulus(), yield);
  }

  /** The column of the axis that is nearer to buckling. */
  Column slender() {
    boolean strongIsSlender =
        strong.column().critical().result() < weak.column().critical().result();
    return strongIsSlender ? strong.column() : weak.column();
  }

  /** Adds the lines of one axis and gives its n, m and k. */
  private double[] terms(Bent axis, double squash, List<Step> working) {
    AxisFormulas formulas = axis.column().formulas();
    List<Step> reduction = axis.column().reduction(axis.curve(), yield);
    double slenderness = reduction.get(1).result();
    double chi = reduction.get(reduction.size() - 1).result();
    Step share = formulas.share.with(gamma, force, chi, squash);
    Step bending = formulas.bending.with(gamma, axis.moment(), axis.modulus(), yield);
    Step growth = formulas.growth.with(slenderness, share.result());
    working.addAll(reduction);
    working.addAll(List.of(share, bending, growth));
    return new double[] {share.result(), bending.result(), growth.result()};
  }

  private static Formula interaction(String axis, double ofStrong, String text, String clause) {
    List<Symbol> inputs =
        List.of(
            ratio("n" + axis, "share of the column's resistance"),
            ratio("k₁", "growth of the moment, strong axis"),
            ratio("m₁", "share of the bending resistance, strong axis"),
            ratio("k₂", "growth of the moment, weak axis"),
            ratio("m₂", "share of the bending resistance, weak axis"));
    return new Formula(
        ratio("u" + axis, "utilisation"),
        text,
        inputs,
        "EN 1993-1-1:2005, " + clause + " (table B.1)",
        in -> in[0] + ofStrong * in[1] * in[2] + in[3] * in[4]);
  }

  private static Symbol ratio(String letter, String meaning) {
    return new Symbol(letter, Kind.RATIO, meaning);
  }
}
