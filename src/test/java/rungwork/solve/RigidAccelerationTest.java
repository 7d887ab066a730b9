package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/** a + α × r by hand: α = (2, 3, 5), r = (0.1, 0.2, 0.4), a = (7, 11, 13). */
class RigidAccelerationTest {
  private static final Point ABOUT = new Point(1, 2, 3);
  private static final RigidAcceleration BODY = new RigidAcceleration(ABOUT, 7, 11, 13, 2, 3, 5);
  private static final double DIGITS = 1e-12;

  /** α × r = (3·0.4 − 5·0.2, 5·0.1 − 2·0.4, 2·0.2 − 3·0.1) = (0.2, −0.3, 0.1). */
  @Test
  void another_point_of_the_body_also_turns_about_the_first() {
    RigidAcceleration there = BODY.at(new Point(1.1, 2.2, 3.4));
    assertEquals(7.2, there.ax(), DIGITS);
    assertEquals(10.7, there.ay(), DIGITS);
    assertEquals(13.1, there.az(), DIGITS);
    assertEquals(List.of(2.0, 3.0, 5.0), List.of(there.alphaX(), there.alphaY(), there.alphaZ()));
    assertEquals(new Point(1.1, 2.2, 3.4), there.about());
  }

  /** Iα with I = (10, 20, 30) and products xy 1, yz 2, zx 4: (20−3−20, 60−10−2, 150−8−6). */
  @Test
  void a_mass_answers_by_its_inertia_turned_round() {
    Mass.Inertia own = new Mass.Inertia(10, 20, 30, 1, 2, 4);
    Mass mass = new Mass("box", 3, new Point(1.1, 2.2, 3.4), own, List.of("n"), 1);
    Wrench wrench = BODY.inertia(mass);
    assertEquals(-3 * 7.2, wrench.fx(), DIGITS);
    assertEquals(-3 * 10.7, wrench.fy(), DIGITS);
    assertEquals(-3 * 13.1, wrench.fz(), DIGITS);
    assertEquals(-(20 - 3 - 20), wrench.mx(), DIGITS);
    assertEquals(-(60 - 10 - 2), wrench.my(), DIGITS);
    assertEquals(-(150 - 8 - 6), wrench.mz(), DIGITS);
  }

  @Test
  void what_stands_is_pushed_up_by_one_g() {
    assertEquals(
        new RigidAcceleration(new Point(0, 0, 0), 0, 0, 9.80665, 0, 0, 0),
        RigidAcceleration.STANDING);
    assertEquals(
        "accelerates (0 g, 0 g, 1.000 g), turns faster by (0 rad/s², 0 rad/s², 0 rad/s²)",
        RigidAcceleration.STANDING.toString());
  }
}
