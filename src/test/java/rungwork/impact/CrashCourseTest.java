package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Caution;
import rungwork.quantity.Units;

/** Samples written by hand; what is told of them is worked out from the two curves. */
class CrashCourseTest {
  private static final CrushCurve SOFT =
      CrushCurve.named("soft")
          .to(mm(10), kN(2), "folds")
          .to(mm(60), kN(2), "used up")
          .to(mm(70), kN(9), "solid")
          .end(Npmm(900));
  private static final CrushCurve HARD =
      CrushCurve.named("hard").to(mm(30), kN(6), "yields").to(mm(90), kN(7)).end();
  private static final CrashModel CAR = CrashModel.of("car", kmh(36), kg(700), HARD).behind(SOFT);
  private static final double HALF = 0.07 + (0.004 / 0.7 + 0.02) / 2;

  /** A sample a millisecond; places of all masses at each, then the force of each link. */
  private static List<LumpedMasses.Sample> samples(double[][] places, double[][] forces) {
    List<LumpedMasses.Sample> all = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      double[] state = Arrays.copyOf(places[i], 2 * places[i].length);
      all.add(
          new LumpedMasses.Sample(i * 1e-3, state, forces[i], new double[] {}, new double[] {}));
    }
    return all;
  }

  private static List<String> told(CrashCourse course) {
    return course.events().stream()
        .map(event -> Math.round(event.time() * 1e3) + " " + event.label())
        .toList();
  }

  private static CrashCourse inARow() {
    Stack stack = Stack.of(CAR.foremost());
    return new CrashCourse(
        CAR,
        stack,
        List.of(new Link.Crush(Link.GROUND, 0, stack.curve(), 0)),
        samples(
            new double[][] {{0}, {0.01}, {0.04}, {0.07}, {HALF}, {0.08}},
            new double[][] {{0}, {1000}, {2000}, {2000}, {4000}, {1000}}));
  }

  /** Let go from 4 to 1 kN: 3000/900 mm of the soft part come back, 3000/200 mm of the hard. */
  @Test
  void each_part_in_a_row_has_its_share_less_what_it_gives_back() {
    List<Crash.Part> parts = inARow().parts();
    assertEquals(List.of("soft", "hard"), parts.stream().map(p -> p.curve().name()).toList());
    double most = 0.06 + 0.002 / 0.7;
    assertArrayEquals(
        new double[] {0, 0.005, 0.03, 0.06, most, most - 3.0 / 900}, parts.get(0).crush(), 1e-12);
    assertArrayEquals(
        new double[] {0, 0.005, 0.01, 0.01, 0.02, 0.02 - 3.0 / 200}, parts.get(1).crush(), 1e-12);
    assertArrayEquals(new double[] {0, 1000, 2000, 2000, 4000, 1000}, parts.get(1).force(), 1e-12);
    assertEquals(most, parts.get(0).mostCrush(), 1e-12);
    assertEquals(4000, parts.get(0).mostForce());
  }

  @Test
  void what_a_part_comes_to_is_told_when_it_first_does() {
    assertEquals(
        List.of("0 contact", "2 soft: folds", "3 soft: used up", "4 most crushed", "5 comes off"),
        told(inARow()));
  }

  /** The motor's gap of 12 mm is just closed at 2 ms and passed at 3 ms. */
  @Test
  void a_motor_meets_its_stop_when_it_passes_its_gap() {
    CrashModel.Motor motor = new CrashModel.Motor("motor", 60, 5e5, 0.012, 8e6);
    CrashModel car = CrashModel.of("car", kmh(36), kg(700), HARD).with(motor);
    Link stop = new Link.Crush(0, 1, CrushCurve.linear("stop", 8e6, 1), 0.012);
    Link crush = new Link.Crush(Link.GROUND, 0, HARD, 0);
    CrashCourse course =
        new CrashCourse(
            car,
            Stack.of(car.foremost()),
            List.of(crush, new Link.Spring(0, 1, 5e5), stop),
            samples(
                new double[][] {{0, 0}, {0.01, 0.015}, {0, 0.012}, {0.03, 0.05}, {0.02, 0.06}},
                new double[][] {{0, 0, 0}, {1, 0, 0}, {2, 0, 0}, {6000, 0, 0}, {1, 0, 0}}));
    assertEquals(
        List.of(
            "0 contact",
            "3 hard: yields",
            "3 motor meets its stop",
            "3 most crushed",
            "4 comes off"),
        told(course));
    CrashCourse never =
        new CrashCourse(
            car,
            Stack.of(car.foremost()),
            List.of(crush, new Link.Spring(0, 1, 5e5), stop),
            samples(
                new double[][] {{0, 0}, {0.01, 0.015}, {0.005, 0.01}},
                new double[][] {{0, 0, 0}, {1, 0, 0}, {2, 0, 0}}));
    assertEquals(List.of("0 contact", "1 most crushed", "2 comes off"), told(never));
  }

  /** Behind a front mass the frame is crushed by what its own link closes. */
  @Test
  void behind_a_front_mass_the_frame_is_a_part_of_its_own() {
    CrashModel car = CrashModel.of("car", kmh(36), kg(700), HARD).behind(SOFT, kg(9));
    CrashCourse course =
        new CrashCourse(
            car,
            Stack.of(car.foremost()),
            List.of(new Link.Crush(Link.GROUND, 0, SOFT, 0), new Link.Crush(0, 1, HARD, 0)),
            samples(
                new double[][] {{0, 0}, {0.02, 0.03}, {0.03, 0.07}},
                new double[][] {{0, 0}, {2000, 2000}, {2000, 6100}}));
    List<Crash.Part> parts = course.parts();
    assertEquals(List.of("soft", "hard"), parts.stream().map(p -> p.curve().name()).toList());
    assertArrayEquals(new double[] {0, 0.02, 0.03}, parts.get(0).crush(), 1e-12);
    assertArrayEquals(new double[] {0, 0.01, 0.04}, parts.get(1).crush(), 1e-12);
    assertArrayEquals(new double[] {0, 2000, 6100}, parts.get(1).force());
    assertEquals(
        List.of("0 contact", "1 soft: folds", "2 hard: yields", "2 most crushed", "2 comes off"),
        told(course));
  }

  private static Crash crash(CrashModel model, double most, double[] decelerations) {
    double[] times = {0, 0.01, 0.02, 0.03};
    Crash.Body body =
        new Crash.Body(
            "body", 700, times, decelerations, new double[] {10, 5, 0, -1}, new double[4]);
    Crash.Body other =
        new Crash.Body(
            "other vehicle", 900, times, new double[4], new double[] {0, 1, 1.5, 2}, new double[4]);
    Crash.Part first = new Crash.Part(SOFT, new double[] {0, 0.02}, new double[] {0, 2000});
    Crash.Part second = new Crash.Part(HARD, new double[] {0, most, 0.01}, new double[] {7000});
    return new Crash(model, List.of(other, body), List.of(first, second), List.of(), 0);
  }

  private static final double[] CALM = {0, 200, 100, -20};

  @Test
  void a_curve_that_is_passed_and_a_body_still_shaken_are_marked() {
    assertEquals(List.of(), crash(CAR, 0.09, CALM).marks(Units.METRIC), "just to its end");
    assertEquals(
        List.of(
            "hard is crushed by 95.0 mm and passes the end of its curve at 90.0 mm; its last force"
                + " was held beyond it, which nothing shows to be so."),
        crash(CAR, 0.095, CALM).marks(Units.METRIC));
    assertEquals(
        List.of(
            "The body is still shaken by 2.14 g when the contact ends; the pulse is cut there."),
        crash(CAR, 0.05, new double[] {0, 200, 100, -21}).marks(Units.METRIC));
  }

  /** Off a wall at 1 of 10 m/s; off what moves on at 2 m/s it parts with 3. */
  @Test
  void restitution_is_speed_apart_over_speed_together() {
    assertEquals(0.1, crash(CAR, 0.05, CALM).restitution(), 1e-12);
    CrashModel meeting = CAR.into(kg(900), CrushCurve.linear("other", Npmm(900), mm(900)));
    assertEquals(0.3, crash(meeting, 0.05, CALM).restitution(), 1e-12);
  }

  @Test
  void the_own_crush_leaves_that_of_the_other_vehicle_out() {
    assertEquals(0.02 + 0.05, crash(CAR, 0.05, CALM).mostCrush(), 1e-12);
    CrashModel meeting = CAR.into(kg(900), CrushCurve.linear("other", Npmm(900), mm(900)));
    assertEquals(0.05, crash(meeting, 0.05, CALM).mostCrush(), 1e-12);
  }

  @Test
  void assumptions_name_the_rubber_where_there_is_some() {
    assertEquals(
        List.of(
            "Masses on one line; no pitch, no yaw, no ride up or under.",
            "Parts that stand one behind the other carry the same force.",
            "What is crushed is let go along a straight steep line.",
            "People move with the body: their belts do not act back on it."),
        crash(CAR, 0.05, CALM).assumptions());
    CrashModel.Motor motor = new CrashModel.Motor("motor", 60, 5e5, 0.012, 8e6);
    assertEquals(
        "Damping of the rubber is left out.",
        crash(CAR.with(motor), 0.05, CALM).assumptions().get(2));
  }

  @Test
  void of_two_moments_that_are_crushed_alike_the_first_is_the_deepest() {
    Stack stack = Stack.of(CAR.foremost());
    CrashCourse course =
        new CrashCourse(
            CAR,
            stack,
            List.of(new Link.Crush(Link.GROUND, 0, stack.curve(), 0)),
            samples(
                new double[][] {{0}, {0.01}, {0.01}, {0.005}},
                new double[][] {{0}, {1000}, {1000}, {0}}));
    assertEquals(List.of("0 contact", "1 most crushed", "3 comes off"), told(course));
  }

  /** 1 + 1.5 + 0.4 m/s in 30 ms. */
  @Test
  void a_crash_prints_its_crush_its_pulse_and_its_balance() {
    assertEquals(
        "car: crush 70.0 mm, car: peak 20.4 g, mean over time 9.86 g, 30.0 ms, Δv 10.4 km/h; energy"
            + " balance open by 0 %. "
            + Caution.IMPACT.inBrief(),
        crash(CAR, 0.05, CALM).toString());
  }
}
