package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ForceOverCrushTest {
  private static Collapse.Reached at(double force, double crush) {
    return new Collapse.Reached(0, force, crush, 0);
  }

  /** 100 kN at 10 mm, 140 kN at 30 mm, then 2 kN for each millimetre. */
  private static final ForceOverCrush COURSE =
      new ForceOverCrush(List.of(at(0, 0), at(100e3, 0.01), at(140e3, 0.03)), 2e6);

  @Test
  void the_force_is_straight_between_corners_and_hardens_beyond_the_last() {
    assertEquals(0, COURSE.force(0));
    assertEquals(50e3, COURSE.force(0.005), 1e-6);
    assertEquals(100e3, COURSE.force(0.01), 1e-6);
    assertEquals(120e3, COURSE.force(0.02), 1e-6);
    assertEquals(140e3, COURSE.force(0.03), 1e-6);
    assertEquals(160e3, COURSE.force(0.04), 1e-6);
    Refused.with("crush -1.000 mm is below zero", () -> COURSE.force(-1e-3));
  }

  @Test
  void a_force_is_first_reached_at_a_crush_and_at_the_last_corner_if_never() {
    assertEquals(0, COURSE.crushAt(0), 1e-12);
    assertEquals(0.0025, COURSE.crushAt(25e3), 1e-12);
    assertEquals(0.01, COURSE.crushAt(100e3), 1e-12);
    assertEquals(0.025, COURSE.crushAt(130e3), 1e-12);
    assertEquals(0.03, COURSE.crushAt(150e3), 1e-12);
  }

  @Test
  void a_curve_has_the_corners_before_its_end_and_unloads_as_it_rose_first() {
    CrushCurve curve = COURSE.curve("frame", 0.04, corner -> "at " + corner.force() / 1e3);
    assertEquals("frame", curve.name());
    assertEquals(1e7, curve.unloading(), 1e-3);
    assertEquals(
        List.of(
            new CrushCurve.Point(0, 0, "at 0.0"),
            new CrushCurve.Point(0.01, 100e3, "at 100.0"),
            new CrushCurve.Point(0.03, 140e3, "at 140.0"),
            new CrushCurve.Point(0.04, 160e3, "")),
        curve.points());
    assertEquals(3, COURSE.curve("frame", 0.03, corner -> "x").points().size(), "its own end once");
    assertEquals(120e3, COURSE.curve("frame", 0.02, corner -> "").last().force(), 1e-6);
  }
}
