package rungwork.impact;

import java.util.List;
import rungwork.check.Step;
import rungwork.material.RatedMaterial;
import rungwork.section.Section;
import rungwork.solve.YieldSurface;

/**
 * The two strengths of a frame's members. A wall thinner or thicker than nominal counts as that
 * much less or more strength, which for thin walls is the same.
 *
 * @param rateOfYield what yield gains at the strain rate of the hit, and how that was found
 */
record TwoStrengths(Step rateOfYield) {
  /** Mild steel in a frame that hits at road speed: common practice, no source [1/s]. */
  private static final double USUAL_RATE = 1;

  static TwoStrengths usual() {
    return new TwoStrengths(CrushFormulas.RATE_OF_YIELD.with(USUAL_RATE));
  }

  /** How many times the minimum yield strength counts [1]. */
  double factor(CrushTube.Strength which) {
    return which == CrushTube.Strength.LOW
        ? 1 - TubeStrength.WALL_TOLERANCE
        : (1 + TubeStrength.WALL_TOLERANCE) * TubeStrength.EXPECTED_YIELD * rateOfYield.result();
  }

  /** What of a material counts: low beside welds what is left there; high everywhere all of it. */
  RatedMaterial.Strength of(RatedMaterial material, CrushTube.Strength which) {
    RatedMaterial.Strength least = material.strength();
    double factor = factor(which);
    double welded = which == CrushTube.Strength.LOW ? least.weldedYield() : least.yield();
    return new RatedMaterial.Strength(
        factor * least.yield(), factor * least.ultimate(), factor * welded, least.elongation());
  }

  /**
   * What a section carries when fully plastic: low from within, beside welds; high from without.
   */
  YieldSurface surface(Section section, RatedMaterial material, CrushTube.Strength which) {
    RatedMaterial.Strength counts = of(material, which);
    return which == CrushTube.Strength.LOW
        ? YieldSurface.around(section, counts.weldedYield()).drawnIn()
        : YieldSurface.around(section, counts.yield());
  }

  List<String> words() {
    return List.of(
        "Low: minimum yield, beside welds what is left there, a wall 10 % thin. For what breaks.",
        "High: 1.4 times the minimum yield (AISC 341-16, second-hand), a wall 10 % thick, and what"
            + " steel gains at the strain rate of a hit at road speed: "
            + rateOfYield
            + ". For the force that reaches what stands behind.");
  }
}
