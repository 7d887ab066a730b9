package rungwork.impact;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.solve.YieldSurface;

/** What each beam of a frame carries at one of the two strengths; each stock is computed once. */
final class FrameStrength implements Function<Beam, YieldSurface> {
  private final CrushTube.Strength strength;
  private final TwoStrengths strengths;
  private final Map<Stock, YieldSurface> known = new HashMap<>();

  /**
   * A frame's strength.
   *
   * @param strength low or high
   * @param strainRate in the hinges, for the high one [1/s]; 0 leaves it out
   */
  FrameStrength(CrushTube.Strength strength, double strainRate) {
    this.strength = strength;
    strengths = new TwoStrengths(CrushFormulas.RATE_OF_YIELD.with(strainRate));
  }

  @Override
  public YieldSurface apply(Beam beam) {
    Stock stock = new Stock(beam.section(), beam.material());
    return known.computeIfAbsent(stock, any -> surface(beam));
  }

  private YieldSurface surface(Beam beam) {
    if (beam.material() instanceof RatedMaterial rated) {
      return strengths.surface(beam.section(), rated, strength);
    }
    throw new ModelException(
        "%s is cut from %s, whose strength nobody states; a collapse needs a rated material"
            .formatted(beam.name(), beam.material().name()));
  }
}
