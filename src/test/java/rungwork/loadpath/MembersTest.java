package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Verdict;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.joint.Parts;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.loadpath.SuspensionMember.RollBarLink;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.solve.AppliedWrench;

class MembersTest {
  private static final double NEWTON = 1e-6;
  private static final Stock TUBE = new Stock(Section.roundTube(mm(25), mm(2)), Parts.S355);

  private static RollBarLink link(double tension) {
    return RollBarLink.onArm(
            "roll bar link",
            Corners.mount("roll bar bush", 0, 500, 400),
            Corners.at(0, 500, 170),
            "lower arm")
        .pulling(kN(tension));
  }

  private static Corner barred(double tension) {
    List<SuspensionMember> members =
        new ArrayList<>(
            List.of(Corners.lower(), Corners.upper(), Corners.tieRod(), Corners.spring(0.6)));
    members.add(link(tension));
    return new Corner("front left", Corners.hub(), members);
  }

  private static Wrench onFrame(CornerForces forces) {
    Wrench sum = Wrench.ZERO;
    for (AppliedWrench load : forces.onFrame()) {
      sum = sum.plus(load.wrench().moved(load.at(), Corners.at(0, 600, 0)));
    }
    return sum;
  }

  @Test
  void a_roll_bars_link_takes_its_share_off_the_spring() {
    // Upright at half the arm: of 3000 N at the wheel the spring takes (3000 − 0.5 · 1000) / 0.6.
    CornerForces forces = barred(-1).under("roll", Wrench.force(0, 0, 3000));
    assertEquals(-2500 / 0.6, forces.along("spring"), NEWTON);
    assertEquals(-1000, forces.along("roll bar link"), NEWTON);
    assertEquals(1000, forces.on("roll bar bush").get(0).wrench().fz(), NEWTON);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void a_stated_force_keeps_the_balance_with_the_ground(long seed) {
    Random random = new Random(seed);
    Wrench tyre =
        new Wrench(
            2000 * random.nextGaussian(),
            2000 * random.nextGaussian(),
            2000 * random.nextGaussian(),
            0,
            0,
            30 * random.nextGaussian());
    Wrench left =
        onFrame(barred(5 * random.nextGaussian()).under("random", tyre)).plus(tyre.times(-1));
    for (double rest :
        new double[] {left.fx(), left.fy(), left.fz(), left.mx(), left.my(), left.mz()}) {
      assertEquals(0, rest, 1e-6, "seed " + seed);
    }
  }

  @Test
  void without_a_force_a_roll_bars_link_changes_nothing() {
    Wrench tyre = Wrench.force(-500, 300, 3000);
    assertEquals(
        Corners.twoArms().under("roll", tyre).along("spring"),
        barred(0).under("roll", tyre).along("spring"),
        NEWTON);
  }

  @Test
  void an_arm_is_bent_where_its_spring_stands() {
    // 3000 N at the ball joint, 80 mm beyond the spring.
    CornerForces forces = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    Check bending = forces.strength("lower arm", TUBE, DesignFactor.ROAD).get(0);
    double modulus = TUBE.section().properties().wely();
    assertEquals(
        240 / modulus, bending.verdict().numbers().orElseThrow().demand(), 1e-6 * 240 / modulus);
    assertEquals(355e6 / 1.5, bending.verdict().numbers().orElseThrow().capacity(), 1);
  }

  @Test
  void what_stands_farther_out_on_the_arm_counts_where_the_spring_stands() {
    // The link's push of 1 kN at half the arm lies inside of the spring: no change there; at the
    // link itself 3000 N over 100 mm less the spring's push over 20 mm.
    CornerForces forces = barred(-1).under("roll", Wrench.force(0, 0, 3000));
    List<Check> checks = forces.strength("lower arm", TUBE, DesignFactor.NONE);
    assertEquals(2, checks.size());
    double modulus = TUBE.section().properties().wely();
    assertEquals(
        240 / modulus, checks.get(0).verdict().numbers().orElseThrow().demand(), 1e-6 / modulus);
    double atLink = 3000 * 0.1 - 2500 / 0.6 * 0.02;
    assertEquals(
        atLink / modulus, checks.get(1).verdict().numbers().orElseThrow().demand(), 1e-6 / modulus);
  }

  @Test
  void a_pushed_bar_is_asked_for_buckling_and_a_pulled_one_is_not() {
    CornerForces bump = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    assertEquals(
        List.of("pull or push along the bar", "buckling of the bar"),
        bump.strength("spring", TUBE, DesignFactor.ROAD).stream().map(Check::what).toList());
    CornerForces droop = Corners.twoArms().under("droop", Wrench.force(0, 0, -500));
    assertEquals(
        List.of("pull or push along the bar"),
        droop.strength("spring", TUBE, DesignFactor.ROAD).stream().map(Check::what).toList());
  }

  @Test
  void a_bar_of_unknown_strength_is_not_checked() {
    Stock plain = new Stock(TUBE.section(), Material.named("A513 electric-welded"));
    CornerForces bump = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    for (String part : List.of("spring", "lower arm")) {
      Check check = bump.strength(part, plain, DesignFactor.ROAD).get(0);
      assertTrue(check.verdict() instanceof Verdict.NotChecked, part);
    }
  }

  /** Two lower links, one upper link, a rod across, two springs: 1200 mm of track. */
  @Test
  void an_axle_braked_at_both_wheels_pushes_its_upper_link_and_pulls_the_lower_ones() {
    // Moments about the lower links' height: 2000 N at 200 mm below, the upper link 200 mm above.
    CornerForces forces =
        Axles.rear().under("braking", Wrench.force(-1000, 0, 0), Wrench.force(-1000, 0, 0));
    assertEquals(-2000, forces.along("upper link"), NEWTON);
    assertEquals(2000, forces.along("left link"), NEWTON);
    assertEquals(2000, forces.along("right link"), NEWTON);
  }

  @Test
  void a_bump_under_one_wheel_of_an_axle_rolls_it_against_both_springs() {
    CornerForces forces = Axles.rear().under("bump", Wrench.force(0, 0, 3000), Wrench.ZERO);
    assertEquals(-3000 * (0.5 + 0.6 / 0.9), forces.along("left spring"), NEWTON);
    assertEquals(-3000 * (0.5 - 0.6 / 0.9), forces.along("right spring"), NEWTON);
  }

  @Test
  void an_axle_without_its_rod_across_is_refused_by_its_own_name() {
    List<SuspensionMember> loose = new ArrayList<>(Axles.rear().members());
    loose.removeIf(member -> member.name().equals("rod across"));
    assertEquals(
        "nothing resists sideways movement of the axle of axle rear axle; add what holds it",
        assertThrows(
                ModelException.class,
                () -> new BeamAxle("rear axle", Axles.rear().left(), Axles.rear().right(), loose))
            .getMessage());
  }

  @Test
  void a_fourth_link_along_the_axle_is_more_than_statics_can_share() {
    List<SuspensionMember> five = new ArrayList<>(Axles.rear().members());
    five.add(
        Bar.toUpright(
            "second upper link",
            Corners.mount("second upper", -1600, 200, 400),
            Corners.at(-2000, 200, 400)));
    assertEquals(
        "axle rear axle has 7 unknown forces for 6 equations of equilibrium: statics cannot say"
            + " how they share; take members out",
        assertThrows(
                ModelException.class,
                () -> new BeamAxle("rear axle", Axles.rear().left(), Axles.rear().right(), five))
            .getMessage());
  }

  @Test
  void a_steering_gear_hands_its_tie_rods_to_two_mounts_by_the_lever() {
    SteeringGear gear =
        new SteeringGear(
            "rack",
            Corners.mount("left clamp", 0, 200, 300),
            Corners.mount("right clamp", 0, -200, 300));
    MountForce end =
        new MountForce(Corners.mount("left end", 0, 300, 300), "kerb", Wrench.force(400, -3000, 0));
    List<MountForce> left = gear.on("left clamp", List.of(end));
    assertEquals(2, left.size());
    assertEquals(500, left.get(0).wrench().fx(), NEWTON);
    assertEquals(0, left.get(0).wrench().fy(), NEWTON);
    assertEquals(-3000, left.get(1).wrench().fy(), NEWTON);
    assertEquals(-100, gear.on("right clamp", List.of(end)).get(0).wrench().fx(), NEWTON);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void both_mounts_of_a_gear_together_do_what_its_tie_rods_do(long seed) {
    Random random = new Random(seed);
    SteeringGear gear =
        new SteeringGear(
            "rack",
            Corners.mount("left clamp", 20, 200, 300),
            Corners.mount("right clamp", -10, -180, 320));
    List<MountForce> ends = new ArrayList<>();
    Wrench asked = Wrench.ZERO;
    for (int i = 0; i < 2; i++) {
      Wrench push =
          Wrench.force(
              1000 * random.nextGaussian(),
              1000 * random.nextGaussian(),
              1000 * random.nextGaussian());
      var end = Corners.mount("end " + i, 50 * random.nextDouble(), 300 - 600 * i, 310);
      ends.add(new MountForce(end, "random", push));
      asked = asked.plus(push.moved(end.at(), Corners.at(0, 0, 0)));
    }
    // One takes the whole thrust, the other none.
    MountForce one = gear.on("left clamp", ends).get(1);
    MountForce other = gear.on("right clamp", ends).get(0);
    Wrench sum =
        one.wrench()
            .moved(one.mount().at(), Corners.at(0, 0, 0))
            .plus(other.wrench().moved(other.mount().at(), Corners.at(0, 0, 0)));
    Wrench left = sum.plus(asked.times(-1));
    for (double rest :
        new double[] {left.fx(), left.fy(), left.fz(), left.mx(), left.my(), left.mz()}) {
      assertEquals(0, rest, 1e-6, "seed " + seed);
    }
  }

  private static Brace brace() {
    return new Brace(
        "brace", Corners.mount("fore", 200, 400, 200), Corners.mount("aft", -200, 400, 200), TUBE);
  }

  @Test
  void a_brace_shares_like_springs_in_a_row_beside_a_spring() {
    double own = brace().stiffness();
    // A far mount as stiff as the tube halves its stiffness; beside an equal near mount: a third.
    assertEquals(1.0 / 3, brace().share(own, own), 1e-12);
    MountForce push = new MountForce(brace().near(), "braking", Wrench.force(-3000, 500, 100));
    Brace.Shared shared = brace().under(push, Npmm(own / 1e3), Npmm(own / 1e3));
    assertEquals(1000, shared.inBrace() * -1, NEWTON);
    assertEquals(-2000, shared.onNear().wrench().fx(), NEWTON);
    assertEquals(500, shared.onNear().wrench().fy(), NEWTON);
    assertEquals(-1000, shared.onFar().wrench().fx(), NEWTON);
    assertEquals(0, shared.onFar().wrench().fy(), NEWTON);
    assertEquals(
        List.of("pull or push along the bar", "buckling of the bar"),
        brace().strength(shared, DesignFactor.ROAD).stream().map(Check::what).toList());
  }

  @Test
  void a_brace_beside_a_thin_tab_takes_nearly_all_when_its_far_end_is_stiff() {
    double tab = Brace.sideways(Parts.tab());
    // 3·E·I/h³ with I = 40·5³/12 mm⁴ and h = 30 mm.
    assertEquals(3 * 210e3 * 40 * 125 / 12.0 / 27000 * 1e3, tab, 1);
    assertTrue(brace().share(tab, 1e9) > 0.85, "" + brace().share(tab, 1e9));
    assertTrue(brace().share(tab, tab) < 0.5);
  }

  @Test
  void a_brace_refuses_a_load_that_is_not_its_mounts() {
    MountForce elsewhere =
        new MountForce(Corners.mount("seat", 0, 0, 0), "braking", Wrench.force(1, 0, 0));
    assertEquals(
        "brace brace helps mount fore; the load pushes mount seat",
        assertThrows(ModelException.class, () -> brace().under(elsewhere, Npmm(1), Npmm(1)))
            .getMessage());
  }
}
