package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.check.Verdict;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class SheetPageTest {
  private static final Page PAGE = SheetPage.of(Examples.sheet(), Units.METRIC);

  @Test
  void no_sheet_loses_a_caution() {
    for (Caution caution : Caution.values()) {
      assertTrue(Xml.seen(PAGE.html()).contains(caution.text()), caution.name());
      assertTrue(oneLine(PAGE.text()).contains(caution.text()), caution.name());
    }
    Page plain = SheetPage.of(CheckSheet.of("empty", List.of()), Units.METRIC);
    assertTrue(Xml.seen(plain.html()).contains(Caution.SCREENING.text()));
    assertTrue(oneLine(plain.text()).contains(Caution.SCREENING.text()));
  }

  @Test
  void what_was_not_checked_outside_a_range_or_assumed_is_never_hidden() {
    for (String shown : List.of(Xml.seen(PAGE.html()), oneLine(PAGE.text()))) {
      assertTrue(shown.contains("torsion of an open section is not checked"));
      assertTrue(shown.contains("middle crossmember, rear crossmember"));
      assertTrue(shown.contains("outside table 5.2: wall of class 4"));
      assertTrue(shown.contains("welds"));
      assertTrue(shown.contains("small deflections"));
      assertTrue(shown.contains(Examples.sheet().verdictLine()));
    }
  }

  @Test
  void nothing_is_called_ok() {
    assertFalse(Xml.seen(PAGE.html()).matches("(?s).*\\b(OK|ok|safe)\\b.*"));
  }

  @Test
  void the_working_is_folded_under_each_row() {
    List<String> folded = Xml.texts(PAGE.html(), "ol");
    assertTrue(folded.size() >= 3);
    assertTrue(
        folded.get(0).contains("σ = N/A + M/W = 12.40 kN / 6.740 cm² + 0.8600 kN·m / 15.90 cm³"));
    assertTrue(folded.get(0).contains("EN 1993-1-1:2005, 6.2.1(5)"));
    List<String> notes = Xml.texts(PAGE.html(), "div");
    assertTrue(notes.contains("under bump, both front wheels"));
    assertTrue(notes.contains("at front left; basis a"));
    assertTrue(
        Xml.texts(PAGE.html(), "li").contains("basis a (yield): design factor 1.5 on yield"));
  }

  @Test
  void above_1_stands_a_word_beside_the_colour() {
    assertEquals(
        "1.11 over",
        Xml.all(PAGE.html(), "td").stream()
            .filter(cell -> cell.getAttribute("class").equals("flag"))
            .findFirst()
            .orElseThrow()
            .getTextContent());
    assertEquals("above 1.00 over", Numbers.utilisation(1.0001));
    assertEquals("1.00", Numbers.utilisation(1));
  }

  @Test
  void every_coloured_cell_has_its_number() {
    Xml.all(PAGE.html(), "span")
        .forEach(
            chip ->
                assertTrue(
                    chip.getParentNode().getTextContent().matches("\\d.*|not checked"),
                    chip.getParentNode().getTextContent()));
  }

  @Test
  void units_stand_in_the_head_when_all_rows_share_them_and_in_the_cells_when_not() {
    CheckSheet same = CheckSheet.of("same", List.of(Examples.measured("left rail", 0.5)));
    assertTrue(Xml.texts(SheetPage.of(same, Units.METRIC).html(), "th").contains("demand [MPa]"));
    assertTrue(Xml.texts(PAGE.html(), "td").contains("222.0 MPa"));
    assertTrue(Xml.texts(PAGE.html(), "th").contains("demand"));
  }

  @Test
  void inch_pound_pages_show_no_metric_unit() {
    Page page = SheetPage.of(Examples.sheet(), Units.INCH_POUND);
    for (String shown : List.of(Xml.seen(page.html()), page.text())) {
      assertFalse(shown.matches("(?s).*\\d (mm|cm.|kN|MPa|N|kN·m|kg)\\b.*"), shown);
      assertTrue(shown.contains("ksi"));
    }
  }

  @Test
  void names_are_escaped() {
    CheckSheet sheet =
        new CheckSheet(
            Examples.NASTY,
            List.of(Examples.measured(Examples.NASTY, 0.5), Examples.open(Examples.NASTY)),
            List.of(Examples.NASTY),
            List.of(),
            Set.of());
    Page page = SheetPage.of(sheet, Units.METRIC);
    assertFalse(page.html().contains("<script"));
    assertEquals(Examples.NASTY, Xml.texts(page.html(), "h2").get(0));
  }

  @Test
  void plain_text_is_the_same_whatever_the_machine_speaks() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(PAGE.text(), SheetPage.of(Examples.sheet(), Units.METRIC).text());
      assertEquals(PAGE.html(), SheetPage.of(Examples.sheet(), Units.METRIC).html());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void the_plain_text_table_is_aligned() {
    List<String> lines = PAGE.text().lines().toList();
    int head = lines.indexOf("Governing check of each part") + 1;
    assertEquals(
        "utilisation         part               what                demand   capacity",
        lines.get(head));
    assertEquals(
        "1.11 over           front crossmember  combined stress  222.0 MPa  200.0 MPa",
        lines.get(head + 2));
    assertEquals("    under bump, both front wheels", lines.get(head + 3));
    assertEquals("    at front left; basis a", lines.get(head + 4));
    assertTrue(lines.contains("- basis a (yield): design factor 1.5 on yield"));
  }

  @Test
  void a_long_sheet_says_how_much_it_lists() {
    List<rungwork.check.Check> many =
        java.util.stream.IntStream.range(0, 150)
            .mapToObj(i -> Examples.measured("part " + i, i / 300.0))
            .toList();
    String summary =
        Xml.texts(SheetPage.of(CheckSheet.of("long", many), Units.METRIC).html(), "summary")
            .stream()
            .filter(words -> words.startsWith("Every"))
            .findFirst()
            .orElseThrow();
    assertTrue(summary.contains("120 of 150 checks"), summary);
  }

  @Test
  void a_check_that_was_not_made_has_no_number() {
    assertEquals(
        new Table.Cell("not checked", "none"), Numbers.cell(new Verdict.NotChecked("no data")));
    assertEquals(
        "0.50 outside range",
        Numbers.cell(
                new Verdict.OutsideRange(new Verdict.Measured(1, 2, Kind.RATIO), "outside a range"))
            .words());
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
