package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.frame.Wrench;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.loadpath.Face.Direction;

class FaceTest {
  private static final double ROUNDING = 1e-12;

  private static FaceLoad load(Face face, Wrench wrench) {
    MountForce force = new MountForce(Corners.mount("tab", 140, 430, 260), "bump", wrench);
    return face.load(force, Factors.ROAD);
  }

  @Test
  void a_tab_on_the_left_rails_outer_face_has_its_pin_upright() {
    Face face = new Face(Corners.at(140, 400, 260), Direction.FORWARD, Direction.LEFT);
    FaceLoad load = load(face, new Wrench(1, 2, 3, 4, 5, 6));
    assertEquals(new Wrench(1, -3, 2, 4, -6, 5), load.wrench());
    assertEquals(0, load.place().x(), ROUNDING);
    assertEquals(0, load.place().y(), ROUNDING);
    assertEquals(0.030, load.place().z(), ROUNDING);
    assertEquals("bump", load.loadCase());
    assertEquals(Factors.ROAD, load.factors());
  }

  @Test
  void a_tab_across_the_outer_face_has_its_pin_along_the_rail() {
    Face face = new Face(Corners.at(140, 400, 260), Direction.UP, Direction.LEFT);
    FaceLoad load = load(face, Wrench.force(1, 2, 3));
    assertEquals(Wrench.force(3, 1, 2), load.wrench());
  }

  @Test
  void a_tab_under_the_rail_is_pulled_off_by_a_force_down() {
    Face face = new Face(Corners.at(140, 430, 290), Direction.FORWARD, Direction.DOWN);
    FaceLoad load = load(face, Wrench.force(10, 20, -30));
    assertEquals(Wrench.force(10, -20, 30), load.wrench());
    assertEquals(0.030, load.place().z(), ROUNDING);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void turning_keeps_the_force_and_its_moment_about_the_origin(long seed) {
    Random random = new Random(seed);
    Vector3D x = any(random);
    Vector3D z = x.crossProduct(any(random));
    Face face = new Face(Corners.at(140, 400, 260), direction(x), direction(z));
    Wrench wrench = new Wrench(1, -2, 3, -4, 5, -6);
    FaceLoad load = load(face, wrench);
    Wrench before = wrench.moved(Corners.at(140, 430, 260), face.origin());
    Wrench after = load.wrench().moved(load.place(), Corners.at(0, 0, 0));
    assertEquals(force(before).getNorm(), force(after).getNorm(), ROUNDING, "seed " + seed);
    assertEquals(moment(before).getNorm(), moment(after).getNorm(), ROUNDING, "seed " + seed);
    double work = force(before).dotProduct(moment(before));
    assertEquals(work, force(after).dotProduct(moment(after)), 1e-10, "handed, seed " + seed);
  }

  @Test
  void directions_that_are_not_square_are_refused() {
    Direction slanted = new Direction(1, 1, 0);
    String message =
        assertThrows(
                ModelException.class,
                () -> new Face(Corners.at(0, 0, 0), Direction.FORWARD, slanted))
            .getMessage();
    assertEquals(
        "the way along a tab's foot and the way out of its face must be square; the cosine between"
            + " them is 0.7071",
        message);
  }

  @Test
  void a_direction_to_nowhere_is_refused() {
    for (double length : List.of(0.0, Double.NaN, Double.POSITIVE_INFINITY)) {
      assertThrows(ModelException.class, () -> new Direction(length, 0, 0));
    }
    String message = assertThrows(ModelException.class, () -> new Direction(0, 0, 0)).getMessage();
    assertEquals("a direction of length 0 points nowhere", message);
  }

  private static Vector3D any(Random random) {
    return new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  private static Direction direction(Vector3D v) {
    return new Direction(v.getX(), v.getY(), v.getZ());
  }

  private static Vector3D force(Wrench w) {
    return new Vector3D(w.fx(), w.fy(), w.fz());
  }

  private static Vector3D moment(Wrench w) {
    return new Vector3D(w.mx(), w.my(), w.mz());
  }
}
