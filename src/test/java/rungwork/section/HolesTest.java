package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;

class HolesTest {
  private static final double EXACT = 1e-9;
  private static final Section TUBE = Section.rectangularTube(mm(80), mm(40), mm(3));

  @Test
  void stiffness_is_gross_and_stress_is_net() {
    Section drilled = TUBE.drilled("left wall", mm(11));
    assertEquals(TUBE.properties(), drilled.properties());
    assertEquals(Optional.empty(), drilled.unfitForFlatFrame());
    assertEquals("RHS 80x40x3 drilled", drilled.name());
    Section.Net net = drilled.net().orElseThrow();
    assertEquals(TUBE.properties().area() - 33e-6, net.area(), 1e-15);
  }

  @Test
  void a_drilled_section_keeps_its_holes_under_another_name_and_stiffness() {
    Section drilled = TUBE.drilled("left wall", mm(11));
    assertEquals(drilled.net(), drilled.named("rail").net());
    assertEquals(drilled.net(), drilled.stiffened(7.6).net());
    assertTrue(drilled.net().isPresent());
  }

  /** Rectangles by hand: 11 × 3 mm at 18.5 mm from the middle, in one wall and in both. */
  @Test
  void holes_in_both_walls_take_two_rectangles() {
    Section.Net one = TUBE.drilled("left wall", mm(11)).net().orElseThrow();
    double a = 33e-6;
    double gross = TUBE.properties().area();
    double shift = -a * 18.5e-3 / (gross - a);
    assertEquals(shift, one.centroid().y(), EXACT);
    assertEquals(0, one.centroid().z(), EXACT);
    assertEquals(TUBE.properties().iy() - 3 * 1331e-12 / 12, one.iy(), 1e-6 * one.iy());
    double own = 11 * 27e-12 / 12 + a * 18.5e-3 * 18.5e-3;
    double iz = TUBE.properties().iz() - own - (gross - a) * shift * shift;
    assertEquals(iz, one.iz(), 1e-6 * iz);
    Section both = TUBE.drilled("left wall", mm(11)).drilled("right wall", mm(11));
    Section.Net net = both.net().orElseThrow();
    assertEquals(gross - 2 * a, net.area(), EXACT * gross);
    assertEquals(0, net.centroid().size(), EXACT);
    assertEquals(TUBE.properties().iz() - 2 * own, net.iz(), 1e-6 * net.iz());
    assertEquals("RHS 80x40x3 drilled", both.name());
    assertEquals(2, net.holes().size());
  }

  @Test
  void a_place_is_counted_up_or_to_the_left() {
    Section.Net low = TUBE.drilled("left wall", mm(11), mm(-20)).net().orElseThrow();
    Section.Net right = TUBE.drilled("top wall", mm(11), mm(-8)).net().orElseThrow();
    assertTrue(low.centroid().z() > 0, "steel is missing below");
    assertTrue(right.centroid().y() > 0, "steel is missing on the right");
    assertTrue(right.centroid().z() < 0, "steel is missing on top");
  }

  /** The stress of N/A + My·z/Iy − Mz·y/Iz, integrated over what is left, gives the forces back. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void the_stress_on_the_net_section_balances_the_forces(long seed) {
    Random random = new Random(seed);
    Section drilled = random(random);
    Section.Net net = drilled.net().orElseThrow();
    double n = 1e4 * random.nextDouble();
    double my = 300 * (random.nextDouble() - 0.5);
    double mz = 300 * (random.nextDouble() - 0.5);
    double[] m = net.moments(n, my, mz);
    double perZ = m[0] / net.iy();
    double perY = -m[1] / net.iz();
    double atOrigin = n / net.area() - perZ * net.centroid().z() - perY * net.centroid().y();
    Moments left = net.outline().moments();
    double force = atOrigin * left.area() + perZ * left.z() + perY * left.y();
    double aboutY = atOrigin * left.z() + perZ * left.zz() + perY * left.yz();
    double aboutZ = -(atOrigin * left.y() + perZ * left.yz() + perY * left.yy());
    assertEquals(n, force, 1e-9 * 1e4);
    assertEquals(my, aboutY, 1e-9 * 300);
    assertEquals(mz, aboutZ, 1e-9 * 300);
  }

  private static Section random(Random random) {
    List<Section> some =
        List.of(TUBE, Shapes.gutter(), Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)));
    Section drilled = some.get(random.nextInt(3));
    for (int i = 0; i < 2; i++) {
      Wall wall = drilled.walls().get(i);
      double d = 0.5e3 * wall.width() * random.nextDouble();
      double off = 0.4 * (wall.width() * 1e3 - d) * (random.nextDouble() - 0.5);
      drilled = drilled.drilled(wall.name(), mm(d), mm(off));
    }
    return drilled;
  }

  @Test
  void a_turned_or_mirrored_section_takes_its_holes_along() {
    Section drilled = TUBE.drilled("left wall", mm(11), mm(15)).drilled("top wall", mm(8), mm(4));
    Section.Net net = drilled.net().orElseThrow();
    Section.Net turned = drilled.turned().net().orElseThrow();
    assertEquals(net.iy(), turned.iz(), EXACT * net.iy());
    assertEquals(-net.iyz(), turned.iyz(), EXACT * net.iy());
    assertEquals(net.centroid().y(), turned.centroid().z(), EXACT);
    Moments moments = turned.outline().moments();
    assertEquals(turned.area(), moments.area(), EXACT * turned.area());
    assertEquals(turned.centroid().y(), moments.centroid().y(), EXACT);
    Section.Net mirrored = drilled.mirrored().net().orElseThrow();
    assertEquals(-net.centroid().y(), mirrored.centroid().y(), EXACT);
    assertEquals("right wall", mirrored.holes().get(0).wall().name());
  }

  @Test
  void shear_in_a_drilled_wall_is_carried_by_what_is_left_of_it() {
    Section drilled = TUBE.drilled("left wall", mm(11)).drilled("left wall", mm(20), mm(20));
    double share = 71.0 / (71 - 31);
    assertEquals(share * perVz(TUBE, "left wall middle"), perVz(drilled, "left wall middle"), 1e-6);
    assertEquals(perVz(TUBE, "right wall middle"), perVz(drilled, "right wall middle"), 1e-9);
  }

  private static double perVz(Section section, String name) {
    return section.points().stream()
        .filter(point -> point.name().equals(name))
        .mapToDouble(StressPoint::perVz)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void holes_that_do_not_fit_are_refused() {
    refused("hole 0 mm is not above zero", () -> TUBE.drilled("left wall", mm(0)));
    refused(
        "section RHS 80x40x3 has no wall web to drill; it has left wall, top wall, right wall,"
            + " bottom wall",
        () -> TUBE.drilled("web", mm(11)));
    refused(
        "section flat 40x8 has no wall web to drill; it has no flat wall",
        () -> Section.flatBar(mm(40), mm(8)).drilled("web", mm(11)));
    refused(
        "hole 31.00 mm is not narrower than the flat part of top wall, 31.00 mm",
        () -> TUBE.drilled("top wall", mm(31)));
    refused(
        "hole 11.00 mm at 32.00 mm from the middle of left wall runs out of its flat part, 71.00"
            + " mm; it must stay within 30.00 mm",
        () -> TUBE.drilled("left wall", mm(11), mm(32)));
    refused(
        "hole 9.000 mm in left wall runs into the hole of 11.00 mm beside it; their middles must be"
            + " 10.00 mm apart or more",
        () -> TUBE.drilled("left wall", mm(11)).drilled("left wall", mm(9), mm(8)));
    refused(
        "a hole in the round wall of CHS 60x3 is not worked out; take a section with flat walls, or"
            + " the load off the hole",
        () -> Section.roundTube(mm(60), mm(3)).drilled("wall", mm(11)));
    Section bare = new Section("stated", TUBE.properties(), List.of(), TUBE.walls());
    refused(
        "section stated is known by its properties alone; a hole needs its outline",
        () -> bare.drilled("left wall", mm(11)));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }

  /** Two holes opposite: Iz less d·t·a² of each, over half the width. */
  @Test
  void the_net_modulus_is_that_of_what_is_left() {
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    Section.Net net =
        tube.drilled("left wall", mm(11)).drilled("right wall", mm(11)).net().orElseThrow();
    double arm = 0.020 - 0.0015;
    double iz =
        tube.properties().iz() - 2 * (0.011 * 0.003 * arm * arm + 0.011 * Math.pow(0.003, 3) / 12);
    assertEquals(iz / 0.020, net.welz(), 1e-12);
    assertEquals(
        (tube.properties().iy() - 2 * 0.003 * Math.pow(0.011, 3) / 12) / 0.040, net.wely(), 1e-12);
  }

  /** One hole shifts the centroid; the modulus is what a moment's greatest stress says. */
  @Test
  void the_net_modulus_of_one_hole_meets_the_stress_that_a_moment_causes() {
    Section.Net net =
        Section.rectangularTube(mm(80), mm(40), mm(3))
            .drilled("left wall", mm(11), mm(20))
            .net()
            .orElseThrow();
    double[] moments = net.moments(0, 0, 1);
    double worst = 0;
    for (int y = -1; y <= 1; y += 2) {
      for (double z = -0.034; z <= 0.0341; z += 0.034) {
        double fromY = y * 0.020 - net.centroid().y();
        double fromZ = z - net.centroid().z();
        worst =
            Math.max(
                worst, Math.abs(moments[0] * fromZ / net.iy() - moments[1] * fromY / net.iz()));
      }
    }
    assertEquals(1 / worst, net.welz(), 0.01 / worst);
  }

  @Test
  void figures_that_no_net_section_has_are_refused() {
    Section.Net net = TUBE.drilled("left wall", mm(11)).net().orElseThrow();
    assertEquals(
        "area of the net section -1.000 mm² is not above zero",
        assertThrows(ModelException.class, () -> figures(net, -1e-6, 4, 2, 1)).getMessage());
    assertEquals(
        "∫z² dA of the net section 0 is not above zero",
        assertThrows(ModelException.class, () -> figures(net, 1, 0, 2, 0)).getMessage());
    assertEquals(
        "∫y² dA of the net section -2.000 is not above zero",
        assertThrows(ModelException.class, () -> figures(net, 1, 4, -2, 0)).getMessage());
    assertEquals(
        "no shape has ∫yz dA = 2.000 m⁴ beside ∫z² dA = 2.000 m⁴ and ∫y² dA = 2.000 m⁴",
        assertThrows(ModelException.class, () -> figures(net, 1, 2, 2, 2)).getMessage());
    assertEquals(-1.99, figures(net, 1, 2, 2, -1.99).iyz());
  }

  private static Section.Net figures(
      Section.Net like, double area, double iy, double iz, double iyz) {
    return new Section.Net(area, iy, iz, iyz, like.outline(), like.centroid(), like.holes());
  }
}
