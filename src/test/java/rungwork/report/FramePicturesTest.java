package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import rungwork.check.Member;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;

class FramePicturesTest {
  private static final Stock TUBE =
      new Stock(
          Section.rectangularTube(mm(80), mm(40), mm(3)),
          new UnratedMaterial(
              "steel",
              new Elasticity(210e9, 0.3, 7850),
              new Source("stated for tests", Source.Tag.STATED_BY_USER)));

  /** One metre, held at its foot in front, free behind; the beam runs rearward. */
  private static Response cantilever(Wrench atTip) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("foot", new Point(0, 0, 0))
            .node("tip", new Point(-1, 0, 0))
            .beam(Beam.rigid("arm", "foot", "tip", TUBE))
            .support(Support.fixed("foot"))
            .build();
    return Solver.of(frame).solve(LoadCase.of("pull", new Load.AtNode("tip", atTip)));
  }

  /** The same arm, its beam running forward from the tip. */
  private static Response turned(Wrench atTip) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("foot", new Point(0, 0, 0))
            .node("tip", new Point(-1, 0, 0))
            .beam(Beam.rigid("arm", "tip", "foot", TUBE))
            .support(Support.fixed("foot"))
            .build();
    return Solver.of(frame).solve(LoadCase.of("pull", new Load.AtNode("tip", atTip)));
  }

  private static ForceDiagrams diagrams(Response response) {
    return new ForceDiagrams("arm", List.of("arm"), response);
  }

  /** How far the curve of a diagram goes above its axis at the left end, the foot. */
  private static double above(Response response, int panel) {
    Element curve = Xml.all(diagrams(response).picture(Units.METRIC).svg(), "polyline").get(panel);
    double[] places = Drawings.places(curve);
    return places[places.length - 1] - places[1];
  }

  @Test
  void a_tip_pushed_down_stretches_the_top_and_is_drawn_there_whichever_way_the_beam_runs() {
    Wrench down = Wrench.force(0, 0, -1000);
    assertTrue(above(cantilever(down), 5) > 1);
    assertTrue(above(turned(down), 5) > 1);
    assertTrue(above(cantilever(Wrench.force(0, 0, 1000)), 5) < -1);
  }

  @Test
  void a_tip_pushed_right_stretches_the_left_and_is_drawn_there_whichever_way_the_beam_runs() {
    Wrench right = Wrench.force(0, -1000, 0);
    assertTrue(above(cantilever(right), 2) > 1);
    assertTrue(above(turned(right), 2) > 1);
    List<String> words = Drawings.words(diagrams(turned(right)).picture(Units.METRIC));
    assertTrue(words.contains("up: tension on the left side"), words.toString());
  }

  @Test
  void extreme_values_stand_on_the_diagram_in_the_units_of_its_head() {
    Response response = cantilever(Wrench.force(-2000, 0, -1000));
    Picture metric = diagrams(response).picture(Units.METRIC);
    Drawings.holds(metric);
    assertTrue(
        Drawings.words(metric)
            .containsAll(List.of("N [kN]", "2.00", "My [kN·m]", "1.00", "foot", "tip")));
    Picture inches = diagrams(response).picture(Units.INCH_POUND);
    assertTrue(Drawings.words(inches).containsAll(List.of("N [lbf]", "450", "My [lbf·ft]", "738")));
  }

  @Test
  void a_force_that_is_nothing_is_drawn_as_zero_and_not_as_rounding() {
    List<String> words =
        Drawings.words(diagrams(cantilever(Wrench.force(-2000, 0, 0))).picture(Units.METRIC));
    assertEquals(5, words.stream().filter("0"::equals).count());
  }

  @Test
  void the_diagrams_of_a_member_take_its_name_and_beams() {
    Response response = cantilever(Wrench.force(0, 0, -1000));
    Member member =
        new Member("arm", List.of("arm"), new Member.BucklingLengths(2, 2, "free"), List.of());
    assertEquals(diagrams(response), ForceDiagrams.of(member, response));
    String text = ForceDiagrams.of(member, response).toString();
    assertTrue(text.contains("My        1.00       0  kN·m  tension on the top"), text);
    assertEquals(text, ForceDiagrams.of(member, response).page(Units.METRIC).toString());
  }

  @Test
  void the_deflected_shape_states_its_magnification_and_is_drawn_with_it() {
    Response response = cantilever(Wrench.force(0, 0, -1000));
    Picture picture = DeflectedShape.of(response).picture(Units.METRIC);
    Drawings.holds(picture);
    double moved = -response.displacement("tip").uz();
    double magnification =
        Double.parseDouble(picture.text().replaceAll(".*magnified (\\d+) times.*", "$1"));
    Element curve = Xml.all(picture.svg(), "polyline").get(0);
    assertEquals("dashed", curve.getAttribute("class"));
    double[] places = Drawings.places(curve);
    double length = places[places.length - 2] - places[0];
    double drop = places[places.length - 1] - places[1];
    assertEquals(magnification * moved, drop / length, 1e-3);
    assertTrue(DeflectedShape.of(response).toString().contains("tip moves"));
  }

  @Test
  void a_frame_that_does_not_move_is_not_magnified() {
    Picture picture = DeflectedShape.of(cantilever(Wrench.ZERO)).picture(Units.METRIC);
    Drawings.holds(picture);
    assertTrue(picture.text().contains("magnified 1 times"), picture.text());
  }

  @Test
  void load_arrows_carry_their_values_and_all_loads_stand_in_the_table() {
    Frame frame = cantilever(Wrench.ZERO).frame();
    LoadCase loads =
        new LoadCase(
            "braking " + Examples.NASTY,
            "common practice, no source",
            List.of("tyres grip"),
            List.of(
                new Load.AtNode("tip", new Wrench(-900, 0, -1200, 0, 0, 250)),
                new Load.AtNode("tip", Wrench.force(-900, 0, -1200)),
                new Load.AlongBeam("arm", 0, 0, -10)));
    LoadArrows arrows = new LoadArrows(frame, loads);
    Drawings.holds(arrows.forces(Units.METRIC));
    Drawings.holds(arrows.moments(Units.METRIC));
    List<String> words = Drawings.words(arrows.forces(Units.METRIC));
    assertTrue(words.contains("3.00 kN"), words.toString());
    assertTrue(Drawings.words(arrows.moments(Units.METRIC)).contains("0.250 kN·m"));
    assertFalse(words.contains("0.0100 kN"));
    assertEquals(2, Xml.all(arrows.page(Units.METRIC).html(), "svg").size());
    Page page = arrows.page(Units.METRIC);
    assertFalse(page.html().contains("<script"));
    assertTrue(page.text().contains("along arm"));
    assertTrue(page.text().contains("tyres grip"));
    assertTrue(page.text().contains("common practice, no source"));
  }

  @Test
  void loads_on_beams_and_strains_are_told_in_the_readers_units() {
    Frame frame = cantilever(Wrench.ZERO).frame();
    double length = frame.length(frame.beam("arm"));
    Load.PerMetre down = new Load.PerMetre(0, 0, -300);
    LoadArrows arrows =
        new LoadArrows(
            frame,
            LoadCase.of(
                "all",
                new Load.OnBeam("arm", length / 4, Wrench.force(0, 0, -500)),
                new Load.AlongPart("arm", 0, length, Load.PerMetre.NONE, down),
                Load.AlongPart.uniform("arm", length / 5, length / 2, down),
                Load.Warmth.uniform("arm", 12e-6, 30),
                new Load.Misfit("arm", 0.00254, 0, 0, 0),
                new Load.Settlement("foot", Freedom.UZ, -0.00508),
                new Load.Settlement("foot", Freedom.RY, 0.002)));
    Drawings.holds(arrows.forces(Units.METRIC));
    String metric = arrows.page(Units.METRIC).text();
    for (String expected :
        List.of(
            "on arm at 25.0 %",
            "along arm, 20.0 %–50.0 %",
            "arm warmed by 30.00 K, across y by 0 K/m, across z by 0 K/m",
            "arm made too long by 2.540 mm, twisted by 0 mrad, bowed by 0 mm along y and 0 mm along"
                + " z",
            "support at foot forced, moving along z, by -5.080 mm",
            "support at foot forced, turning about y, by 2.000 mrad")) {
      assertTrue(metric.contains(expected), () -> expected + " in " + metric);
    }
    String customary = arrows.page(Units.INCH_POUND).text();
    assertTrue(customary.contains("too long by 0.1000 in"), customary);
    assertFalse(customary.contains(" mm"), customary);
  }

  @Test
  void an_arrow_ends_where_its_force_acts_and_points_the_way_it_pushes() {
    Response response = cantilever(Wrench.force(0, 0, -1000));
    Element shaft =
        Xml.all(LoadArrows.of(response).forces(Units.METRIC).svg(), "line").stream()
            .filter(line -> line.getAttribute("class").equals("force"))
            .findFirst()
            .orElseThrow();
    assertEquals(Drawings.number(shaft, "x1"), Drawings.number(shaft, "x2"));
    assertTrue(Drawings.number(shaft, "y1") < Drawings.number(shaft, "y2"));
  }

  @ParameterizedTest
  @EnumSource(Plane.class)
  void frames_in_every_plane_can_be_drawn(Plane plane) {
    double[] end = plane.toVehicle(1, 1, 0);
    Frame frame =
        Frame.in(plane)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(end[0], end[1], end[2]))
            .beam(Beam.rigid("strut", "a", "b", TUBE))
            .support(Support.fixed("a"))
            .build();
    Response response =
        Solver.of(frame)
            .solve(LoadCase.of("push", new Load.AtNode("b", Wrench.force(300, 200, -500))));
    Drawings.holds(DeflectedShape.of(response).picture(Units.METRIC));
    Drawings.holds(LoadArrows.of(response).forces(Units.METRIC));
    Drawings.holds(new ForceDiagrams("strut", List.of("strut"), response).picture(Units.METRIC));
  }
}
