package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Member;
import rungwork.check.Member.Ends;
import rungwork.check.MemberChecks;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Section;
import rungwork.solve.AppliedWrench;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.study.Curlew;
import rungwork.vehicle.Assessment.Screened;
import rungwork.vehicle.Assessment.Screening;
import rungwork.vehicle.Assessment.Stocks;

class ScreeningTest {
  private static final Ladder LADDER = Curlew.ladder();
  private static final List<Event> EVENTS =
      List.of(
          Event.bumpOneWheel(Axle.FRONT, Side.LEFT),
          Event.braking(g(0.8)),
          Event.frontalImpact(g(6), Event.Hit.LEFT_TIP));

  private static Stock tube(Random random) {
    double height = 40 + random.nextInt(80);
    double width = 40 + random.nextInt(20);
    double wall = 1.5 + random.nextInt(5) / 2.0;
    return new Stock(
        random.nextInt(4) == 0
            ? Section.roundTube(mm(height), mm(wall))
            : Section.rectangularTube(mm(height), mm(width), mm(wall)),
        Curlew.STEEL);
  }

  private static Stocks stocks(long seed) {
    Random random = new Random(seed);
    return new Stocks(tube(random), List.of(tube(random), tube(random), tube(random)));
  }

  private static Screening screening(Joints... joints) {
    return Assessment.screening(Curlew.vehicle(), LADDER, EVENTS, List.of(joints)).get();
  }

  /** Every event solved by the plain solver, every member's checks made with their working. */
  private static CheckSheet sheet(Ladder ladder, Joints joints) {
    Vehicle vehicle = Curlew.vehicle().on(ladder);
    Ends ends = ladder.warping().cases().get(0);
    Solver solver = Solver.unsupported(ladder.frame(joints, ends));
    List<Check> checks = new ArrayList<>();
    for (Event event : EVENTS) {
      Balance balance = Balance.of(event, vehicle, ladder);
      for (Sharing sharing : Sharing.of(event)) {
        Response response = solver.solve(balance.loadCase(sharing));
        for (Member member : ladder.members()) {
          checks.addAll(MemberChecks.of(member.with(ends), response, event.designFactor()));
        }
      }
    }
    return new CheckSheet(
        "all", checks, List.of(), List.of(), EnumSet.of(Caution.SCREENING, Caution.IMPACT));
  }

  private static void assertSame(Check check, Screened screened) {
    assertEquals(
        1, screened.utilisation() / check.utilisation().orElseThrow(), 1e-9, screened.toString());
    assertEquals(check.what(), screened.what());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void a_screening_has_the_numbers_of_the_checks_with_their_working(long seed) {
    Stocks stocks = stocks(seed);
    Ladder ladder = stocks.on(LADDER);
    Joints hinged = ladder.joints().get(3);
    assertSame(
        sheet(ladder, Joints.RIGID).governing().orElseThrow(), screening(Joints.RIGID).of(stocks));
    assertSame(sheet(ladder, hinged).governing().orElseThrow(), screening(hinged).of(stocks));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void mass_and_torsional_stiffness_are_the_ladder_s(long seed) {
    Stocks stocks = stocks(seed);
    Ladder ladder = stocks.on(LADDER);
    Screening screening = screening(Joints.RIGID);
    double stiffness = TwistRig.of(Curlew.vehicle(), ladder).stiffness(Joints.RIGID);
    assertEquals(1, screening.torsionalStiffness(stocks) / stiffness, 1e-8);
    assertEquals(ladder.mass(), screening.of(stocks).mass(), 1e-9);
  }

  @Test
  void one_screening_after_another_leaves_nothing_behind() {
    Screening screening = screening(Joints.RIGID);
    Screened first = screening.of(stocks(1));
    screening.of(stocks(2));
    assertEquals(first, screening.of(stocks(1)));
  }

  private static Stocks channels() {
    Stock channel = new Stock(Section.foldedChannel(mm(60), mm(40), mm(4), mm(4)), Curlew.STEEL);
    return new Stocks(Curlew.tube(80, 40), List.of(channel, channel, channel));
  }

  private static Ladder withChannels() {
    return channels().on(LADDER);
  }

  @Test
  void open_sections_are_checked_whole_and_their_doubts_listed() {
    Ladder ladder = withChannels();
    Screening screening =
        Assessment.screening(Curlew.vehicle(), ladder, EVENTS, List.of(Joints.RIGID)).get();
    Screened screened = screening.of(channels());
    assertSame(sheet(ladder, Joints.RIGID).governing().orElseThrow(), screened);
    List<Check> open =
        sheet(ladder, Joints.RIGID).checks().stream().filter(check -> !check.made()).toList();
    assertTrue(
        open.stream()
            .allMatch(
                check ->
                    screened.notChecked().stream()
                        .anyMatch(line -> line.startsWith(check.part() + ": " + check.what()))),
        screened.toString());
  }

  @Test
  void a_long_narrow_tube_is_doubted_whatever_it_carries() {
    Stock high = new Stock(Section.rectangularTube(mm(400), mm(20), mm(2)), Curlew.STEEL);
    Screened screened =
        screening(Joints.RIGID)
            .of(new Stocks(high, List.of(high, Curlew.tube(50, 50), Curlew.tube(50, 50))));
    assertTrue(
        screened
            .notChecked()
            .contains(
                "left rail, front to middle: lateral-torsional buckling: the tube is so long that"
                    + " it could escape sideways"),
        screened.toString());
  }

  @Test
  void enough_is_enough() {
    List<Joints> all = LADDER.joints();
    Screening screening = Assessment.screening(Curlew.vehicle(), LADDER, EVENTS, all).get();
    double highest = screening.of(stocks(4)).utilisation();
    double found = screening.of(stocks(4), highest / 10).utilisation();
    assertTrue(found > highest / 10 && found <= highest);
    assertEquals(highest, screening.of(stocks(4)).utilisation(), 1e-12 * highest);
    for (Joints joints : all) {
      assertTrue(screening(joints).of(stocks(4)).utilisation() <= highest * (1 + 1e-9));
    }
  }

  @Test
  void stocks_that_do_not_fit_the_ladder_are_refused() {
    Stocks few = new Stocks(Curlew.tube(80, 40), List.of());
    assertEquals(
        "the ladder has 3 crossmembers; 0 stocks for them were given",
        assertThrows(ModelException.class, () -> screening(Joints.RIGID).of(few)).getMessage());
    assertEquals(
        "there is no event to assess vehicle Curlew under",
        assertThrows(
                ModelException.class,
                () -> Assessment.screening(Curlew.vehicle(), LADDER, List.of(), List.of()))
            .getMessage());
  }

  @Test
  void an_event_whose_place_follows_the_mass_is_refused() {
    Event.Scene scene =
        (vehicle, ladder) ->
            List.of(
                new AppliedWrench(
                    "gust",
                    Wrench.force(0, 100, 0),
                    new Point(vehicle.massTotal() / 1000, 0, 1),
                    List.of("front left", "front right")));
    Event gust = new Event("gust", "stated", List.of(), Event.Kind.DRIVING, scene);
    Screening screening =
        Assessment.screening(Curlew.vehicle(), LADDER, List.of(gust), List.of(Joints.RIGID)).get();
    assertEquals(
        "event gust pushes at another place when the frame's mass changes (gust); assess each"
            + " variant by itself",
        assertThrows(ModelException.class, () -> screening.of(stocks(1))).getMessage());
  }
}
