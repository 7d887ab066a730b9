package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.Bracket.Foot;
import rungwork.joint.Bracket.Outline;
import rungwork.joint.Bracket.Stand;
import rungwork.joint.Bracket.Wrap;
import rungwork.joint.WeldGroup.Seam;

class BracketTest {
  private static final TubeWall RAIL = TubeWall.of(Parts.S355, mm(40), mm(80), mm(3));
  private static final Seam SEAM = Seam.fillet(mm(3), MPa(490));

  private static Bracket bracket(Wrap wrap) {
    return new Bracket(
        "bracket",
        RAIL,
        Outline.of(mm(50), mm(40), mm(40)),
        new Stand(wrap, Foot.ALONG_RAIL),
        SEAM);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void on_one_face_its_weld_is_that_of_a_plate_welded_all_round(long seed) {
    Random random = new Random(seed);
    FaceLoad load = Parts.load(Rigid.wrench(random), Rigid.point(random));
    WeldGroup plane =
        new WeldGroup(
            "weld",
            List.of(WeldGroup.Run.around(mm(50), mm(40))),
            SEAM,
            WeldGroup.Parent.of(Parts.S355, mm(3)));
    double expected = plane.largestForce(load);
    assertEquals(expected, bracket(Wrap.ONE_FACE).largestForce(load), 1e-9 * expected);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void the_forces_along_its_weld_add_up_to_the_load(long seed) {
    Random random = new Random(seed);
    for (Wrap wrap : Wrap.values()) {
      Wrench load = Rigid.wrench(random);
      Point at = Rigid.point(random);
      SpaceLines lines = bracket(wrap).lines();
      List<SpaceLines.Share> shares = lines.shares(load, at);
      Wrench sum = Wrench.ZERO;
      for (int i = 0; i < lines.lines().size(); i++) {
        SpaceLines.Line line = lines.lines().get(i);
        Vector3D from = shares.get(2 * i).force();
        Vector3D to = shares.get(2 * i + 1).force();
        sum = sum.plus(part(line.from(), from, line.length() / 6));
        Vector3D middle = from.add(to).scalarMultiply(0.5);
        sum =
            sum.plus(
                part(
                    line.from().add(line.to()).scalarMultiply(0.5), middle, 4 * line.length() / 6));
        sum = sum.plus(part(line.to(), to, line.length() / 6));
      }
      Wrench left = sum.plus(load.moved(at, Bracket.ORIGIN).times(-1));
      double[] rest = {left.fx(), left.fy(), left.fz(), left.mx(), left.my(), left.mz()};
      for (double each : rest) {
        assertEquals(0, each, 1e-8, wrap + " of seed " + seed);
      }
    }
  }

  /** A force on a place, about the origin. */
  private static Wrench part(Vector3D at, Vector3D force, double length) {
    return Wrench.force(force.getX() * length, force.getY() * length, force.getZ() * length)
        .moved(new Point(at.getX(), at.getY(), at.getZ()), Bracket.ORIGIN);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void the_same_load_said_at_another_place_gives_the_same_answer(long seed) {
    Random random = new Random(seed);
    Wrench wrench = Rigid.wrench(random);
    Point from = Rigid.point(random);
    Point to = Rigid.point(random);
    for (Wrap wrap : Wrap.values()) {
      double here = bracket(wrap).largestForce(Parts.load(wrench, from));
      double there = bracket(wrap).largestForce(Parts.load(wrench.moved(from, to), to));
      assertEquals(here, there, 1e-9 * here, wrap + " of seed " + seed);
    }
  }

  @ParameterizedTest
  @EnumSource(Wrap.class)
  void a_tab_across_the_rail_turns_its_load_onto_the_rails_axes(Wrap wrap) {
    Bracket along = bracket(wrap);
    Bracket across =
        new Bracket("bracket", RAIL, along.outline(), new Stand(wrap, Foot.ACROSS_RAIL), SEAM);
    // A force along the pin of a tab across the rail runs along the rail.
    FaceLoad onPin = Parts.load(Wrench.force(0, 2000, 0), new Point(0, 0, 0.04));
    FaceLoad onFoot = Parts.load(Wrench.force(2000, 0, 0), new Point(0, 0, 0.04));
    assertEquals(along.largestForce(onFoot), across.largestForce(onPin), 1e-6);
    // A force along its foot runs across the rail, towards −c.
    FaceLoad foot = Parts.load(Wrench.force(-2000, 0, 0), new Point(0, 0, 0.04));
    assertEquals(along.largestForce(onPin), across.largestForce(foot), 1e-6);
  }

  @Test
  void wrapping_relieves_the_weld_and_takes_the_rocking_off_the_face() {
    FaceLoad load = Parts.load(Wrench.force(0, 3000, 1000), new Point(0, 0, 0.035));
    double one = bracket(Wrap.ONE_FACE).largestForce(load);
    double two = bracket(Wrap.TWO_FACES).largestForce(load);
    double three = bracket(Wrap.OVER_TOP).largestForce(load);
    assertTrue(two < one && three < two, one + " " + two + " " + three);
    List<Check> wrapped = bracket(Wrap.OVER_TOP).checks(load);
    assertTrue(wrapped.stream().noneMatch(check -> check.what().contains("rocking")));
    assertTrue(
        bracket(Wrap.ONE_FACE).checks(load).stream()
            .anyMatch(check -> check.what().equals("rocking of the face")));
  }

  @Test
  void over_the_top_each_side_takes_half_the_pull_and_a_couple() {
    // 2 kN pull and 30 N·m about the rail, sides 40 mm apart: 1000 + 750 N on the worse side.
    FaceLoad load = Parts.load(new Wrench(0, 0, 2000, 30, 0, 0), new Point(0, 0, 0));
    Check side = Parts.named(bracket(Wrap.OVER_TOP).checks(load), "side along itself");
    double length = 0.04 + 0.05 + 0.04;
    assertEquals(1750 / length, side.verdict().numbers().orElseThrow().demand(), 1e-6);
  }

  @Test
  void on_two_faces_a_load_off_the_side_rocks_the_face_besides() {
    FaceLoad load = Parts.load(Wrench.force(0, 0, 1000), new Point(0, 0, 0.03));
    List<Check> checks = bracket(Wrap.TWO_FACES).checks(load);
    assertTrue(
        checks.stream().anyMatch(check -> check.what().equals("rocking of the face")), "" + checks);
    FaceLoad overSide = Parts.load(Wrench.force(0, 0, 1000), new Point(0, 0.02, 0.03));
    assertTrue(
        bracket(Wrap.TWO_FACES).checks(overSide).stream()
            .noneMatch(check -> check.what().equals("rocking of the face")));
  }

  @Test
  void a_narrow_angle_that_leaves_a_rocking_says_that_it_is_not_checked() {
    Bracket narrow =
        new Bracket(
            "bracket",
            RAIL,
            Outline.of(mm(50), mm(20), mm(40)),
            new Stand(Wrap.TWO_FACES, Foot.ALONG_RAIL),
            SEAM);
    List<Check> checks = narrow.checks(Parts.load(Wrench.force(0, 0, 1000), new Point(0, 0, 0.03)));
    assertTrue(Parts.named(checks, "bending of the face").verdict() instanceof Verdict.NotChecked);
  }

  @Test
  void utilisations_grow_in_proportion_to_the_load() {
    Wrench wrench = new Wrench(900, 700, 500, 20, 10, 5);
    for (Wrap wrap : Wrap.values()) {
      List<Check> one = bracket(wrap).checks(Parts.load(wrench, new Point(0, 0, 0.03)));
      List<Check> two = bracket(wrap).checks(Parts.load(wrench.times(2), new Point(0, 0, 0.03)));
      for (int i = 0; i < one.size(); i++) {
        if (one.get(i).utilisation().isPresent()) {
          double expected = 2 * one.get(i).utilisation().orElseThrow();
          assertEquals(
              expected, two.get(i).utilisation().orElseThrow(), 1e-9 * expected, one.get(i).what());
        }
      }
    }
  }

  @Test
  void a_box_is_bent_as_one_closed_section() {
    Tab tab = Parts.tab();
    Tab pair = new Tab("pair", Parts.S355, tab.plate().paired(), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(0, 3000, 0), new Point(0, 0, 0.03));
    List<Check> boxed = pair.boxed(mm(42)).checks(load);
    // 40 along the foot, 42 along the pin, 5 thick: (40·42³ − 30·32³)/(6·42) mm³.
    double modulus = (40 * Math.pow(42, 3) - 30 * Math.pow(32, 3)) / (6 * 42) * 1e-9;
    double shear = 3000 / (2 * 0.042 * 0.005);
    double expected = Math.sqrt(Math.pow(90 / modulus, 2) + 3 * shear * shear);
    assertEquals(expected, Parts.demand(boxed, "bending of the box at the foot"), 1e-6 * expected);
    assertTrue(
        expected < 0.2 * Parts.demand(pair.checks(load), "bending at the foot"), "" + expected);
  }

  @Test
  void what_does_not_fit_is_refused() {
    Refused.with(
        "plate of bracket bracket across the face is 50.00 mm; the rail allows at most 40.00 mm",
        () ->
            new Bracket(
                "bracket",
                RAIL,
                Outline.of(mm(50), mm(50), mm(40)),
                new Stand(Wrap.ONE_FACE, Foot.ALONG_RAIL),
                SEAM));
    Refused.with(
        "weld leg of bracket bracket is 5.000 mm; the rail allows at most 3.000 mm",
        () ->
            new Bracket(
                "bracket",
                RAIL,
                Outline.of(mm(50), mm(40), mm(40)),
                new Stand(Wrap.ONE_FACE, Foot.ALONG_RAIL),
                Seam.fillet(mm(5), MPa(490))));
    Refused.with(
        "bracket bracket goes over the rail; its plate must be as wide as the face, 40.00 mm, not"
            + " 30.00 mm",
        () ->
            new Bracket(
                "bracket",
                RAIL,
                Outline.of(mm(50), mm(30), mm(40)),
                new Stand(Wrap.OVER_TOP, Foot.ALONG_RAIL),
                SEAM));
    Refused.with(
        "tab front tab is one plate; only a pair can be closed into a box",
        () -> Parts.tab().boxed(mm(40)));
  }
}
