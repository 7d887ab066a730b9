package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.result;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import rungwork.check.Verdict.Measured;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;
import rungwork.section.Properties;
import rungwork.section.Section;

/** Members with holes: stress of the net section, stiffness of the gross one. */
class DrilledMemberTest {
  private static final Section DRILLED = TUBE.drilled("left wall", mm(11));
  private static final Stock GROSS = new Stock(TUBE, S355);
  private static final Stock NET = new Stock(DRILLED, S355);

  /** N/A of what is left, and the moment of N about the centroid that has moved aside. */
  @Test
  void a_pull_through_the_gross_centroid_bends_the_net_section() {
    Check check = stress(NET, Wrench.force(10e3, 0, 0));
    double area = TUBE.properties().area() - 33e-6;
    double aside = 33e-6 * 18.5e-3 / area;
    double iz = DRILLED.net().orElseThrow().iz();
    double expected = 10e3 / area + 10e3 * aside * (20e-3 + aside) / iz;
    double demand = ((Measured) check.verdict()).demand();
    assertEquals(expected, demand, 1e-4 * expected);
    assertTrue(demand > 10e3 / TUBE.properties().area() * 1.05);
  }

  /** The same with the hole on top: 11 by 3 mm are gone 38.5 mm over the centroid. */
  @Test
  void a_hole_on_top_moves_the_centroid_down() {
    Section drilled = TUBE.drilled("top wall", mm(11));
    Check check = stress(new Stock(drilled, S355), Wrench.force(10e3, 0, 0));
    double area = TUBE.properties().area() - 33e-6;
    double down = 33e-6 * 38.5e-3 / area;
    double gone = 33e-6 * (38.5e-3 * 38.5e-3 + 9e-6 / 12);
    double iy = TUBE.properties().iy() - gone - area * down * down;
    double expected = 10e3 / area + 10e3 * down * (40e-3 + down) / iy;
    assertEquals(expected, ((Measured) check.verdict()).demand(), 1e-9 * expected);
  }

  @Test
  void the_working_says_what_the_holes_take_and_by_which_clause() {
    Check check = stress(NET, Wrench.force(10e3, 0, 0));
    Step net = check.working().get(0);
    assertEquals("A,net = A − ΔA = 6.608 cm² − 0.3300 cm² = 6.278 cm²", net.text(Units.METRIC));
    assertEquals(
        "EN 1993-1-1:2005, 6.2.2.2: stress on the net section about its own axes; stiffness and"
            + " stability of the gross one; the peak at a hole's edge is not counted",
        net.formula().source());
    assertEquals(DRILLED.net().orElseThrow().area(), result(check, "A,net"), 1e-12);
  }

  @Test
  void a_hole_changes_no_deflection() {
    Wrench load = Wrench.force(0, 0, -100);
    assertEquals(
        cantilever(GROSS, load).displacement("tip").uz(),
        cantilever(NET, load).displacement("tip").uz());
  }

  @Test
  void bending_about_the_axis_through_the_hole_loses_next_to_nothing() {
    double gross = ((Measured) stress(GROSS, Wrench.moment(0, 1000, 0)).verdict()).demand();
    double net = ((Measured) stress(NET, Wrench.moment(0, 1000, 0)).verdict()).demand();
    Properties p = TUBE.properties();
    double left = p.iy() - 3 * 1331e-12 / 12;
    assertEquals(gross * p.iy() / left, net, 1e-6 * net);
  }

  private static Check stress(Stock stock, Wrench load) {
    return only("combined stress", MemberChecks.of(BAR, cantilever(stock, load), NONE));
  }
}
