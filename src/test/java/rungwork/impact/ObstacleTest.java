package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class ObstacleTest {
  @Test
  void what_only_touches_is_not_met() {
    Obstacle wall = Obstacle.partOfWall(mm(250), mm(750));
    assertFalse(wall.meets(0, 0.25));
    assertTrue(wall.meets(0, 0.251));
    assertTrue(wall.meets(0.749, 1));
    assertFalse(wall.meets(0.75, 1));
    Obstacle post = Obstacle.post(mm(500), mm(500));
    assertFalse(post.meets(0, 0.25));
    assertTrue(post.meets(0, 0.251));
    assertTrue(post.meets(0.749, 1));
    assertFalse(post.meets(0.75, 1));
    assertTrue(Obstacle.rigidWall().meets(5, 6));
    assertTrue(Obstacle.vehicle(kg(900), kNpmm(1)).meets(5, 6));
  }

  @Test
  void only_a_wall_over_all_a_vehicle_and_a_post_in_the_middle_are_central() {
    assertTrue(Obstacle.rigidWall().central());
    assertTrue(Obstacle.vehicle(kg(900), kNpmm(1)).central());
    assertTrue(Obstacle.post(mm(0), mm(200)).central());
    assertFalse(Obstacle.post(mm(1), mm(200)).central());
    assertFalse(Obstacle.partOfWall(mm(-300), mm(300)).central());
  }

  @Test
  void each_says_what_it_is() {
    assertEquals("a rigid wall over the full width", Obstacle.rigidWall().words(Units.METRIC));
    assertEquals(
        "a rigid wall over a part of the width, from -250 mm to 750 mm",
        Obstacle.partOfWall(mm(-250), mm(750)).words(Units.METRIC));
    assertEquals(
        "a post of 200 mm at -50.0 mm", Obstacle.post(mm(-50), mm(200)).words(Units.METRIC));
    assertEquals(
        "another vehicle of 900 to 1100 kg, its front 500 to 2000 N/mm",
        Obstacle.vehicle(kg(900), kNpmm(1))
            .mass(kg(900), kg(1100))
            .stiffness(Npmm(500), Npmm(2000))
            .words(Units.METRIC));
  }

  @Test
  void an_odd_vehicle_warns_of_both_its_figures() {
    List<String> lines = Obstacle.vehicle(kg(90), Npmm(20)).warnings(Units.METRIC);
    assertEquals(
        List.of(
            "mass of a vehicle 90.0 kg is outside 100 to 3500 kg, between which crashes of road"
                + " vehicles lie; is it mistyped?",
            "stiffness of a front 20.0 N/mm is outside 100 to 20000 N/mm, between which crashes of"
                + " road vehicles lie; is it mistyped?"),
        lines);
    assertEquals(List.of(), Obstacle.rigidWall().warnings(Units.METRIC));
    assertEquals(List.of(), Obstacle.vehicle(kg(900), kNpmm(1)).warnings(Units.METRIC));
  }

  @Test
  void what_has_no_size_is_refused() {
    Refused.with(
        "a wall from 300.0 mm to 300.0 mm has no width; give its right edge first (to the left is"
            + " positive)",
        () -> Obstacle.partOfWall(mm(300), mm(300)));
    Refused.with("width of a post 0 mm is not above zero", () -> Obstacle.post(mm(300), mm(0)));
    Refused.with(
        "mass of the other vehicle 0 kg is not above zero",
        () -> Obstacle.vehicle(kg(0), kNpmm(1)));
    Refused.with(
        "stiffness of the other vehicle 0 N/mm is not above zero",
        () -> Obstacle.vehicle(kg(900), kNpmm(0)));
  }

  @Test
  void the_ends_of_what_is_usual_do_not_warn() {
    assertEquals(Optional.empty(), warning(20, 160));
    assertTrue(warning(19.9, 160).isPresent());
    assertEquals(
        Optional.of(
            "mass of a person 20.0 to 161 kg is outside 20.0 to 160 kg, between which crashes of"
                + " road vehicles lie; is it mistyped?"),
        warning(20, 161));
  }

  private static Optional<String> warning(double low, double high) {
    return Sane.PERSON.warning(new Range(Kind.MASS, low, high), Units.METRIC);
  }
}
