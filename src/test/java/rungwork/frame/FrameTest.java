package rungwork.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.solve.Stocks;

class FrameTest {
  private static final Stock TUBE = Stocks.TUBE;

  private static Frame.Builder two() {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0.3))
        .node("B", new Point(1, 0, 0.3))
        .beam(Beam.rigid("rail", "A", "B", TUBE));
  }

  private static void assertRefused(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }

  @Test
  void a_frame_gives_back_its_parts_in_their_order() {
    Support support = Support.fixed("B");
    Frame frame =
        two()
            .node(new Node("C", new Point(1, 2, 0.3)))
            .beam(Beam.rigid("cross", "B", "C", TUBE))
            .support(support)
            .build();
    assertEquals(List.of("A", "B", "C"), frame.nodes().stream().map(Node::name).toList());
    assertEquals(List.of("rail", "cross"), frame.beams().stream().map(Beam::name).toList());
    assertEquals(List.of(support), frame.supports());
    assertEquals(Plane.PLAN, frame.plane());
    assertEquals(2, frame.length(frame.beam("cross")), 1e-15);
    assertEquals("Frame in plan, nodes: 3, beams: 2, supports: 1", frame.toString());
    Support other = Support.pinned("A");
    assertEquals(List.of(other), frame.on(List.of(other)).supports());
  }

  @Test
  void names_that_are_missing_or_double_are_refused() {
    assertRefused("two nodes are named A", () -> two().node("A", new Point(5, 0, 0.3)));
    assertRefused("two beams are named rail", () -> two().beam(Beam.rigid("rail", "B", "A", TUBE)));
    assertRefused(
        "there is no node named C; there are A, B",
        () -> two().beam(Beam.rigid("cross", "B", "C", TUBE)).build());
    assertRefused(
        "there is no node named X; there are A, B",
        () -> two().support(Support.fixed("X")).build());
    assertRefused("there is no beam named sill; there are rail", () -> two().build().beam("sill"));
    assertRefused("a node has no name; give it one", () -> new Node(" ", new Point(0, 0, 0)));
    assertRefused("a beam has no name; give it one", () -> Beam.rigid("", "A", "B", TUBE));
    assertRefused("the frame has no beams", () -> Frame.in(Plane.SIDE).build());
  }

  @Test
  void places_that_make_no_flat_frame_are_refused() {
    assertRefused(
        "node C lies 13.00 mm out of the frame's plane",
        () -> two().node("C", new Point(0, 1, 0.313)).build());
    assertRefused(
        "beam stub is 0.05000 mm long: its ends at nodes B and C are at the same place",
        () ->
            two()
                .node("C", new Point(1.00005, 0, 0.3))
                .beam(Beam.rigid("stub", "B", "C", TUBE))
                .build());
    assertRefused("x is not a number; give a finite number", () -> new Point(Double.NaN, 0, 0));
  }

  @Test
  void a_section_that_mixes_the_two_actions_is_refused_with_its_reason() {
    Stock flat =
        new Stocks(210e9, 81e9).outOfPlane(new Stocks.Shape(4e-4, 7e-8, 4e-7, 1e-9), 0.024);
    assertRefused(
        "beam cross cannot be used: its shear centre lies 24.0 mm out of the frame's plane; bending"
            + " would twist it, which a flat frame cannot follow; turn it by a quarter so that its"
            + " axis of symmetry lies in the plane, as a channel's does with its web upright, or"
            + " box it",
        () ->
            two()
                .node("C", new Point(1, 1, 0.3))
                .beam(Beam.rigid("cross", "B", "C", flat))
                .build());
  }

  @Test
  void beams_that_cannot_be_are_refused() {
    assertRefused("beam loop starts and ends at node A", () -> Beam.rigid("loop", "A", "A", TUBE));
    Set<Release> torsion = Set.of(Release.TORSION);
    assertRefused(
        "beam rail has its torque released at both ends and would spin; keep one end",
        () -> Beam.rigid("rail", "A", "B", TUBE).released(torsion, torsion));
    assertRefused(
        "beam rail has its normal force released at both ends and would slide; keep one end",
        () -> joined(End.released(Release.NORMAL_FORCE), End.released(Release.NORMAL_FORCE)));
    assertRefused(
        "beam rail has so much in-plane shear force and in-plane bending moment released that"
            + " nothing holds it; let go of two of the four at most, and of one shear force at"
            + " most",
        () ->
            joined(
                End.released(Release.IN_PLANE_BENDING, Release.IN_PLANE_SHEAR),
                End.released(Release.IN_PLANE_BENDING)));
    assertRefused(
        "beam rail has so much out-of-plane shear force and out-of-plane bending moment released"
            + " that nothing holds it; let go of two of the four at most, and of one shear force at"
            + " most",
        () ->
            joined(
                End.released(Release.OUT_OF_PLANE_SHEAR),
                End.released(Release.OUT_OF_PLANE_SHEAR)));
  }

  private static Beam joined(End start, End end) {
    return Beam.rigid("rail", "A", "B", TUBE).joined(start, end);
  }

  @Test
  void a_joint_is_stiff_or_sprung_or_released_and_only_one_of_them() {
    assertRefused(
        "spring of a beam's end for the torque -5.000 is not above zero",
        () -> End.RIGID.sprung(Release.TORSION, -5));
    assertRefused(
        "spring of a beam's end for the normal force is released as well; choose one",
        () -> End.released(Release.NORMAL_FORCE).sprung(Release.NORMAL_FORCE, 4e6));
    assertRefused(
        "rigid arm is not a number; give a finite number", () -> End.RIGID.armed(0, Double.NaN, 0));
    End end = End.released(Release.TORSION).sprung(Release.IN_PLANE_BENDING, 2e3).armed(0, 0.02, 0);
    assertEquals(Set.of(Release.TORSION), joined(end, End.RIGID).startReleases());
    assertEquals(Set.of(), joined(end, End.RIGID).endReleases());
    assertEquals(2e3, end.springs().get(Release.IN_PLANE_BENDING));
  }

  @Test
  void a_rigid_arm_moves_a_beams_end_and_stays_in_the_plane() {
    End arm = End.RIGID.armed(0.1, 0.02, 0);
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0.3))
            .node("B", new Point(1, 0, 0.3))
            .beam(joined(arm, End.RIGID.armed(0, 0.02, 0)))
            .build();
    Beam rail = frame.beam("rail");
    assertEquals(new Point(0.1, 0.02, 0.3), frame.startOf(rail));
    assertEquals(new Point(1, 0.02, 0.3), frame.endOf(rail));
    assertEquals(0.9, frame.length(rail), 1e-15);
    assertRefused(
        "the rigid arm of beam rail at node B leaves the frame's plane by 30.00 mm; it would turn"
            + " pulling into bending out of the plane, which a flat frame cannot follow; keep the"
            + " arm in the plane",
        () -> frame.with(beam -> beam.joined(arm, End.RIGID.armed(0, 0, 0.03))));
    assertRefused(
        "beam rail is 0 mm long: its ends at nodes A and B are at the same place",
        () -> frame.with(beam -> beam.joined(End.RIGID.armed(1, 0, 0), End.RIGID)));
  }

  @Test
  void a_rising_frame_leaves_its_plane_but_has_no_beam_along_the_normal() {
    End arm = End.RIGID.armed(0, 0, 0.03);
    Frame frame =
        Frame.rising(Plane.PLAN)
            .node("A", new Point(0, 0, 0.3))
            .node("B", new Point(1, 0, 0.4))
            .beam(joined(End.RIGID, arm))
            .build();
    assertEquals(0.43, frame.endOf(frame.beam("rail")).z(), 1e-12);
    assertFalse(frame.isFlat());
    assertFalse(frame.on(List.of()).with(beam -> beam).isFlat());
    assertRefused(
        "beam rail runs along the normal of the frame's plane, so that nothing says how its"
            + " section lies; let it lean, or choose another plane",
        () -> frame.with(beam -> beam.joined(End.RIGID, End.RIGID.armed(-1, 0, 0.5))));
  }

  @Test
  void an_arc_passes_the_place_it_is_to_pass_either_way_round() {
    double half = Math.sqrt(0.5);
    assertArc(new Point(half, half, 0.3), new Point(half, half, 0.3));
    assertArc(new Point(-half, -half, 0.3), new Point(-half, -half, 0.3));
    assertArc(new Point(half, -half, 0.3), new Point(-half, -half, 0.3));
  }

  private static void assertArc(Point through, Point middle) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(1, 0, 0.3))
            .node("B", new Point(0, 1, 0.3))
            .arc(new Arc("bow", "A", "B", through, 4), TUBE)
            .build();
    assertEquals(
        List.of("bow 1", "bow 2", "bow 3", "bow 4"),
        frame.beams().stream().map(Beam::name).toList());
    assertEquals("A", frame.beam("bow 1").start());
    assertEquals("B", frame.beam("bow 4").end());
    assertEquals(0, frame.node("bow 2").at().distance(middle), 1e-12);
    for (Node node : frame.nodes()) {
      assertEquals(1, node.at().distance(new Point(0, 0, 0.3)), 1e-12, node.name());
    }
  }

  @Test
  void an_arc_that_is_none_is_refused() {
    Point between = new Point(0.5, 0, 0.3);
    assertRefused(
        "arc bow is cut into 1 pieces; 2 to 1000 are possible",
        () -> new Arc("bow", "A", "B", between, 1));
    assertRefused(
        "arc bow is straight: the place it passes is 0 mm off the line from A to B; use a beam",
        () -> two().arc(new Arc("bow", "A", "B", between, 4), TUBE));
    assertRefused(
        "arc bow passes a place 20.00 mm out of the frame's plane",
        () -> two().arc(new Arc("bow", "A", "B", new Point(0.5, 0.3, 0.32), 4), TUBE));
    assertRefused(
        "there is no node named C; there are A, B",
        () -> two().arc(new Arc("bow", "A", "C", between, 4), TUBE));
  }

  @Test
  void every_beam_of_a_frame_can_be_changed_at_once() {
    Frame frame = two().support(Support.fixed("A")).build();
    Frame sheared = frame.with(beam -> beam.bending(Beam.Bending.WITH_SHEAR_STRAIN));
    assertEquals(Beam.Bending.WITHOUT_SHEAR_STRAIN, frame.beam("rail").bending());
    assertEquals(Beam.Bending.WITH_SHEAR_STRAIN, sheared.beam("rail").bending());
    assertEquals(frame.supports(), sheared.supports());
  }

  @Test
  void loads_on_beams_that_mean_nothing_are_refused() {
    Load.PerMetre down = new Load.PerMetre(0, 0, -100);
    assertRefused(
        "place of the load on beam rail -20.00 mm is below zero",
        () -> new Load.OnBeam("rail", -0.02, Wrench.ZERO));
    assertRefused(
        "moment my is infinite; give a finite number",
        () -> new Load.OnBeam("rail", 0.2, Wrench.moment(0, Double.POSITIVE_INFINITY, 0)));
    assertRefused(
        "the load along beam rail runs from 300.0 mm to 200.0 mm; let it end beyond its first end",
        () -> Load.AlongPart.uniform("rail", 0.3, 0.2, down));
    assertRefused(
        "first end of the load along beam rail -100.0 mm is below zero",
        () -> Load.AlongPart.uniform("rail", -0.1, 0.2, down));
    assertRefused(
        "other end of the load along beam rail is not a number; give a finite number",
        () -> Load.AlongPart.uniform("rail", 0.1, Double.NaN, down));
    assertRefused(
        "force per length is not a number; give a finite number",
        () -> new Load.PerMetre(Double.NaN, 0, 0));
  }

  @Test
  void strains_that_mean_nothing_are_refused_and_the_others_say_what_they_are() {
    assertRefused(
        "expansion of beam rail -1.200e-5 is below zero",
        () -> Load.Warmth.uniform("rail", -12e-6, 30));
    assertRefused(
        "warmth of beam rail is not a number; give a finite number",
        () -> Load.Warmth.uniform("rail", 12e-6, Double.NaN));
    assertRefused(
        "misfit of beam rail is infinite; give a finite number",
        () -> new Load.Misfit("rail", Double.POSITIVE_INFINITY, 0, 0, 0));
    assertRefused(
        "settlement of node A is not a number; give a finite number",
        () -> new Load.Settlement("A", Freedom.UZ, Double.NaN));
    assertEquals(
        "beam rail warmed by 30.00 K, across y by 0 K/m, across z by 0 K/m",
        Load.Warmth.uniform("rail", 12e-6, 30).toString());
    assertEquals(
        "beam rail made 1.500 mm too long, twisted by 20.00 mrad, bowed by 0 mm along y and 2.000"
            + " mm along z",
        new Load.Misfit("rail", 0.0015, 0.02, 0, 0.002).toString());
    assertEquals(
        "support at node A settles, moving along z by -3.000 mm",
        new Load.Settlement("A", Freedom.UZ, -0.003).toString());
    assertEquals(
        "support at node A settles, turning about x by 4.000 mrad",
        new Load.Settlement("A", Freedom.RX, 0.004).toString());
  }

  @Test
  void supports_that_contradict_themselves_are_refused() {
    assertRefused(
        "the support at node A holds nothing",
        () -> new Support("A", Set.of(), java.util.Map.of()));
    assertRefused(
        "spring against moving along z at node A -5.000 is not above zero",
        () -> Support.spring("A", Freedom.UZ, -5));
    assertRefused(
        "spring against moving along z at node A is held stiffly as well; choose one",
        () -> new Support("A", Set.of(Freedom.UZ), java.util.Map.of(Freedom.UZ, 5.0)));
  }

  @Test
  void loads_and_masses_that_mean_nothing_are_refused() {
    assertRefused(
        "force fx is infinite; give a finite number",
        () -> Wrench.force(Double.POSITIVE_INFINITY, 0, 0));
    assertRefused(
        "load along beam rail is not a number; give a finite number",
        () -> new Load.AlongBeam("rail", 0, Double.NaN, 0));
    Point origin = new Point(0, 0, 0);
    assertRefused(
        "mass motor -3.000 kg is not above zero",
        () -> Mass.point("motor", -3, origin, List.of("A")));
    assertRefused(
        "mass motor is carried by no node; name one at least",
        () -> Mass.point("motor", 3, origin, List.of()));
    assertRefused(
        "moment of inertia about y -2.000 kg·m² is below zero",
        () -> new Mass.Inertia(1, -2, 1, 0, 0, 0));
    assertRefused(
        "amplification 2.500 of mass motor is outside 1 (rigid) to 2 (a spring under a sudden"
            + " load)",
        () -> new Mass("motor", 3, origin, Mass.Inertia.NONE, List.of("A"), 2.5));
  }

  @Test
  void a_load_case_of_the_users_own_says_so() {
    LoadCase own = LoadCase.of("push", new Load.AtNode("A", Wrench.ZERO));
    assertEquals("stated by the user", own.source());
    assertEquals(1, own.loads().size());
    assertRefused("a load case has no name; give it one", () -> LoadCase.of(" "));
  }
}
