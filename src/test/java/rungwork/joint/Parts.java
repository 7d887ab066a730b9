package rungwork.joint;

import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Verdict;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;

/** Parts and small questions that the tests of joints share. */
public final class Parts {
  public static final RatedMaterial S235 = steel("S235JR", 235e6, 360e6);
  public static final RatedMaterial S355 = steel("S355J2", 355e6, 470e6);
  public static final RatedMaterial A36 = steel("A36", 36 * 6.894757e6, 58 * 6.894757e6);
  public static final RatedMaterial ALUMINIUM =
      new RatedMaterial(
          "6061-T6",
          new Elasticity(69e9, 0.33, 2700),
          new RatedMaterial.Strength(240e6, 290e6, 115e6, 0.08),
          new Source("a test", Source.Tag.FROM_MEMORY));

  private Parts() {}

  public static RatedMaterial steel(String name, double yield, double ultimate) {
    return new RatedMaterial(
        name,
        new Elasticity(210e9, 0.3, 7850),
        new RatedMaterial.Strength(yield, ultimate, yield, 0.2),
        new Source("a test", Source.Tag.FROM_MEMORY));
  }

  /** A 5 mm tab, 40 wide, its hole for an M10 30 above the face and 20 from its end. */
  public static Tab tab() {
    return new Tab(
        "front tab",
        S355,
        Tab.Plate.single(mm(5), mm(40), mm(30)),
        Tab.Eye.of(Bolt.of("M10", "8.8"), mm(10.5), mm(20)));
  }

  public static FaceLoad load(Wrench wrench, Point place) {
    return new FaceLoad("braking", wrench, place, Factors.UNFACTORED);
  }

  /** A load at the origin with γM2 and φ but without a design factor, as building codes have it. */
  public static FaceLoad coded(Wrench wrench, Point place) {
    return new FaceLoad("design", wrench, place, new Factors(DesignFactor.NONE, 1.25, 0.75));
  }

  public static Check named(List<Check> checks, String what) {
    return checks.stream().filter(check -> check.what().equals(what)).findFirst().orElseThrow();
  }

  public static Verdict.Measured numbers(List<Check> checks, String what) {
    return named(checks, what).verdict().numbers().orElseThrow();
  }

  public static double capacity(List<Check> checks, String what) {
    return numbers(checks, what).capacity();
  }

  public static double demand(List<Check> checks, String what) {
    return numbers(checks, what).demand();
  }
}
