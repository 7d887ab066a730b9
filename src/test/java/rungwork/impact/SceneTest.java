package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

class SceneTest {
  private static final Scene WALL =
      Scene.of("lane wall", kmh(48), kg(720), Obstacle.rigidWall()).restitution(0, 0);

  @Test
  void a_wall_takes_the_whole_speed_and_the_whole_energy() {
    assertEquals(48 / 3.6, WALL.velocityChange().high(), 1e-12);
    assertEquals(720 * Math.pow(48 / 3.6, 2) / 2, WALL.energy().low(), 1e-9);
    assertTrue(WALL.velocityChange().exact());
  }

  @Test
  void a_rebound_adds_to_the_velocity_change_and_takes_nothing_off_the_energy() {
    Scene bouncing = WALL.restitution(0.1, 0.3);
    assertEquals(1.1 * 48 / 3.6, bouncing.velocityChange().low(), 1e-12);
    assertEquals(1.3 * 48 / 3.6, bouncing.velocityChange().high(), 1e-12);
    assertEquals(WALL.energy(), bouncing.energy());
  }

  @Test
  void guessed_inputs_give_ranges() {
    Scene guessed = WALL.closing(kmh(40), kmh(60)).mass(kg(680), kg(760));
    assertEquals(680 * Math.pow(40 / 3.6, 2) / 2, guessed.energy().low(), 1e-9);
    assertEquals(760 * Math.pow(60 / 3.6, 2) / 2, guessed.energy().high(), 1e-9);
    assertEquals("15.7 to 35.4 g", guessed.meanDeceleration(mm(400)).toString());
  }

  @Test
  void crush_and_mean_deceleration_are_each_other_s_inverse() {
    Range crush = WALL.crushFor(g(20));
    assertEquals(20 * 9.80665, WALL.meanDeceleration(mm(crush.low() * 1000)).low(), 1e-9);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void two_vehicles_keep_their_momentum(long seed) {
    Random random = new Random(seed);
    double own = 400 + 800 * random.nextDouble();
    double other = 600 + 1500 * random.nextDouble();
    double e = 0.3 * random.nextDouble();
    Scene met =
        Scene.of("meeting", kmh(30 + 70 * random.nextDouble()), kg(own), partner(other))
            .restitution(e, e);
    Scene seenFromThere =
        Scene.of("meeting", kmh(met.closing().low() * 3.6), kg(other), partner(own))
            .restitution(e, e);
    double ownMomentum = own * met.velocityChange().low();
    assertEquals(ownMomentum, other * seenFromThere.velocityChange().low(), 1e-12 * ownMomentum);
    assertEquals(met.energy().low(), seenFromThere.energy().low(), 1e-9 * met.energy().low());
  }

  private static Obstacle partner(double kilograms) {
    return Obstacle.vehicle(kg(kilograms), kNpmm(1));
  }

  @Test
  void springs_hold_the_energy_that_had_to_be_absorbed() {
    Scene met = Scene.of("meeting", kmh(100), kg(700), Obstacle.vehicle(kg(1400), kNpmm(1)));
    Scene.LinearCrush crush = met.springs(kNpmm(0.5));
    double stored =
        0.5e6 * Math.pow(crush.ownCrush().low(), 2) / 2
            + 1e6 * Math.pow(crush.otherCrush().low(), 2) / 2;
    assertEquals(met.energy().low(), stored, 1e-9 * stored);
    assertEquals(crush.ownDeceleration().low() * 700, crush.otherAcceleration().low() * 1400, 1e-6);
  }

  /** μ = 480 kg, 1 and 1.5 kN/mm in a row 0.6: F = v·√(480·0.6e6); each front and mass its own. */
  @Test
  void two_springs_share_the_crush_by_their_stiffness_and_the_force_by_their_mass() {
    Scene.LinearCrush crush =
        Scene.of("meeting", kmh(72), kg(720), Obstacle.vehicle(kg(1440), kNpmm(1.5)))
            .springs(kNpmm(1));
    double force = 20 * Math.sqrt(480 * 0.6e6);
    assertEquals(force, crush.force().low(), 1e-6);
    assertEquals(force / 1e6, crush.ownCrush().low(), 1e-12);
    assertEquals(force / 1.5e6, crush.otherCrush().high(), 1e-12);
    assertEquals(force / 720, crush.ownDeceleration().low(), 1e-9);
    assertEquals(force / 1440, crush.otherAcceleration().high(), 1e-9);
  }

  /** 72 km/h into twice the own mass: μ/m₁ = ⅔; e of 0.1. */
  @Test
  void into_another_vehicle_only_the_reduced_mass_counts() {
    Scene met =
        Scene.of("meeting", kmh(72), kg(720), Obstacle.vehicle(kg(1440), kNpmm(1.5)))
            .restitution(0.1, 0.1);
    assertEquals(1.1 * 20 * 2 / 3, met.velocityChange().low(), 1e-9);
    assertEquals(480 * 400 / 2.0, met.energy().high(), 1e-9);
    assertEquals(400.0 / 3 / 0.5, met.meanDeceleration(mm(500)).low(), 1e-9);
    assertEquals(400.0 / 3 / (10 * 9.80665), met.crushFor(g(10)).high(), 1e-9);
  }

  @Test
  void the_working_has_a_second_end_where_something_is_a_range() {
    assertEquals(2, WALL.working().size());
    assertEquals(720 * Math.pow(48 / 3.6, 2) / 2, WALL.working().get(1).result(), 1e-9);
    assertEquals(4, WALL.restitution(0, 0.1).working().size());
    assertEquals(4, WALL.closing(kmh(48), kmh(50)).working().size());
    assertEquals(4, WALL.mass(kg(700), kg(720)).working().size());
    Obstacle other = Obstacle.vehicle(kg(1440), kNpmm(1)).mass(kg(1300), kg(1500));
    assertEquals(6, Scene.of("m", kmh(50), kg(720), other).restitution(0, 0).working().size());
    assertEquals(
        50 / 3.6 * 1.1,
        WALL.closing(kmh(48), kmh(50)).restitution(0, 0.1).working().get(2).result(),
        1e-9);
  }

  @Test
  void assumptions_tell_of_restitution_and_of_the_other_front() {
    assertEquals(
        List.of(
            "The hit is in line and level; tyres, brakes and the ground take nothing.",
            "Restitution 0; 0 to 0.2 is common practice, no source."),
        WALL.assumptions());
    assertEquals(
        "The other vehicle's front is taken as one linear spring.",
        Scene.of("m", kmh(50), kg(720), partner(900)).assumptions().get(2));
    assertEquals(3, Scene.of("m", kmh(50), kg(720), partner(900)).assumptions().size());
  }

  @Test
  void a_spring_at_a_wall_gives_force_and_deceleration() {
    Scene.LinearCrush crush = WALL.springs(kNpmm(0.5));
    double force = 48 / 3.6 * Math.sqrt(720 * 0.5e6);
    assertEquals(force, crush.force().low(), 1e-6);
    assertEquals(force / 720, crush.ownDeceleration().low(), 1e-9);
    assertEquals(0, crush.otherAcceleration().high());
    Refused.with(
        "stiffness of the own front 0 N/mm is not above zero", () -> WALL.springs(kNpmm(0)));
    Refused.with("mean deceleration 0 g is not above zero", () -> WALL.crushFor(g(0)));
    Refused.with("own mass 0 kg is not above zero", () -> WALL.mass(kg(0), kg(9)));
    Refused.with(
        "restitution -0.100 to 0.500 is outside 0 to 1: 0 stays together, 1 bounces off",
        () -> WALL.restitution(-0.1, 0.5));
    assertEquals(1, WALL.restitution(0, 1).restitution().high());
  }

  @Test
  void a_spring_at_a_wall_stops_at_v_times_the_root_of_m_over_k() {
    Scene.LinearCrush crush = WALL.springs(kNpmm(0.5));
    assertEquals(48 / 3.6 * Math.sqrt(720 / 0.5e6), crush.ownCrush().high(), 1e-12);
    assertEquals(0, crush.otherCrush().high());
  }

  @Test
  void a_range_of_partners_gives_a_range_of_crush() {
    Obstacle.OtherVehicle some =
        Obstacle.vehicle(kg(1400), kNpmm(1))
            .mass(kg(1000), kg(1800))
            .stiffness(kNpmm(0.8), kNpmm(2));
    Scene.LinearCrush crush = Scene.of("meeting", kmh(80), kg(720), some).springs(kNpmm(1));
    assertTrue(crush.ownCrush().low() < crush.ownCrush().high());
    assertTrue(crush.ownDeceleration().high() > crush.otherAcceleration().high());
  }

  @Test
  void a_post_between_the_rail_tips_meets_neither() {
    Obstacle post = Obstacle.post(mm(0), mm(200));
    assertFalse(post.meets(0.33, 0.37));
    assertTrue(Obstacle.post(mm(350), mm(200)).meets(0.33, 0.37));
    assertFalse(Obstacle.post(mm(350), mm(200)).meets(-0.37, -0.33));
    assertTrue(Obstacle.partOfWall(mm(0), mm(600)).meets(0.33, 0.37));
    assertFalse(Obstacle.partOfWall(mm(0), mm(600)).meets(-0.37, -0.33));
    assertTrue(Obstacle.rigidWall().meets(-0.37, -0.33));
  }

  @Test
  void an_off_centre_hit_says_that_it_turns_the_vehicle() {
    Scene off = Scene.of("gatepost", kmh(30), kg(720), Obstacle.post(mm(350), mm(200)));
    assertTrue(off.assumptions().stream().anyMatch(line -> line.contains("turns the vehicle")));
    assertTrue(WALL.assumptions().stream().noneMatch(line -> line.contains("turns the vehicle")));
    assertEquals("a post of 200 mm at 350 mm", off.obstacle().words(Units.METRIC));
  }

  @Test
  void inputs_that_no_road_crash_has_warn() {
    Scene fast = Scene.of("mistyped", kmh(480), kg(72), partner(14000));
    assertEquals(
        List.of(
            "closing speed 480 km/h is outside 5.00 to 130 km/h, between which crashes of road"
                + " vehicles lie; is it mistyped?",
            "mass of a vehicle 72.0 kg is outside 100 to 3500 kg, between which crashes of road"
                + " vehicles lie; is it mistyped?",
            "mass of a vehicle 14000 kg is outside 100 to 3500 kg, between which crashes of road"
                + " vehicles lie; is it mistyped?"),
        fast.warnings(Units.METRIC));
    assertEquals(List.of(), WALL.warnings(Units.METRIC));
  }

  @Test
  void nonsense_is_refused() {
    Refused.with(
        "closing speed 0 km/h is not above zero",
        () -> Scene.of("still", kmh(0), kg(720), Obstacle.rigidWall()));
    Refused.with(
        "restitution 0.500 to 1.20 is outside 0 to 1: 0 stays together, 1 bounces off",
        () -> WALL.restitution(0.5, 1.2));
    Refused.with(
        "a speed from 60.0 km/h to 40.0 km/h stands the wrong way round; give the low end first",
        () -> WALL.closing(kmh(60), kmh(40)));
    Refused.with(
        "a wall from 300.0 mm to 100.0 mm has no width; give its right edge first (to the left is"
            + " positive)",
        () -> Obstacle.partOfWall(mm(300), mm(100)));
    Refused.with("crush 0 mm is not above zero", () -> WALL.meanDeceleration(mm(0)));
  }

  @Test
  void the_working_shows_both_ends() {
    List<String> lines =
        Scene.of("meeting", kmh(50), kg(720), partner(1440)).working().stream()
            .map(Object::toString)
            .toList();
    assertEquals(
        "μ = m₁·m₂/(m₁ + m₂) = 720.0 kg · 1440 kg / (720.0 kg + 1440 kg) = 480.0 kg", lines.get(0));
    assertEquals(6, lines.size());
  }

  @Test
  void a_range_shows_three_digits_in_the_reader_s_units() {
    assertEquals("10.0 to 25.0 mm", new Range(Kind.LENGTH, 0.01, 0.025).toString());
    assertEquals("0.394 to 0.984 in", new Range(Kind.LENGTH, 0.01, 0.025).show(Units.INCH_POUND));
    assertEquals("25.0 mm", Range.exactly(Kind.LENGTH, 0.025).toString());
    assertEquals(
        new Range(Kind.LENGTH, 1, 4),
        new Range(Kind.LENGTH, 1, 2).and(new Range(Kind.LENGTH, 3, 4)));
  }

  @Test
  void a_ladder_s_rail_tips_are_met_by_what_stands_before_them() {
    Stock rail =
        new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Material.rated("S355J2H"));
    Ladder ladder =
        Ladder.named("Curlew")
            .level(mm(360))
            .rails(mm(420), mm(-2300), mm(700), rail)
            .crossmember("front", mm(160), rail)
            .crossmember("rear", mm(-2300), rail)
            .build();
    assertEquals(Set.of(Side.LEFT, Side.RIGHT), WALL.railTipsMet(ladder));
    assertEquals(Set.of(), hitting(Obstacle.post(mm(0), mm(200))).railTipsMet(ladder));
    assertEquals(Set.of(Side.LEFT), hitting(Obstacle.post(mm(420), mm(200))).railTipsMet(ladder));
    assertEquals(
        Set.of(Side.RIGHT), hitting(Obstacle.partOfWall(mm(-700), mm(0))).railTipsMet(ladder));
    assertEquals(Set.of(), hitting(Obstacle.post(mm(475), mm(200))).railTipsMet(ladder));
  }

  private static Scene hitting(Obstacle obstacle) {
    return Scene.of("hit", kmh(40), kg(720), obstacle);
  }

  @Test
  void a_scene_prints_what_it_is() {
    assertEquals(
        "lane wall: 720 kg closing at 48.0 km/h with a rigid wall over the full width, energy 64.0"
            + " kJ",
        WALL.toString());
  }
}
