package rungwork.record;

import static rungwork.quantity.Quantities.mm;

import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.LadderBuilder;
import rungwork.vehicle.Rail;

/** An invented ladder with round figures: bays of 1200 and 900 mm between rails 900 mm apart. */
final class Square {
  private static final Stock TUBE =
      new Stock(Section.squareTube(mm(50), mm(3)), Material.rated("S235JRH"));

  private Square() {}

  static LadderBuilder parts() {
    return Ladder.named("square")
        .level(mm(400))
        .rails(mm(300), mm(-2100), mm(900), TUBE)
        .crossmember("front", mm(0), TUBE)
        .crossmember("middle", mm(-1200), TUBE)
        .crossmember("rear", mm(-2100), TUBE);
  }

  static Ladder ladder() {
    return parts().build();
  }

  static Ladder tapering() {
    return parts()
        .rails(
            Rail.from(mm(300), mm(300))
                .to(mm(0), mm(300), TUBE)
                .to(mm(-1200), mm(450), TUBE)
                .to(mm(-2100), mm(450), TUBE))
        .build();
  }

  static Ladder raised() {
    return parts().kickUp("front", mm(-1000), mm(-200), mm(100)).build();
  }
}
