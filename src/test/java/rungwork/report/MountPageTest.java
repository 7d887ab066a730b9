package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.CornerForces;
import rungwork.quantity.Units;

class MountPageTest {
  private static final ChainSheet SHEET = Mounts.withHit();
  private static final Page PAGE = MountPage.of(SHEET, Units.METRIC);

  private static String text() {
    return PAGE.text().replaceAll("\\s+", " ");
  }

  @Test
  void the_weakest_of_each_basis_stands_at_the_top_with_its_load_case() {
    SHEET.weakestOfEach().forEach(line -> assertTrue(text().contains(line), line));
    assertTrue(
        text().indexOf("Weakest of each basis") < text().indexOf("On the tyre"), PAGE.text());
  }

  @Test
  void each_basis_has_its_own_order_of_parts() {
    SHEET
        .ranked()
        .forEach(
            (basis, checks) -> {
              int last = -1;
              for (Check check : checks) {
                String bar = Numbers.utilisation(check.utilisation().orElseThrow());
                String line = "- " + check.part() + ": " + bar + ", " + check.what();
                int here = text().indexOf(line, last + 1);
                assertTrue(here > last, line + " in " + basis);
                last = here;
              }
            });
  }

  @Test
  void the_working_of_every_governing_check_is_on_the_page() {
    String seen = Xml.seen(PAGE.html());
    SHEET
        .ranked()
        .values()
        .forEach(
            checks ->
                checks.forEach(
                    check ->
                        check
                            .working()
                            .forEach(step -> assertTrue(seen.contains(step.toString()), seen))));
  }

  @Test
  void a_road_case_and_a_hit_stand_on_one_page_and_keep_both_cautions() {
    assertTrue(text().contains(Caution.SCREENING.text()));
    assertTrue(text().contains(Caution.IMPACT.text()));
    assertTrue(text().contains("Yield: design factor 1.50 on yield"));
    assertTrue(text().contains("Yield: design factor 1.00 on yield"));
  }

  @Test
  void the_sketch_shows_the_governing_force_where_it_arrives() {
    ChainSheet.Arrival drawn =
        SHEET.arrival(SHEET.sheet().governing().orElseThrow().loadCase()).orElseThrow();
    Picture picture = MountSketch.of(SHEET.chain(), Optional.of(drawn), Units.METRIC);
    double force = Math.hypot(drawn.load().wrench().fx(), drawn.load().wrench().fz()) / 1e3;
    assertTrue(picture.svg().contains(Numbers.decimals(force, 2) + " kN"), picture.svg());
    assertTrue(picture.text().contains("force under " + drawn.load().loadCase()));
  }

  @Test
  void sketches_hold_what_every_drawing_holds() {
    Drawings.holds(MountSketch.of(Mounts.single(), Optional.empty(), Units.METRIC));
    Drawings.holds(
        MountSketch.of(Mounts.pair(), SHEET.arrivals().stream().findFirst(), Units.INCH_POUND));
  }

  @Test
  void the_sketch_is_to_scale() {
    Picture picture = MountSketch.of(Mounts.single(), Optional.empty(), Units.METRIC);
    double hole = 0;
    double high = 0;
    for (Element circle : Xml.all(picture.svg(), "circle")) {
      hole = 2 * Drawings.number(circle, "r");
      high = -Drawings.number(circle, "cy");
    }
    // A hole of 10.5 mm stands 30 mm over the face.
    assertEquals(10.5 / 30, hole / high, 1e-3);
  }

  @Test
  void a_pair_is_drawn_as_two_plates_and_its_directions_on_the_vehicle_are_named() {
    Picture picture = MountSketch.of(Mounts.pair(), Optional.empty(), Units.INCH_POUND);
    assertTrue(picture.svg().contains("along the foot: → forward, ↑ left"), picture.svg());
    assertTrue(picture.svg().contains("dimensions [in]"));
    assertFalse(picture.svg().contains("kN"));
  }

  @Test
  void a_bracket_is_drawn_round_its_rail() {
    ChainSheet wrapped = Mounts.wrapped();
    Picture picture =
        MountSketch.of(wrapped.chain(), wrapped.arrivals().stream().findFirst(), Units.METRIC);
    Drawings.holds(picture);
    assertTrue(
        picture
            .text()
            .contains("bracket: 60 along the rail, leg 5 all round, over the top, 30 down"),
        picture.text());
  }

  @Test
  void ways_to_make_a_mount_stand_side_by_side_with_what_each_leaves_open() {
    MountTable table =
        MountTable.of("lower fore", "tab", Mounts.sheet()).and("saddle", Mounts.wrapped());
    String words = table.page(Units.METRIC).text().replaceAll("\\s+", " ");
    for (ChainSheet sheet : table.ways().values()) {
      for (Check check : sheet.sheet().governingByPart()) {
        String number = Numbers.utilisation(check.utilisation().orElseThrow());
        assertTrue(words.contains(number), number + " in " + words);
      }
    }
    assertTrue(
        words.contains(
            "every way: strength of arms and links not listed; repeated load, unless screened"
                + " apart"),
        words);
    assertTrue(words.contains("tab, besides: "), words);
    assertTrue(words.contains("rocking of the face of rail wall"), words);
  }

  @Test
  void an_inch_pound_page_has_no_metric_unit_in_it() {
    ChainSheet open = Mounts.thin();
    List<Page> pages =
        List.of(
            MountPage.of(open, Units.INCH_POUND),
            MountPage.of(Mounts.wrapped(), Units.INCH_POUND),
            CornerPage.of(open.corners().get(0), Units.INCH_POUND));
    for (Page page : pages) {
      List<String> metric =
          Pattern.compile("[^\\n]*\\d (mm|mm²|cm²|cm³|kN|N|N·m|kN·m|N/mm|MPa|kg)\\b[^\\n]*")
              .matcher(page.text() + Xml.seen(page.html()))
              .results()
              .map(MatchResult::group)
              .toList();
      assertEquals(List.of(), metric);
    }
    assertTrue(pages.get(0).text().replaceAll("\\s+", " ").contains("throat 0.05568 in is under"));
  }

  @Test
  void a_corner_shows_the_push_on_its_tyre_and_on_each_mount() {
    CornerForces corner = SHEET.corners().get(1);
    Picture picture = CornerSketch.of(corner, Units.METRIC);
    Drawings.holds(picture);
    assertTrue(picture.svg().contains("ground: 2.24 kN"), picture.svg());
    String words = CornerPage.of(corner, Units.METRIC).text();
    corner.corner().mounts().forEach(mount -> assertTrue(words.contains(mount.name()), words));
  }
}
