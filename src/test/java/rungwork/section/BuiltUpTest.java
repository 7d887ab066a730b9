package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.fault.ModelException;

class BuiltUpTest {
  private static final double EXACT = 1e-9;
  private static final BuiltUp.Channel CHANNEL = BuiltUp.channel(mm(80), mm(40), mm(3), mm(3));
  private static final BuiltUp.Tube TUBE = BuiltUp.tube(mm(80), mm(40), mm(3));

  static List<Section> someOfEachKind() {
    return Shapes.someOfEachKind();
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void every_shape_has_the_area_and_stiffness_of_its_outline_as_a_fine_polygon(Section section) {
    FinePolygon fine = new FinePolygon(section.outline());
    Properties p = section.properties();
    assertEquals(1, fine.area() / p.area(), 1e-4);
    assertEquals(1, fine.iy() / p.iy(), 1e-4);
    assertEquals(1, fine.iz() / p.iz(), 1e-4);
    assertEquals(0, (fine.iyz() - p.iyz()) / (p.iy() + p.iz()), 1e-4);
  }

  @Test
  void a_plate_as_high_as_the_channel_is_the_boxed_channel() {
    Section boxed = Section.boxedChannel(mm(80), mm(40), mm(3), mm(3));
    same(boxed.properties(), CHANNEL.platedOn(mm(80), mm(3)).properties());
    assertEquals("channel 80x40x3 with plate 80x3 set on", CHANNEL.platedOn(mm(80), mm(3)).name());
  }

  /** The same steel in the same places: only the seam lies elsewhere. */
  @Test
  void a_plate_set_in_is_a_plate_set_on_a_channel_that_is_shorter_by_the_plate() {
    Section in = CHANNEL.platedIn(mm(3));
    Section on = Section.boxedChannel(mm(80), mm(37), mm(3), mm(3));
    same(on.properties(), in.properties());
    assertEquals("channel 80x40x3 with plate 74x3 set in", in.name());
  }

  private static void same(Properties one, Properties other) {
    assertEquals(one.area(), other.area(), EXACT * one.area());
    assertEquals(one.iy(), other.iy(), EXACT * one.iy());
    assertEquals(one.iz(), other.iz(), EXACT * one.iz());
    assertEquals(one.it(), other.it(), EXACT * one.it());
    assertEquals(one.wply(), other.wply(), EXACT * one.wply());
    assertEquals(one.wplz(), other.wplz(), EXACT * one.wplz());
    assertEquals(one.shearY(), other.shearY(), EXACT * one.shearY());
    assertEquals(one.shearZ(), other.shearZ(), EXACT * one.shearZ());
    assertEquals(one.shearCentreY(), other.shearCentreY(), EXACT);
    assertEquals(one.welz(), other.welz(), EXACT * one.welz());
  }

  @Test
  void a_plate_that_stands_over_adds_its_overhang() {
    Section flush = CHANNEL.platedOn(mm(80), mm(3));
    Section over = CHANNEL.platedOn(mm(100), mm(3));
    assertEquals(60e-6, over.properties().area() - flush.properties().area(), 1e-12);
    assertEquals(
        3 * (1e6 - 512e3) / 12 * 1e-12,
        over.properties().iy() - flush.properties().iy(),
        1e-9 * over.properties().iy());
    assertEquals(
        List.of("left plate 74.0", "top left plate 10.0", "bottom left plate 10.0"),
        over.walls().stream()
            .filter(wall -> wall.name().endsWith("plate"))
            .map(
                wall ->
                    String.format(
                        java.util.Locale.ROOT, "%s %.1f", wall.name(), wall.width() * 1e3))
            .toList());
  }

  @Test
  void two_channels_toe_to_toe_are_one_tube_of_both() {
    Section box = CHANNEL.toeToToe();
    Section tube = Section.rectangularTube(mm(80), mm(80), mm(3), mm(6));
    same(tube.properties(), box.properties());
    assertEquals("2 x channel 80x40x3 toe to toe", box.name());
    assertEquals(0.068, box.walls().get(0).width(), EXACT);
    assertEquals(Torsion.CLOSED, box.torsion());
  }

  @Test
  void a_fastened_sleeve_adds_its_own_stiffness_in_every_way() {
    Properties sleeved = TUBE.sleeved(mm(70), mm(30), mm(3)).properties();
    Properties outer = Section.rectangularTube(mm(80), mm(40), mm(3)).properties();
    Properties inner = Section.rectangularTube(mm(70), mm(30), mm(3)).properties();
    assertEquals(outer.area() + inner.area(), sleeved.area(), EXACT * sleeved.area());
    assertEquals(outer.iy() + inner.iy(), sleeved.iy(), EXACT * sleeved.iy());
    assertEquals(outer.iz() + inner.iz(), sleeved.iz(), EXACT * sleeved.iz());
    assertEquals(outer.it() + inner.it(), sleeved.it(), EXACT * sleeved.it());
    assertEquals(outer.wply() + inner.wply(), sleeved.wply(), 1e-6 * sleeved.wply());
    assertEquals(0, Math.hypot(sleeved.shearCentreY(), sleeved.shearCentreZ()), EXACT);
  }

  @Test
  void a_round_sleeve_that_fills_the_bore_makes_a_thicker_tube() {
    Section sleeved = BuiltUp.roundTube(mm(60), mm(3)).sleeved(mm(54), mm(3));
    Section thick = Section.roundTube(mm(60), mm(6));
    Properties p = sleeved.properties();
    assertEquals(thick.properties().iy(), p.iy(), EXACT * p.iy());
    assertEquals(thick.properties().it(), p.it(), EXACT * p.it());
    assertEquals(thick.properties().wply(), p.wply(), EXACT * p.wply());
    assertEquals("CHS 60x3 with sleeve CHS 54x3", sleeved.name());
    double torque = thick.points().get(0).perT();
    assertEquals(torque, sleeved.points().get(0).perT(), EXACT * torque);
  }

  /** As the tube with a wall that is thicker under the plate; the weld lets nothing slip. */
  @Test
  void a_plate_on_a_tube_counts_in_bending_by_the_parallel_axis_theorem() {
    Section plated = TUBE.plated(mm(28), mm(4));
    Properties tube = Section.rectangularTube(mm(80), mm(40), mm(3)).properties();
    double plate = 28e-3 * 4e-3;
    double area = tube.area() + plate;
    double apart = 42e-3;
    double iy = tube.iy() + 28e-3 * 64e-9 / 12 + tube.area() * plate / area * apart * apart;
    Properties p = plated.properties();
    assertEquals(area, p.area(), EXACT * area);
    assertEquals(iy, p.iy(), EXACT * iy);
    assertEquals(tube.iz() + 4e-3 * Math.pow(28e-3, 3) / 12, p.iz(), EXACT * p.iz());
    assertTrue(p.it() > 1.05 * tube.it() && p.it() < 1.25 * tube.it(), "It " + p.it());
    assertEquals("RHS 80x40x3 with plate 28x4", plated.name());
  }

  /** Two walls of t, welded along both edges, twist like one of 2t: 2wt³/3 and the flow between. */
  @Test
  void a_doubled_wall_twists_like_a_thick_one() {
    double w = 0.5;
    double t = 0.002;
    Spot a = Spot.ORIGIN;
    Spot b = new Spot(w, 0);
    Spot c = new Spot(0, t);
    Spot d = new Spot(w, t);
    double it =
        new ThinWalls(
                List.of(
                    new Strip(new Line(a, b), t),
                    new Strip(new Line(c, d), t),
                    Strip.weld(new Line(a, c), t),
                    Strip.weld(new Line(b, d), t)))
            .torsionConstant();
    assertEquals(1, it / (w * Math.pow(2 * t, 3) / 3), 0.01);
  }

  @Test
  void a_welded_tee_is_two_rectangles() {
    Section tee = BuiltUp.tee(mm(60), mm(50), mm(4), mm(6));
    double web = 54 * 4;
    double flange = 50 * 6;
    double apart = 30;
    double iy =
        4 * Math.pow(54, 3) / 12 + 50 * 216 / 12.0 + web * flange / (web + flange) * apart * apart;
    assertEquals(web + flange, tee.properties().area() * 1e6, 1e-9);
    assertEquals(iy, tee.properties().iy() * 1e12, 1e-6 * iy);
    double shearCentre = tee.properties().shearCentreZ() * 1e3;
    double centroid = web * 30 / (web + flange);
    assertEquals(centroid, shearCentre, 1e-9, "the shear centre lies in the flange's middle");
    assertEquals("welded tee 60x50x4x6", tee.name());
  }

  @Test
  void boxes_and_sleeves_fit_a_flat_frame_plates_on_top_only_on_their_side() {
    Section patched = TUBE.plated(mm(28), mm(4));
    List<Section> fit =
        List.of(
            CHANNEL.platedOn(mm(100), mm(4)),
            CHANNEL.platedIn(mm(4)),
            CHANNEL.toeToToe(),
            TUBE.sleeved(mm(70), mm(30), mm(3)),
            patched.turned(),
            BuiltUp.tee(mm(60), mm(50), mm(4), mm(6)).turned(),
            FoldedProfile.of(mm(2), mm(2)).topHat(mm(40), mm(50), mm(90)).turned(),
            FoldedProfile.of(mm(2), mm(3)).lippedChannel(mm(80), mm(40), mm(12)),
            Shapes.upn80());
    fit.forEach(s -> assertEquals(Optional.empty(), s.unfitForFlatFrame(), s.name()));
    assertEquals(outOfPlane("1.62 mm"), patched.unfitForFlatFrame().orElseThrow());
  }

  @Test
  void tees_hats_and_zeds_are_unfit_for_a_flat_frame() {
    Section hat = FoldedProfile.of(mm(2), mm(2)).topHat(mm(40), mm(50), mm(90));
    assertEquals(
        outOfPlane("12.6 mm"),
        BuiltUp.tee(mm(60), mm(50), mm(4), mm(6)).unfitForFlatFrame().orElseThrow());
    assertEquals(outOfPlane("32.6 mm"), hat.unfitForFlatFrame().orElseThrow());
    String zed =
        FoldedProfile.of(mm(3), mm(3)).zed(mm(80), mm(40)).unfitForFlatFrame().orElseThrow();
    assertTrue(zed.startsWith("its principal axes stand"), zed);
    String gutter = Shapes.gutter().unfitForFlatFrame().orElseThrow();
    assertTrue(gutter.startsWith("its principal axes stand"), gutter);
  }

  private static String outOfPlane(String distance) {
    return "its shear centre lies "
        + distance
        + " out of the frame's plane; bending would twist it, which a flat frame cannot follow;"
        + " turn it by a quarter so that its axis of symmetry lies in the plane, as a channel's"
        + " does with its web upright, or box it";
  }

  @Test
  void parts_that_do_not_fit_are_refused() {
    refused(
        "plate 70.00 mm high does not reach over the middles of both toes of channel 80x40x3; it"
            + " must be at least 77.00 mm high",
        () -> CHANNEL.platedOn(mm(70), mm(4)));
    refused("plate thickness 0 mm is not above zero", () -> CHANNEL.platedOn(mm(80), mm(0)));
    refused("plate height -1.000 mm is not above zero", () -> CHANNEL.platedOn(mm(-1), mm(4)));
    refused("plate thickness -3.000 mm is not above zero", () -> CHANNEL.platedIn(mm(-3)));
    refused(
        "plate 36.00 mm thick finds no flat part of the flanges in channel 80x40x3, which leaves"
            + " 34.00 mm between toes and bends; it must be thinner",
        () -> CHANNEL.platedIn(mm(36)));
    refused(
        "plate 36.00 mm thick finds no flat part of the flanges in channel 80x40x3, which leaves"
            + " 33.00 mm between toes and bends; it must be thinner",
        () -> BuiltUp.channel(mm(80), mm(40), mm(3), mm(4)).platedIn(mm(36)));
    RolledWalls walls = RolledWalls.of(mm(4), mm(7), mm(10));
    refused(
        "plate 37.00 mm thick finds no flat part of the flanges in rolled channel 80x50x4x7, which"
            + " leaves 36.00 mm between toes and bends; it must be thinner",
        () -> BuiltUp.rolledChannel(mm(80), mm(50), walls).platedIn(mm(37)));
    refused(
        "sleeve RHS 75x34x3, 75.00 mm by 34.00 mm with corners of 6.000 mm, does not go into RHS"
            + " 80x40x3, whose bore is 74.00 mm by 34.00 mm with corners of 3.000 mm",
        () -> TUBE.sleeved(mm(75), mm(34), mm(3)));
    refused(
        "sleeve RHS 74x34x1, 74.00 mm by 34.00 mm with corners of 2.000 mm, does not go into RHS"
            + " 80x40x3, whose bore is 74.00 mm by 34.00 mm with corners of 3.000 mm",
        () -> TUBE.sleeved(mm(74), mm(34), mm(1)));
    refused(
        "sleeve CHS 55x3 does not go into CHS 60x3, whose bore is 54.00 mm",
        () -> BuiltUp.roundTube(mm(60), mm(3)).sleeved(mm(55), mm(3)));
    refused(
        "wall 15.00 mm leaves no bore in a tube of 70.00 mm by 30.00 mm; the wall must stay below"
            + " 15.00 mm",
        () -> TUBE.sleeved(mm(70), mm(30), mm(15)));
    refused(
        "plate 30.00 mm wide stands over the rounded corners of RHS 80x40x3, whose flat face is"
            + " 28.00 mm wide; it must not be wider",
        () -> TUBE.plated(mm(30), mm(4)));
    refused("plate width 0 mm is not above zero", () -> TUBE.plated(mm(0), mm(4)));
    refused(
        "tee height 6.000 mm leaves no web below a flange of 6.000 mm; it must exceed it",
        () -> BuiltUp.tee(mm(6), mm(50), mm(4), mm(6)));
    refused(
        "tee width 4.000 mm leaves no flange beside a web of 4.000 mm; it must exceed it",
        () -> BuiltUp.tee(mm(60), mm(4), mm(4), mm(6)));
    refused(
        "rolled tee 20.00 mm by 20.00 mm leaves nothing flat beside fillets and toes of a thickness"
            + " of 6.000 mm; both must exceed 24.00 mm",
        () -> Section.rolledTee(mm(20), mm(6)));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }

  @Test
  void a_rolled_tee_of_four_thicknesses_either_way_is_refused() {
    refused(
        "rolled tee 24.00 mm by 30.00 mm leaves nothing flat beside fillets and toes of a thickness"
            + " of 6.000 mm; both must exceed 24.00 mm",
        () -> new Tee(0.024, 0.03, 0.006, 0.006).rolled());
    refused(
        "rolled tee 30.00 mm by 24.00 mm leaves nothing flat beside fillets and toes of a thickness"
            + " of 6.000 mm; both must exceed 24.00 mm",
        () -> new Tee(0.03, 0.024, 0.006, 0.006).rolled());
  }
}
