package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;

class CombinationsTest {
  private static final Scene WALL = Scene.of("wall", kmh(36), kg(700), Obstacle.rigidWall());
  private static final CrushElement TUBE =
      CrushElement.measured("tube", mm(80), kg(3)).between(tube("soft", 20), tube("hard", 30), "x");
  private static final RigidOrCrush.Design BARE = RigidOrCrush.Design.bare("bare");

  private static CrushCurve tube(String name, double force) {
    return CrushCurve.named(name)
        .to(mm(5), kN(force))
        .to(mm(200), kN(force), "used up")
        .to(mm(210), kN(900))
        .end();
  }

  private static Combinations of(Scene scene) {
    return new Combinations(scene, Fronts.rails(), Optional.empty());
  }

  @Test
  void a_bare_design_known_exactly_runs_on_both_rails() {
    List<CrashModel> models = of(WALL).of(BARE, Optional.empty(), 0);
    assertEquals(
        List.of("rails, low", "rails, high"), models.stream().map(m -> m.frame().name()).toList());
    assertEquals("bare", models.get(0).name());
    assertEquals(700, models.get(0).mass());
    assertEquals(10, models.get(0).speed(), 1e-12);
    assertEquals(Optional.empty(), models.get(0).front());
    assertEquals(Optional.empty(), models.get(0).other());
  }

  @Test
  void ends_of_speed_and_mass_are_combined_in_order() {
    Scene guessed = WALL.closing(kmh(36), kmh(72)).mass(kg(600), kg(800));
    List<CrashModel> models = of(guessed).of(BARE, Optional.empty(), 0);
    assertEquals(
        List.of("10 600", "10 600", "10 800", "10 800", "20 600", "20 600", "20 800", "20 800"),
        models.stream().map(m -> Math.round(m.speed()) + " " + Math.round(m.mass())).toList());
  }

  /** Two tubes of 3 kg ride along; both are met with twice their force, low and high. */
  @Test
  void elements_add_their_mass_and_push_together() {
    RigidOrCrush.Design design = RigidOrCrush.Design.with("two", TUBE, mm(350)).and(mm(-350));
    List<CrashModel> models = of(WALL).of(design, Optional.of(TUBE), 2);
    assertEquals(706, models.get(0).mass());
    assertEquals(
        List.of("soft", "hard", "soft", "hard"),
        models.stream().map(m -> m.front().orElseThrow().element().name()).toList());
    assertEquals(40e3, models.get(0).front().orElseThrow().element().points().get(1).force(), 1e-6);
    assertEquals(60e3, models.get(1).front().orElseThrow().element().points().get(1).force(), 1e-6);
    assertEquals(0, models.get(0).front().orElseThrow().mass());
  }

  /** 1 and 2 kN/mm to 2 m of crush; each with both masses. */
  @Test
  void another_vehicle_brings_its_own_ends() {
    Obstacle.OtherVehicle other =
        new Obstacle.OtherVehicle(
            new Range(Kind.MASS, 900, 1500), new Range(Kind.STIFFNESS, 1e6, 2e6));
    CrashModel.Motor motor = new CrashModel.Motor("motor", 60, 5e5, 0.01, 8e6);
    List<CrashModel> models =
        new Combinations(
                Scene.of("meeting", kmh(36), kg(700), other), Fronts.rails(), Optional.of(motor))
            .of(BARE, Optional.empty(), 0);
    assertEquals(8, models.size());
    assertEquals(
        List.of("900 1", "900 2", "1500 1", "1500 2"),
        models.subList(0, 4).stream()
            .map(CrashModel::other)
            .map(Optional::orElseThrow)
            .map(hit -> Math.round(hit.mass()) + " " + Math.round(hit.curve().unloading() / 1e6))
            .toList());
    CrashModel.Other hit = models.get(0).other().orElseThrow();
    assertEquals("other front", hit.curve().name());
    assertEquals(2, hit.curve().last().crush());
    assertEquals(2e6, hit.curve().last().force(), 1e-6);
    assertEquals(Optional.of(motor), models.get(0).motor());
    assertEquals(700, models.get(0).mass());
    assertEquals("rails, low", models.get(3).frame().name());
    assertEquals("rails, high", models.get(4).frame().name());
  }
}
