package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Support;

/**
 * Six motions of a rigid body, each held once: the first node by p, q and n, the second across the
 * line to it and by n, the third by n.
 */
class FreeMotionTest {
  private static List<Support> holds(Point... places) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < places.length; i++) {
      frame.node("n" + i, places[i]);
      if (i > 0) {
        frame.beam(Beam.rigid("b" + i, "n" + (i - 1), "n" + i, Stocks.TUBE));
      }
    }
    return new FreeMotion(frame.build()).holds();
  }

  /** Farthest from n0 is n2, farthest from that n0; n1 lies farthest off the line between them. */
  @Test
  void far_nodes_hold_it_and_the_third_is_far_off_their_line() {
    assertEquals(
        List.of(
            Support.holding("n2", Freedom.UX, Freedom.UY, Freedom.UZ),
            Support.holding("n0", Freedom.UY, Freedom.UZ),
            Support.holding("n1", Freedom.UZ)),
        holds(new Point(0, 0, 0), new Point(1, 0.5, 0), new Point(3, 0.4, 0)));
  }

  @Test
  void a_line_across_is_held_along_the_vehicle() {
    assertEquals(
        List.of(
            Support.holding("n2", Freedom.UX, Freedom.UY, Freedom.UZ),
            Support.holding("n0", Freedom.UX, Freedom.UZ),
            Support.holding("n1", Freedom.UZ)),
        holds(new Point(0, 0, 0), new Point(0.5, 1, 0), new Point(0.4, 3, 0)));
  }

  /** A straight frame turns about itself: 3 mm off a line of 3 m is just not enough to stop it. */
  @Test
  void a_straight_frame_is_held_against_turning_about_its_line() {
    List<Support> along = holds(new Point(0, 0, 0), new Point(1, 0.0029, 0), new Point(3, 0, 0));
    assertEquals(Support.holding("n2", Freedom.RX), along.get(2));
    List<Support> across = holds(new Point(0, 0, 0), new Point(0, 1, 0), new Point(0, 3, 0));
    assertEquals(Support.holding("n2", Freedom.RY), across.get(2));
    List<Support> off = holds(new Point(0, 0, 0), new Point(1, 0.0031, 0), new Point(3, 0, 0));
    assertEquals(Support.holding("n1", Freedom.UZ), off.get(2));
  }
}
