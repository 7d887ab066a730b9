package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.impact.OrderOfFailure.Detail;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class PartTest {
  private static final double G = 9.80665;

  private static Range decelerations(double low, double high) {
    return new Range(Kind.ACCELERATION, low * G, high * G);
  }

  @Test
  void five_zones_are_of_the_frame() {
    assertEquals(
        List.of(Zone.RAIL_TIP, Zone.CROSSMEMBER, Zone.KICK_UP, Zone.RAIL, Zone.WHOLE_FRAME),
        Arrays.stream(Zone.values()).filter(Zone::ofFrame).toList());
  }

  @Test
  void what_is_not_known_stands_where_it_usually_is() {
    assertEquals(Double.POSITIVE_INFINITY, Zone.TYRE_AND_BUMPER.usualPlace());
    assertEquals(Double.POSITIVE_INFINITY, Zone.CRUSH_ELEMENT.usualPlace());
    assertEquals(Double.NEGATIVE_INFINITY, Zone.BELT_ANCHORS.usualPlace());
    assertEquals(Double.NEGATIVE_INFINITY, Zone.WHOLE_FRAME.usualPlace());
    assertEquals(0, Zone.MOTOR_MOUNTS.usualPlace());
    assertEquals("motor mounts", Zone.MOTOR_MOUNTS.words());
  }

  @Test
  void figures_are_given_one_after_the_other() {
    Part bare = Part.named("mount", Zone.MOTOR_MOUNTS, mm(120));
    assertEquals(0.12, bare.station(), 1e-12);
    assertEquals(new Detail("", "", List.of(), List.of("no figures given")), bare.detail());
    Part known = bare.breaks(g(20), g(30)).yields(g(10), g(14), "a test");
    assertEquals(10 * G, known.first().orElseThrow().low(), 1e-9);
    assertEquals(14 * G, known.first().orElseThrow().high(), 1e-9);
    assertEquals(20 * G, known.ultimate().orElseThrow().low(), 1e-9);
    assertEquals(30 * G, known.ultimate().orElseThrow().high(), 1e-9);
    assertEquals(
        new Detail("first yield", "", List.of(), List.of("given: a test")), known.detail());
    assertEquals(known.detail(), known.breaks(g(11), g(12)).detail());
    assertEquals(Optional.of(known.first()), Optional.of(known.breaks(g(11), g(12)).first()));
  }

  /** 6 kN over 0.4 kN at 1 g: 15 g. */
  @Test
  void strengths_over_the_load_of_one_g() {
    Part part =
        Part.named("mount", Zone.MOTOR_MOUNTS, mm(120))
            .breaks(g(40), g(50))
            .carries(kN(0.4), kN(6), kN(9), "a chain");
    assertEquals(15 * G, part.first().orElseThrow().low(), 1e-9);
    assertEquals(22.5 * G, part.first().orElseThrow().high(), 1e-9);
    assertEquals(Kind.ACCELERATION, part.first().orElseThrow().kind());
    assertEquals(40 * G, part.ultimate().orElseThrow().low(), 1e-9);
    assertEquals(List.of("given: a chain"), part.detail().notes());
  }

  @Test
  void a_part_may_carry_no_more_just_when_it_first_gives_way() {
    Part same =
        new Part(
            "brittle",
            Zone.RAIL,
            0,
            Optional.of(decelerations(10, 14)),
            Optional.of(decelerations(10, 12)),
            new Detail("", "", List.of(), List.of()));
    assertEquals(10 * G, same.ultimate().orElseThrow().low(), 1e-9);
  }

  @Test
  void a_deceleration_of_a_thousand_g_and_more_is_shown_as_over_it() {
    assertEquals("over 1000 g", OrderOfFailure.shown(decelerations(1000, 1000), Units.METRIC));
    assertEquals(
        "20.0 to over 1000 g", OrderOfFailure.shown(decelerations(20, 1000), Units.METRIC));
    assertEquals("20.0 to 999 g", OrderOfFailure.shown(decelerations(20, 999), Units.METRIC));
  }

  @Test
  void a_hits_name_loses_its_deceleration() {
    assertEquals(
        "frontal impact, left tip", ElasticStage.words("frontal impact, 10.00 g, left tip"));
    assertEquals("frontal impact", ElasticStage.words("frontal impact, 10.00 g"));
    assertEquals("frontal impact, 10 gates", ElasticStage.words("frontal impact, 10 gates"));
  }
}
