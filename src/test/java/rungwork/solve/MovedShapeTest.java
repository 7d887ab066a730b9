package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;

/** A beam a–b of four pieces: nodes 0 and 1 are its ends, 2 to 4 its cuts. */
class MovedShapeTest {
  private static final Beam BEAM = Beam.rigid("rail", "a", "b", Stocks.TUBE);

  private static MovedShape of(int pieces, double... motions) {
    Frame frame =
        Frame.in(Plane.SIDE)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(1, 0, 0))
            .beam(BEAM)
            .build();
    Cutting cutting = new Cutting(frame, pieces);
    double[] all = new double[6 * (pieces + 1)];
    for (int i = 0; i < motions.length; i += 2) {
      all[(int) motions[i]] = motions[i + 1];
    }
    return new MovedShape(cutting, cutting.structure(), all);
  }

  @Test
  void the_largest_move_becomes_one_and_turns_go_with_it() {
    MovedShape shape = of(4, 1, -0.5, 7, 2.0, 9, 6.0);
    assertEquals(-0.25, shape.motion(1));
    assertEquals(1, shape.motion(7));
    assertEquals(3, shape.motion(9), "a turn is not compared with moves");
  }

  /** In side elevation the frame's axes p, q, n are x, z and −y. */
  @Test
  void motions_are_told_in_vehicle_axes() {
    Displacement end = of(4, 6, 1, 7, 0.25, 8, 0.5, 9, 3, 10, 4, 11, 5).at("b");
    assertEquals(new Displacement(1, -0.5, 0.25, 3, -5, 4), end);
  }

  @Test
  void what_moves_most_is_told_in_the_users_names() {
    assertEquals("node b moving along z most", of(4, 1, 0.5, 7, -2).words());
    assertEquals("node a moving along x most", of(4, 0, -3, 7, 2).words());
    assertEquals("the middle of beam rail moving along z most", of(4, 6 * 3 + 1, 1).words());
    assertEquals("in beam rail moving along y most", of(4, 6 * 2 + 2, 1).words());
    assertEquals("in beam rail moving along y most", of(4, 6 * 4 + 2, 1).words());
  }

  /** Three pieces have no middle cut; nodes 0 to 2 are ends, 3 and 4 the rail's cuts. */
  @Test
  void a_cut_is_named_by_its_own_beam() {
    Frame frame =
        Frame.in(Plane.SIDE)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(1, 0, 0))
            .node("c", new Point(2, 0, 0))
            .beam(BEAM)
            .beam(Beam.rigid("tail", "b", "c", Stocks.TUBE))
            .build();
    for (int pieces : new int[] {3, 4}) {
      Cutting cutting = new Cutting(frame, pieces);
      for (int cut = 1; cut < pieces; cut++) {
        for (int beam = 0; beam < 2; beam++) {
          double[] all = new double[6 * (3 + 2 * (pieces - 1))];
          all[6 * (3 + beam * (pieces - 1) + cut - 1)] = 1;
          String where = 2 * cut == pieces ? "the middle of beam " : "in beam ";
          assertEquals(
              where + (beam == 0 ? "rail" : "tail") + " moving along x most",
              new MovedShape(cutting, cutting.structure(), all).words());
        }
      }
    }
  }

  @Test
  void of_two_that_move_alike_but_for_rounding_the_first_is_named() {
    assertEquals("node a moving along z most", of(4, 1, 1, 7, -(1 + 1e-7)).words());
    assertEquals("node b moving along z most", of(4, 1, 1, 7, -(1 + 1e-5)).words());
  }

  @Test
  void the_middle_of_a_beam_is_its_middle_cut() {
    assertEquals(0.5, of(4, 7, 2, 6 * 3 + 1, 1).middle(BEAM).uz());
    assertEquals(1, of(2, 6 * 2 + 1, 7).middle(BEAM).uz());
  }
}
