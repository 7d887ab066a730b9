package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.study.Survey.Variant;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;

class SurveyTest {
  private static final List<Event> EVENTS =
      List.of(Event.standing(), Event.frontalImpact(g(0.5), Event.Hit.FULL_WIDTH));

  private static Assessment assess(Ladder ladder) {
    return Assessment.of(Curlew.vehicle(), ladder, EVENTS);
  }

  private static Ladder ladder(Stock front) {
    return Curlew.ladder().withCrossmember("front", front);
  }

  private static Survey survey;

  /** Not where the class is made ready: its lambdas run on other threads, which wait for that. */
  @BeforeAll
  static void askAll() {
    survey =
        Survey.of(
            "front crossmembers",
            List.of(
                new Variant<>("60 square", () -> assess(ladder(Curlew.tube(60, 60)))),
                new Variant<>("70 square", () -> assess(ladder(Curlew.tube(70, 70)))),
                new Variant<>(
                    "none",
                    () -> {
                      throw new ModelException("a ladder needs it");
                    }),
                new Variant<>("60 by 40", () -> assess(ladder(Curlew.tube(60, 40))))),
            List.of(
                Measure.frameMass(),
                Measure.torsionalStiffness(),
                Measure.utilisation(),
                Measure.utilisation("front crossmember"),
                Measure.counted("price", "crowns", a -> 12 * a.mass())));
  }

  @Test
  void each_variant_has_its_numbers_or_its_reason() {
    Assessment plain = assess(ladder(Curlew.tube(60, 60)));
    assertEquals(plain.mass(), survey.values("frame mass")[0]);
    assertEquals(
        plain.sheet().governing().orElseThrow().utilisation().orElseThrow(),
        survey.values("utilisation")[0]);
    assertTrue(Double.isNaN(survey.values("utilisation")[2]));
    assertEquals(List.of("", "", "a ladder needs it", ""), survey.refusals());
    assertTrue(
        survey
            .words("utilisation of the front crossmember")
            .get(0)
            .endsWith(" of front crossmember"));
    assertEquals(12 * plain.mass(), survey.values("price")[0], 1e-9);
  }

  @Test
  void a_survey_stays_a_table() {
    assertEquals(
        List.of(
            "variant",
            "frame mass [kg]",
            "torsional stiffness [N·m/deg]",
            "utilisation",
            "utilisation: where",
            "utilisation of the front crossmember",
            "utilisation of the front crossmember: where",
            "price [crowns]",
            "refused"),
        survey.table(Units.METRIC).columnNames());
    assertEquals("frame mass [lb]", survey.table(Units.INCH_POUND).columnNames().get(1));
    String[] lines = survey.csv(Units.METRIC).strip().split("\\R");
    assertEquals(5, lines.length);
    assertTrue(lines[3].startsWith("none,,"), lines[3]);
    Table table = survey.table(Units.METRIC);
    DoubleColumn mass = table.doubleColumn("frame mass [kg]");
    assertEquals(
        "70 square",
        table.where(mass.isNotMissing()).sortDescendingOn(mass.name()).stringColumn(0).get(0));
  }

  @Test
  void no_name_in_the_csv_is_a_formula_and_numbers_stay_numbers() {
    Survey hostile =
        Survey.of(
            "=1+1",
            List.of(
                new Survey.Variant<Double>("=HYPERLINK(\"http://example.org\")", () -> -2.5),
                new Survey.Variant<Double>("-10 mm", () -> 1e-9)),
            List.of(Measure.<Double>counted("@shift", "pence", shift -> shift)));
    assertEquals(
        "variant,'@shift [pence],refused\r\n"
            + "\"'=HYPERLINK(\"\"http://example.org\"\")\",-2.5,\r\n"
            + "'-10 mm,1.0E-9,\r\n",
        hostile.csv(Units.METRIC));
  }

  @Test
  void what_no_other_beats_stays() {
    List<String> front = survey.unbeaten("frame mass", "torsional stiffness");
    assertEquals(List.of("60 square", "70 square", "60 by 40"), front);
    assertEquals(List.of("60 by 40"), survey.unbeaten("frame mass", "price"));
    assertTrue(survey.toString().contains("\n- none: refused: a ladder needs it\n"));
    assertEquals("frame mass [kg]", survey.head("frame mass", Units.METRIC));
    assertEquals("front crossmembers", survey.question());
    assertEquals(4, survey.variants().size());
    assertEquals(5, survey.measures().size());
  }

  @Test
  void bad_surveys_are_refused() {
    List<Measure<Double>> price = List.of(Measure.counted("price", "crowns", x -> x));
    assertEquals(
        "there is no variant to survey for nothing",
        assertThrows(ModelException.class, () -> Survey.of("nothing", List.of(), price))
            .getMessage());
    List<Variant<Double>> twins =
        List.of(new Variant<>("a", () -> 1.0), new Variant<>("a", () -> 2.0));
    assertEquals(
        "two variants are named a; rename one",
        assertThrows(ModelException.class, () -> Survey.of("twins", twins, price)).getMessage());
  }

  private static List<Variant<Ladder>> catalogue(long seed, int count) {
    Random random = new Random(seed);
    List<Variant<Ladder>> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double height = 40 + random.nextInt(60);
      double width = 40 + random.nextInt(40);
      all.add(
          new Variant<>(
              i + ": " + (int) height + " by " + (int) width,
              () -> ladder(Curlew.tube(height, width))));
    }
    return all;
  }

  private static Search search(List<Variant<Ladder>> ladders, List<Search.Limit> limits) {
    return Search.lightest(
        "front crossmember", List.of("front crossmember"), ladders, SurveyTest::assess, limits);
  }

  /** Every ladder assessed, one after the other. */
  private static List<String> byHand(List<Variant<Ladder>> ladders, Search.Limit limit) {
    return IntStream.range(0, ladders.size())
        .mapToObj(i -> new Search.Found(ladders.get(i).name(), assess(ladders.get(i).made().get())))
        .filter(one -> one.assessment().sheet().outcome() != CheckSheet.Outcome.DOES_NOT_PASS)
        .filter(one -> one.assessment().sheet().about("front crossmember").complete())
        .filter(one -> limit.met().apply(one.assessment()))
        .sorted((a, b) -> Double.compare(a.assessment().mass(), b.assessment().mass()))
        .map(Search.Found::name)
        .limit(Search.BEST)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void the_bound_passes_over_no_ladder_that_belongs_among_the_best(long seed) {
    List<Variant<Ladder>> ladders = catalogue(seed, 24);
    double median = survey.values("torsional stiffness")[0];
    Search.Limit limit = Search.Limit.of(Measure.torsionalStiffness(), median);
    Search search = search(ladders, List.of(limit));
    assertEquals(byHand(ladders, limit), search.found().stream().map(Search.Found::name).toList());
    assertTrue(search.assessed() <= 24);
  }

  @Test
  void one_more_ladder_never_makes_the_best_heavier() {
    List<Variant<Ladder>> ladders = catalogue(5, 24);
    double before = Double.POSITIVE_INFINITY;
    for (int count = 8; count <= 24; count += 8) {
      double mass =
          search(ladders.subList(0, count), List.of()).mass(0).orElse(Double.POSITIVE_INFINITY);
      assertTrue(mass <= before, count + " ladders: " + mass);
      before = mass;
    }
  }

  @Test
  void the_choice_names_its_reason_and_what_was_not_checked() {
    Search search = search(catalogue(1, 40), List.of());
    String line = search.line(Units.METRIC);
    assertTrue(line.contains(": lightest meeting the checks made, with a frame of "), line);
    assertTrue(line.contains(" of 40 ladders assessed from the lightest on, the other "), line);
    assertTrue(line.contains("; not checked: "), line);
    assertTrue(search.notChecked().contains("fatigue"));
    assertEquals("front crossmember", search.question());
  }

  @Test
  void limits_that_nothing_meets_say_how_many_each_rules_out() {
    List<Variant<Ladder>> ladders = new ArrayList<>(catalogue(1, 6));
    ladders.add(
        new Variant<>(
            "broken",
            () -> {
              throw new ModelException("no such tube");
            }));
    Search.Limit stiff = Search.Limit.of(Measure.torsionalStiffness(), 1e9);
    Search search = search(ladders, List.of(stiff, Search.Limit.of(Measure.frameMass(), 1000)));
    assertEquals(List.of(), search.found());
    assertEquals(6, search.ruledOut().get(stiff.words()));
    assertEquals(0, search.ruledOut().get("frame mass at most 1000 kg"));
    assertEquals(0, search.ruledOut(Units.INCH_POUND).get("frame mass at most 2205 lb"));
    assertEquals("no such tube", search.refused().get("broken"));
    String line = search.line(Units.METRIC);
    assertTrue(
        line.startsWith(
            "no ladder for the front crossmember meets the checks made and the limits: "),
        line);
    assertTrue(line.contains("rules out 6 of 6"), line);
    assertTrue(line.endsWith("1 could not be modelled"), line);
  }

  @Test
  void an_empty_catalogue_and_an_unknown_part_are_refused() {
    assertEquals(
        "there is no variant to survey for front crossmember",
        assertThrows(ModelException.class, () -> search(List.of(), List.of())).getMessage());
    ModelException unknown =
        assertThrows(
            ModelException.class,
            () ->
                Search.lightest(
                    "x", List.of("keel"), catalogue(1, 2), SurveyTest::assess, List.of()));
    assertTrue(
        unknown.getMessage().startsWith("no check is about part keel; there are checks of "),
        unknown.getMessage());
  }
}
