package rungwork.check;

import java.util.Comparator;
import java.util.List;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * The width-to-thickness limits of AISC 360-16, tables B4.1a (compression) and B4.1b (flexure), set
 * beside those of EN 1993-1-1 for comparison: factors from memory but the 1.12, 1.40 and 2.42 of
 * tube walls and the 0.38 and 1.0 of flanges. Flat walls by √(E/fy), round tubes by E/fy.
 *
 * <p>A compact section reaches its plastic moment, a noncompact one yields at its first fibre (F7
 * and F8 lower the plastic moment to the elastic one in between); a slender one buckles before.
 * Strengths here count elastic moduli, so that compact and noncompact give one number.
 */
final class AmericanLimits {
  private static final Symbol LIMIT =
      new Symbol("(c/t)A", Kind.RATIO, "limit of AISC 360 for comparison");
  private static final String COMPRESSION = "AISC 360-16, table B4.1a, nonslender; comparison only";
  private static final String FLEXURE = "AISC 360-16, table B4.1b, noncompact; comparison only";

  private static final Formula TUBE_WALL = flat(1.40, COMPRESSION);
  private static final Formula OUTSTAND = flat(0.56, COMPRESSION);
  private static final Formula ROUND = round(0.11, COMPRESSION);
  private static final Formula BENT_TUBE_WALL = flat(1.40, FLEXURE);
  private static final Formula BENT_WEB = flat(5.70, FLEXURE);
  private static final Formula BENT_OUTSTAND = flat(1.0, FLEXURE);
  private static final Formula BENT_ROUND = round(0.31, FLEXURE);

  /** A wall with less compression than this part at its other edge is a web [1]. */
  private static final double WEB = 0;

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

  /**
   * The limit up to which a wall of a bent section yields before it buckles.
   *
   * @param edge how it is held
   * @param ratio ψ: stress at its less compressed edge over that at the other [1]
   * @param youngsModulus E [Pa]
   * @param yield fy [Pa]
   */
  static Step flexure(Edge edge, double ratio, double youngsModulus, double yield) {
    Formula formula =
        switch (edge) {
          case INTERNAL -> ratio < WEB ? BENT_WEB : BENT_TUBE_WALL;
          case OUTSTAND -> BENT_OUTSTAND;
          case ROUND -> BENT_ROUND;
        };
    return formula.with(youngsModulus, yield);
  }

  /** Up to where a wall of a bent section lets it reach its plastic moment, over √(E/fy). */
  private static double compact(Edge edge, double ratio) {
    return switch (edge) {
      case INTERNAL -> ratio < WEB ? 2.42 : 1.12;
      case OUTSTAND -> 0.38;
      case ROUND -> 0.07;
    };
  }

  /** The worst wall of a section of like halves that is bent about y, in words. */
  static String words(Section section, double youngsModulus, double yield) {
    return section.walls().stream()
        .map(BendingClass::of)
        .filter(wall -> wall.compressed() > 0)
        .max(Comparator.comparingDouble(wall -> use(wall, youngsModulus, yield)))
        .map(wall -> words(wall, youngsModulus, yield))
        .orElse("no limit of AISC 360: a solid bar has no thin walls, or they are not known");
  }

  private static double use(BendingClass wall, double e, double fy) {
    return slenderness(wall.wall()) / flexure(wall.wall().edge(), wall.ratio(), e, fy).result();
  }

  private static double slenderness(Wall wall) {
    return wall.width() / wall.thickness();
  }

  private static String words(BendingClass bent, double e, double fy) {
    Wall wall = bent.wall();
    double unit = wall.edge() == Edge.ROUND ? e / fy : Math.sqrt(e / fy);
    double compact = compact(wall.edge(), bent.ratio()) * unit;
    double noncompact = flexure(wall.edge(), bent.ratio(), e, fy).result();
    double is = slenderness(wall);
    return "%s bent about y: %s, %s = %s; compact to %s, noncompact to %s (AISC 360-16, table B4.1b)"
        .formatted(
            is <= compact ? "compact" : is <= noncompact ? "noncompact" : "slender",
            wall.name(),
            wall.edge() == Edge.ROUND ? "D/t" : "b/t",
            Scale.NUMBER.number(is, 3),
            Scale.NUMBER.number(compact, 3),
            Scale.NUMBER.number(noncompact, 3));
  }

  private static Formula flat(double factor, String source) {
    return new Formula(
        LIMIT,
        factor + "·√({E}/{fy})",
        List.of(Letters.E, Letters.FY),
        source,
        in -> factor * Math.sqrt(in[0] / in[1]));
  }

  private static Formula round(double factor, String source) {
    return new Formula(
        LIMIT,
        factor + "·{E}/{fy}",
        List.of(Letters.E, Letters.FY),
        source,
        in -> factor * in[0] / in[1]);
  }
}
