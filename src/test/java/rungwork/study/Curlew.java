package rungwork.study;

import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.section.Section;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.LadderBuilder;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.VehicleBuilder;

/** An invented electric parcel runabout, for tests of studies and pages. */
public final class Curlew {
  public static final RatedMaterial STEEL =
      new RatedMaterial(
          "S235",
          new Elasticity(210e9, 0.3, 7850),
          new RatedMaterial.Strength(235e6, 360e6, 235e6, 0.24),
          new Source("stated for tests", Source.Tag.STATED_BY_USER));

  private Curlew() {}

  public static Stock tube(double height, double width) {
    return new Stock(Section.rectangularTube(mm(height), mm(width), mm(3)), STEEL);
  }

  public static LadderBuilder parts() {
    LadderBuilder ladder =
        Ladder.named("Curlew")
            .level(mm(380))
            .crossmember("front", mm(400), tube(60, 60))
            .crossmember("middle", mm(-1000), tube(50, 50))
            .crossmember("rear", mm(-2300), tube(50, 50));
    for (Side side : Side.values()) {
      double y = side.sign() * 430;
      String word = side.word();
      ladder
          .mount("front " + word + " arm ahead", side, at(120, y, 250))
          .mount("front " + word + " arm behind", side, at(-150, y, 250))
          .mount("rear " + word + " spring", side, at(-2200, y, 300))
          .mount("seat " + word + " front", side, at(-800, y / 2, 400))
          .mount("seat " + word + " rear", side, at(-1250, y / 2, 400));
    }
    return ladder.mountOn("middle", "battery tray", at(-1000, 0, 420));
  }

  public static Ladder ladder() {
    return parts().rails(mm(450), mm(-2350), mm(800), tube(80, 40)).build();
  }

  public static Ladder tapering() {
    Rail left = Rail.from(mm(450), mm(330)).to(mm(-2350), mm(400), tube(80, 40));
    return parts().rails(left).build();
  }

  public static Vehicle vehicle() {
    VehicleBuilder vehicle =
        Vehicle.named("Curlew")
            .wheelbase(mm(2200))
            .track(mm(1300), mm(1300))
            .frontRollShare(0.55)
            .mass("battery", kg(180), at(-1100, 0, 420), "middle left", "middle right")
            .mass("load", kg(150), at(-1900, 0, 700), "rear left", "rear right")
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
          .wheel(Axle.FRONT, side, "front " + word + " arm ahead", "front " + word + " arm behind")
          .wheel(Axle.REAR, side, "rear " + word + " spring");
    }
    return vehicle.build();
  }

  public static Point at(double x, double y, double z) {
    return Point.at(mm(x), mm(y), mm(z));
  }

  /** Heavy rails and rungs, so that only the front crossmember can fail under these events. */
  public static Ladder sturdy(Stock front) {
    return parts()
        .rails(mm(450), mm(-2350), mm(800), tube(120, 80))
        .build()
        .withCrossmember("middle", tube(100, 100))
        .withCrossmember("rear", tube(100, 100))
        .withCrossmember("front", front);
  }

  /** A bump and a mild impact. */
  public static List<Event> events() {
    return List.of(
        Event.bumpOneWheel(Axle.FRONT, Side.LEFT), Event.frontalImpact(g(4), Event.Hit.FULL_WIDTH));
  }

  public static Assessment assess(Candidate candidate) {
    return Assessment.of(vehicle(), sturdy(candidate.stock()), events());
  }

  /** A tube too weak, two that do, a channel, and a shape that a flat frame refuses. */
  public static List<Candidate> candidates() {
    return List.of(
        new Candidate("weak", tube(20, 20)),
        new Candidate("heavy", tube(120, 80)),
        new Candidate("light", tube(80, 60)),
        new Candidate(
            "channel", new Stock(Section.foldedChannel(mm(80), mm(120), mm(8), mm(8)), STEEL)),
        new Candidate("angle", new Stock(Section.angle(mm(50), mm(50), mm(5), mm(6)), STEEL)));
  }
}
