package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Caution;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.record.RepairRule;
import rungwork.study.Curlew;
import rungwork.vehicle.Ladder;

class InspectionPageTest {
  /**
   * The study's invented runabout after a hit: its left front mark lies 12 mm back, 4 mm to the
   * right and 10 mm up.
   */
  static final Inspection HIT =
      Inspection.of(Curlew.ladder())
          .on("2026-11-20")
          .length("front", "middle", mm(Math.hypot(1388, 4)), mm(1400))
          .length("middle", "rear", mm(1300), mm(1300))
          .width("front", mm(Math.hypot(796, 12)))
          .width("middle", mm(800))
          .width("rear", mm(800))
          .diagonal("front", "middle", mm(Math.hypot(1388, 796)), mm(Math.hypot(1400, 800)))
          .diagonal("middle", "rear", mm(1526.4), mm(1526.4))
          .height("front", mm(390), mm(380))
          .height("middle", mm(380), mm(380))
          .height("rear", mm(380), mm(380))
          .bow("middle", mm(0), mm(-1));

  private static String flat(Page page) {
    return page.text().replaceAll("\\s+", " ");
  }

  @Test
  void a_measured_frame_is_drawn_in_plan_and_elevation_with_its_numbers() {
    Picture picture = new InspectionDrawing(HIT, Units.METRIC).draw();
    Drawings.holds(picture);
    List<String> words = Drawings.words(picture);
    assertTrue(words.contains("front 12.0 back, 4.0 right"), words.toString());
    assertTrue(words.contains("front left 10.0 up"), words.toString());
    assertTrue(
        words.contains("thin: true; thick: measured, deviations drawn 10 × as large"),
        words.toString());
    assertTrue(
        words.containsAll(List.of("left rail", "right rail", "elevation", "middle", "rear")));
    Drawings.holds(new InspectionDrawing(HIT, Units.INCH_POUND).draw());
  }

  @Test
  void deviations_are_magnified_and_lengths_are_not() {
    Picture picture = new InspectionDrawing(HIT, Units.METRIC).draw();
    List<double[]> lines =
        Xml.all(picture.svg(), "polyline").stream().map(Drawings::places).toList();
    double[] trueLeft = lines.get(0);
    double[] nowLeft = lines.get(2);
    double scale = (trueLeft[trueLeft.length - 2] - trueLeft[0]) / 2800;
    HIT.moved().stream()
        .filter(one -> one.station().equals("front") && one.side().sign() > 0)
        .forEach(
            one -> assertEquals(-1000 * one.ahead() * 10 * scale, nowLeft[2] - trueLeft[2], 0.02));
  }

  @Test
  void the_page_says_what_moved_by_how_much_against_which_tolerance_and_what_follows() {
    String text = flat(InspectionPage.of(HIT, Units.METRIC));
    assertTrue(text.startsWith("Inspection of ladder Curlew, 2026-11-20"), text);
    assertTrue(text.contains("not checked: 20 places not measured"), text);
    assertTrue(text.contains("The left rail is the shorter at front to middle: that side took"));
    assertTrue(text.contains("± 5 mm: US Army TM 9-2320-289-34, para. 9-3, diagonals the same"));
    assertTrue(text.contains("20 places were not measured"));
    assertTrue(text.contains("Not a tolerance for a repair."));
    for (RepairRule rule : RepairRule.values()) {
      assertTrue(
          Xml.seen(InspectionPage.of(HIT, Units.METRIC).html()).contains(rule.text(Units.METRIC)));
    }
    assertFalse(text.contains("OK"));
  }

  @Test
  void a_blank_sheet_has_a_box_for_every_place_and_true_values_beside_them() {
    Inspection blank = Inspection.of(Curlew.ladder());
    Page page = InspectionPage.of(blank, Units.METRIC);
    assertEquals(blank.readings().size(), page.text().split(" ________(?!_)", -1).length - 1);
    assertTrue(
        page.text().contains("front to middle                 1612.5  ________"), page.text());
    Drawings.holds(new InspectionDrawing(blank, Units.METRIC).draw());
    assertTrue(flat(InspectionPage.of(blank, Units.INCH_POUND)).contains("front to middle 63.48 "));
  }

  @Test
  void both_carry_the_caution() {
    for (Inspection one : List.of(HIT, Inspection.of(Curlew.ladder()))) {
      assertTrue(flat(InspectionPage.of(one, Units.METRIC)).contains(Caution.SCREENING.text()));
      assertTrue(
          Xml.seen(InspectionPage.of(one, Units.METRIC).html()).contains(Caution.SCREENING.text()));
    }
  }

  @Test
  void readings_that_contradict_each_other_are_named_before_anybody_acts() {
    Inspection wrong =
        Inspection.of(Curlew.ladder())
            .length("front", "middle", mm(1400), mm(1400))
            .width("front", mm(800))
            .width("middle", mm(800))
            .diagonal("front", "middle", mm(1612), mm(1632));
    String text = flat(InspectionPage.of(wrong, Units.METRIC));
    assertTrue(text.contains("Caution. The readings contradict each other. Measure again: "), text);
    assertFalse(flat(InspectionPage.of(HIT, Units.METRIC)).contains("contradict"));
  }

  @Test
  void names_are_escaped() {
    Ladder nasty =
        Curlew.parts()
            .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
            .crossmember(Examples.NASTY, mm(-500), Curlew.tube(50, 50))
            .build();
    Inspection seen = Inspection.of(nasty).width(Examples.NASTY, mm(790));
    for (Inspection one : List.of(Inspection.of(nasty), seen)) {
      String html = InspectionPage.of(one, Units.METRIC).html();
      Xml.parse(html);
      assertFalse(html.contains("<script"));
    }
  }
}
