package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.joint.Parts;
import rungwork.loadpath.SuspensionMember.Arm;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.section.Section;
import rungwork.solve.AppliedWrench;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

class SuspensionTest {
  private static final Ladder LADDER = ladder();
  private static final Vehicle VEHICLE = vehicle();
  private static final Corner CORNER = corner("front left", mm(600));
  private static final Suspension SUSPENSION = Suspension.of(VEHICLE, LADDER, List.of(CORNER));
  private static final double NEWTON = 1e-6;

  private static Ladder ladder() {
    Stock tube = new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Parts.S355);
    return Ladder.named("test")
        .level(mm(300))
        .rails(mm(400), mm(-2300), mm(700), tube)
        .crossmember("front", mm(300), tube)
        .crossmember("rear", mm(-2200), tube)
        .mount("lower fore", Side.LEFT, Corners.at(150, 400, 170))
        .mount("lower aft", Side.LEFT, Corners.at(-150, 400, 170))
        .mount("upper fore", Side.LEFT, Corners.at(100, 400, 370))
        .mount("upper aft", Side.LEFT, Corners.at(-100, 400, 370))
        .mount("rack", Side.LEFT, Corners.at(-120, 400, 270))
        .mount("spring top", Side.LEFT, Corners.at(0, 520, 520))
        .mount("right", Side.RIGHT, Corners.at(0, -400, 170))
        .mount("rear left arm", Side.LEFT, Corners.at(-2000, 400, 170))
        .mount("rear right arm", Side.RIGHT, Corners.at(-2000, -400, 170))
        .build();
  }

  private static Vehicle vehicle() {
    return Vehicle.named("test")
        .wheelbase(mm(2000))
        .track(mm(1200), mm(1200))
        .frontRollShare(0.5)
        .wheel(Axle.FRONT, Side.LEFT, "lower fore", "lower aft", "spring top")
        .wheel(Axle.FRONT, Side.RIGHT, "right")
        .wheel(Axle.REAR, Side.LEFT, "rear left arm")
        .wheel(Axle.REAR, Side.RIGHT, "rear right arm")
        .mass("ahead", kg(300), Corners.at(-200, 0, 450), "front left", "front right")
        .mass("behind", kg(300), Corners.at(-1800, 0, 450), "rear left", "rear right")
        .build();
  }

  private static Mount mount(String name) {
    return LADDER.mounts().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  private static Corner corner(
      String name, javax.measure.Quantity<javax.measure.quantity.Length> y) {
    Hub hub = Hub.brakedInWheel(Point.at(mm(0), y, mm(270)), Point.at(mm(0), y, mm(0)));
    return new Corner(
        name,
        hub,
        List.of(
            new Arm("lower arm", mount("lower fore"), mount("lower aft"), Corners.at(0, 600, 170)),
            new Arm("upper arm", mount("upper fore"), mount("upper aft"), Corners.at(0, 600, 370)),
            Bar.toUpright("tie rod", mount("rack"), Corners.at(-120, 580, 270)),
            new Bar("spring", mount("spring top"), Corners.at(0, 520, 170), "lower arm")));
  }

  private static Wrench ground(WheelCase wheelCase, Axle axle, Side side) {
    return wheelCase.ground().on(VEHICLE, LADDER, VEHICLE.wheel(axle, side));
  }

  private static double standing(Axle axle, Side side) {
    return VEHICLE.wheelLoads().get(VEHICLE.wheel(axle, side));
  }

  private static Wrench total(List<AppliedWrench> loads) {
    Wrench sum = Wrench.ZERO;
    for (AppliedWrench load : loads) {
      sum = sum.plus(load.wrench().moved(load.at(), Corners.at(0, 0, 0)));
    }
    return sum;
  }

  static List<Event> driving() {
    return List.of(
        Event.standing(),
        Event.bumpBothWheels(Axle.FRONT),
        Event.bumpOneWheel(Axle.FRONT, Side.LEFT),
        Event.braking(g(0.8)),
        Event.cornering(Side.RIGHT, g(0.7)),
        Event.potholeBraking(Axle.FRONT, Side.LEFT),
        Event.kerb(Axle.FRONT, Side.LEFT, 1.5),
        Event.brakingInTurn(Side.LEFT, g(0.5), g(0.5)));
  }

  @ParameterizedTest
  @MethodSource("driving")
  void through_its_links_an_event_does_the_same_to_the_vehicle_as_a_whole(Event event) {
    Wrench before = total(event.scene().on(VEHICLE, LADDER));
    Wrench after = total(SUSPENSION.through(event).scene().on(VEHICLE, LADDER));
    assertEquals(before.fx(), after.fx(), NEWTON);
    assertEquals(before.fy(), after.fy(), NEWTON);
    assertEquals(before.fz(), after.fz(), NEWTON);
    assertEquals(before.mx(), after.mx(), NEWTON);
    assertEquals(before.my(), after.my(), NEWTON);
    assertEquals(before.mz(), after.mz(), NEWTON);
  }

  @Test
  void the_ladder_takes_the_links_forces_at_their_mounts() {
    Event bump = Event.bumpBothWheels(Axle.FRONT);
    List<AppliedWrench> loads = SUSPENSION.through(bump).scene().on(VEHICLE, LADDER);
    double wheel = 3 * standing(Axle.FRONT, Side.LEFT);
    AppliedWrench spring =
        loads.stream()
            .filter(l -> l.carriers().equals(List.of("spring top")))
            .findFirst()
            .orElseThrow();
    assertEquals(wheel / 0.6, spring.wrench().fz(), NEWTON);
    assertEquals(3, loads.stream().filter(l -> l.name().startsWith("ground under")).count());
  }

  @Test
  void an_event_through_links_says_so_instead_of_equal_springs() {
    Event bump = Event.bumpBothWheels(Axle.FRONT);
    List<String> assumptions = SUSPENSION.through(bump).assumptions();
    assertTrue(assumptions.stream().anyMatch(a -> a.contains("through its links by equilibrium")));
    assertFalse(
        assumptions.stream().anyMatch(a -> a.contains("the links between are not modelled")));
    assertEquals(bump.assumptions().size(), assumptions.size());
  }

  @Test
  void an_impact_does_not_come_through_a_wheel() {
    Event hit = Event.frontalImpact(g(5), Event.Hit.FULL_WIDTH);
    assertSame(hit, SUSPENSION.through(hit));
  }

  @Test
  void the_ladder_is_assessed_with_the_same_model_and_answers_otherwise_than_on_equal_springs() {
    Event bump = Event.bumpBothWheels(Axle.FRONT);
    double springs = worst(bump);
    double links = worst(SUSPENSION.through(bump));
    assertTrue(links > 0);
    assertNotEquals(springs, links, 1e-3);
  }

  private static double worst(Event event) {
    Assessment assessment = Assessment.of(VEHICLE, LADDER, List.of(event));
    return assessment.sheet().governing().orElseThrow().utilisation().orElseThrow();
  }

  @Test
  void a_wheels_part_in_an_event_is_what_the_event_pushes_there() {
    WheelCase bump = WheelCase.of(Event.bumpBothWheels(Axle.FRONT));
    assertEquals(
        3 * standing(Axle.FRONT, Side.LEFT), ground(bump, Axle.FRONT, Side.LEFT).fz(), NEWTON);
    assertEquals(standing(Axle.REAR, Side.LEFT), ground(bump, Axle.REAR, Side.LEFT).fz(), NEWTON);
    CornerForces forces = SUSPENSION.under(Axle.FRONT, Side.LEFT, bump);
    assertEquals(-3 * standing(Axle.FRONT, Side.LEFT) / 0.6, forces.along("spring"), NEWTON);
    assertEquals(bump.name(), forces.loadCase());
  }

  @Test
  void braking_through_a_pothole_takes_twice_and_1_1_times_the_standing_load() {
    double load = standing(Axle.FRONT, Side.LEFT);
    Wrench wrench = ground(WheelCase.potholeBraking(), Axle.FRONT, Side.LEFT);
    assertEquals(Wrench.force(-1.1 * load, 0, 2 * load), wrench);
  }

  @Test
  void a_kerb_pushes_a_wheel_inwards_with_its_axle_on_it() {
    double axle = VEHICLE.axleLoads().get(Axle.FRONT);
    double push = 1.5 * 1.2 / (2 * VEHICLE.centreOfMass().z()) * axle;
    Wrench left = ground(WheelCase.kerb(1.5), Axle.FRONT, Side.LEFT);
    Wrench right = ground(WheelCase.kerb(1.5), Axle.FRONT, Side.RIGHT);
    assertEquals(-push, left.fy(), NEWTON);
    assertEquals(push, right.fy(), NEWTON);
    assertEquals(axle, left.fz(), NEWTON);
    assertEquals("kerb, × 1.50", WheelCase.kerb(1.5).name());
  }

  @Test
  void a_stated_force_is_taken_as_it_is() {
    Wrench hit = Wrench.force(-20e3, 0, 3e3);
    assertEquals(hit, ground(WheelCase.stated("hit", hit), Axle.FRONT, Side.LEFT));
  }

  @Test
  void cases_that_cannot_be_are_refused() {
    assertEquals(
        "kerb factor 2.000 is outside 1.4 to 1.75 of roll-over", refusal(() -> WheelCase.kerb(2)));
    assertEquals(
        "kerb factor not a number is outside 1.4 to 1.75 of roll-over",
        refusal(() -> WheelCase.kerb(Double.NaN)));
    assertEquals(
        "frontal impact, left tip, 5.0 g does not say what the ground does to a wheel; state its"
            + " force",
        refusal(() -> WheelCase.of(Event.frontalImpact(g(5), Event.Hit.LEFT_TIP))));
  }

  @Test
  void a_corner_must_hang_on_a_wheel_and_on_the_ladders_mounts() {
    assertEquals(
        "corner lost touches the ground at x 0 mm, y 700.0 mm, z 0 mm, where vehicle test has no"
            + " wheel",
        refusal(() -> Suspension.of(VEHICLE, LADDER, List.of(corner("lost", mm(700))))));
    assertEquals(
        "corner second hangs on a wheel that has one already",
        refusal(() -> Suspension.of(VEHICLE, LADDER, List.of(CORNER, corner("second", mm(600))))));
    assertEquals(
        "the front right wheel has no corner; give the suspension one",
        refusal(() -> SUSPENSION.under(Axle.FRONT, Side.RIGHT, WheelCase.potholeBraking())));
    assertEquals(
        "mount spring top of corner front left on left rail at x 0 mm, y 600.0 mm, z 520.0 mm is no"
            + " mount of ladder test",
        refusal(() -> Suspension.of(VEHICLE, LADDER, List.of(Corners.twoArms(Corners.hub(), 1)))));
  }

  private static String refusal(Runnable making) {
    return assertThrows(ModelException.class, making::run).getMessage();
  }

  private static final List<String> AXLE_BARS =
      List.of("left link", "right link", "upper link", "rod", "left spring", "right spring");

  /** Where the bars of an axle start, and where they end on it [mm]. */
  private static final double[][] AXLE_FROM = {
    {-1500, 350, 200}, {-1500, -350, 200}, {-1600, 300, 400},
    {-2000, 350, 300}, {-2000, 350, 700}, {-2000, -350, 700}
  };

  private static final double[][] AXLE_TO = {
    {-2000, 350, 200}, {-2000, -350, 200}, {-2000, 300, 400},
    {-2000, -350, 300}, {-2000, 350, 300}, {-2000, -350, 300}
  };

  private static Point axlePoint(double[] p) {
    return Corners.at(p[0], p[1], p[2]);
  }

  private static Ladder ladderOfAxle() {
    Stock tube = new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Parts.S355);
    var parts =
        Ladder.named("test")
            .level(mm(300))
            .rails(mm(400), mm(-2300), mm(700), tube)
            .crossmember("front", mm(300), tube)
            .crossmember("rear", mm(-2200), tube)
            .mount("front left mount", Side.LEFT, Corners.at(0, 400, 170))
            .mount("front right mount", Side.RIGHT, Corners.at(0, -400, 170));
    for (int i = 0; i < AXLE_BARS.size(); i++) {
      Side side = AXLE_FROM[i][1] > 0 ? Side.LEFT : Side.RIGHT;
      parts.mount(AXLE_BARS.get(i) + " mount", side, axlePoint(AXLE_FROM[i]));
    }
    return parts.build();
  }

  @Test
  void an_axle_that_joins_two_wheels_does_the_same_to_the_vehicle_as_a_whole() {
    Ladder ladder = ladderOfAxle();
    Vehicle vehicle =
        Vehicle.named("test")
            .wheelbase(mm(2000))
            .track(mm(1200), mm(1200))
            .frontRollShare(0.5)
            .wheel(Axle.FRONT, Side.LEFT, "front left mount")
            .wheel(Axle.FRONT, Side.RIGHT, "front right mount")
            .wheel(Axle.REAR, Side.LEFT, "left spring mount")
            .wheel(Axle.REAR, Side.RIGHT, "right spring mount")
            .mass("ahead", kg(300), Corners.at(-200, 0, 450), "front left", "front right")
            .mass("behind", kg(300), Corners.at(-1800, 0, 450), "rear left", "rear right")
            .build();
    List<SuspensionMember> bars = new ArrayList<>();
    for (int i = 0; i < AXLE_BARS.size(); i++) {
      String name = AXLE_BARS.get(i) + " mount";
      Mount at =
          ladder.mounts().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
      bars.add(Bar.toUpright(AXLE_BARS.get(i), at, axlePoint(AXLE_TO[i])));
    }
    BeamAxle axle =
        new BeamAxle(
            "rear axle",
            Hub.brakedInWheel(Corners.at(-2000, 600, 270), Corners.at(-2000, 600, 0)),
            Hub.brakedInWheel(Corners.at(-2000, -600, 270), Corners.at(-2000, -600, 0)),
            bars);
    Suspension hung = Suspension.of(vehicle, ladder, List.of()).with(axle);
    for (Event event : driving()) {
      Wrench before = total(event.scene().on(vehicle, ladder));
      Wrench after = total(hung.through(event).scene().on(vehicle, ladder));
      assertEquals(before.fz(), after.fz(), NEWTON, event.name());
      assertEquals(before.fx(), after.fx(), NEWTON, event.name());
      assertEquals(before.fy(), after.fy(), NEWTON, event.name());
      assertEquals(before.mx(), after.mx(), NEWTON, event.name());
      assertEquals(before.my(), after.my(), NEWTON, event.name());
      assertEquals(before.mz(), after.mz(), NEWTON, event.name());
    }
    CornerForces standing = hung.under(axle, WheelCase.of(Event.standing()));
    double load = vehicle.wheelLoads().get(vehicle.wheel(Axle.REAR, Side.LEFT));
    assertEquals(-load, standing.along("left spring"), NEWTON);
    assertEquals(
        "axle rear axle hangs on a wheel that has a corner or an axle already",
        assertThrows(ModelException.class, () -> hung.with(axle)).getMessage());
  }

  @Test
  void a_tyre_turned_while_parked_twists_its_upright_by_the_printed_formula() {
    // μ/3·√(F³/p): 0.7 at 0.2 MPa.
    Wrench parked = ground(WheelCase.parking(0.7, MPa(0.2)), Axle.FRONT, Side.LEFT);
    double load = standing(Axle.FRONT, Side.LEFT);
    assertEquals(-0.7 / 3 * Math.sqrt(load * load * load / 2e5), parked.mz(), 1e-9);
    assertEquals(load, parked.fz(), NEWTON);
    assertNotEquals(0, CORNER.under("parking", parked).along("tie rod"));
  }
}
