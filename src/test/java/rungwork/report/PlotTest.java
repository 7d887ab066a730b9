package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class PlotTest {
  private static final Plot.Axis RATIO = new Plot.Axis("utilisation", Kind.RATIO);

  private static String plot(Plot.Axis.Begins begins, double... masses) {
    Plot.Axis mass = new Plot.Axis("frame mass", Kind.MASS, begins);
    double[] front = {masses[0], masses[1]};
    Plot.Curve line = new Plot.Curve("", "first low", front, new double[] {0.9, 0.8});
    return Plot.of("utilisation against frame mass", mass, RATIO, List.of(line))
        .dotted(List.of(new Plot.Dot(masses[2], 1.3, "beaten", "beaten")))
        .picture(Units.METRIC)
        .svg();
  }

  /** The figures on the axis across, which stand below the plot's foot. */
  private static List<String> across(String svg) {
    return Pattern.compile("<text [^>]*y=\"17\"[^>]*>([^<]*)</text>")
        .matcher(svg)
        .results()
        .map((MatchResult found) -> found.group(1))
        .toList();
  }

  @Test
  void the_axes_reach_every_dot_on_a_line_or_not() {
    String svg = plot(Plot.Axis.Begins.AT_ZERO, 33, 37, 58);
    assertEquals(List.of("0", "10", "20", "30", "40", "50", "60"), across(svg));
    assertTrue(svg.contains(">1.4</text>") || svg.contains(">1.5</text>"), svg);
  }

  @Test
  void an_axis_of_dots_may_begin_near_the_least() {
    assertEquals(
        List.of("30", "35", "40", "45", "50", "55", "60"),
        across(plot(Plot.Axis.Begins.NEAR_THE_LEAST, 33, 37, 58)));
  }

  @Test
  void numbers_that_are_all_one_have_an_axis_from_zero() {
    assertEquals("0", across(plot(Plot.Axis.Begins.NEAR_THE_LEAST, 40, 40, 40)).get(0));
  }

  private static Plot.Curve curve(String name, String css, double... heights) {
    return new Plot.Curve(name, css, new double[] {0, 1, 2}, heights);
  }

  private static String drawn(Plot.Curve... curves) {
    Plot.Axis time = new Plot.Axis("time", Kind.RATIO);
    return Plot.of("two courses", time, RATIO, List.of(curves)).picture(Units.METRIC).svg();
  }

  /** How far down some words stand; the plot's top is at −250. */
  private static double down(String svg, String words) {
    return Xml.all(svg, "text").stream()
        .filter(text -> text.getTextContent().equals(words))
        .mapToDouble(text -> Drawings.number(text, "y"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void curves_that_keep_apart_are_named_beside_their_tops() {
    String svg = drawn(curve("high", "first", 1, 1, 1), curve("low", "second", 0.4, 0.2, 0.1));
    assertEquals(2, Xml.all(svg, "polyline").size());
    assertTrue(down(svg, "low, at most 0.400") > -250, svg);
  }

  @Test
  void names_that_would_cover_a_line_or_each_other_stand_in_a_key() {
    String svg =
        drawn(
            curve("one", "first", 0.9, 0.8, 0.8),
            curve("other", "second", 0.9, 0.7, 0.7),
            curve("another", "third", 0.9, 0.6, 0.6));
    assertEquals(6, Xml.all(svg, "polyline").size());
    double one = down(svg, "one, at most 0.900");
    double another = down(svg, "another, at most 0.900");
    assertTrue(down(svg, "two courses") < one && one < another, svg);
    assertTrue(another < down(svg, "utilisation"), svg);
    assertTrue(down(svg, "utilisation") < -250, svg);
  }
}
