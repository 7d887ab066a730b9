package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

class BucklingTest {
  private static final Stock UNIT = new Stocks(1, 0.4).with(new Stocks.Shape(1e6, 1, 1, 1));
  private static final double EULER = Math.PI * Math.PI;

  /** What halving down to rounding and the stiff axis beside it leave [1]. */
  private static final double ROUNDING = 1e-8;

  private static Frame.Builder column() {
    return Frame.in(Plane.FRONT)
        .node("foot", new Point(0, 0, 0))
        .node("top", new Point(0, 0, 1))
        .beam(Beam.rigid("column", "foot", "top", UNIT));
  }

  private static Buckling pressed(Frame.Builder frame, String... tops) {
    Load[] loads =
        Stream.of(tops)
            .map(top -> new Load.AtNode(top, Wrench.force(0, 0, -1)))
            .toArray(Load[]::new);
    return Buckling.of(Solver.of(frame.build()).solve(LoadCase.of("pressed", loads)));
  }

  private static double lowest(Buckling buckling) {
    return Stream.of(buckling.inPlane(), buckling.outOfPlane())
        .flatMap(Optional::stream)
        .mapToDouble(CriticalLoad::factor)
        .min()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"free, 0.25", "guided, 1", "pinned, 2.045748521", "fixed, 4"})
  void a_fixed_column_buckles_as_the_end_of_its_top_allows(String top, double times) {
    Frame.Builder frame = column().support(Support.fixed("foot"));
    switch (top) {
      case "guided" -> frame.support(Support.holding("top", Freedom.RX, Freedom.RY));
      case "pinned" -> frame.support(Support.holding("top", Freedom.UX, Freedom.UY));
      case "fixed" ->
          frame.support(
              Support.holding("top", Freedom.UX, Freedom.UY, Freedom.RX, Freedom.RY, Freedom.RZ));
      default -> {}
    }
    Buckling buckling = pressed(frame, "top");
    CriticalLoad in = buckling.inPlane().orElseThrow();
    assertEquals(times * EULER, in.factor(), ROUNDING * times * EULER);
    assertEquals(
        times * EULER, buckling.outOfPlane().orElseThrow().factor(), ROUNDING * times * EULER);
    assertEquals(1 / Math.sqrt(times), in.effectiveLength("column").orElseThrow(), ROUNDING);
  }

  @Test
  void a_buckled_cantilever_is_a_quarter_of_a_cosine_wave() {
    CriticalLoad lowest =
        pressed(column().support(Support.fixed("foot")), "top").inPlane().orElseThrow();
    double top = lowest.shape("top").uy();
    assertEquals(1, Math.abs(top), 1e-12);
    assertEquals(1 - Math.cos(Math.PI / 4), lowest.middle("column").uy() / top, 1e-7);
    assertEquals(-Math.PI / 2, lowest.shape("top").rx() / top, 1e-7);
    assertEquals(0, lowest.shape("foot").uy(), 1e-12);
  }

  @Test
  void a_hinged_strut_buckles_between_its_hinges() {
    Set<Release> bending = Set.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING);
    Frame.Builder frame =
        Frame.in(Plane.FRONT)
            .node("foot", new Point(0, 0, 0))
            .node("top", new Point(0, 0, 1))
            .beam(Beam.rigid("strut", "foot", "top", UNIT).released(bending, bending))
            .support(Support.fixed("foot"))
            .support(
                Support.holding("top", Freedom.UX, Freedom.UY, Freedom.RX, Freedom.RY, Freedom.RZ));
    assertEquals(EULER, lowest(pressed(frame, "top")), ROUNDING * EULER);
  }

  @Test
  void a_turning_spring_at_the_foot_holds_by_its_stiffness() {
    double stiffness = 3;
    Frame.Builder frame =
        Frame.in(Plane.FRONT)
            .node("foot", new Point(0, 0, 0))
            .node("top", new Point(0, 0, 1))
            .beam(
                Beam.rigid("column", "foot", "top", UNIT)
                    .joined(
                        End.RIGID
                            .sprung(Release.IN_PLANE_BENDING, stiffness)
                            .sprung(Release.OUT_OF_PLANE_BENDING, stiffness),
                        End.RIGID))
            .support(Support.fixed("foot"));
    double factor = lowest(pressed(frame, "top"));
    double root = Math.sqrt(factor);
    assertEquals(stiffness, root * Math.tan(root), 1e-6);
  }

  @Test
  void a_short_column_with_shear_strain_buckles_as_engesser_has_it() {
    Stock soft = new Stocks(1, 0.4).with(new Stocks.Shape(30, 1, 1, 1));
    Frame.Builder frame =
        Frame.in(Plane.FRONT)
            .node("foot", new Point(0, 0, 0))
            .node("top", new Point(0, 0, 1))
            .beam(Beam.rigid("column", "foot", "top", soft).bending(Beam.Bending.WITH_SHEAR_STRAIN))
            .support(Support.fixed("foot"));
    double bending = EULER / 4;
    double expected = bending / (1 + bending / (0.4 * 30));
    assertEquals(expected, lowest(pressed(frame, "top")), ROUNDING * expected);
  }

  private static Frame.Builder portal(Support left, Support right) {
    return Frame.in(Plane.FRONT)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(0, 0, 1))
        .node("C", new Point(0, 1, 1))
        .node("D", new Point(0, 1, 0))
        .beam(Beam.rigid("left", "A", "B", UNIT))
        .beam(Beam.rigid("top", "B", "C", UNIT))
        .beam(Beam.rigid("right", "D", "C", UNIT))
        .support(left)
        .support(right);
  }

  private static Support hinge(String node) {
    return Support.holding(node, Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RY, Freedom.RZ);
  }

  @Test
  void a_portal_sways_long_before_its_columns_bow() {
    Support held = Support.holding("B", Freedom.UY);
    double sway =
        pressed(portal(hinge("A"), hinge("D")), "B", "C").inPlane().orElseThrow().factor();
    double bow =
        pressed(portal(hinge("A"), hinge("D")).support(held), "B", "C")
            .inPlane()
            .orElseThrow()
            .factor();
    double fixed =
        pressed(portal(Support.fixed("A"), Support.fixed("D")).support(held), "B", "C")
            .inPlane()
            .orElseThrow()
            .factor();
    assertEquals(1.8213, sway, 5e-5);
    assertEquals(12.894, bow, 5e-4);
    assertEquals(25.182, fixed, 5e-4);
  }

  @Test
  void only_a_beam_that_takes_part_has_an_effective_length() {
    CriticalLoad sway = pressed(portal(hinge("A"), hinge("D")), "B").inPlane().orElseThrow();
    assertTrue(sway.takesPart("left"));
    assertFalse(sway.takesPart("right"));
    assertFalse(sway.takesPart("top"));
    assertTrue(sway.effectiveLength("right").isEmpty());
    assertEquals(
        Math.PI / Math.sqrt(sway.factor()), sway.effectiveLength("left").orElseThrow(), 1e-6);
  }

  @Test
  void the_motion_is_told_in_the_users_names() {
    CriticalLoad sway = pressed(portal(hinge("A"), hinge("D")), "B", "C").inPlane().orElseThrow();
    assertEquals("in the frame's plane, node B moving along y most", sway.motion());
    assertEquals(
        "buckles at 1.821 times the load in the frame's plane, node B moving along y most",
        sway.toString());
    CriticalLoad bow =
        pressed(
                portal(hinge("A"), hinge("D"))
                    .support(Support.holding("B", Freedom.UY, Freedom.RX)),
                "B")
            .inPlane()
            .orElseThrow();
    assertEquals("in the frame's plane, the middle of beam left moving along y most", bow.motion());
  }

  /** Its shear centre lies off its centroid in the frame's plane: out of it, it also twists. */
  @Test
  void a_channel_that_takes_part_out_of_the_plane_lacks_its_warping_stiffness() {
    Stock channel = new Stocks(1, 0.4).eccentric(new Stocks.Shape(1e4, 1, 1, 1), 0.2);
    Frame.Builder frame =
        Frame.in(Plane.FRONT)
            .node("foot", new Point(0, 0, 0))
            .node("top", new Point(0, 0, 1))
            .beam(
                Beam.rigid("column", "foot", "top", channel)
                    .bending(Beam.Bending.WITHOUT_SHEAR_STRAIN))
            .support(Support.fixed("foot"));
    Buckling buckling = pressed(frame, "top");
    assertEquals(Optional.empty(), buckling.inPlane().orElseThrow().withoutWarping());
    assertEquals(
        Optional.of(
            "beam column would bend and twist at once with only Saint-Venant torsion against it;"
                + " its warping stiffness, which may be most of what it has, is left out; not"
                + " checked"),
        buckling.outOfPlane().orElseThrow().withoutWarping());
    Buckling tube = pressed(column().support(Support.fixed("foot")), "top");
    assertEquals(Optional.empty(), tube.outOfPlane().orElseThrow().withoutWarping());
  }

  @Test
  void without_compression_nothing_buckles() {
    Response pulled =
        Solver.of(column().support(Support.fixed("foot")).build())
            .solve(LoadCase.of("pull", new Load.AtNode("top", Wrench.force(0, 0.1, 1))));
    assertEquals(Optional.empty(), Buckling.of(pulled).inPlane());
    assertEquals("Buckling under pull: no beam is compressed", Buckling.of(pulled).toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void all_roots_of_a_finely_cut_space_frame_hold_none_lower(long seed) {
    CompressedFrames random = new CompressedFrames(seed);
    Frame frame = random.frame();
    Response linear = Solver.of(frame).solve(random.pushed(1));
    double dense = new GeometricStiffness(frame, linear.normalForces(1), 3).lowest();
    double counted = lowest(Buckling.of(linear));
    double either = Buckling.of(linear).lowest().orElseThrow().factor();
    assertEquals(counted, either, 1e-9 * counted, "seed " + seed);
    // Three cubic pieces a beam come out high by (κl)⁴/720 at most, some 5e-4 here.
    assertEquals(1, dense / counted, 1e-3, "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void nor_lower_in_a_frame_that_leaves_its_plane(long seed) {
    CompressedFrames random = new CompressedFrames(seed);
    Frame frame = new Lifted(seed, random.frame()).by(0.2);
    Response linear = Solver.of(frame).solve(random.pushed(1));
    double dense = new GeometricStiffness(frame, linear.normalForces(1), 3).lowest();
    Buckling buckling = Buckling.of(linear);
    double counted = buckling.lowest().orElseThrow().factor();
    assertEquals(1, dense / counted, 1e-3, "seed " + seed);
    assertEquals(counted, buckling.inPlane().orElseThrow().factor());
    assertEquals(counted, buckling.outOfPlane().orElseThrow().factor());
    String motion = buckling.lowest().orElseThrow().motion();
    assertTrue(motion.startsWith("in space, "), motion);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void cutting_beams_changes_no_critical_load(long seed) {
    CompressedFrames random = new CompressedFrames(seed);
    Frame frame = random.frame();
    LoadCase pushed = random.pushed(1);
    Frame cut = new Cutting(frame, 3).frame();
    Buckling whole = Buckling.of(Solver.of(frame).solve(pushed));
    Buckling pieces = Buckling.of(Solver.of(cut).solve(pushed));
    double in = whole.inPlane().orElseThrow().factor();
    double out = whole.outOfPlane().orElseThrow().factor();
    assertEquals(in, pieces.inPlane().orElseThrow().factor(), 1e-7 * in, "seed " + seed);
    assertEquals(out, pieces.outOfPlane().orElseThrow().factor(), 1e-7 * out, "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void half_the_load_has_twice_the_factor(long seed) {
    Frame frame = new CompressedFrames(seed).frame();
    CompressedFrames one = new CompressedFrames(seed);
    CompressedFrames half = new CompressedFrames(seed);
    double full = lowest(Buckling.of(Solver.of(frame).solve(one.pushed(1))));
    double twice = lowest(Buckling.of(Solver.of(frame).solve(half.pushed(0.5))));
    assertEquals(2 * full, twice, 1e-9 * twice, "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void the_count_of_critical_loads_never_falls_and_does_not_depend_on_cuts(long seed) {
    CompressedFrames random = new CompressedFrames(seed);
    Frame frame = random.frame();
    Response linear = Solver.of(frame).solve(random.pushed(1));
    double lowest = lowest(Buckling.of(linear));
    int[] before = {0, 0};
    for (double factor = 0.5 * lowest; factor < 60 * lowest; factor *= 1.37) {
      for (Action action : Action.of(frame)) {
        int whole = CriticalCount.of(linear, action, 1).below(factor);
        int pieces = CriticalCount.of(linear, action, 4).below(factor);
        assertEquals(whole, pieces, "seed " + seed + ", factor " + factor + " " + action);
        assertTrue(whole >= before[action.ordinal()], "seed " + seed);
        before[action.ordinal()] = whole;
      }
    }
    assertTrue(before[0] + before[1] > 10, "seed " + seed);
  }

  @Test
  void a_frame_that_nothing_holds_buckles_between_its_far_nodes() {
    Frame.Builder rod =
        Frame.in(Plane.PLAN)
            .node("tail", new Point(0, 0, 0))
            .node("nose", new Point(1, 0, 0))
            .beam(Beam.rigid("rod", "tail", "nose", UNIT));
    Response pushed =
        Solver.unsupported(rod.build())
            .solve(
                LoadCase.of(
                    "pushed",
                    new Load.AtNode("nose", Wrench.force(-1, 0, 0)),
                    new Load.AtNode("tail", Wrench.force(1, 0, 0))));
    assertEquals(EULER, lowest(Buckling.of(pushed)), ROUNDING * EULER);
  }

  private static Response of(Beam beam) {
    return Solver.of(
            Frame.in(Plane.FRONT)
                .node("foot", new Point(0, 0, 0))
                .node("top", new Point(0, 0, 1))
                .beam(beam)
                .support(Support.fixed("foot"))
                .build())
        .solve(LoadCase.of("pressed", new Load.AtNode("top", Wrench.force(0, 0, -1000))));
  }

  @Test
  void what_is_not_covered_is_refused_by_name() {
    Beam column = Beam.rigid("column", "foot", "top", UNIT);
    Beam armed = column.joined(End.RIGID, End.RIGID.armed(0, 0, -0.1));
    assertEquals(
        "beam column carries a normal force of -1.000 kN and ends at a rigid arm, which would turn"
            + " under the force; model the arm as a stiff beam",
        assertThrows(ModelException.class, () -> Buckling.of(of(armed))).getMessage());
  }

  @Test
  void a_response_of_second_order_has_no_critical_load_left() {
    Response bent =
        Solver.secondOrder(column().support(Support.fixed("foot")).build())
            .solve(LoadCase.of("leaning", new Load.AtNode("top", Wrench.force(0, 0.1, -1))));
    assertEquals(
        "load case leaning was solved in second order, which has the buckling inside; ask for the"
            + " critical load of a first-order response",
        assertThrows(ModelException.class, () -> Buckling.of(bent)).getMessage());
  }
}
