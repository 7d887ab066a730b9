package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Support;

/** Motions are counted node by node, six each, in the frame's axes. */
class StructureTest {
  /** Four nodes a quarter apart along y, told out of order; the second beam runs backwards. */
  private static Frame.Builder row(Plane plane) {
    return Frame.in(plane)
        .node("a", new Point(0, 0.50, 0))
        .node("b", new Point(0, 0.00, 0))
        .node("c", new Point(0, 0.75, 0))
        .node("d", new Point(0, 0.25, 0))
        .beam(Beam.rigid("first", "b", "d", Stocks.TUBE))
        .beam(Beam.rigid("second", "a", "d", Stocks.TUBE))
        .beam(Beam.rigid("third", "a", "c", Stocks.TUBE));
  }

  @Test
  void nodes_are_ordered_along_the_longer_side() {
    Frame plan = row(Plane.PLAN).build();
    Frame front = row(Plane.FRONT).build();
    assertArrayEquals(new int[] {1, 3, 0, 2}, new Structure(plan, List.of()).order());
    assertArrayEquals(new int[] {1, 3, 0, 2}, new Structure(front, List.of()).order());
  }

  /** A ring of four: by its longer side 0.1 by 1 m each way round; any order has a reach of 2. */
  @Test
  void of_nodes_in_a_ring_those_at_one_end_of_its_longer_side_come_first() {
    for (boolean lengthways : List.of(true, false)) {
      Frame.Builder ring = Frame.in(Plane.PLAN);
      double[][] places = {{1, 0.1}, {0, 0.1}, {1, 0}, {0, 0}};
      for (int i = 0; i < 4; i++) {
        double along = places[i][0];
        double across = places[i][1];
        ring.node("n" + i, lengthways ? new Point(along, across, 0) : new Point(across, along, 0));
      }
      ring.beam(Beam.rigid("a", "n0", "n1", Stocks.TUBE))
          .beam(Beam.rigid("b", "n1", "n3", Stocks.TUBE))
          .beam(Beam.rigid("c", "n3", "n2", Stocks.TUBE))
          .beam(Beam.rigid("d", "n2", "n0", Stocks.TUBE));
      assertArrayEquals(new int[] {3, 1, 2, 0}, new Structure(ring.build(), List.of()).order());
    }
  }

  @Test
  void a_member_has_the_motions_of_its_start_then_of_its_end() {
    Structure structure = new Structure(row(Plane.PLAN).build(), List.of());
    assertArrayEquals(new int[] {0, 1, 2, 3, 4, 5, 18, 19, 20, 21, 22, 23}, structure.places(1));
    assertEquals(1, structure.member("second"));
    assertEquals(3, structure.node("d"));
    assertEquals(24, structure.motions());
  }

  @Test
  void its_size_is_the_distance_from_the_first_node_to_the_farthest() {
    assertEquals(0.5, new Structure(row(Plane.PLAN).build(), List.of()).size(), 1e-15);
  }

  /** In side elevation the frame's axes are x, z and −y: its second motion is along z. */
  @Test
  void supports_hold_and_spring_the_motions_that_they_name() {
    Frame side =
        Frame.in(Plane.SIDE)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(1, 0, 0))
            .beam(Beam.rigid("beam", "a", "b", Stocks.TUBE))
            .support(Support.holding("b", Freedom.UZ, Freedom.RY))
            .support(Support.spring("a", Freedom.UZ, 300))
            .support(Support.spring("a", Freedom.UX, 200))
            .build();
    Structure structure = new Structure(side, side.supports());
    for (int motion = 0; motion < 12; motion++) {
      assertEquals(motion == 7 || motion == 11, structure.held(motion), "motion " + motion);
      assertEquals(structure.held(motion), structure.supported(motion), "motion " + motion);
      double spring = motion == 0 ? 200 : motion == 1 ? 300 : 0;
      assertEquals(spring, structure.spring(motion), "motion " + motion);
    }
    assertFalse(structure.isFree());
  }

  @Test
  void what_is_held_only_to_remove_the_free_motion_takes_no_force() {
    Frame free = row(Plane.PLAN).build();
    Structure structure = new Structure(free, List.of(Support.fixed("a")));
    assertTrue(structure.isFree());
    assertTrue(structure.held(0));
    assertFalse(structure.supported(0));
  }

  @Test
  void under_normal_forces_it_is_the_same_frame() {
    Structure structure = new Structure(row(Plane.PLAN).build(), List.of(Support.fixed("a")));
    Structure pressed = structure.under(new double[] {-10, 20, 0});
    assertEquals(-10, pressed.members().get(0).normalForce());
    assertEquals(20, pressed.members().get(1).normalForce());
    assertEquals(0, structure.members().get(0).normalForce());
    assertArrayEquals(structure.order(), pressed.order());
    assertEquals(structure.size(), pressed.size());
    assertTrue(pressed.held(0));
  }
}
