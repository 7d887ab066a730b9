package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.cm3;
import static rungwork.quantity.Quantities.cm4;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.fault.ModelException;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.section.SizeTable;

class ShortlistTest {
  private static final SizeTable SQUARE = SizeTable.of("square tube EN 10219-2");
  private static final SizeTable RECTANGULAR = SizeTable.of("rectangular tube EN 10219-2");
  private static final Section FIFTY = SQUARE.at("50x50x3");
  private static final Shortlist TUBES = Shortlist.of(SQUARE, RECTANGULAR);

  private static List<String> names(Shortlist list) {
    return list.sections().stream().map(Section::name).toList();
  }

  @Test
  void all_sections_stand_in_order_the_lightest_first() {
    assertEquals(SQUARE.sizes().size() + RECTANGULAR.sizes().size(), TUBES.looked());
    for (int i = 1; i < TUBES.sections().size(); i++) {
      assertTrue(
          TUBES.sections().get(i - 1).properties().area()
              <= TUBES.sections().get(i).properties().area());
    }
    assertEquals("square tube 20x20x2", TUBES.lightest().orElseThrow().name());
  }

  @Test
  void equal_mass_finds_the_tubes_that_weigh_the_same() {
    assertEquals(
        List.of("rectangular tube 60x40x3", "square tube 50x50x3"),
        names(TUBES.asHeavyAs(FIFTY, 0)));
  }

  @Test
  void equal_depth_takes_the_outline_s_height() {
    assertEquals(
        List.of(
            "rectangular tube 50x30x2",
            "rectangular tube 50x30x2.5",
            "square tube 50x50x2",
            "rectangular tube 50x30x3",
            "square tube 50x50x2.5",
            "rectangular tube 50x30x4",
            "square tube 50x50x3",
            "square tube 50x50x4",
            "square tube 50x50x5"),
        names(TUBES.asDeepAs(FIFTY, mm(0))));
  }

  @Test
  void at_least_this_much_keeps_what_just_reaches_it() {
    double w = FIFTY.properties().wely() * 1e6;
    double i = FIFTY.properties().iy() * 1e8;
    double it = FIFTY.properties().it() * 1e8;
    Shortlist strong =
        TUBES.modulusAtLeast(cm3(w)).secondMomentAtLeast(cm4(i)).torsionConstantAtLeast(cm4(it));
    assertTrue(strong.sections().contains(FIFTY));
    for (Section section : strong.sections()) {
      assertTrue(section.properties().wely() >= FIFTY.properties().wely() * (1 - 1e-8));
      assertTrue(section.properties().iy() >= FIFTY.properties().iy() * (1 - 1e-8));
      assertTrue(section.properties().it() >= FIFTY.properties().it() * (1 - 1e-8));
    }
    assertEquals("square tube 60x60x2", strong.lightest().orElseThrow().name());
  }

  @Test
  void what_was_asked_stands_in_one_line_in_the_reader_s_units() {
    Shortlist list =
        TUBES
            .asHeavyAs(FIFTY, 0.05)
            .asDeepAs(FIFTY, mm(2))
            .modulusAtLeast(cm3(7))
            .secondMomentAtLeast(cm4(19))
            .torsionConstantAtLeast(cm4(30));
    assertEquals(
        "1 of 116 sections: as heavy as square tube 50x50x3 within 5.0 %; as deep as square tube"
            + " 50x50x3 within 2.000 mm; Wel,y at least 7.000 cm³; Iy at least 19.00 cm⁴; It at"
            + " least 30.00 cm⁴",
        list.line(Units.METRIC));
    assertTrue(
        list.line(Units.INCH_POUND).contains("within 0.07874 in; Wel,y at least 0.4272 in³"));
    assertTrue(list.toString().endsWith("\n" + FIFTY), list.toString());
  }

  @Test
  void nothing_left_is_no_error() {
    Shortlist none = TUBES.torsionConstantAtLeast(cm4(1e6));
    assertEquals(List.of(), none.sections());
    assertTrue(none.lightest().isEmpty());
  }

  @Test
  void an_own_list_joins_before_the_first_condition() {
    Section own = Section.foldedChannel(mm(80), mm(55), mm(3), mm(3));
    Shortlist both = TUBES.and(List.of(own));
    assertEquals(TUBES.looked() + 1, both.looked());
    assertTrue(both.asHeavyAs(FIFTY, 0.01).sections().contains(own));
    Shortlist narrowed = TUBES.asHeavyAs(FIFTY, 0.01);
    refused(
        "sections cannot join a list that was narrowed down already (as heavy as square tube"
            + " 50x50x3 within 1.0 %); add them first",
        () -> narrowed.and(List.of(own)));
  }

  @Test
  void a_section_without_an_outline_has_no_depth() {
    Section bare = new Section("bare", FIFTY.properties(), FIFTY.points(), FIFTY.walls());
    assertAll(
        () ->
            assertEquals(
                List.of(), Shortlist.of(List.of(bare)).asDeepAs(FIFTY, mm(100)).sections()),
        () -> refused("the depth of bare is not known", () -> TUBES.asDeepAs(bare, mm(1))));
  }

  @Test
  void nonsense_is_refused() {
    assertAll(
        () ->
            refused(
                "there is no section to choose from; give one at least",
                () -> Shortlist.of(List.of())),
        () ->
            refused("difference of mass -0.1000 is below zero", () -> TUBES.asHeavyAs(FIFTY, -0.1)),
        () ->
            refused(
                "difference of depth -1.000 mm is below zero",
                () -> TUBES.asDeepAs(FIFTY, mm(-1))));
  }

  private static void refused(String message, Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}
