package rungwork.record;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/**
 * How readings become distortions. All follow from plane geometry.
 *
 * <pre>
 *        m        left rail lies back by s:
 *   LF o----o RF     d1 = LF to RR = √((L − s)² + m²)
 *      | \/ |        d2 = RF to LR = √((L + s)² + m²)
 *    L | /\ |        so d2² − d1² = 4·L·s, whatever m is
 *   LR o----o RR
 * </pre>
 */
final class DistortionFormulas {
  private static final String GEOMETRY = "plane geometry";

  private static final Symbol D1 =
      new Symbol("d₁", Kind.LENGTH, "diagonal from left front to right rear");
  private static final Symbol D2 =
      new Symbol("d₂", Kind.LENGTH, "diagonal from right front to left rear");
  private static final Symbol L = new Symbol("L", Kind.LENGTH, "length between the stations");
  private static final Symbol M = new Symbol("m", Kind.LENGTH, "mean width, mark to mark");
  private static final Symbol S = new Symbol("s", Kind.LENGTH, "left rail behind the right one");
  private static final Symbol H = new Symbol("h", Kind.LENGTH, "height between");
  private static final Symbol H1 = new Symbol("h₁", Kind.LENGTH, "height in front");
  private static final Symbol H2 = new Symbol("h₂", Kind.LENGTH, "height behind");
  private static final Symbol A = new Symbol("a", Kind.LENGTH, "way back to the height behind");
  private static final Symbol B = new Symbol("b", Kind.LENGTH, "way ahead to the height in front");
  private static final Symbol F0 = new Symbol("f₀", Kind.LENGTH, "sag of the true frame");
  private static final Symbol LEFT1 = new Symbol("l₁", Kind.LENGTH, "left rail's height there");
  private static final Symbol RIGHT1 = new Symbol("r₁", Kind.LENGTH, "right rail's height there");
  private static final Symbol W1 = new Symbol("w₁", Kind.LENGTH, "width there");
  private static final Symbol LEFT2 = new Symbol("l₂", Kind.LENGTH, "left rail's height behind");
  private static final Symbol RIGHT2 = new Symbol("r₂", Kind.LENGTH, "right rail's height behind");
  private static final Symbol W2 = new Symbol("w₂", Kind.LENGTH, "width behind");
  private static final Symbol BL = new Symbol("bl", Kind.LENGTH, "left rail outwards");
  private static final Symbol BR = new Symbol("br", Kind.LENGTH, "right rail outwards");
  private static final Symbol B0 = new Symbol("b₀", Kind.LENGTH, "the true frame's");
  private static final Symbol TRUE = new Symbol("l₀", Kind.LENGTH, "true length");
  private static final Symbol READ = new Symbol("l", Kind.LENGTH, "length read");

  /** Of d₁ and d₂. */
  static final Formula DIFFERENCE =
      new Formula(
          new Symbol("Δ", Kind.LENGTH, "difference of the diagonals"),
          "{d₁} − {d₂}",
          List.of(D1, D2),
          GEOMETRY,
          in -> in[0] - in[1]);

  /** Of d₁, d₂ and L: exact where the rails are parallel or mirror each other. */
  static final Formula SHIFT =
      new Formula(
          S,
          "({d₂}² − {d₁}²)/(4·{L})",
          List.of(D1, D2, L),
          GEOMETRY,
          in -> (in[1] * in[1] - in[0] * in[0]) / (4 * in[2]));

  /** Of d₁, d₂ and m: the same two diagonals read as a front that went to the right. */
  static final Formula SWAY =
      new Formula(
          new Symbol("y", Kind.LENGTH, "front to the right of its place"),
          "({d₂}² − {d₁}²)/(4·{m})",
          List.of(D1, D2, M),
          GEOMETRY,
          in -> (in[1] * in[1] - in[0] * in[0]) / (4 * in[2]));

  /** Of s and m, which slants with the crossmember and so is the longest side. */
  static final Formula OUT_OF_SQUARE =
      new Formula(
          new Symbol("φ", Kind.ANGLE, "out of square"),
          "asin({s}/{m})",
          List.of(S, M),
          GEOMETRY,
          in -> Math.asin(in[0] / in[1]));

  /** Of h₁, a, h₂, b, h and f₀. */
  static final Formula SAG =
      new Formula(
          new Symbol("f", Kind.LENGTH, "sag below the line between two marks"),
          "({h₁}·{a} + {h₂}·{b})/({a} + {b}) − {h} − {f₀}",
          List.of(H1, A, H2, B, H, F0),
          GEOMETRY,
          in -> (in[0] * in[1] + in[2] * in[3]) / (in[1] + in[3]) - in[4] - in[5]);

  /** Of l₁, r₁, l₂, r₂, w₁ and w₂. */
  static final Formula TWIST =
      new Formula(
          new Symbol("t", Kind.LENGTH, "left rail up against the right one"),
          "({l₁} − {r₁}) − ({l₂} − {r₂})·{w₁}/{w₂}",
          List.of(LEFT1, RIGHT1, LEFT2, RIGHT2, W1, W2),
          GEOMETRY,
          in -> in[0] - in[1] - (in[2] - in[3]) * in[4] / in[5]);

  /** Of l₁, r₁, l₂, r₂, w₁ and w₂; the widths slant with the twist. */
  static final Formula TWIST_ANGLE =
      new Formula(
          new Symbol("θ", Kind.ANGLE, "twist"),
          "asin(({l₁} − {r₁})/{w₁}) − asin(({l₂} − {r₂})/{w₂})",
          List.of(LEFT1, RIGHT1, LEFT2, RIGHT2, W1, W2),
          GEOMETRY,
          in -> Math.asin((in[0] - in[1]) / in[4]) - Math.asin((in[2] - in[3]) / in[5]));

  /** Of bl, br and b₀. */
  static final Formula SIDE_BOW =
      new Formula(
          new Symbol("y", Kind.LENGTH, "both rails to the left"),
          "({bl} − {br})/2 − {b₀}",
          List.of(BL, BR, B0),
          GEOMETRY,
          in -> (in[0] - in[1]) / 2 - in[2]);

  /** Of l₀ and l. */
  static final Formula SHORTER =
      new Formula(
          new Symbol("e", Kind.LENGTH, "shorter than true"),
          "{l₀} − {l}",
          List.of(TRUE, READ),
          GEOMETRY,
          in -> in[0] - in[1]);

  private DistortionFormulas() {}
}
