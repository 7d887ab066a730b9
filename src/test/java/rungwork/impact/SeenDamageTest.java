package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.solve.Displacement;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

class SeenDamageTest {
  private static final Ladder LADDER = Runabout.ladder(Runabout.steel(235));
  private static final Collapse POST = hit(Event.Hit.CENTRE);
  private static final Collapse WALL = hit(Event.Hit.FULL_WIDTH);
  private static final Collapse LEFT = hit(Event.Hit.LEFT_TIP);

  private static Collapse hit(Event.Hit hit) {
    return Collapse.of(Runabout.vehicle(), LADDER, hit);
  }

  /**
   * A perfectly plastic mechanism springs back by just the elastic crush: what is left of a crush
   * is the crush less its force over the first stiffness.
   */
  @Test
  void a_dent_in_the_crossmember_is_the_crush_less_what_springs_back() {
    SeenDamage.Explanation explained =
        SeenDamage.named("post")
            .shorter("front middle", "rear middle", mm(40), mm(1))
            .under(POST)
            .scenes()
            .get(0);
    Collapse.Path rigid = POST.rigid(CrushTube.Strength.LOW);
    SeenDamage.Reading reading =
        explained.runs().stream().filter(r -> r.path().equals(rigid)).findFirst().orElseThrow();
    Collapse.Reached first = rigid.corners().get(1);
    double back = rigid.last().reached().force() * first.crush() / first.force();
    assertEquals(
        0.040 + back,
        (reading.load().crush().low() + reading.load().crush().high()) / 2,
        0.003,
        "the crossmember moves against masses that hardly move themselves");
    assertTrue(explained.beyondMechanism());
    assertTrue(explained.runs().size() > POST.paths().size() / 2, explained::toString);
    assertTrue(reading.passed().contains("front crossmember at its middle"), reading::toString);
    assertEquals(POST.force().low(), explained.force().orElseThrow().low(), 1);
    assertEquals(POST.force().high(), explained.force().orElseThrow().high(), 1);
  }

  @Test
  void a_load_is_found_again_from_what_it_left_behind() {
    Collapse.Path path = LEFT.rigid(CrushTube.Strength.HIGH);
    Collapse.Stage stage = path.stages().get(path.stages().size() - 2);
    double factor = stage.reached().force() / path.pushed().unit();
    PermanentSet.Bent bent =
        new PermanentSet.Bent(
            LADDER,
            LADDER.frame(Joints.RIGID),
            node ->
                path.moved(stage, node)
                    .plus(path.pushed().pushover().elastic(node).times(-factor)));
    List<String> corners = List.of("front left", "rear right", "front right", "rear left");
    double set = PermanentSet.DIAGONALS.of(corners, bent);
    SeenDamage.Explanation explained =
        SeenDamage.named("corner")
            .diagonals("front", "rear", mm(set * 1e3), mm(0.01))
            .under(LEFT)
            .scenes()
            .get(0);
    SeenDamage.Reading reading =
        explained.runs().stream().filter(r -> r.path().equals(path)).findFirst().orElseThrow();
    double crush = stage.reached().crush();
    assertTrue(reading.load().crush().low() <= crush, reading::toString);
    assertTrue(reading.load().crush().high() >= crush, reading::toString);
    assertTrue(explained.energy().orElseThrow().high() >= stage.reached().energy());
    assertFalse(explained.yieldedPerhaps().isEmpty());
  }

  @Test
  void a_set_below_its_tolerance_says_only_what_the_load_did_not_exceed() {
    SeenDamage nothing = SeenDamage.named("nothing").diagonals("front", "rear", mm(1), mm(3));
    assertFalse(nothing.measured().get(0).shows());
    SeenDamage.Explanation explained = nothing.under(LEFT).scenes().get(0);
    assertEquals(0, explained.deceleration().orElseThrow().low());
    assertTrue(explained.deceleration().orElseThrow().high() > 0);
    assertEquals(List.of(), explained.yieldedSurely());
  }

  @Test
  void what_no_run_leaves_behind_is_said_not_to_be_explained() {
    SeenDamage.Explanations explained =
        SeenDamage.named("lozenge")
            .diagonals("front", "rear", mm(12), mm(3))
            .shorter("left tip", "left tail", mm(700), mm(10))
            .under(WALL, LEFT);
    SeenDamage.Explanation wall = explained.scenes().get(0);
    assertEquals(Optional.empty(), wall.force());
    assertEquals(List.of(), wall.yieldedSurely());
    assertEquals(
        "no run leaves all of this behind, not even far beyond its mechanism; another hit, more"
            + " than one, or walls that folded",
        wall.reason());
    assertTrue(explained.scenes().get(1).runs().isEmpty());
    String words = explained.toString();
    assertTrue(words.startsWith("Damage seen: lozenge\n  full width: no run leaves all"), words);
    assertTrue(words.endsWith("Injury cannot be predicted from these numbers."), words);
  }

  /** A bar of two pieces, 1 m each, its middle 100 mm aside: 2 (1 − cos 0.1) to second order. */
  @Test
  void a_bow_along_a_rail_shortens_it() {
    double aside = 0.1;
    PermanentSet.Bent bent =
        new PermanentSet.Bent(
            LADDER,
            LADDER.frame(Joints.RIGID),
            node ->
                node.equals("middle left")
                    ? new Displacement(0, aside, 0, 0, 0, 0)
                    : new Displacement(0, 0, 0, 0, 0, 0));
    double ahead = 1.0;
    double behind = 1.2;
    double expected = aside * aside / 2 * (1 / ahead + 1 / behind);
    assertEquals(
        expected, PermanentSet.SHORTER.of(List.of("front left", "rear left"), bent), 1e-12);
    assertEquals(0, PermanentSet.SHORTER.of(List.of("front left", "rear right"), bent), 1e-12);
  }

  @Test
  void sag_is_measured_from_the_line_between_two_places() {
    SeenDamage sag =
        SeenDamage.named("sag")
            .sag("middle left", List.of("front left", "rear left"), mm(8), mm(3));
    assertEquals(
        "sag: sag of middle left below front left and rear left 8.00 mm ± 3.00 mm", sag.toString());
    SeenDamage.Explanation explained = sag.under(WALL).scenes().get(0);
    assertFalse(explained.runs().isEmpty(), "masses above the rails turn them down at the middle");
  }

  @Test
  void bad_measurements_are_refused() {
    SeenDamage none = SeenDamage.named("nothing yet");
    assertEquals(
        "nothing was measured of nothing yet; state a set at least",
        assertThrows(ModelException.class, () -> none.under(LEFT)).getMessage());
    assertEquals(
        "sag of middle left is measured from the line between two features; there are 1",
        assertThrows(
                ModelException.class,
                () -> none.sag("middle left", List.of("front left"), mm(1), mm(1)))
            .getMessage());
    assertEquals(
        "tolerance of front left to rear left shorter 0 mm is not above zero",
        assertThrows(
                ModelException.class, () -> none.shorter("front left", "rear left", mm(1), mm(0)))
            .getMessage());
    SeenDamage some = none.shorter("front left", "rear left", mm(5), mm(1));
    assertEquals(
        "no hit was given that may explain nothing yet; give a collapse",
        assertThrows(ModelException.class, () -> some.under()).getMessage());
    SeenDamage lost = none.shorter("front left", "bumper", mm(5), mm(1));
    assertTrue(
        assertThrows(ModelException.class, () -> lost.under(LEFT)).getMessage().contains("bumper"));
  }
}
