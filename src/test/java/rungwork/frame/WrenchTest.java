package rungwork.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;

class WrenchTest {
  @Test
  void a_force_moved_brings_its_moment() {
    Point tyre = new Point(1, 0.5, 0.25);
    Wrench atOrigin = Wrench.force(10, 20, 30).moved(tyre, new Point(0, 0, 0));
    // r × F = (0.5·30 − 0.25·20, 0.25·10 − 1·30, 1·20 − 0.5·10)
    assertEquals(new Wrench(10, 20, 30, 10, -27.5, 15), atOrigin);
    assertEquals(Wrench.force(10, 20, 30), atOrigin.moved(new Point(0, 0, 0), tyre));
  }

  @Test
  void wrenches_add_and_scale() {
    Wrench sum = Wrench.force(1, 2, 3).plus(Wrench.moment(4, 5, 6));
    assertEquals(new Wrench(2, 4, 6, 8, 10, 12), sum.times(2));
  }

  @Test
  void places_take_typed_lengths_and_measure_distances() {
    Point place = Point.at(mm(1000), mm(0), mm(500));
    assertEquals(new Point(1, 0, 0.5), place);
    assertEquals(5, place.distance(place.plus(0, 3, 4)), 1e-15);
  }

  @Test
  void a_box_has_the_inertia_of_a_box() {
    Mass.Inertia box = Mass.Inertia.box(12, 3, 2, 1);
    assertEquals(new Mass.Inertia(5, 10, 13, 0, 0, 0), box);
  }
}
