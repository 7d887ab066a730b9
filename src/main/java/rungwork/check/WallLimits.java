package rungwork.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * Width-to-thickness limits of a wall in uniform compression, in units of ε = √(235 MPa/fy), for a
 * round tube in units of ε² (EN 1993-1-1:2005, table 5.2; the round tube's from memory). Uniform
 * compression is the least favourable stress state.
 *
 * @param first largest c/t of class 1: rotates as a plastic hinge [1]
 * @param second largest c/t of class 2: reaches the plastic moment [1]
 * @param third largest c/t of class 3: reaches yield at the first fibre [1]
 */
public record WallLimits(double first, double second, double third) {
  /** Refuses a limit that is not above zero. */
  public WallLimits {
    Guard.positive("width to thickness of class 1", first, Scale.NUMBER);
    Guard.positive("width to thickness of class 2", second, Scale.NUMBER);
    Guard.positive("width to thickness of class 3", third, Scale.NUMBER);
  }

  private static final WallLimits INTERNAL = new WallLimits(33, 38, 42);
  private static final WallLimits OUTSTAND = new WallLimits(9, 10, 14);
  private static final WallLimits ROUND = new WallLimits(50, 70, 90);

  static final String TABLE = "EN 1993-1-1:2005, table 5.2";
  private static final Symbol EPSILON = new Symbol("ε", Kind.RATIO, "factor for yield strength");
  private static final Symbol PSI = new Symbol("ψ", Kind.RATIO, "stress ratio of both edges");
  private static final Symbol LIMIT = new Symbol("(c/t)₃", Kind.RATIO, "class 3 limit");

  private static final Formula YIELD_FACTOR =
      new Formula(
          EPSILON, "√(235 MPa/{fy})", List.of(Letters.FY), TABLE, in -> Math.sqrt(235e6 / in[0]));
  private static final Formula INTERNAL_WALL =
      limit(
          "42·{ε}/(0.67 + 0.33·{ψ})",
          List.of(EPSILON, PSI),
          in -> INTERNAL.third * in[0] / (0.67 + 0.33 * in[1]));
  private static final Formula MOSTLY_TENSION =
      limit(
          "62·{ε}·(1 − {ψ})·√(−{ψ})",
          List.of(EPSILON, PSI),
          in -> 62 * in[0] * (1 - in[1]) * Math.sqrt(-in[1]));
  private static final Formula FREE_EDGE =
      limit("14·{ε}", List.of(EPSILON), in -> OUTSTAND.third * in[0]);
  private static final Formula OUTSTAND_WALL =
      limit(
          "max(14·{ε}, 21·{ε}·√{kσ})",
          List.of(EPSILON, PlateFactor.K),
          in -> Math.max(OUTSTAND.third * in[0], 21 * in[0] * Math.sqrt(in[1])));
  private static final Formula ROUND_TUBE =
      limit("90·{ε}²", List.of(EPSILON), in -> ROUND.third * in[0] * in[0]);

  /**
   * The limits for a way of being held, in uniform compression.
   *
   * @param edge how the wall is held along its edges
   * @return its limits
   */
  public static WallLimits of(Edge edge) {
    return switch (edge) {
      case INTERNAL -> INTERNAL;
      case OUTSTAND -> OUTSTAND;
      case ROUND -> ROUND;
    };
  }

  /**
   * The factor ε = √(235 MPa/fy) for the yield strength.
   *
   * @param yield fy [Pa]
   * @return ε [1]
   */
  public static Step yieldFactor(double yield) {
    return YIELD_FACTOR.with(yield);
  }

  /**
   * The class 3 limit of an outstand under stress that varies over its width: 21ε√kσ, but not less
   * than in uniform compression, which is the worst.
   *
   * @param yieldFactor ε [1]
   * @param factor kσ of {@link PlateFactor#outstand} [1]
   * @return largest c/t [1]
   */
  static Step outstand(double yieldFactor, double factor) {
    return OUTSTAND_WALL.with(yieldFactor, factor);
  }

  /**
   * The class 3 limit under stress that varies over the width. Only an internal wall gains from
   * that here; an outstand and a round tube are taken as compressed uniformly.
   *
   * @param edge how the wall is held along its edges
   * @param yieldFactor ε [1]
   * @param ratio ψ: the compression at the less compressed edge over that at the more compressed
   *     one, negative where it is tension; at most 1 [1]
   * @return largest c/t [1]
   */
  public static Step third(Edge edge, double yieldFactor, double ratio) {
    return switch (edge) {
      case INTERNAL -> (ratio > -1 ? INTERNAL_WALL : MOSTLY_TENSION).with(yieldFactor, ratio);
      case OUTSTAND -> FREE_EDGE.with(yieldFactor);
      case ROUND -> ROUND_TUBE.with(yieldFactor);
    };
  }

  /**
   * The class of a wall in uniform compression.
   *
   * @param wall the wall
   * @param yield fy [Pa]
   * @return 1 to 4; class 4 buckles before it yields
   */
  public static int classOf(Wall wall, double yield) {
    double epsilon = yieldFactor(yield).result();
    double unit = wall.edge() == Edge.ROUND ? epsilon * epsilon : epsilon;
    double ratio = wall.width() / wall.thickness() / unit;
    WallLimits limits = of(wall.edge());
    return ratio <= limits.first ? 1 : ratio <= limits.second ? 2 : ratio <= limits.third ? 3 : 4;
  }

  /**
   * The class of a section in uniform compression, that of its worst wall. Bending asks less of
   * most walls, never more.
   *
   * @param section the section
   * @param material its material
   * @return the class with the wall that decides it and the clause, or why it is not checked
   */
  public static String classInCompression(Section section, RatedMaterial material) {
    Optional<String> outside = SteelRange.of(material);
    if (outside.isPresent()) {
      return "class not checked: " + outside.get();
    }
    double yield = material.strength().yield();
    return section.walls().stream()
        .max(Comparator.comparingDouble(wall -> use(wall, yield)))
        .map(wall -> words(wall, yield))
        .orElse("class not checked: a solid bar has no thin walls, or its walls are not known");
  }

  /**
   * The class of a section bent about y, that of its worst wall: which classes allow plastic
   * moments and hinges.
   *
   * @param section the section
   * @param material its material
   * @return the class with the wall that decides it and the clause, or why it is not checked
   */
  public static String classInBending(Section section, RatedMaterial material) {
    Optional<String> outside = SteelRange.of(material);
    if (outside.isPresent()) {
      return "class not checked: " + outside.get();
    }
    if (!BendingClass.asked(section)) {
      return "class in bending not checked: its upper and lower halves are not alike";
    }
    return BendingClass.words(section, material.strength().yield());
  }

  /**
   * Whether a section bent about y is compact, noncompact or slender by AISC 360, by its worst
   * wall.
   *
   * @param section the section
   * @param material its material
   * @return the word with the wall that decides it and the table, or why it is not checked
   */
  public static String americanInBending(Section section, RatedMaterial material) {
    if (!BendingClass.asked(section)) {
      return "limits of AISC 360 not checked: its upper and lower halves are not alike";
    }
    double e = material.elasticity().youngsModulus();
    return AmericanLimits.words(section, e, material.strength().yield());
  }

  private static double use(Wall wall, double yield) {
    return wall.width()
        / wall.thickness()
        / third(wall.edge(), yieldFactor(yield).result(), 1).result();
  }

  private static String words(Wall wall, double yield) {
    return "class %d in uniform compression: %s, %s = %s; class 3 ends at %s (%s, ε = %s)"
        .formatted(
            classOf(wall, yield),
            wall.name(),
            wall.edge() == Edge.ROUND ? "d/t" : "c/t",
            Scale.NUMBER.number(wall.width() / wall.thickness(), 3),
            Scale.NUMBER.number(third(wall.edge(), yieldFactor(yield).result(), 1).result(), 3),
            TABLE,
            Scale.NUMBER.number(yieldFactor(yield).result(), 3));
  }

  private static Formula limit(String text, List<Symbol> inputs, Formula.Evaluation evaluation) {
    return new Formula(LIMIT, text, inputs, TABLE, evaluation);
  }
}
