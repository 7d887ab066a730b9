package rungwork.impact;

import rungwork.material.Elasticity;

/**
 * The mean stress at which the walls of a compressed tube give way, at most yield. Square: Winter's
 * effective width with k = 4 (EN 1993-1-5:2006, 4.4; from memory). Round: half of the classical
 * elastic stress 0.605·E·t/r, for imperfection (common practice, no source).
 */
final class WallBuckling {
  private WallBuckling() {}

  static double stress(CrushTube.Shape shape, double ratio, double yield, Elasticity elasticity) {
    return shape == CrushTube.Shape.SQUARE
        ? square(ratio, yield, elasticity)
        : Math.min(yield, 0.5 * 0.605 * elasticity.youngsModulus() * 2 / ratio);
  }

  private static double square(double ratio, double yield, Elasticity elasticity) {
    double nu = elasticity.poissonsRatio();
    double critical =
        4 * Math.PI * Math.PI * elasticity.youngsModulus() / (12 * (1 - nu * nu)) / (ratio * ratio);
    double slenderness = Math.sqrt(yield / critical);
    double effective =
        slenderness <= 0.673 ? 1 : (slenderness - 0.22) / (slenderness * slenderness);
    return effective * yield;
  }
}
