package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

class RailTipsTest {
  private static Ladder with(Section rails, double front) {
    Stock stock = new Stock(rails, Runabout.steel(235));
    return Ladder.named("ladder")
        .level(mm(400))
        .rails(mm(front), mm(-2200), mm(700), stock)
        .crossmember("front", mm(100), stock)
        .crossmember("rear", mm(-2100), stock)
        .build();
  }

  @Test
  void a_straight_square_tip_is_a_tube_without_a_trigger() {
    CrushTube tip =
        new RailTips(with(Section.squareTube(mm(50), mm(3)), 300)).tip(Side.LEFT).orElseThrow();
    assertEquals(CrushTube.Shape.SQUARE, tip.shape());
    assertEquals(0.2, tip.length(), 1e-12);
    assertEquals(0.05, tip.width(), 1e-12);
    assertEquals(0.003, tip.wall(), 1e-12);
    String line =
        new RailTips(with(Section.squareTube(mm(50), mm(3)), 300)).words(Units.METRIC).get(0);
    assertTrue(
        line.startsWith(
            "left rail tip: no stable folding assumed: without a trigger nobody knows where it"
                + " begins; it may begin with "),
        line);
    assertTrue(line.endsWith("; nothing counts on it."), line);
  }

  @Test
  void a_round_tip_is_one_too() {
    CrushTube tip =
        new RailTips(with(Section.roundTube(mm(60), mm(2)), 300)).tip(Side.RIGHT).orElseThrow();
    assertEquals(CrushTube.Shape.ROUND, tip.shape());
    assertEquals(0.06, tip.width(), 1e-9);
    assertEquals(0.002, tip.wall(), 1e-9);
    assertTrue(tip.triggered().meanForce().low() > 0, "and it can be asked with a trigger");
  }

  @Test
  void what_no_formula_covers_says_so() {
    RailTips flat = new RailTips(with(Section.rectangularTube(mm(80), mm(40), mm(3)), 300));
    assertEquals(Optional.empty(), flat.tip(Side.LEFT));
    assertEquals(
        "left rail tip: no stable folding assumed: no formula here covers a RHS 80x40x3.",
        flat.words(Units.METRIC).get(0));
    RailTips none = new RailTips(with(Section.squareTube(mm(50), mm(3)), 100));
    assertEquals(
        List.of(
            "left rail tip: it ends at the foremost crossmember; nothing of it can fold.",
            "right rail tip: it ends at the foremost crossmember; nothing of it can fold."),
        none.words(Units.METRIC));
  }

  @Test
  void a_cranked_tip_bends_first() {
    Stock stock = new Stock(Section.squareTube(mm(50), mm(3)), Runabout.steel(235));
    Ladder cranked =
        Ladder.named("ladder")
            .level(mm(400))
            .rails(mm(500), mm(-2200), mm(700), stock)
            .crossmember("front", mm(100), stock)
            .crossmember("rear", mm(-2100), stock)
            .kickUp("tip", mm(200), mm(350), mm(90))
            .build();
    assertEquals(
        "right rail tip: no stable folding assumed: it is bent, and bends there first.",
        new RailTips(cranked).words(Units.METRIC).get(1));
  }
}
