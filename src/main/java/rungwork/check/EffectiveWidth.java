package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.section.Spot;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * What is left of a flat wall that buckles before it yields: EN 1993-1-5:2006, 4.4 with tables 4.1
 * and 4.2 (from memory), by the stresses at its edges where it is compressed most. An outstand
 * counts as compressed uniformly and loses its free edge, which is on the safe side.
 *
 * @param wall the wall at its most compressed cut
 * @param yield fy [Pa]
 */
record EffectiveWidth(CompressedWall wall, double yield) {
  /** Flat widths up to which the rules hold (EN 1993-1-3:2006, table 5.1; from memory) [1]. */
  private static final double WIDEST_INTERNAL = 500;

  private static final double WIDEST_OUTSTAND = 50;

  private static final String INTERNAL = "EN 1993-1-5:2006, table 4.1";
  private static final String CLAUSE = "EN 1993-1-5:2006, 4.4(2)";
  private static final Symbol PSI = new Symbol("ψ", Kind.RATIO, "stress ratio of both edges");
  private static final Symbol K = new Symbol("kσ", Kind.RATIO, "buckling factor");
  private static final Symbol RATIO = new Symbol("c/t", Kind.RATIO, "width to thickness");
  private static final Symbol EPSILON = new Symbol("ε", Kind.RATIO, "factor for yield strength");
  private static final Symbol BAR = new Symbol("λ̄p", Kind.RATIO, "slenderness of the wall");
  private static final Symbol RHO =
      new Symbol("ρ", Kind.RATIO, "part of the compressed width left");

  private static final Formula COMPRESSED =
      new Formula(K, "8.2/(1.05 + {ψ})", List.of(PSI), INTERNAL, in -> 8.2 / (1.05 + in[0]));
  private static final Formula BENT =
      new Formula(
          K,
          "7.81 − 6.29·{ψ} + 9.78·{ψ}²",
          List.of(PSI),
          INTERNAL,
          in -> 7.81 - 6.29 * in[0] + 9.78 * in[0] * in[0]);
  private static final Formula MOSTLY_TENSION =
      new Formula(
          K, "5.98·(1 − {ψ})²", List.of(PSI), INTERNAL, in -> 5.98 * (1 - in[0]) * (1 - in[0]));
  private static final Formula FREE_EDGE =
      new Formula(
          K,
          "0.57 − 0.21·{ψ} + 0.07·{ψ}²",
          List.of(PSI),
          "EN 1993-1-5:2006, table 4.2, the free edge compressed most",
          in -> 0.57 - 0.21 * in[0] + 0.07 * in[0] * in[0]);
  private static final Formula SLENDERNESS =
      new Formula(
          BAR,
          "{c/t}/(28.4·{ε}·√{kσ})",
          List.of(RATIO, EPSILON, K),
          CLAUSE,
          in -> in[0] / (28.4 * in[1] * Math.sqrt(in[2])));
  private static final Formula INTERNAL_LEFT =
      new Formula(
          RHO,
          "min(1, ({λ̄p} − 0.055·(3 + {ψ}))/{λ̄p}²)",
          List.of(BAR, PSI),
          CLAUSE,
          in -> Math.min(1, (in[0] - 0.055 * (3 + in[1])) / (in[0] * in[0])));
  private static final Formula OUTSTAND_LEFT =
      new Formula(
          RHO,
          "min(1, ({λ̄p} − 0.188)/{λ̄p}²)",
          List.of(BAR),
          CLAUSE,
          in -> Math.min(1, (in[0] - 0.188) / (in[0] * in[0])));

  /** Whether a wall is of class 4 and flat. */
  static boolean asked(CompressedWall wall, double yield) {
    return wall.wall().edge() != Edge.ROUND && wall.isClassFour(yield);
  }

  /** The largest width to thickness that the rules are for [1]. */
  double widest() {
    return wall.wall().edge() == Edge.INTERNAL ? WIDEST_INTERNAL : WIDEST_OUTSTAND;
  }

  private double ratio() {
    return wall.wall().edge() == Edge.INTERNAL ? wall.other() / wall.stress() : 1;
  }

  /** Buckling factor, slenderness and, last, the part left. */
  List<Step> working() {
    double psi = ratio();
    Step factor = factor(wall.wall().edge(), psi);
    Step bar =
        SLENDERNESS.with(wall.ratio(), WallLimits.yieldFactor(yield).result(), factor.result());
    return List.of(factor, bar, left(wall.wall().edge(), bar.result(), psi));
  }

  /** kσ of a wall [1]. */
  static Step factor(Edge edge, double psi) {
    if (edge == Edge.OUTSTAND) {
      return FREE_EDGE.with(psi);
    }
    return (psi >= 0 ? COMPRESSED : psi > -1 ? BENT : MOSTLY_TENSION).with(psi);
  }

  /** ρ of a wall [1]; of one that is too stocky for the rule to start, 1. */
  static Step left(Edge edge, double bar, double psi) {
    return edge == Edge.OUTSTAND ? OUTSTAND_LEFT.with(bar) : INTERNAL_LEFT.with(bar, psi);
  }

  /**
   * The part of the wall that is gone. Of an internal wall it lies behind the strip at its more
   * compressed edge: 2/(5 − ψ) of what is left, or 0.4 where the other edge is in tension.
   */
  Wall gone() {
    double rho = working().get(2).result();
    if (wall.wall().edge() == Edge.OUTSTAND) {
      return part(freeEndFirst(), 0, 1 - rho);
    }
    double psi = ratio();
    double compressed = psi < 0 ? 1 / (1 - psi) : 1;
    double left = rho * compressed;
    double near = left * (psi < 0 ? 0.4 : 2 / (5 - psi));
    return part(wall.fromIsCompressedMore(), near, near + compressed - left);
  }

  private Wall part(boolean fromItsStart, double from, double to) {
    Wall whole = wall.wall();
    return fromItsStart ? whole.part(from, to) : whole.part(1 - to, 1 - from);
  }

  /** The free end is the one farther from every other wall. */
  private boolean freeEndFirst() {
    return away(wall.wall().from()) > away(wall.wall().to());
  }

  private double away(Spot end) {
    return wall.cut().section().walls().stream()
        .filter(other -> !other.equals(wall.wall()))
        .mapToDouble(other -> Math.min(distance(end, other.from()), distance(end, other.to())))
        .min()
        .orElse(0);
  }

  private static double distance(Spot one, Spot other) {
    return Math.hypot(one.y() - other.y(), one.z() - other.z());
  }

  /** A section without what its slender walls lose. */
  static Section reduced(LoadedMember member, double yield) {
    List<Wall> gone = new ArrayList<>();
    for (Wall each : member.stock().section().walls()) {
      CompressedWall compressed = CompressedWall.of(each, member.cuts());
      if (compressed.stress() > member.negligibleStress() && asked(compressed, yield)) {
        gone.add(new EffectiveWidth(compressed, yield).gone());
      }
    }
    gone.removeIf(part -> part.width() < 1e-9);
    return member.stock().section().without(gone);
  }
}
