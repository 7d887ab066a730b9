package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.study.Candidate;
import rungwork.study.Curlew;
import rungwork.study.Family;
import rungwork.study.Input;
import rungwork.study.Measure;
import rungwork.study.Scatter;
import rungwork.study.Screening;
import rungwork.study.Search;
import rungwork.study.Sensitivity;
import rungwork.study.Study;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;

class StudyPagesTest {
  private static Study<Assessment> study;
  private static Sensitivity sensitivity;
  private static Scatter scatter;

  @BeforeAll
  static void studies() {
    study =
        Study.of(
            "the front <end>",
            List.of(
                Input.of("crossmember wall", mm(3)).within(0.1, "EN 10219-2, wall tolerance"),
                Input.of("deceleration", g(1)).within(0.2, Input.ASSUMED)),
            setting ->
                assess(
                    Curlew.ladder()
                        .withCrossmember(
                            "front",
                            new Stock(
                                Section.rectangularTube(
                                    mm(60), mm(60), setting.length("crossmember wall")),
                                Curlew.STEEL)),
                    Event.frontalImpact(
                        setting.acceleration("deceleration"), Event.Hit.FULL_WIDTH)),
            List.of(Measure.utilisation("front crossmember"), Measure.frameMass()));
    sensitivity = study.sensitivity();
    scatter = study.scatter(Scatter.Sampling.latinHypercube(30, 1));
  }

  private static Assessment assess(Ladder ladder, Event event) {
    return Assessment.of(Curlew.vehicle(), ladder, List.of(event));
  }

  private static String html(Page page) {
    String html = page.html();
    assertTrue(html.contains("licensed engineer"), "the caution stays");
    assertFalse(html.contains("<end>"), "names are escaped");
    return html;
  }

  @Test
  void a_tornado_shows_each_input_low_and_high() {
    Page page = SensitivityPage.of(sensitivity, Units.METRIC);
    String html = html(page);
    assertTrue(html.contains("matters most"));
    assertTrue(html.contains("as designed"));
    assertTrue(page.text().contains("deceleration: "), page.text());
    assertTrue(SensitivityPage.of(sensitivity, Units.INCH_POUND).text().contains(" in"), "inches");
  }

  @Test
  void a_scatter_shows_its_spread_and_what_its_shares_are_not() {
    Page page = ScatterPage.of(scatter, Units.METRIC);
    assertTrue(html(page).contains("not a probability of survival"));
    assertTrue(page.text().contains("30 settings drawn by Latin hypercube, seed 1"));
    assertTrue(page.text().contains("EN 10219-2, wall tolerance"));
  }

  @Test
  void a_family_is_drawn_as_curves() {
    Family family = study.family("crossmember wall", 3, "deceleration", 5, 10);
    Page page = FamilyPage.of(family, Units.METRIC);
    assertTrue(html(page).contains("polyline"));
    assertTrue(page.text().contains("best"), page.text());
  }

  @Test
  void a_survey_shows_bars_points_and_refusals() {
    Survey survey =
        Survey.of(
            "walls",
            List.of(
                new Survey.Variant<>("thin", () -> 1.0),
                new Survey.Variant<>("thick", () -> 2.0),
                new Survey.Variant<>(
                    "none",
                    () -> {
                      throw new ModelException("not sold");
                    })),
            List.of(
                Measure.least("mass", Kind.MASS, (Double wall) -> wall),
                Measure.least("utilisation", Kind.RATIO, (Double wall) -> 1 / wall)));
    Page page = SurveyPage.of(survey, Units.METRIC);
    assertTrue(html(page).contains(">utilisation, by variant</text>"));
    assertTrue(html(page).contains("Beaten by no other in both: thin; thick."));
    assertTrue(page.text().contains("none: not sold"));
  }

  @Test
  void a_search_shows_the_lightest_and_what_ruled_the_others_out() {
    List<Survey.Variant<Ladder>> ladders =
        List.of(40.0, 60.0, 80.0).stream()
            .map(
                side ->
                    new Survey.Variant<>(
                        side + " square",
                        () -> Curlew.ladder().withCrossmember("front", Curlew.tube(side, side))))
            .toList();
    Search search =
        Search.lightest(
            "front crossmember",
            List.of("front crossmember"),
            ladders,
            ladder -> assess(ladder, Event.standing()),
            List.of(Search.Limit.of(Measure.frameMass(), 1)));
    Page page = SearchPage.of(search, Units.METRIC);
    assertTrue(html(page).contains("frame mass at most 1.000 kg"), page.text());
    assertTrue(page.text().contains("What ruled the others out"));
    Search found =
        Search.lightest(
            "front crossmember",
            List.of("front crossmember"),
            ladders,
            ladder -> assess(ladder, Event.standing()),
            List.of());
    assertTrue(SearchPage.of(found, Units.METRIC).text().contains("40.0 square"));
  }

  @Test
  void a_screening_shows_the_lightest_and_what_it_left_out() {
    List<Candidate> fronts =
        Stream.of(30, 60, 80).map(side -> Candidate.of(Curlew.tube(side, side))).toList();
    Screening.Field field =
        new Screening.Field(
            Curlew.vehicle(),
            Curlew.ladder(),
            List.of(Event.standing()),
            List.of(Candidate.of(Curlew.tube(80, 60))),
            Map.of("front", fronts));
    Screening screening =
        Screening.of(
            field, Screening.Limits.CHECKS, (done, total, left) -> assertTrue(done <= total));
    String text = ScreeningPage.of(screening, Units.INCH_POUND).text();
    assertTrue(text.contains("3 of 3 combinations pass a screening with rigid joints"), text);
    assertTrue(text.contains("frame mass [lb]"), text);
    Screening.leftOut().forEach(line -> assertTrue(text.replace('\n', ' ').contains(line), line));
    assertTrue(text.contains("This is a screening calculation"), text);
  }
}
