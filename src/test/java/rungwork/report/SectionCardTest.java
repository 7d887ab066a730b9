package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import rungwork.fault.ModelException;
import rungwork.material.Material;
import rungwork.quantity.Units;
import rungwork.section.Properties;
import rungwork.section.RolledWalls;
import rungwork.section.Section;
import rungwork.section.SizeTable;
import rungwork.study.Shortlist;

/** Cards of sections: one in its material, two side by side, several in a line-up. */
class SectionCardTest {
  private static final Section TUBE = SizeTable.of("rectangular tube EN 10219-2").at("80x40x3");
  private static final Section SHARP =
      Section.rolledChannel(mm(80), mm(40), RolledWalls.of(mm(3), mm(3), mm(0)))
          .named("square-cornered channel");
  private static final Section CHANNEL = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));

  private static String text(Shown shown) {
    return shown.page(Units.METRIC).text().replaceAll("\\s+", " ");
  }

  @Test
  void a_card_shows_mass_and_class_of_its_material() {
    String steel = text(SectionCard.of(TUBE, Material.rated("S355J2H")));
    assertTrue(steel.contains("Section rectangular tube 80x40x3 in S355J2H"), steel);
    assertTrue(steel.contains("mass of a length m 5.187 kg/m"), steel);
    assertTrue(steel.contains("class 1 in uniform compression: left wall, c/t = 23.7"), steel);
    String aluminium = text(SectionCard.of(TUBE, Material.rated("6061-T6")));
    assertTrue(aluminium.contains("mass of a length m 1.784 kg/m"), aluminium);
    assertTrue(aluminium.contains("class not checked: outside EN 1993-1-1"), aluminium);
  }

  @Test
  void a_card_says_in_print_what_its_page_says() {
    for (Shown card :
        List.of(
            SectionCard.of(TUBE, Material.rated("S355J2H")),
            SectionCard.beside(TUBE, CHANNEL),
            SectionCard.beside(TUBE, CHANNEL, mm(500)),
            SectionCard.withAxialForce(TUBE))) {
      assertEquals(card.page(Units.METRIC).text(), card.toString());
    }
  }

  @Test
  void without_a_material_the_mass_is_steel_s_and_says_so() {
    String page = SectionPage.of(TUBE, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(page.contains("mass of a length, steel m 5.187 kg/m"), page);
    assertFalse(page.contains("class"));
  }

  @Test
  void nobody_s_yield_strength_gives_no_class() {
    String page = text(SectionCard.of(TUBE, Material.unrated("A513 electric-welded")));
    assertTrue(
        page.contains(
            "class not checked: nobody guarantees the yield strength of A513 electric-welded"),
        page);
  }

  /** The open channel's 154 · 3³/3 = 1386 mm⁴ and the tube's 438 786 mm⁴, worked by hand. */
  /** By centre lines alone 317; what corners and free ends lack makes it 319. */
  @Test
  void boxing_a_channel_multiplies_its_torsion_constant_free_to_warp_by_some_317() {
    Shown card = SectionCard.beside(SHARP, TUBE);
    String page = text(card);
    assertTrue(
        page.contains(
            "rectangular tube 80x40x3 has 319 times the torsion constant of square-cornered"
                + " channel"),
        page);
    assertTrue(page.contains("stiff in twist, free to warp: × 319"), page);
    assertTrue(page.contains("nothing was checked"), page);
    assertTrue(page.contains("ends held against warping"), page);
  }

  /** Vlasov's bay of 0.5 m with both ends held is 7.7 times as stiff as with free ends. */
  @Test
  void with_held_ends_over_half_a_metre_boxing_is_worth_about_forty() {
    String page = text(SectionCard.beside(SHARP, TUBE, mm(500)));
    Matcher held =
        Pattern.compile("stiff in twist, ends held over 500 mm: × ([0-9.]+)").matcher(page);
    assertTrue(held.find(), page);
    assertEquals(41, Double.parseDouble(held.group(1)), 1.5);
    assertTrue(page.contains("lies between both bounds"), page);
    String inches = SectionCard.beside(CHANNEL, TUBE, mm(508)).page(Units.INCH_POUND).text();
    assertTrue(inches.contains("ends held over 20 in"), inches);
  }

  @Test
  void a_bay_without_length_or_with_unknown_warping_is_refused() {
    assertEquals(
        "length of a bay 0 mm is not above zero",
        assertThrows(ModelException.class, () -> SectionCard.beside(SHARP, TUBE, mm(0)))
            .getMessage());
    Section bare = new Section("bare", flat(CHANNEL), CHANNEL.points(), CHANNEL.walls());
    assertEquals(
        "bare is open and its warping constant is not known; compare it with free ends only",
        assertThrows(ModelException.class, () -> SectionCard.beside(bare, TUBE, mm(500)))
            .getMessage());
  }

  /** Properties as somebody might type them from a table that has no warping constant. */
  private static Properties flat(Section section) {
    Properties p = section.properties();
    return new Properties(
        p.area(),
        p.iy(),
        p.iz(),
        p.iyz(),
        p.it(),
        0,
        0,
        1,
        p.wely(),
        p.welz(),
        p.wply(),
        p.wplz(),
        p.shearY(),
        p.shearZ(),
        p.shearCentreY(),
        p.shearCentreZ());
  }

  @Test
  void an_open_section_s_card_has_its_warping_constant() {
    assertTrue(
        SectionPage.of(CHANNEL, Units.METRIC).text().contains("warping constant            Iw"));
    assertFalse(SectionPage.of(TUBE, Units.METRIC).text().contains("warping constant"));
  }

  /** What the notebook's last words lean on. */
  @Test
  void of_one_mass_closed_shapes_are_tens_of_times_as_stiff_in_twist_as_open_ones() {
    Section channel = Section.foldedChannel(mm(80), mm(55), mm(3), mm(3));
    Section boxed = Section.boxedChannel(mm(60), mm(36), mm(3), mm(3));
    Section flat = SizeTable.of("flat EN 10058").at("90x6");
    Section square = SizeTable.of("square tube EN 10219-2").at("50x50x3");
    assertEquals(1, Trait.MASS.ratio(square, channel), 0.015);
    assertEquals(1, Trait.MASS.ratio(square, boxed), 0.015);
    assertTrue(Trait.TWIST_STIFFNESS.ratio(flat, boxed) > 20);
    assertTrue(Trait.TWIST_STIFFNESS.ratio(channel, boxed) > 20);
    assertTrue(Trait.UPRIGHT_STRENGTH.ratio(boxed, channel) > 1.5);
    assertTrue(Trait.UPRIGHT_STRENGTH.ratio(square, channel) > 1.5);
  }

  @Test
  void the_ratios_stand_as_bars_on_a_logarithmic_scale() {
    Picture bars =
        RatioBars.of(
            "ratios",
            List.of(
                new RatioBars.Entry("ten", 10),
                new RatioBars.Entry("hundred", 100),
                new RatioBars.Entry("half", 0.5),
                new RatioBars.Entry("same", 1)));
    Drawings.holds(bars);
    double ten = width(bars, 0);
    assertEquals(2, width(bars, 1) / ten, 1e-2);
    assertEquals(Math.log10(2), width(bars, 2) / ten, 1e-2);
    assertTrue(Drawings.words(bars).containsAll(List.of("× 10.0", "× 100", "× 0.500", "× 1.00")));
  }

  private static double width(Picture picture, int bar) {
    double[] places = Drawings.places(Xml.all(picture.svg(), "polygon").get(bar));
    return Math.abs(places[2] - places[0]);
  }

  @Test
  void two_sections_are_drawn_to_one_scale() {
    Picture row = SectionRow.of(List.of(TUBE, Section.squareTube(mm(40), mm(3))), Units.METRIC);
    Drawings.holds(row);
    List<String> words = Drawings.words(row);
    assertTrue(words.containsAll(List.of("A", "B", "80", "40", "5.187 kg/m")), words.toString());
    double first = height(Xml.all(row.svg(), "path").get(0).getAttribute("d"));
    double second = height(Xml.all(row.svg(), "path").get(1).getAttribute("d"));
    assertEquals(2, first / second, 1e-3);
  }

  private static double height(String path) {
    double[] numbers =
        java.util.Arrays.stream(path.split("[^0-9.-]+"))
            .filter(part -> !part.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < numbers.length; i += 2) {
      low = Math.min(low, numbers[i]);
      high = Math.max(high, numbers[i]);
    }
    return high - low;
  }

  @Test
  void a_line_up_gives_each_trait_as_a_part_of_the_best() {
    Lineup lineup = Lineup.of(TUBE, CHANNEL);
    String page = text(lineup);
    assertTrue(
        page.contains(
            "stiff in twist, free to warp (It): rectangular tube 80x40x3 100 %, channel 80x40x3"
                + " 0.31 %"),
        page);
    assertTrue(page.contains("open, so its torsion is that of ends free to warp: channel"), page);
    assertTrue(page.contains("nothing was checked"), page);
    Drawings.holds(TraitBars.of(lineup.sections()));
    assertEquals(lineup.page(Units.METRIC).text(), lineup.toString());
  }

  @Test
  void a_line_up_of_one_or_without_outlines_is_refused() {
    assertEquals(
        "a line-up takes 2 to 26 sections; there are 1",
        assertThrows(ModelException.class, () -> Lineup.of(TUBE)).getMessage());
    Section bare = new Section("bare", TUBE.properties(), TUBE.points(), TUBE.walls());
    assertEquals(
        "bare has no outline to draw; it is known by its properties alone",
        assertThrows(ModelException.class, () -> Lineup.of(TUBE, bare)).getMessage());
  }

  @Test
  void a_table_of_sizes_says_how_far_print_and_sum_differ() {
    String page = SizeTablePage.of(SizeTable.of("channel UPE EN 10365"), Units.METRIC).text();
    assertTrue(
        page.replaceAll("\\s+", " ")
            .contains(
                "13 sizes; 143 printed figures compared with the computed ones, the worst differs"
                    + " by 0.38 %, rounding of its digits included"),
        page);
    String flats = SizeTablePage.of(SizeTable.of("flat EN 10058"), Units.METRIC).text();
    assertTrue(flats.contains("nothing printed beside them was at hand to compare"), flats);
  }

  @Test
  void a_shortlist_checks_nothing_and_says_so() {
    Shortlist list = Shortlist.of(List.of(TUBE, CHANNEL));
    String page = ShortlistPage.of(list, Units.METRIC).text();
    assertTrue(page.contains("sizes only: no load was looked at, nothing was checked"), page);
    assertTrue(page.contains("open: free to warp"), page);
  }

  /** Net for strength, 15.29 cm⁴ at 20 mm; gross for stiffness and mass; by hand. */
  @Test
  void drilled_sections_are_compared_by_net_strength_and_gross_stiffness() {
    Section drilled = TUBE.drilled("left wall", mm(11)).drilled("right wall", mm(11));
    for (String page :
        List.of(text(SectionCard.beside(TUBE, drilled)), text(Lineup.of(TUBE, drilled)))) {
      assertTrue(
          page.contains(
              "drilled, so its strength is that of the net section beside the hole; its stiffness"
                  + " and the mass of a length are those of the whole: rectangular tube 80x40x3"
                  + " drilled"),
          page);
    }
    String page = text(SectionCard.beside(TUBE, drilled));
    assertTrue(page.contains("strong sideways Wel,z 8.778 cm³ 7.646 cm³ 0.871"), page);
    assertTrue(page.contains("stiff sideways Iz 17.56 cm⁴ 17.56 cm⁴ 1.00"), page);
    assertTrue(page.contains("stiff in twist, free to It 43.88 cm⁴ 43.88 cm⁴ 1.00"), page);
    assertFalse(text(Lineup.of(TUBE, CHANNEL)).contains("drilled"));
  }

  @Test
  void a_tube_s_curve_of_moment_and_force_says_how_far_the_standard_errs() {
    String page = text(SectionCard.withAxialForce(TUBE));
    assertTrue(page.contains("y, exact: highest 16.5 cm³ at 0"), page);
    assertTrue(
        page.contains(
            "about y EN 1993-1-1, 6.2.9.1 stands up to 6.9 % of the plastic moment on the unsafe"
                + " side, at 0.25 of the force at yield, and up to 7.1 % on the safe side"),
        page);
    assertTrue(page.contains("about z EN 1993-1-1"), page);
    String svg = SectionCard.withAxialForce(TUBE).page(Units.METRIC).html();
    assertEquals(4, Xml.all(svg, "polyline").stream().filter(SectionCardTest::isCurve).count());
    assertEquals(8, Xml.all(svg, "polyline").size(), "each crosses others, so all stand in a key");
  }

  /** The lines of a key have two ends only. */
  private static boolean isCurve(Element line) {
    return Drawings.places(line).length > 4;
  }

  @Test
  void a_square_tube_has_one_curve_and_an_angle_none_of_a_standard() {
    Section square = SizeTable.of("square tube EN 10219-2").at("50x50x3");
    assertFalse(text(SectionCard.withAxialForce(square)).contains("about z"));
    Section angle = SizeTable.of("equal angle EN 10056-1").at("50x5");
    assertFalse(text(SectionCard.withAxialForce(angle)).contains("EN 1993"));
  }
}
