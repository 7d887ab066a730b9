package rungwork.check;

import rungwork.section.Wall.Edge;

/** Numbers behind effective widths and limits, for comparison with published ones. */
public final class SlenderExample {
  private SlenderExample() {}

  /** kσ for a stress ratio ψ; of an outstand with its free edge compressed most. */
  public static double factor(Edge edge, double psi) {
    return edge == Edge.OUTSTAND
        ? PlateFactor.outstand(psi, Peak.FREE_EDGE).result()
        : PlateFactor.internal(psi).result();
  }

  /** kσ of an outstand with its held edge compressed most. */
  public static double heldEdgeFactor(double psi) {
    return PlateFactor.outstand(psi, Peak.HELD_EDGE).result();
  }

  /** The limit of AISC 360 in bending, E and fy in one unit. */
  public static double americanBending(Edge edge, double psi, double youngsModulus, double yield) {
    return AmericanLimits.flexure(edge, psi, youngsModulus, yield).result();
  }

  /** ρ for a slenderness and a stress ratio. */
  public static double left(Edge edge, double bar, double psi) {
    return EffectiveWidth.left(edge, bar, psi).result();
  }

  /** The limit of AISC 360 in uniform compression, E and fy in one unit. */
  public static double american(Edge edge, double youngsModulus, double yield) {
    return AmericanLimits.compression(edge, youngsModulus, yield).result();
  }
}
