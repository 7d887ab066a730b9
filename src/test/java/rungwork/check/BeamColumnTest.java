package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;

import org.junit.jupiter.api.Test;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Properties;

class BeamColumnTest {
  private static final Stock STOCK = new Stock(TUBE, S355);

  /** Strong moment large, weak column braced: then equation 6.61 is above 6.62. */
  @Test
  void the_worse_of_both_equations_is_the_utilisation() {
    Member braced = BAR.with(new Member.BucklingLengths(0.1, 3, "braced in the frame's plane"));
    Wrench wrench = new Wrench(-40e3, 0, 0, 0, 1500, 100);
    Check check =
        only(ColumnBuckling.WHAT, MemberChecks.of(braced, cantilever(STOCK, wrench), NONE));
    Properties p = TUBE.properties();
    double[] n = new double[2];
    double[] k = new double[2];
    double[] inertia = {p.iy(), p.iz()};
    double[] length = {3, 0.1};
    for (int i = 0; i < 2; i++) {
      double critical = Math.PI * Math.PI * 210e9 * inertia[i] / (length[i] * length[i]);
      double bar = Math.sqrt(p.area() * 355e6 / critical);
      double phi = 0.5 * (1 + 0.49 * (bar - 0.2) + bar * bar);
      double chi = bar <= 0.2 ? 1 : 1 / (phi + Math.sqrt(phi * phi - bar * bar));
      n[i] = 40e3 / (chi * p.area() * 355e6);
      k[i] = 1 + 0.6 * Math.min(1, bar) * n[i];
    }
    double strong = 1500 / (p.wely() * 355e6);
    double weak = 100 / (p.welz() * 355e6);
    double first = n[0] + k[0] * strong + k[1] * weak;
    assertTrue(first > n[1] + 0.8 * k[0] * strong + k[1] * weak);
    assertEquals(first, check.utilisation().orElseThrow(), 1e-9);
  }
}
