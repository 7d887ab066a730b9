package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.material.Elasticity;
import rungwork.section.Section;
import rungwork.section.Wall;

class FoldingHingeTest {
  private static final Elasticity STEEL = new Elasticity(210e9, 0.3, 7850);

  private static FoldingHinge square(double side, double wall, double yield) {
    return new FoldingHinge(side, side, wall, yield, STEEL);
  }

  /** Thick: fully plastic, 4 rectangles by hand. */
  @Test
  void a_thick_tube_reaches_its_plastic_moment() {
    FoldingHinge hinge = square(0.05, 0.003, 235e6);
    double plastic = 235e6 * (0.05 * 0.05 * 0.05 - 0.044 * 0.044 * 0.044) / 4;
    assertEquals(plastic, hinge.mostMoment(), 1e-9 * plastic);
    assertTrue(hinge.tested());
  }

  /** Just where its flange buckles at yield a tube of thin walls carries its elastic moment. */
  @Test
  void a_tube_whose_flange_buckles_at_yield_carries_its_elastic_moment() {
    double yield = square(0.1, 0.001, 1).critical();
    FoldingHinge above = square(0.1, 0.001, yield * (1 - 1e-9));
    FoldingHinge below = square(0.1, 0.001, yield * (1 + 1e-9));
    double elastic = yield * 0.001 * 0.1 * 0.1 * 4 / 3;
    assertEquals(elastic, above.mostMoment(), 1e-6 * elastic);
    assertEquals(elastic, below.mostMoment(), 1e-6 * elastic);
  }

  /** The three ranges once each, worked out apart; E 210 GPa, sizes in mm, moments in N·m. */
  @Test
  void the_most_moment_of_three_tubes() {
    assertEquals(863.10, new FoldingHinge(0.06, 0.04, 0.001, 300e6, STEEL).mostMoment(), 0.01);
    assertEquals(4548.97, square(0.08, 0.0015, 355e6).mostMoment(), 0.01);
    assertEquals(1879.46, square(0.05, 0.0015, 355e6).mostMoment(), 0.01);
  }

  @Test
  void its_three_ranges_meet_and_the_moment_falls_with_the_wall() {
    double last = 0;
    for (double wall = 0.0004; wall < 0.004; wall += 0.00001) {
      double moment = square(0.06, wall, 300e6).mostMoment();
      assertTrue(moment > last, "wall " + wall);
      assertTrue(last == 0 || moment < 1.1 * last, "no step at wall " + wall);
      last = moment;
    }
  }

  @Test
  void the_moment_falls_from_its_most_as_the_walls_fold() {
    FoldingHinge hinge = square(0.05, 0.0015, 300e6);
    assertEquals(hinge.mostMoment(), hinge.moment(0));
    double last = hinge.moment(0);
    for (double angle = 0.01; angle < Math.toRadians(40); angle += 0.01) {
      assertTrue(hinge.moment(angle) <= last * (1 + 1e-9), "at " + angle);
      last = hinge.moment(angle);
    }
    assertTrue(last < 0.3 * hinge.mostMoment(), "it has lost most of it");
    assertEquals(hinge.moment(hinge.farthest()), hinge.moment(2), 1e-9);
  }

  @Test
  void a_thicker_wall_keeps_more_of_its_moment() {
    double thin =
        square(0.05, 0.0015, 300e6).moment(0.2) / square(0.05, 0.0015, 300e6).mostMoment();
    double thick = square(0.05, 0.003, 300e6).moment(0.2) / square(0.05, 0.003, 300e6).mostMoment();
    assertTrue(thick > 1.5 * thin, thin + " and " + thick);
  }

  @Test
  void the_energy_is_the_area_under_the_moment() {
    FoldingHinge hinge = square(0.05, 0.0015, 300e6);
    double sum = 0;
    int steps = 20_000;
    for (int i = 0; i < steps; i++) {
      sum += hinge.moment(0.5 * (i + 0.5) / steps) * 0.5 / steps;
    }
    assertEquals(sum, hinge.energy(0.5), 2e-3 * sum);
    assertTrue(hinge.energy(0.5) < 0.5 * hinge.mostMoment());
  }

  @Test
  void it_is_read_off_a_square_or_rectangular_tube_only() {
    FoldingHinge hinge =
        FoldingHinge.of(Section.rectangularTube(mm(80), mm(40), mm(3)), 300e6, STEEL).orElseThrow();
    assertEquals(0.04, hinge.a(), 1e-12);
    assertEquals(0.08, hinge.b(), 1e-12);
    assertEquals(0.003, hinge.t(), 1e-12);
    assertEquals(Optional.empty(), FoldingHinge.of(Section.roundTube(mm(50), mm(3)), 300e6, STEEL));
    assertEquals(
        Optional.empty(),
        FoldingHinge.of(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), 300e6, STEEL));
    assertFalse(new FoldingHinge(0.2, 0.04, 0.002, 300e6, STEEL).tested(), "too wide");
    assertFalse(square(0.02, 0.003, 300e6).tested(), "too thick");
  }

  /** 20.33 mm to one side of its centre of area and 19.67 mm to the other: 40 mm all the same. */
  @Test
  void a_boxed_channel_counts_with_its_whole_width() {
    FoldingHinge hinge =
        FoldingHinge.of(Section.boxedChannel(mm(80), mm(37), mm(3), mm(3)), 300e6, STEEL)
            .orElseThrow();
    assertEquals(0.04, hinge.a(), 1e-12);
    assertEquals(0.08, hinge.b(), 1e-12);
  }

  @Test
  void four_walls_that_are_not_alike_have_no_hinge_here() {
    Section tube = Section.squareTube(mm(50), mm(3));
    assertEquals(Optional.of(0.003), FoldingHinge.of(tube, 1e8, STEEL).map(FoldingHinge::t));
    for (int i = 0; i < 4; i++) {
      List<Wall> walls = new ArrayList<>(tube.walls());
      Wall one = walls.get(i);
      walls.set(i, new Wall(one.name(), one.width(), 0.004, one.edge(), one.from(), one.to()));
      Section unequal =
          new Section(
              "unequal",
              tube.properties(),
              tube.points(),
              walls,
              tube.torsion(),
              tube.outline(),
              tube.net());
      assertEquals(Optional.empty(), FoldingHinge.of(unequal, 1e8, STEEL), one.name());
    }
  }

  /** Metres, so that the ratios are the numbers themselves. */
  @Test
  void his_tests_cover_the_ends_of_their_ranges() {
    assertTrue(new FoldingHinge(0.33, 1, 0.01, 300e6, STEEL).tested());
    assertFalse(new FoldingHinge(0.3299, 1, 0.01, 300e6, STEEL).tested());
    assertTrue(new FoldingHinge(3, 1, 0.1, 300e6, STEEL).tested());
    assertFalse(new FoldingHinge(3.001, 1, 0.1, 300e6, STEEL).tested());
    assertTrue(square(9.14, 1, 300e6).tested());
    assertFalse(square(9.139, 1, 300e6).tested());
    assertTrue(square(128, 1, 300e6).tested());
    assertFalse(square(128.1, 1, 300e6).tested());
  }

  /** π² E/(12 (1 − ν²)) is 189 800.08 MPa; 60 by 40 by 1: 5.47 · 189 800.08/3600 MPa. */
  @Test
  void the_flange_buckles_as_a_plate_held_by_its_webs() {
    FoldingHinge hinge = new FoldingHinge(0.06, 0.04, 0.001, 300e6, STEEL);
    assertEquals(5.47 * 189_800.08e6 / 3600, hinge.critical(), 1e3);
  }

  /**
   * 2 asin((9 − 1)/78) for 20 by 80 by 2; at 50 by 50 by 3 it would be 55.8°, so 40° are the end.
   */
  @Test
  void folding_ends_where_the_flange_meets_itself_or_at_forty_degrees() {
    assertEquals(
        2 * Math.asin(8.0 / 78), new FoldingHinge(0.02, 0.08, 0.002, 3e8, STEEL).farthest(), 1e-12);
    assertEquals(Math.toRadians(40), square(0.05, 0.003, 3e8).farthest(), 1e-12);
    assertEquals(
        Math.toRadians(40), new FoldingHinge(0.08, 0.02, 0.002, 3e8, STEEL).farthest(), 1e-12);
  }

  /** Worked out apart, slopes by a four-point rule of another step. */
  @Test
  void the_moment_at_an_angle_is_the_work_of_its_yield_lines() {
    assertEquals(337.68693, square(0.05, 0.0015, 300e6).moment(0.2), 1e-3);
    assertEquals(219.26481, new FoldingHinge(0.06, 0.04, 0.001, 300e6, STEEL).moment(0.1), 1e-3);
    FoldingHinge deep = new FoldingHinge(0.04, 0.08, 0.002, 355e6, STEEL);
    assertEquals(1829.6128, deep.moment(0.15), 1e-2);
    assertEquals(4039.6696, deep.moment(0.05), 1e-1);
  }

  @Test
  void a_tube_without_a_bore_is_refused() {
    ModelException refusal = assertThrows(ModelException.class, () -> square(0.02, 0.01, 300e6));
    assertEquals(
        "a tube of 20.00 mm by 20.00 mm has no bore with a wall of 10.00 mm", refusal.getMessage());
    assertThrows(ModelException.class, () -> square(0.02, 0, 300e6));
  }
}
