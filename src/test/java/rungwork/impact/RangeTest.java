package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class RangeTest {
  @Test
  void figures_are_spanned_from_the_least_to_the_most() {
    assertEquals(
        new Range(Kind.FORCE, -4, 9), Range.spanning(Kind.FORCE, DoubleStream.of(3, 9, -4, 2)));
    Refused.with(
        "no figures of a force to span; give one at least",
        () -> Range.spanning(Kind.FORCE, DoubleStream.empty()));
  }

  /** a − 2 b + 4 c over all eight corners: least 1 − 2·5 + 4·10, most 3 − 2·4 + 4·20. */
  @Test
  void a_function_is_asked_at_every_corner_of_its_inputs() {
    List<String> asked = new ArrayList<>();
    Range range =
        Range.over(
            Kind.RATIO,
            in -> {
              asked.add((int) in[0] + " " + (int) in[1] + " " + (int) in[2]);
              return in[0] - 2 * in[1] + 4 * in[2];
            },
            Range.ratio(1, 3),
            Range.ratio(4, 5),
            Range.ratio(10, 20));
    assertEquals(Range.ratio(31, 75), range);
    assertEquals(
        List.of("1 4 10", "3 4 10", "1 5 10", "3 5 10", "1 4 20", "3 4 20", "1 5 20", "3 5 20"),
        asked);
  }

  @Test
  void two_ranges_together_hold_both() {
    Range one = new Range(Kind.LENGTH, 2, 3);
    assertEquals(new Range(Kind.LENGTH, 1, 3), one.and(new Range(Kind.LENGTH, 1, 2.5)));
    assertEquals(new Range(Kind.LENGTH, 2, 7), one.and(new Range(Kind.LENGTH, 2.5, 7)));
  }

  @Test
  void both_ends_are_multiplied_and_the_kind_may_change() {
    assertEquals(Range.ratio(3, 7.5), Range.ratio(2, 5).times(1.5));
    assertEquals(new Range(Kind.FORCE, 2, 5), Range.ratio(2, 5).kindOf(Kind.FORCE));
  }

  @Test
  void ends_apart_by_more_than_rounding_are_two_numbers() {
    assertTrue(Range.ratio(4, 4).exact());
    assertTrue(Range.ratio(0, 0).exact());
    assertTrue(Range.ratio(-1 - 1e-13, -1).exact());
    assertFalse(Range.ratio(4, 4 + 1e-10).exact());
    assertFalse(Range.ratio(-4, -3).exact());
    assertEquals("2.00 to 5.00", Range.ratio(2, 5).toString());
    assertEquals("4.00", Range.ratio(4, 4).toString());
    assertEquals("12.3 mm", Range.brief(Kind.LENGTH, 0.012345, Units.METRIC));
  }

  @Test
  void what_is_no_range_is_refused() {
    Refused.with(
        "low end of a length is not a number; give a finite number",
        () -> new Range(Kind.LENGTH, Double.NaN, 1));
    Refused.with(
        "high end of a length is infinite; give a finite number",
        () -> new Range(Kind.LENGTH, 0, Double.POSITIVE_INFINITY));
    Refused.with(
        "a length from 3.00 mm to 2.00 mm stands the wrong way round; give the low end first",
        () -> new Range(Kind.LENGTH, 3e-3, 2e-3));
  }

  @Test
  void large_numbers_round_by_more() {
    assertTrue(Range.ratio(1e6, 1e6 + 1e-7).exact());
    assertFalse(Range.ratio(1e-6, 1e-6 + 1e-14).exact());
  }
}
