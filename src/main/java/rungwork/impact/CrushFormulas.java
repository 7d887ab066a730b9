package rungwork.impact;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/**
 * Mean forces at which tubes fold, averaged over many folds after folding has begun, and the forces
 * at which something else happens first. σ₀ is the flow stress, c = b − t the side and D the
 * diameter on the wall's mid-line. From memory, recomputed, where nothing else is said.
 */
final class CrushFormulas {
  private static final Symbol SIGMA = new Symbol("σ₀", Kind.STRESS, "flow stress");
  private static final Symbol T = new Symbol("t", Kind.LENGTH, "wall");
  private static final Symbol C = new Symbol("c", Kind.LENGTH, "side on the mid-line, b − t");
  private static final Symbol D = new Symbol("D", Kind.LENGTH, "diameter on the mid-line");
  private static final Symbol FY = new Symbol("fy", Kind.STRESS, "yield strength");
  private static final Symbol FU = new Symbol("fu", Kind.STRESS, "ultimate strength");
  private static final Symbol A = new Symbol("A", Kind.AREA, "area");
  private static final Symbol MEAN = new Symbol("Pm", Kind.FORCE, "mean folding force");

  /** Of fy and fu. */
  static final Formula FLOW_STRESS =
      new Formula(
          SIGMA,
          "({fy} + {fu})/2",
          List.of(FY, FU),
          "common practice for folding tubes, no source",
          in -> (in[0] + in[1]) / 2);

  /** Square tube, of σ₀, t and c: 38.27·M₀·(c/t)^⅓ with M₀ = σ₀·t²/4. */
  static final Formula SQUARE =
      new Formula(
          MEAN,
          "38.27·{σ₀}·{t}²/4·({c}/{t})^⅓",
          List.of(SIGMA, T, C),
          "Wierzbicki & Abramowicz, J. Appl. Mech. 50 (1983)",
          in -> 38.27 * in[0] * in[1] * in[1] / 4 * Math.cbrt(in[2] / in[1]));

  /** Square tube with the effective length of a fold, of σ₀, t and c. */
  static final Formula SQUARE_EFFECTIVE =
      new Formula(
          MEAN,
          "52.22·{σ₀}·{t}²/4·({c}/{t})^⅓",
          List.of(SIGMA, T, C),
          "Abramowicz & Jones, Int. J. Impact Engng 2 (1984) 179–208; tests at c/t 30.25 and 32.18",
          in -> 52.22 * in[0] * in[1] * in[1] / 4 * Math.cbrt(in[2] / in[1]));

  /** Round tube in rings, of σ₀, t and D. */
  static final Formula ROUND_ALEXANDER =
      new Formula(
          MEAN,
          "6·{σ₀}·{t}·√({D}·{t})",
          List.of(SIGMA, T, D),
          "Alexander, Q. J. Mech. Appl. Math. 13 (1960)",
          in -> 6 * in[0] * in[1] * Math.sqrt(in[2] * in[1]));

  /** Round tube in rings with the effective length of a fold, of σ₀, t and D. */
  static final Formula ROUND_EFFECTIVE =
      new Formula(
          MEAN,
          "{σ₀}·{t}²/(2·√3)·(20.79·√({D}/{t}) + 11.90)",
          List.of(SIGMA, T, D),
          "Abramowicz & Jones, Int. J. Impact Engng 2 (1984) 263–281",
          in ->
              in[0]
                  * in[1]
                  * in[1]
                  / (2 * Math.sqrt(3))
                  * (20.79 * Math.sqrt(in[2] / in[1]) + 11.90));

  /** Round tube fitted to tests of aluminium, of σ₀, t and D. */
  static final Formula ROUND_FITTED =
      new Formula(
          MEAN,
          "72.3·({D}/{t})^0.32·{σ₀}·{t}²/4",
          List.of(D, T, SIGMA),
          "Guillow, Lu & Grzebieta, Int. J. Mech. Sci. 43 (2001) 2103–2123; 70 tests of 6060-T5,"
              + " D/t 10 to 450 (read in the source)",
          in -> 72.3 * Math.pow(in[0] / in[1], 0.32) * in[2] * in[1] * in[1] / 4);

  /** Of A and fy. */
  static final Formula SQUASH =
      new Formula(
          new Symbol("N_sq", Kind.FORCE, "squash force"),
          "{A}·{fy}",
          List.of(A, FY),
          "yield over the whole section",
          in -> in[0] * in[1]);

  /** Of A, fy, the plastic modulus and the offset. */
  static final Formula HINGE =
      new Formula(
          new Symbol("N_h", Kind.FORCE, "force at the hinge"),
          "{fy}/(1/{A} + {e}/{Wpl})",
          List.of(
              FY,
              A,
              new Symbol("e", Kind.LENGTH, "offset of the force"),
              new Symbol("Wpl", Kind.SECTION_MODULUS, "plastic modulus")),
          "straight line between squash force and plastic moment",
          in -> in[0] / (1 / in[1] + in[2] / in[3]));

  /** Of the strain rate: what yielding gains, mild steel. */
  static final Formula RATE_OF_YIELD = rate(40.4, 5, "Cowper & Symonds (1957), D 40.4 1/s, q 5");

  /** Of the strain rate: what the ultimate strength gains, mild steel at large strain. */
  static final Formula RATE_OF_ULTIMATE =
      rate(
          6844,
          3.91,
          "Abramowicz & Jones (1984) for large strains of mild steel, D 6844 1/s, q 3.91");

  private CrushFormulas() {}

  private static Formula rate(double d, double q, String source) {
    return new Formula(
        new Symbol("γ̇", Kind.RATIO, "strength at this strain rate over static strength"),
        "1 + ({ε̇ in 1/s}/" + number(d) + ")^(1/" + number(q) + ")",
        List.of(new Symbol("ε̇ in 1/s", Kind.NUMBER, "strain rate")),
        source,
        in -> 1 + Math.pow(in[0] / d, 1 / q));
  }

  private static String number(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
