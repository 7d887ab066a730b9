package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Stock;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;

/** A kick-up folds in the stock that its own slope is made of. */
class KickUpsTest {
  private static Stock tube(double side) {
    return new Stock(Section.squareTube(mm(side), mm(3)), Runabout.steel(235));
  }

  /** 50 mm back to the front crossmember, 60 mm behind it, 70 mm behind the middle one. */
  private static Ladder ladder() {
    Rail left =
        new Rail(
            0.4,
            0.35,
            List.of(
                new Rail.Reach(0.1, 0.35, tube(50)),
                new Rail.Reach(-0.9, 0.35, tube(60)),
                new Rail.Reach(-2.2, 0.35, tube(70))));
    return Ladder.named("stepped")
        .level(mm(400))
        .rails(left)
        .crossmember("front", mm(100), tube(50))
        .crossmember("middle", mm(-900), tube(50))
        .crossmember("rear", mm(-2100), tube(50))
        .kickUp("front", mm(-300), mm(-500), mm(100))
        .kickUp("rear", mm(-1500), mm(-1300), mm(80))
        .build();
  }

  @Test
  void each_is_found_in_its_own_stretch_of_the_rail() {
    List<Collapse.KickUpFall> falls = new KickUps(ladder(), 0).all();
    assertEquals(List.of("front", "rear"), falls.stream().map(f -> f.kickUp().name()).toList());
    assertEquals(tube(60).section().name(), falls.get(0).section());
    assertEquals(tube(70).section().name(), falls.get(1).section());
  }
}
