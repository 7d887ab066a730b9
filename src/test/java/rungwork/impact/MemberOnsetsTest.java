package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungwork.check.MemberChecks;
import rungwork.check.MemberChecks.Onset;

class MemberOnsetsTest {
  private static Onset onset(double factor, String... doubts) {
    return new Onset("first yield", "at its end", factor, List.of(), List.of(doubts));
  }

  private static MemberOnsets.Pair pair(double first, double ultimate, String... doubts) {
    return new MemberOnsets.Pair(onset(first, doubts), onset(ultimate));
  }

  private static MemberOnsets three() {
    MemberOnsets onsets = new MemberOnsets("left rail");
    onsets.add("one", at(pair(5, 6, "a"), pair(8, 13)));
    onsets.add("two", at(pair(3, 7, "b", "a"), pair(10, 11)));
    onsets.add("three", at(pair(4, 5.5), pair(9, 12, "c")));
    return onsets;
  }

  private static Map<CrushTube.Strength, MemberOnsets.Pair> at(
      MemberOnsets.Pair low, MemberOnsets.Pair high) {
    return new EnumMap<>(Map.of(CrushTube.Strength.LOW, low, CrushTube.Strength.HIGH, high));
  }

  @Test
  void the_worst_run_is_that_of_the_least_first_yield_at_the_low_strength() {
    assertEquals("two", three().worst().words());
    assertEquals("left rail", three().part());
    assertEquals(
        List.of("one", "two", "three"),
        three().runs().stream().map(MemberOnsets.Run::words).toList());
  }

  @Test
  void low_is_the_least_at_the_low_strength_and_high_the_most_at_the_high_one() {
    assertEquals(3, three().low(MemberOnsets.Pair::first));
    assertEquals(5.5, three().low(MemberOnsets.Pair::ultimate));
    assertEquals(10, three().high(MemberOnsets.Pair::first));
    assertEquals(13, three().high(MemberOnsets.Pair::ultimate));
  }

  @Test
  void doubts_of_all_runs_are_told_once_in_the_order_of_the_runs() {
    assertEquals(List.of("a", "b", "c"), three().doubts());
  }

  @Test
  void of_two_the_one_that_begins_first_stays_and_the_older_one_on_a_tie() {
    MemberOnsets.Pair four = pair(4, 9);
    MemberOnsets.Pair five = pair(5, 6);
    assertSame(four, four.earlier(five));
    assertSame(four, five.earlier(four));
    MemberOnsets.Pair again = pair(4, 8);
    assertSame(four, four.earlier(again));
  }

  @Test
  void what_was_not_checked_never_begins_and_says_why() {
    MemberOnsets.Pair none = MemberOnsets.Pair.notChecked("no metal");
    assertEquals(Double.POSITIVE_INFINITY, none.first().factor());
    assertEquals("first yield", none.first().what());
    assertEquals("whole part", none.first().where());
    assertEquals(List.of("no metal"), none.first().doubts());
    assertSame(none.first(), none.ultimate());
  }

  @Test
  void buckling_as_a_column_is_told_from_yield() {
    assertFalse(MemberOnsets.isColumn(onset(1)));
    assertTrue(MemberOnsets.isColumn(new Onset(MemberChecks.COLUMN, "x", 1, List.of(), List.of())));
  }
}
