package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void utilisations_to_1_run_through_sixteen_colours() {
    assertEquals("u0", Look.band(0));
    assertEquals("u7", Look.band(0.5 - 1e-9));
    assertEquals("u8", Look.band(0.5));
    assertEquals("u15", Look.band(1));
  }

  @Test
  void above_1_or_unknown_never_looks_like_a_pass() {
    assertEquals("over", Look.band(1.0001));
    assertEquals("over", Look.band(Double.NaN));
    assertEquals("over", Look.band(Double.POSITIVE_INFINITY));
  }

  @Test
  void every_colour_of_a_utilisation_stands_in_the_style_sheet() {
    for (int i = 0; i < 16; i++) {
      assertTrue(Look.styleSheet().contains(".rw .u" + i + " { fill: #"), "u" + i);
    }
    assertTrue(Look.styleSheet().contains(".rw .over { fill: #d55e00;"));
  }

  /** Relative luminance as WCAG 2.1 defines it; equal steps are not asked for, order is. */
  @Test
  void the_colours_grow_lighter_with_the_utilisation() {
    Matcher colours =
        Pattern.compile("\\.u\\d+ \\{ fill: #(..)(..)(..);").matcher(Look.drawingStyle());
    double last = -1;
    while (colours.find()) {
      double now =
          0.2126 * light(colours.group(1))
              + 0.7152 * light(colours.group(2))
              + 0.0722 * light(colours.group(3));
      assertTrue(now > last, colours.group());
      last = now;
    }
  }

  private static double light(String hex) {
    double c = Integer.parseInt(hex, 16) / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  @Test
  void rules_of_fragments_touch_nothing_outside_their_class() {
    String rules = Look.fragmentStyle().replaceAll("@media[^{]*\\{", "");
    Matcher selectors = Pattern.compile("(?m)^\\s*([^{}@]+)\\{").matcher(rules);
    while (selectors.find()) {
      for (String one : selectors.group(1).split(",")) {
        assertTrue(one.strip().matches("(div|svg)?\\.rw\\b.*"), one);
      }
    }
  }

  @Test
  void the_style_sheet_needs_no_escape_and_calls_nothing_from_outside() {
    assertFalse(Pattern.compile("[<>&]|url\\(|@import|http").matcher(Look.styleSheet()).find());
  }

  @Test
  void on_paper_a_picture_leaves_room_and_keeps_its_shape() {
    String paper = Look.fragmentStyle().substring(Look.fragmentStyle().indexOf("@media print"));
    assertTrue(paper.contains("width: auto; max-height: 110mm;"), paper);
  }

  @Test
  void notes_under_a_row_never_widen_its_columns_and_tables_keep_apart() {
    String style = Look.fragmentStyle();
    assertTrue(style.contains("tr.under .note, div.rw tr.under details { contain: inline-size; }"));
    assertTrue(style.contains("div.rw .scroll + .scroll { margin-top: 16px; }"));
  }

  @Test
  void a_column_of_units_takes_no_more_room_than_they_need() {
    Table table =
        new Table(
            List.of(Table.Column.words("property"), Table.Column.brief("unit")),
            List.of(Table.Row.of("area", "cm²")));
    assertTrue(new Page(List.of(table)).html().contains("<td class=\"brief\">cm²</td>"));
    assertTrue(Look.fragmentStyle().contains("td:last-child:not(.number):not(.brief)"));
  }
}
