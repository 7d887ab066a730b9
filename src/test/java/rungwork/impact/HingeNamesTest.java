package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungwork.solve.Pushover;
import rungwork.vehicle.Ladder;

class HingeNamesTest {
  private static final Ladder LADDER = Runabout.ladder(Runabout.steel(235));
  private static final HingeNames NAMES = new HingeNames(LADDER);

  private static String words(String beam, String feature, double x) {
    Pushover.Place place = new Pushover.Place(beam, LADDER.node(feature).name());
    return NAMES.words(place, x);
  }

  @Test
  void a_hinge_of_a_rail_lies_ahead_of_or_behind_a_crossmember() {
    assertEquals(
        "left rail just ahead of front crossmember", words("left rail 1", "front left", 0.2));
    assertEquals("left rail just behind front crossmember", words("left rail 2", "front left", 0));
    assertEquals(
        "right rail just ahead of middle crossmember",
        words("right rail 12", "middle right", -0.8));
    assertEquals(
        "right rail just behind rear crossmember", words("right rail 12", "rear right", -2.15));
  }

  @Test
  void a_hinge_of_a_crossmember_lies_at_a_rail_or_at_its_middle() {
    assertEquals(
        "middle crossmember at left rail", words("middle crossmember 1", "middle left", -0.9));
    assertEquals(
        "middle crossmember at right rail", words("middle crossmember 2", "middle right", -0.9));
    assertEquals(
        "rear crossmember at its middle", words("rear crossmember 1", "rear middle", -2.1));
  }

  @Test
  void anywhere_else_it_is_named_by_its_node() {
    assertEquals(
        "left rail at left tip", NAMES.words(new Pushover.Place("left rail 1", "left tip"), 0.2));
    assertEquals(
        "front crossmember at spare",
        NAMES.words(new Pushover.Place("front crossmember 1", "spare"), 0.1));
    assertEquals(
        "left rail at some middle",
        NAMES.words(new Pushover.Place("left rail 1", "some middle"), 0.2));
  }
}
