package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.ONE_METRE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.rated;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Member.Weld;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Spot;
import rungwork.solve.InternalForces;

class CutTest {
  private static final Stock STOCK = new Stock(TUBE, S355);
  private static final Beam BEAM = Beam.rigid("bar", "root", "tip", STOCK);

  private static Cut at(double fraction) {
    return new Cut(BEAM, TUBE, fraction, fraction, new InternalForces(1000, 2, 3, 4, 50, 60));
  }

  @Test
  void a_place_is_named_by_its_node_or_by_its_part_of_the_way() {
    assertEquals("at root", at(0).place());
    assertEquals("at tip", at(1).place());
    assertEquals("75 % of the way from root to tip", at(0.75).place());
  }

  /**
   * The new centroid 10 mm left and 20 mm above the old one: the force, where it was, now stands 20
   * below and 10 right of it. About it, N·(−20) joins My, and N·10 joins Mz, which counts as −y.
   */
  @Test
  void forces_about_another_centroid_stay_where_they_are() {
    InternalForces moved = at(0.5).about(TUBE, new Spot(0.010, 0.020)).forces();
    assertEquals(new InternalForces(1000, 2, 3, 4, 50 - 20, 60 + 10), moved);
  }

  /** 1000 N on 1 m: beside a weld at the tip 25 N·m, beside one at the middle 525 N·m. */
  @Test
  void only_what_lies_within_25_mm_of_a_weld_counts_as_beside_it() {
    Stock stock = new Stock(TUBE, rated("4130", 517e6, 414e6));
    for (double place : new double[] {1, 0.5}) {
      Member welded =
          new Member("bar", List.of("bar"), ONE_METRE, List.of(new Weld("joint", place)));
      List<Check> checks =
          MemberChecks.of(welded, cantilever(stock, Wrench.force(0, 0, -1000)), NONE);
      double moment = 1000 * (1 - place + 0.025);
      double shear = 0.5e6;
      double demand = demand(only("combined stress beside a weld", checks));
      double expected = moment / TUBE.properties().wely();
      assertTrue(demand >= 0.97 * expected && demand < expected + 60 * shear, demand + " Pa");
      assertTrue(demand < 0.6 * demand(only("combined stress", checks)));
    }
  }

  private static double demand(Check check) {
    return check.verdict().numbers().orElseThrow().demand();
  }
}
