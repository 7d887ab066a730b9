package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlatBarTest {
  private static final double NEAR = 1e-9;

  /**
   * The torsion of rectangular bars as handbooks list it: It = β·b·t³, the largest stress
   * T/(α·b·t²) in the middle of the long side, and η of it in the middle of the short one
   * (Timoshenko & Goodier's series; α, β, η from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.141, 0.208, 1.000", "1.5, 0.196, 0.231, 0.858", "2, 0.229, 0.246, 0.796",
    "3, 0.263, 0.267, 0.753", "6, 0.298, 0.298, 0.743", "10, 0.312, 0.312, 0.743"
  })
  void a_bar_is_twisted_as_handbooks_have_it(double ratio, double b, double a, double eta) {
    double t = 0.01;
    for (boolean upright : new boolean[] {true, false}) {
      double height = upright ? ratio * t : t;
      double width = upright ? t : ratio * t;
      Section bar = new FlatBar(height, width).section();
      assertEquals(b, bar.properties().it() / (ratio * Math.pow(t, 4)), 6e-4);
      StressPoint left = only(bar, "left side");
      StressPoint top = only(bar, "top side");
      double longest = upright ? left.perT() : top.perT();
      double shortest = upright ? top.perT() : left.perT();
      assertEquals(a, 1 / (longest * ratio * Math.pow(t, 3)), 6e-4);
      assertEquals(eta, shortest / longest, 1.1e-3);
      assertEquals(left.perT(), only(bar, "right side").perT());
      assertEquals(top.perT(), only(bar, "bottom side").perT());
    }
  }

  private static StressPoint only(Section section, String name) {
    List<StressPoint> found = section.points().stream().filter(p -> p.name().equals(name)).toList();
    assertEquals(1, found.size(), name);
    return found.get(0);
  }

  /**
   * A bar 40 × 20: 1.5/800 mm² in the middle of each side, paths running from y towards z: up on
   * the left, to the right on top.
   */
  @Test
  void a_bars_shear_runs_round_it_and_is_nothing_at_its_corners() {
    Section bar = Section.flatBar(mm(40), mm(20));
    double most = 1.5 / 800e-6;
    assertPoint(only(bar, "left side"), 10, 0, 0, most);
    assertPoint(only(bar, "right side"), -10, 0, 0, -most);
    assertPoint(only(bar, "top side"), 0, 20, -most, 0);
    assertPoint(only(bar, "bottom side"), 0, -20, most, 0);
    assertPoint(only(bar, "top left corner"), 10, 20, 0, 0);
    assertPoint(only(bar, "top right corner"), -10, 20, 0, 0);
    assertPoint(only(bar, "bottom right corner"), -10, -20, 0, 0);
    assertPoint(only(bar, "bottom left corner"), 10, -20, 0, 0);
    List<StressPoint> centres =
        bar.points().stream().filter(point -> point.name().equals("centre")).toList();
    assertEquals(2, centres.size());
    assertPoint(centres.get(0), 0, 0, most, most);
    assertPoint(centres.get(1), 0, 0, most, -most);
    assertEquals(800e-6 * 5 / 6, bar.properties().shearY(), 1e-12);
    assertEquals(800e-6 * 5 / 6, bar.properties().shearZ(), 1e-12);
    for (String corner : List.of("top left corner", "bottom right corner")) {
      assertEquals(0, only(bar, corner).perT());
    }
  }

  private static void assertPoint(
      StressPoint point, double y, double z, double perVy, double perVz) {
    assertEquals(y * 1e-3, point.y(), NEAR);
    assertEquals(z * 1e-3, point.z(), NEAR);
    assertEquals(perVy, point.perVy(), 1e-9);
    assertEquals(perVz, point.perVz(), 1e-9);
  }
}
