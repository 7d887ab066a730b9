package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.rated;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import rungwork.check.Member.Ends;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;

/** A channel of 1 m, its warping held, twisted and bent alike all along. */
class HeldWarpingTest {
  private static final Section CHANNEL = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
  private static final Stock STOCK = new Stock(CHANNEL, S355);
  private static final Member HELD = BAR.with(Ends.BOTH_HELD);
  private static final double MOMENT = 900;

  private static Wrench wrench(double torque, double moment) {
    return Wrench.moment(torque, moment, 0);
  }

  /** Parts of a torque by the closed forms of a bay held at both ends, k = √(G·It/(E·Iw)). */
  private record Bay(double warping, double twisting) {
    static Bay ofOneMetre() {
      Properties p = CHANNEL.properties();
      double g = 210e9 / 2.6;
      double k = Math.sqrt(g * p.it() / (210e9 * (p.iw() + p.iwAcross())));
      // Bimoment T/k·tanh(kL/2) at the ends, Saint-Venant's part 1 − 1/cosh(kL/2) in the middle.
      return new Bay(Math.tanh(k / 2) / k, 1 - 1 / Math.cosh(k / 2));
    }

    /** Normal stress of warping for a torque of one. */
    double normal(StressPoint point) {
      Properties p = CHANNEL.properties();
      return Math.abs(warping * point.sectorial()) / (p.iw() + p.iwAcross());
    }

    double shear(StressPoint point) {
      return twisting * Math.abs(point.perT());
    }
  }

  private static double bending(StressPoint point) {
    return Math.abs(MOMENT * point.z() / CHANNEL.properties().iy());
  }

  private static double most(ToDoubleFunction<StressPoint> stress) {
    return CHANNEL.points().stream().mapToDouble(stress).max().orElseThrow();
  }

  private static double demand(Check check) {
    return check.verdict().numbers().orElseThrow().demand();
  }

  @Test
  void warping_adds_to_bending_at_the_ends_and_twist_to_it_in_the_middle() {
    Bay bay = Bay.ofOneMetre();
    for (double torque : new double[] {8, -8}) {
      List<Check> checks = MemberChecks.of(HELD, cantilever(STOCK, wrench(torque, MOMENT)), NONE);
      double ends = most(point -> bending(point) + 8 * bay.normal(point));
      assertEquals(ends, demand(only(OpenTorsion.WHAT, checks)), 1e-9 * ends);
      double middle =
          most(
              point ->
                  Math.sqrt(Math.pow(bending(point), 2) + 3 * Math.pow(8 * bay.shear(point), 2)));
      assertEquals(middle, demand(only("combined stress", checks)), 1e-9 * middle);
    }
  }

  /** What stands: the moment and 2 N·m; what grows: 3 N·m. Warping counts with either sign. */
  @Test
  void a_growing_torque_meets_yield_at_the_ends_or_in_the_middle() {
    Bay bay = Bay.ofOneMetre();
    double fy = 355e6;
    double times =
        CHANNEL.points().stream()
            .mapToDouble(
                point ->
                    Math.min(
                        ((fy - bending(point)) / bay.normal(point) - 2) / 3,
                        (Math.sqrt((fy * fy - Math.pow(bending(point), 2)) / 3) / bay.shear(point)
                                - 2)
                            / 3))
            .min()
            .orElseThrow();
    for (double sign : new double[] {1, -1}) {
      Growth growth =
          new Growth(
              cantilever(STOCK, wrench(sign * 2, MOMENT)), cantilever(STOCK, wrench(sign * 3, 0)));
      Onset onset = MemberChecks.firstYield(HELD, growth, S355.strength());
      assertEquals(times, onset.factor(), 1e-9 * times);
    }
  }

  @Test
  void an_end_that_holds_the_warping_is_welded_and_counts_with_its_welded_strength() {
    Stock soft = new Stock(CHANNEL, rated("4130", 517e6, 414e6));
    Check check =
        only(OpenTorsion.WHAT, MemberChecks.of(HELD, cantilever(soft, wrench(8, 0)), NONE));
    assertEquals(414e6, check.verdict().numbers().orElseThrow().capacity());
  }

  @Test
  void while_the_ends_are_not_known_the_working_shows_the_farthest_points_warping() {
    Check check =
        only(OpenTorsion.WHAT, MemberChecks.of(BAR, cantilever(STOCK, wrench(8, 0)), NONE));
    double last = check.working().get(check.working().size() - 1).result();
    double held = 8 * most(Bay.ofOneMetre()::normal);
    assertEquals(held, Math.abs(last), 1e-9 * held);
  }
}
