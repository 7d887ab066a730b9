package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;

class FoldedProfileTest {
  private static final double EXACT = 1e-9;
  private static final FoldedProfile SHEET = FoldedProfile.of(mm(3), mm(3));

  @Test
  void two_bends_make_the_folded_channel() {
    Section channel = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
    Section folded =
        SHEET
            .heading(deg(180))
            .leg(mm(40))
            .bend(deg(90))
            .leg(mm(80))
            .bend(deg(90))
            .leg(mm(40))
            .section("channel 80x40x3");
    assertSame(channel.properties(), folded.properties());
    assertEquals(channel.points().size(), folded.points().size());
    assertEquals("top left leg 1", folded.walls().get(0).name());
    assertEquals(0.034, folded.walls().get(0).width(), EXACT);
    assertEquals(0.068, folded.walls().get(1).width(), EXACT);
  }

  @Test
  void the_first_leg_runs_left_and_a_bend_above_zero_turns_it_up() {
    Section angle = SHEET.leg(mm(40)).bend(deg(90)).leg(mm(60)).section("angle");
    double left = angle.points().stream().mapToDouble(StressPoint::y).max().orElse(0);
    double right = -angle.points().stream().mapToDouble(StressPoint::y).min().orElse(0);
    assertTrue(left < right, "the upright leg stands on the left");
    assertTrue(angle.properties().iyz() > 0, "it runs from bottom right to top left");
  }

  private static void assertSame(Properties one, Properties other) {
    assertEquals(one.area(), other.area(), EXACT * one.area());
    assertEquals(one.iy(), other.iy(), EXACT * one.iy());
    assertEquals(one.iz(), other.iz(), EXACT * one.iz());
    assertEquals(one.it(), other.it(), EXACT * one.it());
    assertEquals(one.wply(), other.wply(), EXACT * one.wply());
    assertEquals(one.wplz(), other.wplz(), EXACT * one.wplz());
    assertEquals(one.shearZ(), other.shearZ(), EXACT * one.shearZ());
    assertEquals(one.shearCentreY(), other.shearCentreY(), EXACT);
  }

  @Test
  void a_bend_that_is_not_square_takes_its_setback_from_both_legs() {
    double setback = 6 * Math.tan(Math.toRadians(30));
    Section bent = SHEET.leg(mm(30)).bend(deg(60)).leg(mm(50)).section("bent strip");
    assertEquals(30 - setback, bent.walls().get(0).width() * 1e3, 1e-9);
    assertEquals(50 - setback, bent.walls().get(1).width() * 1e3, 1e-9);
    double middle = 80 - 2 * setback + Math.toRadians(60) * 4.5;
    assertEquals(3 * middle, bent.properties().area() * 1e6, 1e-9);
  }

  @Test
  void a_hem_is_measured_to_the_outside_of_its_bend() {
    FoldedProfile sheet = FoldedProfile.of(mm(1), mm(0.5));
    Section hem = sheet.leg(mm(30)).bend(deg(180)).leg(mm(12)).section("hemmed edge");
    double[] levels =
        hem.outline().loops().get(0).stream()
            .flatMap(piece -> piece.reaches().stream())
            .mapToDouble(Spot::y)
            .sorted()
            .toArray();
    double start = levels[0];
    double reach = levels[levels.length - 1];
    assertEquals(0.030, reach - start, 1e-9);
  }

  /** Brims, walls and crown as rectangles on their centre lines: a thin sheet, bends of no size. */
  @Test
  void a_thin_top_hat_is_a_sum_of_rectangles() {
    double t = 1e-3;
    Section hat = FoldedProfile.of(mm(1), mm(0)).topHat(mm(41), mm(51), mm(90));
    Properties p = hat.properties();
    double area = (2 * 20 + 50 + 2 * 40) * 1e-3 * t;
    double first = (50 * 40 + 2 * 40 * 20) * 1e-6 * t;
    double second = (50 * 40 * 40 + 2 * 40 * 40 * 40 / 3.0) * 1e-9 * t - first * first / area;
    double across =
        (50 * 50 * 50 / 12.0 + 2 * 40 * 25 * 25 + 2 * (45 * 45 * 45 - 25 * 25 * 25) / 3.0)
            * 1e-9
            * t;
    assertEquals(1, p.area() / area, 0.02);
    assertEquals(1, p.iy() / second, 0.02);
    assertEquals(1, p.iz() / across, 0.02);
    assertEquals(0, p.iyz() / p.iy(), EXACT);
    assertEquals(0, p.shearCentreY(), EXACT);
    assertTrue(p.shearCentreZ() > 0, "above the centroid, near the crown");
    assertEquals("top-hat 41x51x90x1", hat.name());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void a_mirrored_fold_has_the_same_properties(long seed) {
    Random random = new Random(seed);
    double[] bends = new double[3];
    double[] legs = new double[4];
    for (int i = 0; i < 4; i++) {
      legs[i] = 20 + 40 * random.nextDouble();
    }
    for (int i = 0; i < 3; i++) {
      bends[i] = 70 * (2 * random.nextDouble() - 1);
    }
    Section one = profile(legs, bends, 1);
    Section other = profile(legs, bends, -1);
    Properties p = one.properties();
    Properties q = other.properties();
    assertEquals(p.area(), q.area(), EXACT * p.area());
    assertEquals(p.iy(), q.iy(), EXACT * p.iy());
    assertEquals(p.iz(), q.iz(), EXACT * p.iz());
    assertEquals(p.iyz(), -q.iyz(), EXACT * (p.iz() + p.iy()));
    assertEquals(p.it(), q.it(), EXACT * p.it());
    assertEquals(p.wply(), q.wply(), EXACT * p.wply());
    assertEquals(p.shearCentreZ(), -q.shearCentreZ(), EXACT);
    FinePolygon fine = new FinePolygon(one.outline());
    assertEquals(1, fine.area() / p.area(), 1e-5);
    assertEquals(1, fine.iy() / p.iy(), 1e-5);
    assertEquals(1, fine.iz() / p.iz(), 1e-5);
    assertEquals(0, (fine.iyz() - p.iyz()) / (p.iy() + p.iz()), 1e-5);
  }

  private static Section profile(double[] legs, double[] bends, int hand) {
    FoldedProfile profile = FoldedProfile.of(mm(2), mm(3)).leg(mm(legs[0]));
    for (int i = 0; i < bends.length; i++) {
      profile = profile.bend(deg(hand * bends[i])).leg(mm(legs[i + 1]));
    }
    return profile.section("random fold");
  }

  @Test
  void a_lip_holds_its_flange_only_if_it_is_a_fifth_of_it() {
    FoldedProfile sheet = FoldedProfile.of(mm(2), mm(2));
    assertEquals(
        List.of("OUTSTAND", "INTERNAL", "INTERNAL", "INTERNAL", "OUTSTAND"),
        edges(sheet.lippedChannel(mm(100), mm(50), mm(12))));
    assertEquals(
        List.of("OUTSTAND", "OUTSTAND", "INTERNAL", "OUTSTAND", "OUTSTAND"),
        edges(sheet.lippedChannel(mm(100), mm(50), mm(9))));
  }

  private static List<String> edges(Section section) {
    return section.walls().stream().map(wall -> wall.edge().name()).toList();
  }

  @Test
  void a_zed_balances_about_its_middle() {
    Section zed = FoldedProfile.of(mm(3), mm(3)).zed(mm(80), mm(40));
    Properties p = zed.properties();
    assertEquals(0, Math.hypot(p.shearCentreY(), p.shearCentreZ()), 1e-9);
    assertTrue(p.iyz() < 0, "upper flange to the right, lower to the left");
    assertEquals(
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).properties().iy(),
        p.iy(),
        EXACT * p.iy());
    assertEquals("zed 80x40x3", zed.name());
  }

  @Test
  void a_fold_that_crosses_itself_is_refused() {
    refused(
        "folded profile curl crosses itself: leg 1 runs into leg 4; shorten a leg or change a bend",
        () ->
            SHEET
                .leg(mm(60))
                .bend(deg(90))
                .leg(mm(40))
                .bend(deg(90))
                .leg(mm(40))
                .bend(deg(90))
                .leg(mm(60))
                .section("curl"));
    refused(
        "folded profile double crosses itself: leg 1 runs into leg 3; shorten a leg or change a"
            + " bend",
        () ->
            FoldedProfile.of(mm(3), mm(0))
                .leg(mm(60))
                .bend(deg(150))
                .leg(mm(30))
                .bend(deg(150))
                .leg(mm(60))
                .section("double"));
  }

  @Test
  void ends_that_meet_are_refused_because_an_unwelded_seam_slips() {
    refused(
        "the ends of folded profile box meet; a seam that is not welded slips, so the cell is open:"
            + " leave a gap there, or take a tube or a boxed channel for a welded one",
        () -> box(20).section("box"));
  }

  @Test
  void a_box_with_a_slit_is_open() {
    Section slit = box(19.9).section("slit box");
    Section tube = Section.rectangularTube(mm(40), mm(40), mm(3));
    assertEquals(Torsion.OPEN, slit.torsion());
    assertEquals(1, slit.properties().iy() / tube.properties().iy(), 0.01);
    double open = slit.properties().area() * 9e-6 / 3;
    assertEquals(open, slit.properties().it(), EXACT * open);
    assertTrue(tube.properties().it() > 50 * slit.properties().it());
  }

  private static FoldedProfile box(double last) {
    return SHEET
        .leg(mm(20))
        .bend(deg(90))
        .leg(mm(40))
        .bend(deg(90))
        .leg(mm(40))
        .bend(deg(90))
        .leg(mm(40))
        .bend(deg(90))
        .leg(mm(last));
  }

  @Test
  void what_cannot_be_folded_is_refused() {
    refused("sheet thickness 0 mm is not above zero", () -> FoldedProfile.of(mm(0), mm(3)));
    refused("inside bend radius -1.000 mm is below zero", () -> FoldedProfile.of(mm(3), mm(-1)));
    refused("leg 1 0 mm is not above zero", () -> SHEET.leg(mm(0)));
    refused(
        "leg 2 follows leg 1 without a bend; bend first, or give one longer leg",
        () -> SHEET.leg(mm(40)).leg(mm(40)));
    refused("bend 1 has no leg before it; add a leg first", () -> SHEET.bend(deg(90)));
    refused(
        "bend 1 turns by 190.0°; a bend turns by more than 0 and up to 180°, either way",
        () -> SHEET.leg(mm(40)).bend(deg(190)));
    refused(
        "bend 1 turns by 0°; a bend turns by more than 0 and up to 180°, either way",
        () -> SHEET.leg(mm(40)).bend(deg(0)));
    refused(
        "folded profile strip has 1 legs and 0 bends; it needs two legs or more, a bend between"
            + " each two and none at its end",
        () -> SHEET.leg(mm(40)).section("strip"));
    refused(
        "folded profile hook has 2 legs and 2 bends; it needs two legs or more, a bend between each"
            + " two and none at its end",
        () -> SHEET.leg(mm(40)).bend(deg(90)).leg(mm(40)).bend(deg(90)).section("hook"));
    refused(
        "leg 2 of folded profile step, 12.00 mm, leaves nothing flat beside its bends of wall 3.000"
            + " mm and inside radius 3.000 mm; it must exceed 12.00 mm",
        () ->
            SHEET.leg(mm(40)).bend(deg(90)).leg(mm(12)).bend(deg(-90)).leg(mm(40)).section("step"));
    refused(
        "width over the brims 50.00 mm leaves no brim beside a crown of 50.00 mm; it must exceed"
            + " the crown",
        () -> SHEET.topHat(mm(40), mm(50), mm(50)));
    refused(
        "1 legs and 3 bends do not follow each other in turn; a folded profile goes leg, bend, leg",
        () ->
            new FoldedProfile(
                3e-3, 3e-3, 0, List.of(0.04), new ArrayList<>(List.of(1.0, 1.0, 1.0))));
    refused(
        "a section has no name; give it one",
        () -> SHEET.leg(mm(40)).bend(deg(90)).leg(mm(40)).section(" "));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }

  /**
   * Legs of 30 and 40 outside, 2 thick, folded by 120° with an inside radius of 4: a bend beyond a
   * right angle takes r + t = 6 of each, so flats of 24 and 34 and an arc of 5·2π/3 are left.
   */
  @Test
  void a_bend_beyond_a_right_angle_is_one_arc_of_sheet() {
    Section hook =
        FoldedProfile.of(mm(2), mm(4)).leg(mm(30)).bend(deg(120)).leg(mm(40)).section("hook");
    double length = 24 + 34 + 5 * 2 * Math.PI / 3;
    assertEquals(2e-6 * length, hook.properties().area(), 1e-12);
    // From the first leg's far end: 24 along, then the arc's chord, then 34 at 120°.
    double y = 24 + 5 * Math.sin(2 * Math.PI / 3) + 34 * Math.cos(2 * Math.PI / 3);
    double z = 5 * (1 - Math.cos(2 * Math.PI / 3)) + 34 * Math.sin(2 * Math.PI / 3);
    Wall first = hook.walls().get(0);
    Wall last = hook.walls().get(1);
    Spot across = last.to().minus(first.from());
    assertEquals(Math.hypot(y, z) * 1e-3, across.size(), 1e-9);
  }
}
