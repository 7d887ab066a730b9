package rungwork.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlaneTest {
  @ParameterizedTest
  @EnumSource(Plane.class)
  void frame_axes_are_right_handed_and_lead_back(Plane plane) {
    double[] p = plane.toVehicle(1, 0, 0);
    double[] q = plane.toVehicle(0, 1, 0);
    double[] n = plane.toVehicle(0, 0, 1);
    double[] cross = {
      p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]
    };
    assertArrayEquals(n, cross, 1e-15);
    double[] there = plane.toFrame(3, -5, 7);
    assertArrayEquals(
        new double[] {3, -5, 7}, plane.toVehicle(there[0], there[1], there[2]), 1e-15);
  }

  @Test
  void in_side_elevation_nose_up_is_positive_while_pitch_is_positive_nose_down() {
    double[] noseDown = Plane.SIDE.toFrame(Wrench.moment(0, 1, 0));
    assertArrayEquals(new double[] {0, 0, 0, 0, 0, -1}, noseDown, 1e-15);
    assertArrayEquals(new double[] {0, 0, -1}, Plane.SIDE.toFrame(new Point(0, 1, 0)), 1e-15);
  }

  @Test
  void motions_are_those_along_and_about_p_q_n() {
    assertEquals(
        List.of(Freedom.UX, Freedom.UZ, Freedom.UY, Freedom.RX, Freedom.RZ, Freedom.RY),
        Plane.SIDE.motions());
    assertEquals(
        List.of(Freedom.UY, Freedom.UZ, Freedom.UX, Freedom.RY, Freedom.RZ, Freedom.RX),
        Plane.FRONT.motions());
    assertEquals(List.of(Freedom.values()), Plane.PLAN.motions());
  }
}
