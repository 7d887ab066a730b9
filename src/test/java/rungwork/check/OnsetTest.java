package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.rated;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Member.Ends;
import rungwork.check.Member.Weld;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.frame.Load;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.material.RatedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.solve.YieldSurface;

/** When something begins as loads grow on top of what stands. */
class OnsetTest {
  private static final Stock STOCK = new Stock(TUBE, S355);
  private static final Stock CHANNEL =
      new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), S355);

  private static Wrench random(Random random) {
    double[] w = random.doubles(6, -1, 1).toArray();
    return new Wrench(9e3 * w[0], 2e3 * w[1], 3e3 * w[2], 300 * w[3], 800 * w[4], 500 * w[5]);
  }

  private static Growth growth(Stock stock, Wrench standing, Wrench growing) {
    return new Growth(cantilever(stock, standing), cantilever(stock, growing));
  }

  private static double utilisation(String what, Member member, Stock stock, Wrench load) {
    Load atTip = new Load.AtNode("tip", load);
    return only(what, MemberChecks.of(member, cantilever(stock, atTip), NONE))
        .utilisation()
        .orElseThrow();
  }

  /** The check of combined stress is the judge: at the onset it is used up to the last digit. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void at_first_yield_the_combined_stress_is_the_yield_strength(long seed) {
    Random random = new Random(seed);
    Wrench standing = random(random).times(0.2);
    Wrench growing = random(random).times(0.1);
    Onset onset = MemberChecks.firstYield(BAR, growth(STOCK, standing, growing), S355.strength());
    Wrench then = standing.plus(growing.times(onset.factor()));
    assertEquals(1, utilisation("combined stress", BAR, STOCK, then), 1e-9, "seed " + seed);
    assertEquals(onset.factor(), onset.working().get(0).result(), 1e-12);
    assertTrue(onset.doubts().isEmpty());
  }

  @ParameterizedTest
  @EnumSource(
      value = Ends.class,
      names = {"FREE", "ONE_HELD", "BOTH_HELD"})
  void an_open_section_yields_where_twist_or_held_warping_says_so(Ends ends) {
    Wrench standing = new Wrench(0, 0, -200, 4, 0, 0);
    Wrench growing = new Wrench(-2e3, 100, 300, 8, 0, 0);
    Member bar = BAR.with(ends);
    Onset onset = MemberChecks.firstYield(bar, growth(CHANNEL, standing, growing), S355.strength());
    Wrench then = standing.plus(growing.times(onset.factor()));
    double use = utilisation("combined stress", bar, CHANNEL, then);
    if (ends != Ends.FREE) {
      use = Math.max(use, utilisation(OpenTorsion.WHAT, bar, CHANNEL, then));
    }
    // Torques add up along the bay as if their signs were alike, so the onset may come early.
    assertTrue(use <= 1 + 1e-9 && use > 0.9, ends + " " + use);
  }

  @Test
  void an_open_section_of_which_the_warping_is_not_known_is_marked() {
    Growth growth = growth(CHANNEL, new Wrench(0, 0, 0, 0, 0, 0), new Wrench(0, 0, 500, 40, 0, 0));
    assertEquals(
        List.of("the stress of warping is left out"),
        MemberChecks.firstYield(BAR, growth, S355.strength()).doubts());
  }

  @Test
  void beside_a_weld_the_lower_strength_counts() {
    Member welded =
        new Member("bar", List.of("bar"), Examples.ONE_METRE, List.of(new Weld("root", 0)));
    Growth growth = growth(STOCK, Wrench.ZERO, Wrench.force(0, 0, 100));
    RatedMaterial.Strength soft = rated("soft beside welds", 355e6, 177.5e6).strength();
    double plain = MemberChecks.firstYield(BAR, growth, soft).factor();
    double lowered = MemberChecks.firstYield(welded, growth, soft).factor();
    assertEquals(0.5, lowered / plain, 1e-9);
  }

  @Test
  void what_yields_while_standing_yields_at_once_and_what_is_never_stressed_never() {
    Growth early = growth(STOCK, Wrench.force(0, 0, 9e4), Wrench.force(0, 0, 1));
    assertEquals(0, MemberChecks.firstYield(BAR, early, S355.strength()).factor());
    Growth never = growth(STOCK, Wrench.force(0, 0, 9), Wrench.ZERO);
    Onset onset = MemberChecks.firstYield(BAR, never, S355.strength());
    assertEquals(Double.POSITIVE_INFINITY, onset.factor());
    assertTrue(onset.working().isEmpty());
  }

  @Test
  void a_section_without_stress_points_is_not_checked() {
    Properties p = TUBE.properties();
    Stock bare = new Stock(new Section("bare", p, List.of(), List.of()), S355);
    Growth growth = growth(bare, Wrench.ZERO, Wrench.force(0, 0, 1));
    Onset onset = MemberChecks.firstYield(BAR, growth, S355.strength());
    assertEquals(List.of("section bare has no stress points"), onset.doubts());
    List<Check> twisted =
        MemberChecks.of(BAR, cantilever(bare, new Wrench(0, 0, 0, 9, 0, 0)), NONE);
    assertTrue(twisted.stream().noneMatch(Check::made), twisted::toString);
    assertEquals(Double.POSITIVE_INFINITY, onset.factor());
  }

  @Test
  void a_section_is_fully_plastic_at_its_plastic_moment() {
    YieldSurface surface = YieldSurface.around(TUBE, 355e6);
    Growth growth = growth(STOCK, Wrench.force(0, 0, 100), Wrench.force(0, 0, 300));
    Onset onset = MemberChecks.fullyPlastic(BAR, growth, surface);
    double moment = 355e6 * TUBE.properties().wply();
    assertEquals((moment - 100) / 300, onset.factor(), 1e-3 * onset.factor());
    assertEquals("at root", onset.where());
    Growth nothing = growth(STOCK, Wrench.force(0, 0, 100), Wrench.ZERO);
    assertEquals(
        Double.POSITIVE_INFINITY, MemberChecks.fullyPlastic(BAR, nothing, surface).factor());
  }

  @Test
  void a_column_buckles_by_its_own_length_or_by_the_critical_force_that_is_given() {
    Wrench push = Wrench.force(-1e3, 0, 0);
    Properties p = TUBE.properties();
    double critical = Math.PI * Math.PI * 210e9 * p.iz();
    Onset own = MemberChecks.column(BAR, cantilever(STOCK, push), 355e6, OptionalDouble.empty());
    Onset given =
        MemberChecks.column(BAR, cantilever(STOCK, push), 355e6, OptionalDouble.of(critical));
    Onset half =
        MemberChecks.column(BAR, cantilever(STOCK, push), 355e6, OptionalDouble.of(critical / 4));
    double slenderness = Math.sqrt(p.area() * 355e6 / critical);
    double phi = 0.5 * (1 + 0.49 * (slenderness - 0.2) + slenderness * slenderness);
    double chi = 1 / (phi + Math.sqrt(phi * phi - slenderness * slenderness));
    assertEquals(chi * p.area() * 355e6 / 1e3, own.factor(), 1e-9 * own.factor());
    assertEquals(own.factor(), given.factor(), 1e-9 * own.factor());
    assertTrue(half.factor() < 0.5 * own.factor());
    assertEquals("between its ends: full length", own.where());
    assertEquals("by the frame's own critical load", given.where());
    Onset pulled =
        MemberChecks.column(BAR, cantilever(STOCK, push.times(-1)), 355e6, OptionalDouble.empty());
    assertEquals(Double.POSITIVE_INFINITY, pulled.factor());
  }
}
