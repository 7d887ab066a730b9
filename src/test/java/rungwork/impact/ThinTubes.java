package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;

/** Tubes of 60 mm, wall 1.5 mm, 200 mm long; fy 235 and beside welds 180, fu 360 MPa. */
final class ThinTubes {
  static final RatedMaterial STEEL =
      new RatedMaterial(
          "steel",
          new Elasticity(210e9, 0.3, 7850),
          new RatedMaterial.Strength(235e6, 360e6, 180e6, 0.2),
          new Source("stated for tests", Source.Tag.STATED_BY_USER));
  static final CrushTube SQUARE =
      CrushTube.square("box", mm(60), mm(1.5)).of(mm(200), STEEL).offset(mm(2), mm(7));

  private ThinTubes() {}

  static TubeStrength low(CrushTube tube) {
    return tube.at(CrushTube.Strength.LOW);
  }

  static TubeStrength high(CrushTube tube) {
    return tube.at(CrushTube.Strength.HIGH);
  }

  /** Asserts that two numbers are equal but for rounding. */
  static void near(double expected, double actual) {
    assertEquals(expected, actual, 1e-9 * Math.abs(expected));
  }
}
