package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.check.Caution;
import rungwork.material.Material;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.section.Section;
import rungwork.section.SheetTable;
import rungwork.section.SizeTable;
import rungwork.study.Candidate;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.study.Shortlist;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Joints;

class PresentationTest {
  private static final Candidate LIGHT = Curlew.candidates().get(2);
  private static final Assessment ASSESSMENT = Curlew.assess(LIGHT);
  private static final Comparison COMPARISON =
      Comparison.of("front crossmember", Curlew.candidates(), Curlew::assess);

  /** Fixed lengths and stresses that a standard's rule is worded with. */
  private static final Pattern CONSTANTS_OF_STANDARDS =
      Pattern.compile("Within 25 mm of a weld|\\+ 16 mm|ε = √\\(235 MPa/fy\\) = √\\(235 MPa");

  static List<Object> values() {
    return List.of(
        Curlew.STEEL,
        new UnratedMaterial(
            "plain tube",
            Curlew.STEEL.elasticity(),
            new Source("no standard", Source.Tag.FROM_MEMORY)),
        LIGHT.stock().section(),
        SectionCard.of(LIGHT.stock().section(), Curlew.STEEL),
        SectionCard.beside(LIGHT.stock().section(), LIGHT.stock().section().turned()),
        SectionCard.beside(
            Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), LIGHT.stock().section(), mm(500)),
        Lineup.of(LIGHT.stock().section(), LIGHT.stock().section().turned()),
        SizeTable.of("flat EN 10058"),
        SizeTable.of("channel UPE EN 10365").size("UPE 80"),
        SheetTable.of("plate"),
        Shortlist.of(List.of(LIGHT.stock().section())),
        Curlew.vehicle(),
        Curlew.ladder(),
        Curlew.events().get(0),
        ASSESSMENT.response(Curlew.events().get(0), Joints.RIGID),
        Examples.measured("rail", 0.4),
        Examples.open("rail"),
        Examples.sheet(),
        Mounts.pair(),
        Mounts.sheet(),
        Mounts.wrapped(),
        Mounts.sheet().corners().get(1),
        MountTable.of("lower fore", "as it is", Mounts.sheet()).and("wrapped", Mounts.wrapped()),
        ASSESSMENT,
        COMPARISON,
        COMPARISON.table(Units.INCH_POUND),
        COMPARISON.lightest().orElseThrow(),
        Caution.IMPACT,
        Inspection.of(Curlew.ladder()),
        InspectionPageTest.HIT,
        LadderPlan.of(Curlew.ladder()),
        SectionDrawing.of(LIGHT.stock().section(), Units.INCH_POUND),
        SheetPage.of(Examples.sheet(), Units.INCH_POUND));
  }

  private static Page page(Object value, Units units) {
    return Presentation.all().stream()
        .filter(one -> one.type().isInstance(value))
        .findFirst()
        .orElseThrow(() -> new AssertionError(value.getClass().getName()))
        .page(value, units);
  }

  @ParameterizedTest
  @MethodSource("values")
  void everything_that_can_be_shown_has_sound_html_and_plain_text(Object value) {
    Page page = page(value, Units.METRIC);
    Xml.parse(page.html());
    assertFalse(page.text().isBlank());
    assertFalse(page.text().contains("<"), page.text());
    assertEquals(page.text(), page(value, Units.METRIC).text());
    assertEquals(page.html(), page(value, Units.METRIC).html());
  }

  @ParameterizedTest
  @MethodSource("values")
  void inch_pound_pages_show_no_metric_unit(Object value) {
    Page page = page(value, Units.INCH_POUND);
    for (String shown : List.of(Xml.seen(page.html()), page.text())) {
      String own = CONSTANTS_OF_STANDARDS.matcher(shown).replaceAll("");
      assertFalse(
          own.matches("(?s).*(\\d |\\[)(mm|cm.|kN|MPa|GPa|N|kN·m|N·m/deg|kg|kg/m³)[\\],;.)\\s].*"),
          own);
    }
  }

  @Test
  void whatever_judges_safety_carries_the_cautions_in_both_forms() {
    List<Object> judging =
        List.of(
            ASSESSMENT,
            ASSESSMENT.sheet(),
            COMPARISON,
            COMPARISON.lightest().orElseThrow(),
            LadderPlan.of(Curlew.ladder()).with(ASSESSMENT.sheet()),
            Mounts.withHit(),
            MountTable.of("lower fore", "as it is", Mounts.withHit()));
    for (Object value : judging) {
      Page page = page(value, Units.METRIC);
      for (Caution caution : Set.of(Caution.SCREENING, Caution.IMPACT)) {
        assertTrue(Xml.seen(page.html()).contains(caution.text()), value.toString());
        assertTrue(page.text().replaceAll("\\s+", " ").contains(caution.text()));
      }
    }
    Page one = page(Examples.measured("rail", 0.4), Units.METRIC);
    assertTrue(Xml.seen(one.html()).contains(Caution.SCREENING.text()));
  }

  @Test
  void a_comparison_names_the_choice_its_gaps_and_why_the_others_are_not_it() {
    String text = page(COMPARISON, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(text.contains(COMPARISON.choiceLine(Units.METRIC)));
    COMPARISON.objections().forEach(line -> assertTrue(text.contains(line), line));
    assertTrue(text.contains("- angle: no number, not modelled"));
  }

  @Test
  void bars_stand_against_the_limit_with_their_numbers() {
    Picture bars =
        UtilisationBars.of(
            "bars",
            List.of(
                new UtilisationBars.Entry("a", java.util.Optional.of(0.5), "", ""),
                new UtilisationBars.Entry("b", java.util.Optional.of(2.5), "", "open"),
                new UtilisationBars.Entry("c", java.util.Optional.empty(), "not modelled", "")));
    Drawings.holds(bars);
    List<String> words = Drawings.words(bars);
    assertTrue(
        words.containsAll(List.of("limit 1", "0.50", "2.50 over", "no number, not modelled")));
    double[] half = Drawings.places(Xml.all(bars.svg(), "polygon").get(0));
    double limit =
        Xml.all(bars.svg(), "line").stream()
            .filter(line -> line.getAttribute("class").equals("limit"))
            .mapToDouble(line -> Drawings.number(line, "x1"))
            .findFirst()
            .orElseThrow();
    assertEquals(0.5, (half[2] - half[0]) / (limit - half[0]), 1e-3);
  }

  @Test
  void bars_say_what_they_show_and_keep_long_notes_under_them() {
    String note = "bending of the box at the foot, braking, thrust on this pivot";
    Picture bars =
        UtilisationBars.of(
            "Utilisation by part",
            List.of(
                new UtilisationBars.Entry("tab", java.util.Optional.of(0.2), note, ""),
                new UtilisationBars.Entry("bolt", java.util.Optional.of(1.4), "refused", "")));
    Drawings.holds(bars);
    assertEquals(
        List.of("limit 1", "0", "tab", "0.20", note, "bolt", "1.40 over, refused"),
        Drawings.words(bars).stream().filter(w -> !w.equals("Utilisation by part")).toList());
    assertTrue(Drawings.words(bars).contains("Utilisation by part"));
    assertTrue(bars.text().contains("- tab: 0.20, " + note), bars.text());
    double width = Drawings.number(Xml.parse(bars.svg()), "width");
    assertTrue(width < 640, "small letters on paper and on a phone: " + width);
  }

  @Test
  void a_material_without_guaranteed_strength_says_so() {
    Material plain =
        new UnratedMaterial(
            "plain tube",
            Curlew.STEEL.elasticity(),
            new Source("no standard", Source.Tag.FROM_MEMORY));
    String text = page(plain, Units.METRIC).text();
    assertTrue(text.contains("nobody guarantees its strength"));
    assertFalse(text.contains("fy"));
    assertTrue(page(Curlew.STEEL, Units.METRIC).text().contains("fy      235.0  MPa"));
    assertTrue(text.contains("no standard (from memory)"));
  }

  @Test
  void a_vehicle_shows_centre_of_mass_axle_and_wheel_loads() {
    String text = page(Curlew.vehicle(), Units.METRIC).text();
    assertTrue(text.contains("front axle"));
    assertTrue(text.contains("rear right wheel"));
    assertTrue(text.contains("behind the front axle"));
    assertTrue(text.contains("battery           180.0   -1100       0     420"), text);
  }

  @Test
  void the_frame_s_own_pieces_are_folded_into_one_line_with_their_sum() {
    Page page = page(Curlew.vehicle().on(Curlew.ladder()), Units.METRIC);
    String pieces = " in " + Curlew.ladder().masses().size() + " pieces";
    assertTrue(page.text().contains("and the frame itself: "), page.text());
    assertTrue(page.text().contains(pieces), page.text());
    assertFalse(page.text().contains("left rail 1"), page.text());
    assertTrue(page.html().contains("left rail 1"));
  }

  @Test
  void an_assessed_impact_shows_the_decelerations_at_the_seats() {
    String text = page(ASSESSMENT, Units.METRIC).text();
    assertTrue(text.contains("The vehicle's deceleration at the seats"));
    assertTrue(text.contains("rearwards [g]"));
    assertTrue(text.contains("torsional stiffness with rigid joints"));
  }

  @Test
  void a_study_s_table_shows_four_digits_and_blanks_for_what_is_missing() {
    String text = page(COMPARISON.table(), Units.METRIC).text();
    assertTrue(text.contains("frame mass [kg]"));
    assertFalse(text.matches("(?s).*\\d\\.\\d{6,}.*"), text);
  }
}
