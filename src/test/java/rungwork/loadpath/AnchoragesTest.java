package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.Bolt;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.Joint;
import rungwork.joint.Parts;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.Anchorages.Pull;
import rungwork.loadpath.Seating.Belt;
import rungwork.loadpath.Seating.End;
import rungwork.solve.AppliedWrench;

class AnchoragesTest {
  private static final double NEWTON = 1e-6;

  private static ChainSheet under(Anchorages anchorages, List<Pull> scenes) {
    WeldGroup weld =
        new WeldGroup(
            "weld",
            WeldGroup.Run.bothSides(mm(60), mm(6)),
            WeldGroup.Seam.fillet(mm(5), MPa(490)),
            WeldGroup.Parent.of(Parts.S355, mm(5)));
    Face face = new Face(Belts.at(-1200, 500, 300), Face.Direction.FORWARD, Face.Direction.UP);
    MountChain chain = new MountChain("driver outer lap", face, List.of(weld));
    return anchorages.under(chain, scenes);
  }

  @Test
  void a_lap_belt_at_45_degrees_lifts_the_floor_as_hard_as_it_pulls() {
    Anchorages anchorages = new Anchorages(List.of(Belts.lapOnly("driver", 500)));
    Wrench outer = anchorages.on("driver outer lap", Pull.CFR_571).wrench();
    double half = 5000 * 4.4482216152605 / 2;
    assertEquals(half, outer.fx(), NEWTON);
    assertEquals(half, outer.fz(), NEWTON);
  }

  @Test
  void the_steeper_the_lap_belt_the_more_it_pulls() {
    Belt flat = Belts.lap("driver", 500, 200, 100);
    Belt steep = Belts.lap("driver", 500, 100, 300);
    assertTrue(steep.tension(1000) > 1.4 * flat.tension(1000));
  }

  @Test
  void a_loop_that_turns_the_belt_straight_back_takes_twice_its_tension() {
    End loop =
        End.loop(
            Belts.mount("loop", -1400, 600, 1000),
            Belts.at(-1300, 600, 1000),
            Belts.at(-1000, 600, 1000));
    End end = End.fixed(Belts.mount("buckle", -1400, 300, 300), Belts.at(-1300, 300, 300));
    assertEquals(2, loop.pull().getNorm(), 1e-12);
    assertEquals(1, end.pull().getNorm(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void all_mounts_together_take_what_persons_and_seats_pull(long seed) {
    Random random = new Random(seed);
    Pull pull =
        Pull.scene(
            "scene",
            kN(10 * random.nextDouble()),
            kN(10 * random.nextDouble()),
            40 * random.nextDouble());
    Anchorages anchorages =
        new Anchorages(List.of(Belts.lapOnly("driver", 500), Belts.lapOnly("passenger", -100)));
    double forward =
        anchorages.onFrame(pull).stream().map(AppliedWrench::wrench).mapToDouble(Wrench::fx).sum();
    double expected = 2 * (pull.person().onLapAlone() + pull.chair() * 9.80665 * 12);
    assertEquals(expected, forward, 1e-9 * expected);
  }

  @Test
  void both_seats_pull_at_an_anchorage_that_they_share() {
    Seating driver = Belts.lapOnly("driver", 500);
    Seating twin = Seating.lapBelt("passenger", driver.lap(), Belts.chair("passenger", -100));
    Wrench one = new Anchorages(List.of(driver)).on("driver outer lap", Pull.UN_R14).wrench();
    Wrench two = new Anchorages(List.of(driver, twin)).on("driver outer lap", Pull.UN_R14).wrench();
    assertEquals(2 * one.fx(), two.fx(), NEWTON);
    assertEquals(2 * one.fz(), two.fz(), NEWTON);
  }

  @Test
  void belts_on_the_seat_pull_at_the_seats_mounts() {
    Seating onFloor = Belts.lapOnly("driver", 500);
    Seating onChair = Seating.lapBelt("driver", onFloor.lap(), onFloor.chair().carryingBelts());
    Anchorages anchorages = new Anchorages(List.of(onChair));
    double forward =
        anchorages.onFrame(Pull.CFR_571).stream().mapToDouble(w -> w.wrench().fx()).sum();
    assertEquals(5000 * 4.4482216152605 + 20 * 9.80665 * 12, forward, NEWTON);
    Wrench rear = anchorages.on("driver seat rear", Pull.CFR_571).wrench();
    assertTrue(rear.fz() > 0, "the rear mount is lifted: " + rear);
    assertEquals(
        "no belt and no seat pulls at mount driver outer lap; they pull at driver seat front,"
            + " driver seat rear",
        assertThrows(ModelException.class, () -> anchorages.on("driver outer lap", Pull.CFR_571))
            .getMessage());
  }

  @Test
  void published_loads_and_scenes_stand_on_one_sheet_and_the_worst_governs() {
    Anchorages anchorages = new Anchorages(List.of(Belts.lapOnly("driver", 500)));
    Pull mild = Pull.scene("mild scene", kN(5), kN(0), 20);
    Pull hard = Pull.scene("hard scene", kN(60), kN(0), 20);
    Check mildest = under(anchorages, List.of(mild)).sheet().governing().orElseThrow();
    Check hardest = under(anchorages, List.of(hard)).sheet().governing().orElseThrow();
    assertEquals(Pull.UN_R14.name(), mildest.loadCase());
    assertEquals("hard scene", hardest.loadCase());
  }

  @Test
  void without_a_scene_the_sheet_says_that_test_loads_are_not_all() {
    Anchorages anchorages = new Anchorages(List.of(Belts.lapOnly("driver", 500)));
    ChainSheet alone = under(anchorages, List.of());
    String open = "a scene harder than the published test loads: none was given";
    assertTrue(alone.sheet().verdictLine().contains(open), alone.sheet().verdictLine());
    assertTrue(alone.sheet().cautions().contains(Caution.IMPACT));
    assertTrue(
        !under(anchorages, List.of(Pull.scene("scene", kN(5), kN(0), 20)))
            .sheet()
            .notMade()
            .contains(open));
  }

  @Test
  void a_belt_that_leads_forward_holds_nobody() {
    End ahead = End.fixed(Belts.mount("ahead", -900, 500, 300), Belts.at(-1000, 500, 500));
    assertEquals(
        "belt odd does not hold its person back: its ends take -0.8944 of its tension rearwards;"
            + " put an anchorage behind the body",
        assertThrows(ModelException.class, () -> new Belt("odd", ahead, ahead)).getMessage());
  }

  @Test
  void a_harness_tab_has_its_areas_and_never_bends() {
    Tab tab =
        new Tab(
            "harness tab",
            Parts.S355,
            Tab.Plate.single(mm(3), mm(30), mm(20)),
            Tab.Eye.of(Bolt.of("M10", "8.8"), mm(10.5), mm(15)));
    Joint rules = tab.asHarnessTab();
    FaceLoad inLine = new FaceLoad("belt", Wrench.force(0, 0, 1e4), tab.hole(), Factors.UNFACTORED);
    List<Check> checks = rules.checks(inLine);
    assertEquals(3, checks.size());
    assertEquals(
        60 / (19.5 * 3),
        Parts.named(checks, "harness tab, area in tension").utilisation().orElseThrow(),
        1e-9);
    assertEquals(
        60 / (2 * 9.75 * 3),
        Parts.named(checks, "harness tab, area in shear").utilisation().orElseThrow(),
        1e-9);
    FaceLoad bent =
        new FaceLoad("belt", Wrench.force(0, 1e4, 1e4), new Point(0, 0, 0.02), Factors.UNFACTORED);
    assertTrue(
        Parts.named(rules.checks(bent), "harness tab, in line with its belt").verdict()
            instanceof Verdict.NotChecked);
  }
}
