package rungwork.check;

import java.util.List;
import rungwork.quantity.Kind;
import rungwork.section.Wall.Edge;

/**
 * The width-to-thickness limits of AISC 360-16, table B4.1a (compression), set beside those of EN
 * 1993-1-1 for comparison: factors from memory but the 1.40 of tube walls. Flat walls by √(E/fy),
 * round tubes by E/fy.
 */
final class AmericanLimits {
  private static final Symbol LIMIT =
      new Symbol("(c/t)A", Kind.RATIO, "limit of AISC 360 for comparison");
  private static final String COMPRESSION = "AISC 360-16, table B4.1a, nonslender; comparison only";

  private static final Formula TUBE_WALL = flat(1.40);
  private static final Formula OUTSTAND = flat(0.56);
  private static final Formula ROUND =
      new Formula(
          LIMIT,
          "0.11·{E}/{fy}",
          List.of(Letters.E, Letters.FY),
          COMPRESSION,
          in -> 0.11 * in[0] / in[1]);

  private AmericanLimits() {}

  /**
   * The limit up to which a wall in uniform compression yields before it buckles: walls of tubes,
   * flanges that are free along one edge, round tubes. A channel's web may have 1.49 for 1.40.
   */
  static Step compression(Edge edge, double youngsModulus, double yield) {
    Formula formula =
        switch (edge) {
          case INTERNAL -> TUBE_WALL;
          case OUTSTAND -> OUTSTAND;
          case ROUND -> ROUND;
        };
    return formula.with(youngsModulus, yield);
  }

  private static Formula flat(double factor) {
    return new Formula(
        LIMIT,
        factor + "·√({E}/{fy})",
        List.of(Letters.E, Letters.FY),
        COMPRESSION,
        in -> factor * Math.sqrt(in[0] / in[1]));
  }
}
