package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Wrench;
import rungwork.material.UnratedMaterial;
import rungwork.quantity.Units;
import rungwork.solve.Displacement;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

class CollapseTest {
  private static final double G = 9.80665;
  private static final Ladder LADDER = Runabout.ladder(Runabout.steel(235));

  private static final Map<Event.Hit, Collapse> HITS = new EnumMap<>(Event.Hit.class);

  private static Collapse hit(Event.Hit hit) {
    return HITS.computeIfAbsent(hit, where -> Collapse.of(Runabout.vehicle(), LADDER, where));
  }

  /**
   * The foremost crossmember between its rails, hit in its middle: 4 (M + M)/L with the rails'
   * joints as strong as itself; hinged, half of it. Lengths from line to line, small N left out.
   */
  @Test
  void a_post_in_the_middle_bends_the_front_crossmember_like_a_clamped_or_a_hinged_beam() {
    Collapse post = hit(Event.Hit.CENTRE);
    double moment = 235e6 * 2.56e-5;
    double plastic = LADDER.crossmember("front").stock().section().properties().wplz() * 235e6;
    assertTrue(moment > plastic * 0.9, "a clamped beam of that size");
    double clamped = 8 * plastic / 0.7;
    Collapse.Path low = post.rigid(CrushTube.Strength.LOW);
    double inside = 0.9 / 1.09;
    assertEquals(
        1, low.last().reached().force() / (clamped * inside), 0.08, "faces lie inside by 9 %");
    Collapse.Path weakest = post.deciding(CrushTube.Strength.LOW);
    assertEquals(0.5, weakest.last().reached().force() / low.last().reached().force(), 0.03);
    assertEquals("front crossmember at its middle", low.first().opened().get(0).words());
    assertEquals(3, low.last().hinges().size());
  }

  @Test
  void force_is_amplified_mass_times_deceleration() {
    Collapse.Path path = hit(Event.Hit.FULL_WIDTH).rigid(CrushTube.Strength.LOW);
    double mass = Runabout.vehicle().on(LADDER).massTotal();
    assertEquals(mass, path.last().reached().force() / path.last().reached().deceleration(), 1e-9);
    assertEquals(mass * G, path.pushed().unit(), 1e-6);
  }

  @ParameterizedTest
  @EnumSource(Event.Hit.class)
  void the_low_strength_gives_way_before_the_high_one_and_the_range_holds_all_runs(Event.Hit hit) {
    Collapse collapse = hit(hit);
    double low = collapse.deciding(CrushTube.Strength.LOW).last().reached().force();
    double high = collapse.deciding(CrushTube.Strength.HIGH).last().reached().force();
    assertTrue(low < 0.5 * high, low + " and " + high);
    assertEquals(low, collapse.force().low(), 1e-6 * low);
    assertEquals(high, collapse.force().high(), 1e-6 * high);
    assertTrue(collapse.firstHinge().low() <= collapse.deceleration().low());
    assertTrue(collapse.crush().low() > 0 && collapse.crush().high() < 0.5);
    assertEquals(2 * 3 * LADDER.joints().size(), collapse.paths().size());
  }

  @ParameterizedTest
  @EnumSource(Event.Hit.class)
  void the_energy_is_the_area_under_the_curve(Event.Hit hit) {
    for (Collapse.Path path : hit(hit).hardening(0.01).paths()) {
      CrushCurve curve = path.curve(mm(300));
      for (double crush : new double[] {0.002, 0.01, 0.1, 0.3}) {
        double area = area(path, crush);
        assertEquals(area, path.energy(crush), 1e-6 * area);
        assertEquals(area, curve.energy(crush), 1e-6 * area);
        assertEquals(path.force(crush), curve.force(crush), 1e-6 * path.force(crush));
      }
    }
  }

  /** By Simpson's rule between the corners. */
  private static double area(Collapse.Path path, double crush) {
    double sum = 0;
    double from = 0;
    for (Collapse.Reached corner : path.corners()) {
      double to = Math.min(crush, corner.crush());
      sum += piece(path, from, to);
      from = Math.max(from, to);
    }
    return sum + piece(path, from, crush);
  }

  private static double piece(Collapse.Path path, double from, double to) {
    if (to <= from) {
      return 0;
    }
    double middle = path.force((from + to) / 2);
    return (to - from) * (path.force(from) + 4 * middle + path.force(to)) / 6;
  }

  /** What all loads of 1 g do on the ways of the nodes is the force of 1 g times the crush. */
  @ParameterizedTest
  @EnumSource(Event.Hit.class)
  void crush_is_the_hit_points_way_against_the_masses(Event.Hit hit) {
    Collapse.Path path = hit(hit).rigid(CrushTube.Strength.LOW);
    double expected = path.pushed().unit() * path.last().reached().crush();
    double work = work(path, node -> path.moved(path.last(), node));
    assertEquals(expected, work, 1e-6 * expected);
    assertEquals(path.pushed().unit(), work(path, path::movesOn), 1e-6 * path.pushed().unit());
  }

  private static double work(Collapse.Path path, Function<String, Displacement> moves) {
    Frame frame = LADDER.frame(Joints.RIGID);
    double work = 0;
    for (Load load : path.of().growing().loads()) {
      if (load instanceof Load.AtNode at) {
        Displacement d = moves.apply(at.node());
        Wrench w = at.wrench();
        work += w.fx() * d.ux() + w.fy() * d.uy() + w.fz() * d.uz();
        work += w.mx() * d.rx() + w.my() * d.ry() + w.mz() * d.rz();
      } else if (load instanceof Load.AlongPart along) {
        Beam beam = frame.beam(along.beam());
        double sixth = frame.length(beam) / 6;
        Displacement start = moves.apply(beam.start()).times(sixth);
        Displacement end = moves.apply(beam.end()).times(sixth);
        work += 2 * along(along.first(), start) + along(along.first(), end);
        work += along(along.last(), start) + 2 * along(along.last(), end);
      }
    }
    return work;
  }

  private static double along(Load.PerMetre load, Displacement way) {
    return load.wx() * way.ux() + load.wy() * way.uy() + load.wz() * way.uz();
  }

  @Test
  void strain_rate_and_hardening_change_what_they_should() {
    Collapse slow = hit(Event.Hit.CENTRE).strainRate(0);
    Collapse usual = hit(Event.Hit.CENTRE);
    Collapse hardened = usual.hardening(0.01);
    double rate = 1 + Math.pow(1 / 40.4, 0.2);
    assertEquals(rate, usual.force().high() / slow.force().high(), 0.03);
    assertEquals(slow.force().low(), usual.force().low(), 1e-9);
    assertEquals(usual.force(), hardened.force());
    assertTrue(hardened.energy(mm(100)).low() > usual.energy(mm(100)).low());
    assertEquals(5, usual.leftOut().size());
    assertEquals(4, hardened.leftOut().size());
    assertEquals(6, hardened.assumptions().size());
    assertTrue(slow.assumptions().get(1).endsWith("strain rate left out."));
  }

  /**
   * Clamped at both ends with hinges there and in its middle, θ and 2 θ and θ for a middle that
   * moves θ L/2: Σ E I θ²/h is 6 · (2/L)² E I/h.
   */
  @Test
  void hardening_adds_what_the_three_hinges_of_the_crossmember_add() {
    Collapse.Path path = hit(Event.Hit.CENTRE).hardening(0.01).rigid(CrushTube.Strength.HIGH);
    double inertia = LADDER.crossmember("front").stock().section().properties().iz();
    double expected = 0.01 * 6 * Math.pow(2 / 0.7, 2) * 210e9 * inertia / 0.05;
    assertEquals(1, path.pushed().hardening() / expected, 0.1);
  }

  @Test
  void a_crash_runs_on_the_curves_of_the_pushover() {
    RigidOrCrush.Rails rails = hit(Event.Hit.FULL_WIDTH).rails(mm(1500));
    for (CrushCurve curve : List.of(rails.low(), rails.high())) {
      Crash crash = CrashModel.of("Runabout", kmh(30), kg(530), curve).run();
      assertTrue(crash.residual() < 1e-3);
      double peak = crash.parts().get(0).mostForce();
      assertEquals(curve.peak(), peak, 1e-3 * peak, "the frame reaches its mechanism");
    }
  }

  @Test
  void it_says_what_it_is() {
    String words = hit(Event.Hit.LEFT_TIP).toString();
    assertTrue(words.startsWith("Collapse of Runabout, left tip: first hinge at "), words);
    assertTrue(words.endsWith("Injury cannot be predicted from these numbers."), words);
    assertEquals(1, hit(Event.Hit.LEFT_TIP).seatsAtOneG().size());
    assertEquals(List.of(), hit(Event.Hit.LEFT_TIP).warnings(Units.METRIC));
  }

  @Test
  void a_material_without_a_stated_strength_is_refused() {
    UnratedMaterial bare =
        new UnratedMaterial(
            "shed steel",
            Runabout.steel(235).elasticity(),
            new rungwork.material.Source("found", rungwork.material.Source.Tag.STATED_BY_USER));
    ModelException refusal =
        assertThrows(
            ModelException.class,
            () -> Collapse.of(Runabout.vehicle(), Runabout.ladder(bare), Event.Hit.FULL_WIDTH));
    assertEquals(
        "left rail 1 is cut from shed steel, whose strength nobody states; a collapse needs a rated"
            + " material",
        refusal.getMessage());
  }

  @Test
  void an_interruption_ends_it() {
    Thread.currentThread().interrupt();
    SolveException refusal =
        assertThrows(
            SolveException.class,
            () -> Collapse.of(Runabout.vehicle(), LADDER, Event.Hit.FULL_WIDTH));
    assertTrue(Thread.interrupted(), "it stays marked");
    assertEquals(
        "the collapse was interrupted before low strength, joints rigid", refusal.getMessage());
  }

  @Test
  void a_frame_that_cannot_carry_its_own_masses_is_refused() {
    SolveException refusal =
        assertThrows(
            SolveException.class,
            () ->
                Collapse.of(
                    Runabout.vehicle(), Runabout.ladder(Runabout.steel(30)), Event.Hit.CENTRE));
    assertTrue(
        refusal.getMessage().startsWith("the frame collapses under the constant load alone, at 0."),
        refusal.getMessage());
  }

  @Test
  void hardening_above_any_steels_is_refused() {
    ModelException refusal =
        assertThrows(ModelException.class, () -> hit(Event.Hit.CENTRE).hardening(0.5));
    assertEquals(
        "hardening of 0.5000 of the elastic stiffness is more than any steel has; give at most 0.1",
        refusal.getMessage());
  }

  @Test
  void a_frame_that_is_too_strong_or_too_weak_to_be_meant_warns() {
    Collapse weak =
        Collapse.of(Runabout.vehicle(), Runabout.ladder(Runabout.steel(65)), Event.Hit.CENTRE);
    List<String> warnings = weak.warnings(Units.METRIC);
    String unmade =
        "Not computed: low strength, front crossmember's joints released, torsion at the right: the"
            + " frame collapses under the constant load alone, at 0.";
    assertTrue(warnings.get(0).startsWith("Not computed: low strength, "), warnings::toString);
    assertTrue(warnings.stream().anyMatch(line -> line.startsWith(unmade)), warnings::toString);
    String last = warnings.get(warnings.size() - 1);
    assertTrue(last.startsWith("deceleration at collapse "), last);
    assertTrue(last.endsWith(" lie; is it mistyped?"), last);
  }
}
