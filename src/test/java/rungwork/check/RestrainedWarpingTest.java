package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.STEEL;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.result;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Member.Ends;
import rungwork.check.Member.Joint;
import rungwork.check.Member.Warping;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;

class RestrainedWarpingTest {
  private static final Section CHANNEL = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
  private static final Stock STOCK = new Stock(CHANNEL, S355);

  private static RestrainedWarping bay(Ends ends, double length) {
    return new RestrainedWarping(CHANNEL, STEEL, new Warping(ends, length));
  }

  private static double worst(RestrainedWarping bay, double torque) {
    return CHANNEL.points().stream()
        .mapToDouble(point -> bay.stress(torque, point).result())
        .max()
        .orElseThrow();
  }

  @Test
  void a_channel_of_half_a_metre_held_at_both_ends_is_eight_times_as_stiff() {
    assertEquals(7.7, bay(Ends.BOTH_HELD, 0.5).stiffening().result(), 0.15);
  }

  @Test
  void a_hundred_newton_metres_stress_it_by_nearly_three_hundred_megapascal() {
    double stress = worst(bay(Ends.BOTH_HELD, 0.5), 100);
    assertTrue(stress > 280e6 && stress < 310e6, "" + stress);
  }

  @ParameterizedTest
  @CsvSource({
    "WEB_ONLY, WEB_ONLY, FREE",
    "WEB_ONLY, BOTH_FLANGES, ONE_HELD",
    "BOTH_FLANGES, WEB_ONLY, ONE_HELD",
    "BOTH_FLANGES, BOTH_FLANGES, BOTH_HELD",
    "UNKNOWN, BOTH_FLANGES, UNKNOWN",
    "WEB_ONLY, UNKNOWN, UNKNOWN",
    "UNKNOWN, UNKNOWN, UNKNOWN"
  })
  void the_joint_says_what_the_ends_do(Joint start, Joint end, Ends ends) {
    assertEquals(ends, Ends.welded(start, end));
  }

  @Test
  void welding_both_flanges_makes_a_channel_stiffer_and_stresses_it() {
    Ends webOnly = Ends.welded(Joint.WEB_ONLY, Joint.WEB_ONLY);
    Ends flanges = Ends.welded(Joint.BOTH_FLANGES, Joint.BOTH_FLANGES);
    assertEquals(STOCK, webOnly.stiffened(STOCK, 0.5));
    Stock stiffer = flanges.stiffened(STOCK, 0.5);
    assertEquals(7.7, stiffer.section().properties().stiffening(), 0.15);
    assertTrue(worst(bay(flanges, 0.5), 100) > 280e6);
  }

  @Test
  void one_held_end_is_less_stiff_but_more_stressed_than_two() {
    RestrainedWarping one = bay(Ends.ONE_HELD, 0.5);
    RestrainedWarping both = bay(Ends.BOTH_HELD, 0.5);
    assertTrue(one.stiffening().result() < both.stiffening().result());
    assertTrue(worst(one, 100) > 1.4 * worst(both, 100));
  }

  @Test
  void two_bays_with_one_held_end_each_are_one_bay_held_at_both() {
    assertEquals(
        bay(Ends.BOTH_HELD, 1).stiffening().result(),
        bay(Ends.ONE_HELD, 0.5).stiffening().result(),
        1e-9);
    assertEquals(worst(bay(Ends.BOTH_HELD, 1), 100), worst(bay(Ends.ONE_HELD, 0.5), 100), 1);
  }

  @Test
  void a_long_bay_is_hardly_stiffer_for_being_held() {
    assertEquals(1, bay(Ends.BOTH_HELD, 100).stiffening().result(), 0.01);
  }

  @Test
  void a_very_short_bay_is_as_stiff_as_its_flanges_in_bending() {
    double short0 = bay(Ends.BOTH_HELD, 5e-4).stiffening().result();
    double short1 = bay(Ends.BOTH_HELD, 1e-3).stiffening().result();
    assertEquals(4, short0 / short1, 0.001);
    Properties p = CHANNEL.properties();
    double bending =
        12 * STEEL.youngsModulus() * (p.iw() + p.iwAcross()) / STEEL.shearModulus() / p.it();
    assertEquals(bending / 1e-6, short1, 1e-3 * short1);
  }

  /** Vlasov's equation by differences; the torque changes its size and sign along the bay. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void no_torque_of_that_size_makes_more_warping_or_more_twist(long seed) {
    Random random = new Random(seed);
    for (Ends ends : List.of(Ends.BOTH_HELD, Ends.ONE_HELD)) {
      for (double length : new double[] {0.2, 0.5, 1.5}) {
        RestrainedWarping bay = bay(ends, length);
        double[] torque = new double[Vlasov.NODES];
        double level = random.nextDouble() * 2 - 1;
        for (int i = 0; i < torque.length; i++) {
          level = i % 50 == 0 ? random.nextDouble() * 2 - 1 : level;
          torque[i] = 100 * level;
        }
        Vlasov varied = new Vlasov(CHANNEL, STEEL, length, ends, torque);
        StressPoint toe = farthest();
        double most = bay.stress(100, toe).result();
        assertTrue(varied.stress(toe) <= 1.001 * most, "seed " + seed + " " + ends);
        assertTrue(varied.twisting() <= 1.001 * 100 * bay.twistingPart().result());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Ends.class,
      names = {"ONE_HELD", "BOTH_HELD"})
  void a_uniform_torque_meets_the_closed_forms(Ends ends) {
    for (double length : new double[] {0.2, 0.5, 1.5}) {
      RestrainedWarping bay = bay(ends, length);
      double[] torque = new double[Vlasov.NODES];
      java.util.Arrays.fill(torque, 100);
      Vlasov solved = new Vlasov(CHANNEL, STEEL, length, ends, torque);
      StressPoint toe = farthest();
      assertEquals(1, solved.stress(toe) / bay.stress(100, toe).result(), 0.01);
      assertEquals(1, solved.twisting() / (100 * bay.twistingPart().result()), 0.001);
      assertEquals(1, solved.stiffening() / bay.stiffening().result(), 0.001);
    }
  }

  private static StressPoint farthest() {
    return CHANNEL.points().stream()
        .max(java.util.Comparator.comparingDouble(point -> Math.abs(point.sectorial())))
        .orElseThrow();
  }

  @Test
  void only_an_open_section_that_is_held_is_stiffened() {
    Stock tube = new Stock(TUBE, S355);
    assertSame(tube, Ends.BOTH_HELD.stiffened(tube, 0.5));
    assertSame(STOCK, Ends.FREE.stiffened(STOCK, 0.5));
    Properties stiff = Ends.BOTH_HELD.stiffened(STOCK, 0.5).section().properties();
    assertEquals(CHANNEL.properties().it(), stiff.it());
    assertTrue(stiff.twistConstant() > 7 * stiff.it());
  }

  @Test
  void a_drilled_channel_keeps_its_holes_when_its_ends_are_held() {
    Section drilled = CHANNEL.drilled("right web", mm(11));
    Section held = Ends.BOTH_HELD.stiffened(new Stock(drilled, S355), 0.5).section();
    assertEquals(drilled.net(), held.net());
  }

  @Test
  void a_frame_solved_with_its_ends_stated_has_its_open_section_checked() {
    for (Ends ends : Ends.UNKNOWN.cases()) {
      Stock stock = ends.stiffened(STOCK, 1);
      List<Check> checks =
          MemberChecks.of(
              BAR.with(ends), cantilever(stock, Wrench.moment(40, 200, 0)), DesignFactor.ROAD);
      assertTrue(only("combined stress", checks).made(), ends.words());
      List<Check> torsion =
          checks.stream().filter(check -> check.what().equals(OpenTorsion.WHAT)).toList();
      assertEquals(ends == Ends.FREE ? 0 : 1, torsion.size());
      torsion.forEach(check -> assertTrue(check.made()));
    }
  }

  @Test
  void the_warping_stress_adds_to_bending_and_its_working_shows_it() {
    Check check =
        only(
            OpenTorsion.WHAT,
            MemberChecks.of(
                BAR.with(Ends.BOTH_HELD), cantilever(STOCK, Wrench.moment(40, 200, 0)), NONE));
    double sum = Math.abs(result(check, "σb")) + result(check, "σω");
    assertEquals(sum, result(check, "σ"), 1);
    assertEquals(sum, check.verdict().numbers().orElseThrow().demand(), 1e-3 * sum);
    assertTrue(
        check
            .where()
            .endsWith("; warping held at both ends, the largest torque of the bay taken all along"),
        check.where());
    assertEquals(
        "σω = T·a·tanh(L/(2·a))·ω/Iw",
        check.working().stream()
            .map(Step::toString)
            .filter(line -> line.startsWith("σω"))
            .map(line -> line.substring(0, line.indexOf(" = 0.0400")))
            .findFirst()
            .orElse(""));
  }

  @Test
  void held_ends_leave_little_of_the_torque_to_saint_venant() {
    Check free =
        only(
            "combined stress",
            MemberChecks.of(BAR.with(Ends.FREE), cantilever(STOCK, Wrench.moment(40, 0, 0)), NONE));
    Check held =
        only(
            "combined stress",
            MemberChecks.of(
                BAR.with(Ends.BOTH_HELD), cantilever(STOCK, Wrench.moment(40, 0, 0)), NONE));
    double part = bay(Ends.BOTH_HELD, 1).twistingPart().result();
    assertEquals(part * result(free, "τT"), result(held, "τT"), 1);
  }

  /** Between a held end and the freest place, bending and torque the same all along. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void no_place_along_a_bay_is_stressed_much_beyond_its_ends_and_its_freest_place(long seed) {
    Random random = new Random(seed);
    double length = 0.2 + random.nextDouble();
    RestrainedWarping bay = bay(Ends.BOTH_HELD, length);
    double bending = 200e6 * random.nextDouble();
    double torque = 20 + 100 * random.nextDouble();
    double a = bay.decay().result();
    double most = Math.cosh(length / 2 / a);
    for (StressPoint point : CHANNEL.points()) {
      double warping = bay.stress(torque, point).result();
      double twist = torque * Math.abs(point.perT());
      double ends = bending + warping;
      double middle = Math.hypot(bending, Math.sqrt(3) * twist * (1 - 1 / most));
      for (int i = 0; i <= 100; i++) {
        double u = Math.cosh(length / 2 / a * i / 100);
        double sigma = bending + warping * Math.sqrt((u * u - 1) / (most * most - 1));
        double here = Math.hypot(sigma, Math.sqrt(3) * twist * (1 - u / most));
        assertTrue(here <= 1.02 * Math.max(ends, middle), "seed " + seed);
      }
    }
  }

  @Test
  void a_section_known_by_its_properties_alone_stays_not_checked() {
    Section bare = new Section("bare", CHANNEL.properties(), CHANNEL.points(), List.of());
    Section none =
        new Section(
            "none", Section.roundTube(mm(50), mm(3)).properties(), TUBE.points(), List.of());
    assertTrue(new RestrainedWarping(bare, STEEL, new Warping(Ends.FREE, 1)).known());
    assertFalse(new RestrainedWarping(none, STEEL, new Warping(Ends.FREE, 1)).known());
  }
}
