package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

class InertiaBalanceTest {
  private static final Frame LADDER = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
  private static final Point ORIGIN = new Point(0, 0, 0);

  private static List<Mass> someMasses(Random random) {
    List<Mass> masses = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Mass.Inertia own = Mass.Inertia.box(20, 0.5, 0.4, 0.3);
      Point at = new Point(-random.nextDouble(), random.nextDouble() - 0.4, random.nextDouble());
      List<String> carriers = List.of("R" + i % 4, "L" + (i + 1) % 4);
      masses.add(new Mass("m" + i, 10 + 40 * random.nextDouble(), at, own, carriers, 1.5));
    }
    return masses;
  }

  private static AppliedWrench someWrench(Random random) {
    double[] w = random.doubles(6, -1000, 1000).toArray();
    return new AppliedWrench(
        "blow",
        new Wrench(w[0], w[1], w[2], w[3], w[4], w[5]),
        new Point(0.4, random.nextDouble() - 0.5, 0.3),
        List.of("R0", "L0", "L1"));
  }

  @Test
  void a_push_through_the_centre_of_mass_moves_all_alike() {
    List<Mass> masses =
        List.of(
            Mass.point("front", 30, new Point(0, 0, 0.5), List.of("R0", "L0")),
            Mass.point("rear", 10, new Point(-2, 0, 0.5), List.of("R3", "L3")));
    AppliedWrench push =
        new AppliedWrench("push", Wrench.force(0, 80, 0), new Point(-0.5, 9, 0.5), List.of("R1"));
    InertiaBalance balance = InertiaBalance.of(masses, List.of(push));
    assertEquals(40, balance.kilograms());
    RigidAcceleration rear = balance.acceleration().at(new Point(-2, 0, 0.5));
    assertEquals(2, rear.ay(), 1e-12);
    assertEquals(0, rear.alphaZ(), 1e-12);
  }

  @Test
  void a_dumbbell_pushed_at_one_end_leaves_the_other_end_at_rest() {
    List<Mass> masses =
        List.of(
            Mass.point("front", 20, new Point(0, 0, 0), List.of("R0")),
            Mass.point("rear", 20, new Point(-2, 0, 0), List.of("R3")));
    AppliedWrench push = new AppliedWrench("push", Wrench.force(0, 80, 0), ORIGIN, List.of("R1"));
    RigidAcceleration motion = InertiaBalance.of(masses, List.of(push)).acceleration();
    assertEquals(4, motion.at(ORIGIN).ay(), 1e-12);
    assertEquals(0, motion.at(new Point(-2, 0, 0)).ay(), 1e-12);
    assertEquals(2, motion.alphaZ(), 1e-12);
  }

  @Test
  void a_product_of_inertia_turns_the_vehicle_about_another_axis_than_the_moment() {
    List<Mass> masses =
        List.of(
            Mass.point("low front", 1, new Point(1, 0, 0), List.of("R0")),
            Mass.point("high rear", 1, new Point(-1, 0, 2), List.of("R0")),
            Mass.point("left", 1, new Point(0, 1, 1), List.of("R0")),
            Mass.point("right", 1, new Point(0, -1, 1), List.of("R0")));
    AppliedWrench twist = new AppliedWrench("twist", Wrench.moment(0, 0, 8), ORIGIN, List.of("R1"));
    RigidAcceleration motion = InertiaBalance.of(masses, List.of(twist)).acceleration();
    // Ixx = 4, Izz = 4, ∫zx dm = −2: 4 αx + 2 αz = 0 and 2 αx + 4 αz = 8.
    assertEquals(-4.0 / 3, motion.alphaX(), 1e-12);
    assertEquals(8.0 / 3, motion.alphaZ(), 1e-12);
    assertEquals(0, motion.alphaY(), 1e-12);
  }

  /** Two halves at ±(a, b, c): Ixx = m(b² + c²) and so on, products m·ab, m·bc, m·ca. */
  @Test
  void an_items_own_products_of_inertia_are_those_of_its_halves() {
    double a = 0.3;
    double b = -0.5;
    double c = 0.7;
    Mass box = new Mass("box", 5, ORIGIN, new Mass.Inertia(2, 3, 4, 0, 0, 0), List.of("R0"), 1);
    Mass.Inertia own =
        new Mass.Inertia(
            2 * (b * b + c * c),
            2 * (a * a + c * c),
            2 * (a * a + b * b),
            2 * a * b,
            2 * b * c,
            2 * c * a);
    Mass item = new Mass("item", 2, ORIGIN, own, List.of("R0"), 1);
    List<Mass> halves =
        List.of(
            box,
            Mass.point("one", 1, new Point(a, b, c), List.of("R0")),
            Mass.point("other", 1, new Point(-a, -b, -c), List.of("R0")));
    AppliedWrench twist = new AppliedWrench("twist", Wrench.moment(3, 5, 7), ORIGIN, List.of("R1"));
    RigidAcceleration expected = InertiaBalance.of(halves, List.of(twist)).acceleration();
    RigidAcceleration motion = InertiaBalance.of(List.of(box, item), List.of(twist)).acceleration();
    assertEquals(expected.alphaX(), motion.alphaX(), 1e-12);
    assertEquals(expected.alphaY(), motion.alphaY(), 1e-12);
    assertEquals(expected.alphaZ(), motion.alphaZ(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void loads_are_in_balance_in_all_six_components(long seed) {
    Random random = new Random(seed);
    InertiaBalance balance =
        InertiaBalance.of(someMasses(random), List.of(someWrench(random), someWrench(random)));
    List<Load> loads = balance.loads(LADDER);
    assertTrue(loads.size() > 2, "masses and what is applied");
    Wrench left = Totals.about(new Point(3, -2, 1), LADDER, loads);
    assertEquals(0, Totals.size(left), 1e-9, "seed " + seed);
    Response response =
        Solver.unsupported(LADDER).solve(LoadCase.of("blow", loads.toArray(Load[]::new)));
    assertTrue(response.residual() < 1e-12, () -> "seed " + seed + ": " + response.residual());
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void the_answer_does_not_depend_on_where_the_origin_is(long seed) {
    List<Mass> masses = someMasses(new Random(seed));
    AppliedWrench blow = someWrench(new Random(seed + 1));
    List<Mass> moved =
        masses.stream()
            .map(
                m ->
                    new Mass(
                        m.name(), m.kilograms(), m.at().plus(5, -3, 2), m.own(), m.carriers(), 1))
            .toList();
    AppliedWrench movedBlow =
        new AppliedWrench("blow", blow.wrench(), blow.at().plus(5, -3, 2), blow.carriers());
    RigidAcceleration here = InertiaBalance.of(masses, List.of(blow)).acceleration();
    RigidAcceleration there = InertiaBalance.of(moved, List.of(movedBlow)).acceleration();
    assertEquals(here.ax(), there.ax(), 1e-9);
    assertEquals(here.at(ORIGIN).az(), there.at(new Point(5, -3, 2)).az(), 1e-9);
    assertEquals(here.alphaX(), there.alphaX(), 1e-9);
    assertEquals(here.alphaY(), there.alphaY(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void the_answer_turns_with_the_axes(long seed) {
    // A quarter turn about z: x to y, y to −x.
    List<Mass> masses = someMasses(new Random(seed));
    AppliedWrench blow = someWrench(new Random(seed + 1));
    List<Mass> turned =
        masses.stream()
            .map(
                m -> {
                  Mass.Inertia i = m.own();
                  Mass.Inertia own =
                      new Mass.Inertia(i.yy(), i.xx(), i.zz(), -i.xy(), i.zx(), -i.yz());
                  return new Mass(m.name(), m.kilograms(), turn(m.at()), own, m.carriers(), 1);
                })
            .toList();
    Wrench w = blow.wrench();
    Wrench turnedWrench = new Wrench(-w.fy(), w.fx(), w.fz(), -w.my(), w.mx(), w.mz());
    AppliedWrench turnedBlow =
        new AppliedWrench("blow", turnedWrench, turn(blow.at()), blow.carriers());
    RigidAcceleration here = InertiaBalance.of(masses, List.of(blow)).acceleration();
    RigidAcceleration there = InertiaBalance.of(turned, List.of(turnedBlow)).acceleration();
    assertEquals(-here.ay(), there.ax(), 1e-9);
    assertEquals(here.ax(), there.ay(), 1e-9);
    assertEquals(-here.alphaY(), there.alphaX(), 1e-9);
    assertEquals(here.alphaX(), there.alphaY(), 1e-9);
    assertEquals(here.alphaZ(), there.alphaZ(), 1e-9);
  }

  private static Point turn(Point p) {
    return new Point(-p.y(), p.x(), p.z());
  }

  @Test
  void amplified_masses_weigh_more_in_the_balance() {
    Mass belted =
        new Mass("driver", 75, ORIGIN, Mass.Inertia.box(75, 0.3, 0.4, 0.9), List.of("R1"), 1.4);
    Mass felt = belted.amplified();
    assertEquals(105, felt.kilograms(), 1e-12);
    assertEquals(1.4 * belted.own().zz(), felt.own().zz(), 1e-12);
    assertEquals(1, felt.amplification());
  }

  @Test
  void weights_are_the_inertia_of_standing() {
    Mass box = Mass.point("box", 50, new Point(-0.4, 0, 0.6), List.of("R0", "L0", "R1", "L1"));
    List<Load> weights = RigidAcceleration.STANDING.loads(List.of(box), LADDER);
    Wrench total = Totals.about(box.at(), LADDER, weights);
    assertEquals(-50 * 9.80665, total.fz(), 1e-9);
    assertEquals(0, Math.abs(total.mx()) + Math.abs(total.my()), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33})
  void beams_weigh_the_same_as_masses_and_as_line_loads(long seed) {
    double[] a = new Random(seed).doubles(6, -30, 30).toArray();
    RigidAcceleration motion = new RigidAcceleration(ORIGIN, a[0], a[1], a[2], a[3], a[4], a[5]);
    List<Mass> own = InertiaBalance.ownMasses(LADDER);
    Wrench asMasses = Totals.about(ORIGIN, LADDER, motion.loads(own, LADDER));
    Wrench alongBeams = Totals.about(ORIGIN, LADDER, motion.alongBeams(LADDER));
    assertEquals(0, Totals.size(asMasses.plus(alongBeams.times(-1))), 1e-9);
    double kilograms = own.stream().mapToDouble(Mass::kilograms).sum();
    assertEquals(7850 * 294e-6 * (6 * Ladders.BAY + 4 * Ladders.WIDTH), kilograms, 1e-9);
  }

  @Test
  void a_turning_beam_bends_by_a_load_that_grows_with_the_distance() {
    // An arm clamped at its root starts to turn: ρAα·x along it, root moment ρAαL³/3.
    Frame arm =
        Frame.in(Plane.PLAN)
            .node("root", ORIGIN)
            .node("tip", new Point(1.5, 0, 0))
            .beam(Beam.rigid("arm", "root", "tip", Stocks.TUBE))
            .support(Support.fixed("root"))
            .build();
    RigidAcceleration turning = new RigidAcceleration(ORIGIN, 0, 0, 0, 0, 0, 20);
    List<Load> loads = turning.alongBeams(arm);
    Response response = Solver.of(arm).solve(new LoadCase("turning", "test", List.of(), loads));
    double line = 7850 * 294e-6 * 20;
    assertEquals(-line * 1.5 * 1.5 * 1.5 / 3, response.forces("arm").at(0).mz(), 1e-9);
    assertEquals(-line * 1.5 * 1.5 / 2, response.forces("arm").at(0).vy(), 1e-9);
    // 11 w L⁴/120 EI: the tables' cantilever under a triangle that is largest at its tip.
    double sag = 11 * line * 1.5 * Math.pow(1.5, 4) / 120 / (210e9 * 69.5e-9);
    assertEquals(-sag, response.displacement("tip").uy(), 1e-12);
  }

  @Test
  void forces_that_nothing_answers_are_refused() {
    assertEquals(
        "there is no mass whose inertia could answer the load",
        assertThrows(ModelException.class, () -> InertiaBalance.of(List.of(), List.of()))
            .getMessage());
    List<Mass> inLine =
        List.of(
            Mass.point("front", 20, new Point(0, 0, 0), List.of("R0")),
            Mass.point("rear", 20, new Point(-2, 0, 0), List.of("R3")));
    AppliedWrench roll = new AppliedWrench("roll", Wrench.moment(12, 0, 0), ORIGIN, List.of("R1"));
    assertEquals(
        "a moment of 12.00 N·m acts about a line on which all masses are points, so no inertia"
            + " answers it; give a mass its own inertia",
        assertThrows(ModelException.class, () -> InertiaBalance.of(inLine, List.of(roll)))
            .getMessage());
    assertEquals(
        "applied force tyre is taken by no node; name one at least",
        assertThrows(
                ModelException.class,
                () -> new AppliedWrench("tyre", Wrench.ZERO, ORIGIN, List.of()))
            .getMessage());
  }

  @Test
  void a_load_that_does_not_balance_itself_is_refused() {
    LoadCase shove = LoadCase.of("shove", new Load.AtNode("R0", Wrench.force(-1000, 0, 0)));
    SolveException refusal =
        assertThrows(SolveException.class, () -> Solver.unsupported(LADDER).solve(shove));
    assertEquals(
        "load case shove does not balance itself: 1.0e+00 of its load is left over; at most 1e-09"
            + " is accepted: add the inertia that answers it",
        refusal.getMessage());
  }

  @Test
  void words_tell_the_answer() {
    RigidAcceleration stop = RigidAcceleration.translation(-9.80665 * 2, 0, 0);
    assertEquals(
        "accelerates (-2.000 g, 0 g, 0 g), turns faster by (0 rad/s², 0 rad/s², 0 rad/s²)",
        stop.toString());
  }
}
