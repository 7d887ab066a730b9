package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
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

/** Hinges one after the other, up to the mechanism. */
class PushoverTest {
  private static final double MP = 1000;
  private static final Stock STOCK =
      new Stocks(210e9, 80e9).with(new Stocks.Shape(1e-3, 1e-6, 1e-6, 2e-6));
  private static final Function<Beam, YieldSurface> MOMENTS =
      beam -> YieldSurface.ofMoments(MP, MP);
  private static final LoadCase NOTHING = LoadCase.of("nothing");

  private static Frame.Builder beamOf(double... x) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < x.length; i++) {
      frame.node("n" + i, new Point(x[i], 0, 0));
      if (i > 0) {
        frame.beam(Beam.rigid("b" + i, "n" + (i - 1), "n" + i, STOCK));
      }
    }
    return frame;
  }

  private static Pushover push(Frame.Builder frame, Load... loads) {
    return Pushover.of(frame.build(), MOMENTS, NOTHING, LoadCase.of("push", loads));
  }

  private static Load at(String node, double fy, double fz) {
    return new Load.AtNode(node, Wrench.force(0, fy, fz));
  }

  /** Fixed end at 16/3 Mp/L, collapse at 6 Mp/L. */
  @Test
  void a_propped_cantilever_yields_at_its_fixed_end_first_and_then_under_the_load() {
    Frame.Builder beam =
        beamOf(0, 1, 2)
            .support(Support.fixed("n0"))
            .support(Support.holding("n2", Freedom.UY, Freedom.UZ, Freedom.RX));
    Pushover pushover = push(beam, at("n1", 0, -1));
    assertEquals(16.0 / 3 * MP / 2, pushover.firstHingeFactor(), 1e-6);
    assertEquals(6 * MP / 2, pushover.collapseFactor(), 1e-6);
    assertEquals(List.of(new Pushover.Place("b1", "n0")), pushover.stages().get(1).opened());
    assertEquals(MP, Math.abs(pushover.forces("b1", 0).my()), 1e-6);
    assertEquals(1, -pushover.collapsing("n1").uz(), 1e-9);
  }

  /** At collapse of a beam 2 m long: Mp at each end and under the load, so 2·Mp over each metre. */
  @Test
  void moments_at_both_ends_of_a_beam_are_told_with_their_signs() {
    Frame.Builder frame = beamOf(0, 1, 2).support(Support.fixed("n0")).support(Support.fixed("n2"));
    Pushover down = push(frame, at("n1", 0, -1));
    assertEquals(-down.forces("b1", 0).my(), down.forces("b1", 1).my(), 1e-6);
    assertEquals(MP, Math.abs(down.forces("b1", 1).my()), 1e-6);
    assertEquals(down.forces("b1", 1).my(), down.forces("b2", 0).my(), 1e-6);
    assertEquals(2 * down.forces("b1", 1).my(), down.forces("b1", 0).vz(), 1e-6);
    Pushover left = push(frame, at("n1", 1, 0));
    assertEquals(-left.forces("b1", 0).mz(), left.forces("b1", 1).mz(), 1e-6);
    assertEquals(-2 * left.forces("b1", 1).mz(), left.forces("b1", 0).vy(), 1e-6);
  }

  @Test
  void both_planes_and_either_sign_collapse_alike() {
    for (double sign : new double[] {1, -1}) {
      Frame.Builder beam =
          beamOf(0, 1, 2).support(Support.fixed("n0")).support(Support.fixed("n2"));
      assertEquals(8 * MP / 2, push(beam, at("n1", 0, sign)).collapseFactor(), 1e-6);
      assertEquals(8 * MP / 2, push(beam, at("n1", sign, 0)).collapseFactor(), 1e-6);
    }
  }

  @Test
  void two_hinges_that_meet_at_a_node_count_as_one() {
    Frame.Builder beam = beamOf(0, 0.5, 1, 1.5, 2);
    beam.support(Support.fixed("n0")).support(Support.fixed("n4"));
    Pushover pushover = push(beam, at("n2", 0, -1));
    assertEquals(8 * MP / 2, pushover.collapseFactor(), 1e-6);
    List<Pushover.Place> last = pushover.stages().get(pushover.stages().size() - 1).hinges();
    assertEquals(3, last.size(), last::toString);
  }

  @Test
  void the_energy_is_the_area_under_the_path() {
    Frame.Builder beam = beamOf(0, 1).support(Support.fixed("n0"));
    Pushover cantilever = push(beam, at("n1", 0, -1));
    double elastic = MP * MP * 1 / (3 * 210e9 * 1e-6);
    assertEquals(MP, cantilever.collapseFactor(), 1e-6);
    double way = cantilever.stages().get(1).travel();
    assertEquals(elastic / MP, way, 1e-9);
    assertEquals(elastic / 2, cantilever.energy(way), 1e-9);
    assertEquals(elastic / 8, cantilever.energy(way / 2), 1e-9, "half the way, half the force");
    assertEquals(elastic / 2 + MP * 0.1, cantilever.energy(way + 0.1), 1e-6);
  }

  @Test
  void a_constant_load_uses_up_strength_before_the_other_grows() {
    Frame frame = beamOf(0, 1).support(Support.fixed("n0")).build();
    Pushover pushover =
        Pushover.of(
            frame,
            MOMENTS,
            LoadCase.of("own", at("n1", 0, -300)),
            LoadCase.of("P", at("n1", 0, -1)));
    assertEquals(700, pushover.collapseFactor(), 1e-6);
  }

  /**
   * Two bays, pushed sideways by P and by 3 P on the middle of the second beam: the last mechanism
   * is that beam alone, 3 P = (2.5 + 2 · 2.5 + 1) Mp/m.
   */
  @Test
  void a_hinge_that_turns_back_locks_and_the_frame_collapses_without_it() {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < 3; i++) {
      frame.node("foot" + i, new Point(2 * i, 0, 0)).node("top" + i, new Point(2 * i, 1, 0));
      frame.beam(Beam.rigid("column" + i, "foot" + i, "top" + i, STOCK));
      frame.support(Support.fixed("foot" + i));
    }
    frame.node("middle", new Point(3, 1, 0));
    frame.beam(Beam.rigid("beam", "top0", "top1", STOCK));
    frame.beam(Beam.rigid("left half", "top1", "middle", STOCK));
    frame.beam(Beam.rigid("right half", "middle", "top2", STOCK));
    Function<Beam, YieldSurface> strength =
        beam -> MOMENTS.apply(beam).times(beam.name().startsWith("column") ? 1 : 2.5);
    LoadCase push =
        LoadCase.of(
            "push",
            new Load.AtNode("top0", Wrench.force(1, 0, 0)),
            new Load.AtNode("middle", Wrench.force(0, -3, 0)));

    Pushover pushover = Pushover.of(frame.build(), strength, NOTHING, push);

    Pushover.Place foot = new Pushover.Place("column2", "foot2");
    List<Pushover.Stage> stages = pushover.stages();
    assertEquals(8.5 / 3 * MP, pushover.collapseFactor(), 1e-6);
    assertTrue(stages.get(3).opened().contains(foot), stages::toString);
    assertEquals(List.of(foot), stages.get(4).locked());
    assertTrue(Math.abs(pushover.forces("column2", 0).mz()) < MP, "it carries less again");
    assertEquals(new Pushover.Yielding(0, 0, 0, 0), pushover.yielding(foot));
  }

  @Test
  void a_load_that_grows_along_a_beam_acts_at_its_ends_by_statics() {
    Frame.Builder beam = beamOf(0, 1).support(Support.fixed("n0"));
    Load.PerMetre none = new Load.PerMetre(0, 0, 0);
    Load.PerMetre six = new Load.PerMetre(0, 0, -6);
    assertEquals(
        MP / 2, push(beam, new Load.AlongPart("b1", 0, 1, none, six)).collapseFactor(), 1e-6);
    assertEquals(MP / 3, push(beam, new Load.AlongBeam("b1", 0, 0, -6)).collapseFactor(), 1e-6);
  }

  @Test
  void a_load_along_a_part_of_a_beam_is_refused() {
    Load.PerMetre six = new Load.PerMetre(0, 0, -6);
    ModelException refusal =
        assertThrows(
            ModelException.class,
            () ->
                push(
                    beamOf(0, 1).support(Support.fixed("n0")),
                    new Load.AlongPart("b1", 0.5, 1, six, six)));
    assertEquals(
        "load case push has a load that a pushover cannot follow; it takes wrenches at nodes and"
            + " loads along whole beams",
        refusal.getMessage());
  }

  /** After its first hinge the propped cantilever is a simple beam with an end moment. */
  @Test
  void the_way_of_a_node_is_known_at_every_stage() {
    Frame.Builder beam =
        beamOf(0, 1, 2)
            .support(Support.fixed("n0"))
            .support(Support.holding("n2", Freedom.UY, Freedom.UZ, Freedom.RX));
    Pushover pushover = push(beam, at("n1", 0, -1));
    assertEquals(0, pushover.displacement(0, "n1").uz());
    double first = pushover.firstHingeFactor() * 7 * 8 / 768 / 210e3;
    assertEquals(first, -pushover.displacement(1, "n1").uz(), 1e-6 * first);
    double growth = (pushover.collapseFactor() - pushover.firstHingeFactor()) * 8 / 48 / 210e3;
    assertEquals(first + growth, -pushover.displacement(2, "n1").uz(), 1e-6 * first);
    List<Pushover.Place> hinges = pushover.stages().get(2).hinges();
    assertEquals(2, hinges.size());
    assertEquals(1, Math.abs(pushover.yielding(hinges.get(0)).turnY()), 1e-9);
    assertEquals(2, Math.abs(pushover.yielding(hinges.get(1)).turnY()), 1e-9);
  }

  @Test
  void a_stage_or_corner_that_the_way_does_not_have_is_refused_by_number() {
    Pushover pushover = push(beamOf(0, 1).support(Support.fixed("n0")), at("n1", 0, -1));
    int stages = pushover.stages().size();
    int corners = pushover.corners().size();
    refused(
        "there is no stage -1; they are numbered from 0 to " + (stages - 1),
        () -> pushover.displacement(-1, "n1"));
    refused(
        "there is no stage %d; they are numbered from 0 to %d".formatted(stages, stages - 1),
        () -> pushover.displacement(stages, "n1"));
    refused(
        "there is no corner -1; they are numbered from 0 to " + (corners - 1),
        () -> pushover.atCorner(-1, "n1"));
    refused(
        "there is no corner %d; they are numbered from 0 to %d".formatted(corners, corners - 1),
        () -> pushover.atCorner(corners, "n1"));
    assertEquals(pushover.displacement(stages - 1, "n1"), pushover.atCorner(corners - 1, "n1"));
  }

  /** A cantilever's tip under a force across it: P L³/3EI down, P L²/2EI turned, nose down. */
  @Test
  void the_elastic_way_of_a_node_is_told_in_all_its_motions() {
    Pushover pushover = push(beamOf(0, 1).support(Support.fixed("n0")), at("n1", 0, -1));
    Displacement tip = pushover.elastic("n1");
    double ei = 210e3;
    assertEquals(
        new Displacement(0, 0, -1 / (3 * ei), 0, 1 / (2 * ei), 0).toString(), tip.toString());
    assertEquals(-1 / (3 * ei), tip.uz(), 1e-9 / ei);
    assertEquals(1 / (2 * ei), tip.ry(), 1e-9 / ei);
    assertEquals(0, Math.abs(tip.ux()) + Math.abs(tip.uy()) + Math.abs(tip.rx()), 1e-12 / ei);
    assertEquals(0, tip.rz(), 1e-12 / ei);
  }

  @Test
  void a_place_is_told_by_its_beam_and_node() {
    assertEquals("b1 at n0", new Pushover.Place("b1", "n0").toString());
  }

  private static void refused(String message, Executable question) {
    assertEquals(message, assertThrows(ModelException.class, question).getMessage());
  }

  @Test
  void a_frame_that_nothing_holds_is_pushed_by_loads_in_balance() {
    Pushover pushover =
        Pushover.unsupported(
            beamOf(0, 1, 2).build(),
            MOMENTS,
            NOTHING,
            LoadCase.of("bend", at("n0", 0, 1), at("n1", 0, -2), at("n2", 0, 1)));
    assertEquals(MP, pushover.collapseFactor(), 1e-6);
  }

  /** The same portal, level and tilted: only its place in space differs. */
  @Test
  void a_frame_tilted_in_space_collapses_at_the_load_of_the_level_one() {
    assertEquals(portal(0).collapseFactor(), portal(0.7).collapseFactor(), 1e-6);
    assertEquals(portal(0).firstHingeFactor(), portal(0.7).firstHingeFactor(), 1e-6);
  }

  private static Pushover portal(double tilt) {
    double c = Math.cos(tilt);
    double s = Math.sin(tilt);
    double[][] places = {{0, 0}, {1, 0}, {1, 0.6}, {1, 1.2}, {0, 1.2}};
    Frame.Builder portal = Frame.rising(Plane.PLAN);
    for (int i = 0; i < places.length; i++) {
      portal.node("n" + i, new Point(c * places[i][0], places[i][1], s * places[i][0]));
      if (i > 0) {
        portal.beam(Beam.rigid("b" + i, "n" + (i - 1), "n" + i, STOCK));
      }
    }
    portal.support(Support.fixed("n0")).support(Support.fixed("n4"));
    Wrench across = Wrench.force(-s, 0, c);
    Wrench along = Wrench.force(-c, 0, -s);
    return push(
        portal,
        new Load.AtNode("n1", Wrench.force(0, 1, 0).plus(across.times(0.4))),
        new Load.AtNode("n2", along.plus(across.times(0.3))));
  }

  @Test
  void a_load_that_bends_nothing_is_refused() {
    SolveException refusal =
        assertThrows(
            SolveException.class,
            () ->
                push(
                    beamOf(0, 1).support(Support.fixed("n0")),
                    new Load.AtNode("n1", Wrench.force(1, 0, 0))));
    assertEquals(
        "load case push never makes the frame collapse: nothing in it yields under this load",
        refusal.getMessage());
  }

  @Test
  void a_load_that_is_none_is_refused() {
    Frame.Builder beam = beamOf(0, 1).support(Support.fixed("n0"));
    String message = "load case push has no force in it that could grow until the frame collapses";
    refused(message, () -> push(beam));
    refused(message, () -> push(beam, at("n1", 0, 0)));
    refused(message, () -> push(beam, at("n1", 0, 1), at("n1", 0, -1)));
  }

  @Test
  void a_frame_that_collapses_under_what_is_constant_is_refused() {
    SolveException refusal =
        assertThrows(
            SolveException.class,
            () ->
                Pushover.of(
                    beamOf(0, 1).support(Support.fixed("n0")).build(),
                    MOMENTS,
                    LoadCase.of("own", at("n1", 0, -2000)),
                    LoadCase.of("P", at("n1", 0, -1))));
    assertEquals(
        "the frame collapses under the constant load alone, at 0.50 of it", refusal.getMessage());
  }

  @Test
  void a_mechanism_is_refused_before_it_is_pushed() {
    SolveException refusal =
        assertThrows(
            SolveException.class,
            () -> push(beamOf(0, 1).support(Support.holding("n0", Freedom.UX)), at("n1", 0, 1)));
    assertTrue(
        refusal.getMessage().startsWith("the frame is a mechanism before anything yields: node"),
        refusal.getMessage());
  }
}
