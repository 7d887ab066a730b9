package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwork.check.Member;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.section.Section;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.SpaceFrame;

/** Rails that rise at the front, under a wall that meets them high. */
class KickUpTest {
  private static final Stock TUBE =
      new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Curlew.STEEL);

  private static LadderBuilder level() {
    LadderBuilder parts = Curlew.ladderParts();
    parts.rails(mm(450), mm(-2350), mm(800), TUBE);
    parts.crossmembers.replaceAll(one -> new Crossmember(one.name(), one.x(), TUBE));
    return parts;
  }

  private static LadderBuilder raised() {
    return level().kickUp("front", mm(-100), mm(150), mm(100));
  }

  private static Event hit(Event.Hit where) {
    return Event.frontalImpact(g(10), where);
  }

  private static Balance balance(Ladder ladder, Event event) {
    return Balance.of(event, Curlew.vehicle().on(ladder), ladder);
  }

  /** Both splits are one coupled solution; the judge is a dense one by flexibilities. */
  @ParameterizedTest
  @EnumSource(Event.Hit.class)
  void all_six_forces_agree_with_an_independent_solution_in_space(Event.Hit where) {
    Ladder ladder = raised().build();
    Balance balance = balance(ladder, hit(where));
    Frame frame = ladder.frame(Joints.RIGID);
    for (Sharing sharing : Sharing.values()) {
      LoadCase loads = balance.loadCase(sharing);
      Response response = Solver.unsupported(frame).solve(loads);
      SpaceFrame judge =
          new SpaceFrame(frame.on(List.of(Support.fixed("rear left"))), loads.loads());
      frame.beams().forEach(beam -> assertAgree(judge, response, beam));
    }
  }

  private static void assertAgree(SpaceFrame judge, Response response, Beam beam) {
    InternalForces f = response.forces(beam.name()).at(1);
    double[] got = {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
    double[] expected = judge.forcesAtEnd(beam);
    for (int i = 0; i < 6; i++) {
      // Of forces of some ten kilonewton.
      assertEquals(expected[i], got[i], 1e-3, beam.name() + " component " + i);
    }
  }

  /** The wall's half force at the tips' height, less what the front's own masses take of it. */
  @Test
  void the_foot_is_bent_by_the_force_times_the_rise_and_the_slope_turns_the_force() {
    Ladder ladder = raised().build();
    Balance balance = balance(ladder, hit(Event.Hit.FULL_WIDTH));
    Balance.Growth growth = balance.growing().get(0);
    Response response = Solver.unsupported(ladder.frame(Joints.RIGID)).solve(growth.impact());
    Frame frame = response.frame();
    double force = 0;
    double moment = 0;
    double upwards = 0;
    Point foot = ladder.node("front kick-up left foot").at();
    for (Load load : growth.impact().loads()) {
      Wrench sum = Sums.of(List.of(load), frame);
      if (ahead(load, frame, foot.x())) {
        Wrench here = sum.moved(Sums.ORIGIN, foot);
        force += here.fx() / 2;
        upwards += here.fz() / 2;
        moment += here.my() / 2;
      }
    }
    String slope =
        "left rail " + (ladder.layout().railNodes(Side.LEFT).indexOf("front kick-up left foot"));
    InternalForces f = response.forces(slope).at(0);
    double angle = Math.atan2(100, 250);
    assertEquals(force * Math.cos(angle) + upwards * Math.sin(angle), f.n(), 1e-6 * -force);
    assertEquals(-force * Math.sin(angle) + upwards * Math.cos(angle), f.vz(), 1e-6 * -force);
    assertEquals(moment, f.my(), 1e-6 * Math.abs(moment));
  }

  private static boolean ahead(Load load, Frame frame, double x) {
    if (load instanceof Load.AtNode at) {
      return frame.node(at.node()).at().x() > x + 1e-6;
    }
    Beam beam = frame.beam(((Load.AlongPart) load).beam());
    return (frame.startOf(beam).x() + frame.endOf(beam).x()) / 2 > x;
  }

  /**
   * With the same joints a level plan hides a third of the rails' governing stress, and three
   * fifths of what bends and presses the foot.
   */
  @Test
  void leaving_the_kick_up_out_hides_much_of_the_stress() {
    Ladder high = raised().build();
    Ladder flat = level().kickUp("front", mm(-100), mm(150), mm(0)).build();
    assertTrue(flat.frame(Joints.RIGID).isFlat());
    assertFalse(high.frame(Joints.RIGID).isFlat());
    double governing = governing(flat) / governing(high);
    assertTrue(governing < 2.0 / 3, () -> "governing: " + governing);
    double foot = foot(flat) / foot(high);
    assertTrue(foot < 0.4, () -> "foot: " + foot);
  }

  /** The rails' largest edge stress, its joints rigid and each mass on its foremost mounts. */
  private static double governing(Ladder ladder) {
    Response response = response(ladder);
    return response.frame().beams().stream()
        .map(Beam::name)
        .filter(name -> name.contains("rail"))
        .flatMap(name -> Stream.of(0, 1).map(end -> response.forces(name).at(end)))
        .mapToDouble(KickUpTest::edgeStress)
        .max()
        .orElseThrow();
  }

  private static double foot(Ladder ladder) {
    int index = ladder.layout().railNodes(Side.LEFT).indexOf("front kick-up left foot");
    InternalForces f = response(ladder).forces("left rail " + index).at(0);
    var p = TUBE.section().properties();
    return Math.abs(f.n()) / p.area() + Math.abs(f.my()) * 0.04 / p.iy();
  }

  private static Response response(Ladder ladder) {
    LoadCase impact = balance(ladder, hit(Event.Hit.FULL_WIDTH)).growing().get(0).impact();
    return Solver.unsupported(ladder.frame(Joints.RIGID)).solve(impact);
  }

  private static double edgeStress(InternalForces f) {
    var p = TUBE.section().properties();
    return Math.abs(f.n()) / p.area()
        + Math.abs(f.my()) * 0.04 / p.iy()
        + Math.abs(f.mz()) * 0.02 / p.iz();
  }

  @Test
  void a_rail_is_cut_into_parts_at_its_kick_up_and_rises_beyond_it() {
    Ladder ladder = raised().build();
    assertEquals(new Point(0.45, 0.4, 0.48), ladder.node("left tip").at());
    assertEquals(new Point(0.4, 0, 0.48), ladder.node("front middle").at());
    assertEquals(new Point(0.15, -0.4, 0.48), ladder.node("front kick-up right head").at());
    assertEquals(0.42, ladder.heightAt(0), 1e-12);
    assertEquals(0.38, ladder.level());
    List<String> parts =
        ladder.members().stream()
            .map(Member::part)
            .filter(part -> part.startsWith("left rail, front to middle"))
            .toList();
    assertEquals(
        List.of(
            "left rail, front to middle, part 1",
            "left rail, front to middle, part 2",
            "left rail, front to middle, part 3"),
        parts);
    assertEquals(
        "Ladder Curlew: rails 2800 mm long, 3 crossmembers (front, middle, rear), 10 mounts,"
            + " kick-up front of 100.0 mm, 41.70 kg",
        ladder.toString());
    assertEquals(ladder.kickUps(), ladder.withCrossmember("front", Curlew.tube()).kickUps());
  }

  @Test
  void drops_and_several_kick_ups_add_up() {
    Ladder ladder =
        raised()
            .kickUp("rear", mm(-1700), mm(-1900), mm(150))
            .kickUp("nose", mm(150), mm(300), mm(-40))
            .build();
    assertEquals(0.44, ladder.heightAt(0.45), 1e-12);
    assertEquals(0.38, ladder.heightAt(-1), 1e-12);
    assertEquals(0.53, ladder.heightAt(-2.2), 1e-12);
    assertEquals(
        List.of("nose", "front", "rear"),
        ladder.kickUps().stream().map(Ladder.KickUp::name).toList());
  }

  /** Above the centre of mass a force lifts the tail: positive pitch is nose down. */
  @Test
  void a_force_at_a_height_of_its_own_pitches_the_vehicle_and_bends_the_tips() {
    Ladder ladder = level().build();
    Event low = Event.frontalImpact(g(10), Event.Hit.FULL_WIDTH, mm(380));
    Event high = Event.frontalImpact(g(10), Event.Hit.FULL_WIDTH, mm(700));
    assertEquals("frontal impact, full width, 700 mm up, 10 g", high.name());
    assertTrue(
        high.assumptions()
            .contains(
                "the force is straight rearwards at the stated height; no friction at the wall"));
    Balance own = balance(ladder, hit(Event.Hit.FULL_WIDTH));
    assertEquals(own.acceleration(), balance(ladder, low).acceleration());
    double z = Curlew.vehicle().on(ladder).centreOfMass().z();
    assertTrue(z > 0.38 && z < 0.7, () -> "centre of mass " + z);
    assertTrue(own.acceleration().alphaY() > 0);
    assertTrue(balance(ladder, high).acceleration().alphaY() < 0);
    Response response =
        Solver.unsupported(ladder.frame(Joints.RIGID))
            .solve(balance(ladder, high).growing().get(0).impact());
    double share = balance(ladder, high).forces().get(0).wrench().fx();
    assertEquals(0.32 * Math.abs(share), Math.abs(response.forces("left rail 1").at(1).my()), 1);
  }

  @Test
  void only_an_impact_can_be_taken_apart() {
    Ladder ladder = level().build();
    message(
        "event standing, 1 g is no impact; only an impact grows on top of standing",
        () -> balance(ladder, Event.standing()).growing());
    List<Balance.Growth> growths = balance(ladder, hit(Event.Hit.FULL_WIDTH)).growing();
    List<Load> together = new ArrayList<>(growths.get(1).standing().loads());
    together.addAll(growths.get(1).impact().loads());
    assertEquals(
        balance(ladder, hit(Event.Hit.FULL_WIDTH)).loadCase(Sharing.FOREMOST).loads(), together);
  }

  @Test
  void a_kick_up_that_makes_no_sense_is_refused() {
    message(
        "kick-up front has its foot and its head at x 100.0 mm: the rails would go straight up; let"
            + " them lie apart",
        () -> level().kickUp("front", mm(100), mm(100.5), mm(80)));
    message("a kick-up has no name; give it one", () -> level().kickUp(" ", mm(0), mm(1), mm(2)));
    message(
        "the head of kick-up front sits at x 500.0 mm, ahead of the rails, which run from 450.0 mm"
            + " to -2350 mm",
        () -> level().kickUp("front", mm(100), mm(500), mm(80)).build());
    message(
        "the foot of kick-up rear sits at x -2400 mm, behind the rails, which run from 450.0 mm to"
            + " -2350 mm",
        () -> level().kickUp("rear", mm(-2400), mm(-2000), mm(80)).build());
    message(
        "kick-up step reaches forward to x 0 mm, into kick-up front, which reaches back to x -100.0"
            + " mm; let one end where the next begins",
        () -> raised().kickUp("step", mm(-300), mm(0), mm(50)).build());
    message(
        "kick-up front brings the rails to z -20.00 mm at x 150.0 mm; they must stay above the"
            + " ground",
        () -> level().kickUp("front", mm(-100), mm(150), mm(-400)).build());
    message(
        "ladder Curlew has two features named front kick-up left foot; rename one",
        () -> raised().kickUp("front", mm(-1700), mm(-1900), mm(50)).build());
    message(
        "height of the impact 0 mm is not above zero",
        () -> Event.frontalImpact(g(10), Event.Hit.CENTRE, mm(0)));
  }

  private static void message(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}
