package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinkTest {
  /** 4 kN at 20 mm, 7 kN at 50 mm, let go at 300 N/mm. */
  private static final CrushCurve CURVE =
      new CrushCurve(
          "part",
          List.of(
              new CrushCurve.Point(0, 0, ""),
              new CrushCurve.Point(0.02, 4000, ""),
              new CrushCurve.Point(0.05, 7000, "")),
          300e3);

  @Test
  void a_link_to_the_ground_is_closed_by_its_rear_mass_alone() {
    double[] places = {0.3, 0.07, 0.5};
    assertEquals(0.07, new Link.Spring(Link.GROUND, 1, 1).closing(places));
    assertEquals(0.5 - 0.3, new Link.Spring(0, 2, 1).closing(places));
  }

  /** 15 mm closed less 5 mm of gap: 10 mm · 200 N/mm = 2 kN; before the gap is closed nothing. */
  @Test
  void a_gap_is_closed_before_anything_pushes() {
    Link.Crush link = new Link.Crush(Link.GROUND, 0, CURVE, 0.005);
    assertEquals(2000, link.force(0.015, 9, 0), 1e-9);
    assertEquals(0, link.force(0.004, 9, 0));
    assertEquals(0, link.energy(0.004, 0));
    assertEquals(2000 * 0.01 / 2, link.energy(0.015, 0.015), 1e-9);
  }

  /**
   * Crushed by 30 mm: 5 kN; 6 mm back it is 5000 − 300·6 = 3200 N. It had taken 40 + 45 J and gave
   * back (5000 + 3200)/2 · 6 mm = 24.6 J. It lets go 5000/300 mm before its most.
   */
  @Test
  void what_was_crushed_unloads_from_its_most() {
    Link.Crush link = new Link.Crush(Link.GROUND, 0, CURVE, 0.005);
    assertEquals(3200, link.force(0.029, -1, 0.035), 1e-9);
    assertEquals(40 + 45 - 24.6, link.energy(0.029, 0.035), 1e-9);
    assertEquals(0.005 + 0.03 - 5.0 / 300, link.release(0.035), 1e-12);
    assertEquals(0.005, link.release(0.002), "it was never touched");
  }

  /** 40 N·s/m at 3 m/s: 120 N, a quarter of it a quarter of a millimetre in, none before. */
  @Test
  void damping_takes_hold_over_the_first_millimetre() {
    Link.Crush link = new Link.Crush(Link.GROUND, 0, CURVE, 0.005, 40);
    assertEquals(2000 + 120, link.force(0.015, 3, 0), 1e-9);
    assertEquals(200 + 120, link.force(0.006, 3, 0), 1e-9);
    assertEquals(0.25 * (200 + 120), link.force(0.00525, 3, 0), 1e-9);
    assertEquals(0, link.force(0.004, 3, 0));
    assertEquals(2000 - 120, link.force(0.015, -3, 0.015), 1e-9);
    assertEquals(0, link.force(0.006, -30, 0.006), "it never pulls");
  }

  /** 700 N/m by 30 mm: 21 N and 0.315 J, either way. */
  @Test
  void a_spring_pushes_and_pulls() {
    Link.Spring spring = new Link.Spring(0, 1, 700);
    assertEquals(21, spring.force(0.03, 5, 9), 1e-12);
    assertEquals(-21, spring.force(-0.03, 5, 9), 1e-12);
    assertEquals(0.315, spring.energy(-0.03, 9), 1e-12);
  }
}
