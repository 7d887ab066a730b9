package rungwork.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Step;
import rungwork.quantity.Units;
import rungwork.record.Distortion.Form;
import rungwork.record.Reading.Standing;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/** Known displacements, read by a perfect tape, come back from the readings. */
class DistortionTest {
  private static Distortion one(Inspection seen, Form form, String where) {
    return seen.distortions().stream()
        .filter(found -> found.form() == form && found.where().startsWith(where))
        .findFirst()
        .orElseThrow(() -> new AssertionError(seen.distortions().toString()));
  }

  private static double step(Distortion of, String letter) {
    return of.steps().stream()
        .filter(found -> found.formula().result().letter().equals(letter))
        .mapToDouble(Step::result)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, -3, 0, 12, 150})
  void a_rail_pushed_back_along_the_other_is_found_exactly(double back) {
    Bent bent = new Bent(Square.ladder());
    for (String station : List.of("tip", "front", "middle", "rear")) {
      bent.move(Side.LEFT, station, -back, 0, 0);
    }
    Distortion bay = one(bent.measured(), Form.DIAMOND, "front to middle");
    assertEquals(back / 1000, step(bay, "s"), 1e-12);
    assertEquals(Math.atan(back / 900), step(bay, "φ"), 1e-12);
  }

  @Test
  void the_same_is_exact_between_rails_that_taper_and_over_a_kick_up() {
    for (Ladder ladder : List.of(Square.tapering(), Square.raised())) {
      Bent bent = new Bent(ladder);
      for (String station : List.of("tip", "front", "middle", "rear")) {
        bent.move(Side.LEFT, station, -25, 0, 0);
      }
      Distortion bay = one(bent.measured(), Form.DIAMOND, "front to middle");
      assertEquals(0.025, step(bay, "s"), 1e-12, ladder::name);
    }
  }

  @Test
  void the_same_diagonals_read_as_sway_tell_how_far_the_front_went_to_the_right() {
    Bent bent = new Bent(Square.ladder()).move(Side.LEFT, "front", 0, -18, 0);
    bent.move(Side.RIGHT, "front", 0, -18, 0);
    Distortion bay = one(bent.measured(), Form.DIAMOND, "front to middle");
    assertEquals(0.018, step(bay, "y"), 1e-12);
    assertEquals("right front to left rear is the longer", bay.which());
  }

  @Test
  void a_whole_frame_that_leans_is_a_diamond_and_a_front_alone_is_sway() {
    Bent diamond = new Bent(Square.ladder());
    for (String station : List.of("tip", "front", "middle", "rear")) {
      diamond.move(Side.LEFT, station, -20, 0, 0);
    }
    assertEquals(
        "Diamond: every bay leans the same way. The left rail lies back along the other, and every"
            + " joint of a crossmember has turned.",
        diamond.measured().meaning().get(0));
    Bent sway = new Bent(Square.ladder());
    for (Side side : Side.values()) {
      sway.move(side, "tip", 0, 20, 0).move(side, "front", 0, 20, 0);
    }
    assertEquals(
        "Out of square only at front to middle: what is ahead went to the left (side sway), or one"
            + " rail is shorter there; the other bays are square.",
        sway.measured().meaning().get(0));
    Bent hit = new Bent(Square.ladder()).move(Side.RIGHT, "tip", -30, 0, 0);
    hit.move(Side.RIGHT, "front", -25, 0, 0);
    String words = hit.measured().meaning().get(0);
    assertTrue(
        words.endsWith("The right rail is the shorter at front to middle: that side took the hit."),
        words);
  }

  @Test
  void what_one_bay_cannot_tell_it_does_not_tell() {
    Inspection seen = Inspection.of(Square.ladder());
    assertEquals(
        "Not measured: the diagonals of any bay, and with them diamond and side sway.",
        seen.meaning().get(0));
    assertEquals(
        "The bay front to middle is out of square. One bay alone does not tell a rail pushed back"
            + " from a front gone sideways: measure the diagonals behind it.",
        seen.diagonal("front", "middle", mm(1490), mm(1510)).meaning().get(0));
    Inspection square = seen.diagonal("front", "middle", mm(1500), mm(1501));
    assertEquals(
        "The bays whose diagonals were measured are square as far as the tape can tell.",
        square.meaning().get(0));
    assertEquals(
        List.of("twist", "sag", "side bow", "shortening").stream()
            .map(form -> "Not measured: " + form + ".")
            .toList(),
        square.meaning().subList(1, 5));
    String both =
        square
            .diagonal("middle", "rear", mm(1262), mm(1283))
            .diagonal("tip", "front", mm(959), mm(939))
            .meaning()
            .get(0);
    assertEquals("Out of square only at tip to front, middle to rear, not all one way.", both);
  }

  @Test
  void sag_is_the_height_of_the_chord_less_that_of_the_mark() {
    Bent bent = new Bent(Square.ladder()).move(Side.LEFT, "middle", 0, 0, -14);
    Distortion sag = one(bent.measured(), Form.SAG, "left rail at middle");
    assertEquals(0.014, sag.value(), 1e-12);
    assertEquals("the rail is low there", sag.which());
    Bent hump = new Bent(Square.raised()).move(Side.RIGHT, "middle", 0, 0, 9);
    Distortion up = one(hump.measured(), Form.SAG, "right rail at middle");
    assertEquals(-0.009, up.value(), 1e-12, "the kick-up itself is no sag");
    assertEquals("the rail is high there: a hump", up.which());
  }

  @Test
  void twist_is_told_in_length_and_in_degrees_whatever_the_stands() {
    Bent bent = new Bent(Square.ladder());
    bent.move(Side.LEFT, "tip", 0, 0, 18).move(Side.RIGHT, "tip", 0, 0, -18);
    Inspection seen = bent.measured();
    Distortion twist = one(seen, Form.TWIST, "tip against rear");
    assertEquals(0.036, twist.value(), 1e-12);
    assertEquals(Math.atan(36.0 / 900), step(twist, "θ"), 1e-12);
    Inspection leaning = Inspection.of(Square.ladder());
    for (String station : seen.stations()) {
      double left = 1000 * bent.at(Side.LEFT, station).z() + 5;
      double right = 1000 * bent.at(Side.RIGHT, station).z() - 5;
      leaning = leaning.height(station, mm(left), mm(right));
    }
    assertEquals(0.036, one(leaning, Form.TWIST, "tip against rear").value(), 1e-12);
  }

  @Test
  void rails_that_bow_to_one_side_sway_and_rails_that_spread_do_not() {
    Bent left = new Bent(Square.ladder()).move(Side.LEFT, "middle", 0, 11, 0);
    left.move(Side.RIGHT, "middle", 0, 11, 0);
    Distortion bow = one(left.measured(), Form.SIDE_BOW, "both rails at middle");
    assertEquals(0.011, bow.value(), 1e-12);
    assertEquals("to the left", bow.which());
    Bent spread = new Bent(Square.tapering()).move(Side.LEFT, "middle", 0, 11, 0);
    spread.move(Side.RIGHT, "middle", 0, -11, 0);
    assertEquals(0, one(spread.measured(), Form.SIDE_BOW, "both rails").value(), 1e-12);
  }

  @Test
  void a_rail_pushed_together_is_shorter_over_all_its_bays() {
    Bent bent = new Bent(Square.ladder()).move(Side.LEFT, "tip", -22, 0, 0);
    bent.move(Side.LEFT, "front", -10, 0, 0);
    Distortion mash = one(bent.measured(), Form.MASH, "left rail over 3 bays");
    assertEquals(0.022, mash.value(), 1e-12);
    assertEquals(0.002 * Math.sqrt(3), mash.eitherWay(), 1e-12);
    assertFalse(one(bent.measured(), Form.MASH, "right rail").shows());
    assertEquals(Standing.OUTSIDE, mash.standing());
  }

  @Test
  void the_working_shows_formula_numbers_and_result_in_the_readers_units() {
    Inspection seen =
        Inspection.of(Square.ladder()).diagonal("front", "middle", mm(1490), mm(1510));
    Distortion bay = seen.distortions().get(0);
    assertEquals(
        "s = (d₂² − d₁²)/(4·L) = ((1510 mm)² − (1490 mm)²) / (4 · 1200 mm) = 12.50 mm",
        bay.steps().get(1).text(Units.METRIC));
    assertEquals(
        "Δ = d₁ − d₂ = 58.66 in − 59.45 in = -0.7874 in",
        bay.steps().get(0).text(Units.INCH_POUND));
    assertEquals(
        "diagonals, front to middle: -20.0 mm ± 2.8 mm, right front to left rear is the longer,"
            + " outside",
        bay.toString());
  }
}
