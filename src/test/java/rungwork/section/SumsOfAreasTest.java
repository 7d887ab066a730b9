package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;

/** Sums over areas, second moments and plastic work, by other routes. */
class SumsOfAreasTest {
  /** Three small areas, turned one by one, against their sums turned at once. */
  @Test
  void sums_of_areas_turn_like_the_areas_themselves() {
    double[][] areas = {{1, 3, 1}, {2, -1, 4}, {5, 2, -2}};
    for (double angle : new double[] {0.3, 1.2, -2.0}) {
      Moments sum = moments(areas, 0).turned(angle);
      Moments each = moments(areas, angle);
      assertEquals(each.y(), sum.y(), 1e-12);
      assertEquals(each.z(), sum.z(), 1e-12);
      assertEquals(each.yy(), sum.yy(), 1e-12);
      assertEquals(each.zz(), sum.zz(), 1e-12);
      assertEquals(each.yz(), sum.yz(), 1e-12);
    }
  }

  private static Moments moments(double[][] areas, double angle) {
    Moments sum = new Moments(0, 0, 0, 0, 0, 0);
    for (double[] each : areas) {
      double y = Math.cos(angle) * each[1] - Math.sin(angle) * each[2];
      double z = Math.sin(angle) * each[1] + Math.cos(angle) * each[2];
      double a = each[0];
      sum = sum.plus(new Moments(a, a * y, a * z, a * y * y, a * z * z, a * y * z));
    }
    return sum;
  }

  /**
   * A rectangle b × h strained by e + z: b·(h²/4 + e²) while the neutral axis lies inside, A·e
   * beyond; a square of side a bent about its diagonal: a³·√2/6.
   */
  @Test
  void plastic_work_is_the_area_and_the_plastic_moduli_and_what_lies_between() {
    Outline bar = Section.flatBar(mm(40), mm(20)).outline();
    assertEquals(800e-6, bar.plasticWork(1, 0, 0), 1e-15);
    assertEquals(800e-6, bar.plasticWork(-1, 0, 0), 1e-15);
    assertEquals(20 * 40 * 40 / 4 * 1e-9, bar.plasticWork(0, 1, 0), 1e-15);
    assertEquals(2 * 40 * 20 * 20 / 4 * 1e-9, bar.plasticWork(0, 0, -2), 1e-15);
    for (double e : new double[] {0.005, -0.012}) {
      assertEquals(0.020 * (0.0004 + e * e), bar.plasticWork(e, 1, 0), 1e-15);
      assertEquals(0.040 * (0.0001 + e * e / 4) * 2, bar.plasticWork(e, 0, 2), 1e-15);
    }
    assertEquals(800e-6 * 0.030, bar.plasticWork(0.030, 1, 0), 1e-15);
    Outline square = Section.flatBar(mm(30), mm(30)).outline();
    double half = Math.sqrt(0.5);
    assertEquals(27e-6 * Math.sqrt(2) / 6, square.plasticWork(0, half, half), 1e-15);
    assertTrue(square.furthest(Spot::z) > 0.0149 && square.furthest(Spot::z) < 0.0151);
  }
}
