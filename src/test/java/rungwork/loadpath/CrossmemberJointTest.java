package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwork.check.Check;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.FatigueScreening;
import rungwork.joint.Parts;
import rungwork.joint.PlateOnTube;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

class CrossmemberJointTest {
  private static final Event TWIST = Event.bumpOneWheel(Axle.FRONT, Side.LEFT);
  private static final Event BRAKING = Event.braking(g(1));
  private static final Ladder LADDER = ladder();
  private static final Assessment ASSESSMENT =
      Assessment.of(vehicle(), LADDER, List.of(TWIST, BRAKING));

  private static Ladder ladder() {
    Stock tube = new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Parts.S355);
    return Ladder.named("test")
        .level(mm(300))
        .rails(mm(400), mm(-2300), mm(700), tube)
        .crossmember("front", mm(300), tube)
        .crossmember("middle", mm(-900), tube)
        .crossmember("rear", mm(-2200), tube)
        .mount("left arm", Side.LEFT, Corners.at(0, 520, 300))
        .mount("right arm", Side.RIGHT, Corners.at(0, -520, 300))
        .mount("rear left arm", Side.LEFT, Corners.at(-2000, 520, 300))
        .mount("rear right arm", Side.RIGHT, Corners.at(-2000, -520, 300))
        .build();
  }

  private static Vehicle vehicle() {
    return Vehicle.named("test")
        .wheelbase(mm(2000))
        .track(mm(1200), mm(1200))
        .frontRollShare(0.5)
        .wheel(Axle.FRONT, Side.LEFT, "left arm")
        .wheel(Axle.FRONT, Side.RIGHT, "right arm")
        .wheel(Axle.REAR, Side.LEFT, "rear left arm")
        .wheel(Axle.REAR, Side.RIGHT, "rear right arm")
        .mass("ahead", kg(300), Corners.at(-200, 100, 450), "front left", "front right")
        .mass("behind", kg(300), Corners.at(-1800, 0, 450), "rear left", "rear right")
        .build();
  }

  private static MountForce rigid(Event event, Side side) {
    return MountForce.ofCrossmember(ASSESSMENT, event, "middle", side).stream()
        .filter(force -> force.loadCase().equals(event.name() + ", " + Joints.RIGID))
        .findFirst()
        .orElseThrow();
  }

  /** What the rail's own forces change by across the joint, in vehicle axes. */
  private static Wrench jump(Event event, Side side) {
    Response response = ASSESSMENT.response(event, Joints.RIGID);
    String node = LADDER.node("middle " + side.word()).name();
    List<Beam> rail =
        response.frame().beams().stream()
            .filter(beam -> LADDER.railFeatures(side).contains(beam.start()))
            .filter(beam -> LADDER.railFeatures(side).contains(beam.end()))
            .toList();
    String before = only(rail, beam -> beam.end().equals(node));
    String after = only(rail, beam -> beam.start().equals(node));
    Wrench there = axes(response.forces(before).at(1), side);
    Wrench beyond = axes(response.forces(after).at(0), side);
    return there.plus(beyond.times(-1));
  }

  private static String only(List<Beam> beams, Predicate<Beam> which) {
    return beams.stream().filter(which).findFirst().orElseThrow().name();
  }

  /** The left rail's beams run forward, +y to the left; the right rail's rearward, to the right. */
  private static Wrench axes(InternalForces f, Side side) {
    double s = side == Side.LEFT ? 1 : -1;
    return new Wrench(s * f.n(), s * f.vy(), f.vz(), s * f.t(), s * f.my(), f.mz());
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void a_crossmember_pushes_a_rail_with_what_the_rails_own_forces_change_by(Side side) {
    for (Event event : List.of(TWIST, BRAKING)) {
      Wrench jump = jump(event, side);
      Wrench pushed = rigid(event, side).wrench();
      double[] expected = {jump.fx(), jump.fy(), jump.fz(), jump.mx(), jump.my(), jump.mz()};
      double[] actual = {
        pushed.fx(), pushed.fy(), pushed.fz(), pushed.mx(), pushed.my(), pushed.mz()
      };
      for (int i = 0; i < 6; i++) {
        assertEquals(expected[i], actual[i], 1e-6, event.name() + " " + i);
      }
    }
  }

  /**
   * The middle crossmember, 80 high and 40 wide, welded all round to the left rail's inner face.
   */
  private static MountChain joint() {
    Face face = new Face(Corners.at(-900, 380, 300), Face.Direction.FORWARD, Face.Direction.RIGHT);
    WeldGroup weld =
        new WeldGroup(
            "weld",
            List.of(WeldGroup.Run.around(mm(40), mm(80))),
            WeldGroup.Seam.fillet(mm(3), MPa(490)),
            WeldGroup.Parent.of(Parts.S355, mm(3)));
    PlateOnTube wall =
        PlateOnTube.of(
            "rail wall",
            TubeWall.of(Parts.S355, mm(80), mm(40), mm(3)),
            PlateOnTube.Foot.central(PlateOnTube.Way.PATCH, mm(40), mm(80)));
    return new MountChain("middle crossmember at left rail", face, List.of(weld, wall));
  }

  @Test
  void its_weld_takes_all_six_forces_and_its_wall_says_what_it_leaves_open() {
    List<MountForce> forces = MountForce.ofCrossmember(ASSESSMENT, TWIST, "middle", Side.LEFT);
    assertEquals(LADDER.joints().size(), forces.size());
    ChainSheet sheet = joint().under(forces, Factors.ROAD, List.of());
    assertTrue(sheet.sheet().about("weld").governing().isPresent());
    Check twisted =
        sheet.sheet().notChecked().stream()
            .filter(check -> check.what().equals("twisting of the foot on the face"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        "EN 1993-1-8, 7.5 gives no resistance of a face to a foot that is twisted on it; the weld"
            + " is asked for the torque, the wall is not",
        twisted.verdict().reason(Units.METRIC));
  }

  @Test
  void each_of_the_six_forces_loads_the_weld() {
    WeldGroup weld = (WeldGroup) joint().parts().get(0);
    for (int i = 0; i < 6; i++) {
      double[] w = new double[6];
      w[i] = 100;
      Wrench one = new Wrench(w[0], w[1], w[2], w[3], w[4], w[5]);
      MountForce force = new MountForce(rigid(TWIST, Side.LEFT).mount(), "one", one);
      assertTrue(
          weld.largestForce(joint().face().load(force, Factors.UNFACTORED)) > 0, "part " + i);
    }
  }

  @Test
  void its_weld_is_screened_for_repeated_load() {
    WeldGroup weld = (WeldGroup) joint().parts().get(0);
    FaceLoad standing = joint().face().load(rigid(BRAKING, Side.LEFT), Factors.UNFACTORED);
    FaceLoad twisted = joint().face().load(rigid(TWIST, Side.LEFT), Factors.UNFACTORED);
    double range = weld.rootRange(standing, twisted);
    Check screened =
        new FatigueScreening(
                "middle joint",
                FatigueScreening.Detail.FILLET_ROOT,
                List.of(new FatigueScreening.Swings("twists", range, 2e6)),
                1)
            .check();
    assertEquals(range, screened.verdict().numbers().orElseThrow().demand(), 1e-6 * range);
  }
}
