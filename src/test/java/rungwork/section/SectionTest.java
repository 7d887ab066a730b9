package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

class SectionTest {
  private static final double ROUNDING = 1e-9;
  private static final Section CHANNEL = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));

  static List<Section> someOfEachKind() {
    return Shapes.someOfEachKind();
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void four_quarter_turns_or_two_mirror_images_give_the_section_back(Section section) {
    Section once = section.turned();
    same(once, once.turned().turned().turned().turned());
    same(once, once.mirrored().mirrored());
  }

  private static void same(Section one, Section other) {
    assertEquals(one.name(), other.name());
    assertEquals(one.properties(), other.properties());
    assertEquals(one.points(), other.points());
    assertEquals(one.walls(), other.walls());
    assertEquals(one.outline().reach(Spot::y), other.outline().reach(Spot::y), ROUNDING);
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void a_turned_section_keeps_its_invariants(Section section) {
    for (Section other : List.of(section.turned(), section.mirrored())) {
      Properties p = section.properties();
      Properties q = other.properties();
      double polar = p.iy() + p.iz();
      assertEquals(p.area(), q.area());
      assertEquals(polar, q.iy() + q.iz(), ROUNDING * polar);
      assertEquals(
          p.iy() * p.iz() - p.iyz() * p.iyz(),
          q.iy() * q.iz() - q.iyz() * q.iyz(),
          ROUNDING * polar * polar);
      assertEquals(p.it(), q.it());
      assertEquals(
          Math.hypot(p.shearCentreY(), p.shearCentreZ()),
          Math.hypot(q.shearCentreY(), q.shearCentreZ()));
    }
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void the_properties_of_a_turned_section_are_those_of_its_turned_outline(Section section) {
    for (Section other : List.of(section.turned(), section.mirrored())) {
      Moments moments = other.outline().moments();
      Properties p = other.properties();
      assertEquals(p.area(), moments.area(), ROUNDING * p.area());
      assertEquals(p.iy(), moments.zz(), ROUNDING * p.iy());
      assertEquals(p.iz(), moments.yy(), ROUNDING * p.iz());
      assertEquals(p.iyz(), moments.yz(), ROUNDING * p.iy());
    }
  }

  @Test
  void a_tube_turned_on_its_side_is_the_tube_drawn_that_way() {
    Section turned = Section.rectangularTube(mm(80), mm(40), mm(3)).turned();
    Section drawn = Section.rectangularTube(mm(40), mm(80), mm(3));
    for (StressPoint point : turned.points()) {
      StressPoint twin =
          drawn.points().stream()
              .filter(p -> Math.hypot(p.y() - point.y(), p.z() - point.z()) < 1e-9)
              .findFirst()
              .orElseThrow();
      assertEquals(point.name(), twin.name());
      assertEquals(point.perVy(), twin.perVy(), 1e-6);
      assertEquals(point.perVz(), twin.perVz(), 1e-6);
      assertEquals(point.perT(), twin.perT(), 1e-6);
    }
    assertEquals("RHS 80x40x3 turned", turned.name());
  }

  @Test
  void a_channel_for_the_other_hand_has_its_shear_centre_on_the_other_side() {
    assertTrue(CHANNEL.properties().shearCentreY() < 0);
    assertEquals(
        -CHANNEL.properties().shearCentreY(), CHANNEL.mirrored().properties().shearCentreY());
  }

  @Test
  void equal_sections_are_equal() {
    assertEquals(CHANNEL, Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)));
  }

  @Test
  void open_walls_do_not_know_their_torsion() {
    assertFalse(CHANNEL.torsion().known());
    assertFalse(Section.angle(mm(50), mm(50), mm(5), mm(7)).torsion().known());
    assertTrue(Section.boxedChannel(mm(80), mm(40), mm(3), mm(3)).torsion().known());
    assertTrue(Section.squareTube(mm(50), mm(3)).torsion().known());
    assertTrue(Section.flatBar(mm(50), mm(5)).torsion().known());
    assertFalse(
        new Section("stated", CHANNEL.properties(), List.of(), List.of()).torsion().known());
  }

  @Test
  void boxing_a_channel_makes_it_hundreds_of_times_as_stiff_in_torsion() {
    Section boxed = Section.boxedChannel(mm(80), mm(40), mm(3), mm(3));
    double ratio = boxed.properties().it() / CHANNEL.properties().it();
    assertTrue(ratio > 300 && ratio < 400, "ratio " + ratio);
  }

  @Test
  void tubes_bars_and_upright_channels_fit_a_flat_frame() {
    List<Section> fit =
        List.of(
            Section.rectangularTube(mm(80), mm(40), mm(3)).turned(),
            Section.roundTube(mm(60.3), mm(3.2)),
            Section.flatBar(mm(40), mm(8)),
            CHANNEL,
            CHANNEL.mirrored(),
            Section.boxedChannel(mm(80), mm(40), mm(3), mm(3)),
            Section.rolledChannel(mm(80), mm(50), RolledWalls.of(mm(4), mm(7), mm(10))));
    fit.forEach(section -> assertEquals(Optional.empty(), section.unfitForFlatFrame()));
  }

  @Test
  void a_channel_laid_flat_is_unfit_for_a_flat_frame() {
    assertEquals(
        "its shear centre lies 24.8 mm out of the frame's plane; bending would twist it, which a"
            + " flat frame cannot follow; turn it by a quarter so that its axis of symmetry lies in"
            + " the plane, as a channel's does with its web upright, or box it",
        CHANNEL.turned().unfitForFlatFrame().orElseThrow());
  }

  @Test
  void an_angle_is_unfit_for_a_flat_frame() {
    assertEquals(
        "its principal axes stand 45.0° off the frame's plane; bending in the plane would push it"
            + " out, which a flat frame cannot follow; use a tube, a flat bar or an upright"
            + " channel",
        Section.angle(mm(50), mm(50), mm(5), mm(7)).unfitForFlatFrame().orElseThrow());
  }

  @Test
  void a_section_reads_as_its_sizes_and_properties() {
    assertEquals(
        "RHS 80x40x3: A 6.608 cm², Iy 52.25 cm⁴, Iz 17.56 cm⁴, It 43.88 cm⁴, Wel,y 13.06 cm³, Wel,z"
            + " 8.778 cm³",
        Section.rectangularTube(mm(80), mm(40), mm(3)).toString());
  }

  @Test
  void walls_are_measured_flat() {
    assertEquals(
        List.of("left wall 71.0", "top wall 31.0", "right wall 71.0", "bottom wall 31.0"),
        measured(Section.rectangularTube(mm(80), mm(40), mm(3))));
    assertEquals(
        List.of("top left flange 34.0", "right web 68.0", "bottom left flange 34.0"),
        measured(CHANNEL));
    assertEquals(List.of("wall 60.3"), measured(Section.roundTube(mm(60.3), mm(3.2))));
    assertEquals(List.of(), measured(Section.flatBar(mm(40), mm(8))));
  }

  private static List<String> measured(Section section) {
    return section.walls().stream()
        .map(
            wall ->
                String.format(java.util.Locale.ROOT, "%s %.1f", wall.name(), wall.width() * 1e3))
        .toList();
  }

  @Test
  void sizes_that_are_not_above_zero_are_refused() {
    refused("tube height 0 mm is not above zero", () -> tube(0, 40, 3));
    refused("tube width -40.00 mm is not above zero", () -> tube(80, -40, 3));
    refused("tube wall 0 mm is not above zero", () -> tube(80, 40, 0));
    refused(
        "outside corner radius 0 mm is not above zero",
        () -> Section.rectangularTube(mm(80), mm(40), mm(3), mm(0)));
    refused("outside diameter -1.000 mm is not above zero", () -> Section.roundTube(mm(-1), mm(1)));
    refused("tube wall -1.000 mm is not above zero", () -> Section.roundTube(mm(30), mm(-1)));
    refused("bar diameter 0 mm is not above zero", () -> Section.roundBar(mm(0)));
    refused("bar height 0 mm is not above zero", () -> Section.flatBar(mm(0), mm(5)));
    refused("bar width 0 mm is not above zero", () -> Section.flatBar(mm(5), mm(0)));
    refused("channel depth 0 mm is not above zero", () -> channel(0, 40, 3, 3));
    refused("channel flange 0 mm is not above zero", () -> channel(80, 0, 3, 3));
    refused("channel wall 0 mm is not above zero", () -> channel(80, 40, 0, 3));
    refused("inside bend radius -1.000 mm is below zero", () -> channel(80, 40, 3, -1));
    refused("web thickness 0 mm is not above zero", () -> RolledWalls.of(mm(0), mm(7), mm(10)));
    refused("flange thickness 0 mm is not above zero", () -> RolledWalls.of(mm(4), mm(0), mm(10)));
    refused("root radius -1.000 mm is below zero", () -> RolledWalls.of(mm(4), mm(7), mm(-1)));
    refused("toe radius -4.000 mm is below zero", () -> taperedChannel(80, 45, -4));
    refused("angle height 0 mm is not above zero", () -> angle(0, 50, 5, 7));
    refused("angle width 0 mm is not above zero", () -> angle(50, 0, 5, 7));
    refused("angle wall 0 mm is not above zero", () -> angle(50, 50, 0, 7));
    refused("root radius -7.000 mm is below zero", () -> angle(50, 50, 5, -7));
  }

  @Test
  void a_wall_that_leaves_no_bore_is_refused() {
    refused(
        "wall 13.00 mm leaves no bore in a tube of 80.00 mm by 25.00 mm; the wall must stay below"
            + " 12.50 mm",
        () -> tube(80, 25, 13));
    refused(
        "wall 13.00 mm leaves no bore in a tube of 25.00 mm outside diameter; the wall must stay"
            + " below 12.50 mm",
        () -> Section.roundTube(mm(25), mm(13)));
  }

  @Test
  void corners_that_do_not_fit_are_refused() {
    refused(
        "corners of 8.000 mm outside and 4.000 mm inside radius do not fit a tube of 40.00 mm by"
            + " 15.00 mm with a wall of 4.000 mm; state an outside radius up to 7.500 mm",
        () -> tube(40, 15, 4));
    refused(
        "corners of 30.00 mm outside and 27.00 mm inside radius do not fit a tube of 80.00 mm by"
            + " 40.00 mm with a wall of 3.000 mm; state an outside radius up to 20.00 mm",
        () -> Section.rectangularTube(mm(80), mm(40), mm(3), mm(30)));
  }

  @Test
  void bends_and_fillets_that_leave_nothing_flat_are_refused() {
    refused(
        "channel flange 6.000 mm leaves nothing flat beside bends of wall 3.000 mm and inside"
            + " radius 3.000 mm; it must exceed 6.000 mm",
        () -> channel(80, 6, 3, 3));
    refused(
        "channel depth 12.00 mm leaves nothing flat beside bends of wall 3.000 mm and inside radius"
            + " 3.000 mm; it must exceed 12.00 mm",
        () -> Section.boxedChannel(mm(12), mm(40), mm(3), mm(3)));
    refused(
        "channel flange 14.00 mm leaves nothing flat beside walls and root fillets; it must exceed"
            + " 14.00 mm",
        () -> Section.rolledChannel(mm(80), mm(14), RolledWalls.of(mm(4), mm(7), mm(10))));
    refused(
        "channel depth 34.00 mm leaves nothing flat beside walls and root fillets; it must exceed"
            + " 34.00 mm",
        () -> Section.rolledChannel(mm(34), mm(50), RolledWalls.of(mm(4), mm(7), mm(10))));
    refused(
        "channel flange 17.00 mm leaves nothing flat beside walls and root fillets; it must exceed"
            + " 17.04 mm",
        () -> taperedChannel(80, 17, 4));
    refused(
        "channel flange 70.00 mm thins out to 5.200 mm at its toe, where a radius of 6.000 mm finds"
            + " no room; it must stay above 5.539 mm there",
        () -> taperedChannel(80, 70, 6));
    refused(
        "flange slope 0.6000 is steeper than rolled channels are; it must not exceed 0.5",
        () -> new RolledWalls.Taper(0.6, 0, RolledWalls.Place.HALF_THE_WIDTH));
    refused(
        "angle leg 15.00 mm leaves nothing flat beside wall 5.000 mm, root radius 7.000 mm and a"
            + " toe of half that radius; it must exceed 15.50 mm",
        () -> angle(50, 15, 5, 7));
    refused(
        "root radius 7.000 mm rounds the toes by more than the wall 3.000 mm; it must not exceed"
            + " 6.000 mm",
        () -> angle(50, 50, 3, 7));
  }

  @Test
  void a_section_without_a_name_is_refused() {
    refused(
        "a section has no name; give it one",
        () -> new Section(" ", CHANNEL.properties(), List.of(), List.of()));
  }

  private static void tube(double height, double width, double wall) {
    Section.rectangularTube(mm(height), mm(width), mm(wall));
  }

  private static void channel(double depth, double flange, double wall, double radius) {
    Section.foldedChannel(mm(depth), mm(flange), mm(wall), mm(radius));
  }

  private static void taperedChannel(double depth, double flange, double toe) {
    Section.rolledChannel(
        mm(depth), mm(flange), RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(toe)));
  }

  private static void angle(double height, double width, double wall, double root) {
    Section.angle(mm(height), mm(width), mm(wall), mm(root));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }

  @Test
  void the_torsion_modulus_is_a_torque_over_the_greatest_shear() {
    assertEquals(
        Math.PI * Math.pow(0.020, 3) / 16, Section.roundBar(mm(20)).torsionModulus(), 1e-12);
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    double drilled = tube.drilled("left wall", mm(11)).torsionModulus();
    assertEquals((71 - 11) / 71.0, drilled / tube.torsionModulus(), 0.01);
  }
}
