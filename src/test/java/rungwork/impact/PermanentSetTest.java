package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungwork.frame.Point;
import rungwork.solve.Displacement;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/** Stations of the crossmembers: 0.1, −0.9 and −2.1 m; rails 0.7 m apart. */
class PermanentSetTest {
  private static final Ladder STRAIGHT = Runabout.ladder(Runabout.steel(235));
  private static final Displacement STILL = move(0, 0, 0);

  private static Displacement move(double x, double y, double z) {
    return new Displacement(x, y, z, 0, 0, 0);
  }

  private static PermanentSet.Bent bent(Ladder ladder, Map<String, Displacement> features) {
    return new PermanentSet.Bent(
        ladder,
        ladder.frame(Joints.RIGID),
        node ->
            features.entrySet().stream()
                .filter(one -> ladder.node(one.getKey()).name().equals(node))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(STILL));
  }

  private static double shorter(String from, String to, Map<String, Displacement> features) {
    return PermanentSet.SHORTER.of(List.of(from, to), bent(STRAIGHT, features));
  }

  @Test
  void each_takes_so_many_places() {
    assertEquals(2, PermanentSet.SHORTER.places());
    assertEquals(3, PermanentSet.SAG.places());
    assertEquals(4, PermanentSet.DIAGONALS.places());
  }

  /** Both ends come together by 9 and 4 mm; nothing bows. */
  @Test
  void two_places_that_come_together_are_nearer_by_both_ways() {
    Map<String, Displacement> moves =
        Map.of("front left", move(-0.009, 0, 0), "middle left", move(0.004, 0, 0));
    assertEquals(0.013, shorter("front left", "middle left", moves), 1e-12);
    assertEquals(0.013, shorter("middle left", "front left", moves), 1e-12);
  }

  /**
   * The middle aside by 30 mm and up by 40, the rear aside by 20: squares of the ways across the
   * two pieces 0.0025 and 0.01² + 0.04², over twice 1.0 and 1.2 m; of the chord 0.02² over twice
   * 2.2 m.
   */
  @Test
  void the_bow_of_a_rail_counts_less_what_the_turned_chord_explains() {
    Map<String, Displacement> moves =
        Map.of("middle right", move(0, 0.03, 0.04), "rear right", move(0.005, 0.02, 0));
    double bow = 0.0025 / 2 + 0.0017 / 2.4 - 0.0004 / 4.4;
    assertEquals(bow + 0.005, shorter("front right", "rear right", moves), 1e-12);
    assertEquals(bow + 0.005, shorter("rear right", "front right", moves), 1e-12);
  }

  /**
   * A straight rail that turns as a whole is not shorter; what moves beyond its ends is nothing.
   */
  @Test
  void only_the_pieces_between_the_two_places_bow() {
    Map<String, Displacement> turned = Map.of("middle left", move(0, 0.02, 0));
    assertEquals(0, shorter("front left", "middle left", turned), 1e-12);
    assertEquals(0, shorter("middle left", "rear left", turned), 1e-12);
    Map<String, Displacement> beyond =
        Map.of("rear left", move(0, 0.05, 0), "left tip", move(0, 0, 0.03));
    assertEquals(0, shorter("front left", "middle left", beyond), 1e-12);
  }

  /** 2.2 m back and 0.7 m across: only what the ways have along that line. */
  @Test
  void from_rail_to_rail_only_the_chord_counts() {
    double length = Math.hypot(2.2, 0.7);
    Map<String, Displacement> moves =
        Map.of("rear right", move(0.011, 0.006, 0.02), "middle left", move(0, 0.08, 0));
    double along = (0.011 * -2.2 + 0.006 * -0.7) / length;
    assertEquals(-along, shorter("front left", "rear right", moves), 1e-12);
  }

  /** A leg that rises by 100 mm over 200: across it counts |way × direction|. */
  @Test
  void on_a_rising_piece_only_the_way_across_it_bows() {
    Ladder ladder = Runabout.cranked(Runabout.steel(235));
    List<String> rail = ladder.railFeatures(Side.LEFT);
    String low =
        rail.stream().filter(name -> at(ladder, name).x() == -0.2).findFirst().orElseThrow();
    String high =
        rail.stream().filter(name -> at(ladder, name).x() == -0.4).findFirst().orElseThrow();
    double x = 0.003;
    double y = 0.004;
    double z = 0.005;
    double set =
        PermanentSet.SHORTER.of(
            List.of("front left", "middle left"), bent(ladder, Map.of(high, move(x, y, z))));
    double rise = at(ladder, high).z() - at(ladder, low).z();
    double leg = Math.hypot(0.2, rise);
    double across = Math.pow(x * rise + z * 0.2, 2) / leg / leg + y * y;
    double behind = (y * y + z * z) / (2 * 0.5);
    assertEquals(across / (2 * leg) + behind, set, 1e-12);
  }

  private static Point at(Ladder ladder, String feature) {
    return ladder.node(feature).at();
  }

  /** One diagonal longer by 6 mm · 2.2/l, the other shorter by 4 mm · 0.7/l: both count. */
  @Test
  void diagonals_are_the_first_less_the_second() {
    double length = Math.hypot(2.2, 0.7);
    Map<String, Displacement> moves =
        Map.of("front left", move(0.006, 0, 0.1), "rear left", move(0, -0.004, 0));
    List<String> corners = List.of("front left", "rear right", "front right", "rear left");
    assertEquals(
        (0.006 * 2.2 + 0.004 * 0.7) / length,
        PermanentSet.DIAGONALS.of(corners, bent(STRAIGHT, moves)),
        1e-12);
  }

  /** 1.0 of 2.2 m behind the front: the line stands at 1.2/2.2 of 11 mm and 1.0/2.2 of 7 mm. */
  @Test
  void sag_is_the_line_less_the_place() {
    Map<String, Displacement> moves =
        Map.of(
            "front left", move(0, 0, 0.011),
            "middle left", move(0, 0, 0.002),
            "rear left", move(0, 0, 0.007));
    double expected = (1.2 * 0.011 + 1.0 * 0.007) / 2.2 - 0.002;
    PermanentSet.Bent bent = bent(STRAIGHT, moves);
    assertEquals(
        expected,
        PermanentSet.SAG.of(List.of("middle left", "front left", "rear left"), bent),
        1e-12);
    assertEquals(
        expected,
        PermanentSet.SAG.of(List.of("middle left", "rear left", "front left"), bent),
        1e-12);
    Refused.with(
        "the sag of middle left needs two places at different stations; front left and front right"
            + " stand at the same one",
        () -> PermanentSet.SAG.of(List.of("middle left", "front left", "front right"), bent));
  }
}
