package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import rungwork.quantity.Units;
import rungwork.section.BuiltUp;
import rungwork.section.Section;
import rungwork.section.SizeTable;

class SectionPageTest {
  private static final Section TUBE = Section.rectangularTube(mm(80), mm(40), mm(3));

  @Test
  void the_drawing_is_to_scale() {
    Element outline = Xml.all(SectionDrawing.of(TUBE, Units.METRIC).svg(), "path").get(0);
    double[] numbers =
        java.util.Arrays.stream(outline.getAttribute("d").split("[^0-9.-]+"))
            .filter(part -> !part.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    double width = extent(numbers, 0);
    double height = extent(numbers, 1);
    assertEquals(80.0 / 40, height / width, 1e-3);
  }

  private static double extent(double[] numbers, int first) {
    var coordinates =
        IntStream.range(0, numbers.length / 2).mapToDouble(i -> numbers[2 * i + first]);
    var statistics = coordinates.summaryStatistics();
    return statistics.getMax() - statistics.getMin();
  }

  @Test
  void every_stress_point_has_its_number_on_the_drawing_and_its_row_in_the_table() {
    String svg = SectionDrawing.of(TUBE, Units.METRIC).svg();
    String page = SectionPage.of(TUBE, Units.METRIC).html();
    for (int i = 1; i <= TUBE.points().size(); i++) {
      assertTrue(Xml.texts(svg, "text").contains(String.valueOf(i)));
      assertTrue(Xml.texts(page, "td").contains(String.valueOf(i)));
    }
  }

  @Test
  void overall_dimensions_and_wall_stand_on_the_drawing() {
    List<String> metric = Xml.texts(SectionDrawing.of(TUBE, Units.METRIC).svg(), "text");
    assertTrue(metric.containsAll(List.of("80", "40", "dimensions [mm]; wall 3", "C, S")));
    List<String> inches = Xml.texts(SectionDrawing.of(TUBE, Units.INCH_POUND).svg(), "text");
    assertTrue(inches.containsAll(List.of("3.15", "1.575", "dimensions [in]; wall 0.118")));
  }

  @Test
  void walls_of_several_thicknesses_are_named_with_them() {
    Section tee = BuiltUp.tee(mm(60), mm(50), mm(4), mm(6));
    List<String> texts = Xml.texts(SectionDrawing.of(tee, Units.METRIC).svg(), "text");
    assertTrue(texts.containsAll(List.of("60", "50")), texts.toString());
    assertTrue(texts.contains("dimensions [mm]; thickness of flange 6, web 4"), texts.toString());
  }

  @Test
  void parts_and_holes_are_drawn_each_with_its_edge() {
    Section box = BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).platedOn(mm(100), mm(4));
    Section drilled = TUBE.drilled("left wall", mm(11));
    assertEquals(2, edges(box));
    assertEquals(edges(TUBE) + 1, edges(drilled));
    assertTrue(
        SectionPage.of(drilled, Units.METRIC)
            .text()
            .replaceAll("\\s+", " ")
            .contains(
                "holes: 11.00 mm in left wall; stress is that of the net section: A 6.278 cm² of"
                    + " 6.608 cm²"));
  }

  private static long edges(Section section) {
    Element steel = Xml.all(SectionDrawing.of(section, Units.METRIC).svg(), "path").get(0);
    return steel.getAttribute("d").chars().filter(letter -> letter == 'M').count();
  }

  private static String text(Section section) {
    return SectionPage.of(section, Units.METRIC).text().replaceAll("\\s+", " ");
  }

  private static void shows(Section section, String... rows) {
    String page = text(section);
    for (String row : rows) {
      assertTrue(page.contains(row), () -> row + " in " + page);
    }
  }

  @Test
  void a_leaning_section_shows_its_principal_axes_drawn_and_in_figures() {
    Section angle = SizeTable.of("unequal angle EN 10056-1").at("60x40x5");
    shows(
        angle,
        "its strong axis u turned by 23.44 deg from y towards z",
        "product of inertia Iyz -5.914 cm⁴",
        "Iu 19.75 cm⁴",
        "Iv 3.542 cm⁴",
        "strong axis u from y to z α 23.44 deg",
        "Wpl,u 8.462 cm³",
        "Wpl,v 3.426 cm³");
    List<String> texts = Xml.texts(SectionDrawing.of(angle, Units.METRIC).svg(), "text");
    assertTrue(texts.containsAll(List.of("u", "v", "C", "S")), texts.toString());
    assertFalse(Xml.texts(SectionDrawing.of(TUBE, Units.METRIC).svg(), "text").contains("u"));
    assertFalse(text(TUBE).contains("Iyz"));
  }

  @Test
  void each_edge_has_its_modulus_where_edges_differ() {
    shows(
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)),
        "elastic modulus about y Wel,y 10.98 cm³",
        "modulus about z, left Wel,z 2.457 cm³",
        "modulus about z, right Wel,z 6.179 cm³",
        "centroid from right edge ey 11.38 mm",
        "torsion modulus Wt 0.4504 cm³",
        "warping constant Iw 69.12 cm⁶",
        "shear centre along y yS -24.76 mm",
        "open: no wall closes a cell, and a slit or an unwelded seam, however narrow, leaves one"
            + " open; torsion constant and modulus are those of ends free to warp, held ends make"
            + " it stiffer and stress it along its length");
    assertFalse(text(TUBE).contains("z, left"));
    assertFalse(text(TUBE).contains("warp"));
  }

  @Test
  void a_drilled_section_shows_what_the_holes_leave_for_stress() {
    shows(
        TUBE.drilled("left wall", mm(11)).drilled("right wall", mm(11)),
        "A 5.948 cm² of 6.608 cm², Iy 52.18 cm⁴, Iz 15.29 cm⁴, Wel,y 13.05 cm³, Wel,z 7.646 cm³;"
            + " stiffness and stability are those of the gross one below",
        "second moment about z Iz 17.56 cm⁴",
        "elastic modulus about z Wel,z 8.778 cm³");
  }

  @Test
  void a_section_without_an_outline_has_a_page_without_a_drawing() {
    Section bare = new Section(Examples.NASTY, TUBE.properties(), TUBE.points(), TUBE.walls());
    String html = SectionPage.of(bare, Units.METRIC).html();
    assertTrue(Xml.all(html, "svg").isEmpty());
    assertFalse(html.contains("<script"));
  }

  @Test
  void drawings_call_nothing_from_outside_and_run_nothing() {
    String svg =
        SectionDrawing.of(TUBE, Units.METRIC).svg().replace("http://www.w3.org/2000/svg", "");
    assertFalse(svg.matches("(?s).*(http|href|script|url\\(|on\\w+=).*"));
  }

  @Test
  void rounding_noise_shows_as_zero() {
    assertEquals("0.00", Numbers.place(-1e-17, Units.METRIC));
    assertTrue(SectionPage.of(TUBE, Units.METRIC).text().contains("yS       0.00  mm"));
  }
}
