package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReducedSectionTest {
  private static final Section TUBE = Section.rectangularTube(mm(80), mm(40), mm(3));

  private static Wall wall(String name) {
    return TUBE.walls().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void without_nothing_it_is_the_section_itself() {
    assertSame(TUBE, TUBE.without(List.of()));
  }

  @Test
  void what_is_gone_is_missing_from_area_and_moments() {
    Wall top = wall("top wall");
    Section left = TUBE.without(List.of(top.part(0.25, 0.75)));
    Properties p = TUBE.properties();
    Properties q = left.properties();
    double gone = top.width() / 2 * 3e-3;
    double arm = 0.04 - 0.0015;
    double shift = -gone * arm / (p.area() - gone);
    assertEquals(p.area() - gone, q.area(), 1e-12);
    double about = p.iy() - gone * (arm * arm + 9e-6 / 12) - q.area() * shift * shift;
    assertEquals(about, q.iy(), 1e-9 * about);
    assertEquals(0, q.iyz(), 1e-9 * q.iy());
    assertEquals(p.it(), q.it());
    assertEquals(about / (0.04 - shift), q.wely(), 1e-9 * q.wely());
    assertEquals("RHS 80x40x3, effective", left.name());
  }

  @Test
  void points_and_walls_move_with_the_centroid() {
    Section left = TUBE.without(List.of(wall("top wall").part(0, 1)));
    double moved = left.walls().get(0).from().z() - TUBE.walls().get(0).from().z();
    assertTrue(moved > 0, "the centroid sank, so all else stands higher above it");
    assertEquals(moved, left.points().get(0).z() - TUBE.points().get(0).z(), 1e-12);
    assertEquals(0, left.outline().moments().centroid().size(), 1e-12);
  }

  @Test
  void holes_are_missing_from_it_too() {
    Section drilled = TUBE.drilled("left wall", mm(11));
    Section left = drilled.without(List.of(wall("top wall").part(0.25, 0.75)));
    double net = drilled.net().orElseThrow().area();
    double gone = wall("top wall").width() / 2 * 3e-3;
    assertEquals(net - gone, left.properties().area(), 1e-12);
  }

  @Test
  void parts_of_a_wall_add_up_to_it() {
    Wall whole = wall("left wall");
    Section once = TUBE.without(List.of(whole.part(0, 1)));
    Section twice = TUBE.without(List.of(whole.part(0, 0.4), whole.part(0.4, 1)));
    assertEquals(once.properties().area(), twice.properties().area(), 1e-15);
    assertEquals(once.properties().iz(), twice.properties().iz(), 1e-15);
  }
}
