package rungwork.impact;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/**
 * Momentum and energy of an impact in line: Newton's mechanics, as in any text on it. Speeds are
 * those of closing, masses those of whole vehicles.
 */
final class SceneFormulas {
  private static final String MECHANICS = "conservation of momentum and energy (Newton)";
  private static final Symbol V = new Symbol("v", Kind.SPEED, "closing speed");
  private static final Symbol M1 = new Symbol("m₁", Kind.MASS, "own mass");
  private static final Symbol M2 = new Symbol("m₂", Kind.MASS, "mass of what is hit");
  private static final Symbol MU = new Symbol("μ", Kind.MASS, "reduced mass");
  private static final Symbol E = new Symbol("e", Kind.RATIO, "restitution");
  private static final Symbol D = new Symbol("d", Kind.LENGTH, "crush in all");
  private static final Symbol K = new Symbol("k", Kind.STIFFNESS, "stiffness in all");
  private static final Symbol K1 = new Symbol("k₁", Kind.STIFFNESS, "own stiffness");
  private static final Symbol K2 = new Symbol("k₂", Kind.STIFFNESS, "stiffness of what is hit");

  /** Of m₁ and m₂; against a wall μ is the own mass. */
  static final Formula REDUCED_MASS =
      new Formula(
          MU, "{m₁}·{m₂}/({m₁} + {m₂})", List.of(M1, M2), MECHANICS, in -> reduced(in[0], in[1]));

  /** Of e, v, μ and m₁. */
  static final Formula VELOCITY_CHANGE =
      new Formula(
          new Symbol("Δv", Kind.SPEED, "velocity change"),
          "(1 + {e})·{v}·{μ}/{m₁}",
          List.of(E, V, MU, M1),
          MECHANICS,
          in -> (1 + in[0]) * in[1] * in[2] / in[3]);

  /** Of μ and v: what must go into crush until both move as one. */
  static final Formula ENERGY =
      new Formula(
          new Symbol("E", Kind.ENERGY, "energy to absorb"),
          "½·{μ}·{v}²",
          List.of(MU, V),
          MECHANICS,
          in -> in[0] * in[1] * in[1] / 2);

  /** Of μ, v, d and m₁: the mean over distance, not over time. */
  static final Formula MEAN_DECELERATION =
      new Formula(
          new Symbol("ā", Kind.ACCELERATION, "mean deceleration over the distance"),
          "{μ}·{v}²/(2·{d}·{m₁})",
          List.of(MU, V, D, M1),
          MECHANICS,
          in -> in[0] * in[1] * in[1] / (2 * in[2] * in[3]));

  /** Of μ, v, ā and m₁. */
  static final Formula CRUSH =
      new Formula(
          D,
          "{μ}·{v}²/(2·{ā}·{m₁})",
          List.of(MU, V, new Symbol("ā", Kind.ACCELERATION, "mean deceleration"), M1),
          MECHANICS,
          in -> in[0] * in[1] * in[1] / (2 * in[2] * in[3]));

  /** Of k₁ and k₂, one behind the other. */
  static final Formula SERIES =
      new Formula(
          K,
          "{k₁}·{k₂}/({k₁} + {k₂})",
          List.of(K1, K2),
          "two springs in a row",
          in -> reduced(in[0], in[1]));

  /** Of v, μ and k: two masses on a linear spring, at its shortest. */
  static final Formula SPRING_FORCE =
      new Formula(
          new Symbol("F", Kind.FORCE, "largest force between linear fronts"),
          "{v}·√({μ}·{k})",
          List.of(V, MU, K),
          MECHANICS,
          in -> in[0] * Math.sqrt(in[1] * in[2]));

  private SceneFormulas() {}

  private static double reduced(double one, double other) {
    return one * other / (one + other);
  }
}
