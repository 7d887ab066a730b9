package rungwork.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.inch;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.material.Source;
import rungwork.quantity.Units;
import rungwork.record.Inspection.Moved;
import rungwork.record.Reading.Kind;
import rungwork.record.Reading.Standing;
import rungwork.vehicle.Side;

class InspectionTest {
  private static final Inspection BLANK = Inspection.of(Square.ladder());

  private static Reading reading(Inspection seen, String where) {
    return seen.readings().stream()
        .filter(one -> one.where().equals(where))
        .findFirst()
        .orElseThrow(() -> new AssertionError(seen.readings().toString()));
  }

  private static Moved moved(Inspection seen, Side side, String station) {
    return seen.moved().stream()
        .filter(one -> one.side() == side && one.station().equals(station))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_blank_sheet_says_where_to_put_the_tape_and_what_is_true_there() {
    assertEquals(List.of("tip", "front", "middle", "rear"), BLANK.stations());
    assertEquals(6 + 4 + 8 + 8 + 4, BLANK.readings().size());
    assertEquals(1.5, reading(BLANK, "front left to middle right").truth(), 1e-12);
    assertEquals(Math.hypot(2.1, 0.9), reading(BLANK, "front right to rear left").truth(), 1e-12);
    assertEquals(0.3, reading(BLANK, "left rail, tip to front").truth(), 1e-12);
    assertEquals(0.9, reading(BLANK, "rail to rail at tip").truth(), 1e-12);
    assertEquals(
        "Nothing is measured yet; not checked: 30 places not measured", BLANK.verdictLine());
    assertTrue(BLANK.readings().stream().allMatch(one -> one.standing() == Standing.NOT_MEASURED));
    assertEquals(OptionalDouble.empty(), BLANK.readings().get(0).difference());
    assertEquals(List.of(), BLANK.suspects());
    assertTrue(BLANK.moved().stream().noneMatch(one -> one.inPlan() || one.inHeight()));
  }

  @Test
  void true_values_follow_rails_that_taper_and_rise() {
    Inspection tapering = Inspection.of(Square.tapering());
    assertEquals(0.6, reading(tapering, "rail to rail at front").truth(), 1e-12);
    assertEquals(
        Math.hypot(1.2, 0.15), reading(tapering, "left rail, front to middle").truth(), 1e-12);
    double chord = 0.45 - 0.15 * 2.1 / 2.4;
    assertEquals(0.3 - chord, reading(tapering, "string to right rail at front").truth(), 1e-12);
    assertEquals(
        Math.hypot(1.2, 0.1),
        reading(Inspection.of(Square.raised()), "left rail, front to middle").truth(),
        1e-12);
  }

  @Test
  void ends_that_reach_beyond_no_crossmember_get_no_mark_of_their_own() {
    assertFalse(BLANK.stations().contains("tail"));
    Inspection longer =
        Inspection.of(
            Square.parts()
                .crossmember("tip", mm(-300), Square.ladder().crossmember("front").stock())
                .rails(mm(300), mm(-2400), mm(900), Square.ladder().crossmember("front").stock())
                .build());
    assertEquals(List.of("front", "tip", "middle", "rear", "tail"), longer.stations());
  }

  @Test
  void each_reading_stands_beside_the_true_value_and_published_tolerances() {
    Inspection seen =
        BLANK
            .on("2026-11-20")
            .width("front", mm(904))
            .width("middle", mm(906))
            .width("rear", mm(903));
    Reading front = reading(seen, "rail to rail at front");
    assertEquals(0.004, front.difference().orElseThrow(), 1e-12);
    assertEquals(Standing.SOURCES_DIFFER, front.standing());
    assertEquals(Standing.OUTSIDE, reading(seen, "rail to rail at middle").standing());
    assertEquals(Standing.WITHIN, reading(seen, "rail to rail at rear").standing());
    assertEquals(
        "Inspection of square, 2026-11-20: Beside the tolerances: 1 outside, 1 sources differ, 1"
            + " within; not checked: 27 places not measured",
        seen.toString());
    assertEquals(
        "rail to rail at front: true 900.0 mm, measured 904.0 mm, sources differ",
        front.toString());
    assertTrue(front.limits().get(0).source().tag() == Source.Tag.READ);
  }

  @Test
  void what_else_is_measured_is_kept_too() {
    Inspection seen = BLANK.diagonal("tip", "rear", mm(2563), mm(2563));
    assertEquals(32, seen.readings().size());
    assertEquals(Standing.WITHIN, reading(seen, "tip left to rear right").standing());
  }

  @Test
  void marks_are_found_where_they_went() {
    Bent bent = new Bent(Square.ladder()).move(Side.LEFT, "tip", -17, -9, 7);
    bent.move(Side.RIGHT, "tip", -3, -8, 2).move(Side.LEFT, "front", -12, -5, 5);
    Inspection seen = bent.measured().straight("middle", "rear");
    for (Side side : Side.values()) {
      for (String station : seen.stations()) {
        Moved one = moved(seen, side, station);
        assertEquals(bent.at(side, station).x() - seen.mark(side, station).x(), one.ahead(), 2e-5);
        assertEquals(bent.at(side, station).y() - seen.mark(side, station).y(), one.left(), 2e-5);
        assertEquals(bent.at(side, station).z() - seen.mark(side, station).z(), one.up(), 2e-5);
        assertTrue(one.inPlan() && one.inHeight());
      }
    }
    assertEquals(List.of(), seen.suspects());
  }

  @Test
  void a_frame_that_stands_crooked_on_its_stands_is_still_true() {
    Inspection seen = BLANK.straight("middle", "rear");
    for (String station : seen.stations()) {
      double x = 1000 * seen.mark(Side.LEFT, station).x();
      seen = seen.height(station, mm(700 + 0.01 * x + 6), mm(700 + 0.01 * x - 6));
    }
    for (Moved one : seen.moved()) {
      assertEquals(0, one.up(), 1e-12);
    }
    assertEquals(0.706 + 0.003, reading(seen, "height of the left rail at tip").truth(), 1e-12);
  }

  @Test
  void heights_far_from_a_short_straight_part_are_known_less_well() {
    Inspection near = new Bent(Square.ladder()).measured().straight("middle", "rear");
    double there = near.knownTo(reading(near, "height of the left rail at tip"));
    double here = near.knownTo(reading(near, "height of the left rail at rear"));
    // Four marks 0.9 m apart both ways: 1/4 + (0.45/0.9)² + (1.95/0.9)² and 1/4 + 1/4 + 1/4.
    assertEquals(0.002 * Math.sqrt(1 + 0.25 + 0.25 + 1.95 * 1.95 / 0.81), there, 1e-9);
    assertEquals(0.002 * Math.sqrt(1.75), here, 1e-9);
    assertEquals(0.002, near.knownTo(near.readings().get(0)));
    Inspection one = BLANK.height("front", mm(400), mm(402));
    assertEquals(
        0, moved(one, Side.LEFT, "front").up(), 1e-12, "one station gives offset and roll");
  }

  @Test
  void a_tape_misread_is_called_out() {
    Bent bent = new Bent(Square.ladder()).move(Side.LEFT, "tip", -17, -9, 0);
    double d = bent.distance(Side.LEFT, "front", Side.RIGHT, "rear");
    Inspection misread = Inspection.of(Square.ladder());
    for (Reading one : bent.measured().readings()) {
      if (one.kind() == Kind.LENGTH && one.side() == Side.LEFT) {
        misread =
            misread.length(
                one.from(),
                one.to(),
                mm(bent.distance(Side.LEFT, one.from(), Side.LEFT, one.to())),
                mm(bent.distance(Side.RIGHT, one.from(), Side.RIGHT, one.to())));
      }
      if (one.kind() == Kind.WIDTH) {
        misread = misread.width(one.from(), mm(1000 * one.measured().orElseThrow()));
      }
      if (one.kind() == Kind.DIAGONAL && one.side() == Side.LEFT && !one.from().equals("front")) {
        misread =
            misread.diagonal(
                one.from(),
                one.to(),
                mm(bent.distance(Side.LEFT, one.from(), Side.RIGHT, one.to())),
                mm(bent.distance(Side.RIGHT, one.from(), Side.LEFT, one.to())));
      }
    }
    assertEquals(List.of(), misread.suspects());
    Inspection wrong =
        misread
            .diagonal("front", "middle", mm(1500), mm(1500))
            .diagonal("front", "rear", mm(d + 15), mm(d));
    assertEquals(
        List.of("front left to rear right"),
        wrong.suspects().stream().map(Reading::where).toList());
  }

  @Test
  void as_built_goes_by_the_length_that_the_standard_goes_by() {
    assertEquals(0.003, BLANK.asBuilt(reading(BLANK, "rail to rail at front")).value());
    assertEquals(0.006, BLANK.asBuilt(reading(BLANK, "front left to rear right")).value());
    assertEquals(0.006, BLANK.asBuilt(reading(BLANK, "height of the left rail at front")).value());
    assertEquals(
        Source.Tag.SECOND_HAND,
        BLANK.asBuilt(reading(BLANK, "rail to rail at front")).source().tag());
  }

  @Test
  void every_rule_of_repair_names_its_source_and_shows_lengths_in_the_readers_units() {
    for (RepairRule rule : RepairRule.values()) {
      assertFalse(rule.text(Units.INCH_POUND).contains(" mm"), rule::toString);
      assertFalse(rule.text(Units.METRIC).contains("%"), rule::toString);
      assertFalse(rule.source().reference().isBlank());
    }
    assertTrue(RepairRule.CRACK.text(Units.INCH_POUND).contains("within 3.0 in of"));
    assertTrue(RepairRule.CRACK.toString().startsWith("cracked rail: A crack across"));
  }

  private static void refused(String message, Function<Inspection, Object> wrong) {
    assertEquals(
        message, assertThrows(ModelException.class, () -> wrong.apply(BLANK)).getMessage());
  }

  @Test
  void a_station_that_is_not_there_is_refused_with_those_that_are() {
    String message =
        "ladder square has no station named dash to measure at; it has tip, front, middle, rear";
    Stream.<Function<Inspection, Object>>of(
            one -> one.diagonal("front", "dash", mm(1), mm(1)),
            one -> one.length("dash", "rear", mm(1), mm(1)),
            one -> one.width("dash", mm(1)),
            one -> one.height("dash", mm(1), mm(1)),
            one -> one.bow("dash", mm(1), mm(1)),
            one -> one.straight("front", "dash"),
            one -> one.mark(Side.LEFT, "dash"))
        .forEach(wrong -> refused(message, wrong));
  }

  @Test
  void what_cannot_be_is_refused() {
    refused(
        "the day of an inspection is \"20.11.2026\"; write year, month and day as 2026-11-20",
        one -> one.on("20.11.2026"));
    refused("accuracy of a reading 0 mm is not above zero", one -> one.accuracy(mm(0)));
    refused("width at front -900.0 mm is not above zero", one -> one.width("front", mm(-900)));
    refused(
        "front right to middle left 0 mm is not above zero",
        one -> one.diagonal("front", "middle", mm(1500), mm(0)));
    refused(
        "a measurement from middle to front needs its front station first and another behind it;"
            + " from the front there are tip, front, middle, rear",
        one -> one.length("middle", "front", mm(1200), mm(1200)));
    refused(
        "a measurement from front to front needs its front station first and another behind it;"
            + " from the front there are tip, front, middle, rear",
        one -> one.diagonal("front", "front", mm(1200), mm(1200)));
    refused(
        "the straight part runs from its front station to one behind it, not from rear to front",
        one -> one.straight("rear", "front"));
    refused(
        "rail to rail at front was measured twice, 900.0 mm and 901.0 mm; keep one",
        one -> one.width("front", mm(900)).width("front", mm(901)));
  }

  @Test
  void a_diagonal_that_closes_no_triangle_with_width_and_length_is_refused() {
    String message =
        "no triangle has the diagonal front left to middle right of 2150 mm, the width rail to rail"
            + " at front of 900.0 mm and the length right rail, front to middle of 1200 mm; the"
            + " diagonal must lie between 300.0 mm and 2100 mm: measure again";
    refused(
        message,
        one ->
            one.width("front", mm(900))
                .length("front", "middle", mm(1200), mm(1200))
                .diagonal("front", "middle", mm(2150), mm(1500)));
    refused(
        message,
        one ->
            one.diagonal("front", "middle", mm(2150), mm(1500))
                .width("front", mm(900))
                .length("front", "middle", mm(1200), mm(1200)));
    refused(
        "no triangle has the diagonal front right to middle left of 250.0 mm, the width rail to"
            + " rail at middle of 900.0 mm and the length right rail, front to middle of 1200 mm;"
            + " the diagonal must lie between 300.0 mm and 2100 mm: measure again",
        one ->
            one.width("middle", mm(900))
                .length("front", "middle", mm(1200), mm(1200))
                .diagonal("front", "middle", mm(1500), mm(250)));
  }

  @Test
  void readings_may_be_typed_in_inches() {
    Reading width = reading(BLANK.width("front", inch("35 7/16")), "rail to rail at front");
    assertEquals(0.9001125, width.measured().orElseThrow(), 1e-12);
  }
}
