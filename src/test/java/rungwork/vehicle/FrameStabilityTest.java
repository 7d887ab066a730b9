package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.Member;
import rungwork.check.Member.Sway;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.frame.Stock;
import rungwork.section.Section;
import rungwork.solve.Buckling;
import rungwork.solve.Response;
import rungwork.solve.Solver;

class FrameStabilityTest {
  private static final Ladder LADDER = Curlew.ladder();

  private static Response hit(double deceleration) {
    Event event = Event.frontalImpact(g(deceleration), Event.Hit.FULL_WIDTH);
    Balance balance = Balance.of(event, Curlew.vehicle().on(LADDER), LADDER);
    Frame frame = LADDER.frame(Joints.RIGID).on(balance.anchors());
    return Solver.of(frame).solve(balance.loadCase(Sharing.ALL));
  }

  private static Member bay(String part) {
    return LADDER.members().stream()
        .filter(member -> member.part().equals(part))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Second route: a column of this length carries the critical force. Within a part in 200: the
   * frame takes the mean force of half a beam, whose own inertia makes it vary.
   */
  @Test
  void a_rail_that_takes_part_has_the_length_that_makes_the_frame_s_critical_force_its_own() {
    Response response = hit(10);
    double factor = Buckling.of(response).inPlane().orElseThrow().factor();
    Member rail = new FrameStability(response, 1).lengthened(bay("left rail, front to middle"));
    double most =
        rail.beams().stream()
            .mapToDouble(beam -> -response.forces(beam).smallest(f -> f.n()).value())
            .max()
            .orElseThrow();
    double euler = Math.PI * Math.PI * 210e9 * 20e-8 / Math.pow(rail.buckling().inPlane(), 2);
    assertEquals(factor * most, euler, euler / 200);
    assertEquals(Sway.IN_LENGTHS, rail.buckling().sway());
    assertEquals(1.4, rail.buckling().twist(), 1e-12);
  }

  @Test
  void a_member_that_takes_no_part_keeps_its_own_lengths() {
    Member crossmember = bay("middle crossmember");
    assertSame(crossmember, new FrameStability(hit(10), 1).lengthened(crossmember));
  }

  @Test
  void a_frame_that_is_stable_at_25_times_its_load_is_not_searched() {
    FrameStability far = new FrameStability(hit(0.1), 1);
    assertTrue(far.lowest().isEmpty());
    Member rail = bay("left rail, front to middle");
    assertSame(rail, far.lengthened(rail));
  }

  /** The critical load is 25 times a hit of 25th of the critical deceleration, and so on. */
  @ParameterizedTest
  @CsvSource({"9.9, 1, true", "10.1, 1, false", "14.9, 1.5, true", "15.1, 1.5, false"})
  void second_order_is_asked_for_below_ten_times_the_load_and_the_design_factor(
      double times, double gamma, boolean asked) {
    double critical = 10 * Buckling.of(hit(10)).lowest().orElseThrow().factor();
    Response response = hit(critical / times);
    FrameStability found = new FrameStability(response, gamma);
    assertEquals(times, found.lowest().orElseThrow().factor(), 0.05);
    LoadCase loads = response.loadCase();
    assertEquals(asked, found.secondOrder(Solver.secondOrder(response.frame()), loads).isPresent());
    assertEquals(List.of(), found.reasons());
  }

  private static final Stock CHANNEL =
      new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), Curlew.STEEL);

  private static List<String> notMade(Ladder ladder) {
    Event event = Event.frontalImpact(g(5), Event.Hit.FULL_WIDTH);
    return Assessment.of(Curlew.vehicle(), ladder, List.of(event)).sheet().notMade().stream()
        .filter(line -> line.startsWith("buckling of the whole frame"))
        .toList();
  }

  @Test
  void a_rail_that_bends_and_twists_at_once_is_not_checked_without_its_warping_stiffness() {
    assertEquals(
        List.of(
            "buckling of the whole frame in frontal impact, full width, 5.0 g: beam left rail 1"
                + " would bend and twist at once with only Saint-Venant torsion against it; its"
                + " warping stiffness, which may be most of what it has, is left out; not checked"),
        notMade(LADDER.withRails(CHANNEL)));
  }

  @Test
  void a_crossmember_that_takes_no_part_leaves_nothing_unchecked() {
    assertEquals(List.of(), notMade(LADDER.withCrossmember("front", CHANNEL)));
  }

  @Test
  void a_load_beyond_the_critical_one_leaves_second_order_without_an_answer() {
    Response response = hit(100);
    FrameStability found = new FrameStability(response, 1);
    assertTrue(found.lowest().orElseThrow().factor() < 1);
    assertTrue(
        found.secondOrder(Solver.secondOrder(response.frame()), response.loadCase()).isEmpty());
    assertEquals(
        List.of(
            "the load is beyond the frame's critical load, so that there are no moments of second"
                + " order"),
        found.reasons());
  }
}
