package rungwork.impact;

import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.material.Elasticity;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.section.Section;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.LadderBuilder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** An invented vehicle, symmetric left to right, of few masses on a ladder of three rungs. */
public final class Runabout {
  private Runabout() {}

  /** A steel of this yield strength [MPa], beside welds as elsewhere. */
  public static RatedMaterial steel(double yield) {
    return new RatedMaterial(
        "steel",
        new Elasticity(210e9, 0.3, 7850),
        new RatedMaterial.Strength(yield * 1e6, yield * 1.2e6, yield * 1e6, 0.2),
        new Source("stated for tests", Source.Tag.STATED_BY_USER));
  }

  /** A ladder of one tube, its material any. */
  public static Ladder ladder(Material material) {
    return parts(material).build();
  }

  /** The same with rails that rise by 100 mm behind the front crossmember. */
  public static Ladder cranked(Material material) {
    return parts(material).kickUp("front", mm(-400), mm(-200), mm(100)).build();
  }

  private static LadderBuilder parts(Material material) {
    Stock tube = new Stock(Section.squareTube(mm(50), mm(3)), material);
    return Ladder.named("ladder")
        .level(mm(400))
        .rails(mm(400), mm(-2200), mm(700), tube)
        .crossmember("front", mm(100), tube)
        .crossmember("middle", mm(-900), tube)
        .crossmember("rear", mm(-2100), tube);
  }

  /** 500 kg on the crossmembers' ends and middles. */
  public static Vehicle vehicle() {
    var parts =
        Vehicle.named("Runabout")
            .wheelbase(mm(2000))
            .track(mm(1200), mm(1200))
            .frontRollShare(0.5)
            .mass("load", kg(200), at(-1500, 500), "middle left", "middle right", "rear middle")
            .mass("front", kg(100), at(50, 450), "front left", "front right")
            .seat("driver", kg(80), at(-900, 600), "middle left", "middle right");
    for (Side side : Side.values()) {
      parts
          .wheel(Axle.FRONT, side, "front " + side.word())
          .wheel(Axle.REAR, side, "rear " + side.word());
    }
    return parts.build();
  }

  private static Point at(double x, double z) {
    return Point.at(mm(x), mm(0), mm(z));
  }
}
