package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.fault.ModelException;
import rungwork.section.Properties;
import rungwork.section.Section;

/** What a section carries of N, My, Mz and T together. */
class YieldSurfaceTest {
  private static final double YIELD = 235e6;

  /** Faces at the axes meet them exactly but for rounding. */
  private static final double ROUNDING = 1e-9;

  private static Stream<Section> sections() {
    return Stream.of(
        Section.squareTube(mm(50), mm(3)),
        Section.rectangularTube(mm(80), mm(40), mm(3)),
        Section.rectangularTube(mm(100), mm(50), mm(5)),
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)),
        Section.flatBar(mm(60), mm(8)),
        Section.roundTube(mm(48.3), mm(3.2)));
  }

  @ParameterizedTest
  @MethodSource("sections")
  void each_force_alone_reaches_its_plastic_value(Section section) {
    Properties p = section.properties();
    YieldSurface surface = YieldSurface.around(section, YIELD);
    assertEquals(1, surface.use(YIELD * p.area(), 0, 0, 0), ROUNDING);
    assertEquals(1, surface.use(0, -YIELD * p.wply(), 0, 0), ROUNDING);
    double aboutZ = surface.use(0, 0, YIELD * p.wplz(), 0);
    boolean alikeOnBothSides = Math.abs(p.shearCentreY()) < 1e-9;
    assertEquals(1, aboutZ, alikeOnBothSides ? ROUNDING : YieldSurface.BULGE);
  }

  /** Between many more faces the surface is all but smooth; ours stands out a little, never in. */
  @ParameterizedTest
  @MethodSource("sections")
  void its_faces_bulge_past_the_true_surface_by_no_more_than_stated(Section section) {
    YieldSurface surface = YieldSurface.around(section, YIELD);
    YieldSurface smooth = YieldSurface.around(section, YIELD, YieldSurface.ways(5));
    Properties p = section.properties();
    Random random = new Random(11);
    double most = 0;
    for (int i = 0; i < 400; i++) {
      double n = random.nextGaussian() * YIELD * p.area();
      double my = random.nextGaussian() * YIELD * p.wply();
      double mz = random.nextGaussian() * YIELD * p.wplz();
      double bulge = smooth.use(n, my, mz, 0) / surface.use(n, my, mz, 0) - 1;
      assertTrue(bulge > -0.02, "it stands in by " + -bulge);
      most = Math.max(most, bulge);
    }
    assertTrue(most < YieldSurface.BULGE, "it bulges by " + most);
  }

  /** N/Np = 1 − m for a flat bar: m = 1 − n² (any text on plastic theory). */
  @Test
  void a_flat_bar_under_force_and_moment_follows_its_parabola() {
    Section bar = Section.flatBar(mm(60), mm(8));
    YieldSurface smooth = YieldSurface.around(bar, YIELD, YieldSurface.ways(12));
    Properties p = bar.properties();
    for (double n : new double[] {0, 0.3, 0.6, 0.9}) {
      double use = smooth.use(n * YIELD * p.area(), (1 - n * n) * YIELD * p.wply(), 0, 0);
      assertEquals(1, use, 0.003);
    }
  }

  /** σ² + 3τ² = fy² at every place of a thin tube. */
  @Test
  void torque_and_moment_share_the_strength_as_a_circle() {
    Section tube = Section.squareTube(mm(50), mm(3));
    YieldSurface surface = YieldSurface.around(tube, YIELD);
    double moment = YIELD * tube.properties().wply();
    double perT =
        tube.points().stream().mapToDouble(point -> Math.abs(point.perT())).max().orElseThrow();
    double torque = YIELD / Math.sqrt(3) / perT;
    assertEquals(1, surface.use(0, 0, 0, torque), ROUNDING);
    double use = surface.use(0, moment * Math.sqrt(0.5), 0, torque * Math.sqrt(0.5));
    assertEquals(Math.cos(Math.PI / 12), use, 1e-6, "half-way between two faces");
  }

  @Test
  void drawn_in_it_is_smaller_by_its_bulge() {
    YieldSurface surface = YieldSurface.around(Section.squareTube(mm(50), mm(3)), YIELD);
    assertEquals(
        (1 + YieldSurface.BULGE) * surface.use(1e3, 200, 0, 0),
        surface.drawnIn().use(1e3, 200, 0, 0),
        ROUNDING);
  }

  @Test
  void a_section_without_outline_or_strength_is_refused() {
    assertEquals(
        "section by stiffness is known by its properties alone; its plastic strength follows from an"
            + " outline",
        assertThrows(ModelException.class, () -> YieldSurface.around(Stocks.TUBE.section(), YIELD))
            .getMessage());
    assertEquals(
        "a yield strength of 0 Pa carries nothing; it must be above 0",
        assertThrows(
                ModelException.class,
                () -> YieldSurface.around(Section.squareTube(mm(50), mm(3)), 0))
            .getMessage());
  }
}
