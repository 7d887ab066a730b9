package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;

/** Two columns in one line, 1.6 m each, cut into sixteen pieces; sine waves put on by hand. */
class BuckledShapeTest {
  private static final int PIECES = 16;
  private static final double LENGTH = 1.6;
  private static final Stock STOCK =
      new Stocks(210e9, 80e9).with(new Stocks.Shape(300e-6, 80e-9, 50e-9, 110e-9));

  /** The first column in half a sine wave along z, w = sin πx/L, the second at rest. */
  private static BuckledShape bowed(double first, double second) {
    Frame frame =
        Frame.in(Plane.SIDE)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(LENGTH, 0, 0))
            .node("c", new Point(2 * LENGTH, 0, 0))
            .beam(Beam.rigid("bowed", "a", "b", STOCK).bending(Beam.Bending.WITHOUT_SHEAR_STRAIN))
            .beam(Beam.rigid("still", "b", "c", STOCK).bending(Beam.Bending.WITHOUT_SHEAR_STRAIN))
            .build();
    Cutting cutting = new Cutting(frame, PIECES);
    double[] forces =
        IntStream.range(0, 2 * PIECES).mapToDouble(i -> i < PIECES ? first : second).toArray();
    double[] motions = new double[6 * cutting.frame().nodes().size()];
    for (int i = 0; i <= PIECES; i++) {
      int node = i == 0 ? 0 : i == PIECES ? 1 : 2 + i;
      double angle = Math.PI * i / PIECES;
      motions[6 * node + 1] = Math.sin(angle);
      motions[6 * node + 5] = Math.PI / LENGTH * Math.cos(angle);
    }
    return new BuckledShape(cutting, cutting.structure().under(forces), motions);
  }

  /** ½|N|∫w′²dx/L = |N|π²/(4 L²); pieces of a sixteenth of the wave hold it to 10⁻⁵. */
  @Test
  void a_compression_furthers_a_half_wave_by_its_closed_form_and_a_tension_resists_it() {
    double work = 1000 * Math.PI * Math.PI / (4 * LENGTH * LENGTH);
    assertEquals(work, bowed(-1000, 0).work(0), 1e-4 * work);
    assertEquals(-work, bowed(1000, 0).work(0), 1e-4 * work);
  }

  /** One piece of ℓ whose near end alone turns by θ = −π/L: ∫w′²dx = 2ℓθ²/15 of the cubic. */
  @Test
  void a_beam_that_only_an_end_turns_does_what_its_first_piece_does() {
    double turn = Math.PI / LENGTH;
    double work = 1000.0 / 2 * 2 * (LENGTH / PIECES) / 15 * turn * turn / LENGTH;
    assertEquals(work, bowed(-1000, -1000).work(1), 1e-4 * work);
    assertEquals(0, bowed(-1000, 0).work(1), 1e-12);
  }

  @Test
  void its_compression_is_the_force_in_it_and_zero_in_tension() {
    BuckledShape shape = bowed(-1000, 500);
    assertEquals(1000, shape.compression(0));
    assertEquals(0, shape.compression(1));
  }

  /** In side elevation, in the plane a beam bends about its axis across it: EIz by the frame. */
  @Test
  void the_rigidity_is_that_of_the_action_that_bends_it() {
    BuckledShape shape = bowed(-1000, 0);
    assertEquals(210e9 * 50e-9, shape.rigidity(0, Action.FRAME), 1e-6);
    assertEquals(210e9 * 80e-9, shape.rigidity(0, Action.GRILLAGE), 1e-6);
    assertEquals(210e9 * 80e-9, shape.rigidity(0, Action.COUPLED), 1e-6);
  }
}
