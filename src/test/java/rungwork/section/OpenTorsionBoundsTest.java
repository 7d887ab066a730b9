package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;

/** Torsion constants of rolled open shapes, bounded by a solution on their outline. */
class OpenTorsionBoundsTest {
  /** The judge judged: a square bar, 0.1406 b⁴ (any textbook). */
  @Test
  void the_raster_finds_the_constant_of_a_square_bar() {
    double raster = onOutline(Section.flatBar(mm(10), mm(10)), 0.25e-3);
    assertEquals(0.1406e-8, raster, 0.04 * 0.1406e-8);
  }

  @Test
  void a_tapered_channel_is_a_little_stiffer_in_torsion_than_its_walls_alone() {
    bounded(Shapes.upn80(), 1.07, 1.15);
  }

  @Test
  void a_rolled_tee_is_stiffer_in_torsion_by_the_bulge_at_its_root() {
    bounded(Section.rolledTee(mm(50), mm(6)), 1.15, 1.24);
  }

  @Test
  void a_sharp_folded_zed_twists_as_its_walls_do() {
    bounded(FoldedProfile.of(mm(4), mm(4)).zed(mm(40), mm(30)), 0.93, 1.0);
  }

  private static void bounded(Section section, double least, double most) {
    double ratio = onOutline(section, 0.5e-3) / section.properties().it();
    assertTrue(ratio > least && ratio < most, section.name() + ": " + ratio);
  }

  /** The raster's edge is a step too wide or too narrow: two rasters, carried on to none. */
  private static double onOutline(Section section, double step) {
    double coarse = new RasterTorsion(section.outline(), step).torsionConstant();
    double fine = new RasterTorsion(section.outline(), step / 2).torsionConstant();
    return 2 * fine - coarse;
  }
}
