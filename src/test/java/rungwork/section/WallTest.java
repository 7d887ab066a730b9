package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;

/** A wall 40 mm wide from (10, −10) to (10, 30) mm. */
class WallTest {
  private static final Wall WALL =
      new Wall(
          "left wall",
          0.04,
          0.003,
          Wall.Edge.INTERNAL,
          new Spot(0.01, -0.01),
          new Spot(0.01, 0.03));

  @Test
  void a_part_keeps_its_walls_thickness_and_edges() {
    Wall part = WALL.part(0.25, 0.875);
    assertEquals("left wall", part.name());
    assertEquals(0.025, part.width(), 1e-15);
    assertEquals(0.003, part.thickness());
    assertEquals(Wall.Edge.INTERNAL, part.edge());
    assertEquals(0, part.from().z(), 1e-15);
    assertEquals(0.025, part.to().z(), 1e-15);
    assertEquals(0.01, part.from().y(), 1e-15);
  }

  @Test
  void a_part_that_begins_or_ends_nowhere_is_refused() {
    assertEquals(
        "start of a part of left wall is not a number; give a finite number",
        assertThrows(ModelException.class, () -> WALL.part(Double.NaN, 1)).getMessage());
    assertEquals(
        "end of a part of left wall is not a number; give a finite number",
        assertThrows(ModelException.class, () -> WALL.part(0, Double.NaN)).getMessage());
  }
}
