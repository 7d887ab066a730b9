package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
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
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.solve.Pushover;
import rungwork.solve.YieldSurface;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/**
 * Beams of two pieces of a metre under a load of 1 kN in their middle: clamped and propped, 16
 * Mp/(3 L) and 6 Mp/L; clamped at both ends, 8 Mp/L at once. The textbook answers, shear left out.
 */
class CollapseCourseTest {
  private static final double MP = 3000;
  private static final double LENGTH = 2;
  private static final Ladder LADDER = Runabout.ladder(Runabout.steel(235));
  private static final Stock STOCK =
      new Stock(Section.squareTube(mm(50), mm(3)), Runabout.steel(235));
  private static final double STIFFNESS = 210e9 * STOCK.section().properties().iy();
  private static final double FIRST = 16 * MP / 3 / LENGTH;
  private static final double LAST = 6 * MP / LENGTH;
  private static final double CUBE = LENGTH * LENGTH * LENGTH / STIFFNESS;
  private static final double BENT = 7 * FIRST * CUBE / 768;
  private static final double CRUSH = BENT + (LAST - FIRST) * CUBE / 48;

  private static String node(String feature) {
    return LADDER.node(feature).name();
  }

  private static Collapse.Path path(Support far, double hardening) {
    String clamp = node("front left");
    String middle = node("middle left");
    Frame frame =
        Frame.in(Plane.SIDE)
            .node(clamp, new Point(0.1, 0, 0))
            .node(middle, new Point(-0.9, 0, 0))
            .node("far", new Point(-1.9, 0, 0))
            .beam(Beam.rigid("left rail 1", clamp, middle, STOCK))
            .beam(Beam.rigid("left rail 2", middle, "far", STOCK))
            .support(Support.fixed(clamp))
            .support(far)
            .build();
    LoadCase load =
        LoadCase.of("push, bound: all", new Load.AtNode(middle, Wrench.force(0, 0, -1000)));
    Pushover pushover =
        Pushover.of(frame, beam -> YieldSurface.ofMoments(MP, MP), LoadCase.of("nothing"), load);
    return new CollapseCourse(LADDER, frame, pushover)
        .path(
            new Collapse.Case(CrushTube.Strength.HIGH, Joints.RIGID, load),
            1000,
            CollapseAssumptions.USUAL.hardening(hardening));
  }

  private static Collapse.Path propped(double hardening) {
    return path(Support.holding("far", Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RZ), hardening);
  }

  private static void reached(double force, double crush, double energy, Collapse.Reached at) {
    assertEquals(force, at.force(), 1e-6 * force);
    assertEquals(force / 1000 * 9.80665, at.deceleration(), 1e-6 * force);
    assertEquals(crush, at.crush(), 1e-3 * crush, "shear bends a little more");
    assertEquals(energy, at.energy(), 1e-3 * energy);
  }

  @Test
  void a_propped_beam_hinges_at_its_clamp_and_then_under_the_load() {
    Collapse.Path path = propped(0);
    assertEquals(3, path.stages().size());
    assertEquals(0, path.stages().get(0).reached().force());
    double once = FIRST * BENT / 2;
    double twice = once + (FIRST + LAST) / 2 * (CRUSH - BENT);
    reached(FIRST, BENT, once, path.stages().get(1).reached());
    reached(LAST, CRUSH, twice, path.last().reached());
    assertEquals(path.stages().get(1), path.first());
    assertEquals(List.of("left rail just behind front crossmember"), words(path.first().opened()));
    assertEquals(1, path.last().opened().size());
    String second = path.last().opened().get(0).words();
    assertTrue(second.matches("left rail just (ahead of|behind) middle crossmember"), second);
    assertEquals(2, path.last().hinges().size());
    assertEquals(List.of(), path.last().locked());
    assertEquals(3, path.corners().size());
    assertEquals(path.last().reached(), path.corners().get(2));
    assertEquals("high strength, joints rigid; all", path.of().words());
  }

  private static List<String> words(List<Collapse.Hinge> hinges) {
    return hinges.stream().map(Collapse.Hinge::words).toList();
  }

  /** Crushed to where 95 % of the last force is reached, as the chords go. */
  @Test
  void forces_and_energies_between_and_beyond() {
    Collapse.Path path = propped(0);
    double first = path.first().reached().crush();
    double last = path.last().reached().crush();
    assertEquals(FIRST / 2, path.force(first / 2), 1e-6 * FIRST);
    assertEquals((FIRST + LAST) / 2, path.force((first + last) / 2), 1e-6 * LAST);
    assertEquals(LAST, path.force(1), 1e-6 * LAST);
    assertEquals(FIRST * first / 8, path.energy(first / 2), 1e-6 * FIRST * first);
    double until = path.last().reached().energy();
    assertEquals(until + LAST * 0.1, path.energy(last + 0.1), 1e-6 * until);
    double part = (0.95 * LAST - FIRST) / (LAST - FIRST);
    assertEquals(first + part * (last - first), path.crush(), 1e-9);
    Refused.with("crush -1.000 mm is below zero", () -> path.energy(-1e-3));
  }

  /** The middle moves by d, its hinge turns twice what the clamp's does: 5·(2/L)²·E I/h. */
  @Test
  void hinges_harden_by_their_turns_from_the_mechanism_on() {
    Collapse.Path path = propped(0.01);
    double slope = 0.01 * 5 * Math.pow(2 / LENGTH, 2) * STIFFNESS / 0.05;
    assertEquals(slope, path.pushed().hardening(), 1e-6 * slope);
    double last = path.last().reached().crush();
    assertEquals(LAST + slope * 0.1, path.force(last + 0.1), 1e-6 * LAST);
    double until = path.last().reached().energy();
    assertEquals(
        until + LAST * 0.1 + slope * 0.005, path.energy(last + 0.1), 1e-6 * (until + LAST));
    assertEquals(until, path.energy(last), 1e-9 * until);
  }

  @Test
  void its_curve_names_the_first_hinge_and_the_mechanism() {
    Collapse.Path path = propped(0);
    CrushCurve curve = path.curve(mm(500));
    assertEquals("frame, high strength, joints rigid; all", curve.name());
    assertEquals(
        List.of("", "first hinge", "mechanism", ""),
        curve.points().stream().map(CrushCurve.Point::label).toList());
    assertEquals(0.5, curve.last().crush(), 1e-12);
    assertEquals(LAST, curve.last().force(), 1e-6 * LAST);
    Refused.with("end of the crush curve 0 mm is not above zero", () -> path.curve(mm(0)));
  }

  /** Down by its crush; on from there by a metre a metre. */
  @Test
  void the_loaded_node_moves_by_the_crush() {
    Collapse.Path path = propped(0);
    String middle = node("middle left");
    assertEquals(-path.last().reached().crush(), path.moved(path.last(), middle).uz(), 1e-9);
    assertEquals(-path.first().reached().crush(), path.moved(path.first(), middle).uz(), 1e-9);
    assertEquals(-1, path.movesOn(middle).uz(), 1e-9);
  }

  /** Ends and middle of a clamped beam bear P L/8 each, all the way. */
  @Test
  void hinges_that_open_at_one_load_are_one_stage() {
    Collapse.Path path = path(Support.fixed("far"), 0);
    assertEquals(2, path.stages().size());
    double force = 8 * MP / LENGTH;
    reached(force, force * CUBE / 192, force * force * CUBE / 384, path.last().reached());
    assertEquals(path.last(), path.first());
    assertEquals(3, path.last().opened().size());
    assertEquals(Set.copyOf(words(path.last().hinges())), Set.copyOf(words(path.last().opened())));
    Set<String> nodes =
        path.last().opened().stream().map(h -> h.place().node()).collect(Collectors.toSet());
    assertEquals(Set.of(node("front left"), node("middle left"), "far"), nodes);
  }

  @Test
  void loads_between_two_crushes_are_read_off_the_path() {
    Collapse.Path path = propped(0);
    double first = path.first().reached().crush();
    SeenDamage.Loads loads = SeenDamage.Loads.between(path, first / 2, 1);
    assertEquals(FIRST / 2, loads.force().low(), 1e-6 * FIRST);
    assertEquals(LAST, loads.force().high(), 1e-6 * LAST);
    assertEquals(FIRST / 2000 * 9.80665, loads.deceleration().low(), 1e-6 * FIRST);
    assertEquals(Kind.ACCELERATION, loads.deceleration().kind());
    assertEquals(new Range(Kind.LENGTH, first / 2, 1), loads.crush());
    assertEquals(path.energy(first / 2), loads.energy().low(), 1e-9);
    assertEquals(path.energy(1), loads.energy().high(), 1e-9);
  }

  @Test
  void a_case_is_told_by_strength_joints_and_bound() {
    Collapse.Case plain =
        new Collapse.Case(CrushTube.Strength.LOW, Joints.RIGID, LoadCase.of("push"));
    assertEquals("low strength, joints rigid", plain.words());
    Refused.with(
        "a branch of kick-up front has no point",
        () ->
            new Collapse.KickUpFall(
                new Ladder.KickUp("front", -0.2, -0.4, 0.1),
                "tube",
                List.of(),
                List.of(new Collapse.Fallen(0, 0, 1, 0)),
                Optional.empty()));
  }

  private static Collapse.Hinge hinge(String words) {
    return new Collapse.Hinge(words, new Pushover.Place("beam", words));
  }

  /** At one load: a opens and stays, b opens and locks, c locks and opens, d locks, e opens. */
  @Test
  void what_opens_and_locks_at_one_load_did_neither() {
    Collapse.Hinge a = hinge("a");
    Collapse.Hinge b = hinge("b");
    Collapse.Hinge c = hinge("c");
    Collapse.Hinge d = hinge("d");
    Collapse.Hinge e = hinge("e");
    Collapse.Reached load = new Collapse.Reached(1, 2, 3, 4);
    Collapse.Stage before =
        new Collapse.Stage(1, load, List.of(a, b, d), List.of(a, b), List.of(c));
    Collapse.Stage now =
        new Collapse.Stage(2, load, List.of(a, c, e), List.of(c, e), List.of(b, d));
    assertEquals(
        new Collapse.Stage(2, load, List.of(a, c, e), List.of(a, e), List.of(d)),
        CollapseCourse.joined(before, now));
  }
}
