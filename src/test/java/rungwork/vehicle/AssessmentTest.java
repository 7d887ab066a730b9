package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Member;
import rungwork.check.MemberChecks;
import rungwork.fault.ModelException;
import rungwork.frame.Frame;
import rungwork.frame.Stock;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;

class AssessmentTest {
  private static final Event BUMP = Event.bumpBothWheels(Axle.FRONT);
  private static final Event TWIST = Event.bumpOneWheel(Axle.FRONT, Side.LEFT);
  private static final Event WALL = Event.frontalImpact(g(10), Event.Hit.FULL_WIDTH);
  private static final Assessment ALL =
      Assessment.of(Curlew.vehicle(), tubes(), List.of(BUMP, TWIST, WALL));

  @Test
  void every_member_is_checked_in_every_event() {
    for (Event event : ALL.events()) {
      Set<String> checked =
          ALL.sheet().checks().stream()
              .filter(check -> check.loadCase().startsWith(event.name()))
              .map(Check::part)
              .collect(Collectors.toSet());
      Set<String> members =
          ALL.ladder().members().stream().map(Member::part).collect(Collectors.toSet());
      assertEquals(members, checked, event.name());
    }
  }

  @Test
  void a_question_has_one_number_for_each_part_and_event() {
    Set<List<String>> seen = new HashSet<>();
    for (Check check : ALL.sheet().checks()) {
      if (check.made()) {
        String event = event(check).orElseThrow().name();
        assertTrue(seen.add(List.of(check.what(), check.part(), event)), check::toString);
      }
    }
  }

  @Test
  void the_worst_of_all_joints_and_bounds_counts_and_is_named() {
    for (Event event : List.of(BUMP, WALL)) {
      Check kept = stress(ALL, event, "front crossmember");
      double worst = 0;
      for (Joints joints : ALL.ladder().joints()) {
        for (Sharing sharing : Sharing.of(event)) {
          worst = Math.max(worst, stress(event, joints, sharing));
        }
      }
      assertEquals(worst, kept.utilisation().orElseThrow(), 1e-12);
      assertTrue(
          ALL.ladder().joints().stream().anyMatch(j -> kept.loadCase().endsWith(j.words())),
          kept.loadCase());
    }
  }

  @Test
  void rails_in_a_hit_buckle_with_the_frame_and_the_sheet_says_at_what_load() {
    Check rail =
        ALL.sheet().checks().stream()
            .filter(check -> check.part().equals("right rail, front to middle"))
            .filter(check -> check.what().equals("column buckling with bending"))
            .filter(check -> check.loadCase().startsWith(WALL.name()))
            .findFirst()
            .orElseThrow();
    assertTrue(rail.where().contains("from the frame's critical load, "), rail.where());
    List<String> said =
        ALL.sheet().assumptions().stream()
            .filter(line -> line.contains("the frame buckles at"))
            .toList();
    assertEquals(1, said.size());
    assertTrue(said.get(0).startsWith("In " + WALL.name() + " the frame buckles at 1.20 times"));
    assertTrue(said.get(0).endsWith("; moments of second order count too."), said.get(0));
  }

  @Test
  void driving_is_held_to_two_thirds_of_yield_and_an_impact_to_all_of_it() {
    assertEquals(DesignFactor.ROAD.onYield(), stress(ALL, BUMP, "front crossmember").basis());
    assertEquals(DesignFactor.NONE.onYield(), stress(ALL, WALL, "front crossmember").basis());
  }

  @Test
  void left_and_right_answer_alike_in_a_symmetric_event() {
    for (Event event : List.of(BUMP, WALL)) {
      Optional<Check> left = rail(event, "left");
      Optional<Check> right = rail(event, "right");
      assertEquals(
          left.orElseThrow().utilisation().orElseThrow(),
          right.orElseThrow().utilisation().orElseThrow(),
          1e-9);
    }
  }

  @Test
  void an_impact_brings_its_caution_and_driving_alone_does_not() {
    assertEquals(Set.of(Caution.SCREENING, Caution.IMPACT), ALL.sheet().cautions());
    Assessment road = Assessment.of(Curlew.vehicle(), tubes(), List.of(BUMP));
    assertEquals(Set.of(Caution.SCREENING), road.sheet().cautions());
  }

  @Test
  void what_was_never_asked_is_said() {
    List<String> notMade = ALL.sheet().notMade();
    assertTrue(notMade.containsAll(MemberChecks.notMade()));
    assertTrue(notMade.contains("side, rear and roll-over impact"));
    assertTrue(ALL.toString().contains("not checked: "), ALL::toString);
    assertTrue(
        ALL.sheet()
            .assumptions()
            .contains("Mass left person counts 1.50 times in an impact, as stated."));
    assertTrue(
        ALL.sheet()
            .assumptions()
            .contains(
                "In bump, both front wheels, 3.0 g: the body is free to rise and pitch; the other"
                    + " axle keeps its standing load."));
  }

  @Test
  void responses_are_in_balance() {
    for (Event event : ALL.events()) {
      for (Joints joints : ALL.ladder().joints()) {
        assertTrue(ALL.response(event, joints).residual() <= 1e-9);
      }
    }
  }

  @Test
  void seats_and_stiffness_and_mass_are_at_hand() {
    assertEquals(ALL.balance(WALL).atSeats(), ALL.seatDecelerations(WALL));
    assertEquals(
        TwistRig.of(Curlew.vehicle(), tubes()).stiffness(Joints.RIGID),
        ALL.torsionalStiffness(Joints.RIGID),
        1e-6);
    assertEquals(tubes().mass(), ALL.mass(), 1e-9);
    assertEquals(620 + tubes().mass(), ALL.vehicle().massTotal(), 1e-9);
  }

  @Test
  void an_event_is_known_by_its_name() {
    assertEquals(
        ALL.balance(BUMP).acceleration(),
        ALL.balance(Event.bumpBothWheels(Axle.FRONT)).acceleration());
    refused(
        "event pure twist was not assessed; there are bump, both front wheels, 3.0 g; bump, front"
            + " left wheel, × 1.3; frontal impact, full width, 10 g",
        () -> ALL.balance(Event.pureTwist()));
    refused(
        "the ladder was not run with odd; it was with " + ALL.ladder().joints(),
        () -> ALL.response(BUMP, new Joints("odd", java.util.Map.of())));
  }

  @Test
  void no_events_and_twins_are_refused() {
    refused(
        "there is no event to assess vehicle Curlew under",
        () -> Assessment.of(Curlew.vehicle(), tubes(), List.of()));
    refused(
        "two events are named standing, 1 g; rename one",
        () ->
            Assessment.of(Curlew.vehicle(), tubes(), List.of(Event.standing(), Event.standing())));
  }

  @Test
  void a_stouter_crossmember_is_used_less() {
    Stock stout = new Stock(Section.rectangularTube(mm(100), mm(50), mm(4)), Curlew.STEEL);
    Assessment stouter =
        Assessment.of(
            Curlew.vehicle(),
            tubes().withCrossmember("front", stout),
            List.of(Event.frontalImpact(g(10), Event.Hit.CENTRE)));
    Assessment before =
        Assessment.of(
            Curlew.vehicle(), tubes(), List.of(Event.frontalImpact(g(10), Event.Hit.CENTRE)));
    double less = use(stouter);
    assertTrue(less < use(before));
    assertFalse(stouter.sheet().checks().isEmpty());
  }

  private static double use(Assessment assessment) {
    return stress(assessment, assessment.events().get(0), "front crossmember")
        .utilisation()
        .orElseThrow();
  }

  private static double stress(Event event, Joints joints, Sharing sharing) {
    var loads = ALL.balance(event).loadCase(sharing);
    Frame frame = ALL.ladder().frame(joints);
    double first = stress(Solver.unsupported(frame).solve(loads), event);
    Frame anchored = frame.on(ALL.balance(event).anchors());
    return event.equals(WALL)
        ? Math.max(first, stress(Solver.secondOrder(anchored).solve(loads), event))
        : first;
  }

  private static double stress(Response response, Event event) {
    return MemberChecks.of(ALL.ladder().members().get(0), response, event.designFactor()).stream()
        .filter(check -> check.what().equals("combined stress"))
        .mapToDouble(check -> check.utilisation().orElseThrow())
        .max()
        .orElseThrow();
  }

  private static Check stress(Assessment assessment, Event event, String part) {
    return assessment.sheet().checks().stream()
        .filter(check -> check.loadCase().startsWith(event.name()))
        .filter(check -> check.part().equals(part) && check.what().equals("combined stress"))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Check> rail(Event event, String side) {
    return ALL.sheet().checks().stream()
        .filter(check -> check.loadCase().startsWith(event.name()))
        .filter(check -> check.part().equals(side + " rail, front to middle"))
        .filter(check -> check.what().equals("combined stress"))
        .findFirst();
  }

  private static Optional<Event> event(Check check) {
    return ALL.events().stream()
        .filter(event -> check.loadCase().startsWith(event.name()))
        .findFirst();
  }

  private static Ladder tubes() {
    Stock rail = new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Curlew.STEEL);
    Stock cross = new Stock(Section.rectangularTube(mm(60), mm(40), mm(3)), Curlew.STEEL);
    Ladder ladder = Curlew.ladder().withRails(rail);
    for (Crossmember crossmember : ladder.crossmembers()) {
      ladder = ladder.withCrossmember(crossmember.name(), cross);
    }
    return ladder;
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}
