package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.study.Answers.Run;
import rungwork.study.Screening.Field;
import rungwork.study.Screening.Limits;
import rungwork.study.Study.Progress;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

class ScreeningTest {
  private static final List<Event> EVENTS =
      List.of(
          Event.bumpOneWheel(Axle.FRONT, Side.LEFT), Event.frontalImpact(g(3), Event.Hit.CENTRE));
  private static final Limits LIMITS = new Limits(List.of("front crossmember"), 1, 0);

  private static Candidate tube(double height, double width, double wall) {
    Section section = Section.rectangularTube(mm(height), mm(width), mm(wall));
    return Candidate.of(new Stock(section, Curlew.STEEL));
  }

  private static List<Candidate> rails() {
    return List.of(tube(80, 60, 3), tube(100, 60, 4), tube(120, 80, 3), tube(120, 80, 5));
  }

  private static List<Candidate> fronts() {
    return List.of(tube(30, 30, 2), tube(60, 60, 3), tube(80, 80, 4), tube(120, 80, 4));
  }

  private static Field field(List<Candidate> rails, List<Candidate> fronts) {
    Ladder ladder =
        Curlew.ladder()
            .withCrossmember("middle", Curlew.tube(100, 100))
            .withCrossmember("rear", Curlew.tube(100, 100));
    return new Field(Curlew.vehicle(), ladder, EVENTS, rails, Map.of("front", fronts));
  }

  private static Screening screening(int threads, Field field) {
    return Screening.of(field, LIMITS, new Run(threads, Progress.NONE));
  }

  @Test
  void the_confirmed_best_is_the_best_of_an_exhaustive_search_by_assessments() {
    Field field = field(rails(), fronts());
    Screening screening = Screening.of(field, LIMITS, Progress.NONE);
    Map<Double, String> passing = new TreeMap<>();
    for (Candidate rail : rails()) {
      for (Candidate front : fronts()) {
        Ladder ladder =
            field.ladder().withRails(rail.stock()).withCrossmember("front", front.stock());
        CheckSheet sheet = Assessment.of(field.vehicle(), ladder, EVENTS).sheet();
        if (sheet.outcome() != CheckSheet.Outcome.DOES_NOT_PASS
            && sheet.about("front crossmember").complete()) {
          passing.put(ladder.mass(), "rails " + rail.name() + ", front " + front.name());
        }
      }
    }
    assertTrue(passing.size() >= 3 && passing.size() < 16, passing.toString());
    List<String> kept = screening.kept().stream().map(Screening.Row::name).toList();
    assertTrue(kept.containsAll(passing.values()), kept + " of " + passing);
    Search confirmed = screening.confirmed(List.of(), Progress.NONE).orElseThrow();
    assertEquals(
        passing.values().stream().limit(Search.BEST).toList(),
        confirmed.found().stream().map(Search.Found::name).toList());
  }

  @Test
  void the_number_of_threads_changes_nothing() {
    Field field = field(many(20), many(20));
    Screening one = screening(1, field);
    Screening three = screening(3, field);
    assertEquals(one.kept(), three.kept());
    assertEquals(one.ruledOut(), three.ruledOut());
    assertEquals(one.passed(), three.passed());
    assertEquals(400, three.screened());
  }

  private static List<Candidate> many(int count) {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      all.add(tube(40 + 4 * i, 40, 3));
    }
    return all;
  }

  @Test
  void one_more_stock_never_makes_the_best_heavier() {
    double before = Double.POSITIVE_INFINITY;
    for (int count = 1; count <= 4; count++) {
      Screening screening = screening(2, field(rails(), fronts().subList(0, count)));
      double mass =
          screening.kept().stream()
              .findFirst()
              .map(row -> row.numbers().mass())
              .orElse(Double.POSITIVE_INFINITY);
      assertTrue(mass <= before);
      before = mass;
    }
    assertTrue(before < 200);
  }

  @Test
  void what_passes_is_a_table_and_a_line_that_leaves_the_choice_to_an_assessment() {
    Screening screening = screening(2, field(rails(), fronts()));
    assertEquals(
        List.of(
            "combination",
            "frame mass [kg]",
            "utilisation",
            "governing check",
            "part",
            "load case",
            "not checked"),
        screening.table(Units.METRIC).columnNames());
    assertEquals(screening.kept().size(), screening.table(Units.INCH_POUND).rowCount());
    assertTrue(
        screening.toString().contains(" of 16 combinations pass a screening with rigid joints; "),
        screening.toString());
    assertTrue(
        screening
            .toString()
            .endsWith(
                "left out, and for an assessment to decide: "
                    + String.join("; ", Screening.leftOut())),
        screening.toString());
    assertFalse(screening.isInterrupted());
    int reasons = screening.ruledOut().values().stream().mapToInt(Integer::intValue).sum();
    assertTrue(screening.passed() + reasons >= 16);
  }

  @Test
  void limits_that_nothing_meets_say_what_rules_out_how_many() {
    Limits stiff = new Limits(List.of(), 1000, 1e9);
    Screening screening = Screening.of(field(rails(), fronts()), stiff, new Run(2, Progress.NONE));
    assertEquals(
        "0 of 16 combinations pass a screening with rigid joints; none passes with every assumption"
            + " about the joints: torsional stiffness rules out 16",
        screening.toString());
    assertEquals(Optional.empty(), screening.confirmed(List.of(), Progress.NONE));
  }

  @Test
  void a_stock_that_does_not_fit_is_counted_with_its_reason() {
    Stock channel = new Stock(Section.foldedChannel(mm(60), mm(40), mm(4), mm(4)), Curlew.STEEL);
    Screening screening =
        screening(2, field(rails(), List.of(tube(60, 60, 3), new Candidate("channel", channel))));
    assertEquals(List.of(4), List.copyOf(screening.refused().values()));
    String reason = screening.refused().keySet().iterator().next();
    assertTrue(reason.contains(" has its shear centre elsewhere than "), reason);
  }

  @Test
  void an_interruption_keeps_what_is_done_and_says_so() {
    AtomicInteger most = new AtomicInteger();
    Thread me = Thread.currentThread();
    Progress stop =
        (done, total, left) -> {
          most.set(Math.max(most.get(), done));
          if (done > 0) {
            me.interrupt();
          }
        };
    Screening screening = Screening.of(field(many(60), many(60)), LIMITS, new Run(2, stop));
    assertTrue(Thread.interrupted());
    assertTrue(screening.isInterrupted());
    assertTrue(screening.screened() > 0 && screening.screened() < 3600);
    assertTrue(most.get() > 0);
    assertTrue(screening.toString().contains(", which was interrupted"), screening.toString());
  }

  @Test
  void bad_fields_and_limits_are_refused() {
    assertEquals(
        "there is no stock to screen for the rails", refusal(() -> field(List.of(), fronts())));
    assertEquals(
        "there is no stock to screen for the front crossmember",
        refusal(() -> field(rails(), List.of())));
    assertTrue(
        refusal(
                () ->
                    new Field(
                        Curlew.vehicle(),
                        Curlew.ladder(),
                        EVENTS,
                        rails(),
                        Map.of("keel", fronts())))
            .contains("keel"));
    List<Candidate> all = Collections.nCopies(2000, tube(50, 50, 3));
    assertEquals(
        "there are more than 2147483647 combinations to screen; leave some stocks out",
        refusal(
            () ->
                new Field(
                    Curlew.vehicle(),
                    Curlew.ladder(),
                    EVENTS,
                    all,
                    Map.of("front", all, "rear", all))));
    assertTrue(
        refusal(() -> new Limits(List.of(), 0, 0)).startsWith("limit of utilisation"),
        refusal(() -> new Limits(List.of(), 0, 0)));
  }

  private static String refusal(Executable bad) {
    return assertThrows(ModelException.class, bad).getMessage();
  }
}
