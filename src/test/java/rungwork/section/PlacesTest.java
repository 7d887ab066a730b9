package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.section.Wall.Edge;

/** Where the flat walls and the stress points of a section lie, by its drawing. */
class PlacesTest {
  private static final double NEAR = 1e-9;

  private static BuiltUp.Channel channel() {
    return BuiltUp.channel(mm(80), mm(40), mm(3), mm(3));
  }

  private static Wall wall(Section section, String name) {
    return section.walls().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
  }

  /** From one place to another, in millimetres. */
  private static void assertAway(double y, double z, Spot from, Spot to) {
    assertEquals(y * 1e-3, to.y() - from.y(), NEAR);
    assertEquals(z * 1e-3, to.z() - from.z(), NEAR);
  }

  private static void assertFlat(double width, double thickness, Edge edge, Wall wall) {
    assertEquals(width * 1e-3, wall.width(), NEAR, wall.name());
    assertEquals(thickness * 1e-3, wall.thickness(), NEAR, wall.name());
    assertEquals(edge, wall.edge(), wall.name());
  }

  /** How many points each part has, whatever side they lie on. */
  private static Map<String, Integer> parts(Section section) {
    Map<String, Integer> parts = new TreeMap<>();
    section.points().forEach(point -> parts.merge(Label.part(point.name()), 1, Integer::sum));
    return parts;
  }

  private static List<StressPoint> named(Section section, String part) {
    return section.points().stream().filter(p -> Label.part(p.name()).equals(part)).toList();
  }

  /**
   * A welded tee 60 × 50 × 4 × 6: its centroid (300·3 + 216·33)/516 = 15.5581 mm under its top, the
   * flange's overhangs (50 − 4)/2, the web 54.
   */
  @Test
  void a_tees_flats_are_its_overhangs_and_its_web() {
    Section tee = BuiltUp.tee(mm(60), mm(50), mm(4), mm(6));
    Spot top = new Spot(0, 8.028 / 516);
    Wall left = wall(tee, "top left flange");
    Wall right = wall(tee, "top right flange");
    Wall web = wall(tee, "bottom web");
    assertFlat(23, 6, Edge.OUTSTAND, left);
    assertFlat(23, 6, Edge.OUTSTAND, right);
    assertFlat(54, 4, Edge.OUTSTAND, web);
    assertAway(25, -3, top, left.from());
    assertAway(2, -3, top, left.to());
    assertAway(-2, -3, top, right.from());
    assertAway(-25, -3, top, right.to());
    assertAway(0, -6, top, web.from());
    assertAway(0, -60, top, web.to());
  }

  @Test
  void a_tees_points_lie_on_both_faces_of_its_walls_at_its_toes_and_at_its_root() {
    Section tee = BuiltUp.tee(mm(60), mm(50), mm(4), mm(6));
    assertEquals(
        Map.of(
            "flange",
            8,
            "flange middle",
            2,
            "flange inside",
            8,
            "flange inside middle",
            2,
            "web",
            4,
            "web middle",
            1,
            "web inside",
            4,
            "web inside middle",
            1,
            "toe",
            6,
            "root",
            6),
        parts(tee));
    double top = 8.028 / 516;
    named(tee, "flange middle").forEach(p -> assertEquals(12.5e-3, Math.abs(p.y()), NEAR));
    named(tee, "web middle").forEach(p -> assertEquals(top - 31.5e-3, p.z(), NEAR));
  }

  /** A flange of 50 less web 4 and root radius 10; a web of 80 less two flanges 7 and radii. */
  @Test
  void a_rolled_channels_flats_end_at_its_fillets() {
    Section rolled = Section.rolledChannel(mm(80), mm(50), RolledWalls.of(mm(4), mm(7), mm(10)));
    Wall web = wall(rolled, "right web");
    Wall top = wall(rolled, "top left flange");
    Wall bottom = wall(rolled, "bottom left flange");
    assertFlat(46, 4, Edge.INTERNAL, web);
    assertFlat(36, 7, Edge.OUTSTAND, top);
    assertFlat(36, 7, Edge.OUTSTAND, bottom);
    Spot middle = new Spot(web.from().y(), 0);
    assertAway(0, 23, middle, web.from());
    assertAway(0, -23, middle, web.to());
    assertAway(48, 36.5, middle, top.from());
    assertAway(12, 36.5, middle, top.to());
    assertAway(12, -36.5, middle, bottom.from());
    assertAway(48, -36.5, middle, bottom.to());
  }

  /**
   * A tapered flange is five pieces, each looked at on both faces of its middle; at 8 % from 8 mm
   * in its middle it is 8 − 0.08·22.5 = 6.2 mm at its toe.
   */
  @Test
  void a_tapered_channels_points_lie_on_every_piece_and_at_its_toes_roots_and_corners() {
    Section upn = Shapes.upn80();
    assertEquals(
        Map.of(
            "flange",
            20,
            "web",
            4,
            "web middle",
            1,
            "web inside",
            4,
            "web inside middle",
            1,
            "root",
            4,
            "toe",
            2,
            "toe inside",
            2,
            "corner",
            2),
        parts(upn));
    double back = named(upn, "corner").get(0).y();
    for (StressPoint corner : named(upn, "corner")) {
      assertEquals(back, corner.y(), NEAR);
      assertEquals(0.040, Math.abs(corner.z()), NEAR);
    }
    for (StressPoint toe : named(upn, "toe")) {
      assertEquals(back + 0.045, toe.y(), NEAR);
      assertEquals(0.040, Math.abs(toe.z()), NEAR);
    }
    for (StressPoint toe : named(upn, "toe inside")) {
      assertEquals(back + 0.045, toe.y(), NEAR);
      assertEquals(0.0338, Math.abs(toe.z()), NEAR);
    }
    assertEquals(0, named(upn, "corner").stream().mapToDouble(StressPoint::z).sum(), NEAR);
    assertEquals(0, named(upn, "toe inside").stream().mapToDouble(StressPoint::z).sum(), NEAR);
  }

  /** A channel 80 × 40 × 3 with a plate of 3 on its toes: 43 wide over all. */
  @Test
  void a_boxed_channels_plate_closes_it_flush() {
    Section boxed = Section.boxedChannel(mm(80), mm(40), mm(3), mm(3));
    Wall web = wall(boxed, "right web");
    Wall plate = wall(boxed, "left plate");
    Wall top = wall(boxed, "top left flange");
    assertFlat(74, 3, Edge.INTERNAL, plate);
    assertFlat(68, 3, Edge.INTERNAL, web);
    assertFlat(34, 3, Edge.INTERNAL, top);
    Spot middle = new Spot(web.from().y(), 0);
    assertAway(40, -37, middle, plate.from());
    assertAway(40, 37, middle, plate.to());
    assertAway(38.5, 38.5, middle, top.from());
    assertEquals(
        Map.of(
            "flange",
            8,
            "flange middle",
            2,
            "bend",
            4,
            "web",
            4,
            "web middle",
            1,
            "plate",
            4,
            "plate middle",
            1,
            "corner",
            2),
        parts(boxed));
    double back = middle.y() - 0.0015;
    named(boxed, "plate").forEach(p -> assertEquals(back + 0.043, p.y(), NEAR));
    named(boxed, "web").forEach(p -> assertEquals(back, p.y(), NEAR));
    named(boxed, "flange").forEach(p -> assertEquals(0.040, Math.abs(p.z()), NEAR));
    named(boxed, "corner").forEach(p -> assertEquals(0.040, Math.abs(p.z()), NEAR));
    // A plate's points stand in the middles of five parts of 80 mm.
    assertEquals(
        List.of(-32L, -16L, 16L, 32L),
        named(boxed, "plate").stream().map(p -> Math.round(p.z() * 1e3)).sorted().toList());
  }

  @Test
  void a_plate_set_on_stands_over_and_is_looked_at_on_its_outside_only() {
    Section on = channel().platedOn(mm(100), mm(4));
    Wall web = wall(on, "right web");
    assertAway(40.5, -37, new Spot(web.from().y(), 0), wall(on, "left plate").from());
    assertFlat(74, 4, Edge.INTERNAL, wall(on, "left plate"));
    assertFlat(10, 4, Edge.OUTSTAND, wall(on, "top left plate"));
    assertFlat(10, 4, Edge.OUTSTAND, wall(on, "bottom left plate"));
    assertEquals(
        Map.of(
            "flange",
            8,
            "flange middle",
            2,
            "bend",
            4,
            "web",
            4,
            "web middle",
            1,
            "toe",
            2,
            "plate",
            6,
            "plate middle",
            1,
            "corner",
            2,
            "root",
            2),
        parts(on));
    named(on, "corner").forEach(p -> assertEquals(0.050, Math.abs(p.z()), NEAR));
    // Over the middles of both toes, 80 − 3, is enough.
    assertEquals(
        0.077, Math.abs(2 * named(channel().platedOn(mm(77), mm(4)), "corner").get(0).z()), NEAR);
  }

  /**
   * Set 4 mm deep into flanges that are 6.2 mm at their toes and grow by 8 %, a plate is 80 −
   * 2·(6.2 + 0.32) = 66.96 mm high; into a folded channel 80 − 6.
   */
  @Test
  void a_plate_set_in_is_as_high_as_the_flanges_leave_at_its_inner_face() {
    assertEquals(
        "taper-flange channel 80x45x6x8 with plate 66.96x4 set in",
        BuiltUp.rolledChannel(mm(80), mm(45), RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4)))
            .platedIn(mm(4))
            .name());
    assertEquals("channel 80x40x3 with plate 74x4 set in", channel().platedIn(mm(4)).name());
  }

  /**
   * A tube 80 × 40 × 3 with corners of 6 mm: its flat top is 28 wide; beside a plate of 20 it
   * leaves 4 mm on either side.
   */
  @Test
  void a_plated_tube_is_looked_at_under_beside_and_on_its_plate() {
    Section plated = BuiltUp.tube(mm(80), mm(40), mm(3)).plated(mm(20), mm(4));
    Map<String, Integer> expected =
        new TreeMap<>(
            Map.of(
                "wall",
                20,
                "wall middle",
                5,
                "corner",
                8,
                "wall beside plate",
                2,
                "plate",
                4,
                "plate middle",
                1,
                "plate edge",
                2));
    expected.putAll(
        Map.of(
            "wall under plate",
            4,
            "wall under plate middle",
            1,
            "wall under plate inside",
            4,
            "wall under plate inside middle",
            1));
    assertEquals(expected, parts(plated));
    double top = named(plated, "wall under plate middle").get(0).z();
    for (StressPoint edge : named(plated, "plate edge")) {
      assertEquals(0.010, Math.abs(edge.y()), NEAR);
      assertEquals(top + 0.004, edge.z(), NEAR);
    }
    for (StressPoint beside : named(plated, "wall beside plate")) {
      assertEquals(0.010, Math.abs(beside.y()), NEAR);
      assertEquals(top, beside.z(), NEAR);
    }
    assertEquals(
        0, named(plated, "wall beside plate").stream().mapToDouble(StressPoint::y).sum(), NEAR);
    named(plated, "wall under plate inside").forEach(p -> assertEquals(top - 0.003, p.z(), NEAR));
    List<Long> beside =
        named(plated, "wall").stream()
            .filter(p -> Math.abs(p.z() - top) < NEAR && p.y() > 0)
            .map(p -> Math.round(p.y() * 1e4))
            .sorted()
            .toList();
    assertEquals(List.of(104L, 112L, 128L, 136L), beside);
    Wall plate = wall(plated, "top plate");
    assertFlat(20, 4, Edge.INTERNAL, plate);
    Spot middle = new Spot(0, top);
    assertAway(10, 2, middle, plate.from());
    assertAway(-10, 2, middle, plate.to());
  }

  static List<Section> someOfEachKind() {
    return Shapes.someOfEachKind();
  }

  /** Sloped faces, fillets and toes have to meet; their lengths are worked out one by one. */
  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void an_outline_runs_from_piece_to_piece_and_ends_where_it_starts(Section section) {
    for (List<Segment> loop : section.outline().loops()) {
      Spot at = loop.get(loop.size() - 1).end();
      for (Segment piece : loop) {
        assertEquals(0, piece.start().minus(at).size(), 1e-9, section.name());
        at = piece.end();
      }
    }
  }

  /** Its wall counts as one plate as wide as the tube, along its diameter. */
  @Test
  void a_round_tubes_wall_lies_along_its_diameter() {
    Wall wall = wall(Section.roundTube(mm(60), mm(4)), "wall");
    assertFlat(60, 4, Edge.ROUND, wall);
    assertAway(-30, 0, new Spot(0, 0), wall.from());
    assertAway(30, 0, new Spot(0, 0), wall.to());
  }
}
