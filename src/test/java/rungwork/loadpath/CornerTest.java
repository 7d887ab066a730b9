package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.loadpath.Corners.at;
import static rungwork.loadpath.Corners.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.loadpath.SuspensionMember.Arm;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.loadpath.SuspensionMember.Strut;
import rungwork.loadpath.SuspensionMember.TrailingArm;
import rungwork.solve.AppliedWrench;
import rungwork.vehicle.Mount;

class CornerTest {
  private static final double NEWTON = 1e-6;

  private static Wrench on(CornerForces forces, String mount) {
    List<MountForce> on = forces.on(mount);
    assertEquals(1, on.size(), () -> "no thrust expected on " + mount + ": " + on);
    return on.get(0).wrench();
  }

  private static void assertForce(double x, double y, double z, Wrench actual) {
    assertAll(
        () -> assertEquals(x, actual.fx(), NEWTON, "forward"),
        () -> assertEquals(y, actual.fy(), NEWTON, "left"),
        () -> assertEquals(z, actual.fz(), NEWTON, "up"));
  }

  private static String refusal(Runnable making) {
    return assertThrows(ModelException.class, making::run).getMessage();
  }

  private static String refused(Hub hub, SuspensionMember... members) {
    return refusal(() -> new Corner("front left", hub, List.of(members)));
  }

  @Test
  void a_spring_at_60_percent_of_the_arm_turns_the_inner_pivots_load_round() {
    CornerForces forces = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    assertEquals(-5000, forces.along("spring"), NEWTON);
    assertEquals(0, forces.along("tie rod"), NEWTON);
    assertForce(0, 0, 5000, on(forces, "spring top"));
    assertForce(0, 0, -1000, on(forces, "lower fore"));
    assertForce(0, 0, -1000, on(forces, "lower aft"));
    assertForce(0, 0, 0, on(forces, "upper fore"));
  }

  @Test
  void an_arm_bends_where_its_spring_stands() {
    CornerForces forces = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    assertEquals(3000 * 0.08, forces.bending("lower arm"), NEWTON);
    assertEquals(0, forces.bending("upper arm"), NEWTON);
  }

  @Test
  void a_spring_at_the_ball_joint_leaves_the_arm_alone() {
    CornerForces forces = Corners.twoArms(Corners.hub(), 1).under("bump", Wrench.force(0, 0, 3000));
    assertEquals(-3000, forces.along("spring"), NEWTON);
    assertForce(0, 0, 0, on(forces, "lower fore"));
  }

  @Test
  void thrust_along_the_axis_is_asked_of_each_pivot_alone() {
    CornerForces forces = Corners.twoArms().under("braking", Wrench.force(-2000, 0, 0));
    double side = 3700 * 0.2 / 0.3;
    List<MountForce> fore = forces.on("lower fore");
    List<MountForce> aft = forces.on("lower aft");
    assertEquals("braking, thrust on the other pivot", fore.get(0).loadCase());
    assertEquals("braking, thrust on this pivot", fore.get(1).loadCase());
    assertForce(0, side, 0, fore.get(0).wrench());
    assertForce(-3700, side, 0, fore.get(1).wrench());
    assertForce(0, -side, 0, aft.get(0).wrench());
    assertForce(-3700, -side, 0, aft.get(1).wrench());
    assertEquals(1700, forces.on("upper fore").get(1).wrench().fx(), NEWTON);
  }

  @Test
  void an_inboard_brake_leaves_its_moment_to_the_frame() {
    CornerForces forces =
        Corners.twoArms(Corners.inboard(), 0.6).under("braking", Wrench.force(-2000, 0, 0));
    assertEquals(-1000, forces.on("lower fore").get(1).wrench().fx(), NEWTON);
    assertEquals(-1000, forces.on("upper fore").get(1).wrench().fx(), NEWTON);
    List<AppliedWrench> loads = forces.onFrame();
    AppliedWrench brake = loads.get(loads.size() - 1);
    assertEquals("front left inboard brake", brake.name());
    assertEquals(List.of("gearbox"), brake.carriers());
    assertEquals(2000 * 0.27, brake.wrench().my(), NEWTON);
  }

  @Test
  void an_aligning_moment_goes_to_the_tie_rod() {
    CornerForces forces = Corners.twoArms().under("turning", Wrench.moment(0, 0, 120));
    assertEquals(1000, Math.abs(forces.along("tie rod")), NEWTON);
    assertForce(0, -1000, 0, on(forces, "rack"));
  }

  @Test
  void a_strut_takes_side_force_at_its_top() {
    CornerForces forces = Corners.strut().under("cornering", Wrench.force(0, 1000, 0));
    double top = 1000 * 0.17 / 0.6;
    assertForce(0, -top, 0, on(forces, "strut top"));
    assertForce(0, (1000 + top) / 2, 0, on(forces, "lower fore"));
  }

  @Test
  void a_trailing_arm_takes_a_bump_by_its_pivots_and_spring() {
    CornerForces forces = Corners.trailingArm().under("bump", Wrench.force(0, 0, 3000));
    assertEquals(-4000, forces.along("spring"), NEWTON);
    double outer = on(forces, "outer pivot").fz();
    double inner = on(forces, "inner pivot").fz();
    assertEquals(-1000, outer + inner, NEWTON);
    assertEquals(3000 * 0.6 - 4000 * 0.6, outer * 0.5 + inner * 0.3, NEWTON);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void mounts_do_to_the_frame_what_the_ground_does_to_the_tyre(long seed) {
    Random random = new Random(seed);
    for (Corner corner : crooked(random)) {
      Wrench tyre = anyWrench(random);
      Wrench sum = Wrench.ZERO;
      for (AppliedWrench load : corner.under("any", tyre).onFrame()) {
        sum = sum.plus(load.wrench().moved(load.at(), corner.hub().contact()));
      }
      assertSame(tyre, sum, "seed " + seed + ", " + corner.members());
    }
  }

  /** The ball joint's force has no moment about itself: what else an arm feels turns it not. */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void every_arm_is_in_balance_about_its_ball_joint(long seed) {
    Random random = new Random(seed);
    Corner corner = crooked(random).get(0);
    CornerForces forces = corner.under("any", anyWrench(random));
    Arm lower = (Arm) corner.member("lower arm");
    Bar spring = (Bar) corner.member("spring");
    double length = spring.end().distance(spring.mount().at());
    double pull = forces.along("spring") / length;
    Point end = spring.end();
    Point top = spring.mount().at();
    Wrench onArm =
        Wrench.force(
                pull * (top.x() - end.x()), pull * (top.y() - end.y()), pull * (top.z() - end.z()))
            .moved(end, lower.ball());
    for (AppliedWrench load : forces.onFrame()) {
      if (load.name().contains("lower")) {
        onArm = onArm.plus(load.wrench().times(-1).moved(load.at(), lower.ball()));
      }
    }
    double scale = Math.abs(forces.along("spring"));
    assertEquals(0, Math.abs(onArm.mx()) / scale, 1e-9, "seed " + seed);
    assertEquals(0, Math.abs(onArm.my()) / scale, 1e-9, "seed " + seed);
    assertEquals(0, Math.abs(onArm.mz()) / scale, 1e-9, "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33})
  void forces_are_linear_in_the_load(long seed) {
    Random random = new Random(seed);
    Corner corner = crooked(random).get(0);
    Wrench one = anyWrench(random);
    Wrench two = anyWrench(random);
    double sum = corner.under("sum", one.plus(two.times(3))).along("tie rod");
    double parts =
        corner.under("1", one).along("tie rod") + 3 * corner.under("2", two).along("tie rod");
    assertEquals(sum, parts, 1e-7 * (1 + Math.abs(sum)), "seed " + seed);
  }

  /** Forces are mirrored by turning over y; moments by turning over x and z. */
  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43})
  void the_right_corner_is_the_left_one_in_a_mirror(long seed) {
    Wrench tyre = anyWrench(new Random(seed));
    Wrench mirrored =
        new Wrench(tyre.fx(), -tyre.fy(), tyre.fz(), -tyre.mx(), tyre.my(), -tyre.mz());
    CornerForces left = corner(1).under("any", tyre);
    CornerForces right = corner(-1).under("any", mirrored);
    assertEquals(left.along("tie rod"), right.along("tie rod"), 1e-6, "seed " + seed);
    for (String mount : List.of("fore", "aft", "rack", "spring top")) {
      Wrench one = left.on(mount).get(0).wrench();
      Wrench other = right.on(mount).get(0).wrench();
      assertSame(
          new Wrench(one.fx(), -one.fy(), one.fz(), 0, 0, 0), other, mount + ", seed " + seed);
    }
  }

  /** Two arms on either side of the vehicle: 1 the left one, -1 the right one. */
  private static Corner corner(int side) {
    String rail = side > 0 ? "left rail" : "right rail";
    List<Mount> mounts = new ArrayList<>();
    double[][] at = {{150, 400, 170}, {-150, 400, 170}, {100, 400, 370}, {-100, 400, 370}};
    List<String> names = List.of("fore", "aft", "upper fore", "upper aft");
    for (int i = 0; i < at.length; i++) {
      mounts.add(new Mount(names.get(i), rail, Corners.at(at[i][0], side * at[i][1], at[i][2])));
    }
    return new Corner(
        "front",
        Hub.brakedInWheel(Corners.at(0, side * 620, 270), Corners.at(0, side * 620, 0)),
        List.of(
            new Arm("lower arm", mounts.get(0), mounts.get(1), Corners.at(0, side * 600, 170)),
            new Arm("upper arm", mounts.get(2), mounts.get(3), Corners.at(0, side * 590, 370)),
            Bar.toUpright(
                "tie rod",
                new Mount("rack", rail, Corners.at(-120, side * 400, 270)),
                Corners.at(-120, side * 580, 250)),
            new Bar(
                "spring",
                new Mount("spring top", rail, Corners.at(0, side * 500, 520)),
                Corners.at(0, side * 520, 170),
                "lower arm")));
  }

  @Test
  void a_wheel_that_can_steer_is_refused() {
    assertEquals(
        "nothing resists steering of the upright of corner front left; add what holds it",
        refused(Corners.hub(), Corners.lower(), Corners.upper(), Corners.spring(0.6)));
  }

  @Test
  void a_wheel_without_a_spring_is_refused() {
    assertEquals(
        "nothing resists rise and fall of the upright of corner front left; add what holds it",
        refused(Corners.hub(), Corners.lower(), Corners.upper(), Corners.tieRod()));
  }

  @Test
  void enough_members_in_the_wrong_place_are_refused_too() {
    Bar throughBalls = Bar.toUpright("tie rod", mount("rack", 0, 400, 270), at(0, 600, 270));
    assertEquals(
        "nothing resists steering of the upright of corner front left; add what holds it",
        refused(
            Corners.hub(), Corners.lower(), Corners.upper(), throughBalls, Corners.spring(0.6)));
  }

  @Test
  void a_spring_on_the_pivots_line_holds_no_arm() {
    assertEquals(
        "nothing resists rise and fall of the upright of corner front left; add what holds it",
        refused(
            Corners.hub(), Corners.lower(), Corners.upper(), Corners.tieRod(), Corners.spring(0)));
  }

  @Test
  void links_that_meet_in_a_point_are_refused() {
    List<SuspensionMember> links = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double angle = i * 1.1;
      links.add(
          Bar.toUpright(
              "link " + i,
              mount("m" + i, 300 * Math.cos(angle), 300, 200 + 150 * Math.sin(angle) + 10 * i),
              at(0, 600, 270)));
    }
    String message = refusal(() -> new Corner("front left", Corners.hub(), links));
    assertTrue(message.startsWith("nothing resists "), message);
    assertTrue(message.contains("of the upright"), message);
  }

  @Test
  void a_wheel_that_is_hardly_held_is_named() {
    Bar near = Bar.toUpright("tie rod", mount("rack", -8, 400, 270), at(-8, 600, 270));
    Corner corner =
        new Corner(
            "front left",
            Corners.hub(),
            List.of(Corners.lower(), Corners.upper(), near, Corners.spring(0.6)));
    String weakness = corner.weakness().orElseThrow();
    assertTrue(
        weakness.startsWith(
            "steering of the upright is hardly resisted: the members of corner front left take up"
                + " to "),
        weakness);
    assertEquals(Optional.empty(), Corners.twoArms().weakness());
  }

  @Test
  void more_members_than_equations_are_refused() {
    assertEquals(
        "corner front left has 19 unknown forces for 18 equations of equilibrium: statics cannot"
            + " say how they share; take members out",
        refused(
            Corners.hub(),
            Corners.lower(),
            Corners.upper(),
            Corners.tieRod(),
            Corners.spring(0.6),
            Bar.toUpright("more", mount("more inside", 0, 400, 270), at(0, 600, 270))));
  }

  @Test
  void members_are_asked_for_by_name() {
    CornerForces forces = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    assertEquals(
        "corner front left has no member rod; it has lower arm, upper arm, tie rod, spring",
        refusal(() -> forces.along("rod")));
    assertEquals(
        "lower arm of corner front left is no bar; ask for its mounts",
        refusal(() -> forces.along("lower arm")));
    assertEquals(
        "tie rod of corner front left is no arm", refusal(() -> forces.bending("tie rod")));
    assertEquals(
        "corner front left is not held by mount floor; it is held by lower fore, lower aft, upper"
            + " fore, upper aft, rack, spring top",
        refusal(() -> forces.on("floor")));
  }

  @Test
  void nonsense_is_refused_where_it_enters() {
    Mount mount = mount("a", 0, 400, 170);
    assertEquals(
        "the two ends of bar rod are 0 mm apart; they must be more than 0.1000 mm",
        refusal(() -> Bar.toUpright("rod", mount, mount.at())));
    assertEquals(
        "the two ends of arm arm are 0 mm apart; they must be more than 0.1000 mm",
        refusal(() -> new Arm("arm", mount, mount, at(0, 600, 170))));
    assertEquals(
        "the two ends of trailing arm arm are 0 mm apart; they must be more than 0.1000 mm",
        refusal(() -> new TrailingArm("arm", mount, mount)));
    assertEquals(
        "the two ends of strut strut are 0 mm apart; they must be more than 0.1000 mm",
        refusal(() -> new Strut("strut", mount, mount.at())));
    assertEquals(
        "height of the wheel's middle 0 mm is not above zero",
        refusal(() -> Hub.brakedInWheel(mount.at(), mount.at())));
    assertEquals(
        "an inboard brake is held by nothing; name what holds it",
        refusal(() -> Hub.brakedInboard(at(0, 600, 270), at(0, 600, 0))));
    assertEquals(
        "corner front left has no member; name what holds the wheel", refused(Corners.hub()));
  }

  @Test
  void names_must_tell_members_and_mounts_apart() {
    assertEquals(
        "corner front left has two bodies or members named tie rod",
        refused(Corners.hub(), Corners.tieRod(), Corners.tieRod()));
    Bar other = Bar.toUpright("other", mount("rack", 0, 0, 0), at(0, 600, 270));
    assertEquals(
        "corner front left has mount rack twice, or a member of its name",
        refused(Corners.hub(), Corners.tieRod(), other));
    Bar stray = new Bar("stray", mount("s", 0, 400, 170), at(0, 600, 270), "middle arm");
    assertEquals(
        "bar stray of corner front left holds middle arm, which is neither the upright nor an arm",
        refused(Corners.hub(), Corners.tieRod(), stray));
  }

  @Test
  void a_card_lists_bars_and_mounts() {
    String card = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000)).toString();
    assertTrue(card.startsWith("Corner front left under bump:\n"), card);
    assertTrue(card.contains("\n  spring 5.000 kN compression\n"), card);
    assertTrue(card.contains("\n  tie rod 0 kN tension\n"), card);
    assertTrue(
        card.contains("\n  on lower fore (bump): forward 0 kN, left 0 kN, up -1.000 kN\n"), card);
  }

  /** The corners that can be found by hand, every point moved by up to 30 mm. */
  private static List<Corner> crooked(Random random) {
    return List.of(
        moved(Corners.twoArms(), random),
        moved(Corners.twoArms(Corners.inboard(), 0.6), random),
        moved(Corners.strut(), random),
        moved(Corners.trailingArm(), random));
  }

  private static Corner moved(Corner corner, Random random) {
    List<SuspensionMember> members =
        corner.members().stream().map(member -> moved(member, random)).toList();
    return new Corner(corner.name(), corner.hub(), members);
  }

  private static SuspensionMember moved(SuspensionMember member, Random random) {
    if (member instanceof Bar bar) {
      return new Bar(bar.name(), moved(bar.mount(), random), moved(bar.end(), random), bar.body());
    }
    if (member instanceof Arm arm) {
      return new Arm(
          arm.name(),
          moved(arm.first(), random),
          moved(arm.second(), random),
          moved(arm.ball(), random));
    }
    if (member instanceof TrailingArm arm) {
      return new TrailingArm(arm.name(), moved(arm.first(), random), moved(arm.second(), random));
    }
    Strut strut = (Strut) member;
    return new Strut(strut.name(), moved(strut.top(), random), moved(strut.foot(), random));
  }

  private static Mount moved(Mount mount, Random random) {
    return new Mount(mount.name(), mount.member(), moved(mount.at(), random));
  }

  private static Point moved(Point at, Random random) {
    return at.plus(some(random, 0.03), some(random, 0.03), some(random, 0.03));
  }

  private static Wrench anyWrench(Random random) {
    return new Wrench(
        some(random, 5000),
        some(random, 5000),
        some(random, 5000),
        some(random, 100),
        some(random, 100),
        some(random, 100));
  }

  private static double some(Random random, double most) {
    return most * (2 * random.nextDouble() - 1);
  }

  private static void assertSame(Wrench expected, Wrench actual, String what) {
    Wrench left = actual.plus(expected.times(-1));
    double[] parts = {left.fx(), left.fy(), left.fz(), left.mx(), left.my(), left.mz()};
    for (double part : parts) {
      assertEquals(0, part, NEWTON, what);
    }
  }
}
