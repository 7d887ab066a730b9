package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.frame.Stock;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;
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

  private static List<String> words(Rail left) {
    Stock stock = new Stock(Section.squareTube(mm(50), mm(3)), Runabout.steel(235));
    Ladder ladder =
        Ladder.named("ladder")
            .level(mm(400))
            .rails(left)
            .crossmember("front", mm(100), stock)
            .crossmember("rear", mm(-2100), stock)
            .build();
    return new RailTips(ladder).words(Units.METRIC);
  }

  private static final String BENT =
      "left rail tip: no stable folding assumed: it is bent, and bends there first.";

  @Test
  void a_tip_that_turns_aside_bends_first() {
    Stock stock = new Stock(Section.squareTube(mm(50), mm(3)), Runabout.steel(235));
    Rail turned = Rail.from(mm(400), mm(300)).to(mm(250), mm(350), stock);
    assertEquals(BENT, words(turned.to(mm(-2200), mm(350), stock)).get(0), "ahead of the rung");
    Rail slanted = Rail.from(mm(400), mm(300)).to(mm(100), mm(350), stock);
    assertEquals(BENT, words(slanted.to(mm(-2200), mm(350), stock)).get(0), "all the way to it");
    Rail behind = Rail.from(mm(400), mm(350)).to(mm(100), mm(350), stock);
    String straight = words(behind.to(mm(-2200), mm(450), stock)).get(0);
    assertTrue(straight.contains("without a trigger nobody knows"), straight);
  }

  @Test
  void a_kick_up_behind_the_foremost_crossmember_does_not_bend_the_tip() {
    String straight =
        new RailTips(Runabout.cranked(Runabout.steel(235))).words(Units.METRIC).get(0);
    assertTrue(straight.contains("without a trigger nobody knows"), straight);
    CrushTube tip =
        new RailTips(Runabout.cranked(Runabout.steel(235))).tip(Side.LEFT).orElseThrow();
    assertEquals(
        straight,
        "left rail tip: "
            + tip.noStableFolding(Units.METRIC).orElseThrow()
            + ". Folds, once begun, would take "
            + tip.meanForce().show(Units.METRIC)
            + " on average over 210 to 225 mm; nothing counts on it.");
    assertEquals(new Range(Kind.LENGTH, 0, tip.wall()), tip.offset());
    assertEquals(0.3, tip.length(), 1e-12);
  }

  @Test
  void a_tube_whose_walls_are_not_alike_is_covered_by_no_formula() {
    Section tube = Section.squareTube(mm(50), mm(3));
    List<Wall> walls = new ArrayList<>(tube.walls());
    Wall last = walls.get(3);
    walls.set(3, new Wall("last", last.width(), 0.004, last.edge(), last.from(), last.to()));
    Section unequal =
        new Section(
            "unequal tube",
            tube.properties(),
            tube.points(),
            walls,
            tube.torsion(),
            tube.outline(),
            tube.net());
    RailTips tips = new RailTips(with(unequal, 300));
    assertEquals(Optional.empty(), tips.tip(Side.LEFT));
    assertEquals(
        "left rail tip: no stable folding assumed: no formula here covers a unequal tube.",
        tips.words(Units.METRIC).get(0));
  }
}
