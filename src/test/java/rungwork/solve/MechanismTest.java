package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;

/** Beams of 1 m and 3 m: a turn counts as its arc at their mean length, 2 m. */
class MechanismTest {
  private static Mechanism moving(double... motions) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(1, 0, 0))
            .node("c", new Point(4, 0, 0))
            .beam(Beam.rigid("short", "a", "b", Stocks.TUBE))
            .beam(Beam.rigid("long", "b", "c", Stocks.TUBE))
            .build();
    double[] all = new double[18];
    for (int i = 0; i < motions.length; i += 2) {
      all[(int) motions[i]] = motions[i + 1];
    }
    return new Mechanism(new Structure(frame, List.of()), all);
  }

  @Test
  void a_turn_is_compared_with_moves_through_the_typical_beam() {
    assertEquals("node b turning about y", moving(0, 1.9, 10, 1).place());
    assertEquals("node a moving along x", moving(0, 2.1, 10, 1).place());
  }

  @Test
  void of_two_that_move_alike_but_for_rounding_the_first_is_named() {
    assertEquals("node a moving along z", moving(2, -1, 14, 1 + 1e-7).place());
    assertEquals("node c moving along z", moving(2, -1, 14, 1 + 1e-5).place());
  }

  @Test
  void the_message_says_what_to_do() {
    assertEquals(
        "nothing resists node c moving along z (out of the frame's plane): hold it by a support, or"
            + " join a beam to it there",
        moving(14, 1).message(Action.GRILLAGE));
  }
}
