package rungwork.vehicle;

import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.section.Properties;
import rungwork.section.Section;

/** An invented electric parcel runabout, symmetric left to right, and its ladder. */
final class Curlew {
  static final RatedMaterial STEEL =
      new RatedMaterial(
          "S235",
          new Elasticity(210e9, 0.3, 7850),
          new RatedMaterial.Strength(235e6, 360e6, 235e6, 0.24),
          new Source("stated for tests", Source.Tag.STATED_BY_USER));

  private Curlew() {}

  /** A section with round figures: A 6 cm², I 40 and 20 cm⁴, It 40 cm⁴. */
  static Stock tube() {
    Properties p =
        new Properties(
            6e-4, 40e-8, 20e-8, 0, 40e-8, 0, 0, 1, 1e-5, 1e-5, 1.2e-5, 1.2e-5, 2e-4, 4e-4, 0, 0);
    return new Stock(new Section("tube", p, List.of(), List.of()), STEEL);
  }

  /** A second section, four thirds of the first. */
  static Stock heavyTube() {
    Properties p =
        new Properties(
            8e-4, 53e-8, 27e-8, 0, 53e-8, 0, 0, 1, 1.3e-5, 1.3e-5, 1.6e-5, 1.6e-5, 3e-4, 5e-4, 0,
            0);
    return new Stock(new Section("heavy tube", p, List.of(), List.of()), STEEL);
  }

  /** Rails from 450 to −2350 mm, 800 mm apart, 380 mm up, with three crossmembers and mounts. */
  static LadderBuilder ladderParts() {
    LadderBuilder ladder =
        Ladder.named("Curlew")
            .level(mm(380))
            .rails(mm(450), mm(-2350), mm(800), tube())
            .crossmember("front", mm(400), tube())
            .crossmember("middle", mm(-1000), tube())
            .crossmember("rear", mm(-2300), tube());
    for (Side side : Side.values()) {
      double y = side.sign() * 430;
      ladder
          .mount("front " + side.word() + " arm ahead", side, at(120, y, 250))
          .mount("front " + side.word() + " arm behind", side, at(-150, y, 250))
          .mount("rear " + side.word() + " spring", side, at(-2200, y, 300))
          .mount("seat " + side.word() + " front", side, at(-800, y / 2, 400))
          .mount("seat " + side.word() + " rear", side, at(-1250, y / 2, 400));
    }
    return ladder;
  }

  static Ladder ladder() {
    return ladderParts().build();
  }

  /** Symmetric masses on a wheelbase of 2200 mm and tracks of 1300 mm. */
  static VehicleBuilder parts() {
    VehicleBuilder vehicle =
        Vehicle.named("Curlew")
            .wheelbase(mm(2200))
            .track(mm(1300), mm(1300))
            .frontRollShare(0.55)
            .mass("battery", kg(180), at(-1100, 0, 420), "middle left", "middle right")
            .mass("load", kg(150), at(-1900, 0, 700), "rear left", "rear right", "middle middle")
            .mass("front body", kg(140), at(150, 0, 600), "front left", "front right");
    for (Side side : Side.values()) {
      String word = side.word();
      vehicle
          .seat(
              word + " person",
              kg(75),
              at(-1050, side.sign() * 300, 650),
              "seat " + word + " front",
              "seat " + word + " rear")
          .sprung(word + " person", 1.5)
          .wheel(Axle.FRONT, side, "front " + word + " arm ahead", "front " + word + " arm behind")
          .wheel(Axle.REAR, side, "rear " + word + " spring");
    }
    return vehicle;
  }

  static Vehicle vehicle() {
    return parts().build();
  }

  static Point at(double x, double y, double z) {
    return Point.at(mm(x), mm(y), mm(z));
  }
}
