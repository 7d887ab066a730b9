package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.solve.InternalForces;
import rungwork.solve.YieldSurface;

/** When something begins as loads grow, by hand and by the faces of the yield surface. */
class OnsetWorkedTest {
  private static final Stock STOCK = new Stock(TUBE, S355);

  /** At the onset the most used face of the yield surface is reached, and no place is beyond it. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void fully_plastic_is_where_the_first_face_is_reached(long seed) {
    YieldSurface surface = YieldSurface.around(TUBE, 355e6);
    Random random = new Random(seed);
    Wrench standing = wrench(random).times(0.2);
    Wrench growing = wrench(random).times(0.5);
    Growth growth = new Growth(cantilever(STOCK, standing), cantilever(STOCK, growing));
    Onset onset = MemberChecks.fullyPlastic(BAR, growth, surface);
    Wrench then = standing.plus(growing.times(onset.factor()));
    double most =
        LoadedMember.of(BAR, cantilever(STOCK, then), NONE).cuts().stream()
            .mapToDouble(cut -> use(surface, cut.forces()))
            .max()
            .orElseThrow();
    assertEquals(1, most, 1e-9);
    assertEquals(onset.factor(), onset.working().get(0).result(), 1e-9);
    assertEquals(0, onset.doubts().size());
  }

  private static double use(YieldSurface surface, InternalForces f) {
    return surface.faces().stream()
        .mapToDouble(
            face ->
                (face.n() * f.n() + face.y() * f.my() + face.z() * f.mz() + face.t() * f.t())
                    / face.reach())
        .max()
        .orElseThrow();
  }

  private static Wrench wrench(Random random) {
    double[] w = random.doubles(6, -1, 1).toArray();
    return new Wrench(90e3 * w[0], 2e3 * w[1], 3e3 * w[2], 900 * w[3], 800 * w[4], 500 * w[5]);
  }

  @Test
  void what_stands_beyond_the_surface_is_plastic_at_once_and_what_is_taken_back_never() {
    YieldSurface surface = YieldSurface.around(TUBE, 355e6);
    Wrench much = Wrench.moment(0, 20e3, 0);
    Growth more = new Growth(cantilever(STOCK, much), cantilever(STOCK, much));
    assertEquals(0, MemberChecks.fullyPlastic(BAR, more, surface).factor());
    Growth none = new Growth(cantilever(STOCK, much), cantilever(STOCK, Wrench.ZERO));
    Onset never = MemberChecks.fullyPlastic(BAR, none, surface);
    assertEquals(Double.POSITIVE_INFINITY, never.factor());
    assertEquals(List.of(), never.working());
  }

  /**
   * Stresses below 1 mPa that stand, and below a thousand-millionth of what grows, are rounding.
   */
  @Test
  void rounding_is_taken_out_of_stresses_that_grow() {
    GrowingStress small = new GrowingStress(9e-4, 1e6, -9e-4, -9e-4);
    assertEquals(new GrowingStress(0, 1e6, 0, 0), small);
    GrowingStress other = new GrowingStress(-9e-4, 9e-4, 9e-4, -1e6);
    assertEquals(new GrowingStress(0, 0, 0, -1e6), other);
    GrowingStress kept = new GrowingStress(2e-3, 1e6, -2e-3, 2e-3);
    assertEquals(2e-3, kept.standing());
    assertEquals(-2e-3, kept.shearStanding());
    assertEquals(2e-3, kept.shearGrowing());
    assertEquals(2e-3, new GrowingStress(0, 2e-3, 0, 1e6).growing());
  }

  /**
   * 3-4-5: σ₀ = 30, τ₀ = 0; k·40 of σ₁ = 40 and fy = 110 give k = 2; τ₁ = 40/√3 alone gives √(…).
   */
  @Test
  void the_multiple_at_first_yield_solves_von_mises() {
    assertEquals(2, new GrowingStress(30, 40, 0, 0).firstYield(110), 1e-12);
    // 30² + 3·(k·40/√3)² = 50² at k = 1.
    assertEquals(1, new GrowingStress(30, 0, 0, 40 / Math.sqrt(3)).firstYield(50), 1e-12);
    // 3·(10/√3 + k·20/√3)² = 50² at k = 2.
    double root = Math.sqrt(3);
    assertEquals(2, new GrowingStress(0, 0, 10 / root, 20 / root).firstYield(50), 1e-12);
    assertTrue(new GrowingStress(50, 1, 0, 0).yieldsStanding(50));
    assertFalse(new GrowingStress(49, 1, 0, 0).yieldsStanding(50));
    assertEquals(0, new GrowingStress(50, 1, 0, 0).firstYield(50));
  }
}
