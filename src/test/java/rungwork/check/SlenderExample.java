package rungwork.check;

import rungwork.section.Wall.Edge;

/** Numbers behind effective widths and limits, for comparison with published ones. */
public final class SlenderExample {
  private SlenderExample() {}

  /** kσ for a stress ratio ψ. */
  public static double factor(Edge edge, double psi) {
    return EffectiveWidth.factor(edge, psi).result();
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
