package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * What is left of a flat wall that buckles before it yields: EN 1993-1-5:2006, 4.4 with tables 4.1
 * and 4.2 (from memory), by the stresses at its edges where it is compressed most.
 *
 * @param wall the wall at its most compressed cut
 * @param yield fy [Pa]
 */
record EffectiveWidth(CompressedWall wall, double yield) {
  /** Flat widths up to which the rules hold (EN 1993-1-3:2006, table 5.1; from memory) [1]. */
  private static final double WIDEST_INTERNAL = 500;

  private static final double WIDEST_OUTSTAND = 50;

  private static final String CLAUSE = "EN 1993-1-5:2006, 4.4(2)";
  private static final Symbol RATIO = new Symbol("c/t", Kind.RATIO, "width to thickness");
  private static final Symbol EPSILON = new Symbol("ε", Kind.RATIO, "factor for yield strength");
  private static final Symbol BAR = new Symbol("λ̄p", Kind.RATIO, "slenderness of the wall");
  private static final Symbol RHO =
      new Symbol("ρ", Kind.RATIO, "part of the compressed width left");

  private static final Formula SLENDERNESS =
      new Formula(
          BAR,
          "{c/t}/(28.4·{ε}·√{kσ})",
          List.of(RATIO, EPSILON, PlateFactor.K),
          CLAUSE,
          in -> in[0] / (28.4 * in[1] * Math.sqrt(in[2])));
  private static final Formula INTERNAL_LEFT =
      new Formula(
          RHO,
          "min(1, ({λ̄p} − 0.055·(3 + {ψ}))/{λ̄p}²)",
          List.of(BAR, PlateFactor.PSI),
          CLAUSE,
          in -> Math.min(1, (in[0] - 0.055 * (3 + in[1])) / (in[0] * in[0])));
  private static final Formula OUTSTAND_LEFT =
      new Formula(
          RHO,
          "min(1, ({λ̄p} − 0.188)/{λ̄p}²)",
          List.of(BAR),
          CLAUSE,
          in -> Math.min(1, (in[0] - 0.188) / (in[0] * in[0])));

  /** The least part left [1] of a wall held along both edges: under uniform compression. */
  static double leastLeft(Wall internal, double yield) {
    double ratio = internal.width() / internal.thickness();
    double epsilon = WallLimits.yieldFactor(yield).result();
    double bar = SLENDERNESS.value(ratio, epsilon, PlateFactor.internal(1).result());
    return INTERNAL_LEFT.value(bar, 1);
  }

  /** Whether the rules hold for a wall held along both edges. */
  static boolean covers(Wall internal) {
    return internal.width() / internal.thickness() <= WIDEST_INTERNAL;
  }

  /** Whether a wall is of class 4 and flat. */
  static boolean asked(CompressedWall wall, double yield) {
    return wall.wall().edge() != Edge.ROUND && wall.isClassFour(yield);
  }

  /** The largest width to thickness that the rules are for [1]. */
  double widest() {
    return wall.wall().edge() == Edge.INTERNAL ? WIDEST_INTERNAL : WIDEST_OUTSTAND;
  }

  /** Buckling factor, slenderness and, last, the part left. */
  List<Step> working() {
    double psi = wall.psi();
    Step factor = factor();
    Step bar =
        SLENDERNESS.with(wall.ratio(), WallLimits.yieldFactor(yield).result(), factor.result());
    return List.of(factor, bar, left(wall.wall().edge(), bar.result(), psi));
  }

  private Step factor() {
    return wall.wall().edge() == Edge.OUTSTAND
        ? PlateFactor.outstand(wall.psi(), wall.peak())
        : PlateFactor.internal(wall.psi());
  }

  /** ρ of a wall [1]; of one that is too stocky for the rule to start, 1. */
  static Step left(Edge edge, double bar, double psi) {
    return edge == Edge.OUTSTAND ? OUTSTAND_LEFT.with(bar) : INTERNAL_LEFT.with(bar, psi);
  }

  /**
   * The part of the wall that is gone. Of an internal wall it lies behind the strip at its more
   * compressed edge: 2/(5 − ψ) of what is left, or 0.4 where the other edge is in tension. Of an
   * outstand it is the compressed width's end that is nearer to the free edge.
   */
  Wall gone() {
    double rho = working().get(2).result();
    double psi = wall.psi();
    double compressed = psi < 0 ? 1 / (1 - psi) : 1;
    double left = rho * compressed;
    if (wall.wall().edge() == Edge.OUTSTAND) {
      return wall.peak() == Peak.FREE_EDGE
          ? part(wall.freeEdgeIsFrom(), 0, compressed - left)
          : part(!wall.freeEdgeIsFrom(), left, compressed);
    }
    double near = left * (psi < 0 ? 0.4 : 2 / (5 - psi));
    return part(wall.fromIsCompressedMore(), near, near + compressed - left);
  }

  private Wall part(boolean fromItsStart, double from, double to) {
    Wall whole = wall.wall();
    return fromItsStart ? whole.part(from, to) : whole.part(1 - to, 1 - from);
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
