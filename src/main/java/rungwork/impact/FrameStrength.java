package rungwork.impact;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.solve.YieldSurface;

/**
 * What each beam of a frame carries at one of the two strengths. Hinges form at nodes, and there
 * are welds, so the low one takes the welded zone's yield strength. The wall's tolerance counts as
 * a factor on all plastic forces: a little more than a thinner or thicker wall really changes.
 */
final class FrameStrength implements Function<Beam, YieldSurface> {
  private final CrushTube.Strength strength;
  private final double rateFactor;
  private final Map<Stock, YieldSurface> known = new HashMap<>();

  /**
   * A frame's strength.
   *
   * @param strength low or high
   * @param strainRate in the hinges, for the high one [1/s]; 0 leaves it out
   */
  FrameStrength(CrushTube.Strength strength, double strainRate) {
    this.strength = strength;
    rateFactor = strainRate == 0 ? 1 : CrushFormulas.RATE_OF_YIELD.with(strainRate).result();
  }

  @Override
  public YieldSurface apply(Beam beam) {
    Stock stock = new Stock(beam.section(), beam.material());
    return known.computeIfAbsent(stock, any -> surface(beam));
  }

  private YieldSurface surface(Beam beam) {
    if (!(beam.material() instanceof RatedMaterial rated)) {
      throw new ModelException(
          "%s is cut from %s, whose strength nobody states; a collapse needs a rated material"
              .formatted(beam.name(), beam.material().name()));
    }
    if (strength == CrushTube.Strength.LOW) {
      double least = rated.strength().weldedYield();
      double thin = 1 - TubeStrength.WALL_TOLERANCE;
      return YieldSurface.around(beam.section(), least).drawnIn().times(thin);
    }
    double most = TubeStrength.EXPECTED_YIELD * rateFactor * rated.strength().yield();
    return YieldSurface.around(beam.section(), most).times(1 + TubeStrength.WALL_TOLERANCE);
  }
}
