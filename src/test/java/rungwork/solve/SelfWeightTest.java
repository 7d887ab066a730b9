package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Point;

/** A beam from (0, 1, 2) to (0.3, 1.4, 3.2), 1.3 m long: 7850 kg/m³ × 294 mm² × 1.3 m. */
class SelfWeightTest {
  private static final double PER_METRE = 7850 * 294e-6;
  private static final double KILOGRAMS = PER_METRE * 1.3;
  private static final double DIGITS = 1e-12;

  private static SelfWeight slanted() {
    return new SelfWeight(
        Frame.rising(Plane.PLAN)
            .node("a", new Point(0, 1, 2))
            .node("b", new Point(0.3, 1.4, 3.2))
            .beam(Beam.rigid("bar", "a", "b", Stocks.TUBE))
            .build());
  }

  /** m/12 (y² + z²) and so on, products of inertia m/12 xy, of x = 0.3, y = 0.4, z = 1.2. */
  @Test
  void a_slanted_beam_weighs_at_its_middle_and_turns_as_a_slender_bar() {
    Mass bar = slanted().masses().get(0);
    assertEquals(KILOGRAMS, bar.kilograms(), DIGITS);
    assertEquals(List.of("a", "b"), bar.carriers());
    assertEquals(0, bar.at().distance(new Point(0.15, 1.2, 2.6)), DIGITS);
    assertEquals(KILOGRAMS / 12 * 1.60, bar.own().xx(), DIGITS);
    assertEquals(KILOGRAMS / 12 * 1.53, bar.own().yy(), DIGITS);
    assertEquals(KILOGRAMS / 12 * 0.25, bar.own().zz(), DIGITS);
    assertEquals(KILOGRAMS / 12 * 0.12, bar.own().xy(), DIGITS);
    assertEquals(KILOGRAMS / 12 * 0.48, bar.own().yz(), DIGITS);
    assertEquals(KILOGRAMS / 12 * 0.36, bar.own().zx(), DIGITS);
  }

  /** Turning by 2 rad/s² about z through (0, 1, 0): a = (−2 (y − 1), 2 x, 0) = (−0.8, 0.6, 0). */
  @Test
  void its_inertia_grows_from_where_it_stands_still_to_where_it_moves() {
    RigidAcceleration turning = new RigidAcceleration(new Point(0, 1, 0), 0, 0, 0, 0, 0, 2);
    Load.AlongPart along = (Load.AlongPart) slanted().loads(turning).get(0);
    assertEquals("bar", along.beam());
    assertEquals(0, along.from());
    assertEquals(1.3, along.to(), DIGITS);
    assertEquals(0, Math.abs(along.first().wx()) + Math.abs(along.first().wy()), DIGITS);
    assertEquals(0.8 * PER_METRE, along.last().wx(), DIGITS);
    assertEquals(-0.6 * PER_METRE, along.last().wy(), DIGITS);
    assertEquals(0, along.last().wz(), DIGITS);
  }
}
