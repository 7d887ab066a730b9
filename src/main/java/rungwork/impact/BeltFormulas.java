package rungwork.impact;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/**
 * A person on a linear belt in closed form. Derived from the equation of a mass on a spring with
 * slack (as in any text on vibration), each with the range in which it holds.
 */
final class BeltFormulas {
  private static final Symbol A = new Symbol("a", Kind.ACCELERATION, "the vehicle's deceleration");
  private static final Symbol K = new Symbol("k", Kind.STIFFNESS, "belt stiffness");
  private static final Symbol M = new Symbol("m", Kind.MASS, "person");
  private static final Symbol S = new Symbol("s", Kind.LENGTH, "slack");
  private static final Symbol V = new Symbol("v", Kind.SPEED, "speed");
  private static final Symbol PEAK =
      new Symbol("aₚ", Kind.ACCELERATION, "the person's highest deceleration");

  /**
   * Of a, s, k and m: constant vehicle deceleration that is still there when the belt is longest,
   * time to peak ≤ v/a.
   */
  static final Formula PEAK_UNDER_CONSTANT =
      new Formula(
          PEAK,
          "{a}·(1 + √(1 + 2·{s}·{k}/({m}·{a})))",
          List.of(A, S, K, M),
          "mass on a spring with slack under a constant deceleration, while v/a is not over",
          in -> in[0] * (1 + Math.sqrt(1 + 2 * in[1] * in[2] / (in[3] * in[0]))));

  /** Of s, a, k and m: from the beginning of the deceleration to the longest belt. */
  static final Formula TIME_TO_PEAK =
      new Formula(
          new Symbol("tₚ", Kind.TIME, "time to the peak"),
          "√(2·{s}/{a}) + √({m}/{k})·(π − atan(√(2·{s}·{k}/({m}·{a}))))",
          List.of(S, A, K, M),
          "mass on a spring with slack under a constant deceleration",
          in ->
              Math.sqrt(2 * in[0] / in[1])
                  + Math.sqrt(in[3] / in[2])
                      * (Math.PI - Math.atan(Math.sqrt(2 * in[0] * in[2] / (in[3] * in[1])))));

  /** Of v, k and m: the vehicle stops at once; no belt of this stiffness gives more. */
  static final Formula RIGID_STOP =
      new Formula(
          PEAK,
          "{v}·√({k}/{m})",
          List.of(V, K, M),
          "mass that meets a spring at a speed",
          in -> in[0] * Math.sqrt(in[1] / in[2]));

  /** Of v, m and k: by how much the belt grows then, slack apart. */
  static final Formula RIGID_STOP_EXCURSION =
      new Formula(
          new Symbol("x", Kind.LENGTH, "excursion after the slack"),
          "{v}·√({m}/{k})",
          List.of(V, M, K),
          "mass that meets a spring at a speed",
          in -> in[0] * Math.sqrt(in[1] / in[2]));

  /** Of v and both ways: the least that any restraint could reach on these two distances. */
  static final Formula BEST_CASE =
      new Formula(
          new Symbol("a_best", Kind.ACCELERATION, "constant deceleration over both ways"),
          "{v}²/(2·({dᵥ} + {dₒ}))",
          List.of(
              V,
              new Symbol("dᵥ", Kind.LENGTH, "the vehicle's crush"),
              new Symbol("dₒ", Kind.LENGTH, "the person's way in the vehicle")),
          "constant deceleration over a distance",
          in -> in[0] * in[0] / (2 * (in[1] + in[2])));

  private BeltFormulas() {}
}
