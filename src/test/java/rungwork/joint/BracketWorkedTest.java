package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.joint.Parts.named;
import static rungwork.joint.Parts.numbers;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.Bracket.Foot;
import rungwork.joint.Bracket.Outline;
import rungwork.joint.Bracket.Stand;
import rungwork.joint.Bracket.Wrap;
import rungwork.joint.WeldGroup.Seam;
import rungwork.quantity.Units;

/**
 * Brackets of 50 mm along a rail of 40 × 80 × 3 mm S355, welded with a leg of 3 mm, worked by hand
 * with the formulas for lines: a line of length l has l³/12 about its middle.
 */
class BracketWorkedTest {
  private static final Seam SEAM = Seam.fillet(mm(3), MPa(490));
  private static final Point ORIGIN = new Point(0, 0, 0);

  private static TubeWall rail() {
    return TubeWall.of(Parts.S355, mm(40), mm(80), mm(3));
  }

  private static Bracket bracket(Wrap wrap, double across, double sides, Seam seam) {
    return new Bracket(
        "saddle",
        rail(),
        Outline.of(mm(50), mm(across), mm(sides)),
        new Stand(wrap, Foot.ALONG_RAIL),
        seam);
  }

  private static Bracket bracket(Wrap wrap) {
    return bracket(wrap, 40, 40, SEAM);
  }

  private static List<Check> checks(Wrap wrap, Wrench wrench) {
    return bracket(wrap).checks(Parts.load(wrench, ORIGIN));
  }

  /** Newtons per millimetre as newtons per metre. */
  private static double perMm(double force) {
    return force * 1e3;
  }

  @Test
  void its_weld_runs_all_round_on_each_face() {
    // 2·(50 + 40); 2·(40 + 40) across and 2·50 along; 2·(40 + 40 + 40) and 2·50.
    assertEquals(0.180, bracket(Wrap.ONE_FACE).weldLength(), 1e-12);
    assertEquals(0.260, bracket(Wrap.TWO_FACES).weldLength(), 1e-12);
    assertEquals(0.340, bracket(Wrap.OVER_TOP).weldLength(), 1e-12);
    assertEquals(0.340, bracket(Wrap.ONE_FACE).wrapped(Wrap.OVER_TOP).weldLength(), 1e-12);
  }

  @Test
  void the_welds_middle_lies_below_the_face_and_on_two_faces_towards_the_side() {
    // Two faces: c = (80·20 + 50·20 − 50·20)/260, z = −(80·20 + 50·40)/260.
    assertClose(new Vector3D(0, 1.6 / 260, -3.6 / 260), bracket(Wrap.TWO_FACES).lines().centroid());
    // Over the top: z = −(160·20 + 100·40)/340.
    assertClose(new Vector3D(0, 0, -7.2 / 340), bracket(Wrap.OVER_TOP).lines().centroid());
    // A narrow plate on one face stands in its middle, one round an edge at that edge.
    assertClose(Vector3D.ZERO, bracket(Wrap.ONE_FACE, 30, 0, SEAM).lines().centroid());
    // 30 wide: c = (60·5 + 80·20 + 50·20 − 50·10)/240, z = −(80·20 + 50·40)/240.
    assertClose(
        new Vector3D(0, 2.4 / 240, -3.6 / 240),
        bracket(Wrap.TWO_FACES, 30, 40, SEAM).lines().centroid());
  }

  private static void assertClose(Vector3D expected, Vector3D actual) {
    assertEquals(0, expected.distance(actual), 1e-12, () -> expected + " " + actual);
  }

  @Test
  void its_lines_are_named_by_where_they_lie() {
    List<String> names =
        bracket(Wrap.OVER_TOP).lines().lines().stream().map(SpaceLines.Line::name).toList();
    assertEquals(
        List.of(
            "side",
            "across the face",
            "side",
            "side",
            "across the face",
            "side",
            "along the rail",
            "along the rail"),
        names);
    assertEquals("on one face", Wrap.ONE_FACE.words());
    assertEquals("on two faces", Wrap.TWO_FACES.words());
    assertEquals("over the top", Wrap.OVER_TOP.words());
  }

  /**
   * On one face 50 × 40: L = 180, about the cross axis J = 2·40·25² + 2·50³/12 = 70833.3 mm³. A
   * pull of 1800 N with 18 N·m: f = 1800/180 + 18000·25/70833.3 = 16.3529 N/mm at the rear end.
   */
  @Test
  void the_weld_of_a_plate_on_one_face_is_worst_at_the_end_that_the_moment_lifts() {
    List<Check> checks = checks(Wrap.ONE_FACE, new Wrench(0, 0, 1800, 0, 18, 0));
    double worst = perMm(10 + 18000 * 25 / 70833.3333);
    assertEquals(worst, numbers(checks, "base metal beside the weld").demand(), 1e-2);
    assertEquals(
        perMm(355 * 3 / 1.7320508), numbers(checks, "base metal beside the weld").capacity(), 1);
    assertEquals(worst, numbers(checks, "weld throat, simplified").demand(), 1e-2);
    // 470·3/√2/(√3·0.9): no γM2 where nothing is factored.
    assertEquals(
        perMm(470 * 2.1213203 / (1.7320508 * 0.9)),
        numbers(checks, "weld throat, simplified").capacity(),
        1);
    assertEquals(worst, numbers(checks, "weld throat, second opinion").demand(), 1e-2);
    assertEquals(
        perMm(0.6 * 490 * 2.1213203), numbers(checks, "weld throat, second opinion").capacity(), 1);
    Check simplified = named(checks, "weld throat, simplified");
    assertEquals("across the face", simplified.where());
    assertEquals("saddle weld", simplified.part());
    assertEquals(
        "outside EN 1993-1-8: throat 2.121 mm is under 3.000 mm",
        simplified.verdict().reason(Units.METRIC));
    assertEquals(
        List.of(
            "fx = Fx/L + ωy·z − ωz·y = 0 kN / 180.0 mm + 0.2541 MPa · 0 mm − 0 MPa · (-20.00 mm) ="
                + " 0 N/mm",
            "fy = Fy/L + ωz·x − ωx·z = 0 kN / 180.0 mm + 0 MPa · (-25.00 mm) − 0 MPa · 0 mm = 0"
                + " N/mm",
            "fz = Fz/L + ωx·y − ωy·x = 1.800 kN / 180.0 mm + 0 MPa · (-20.00 mm) − 0.2541 MPa ·"
                + " (-25.00 mm) = 16.35 N/mm"),
        simplified.working().subList(0, 3).stream().map(Object::toString).toList());
  }

  @Test
  void a_swing_counts_between_two_loads_on_wall_and_throat() {
    Bracket one = bracket(Wrap.ONE_FACE);
    FaceLoad up = Parts.load(Wrench.force(0, 0, 2000), ORIGIN);
    FaceLoad down = Parts.load(Wrench.force(0, 0, -1000), ORIGIN);
    // 3000 N on 180 mm, on a wall of 3 mm and on a throat of 3/√2.
    assertEquals(3000 / 0.180 / 0.003, one.toeRange(down, up), 1e-3);
    assertEquals(3000 / 0.180 / (0.003 / Math.sqrt(2)), one.rootRange(down, up), 1e-3);
  }

  @Test
  void a_full_penetration_weld_asks_the_base_metal_only() {
    Bracket full = bracket(Wrap.ONE_FACE, 40, 0, Seam.fullPenetration(mm(3), MPa(490)));
    List<String> asked =
        full.checks(Parts.load(Wrench.force(0, 0, 100), ORIGIN)).stream()
            .filter(check -> check.part().equals("saddle weld"))
            .map(Check::what)
            .toList();
    assertEquals(List.of("base metal beside the weld"), asked);
  }

  @Test
  void the_throat_on_an_aluminium_rail_is_not_checked() {
    Bracket soft =
        new Bracket(
            "saddle",
            TubeWall.of(Parts.ALUMINIUM, mm(40), mm(80), mm(3)),
            Outline.of(mm(50), mm(40), mm(0)),
            new Stand(Wrap.ONE_FACE, Foot.ALONG_RAIL),
            SEAM);
    List<Check> checks = soft.checks(Parts.load(Wrench.force(0, 0, 100), ORIGIN));
    assertEquals(
        "EN 1993-1-8 and AISC 360 cover welds of steel only",
        named(checks, "weld throat").verdict().reason(Units.METRIC));
    assertEquals(
        perMm(115 * 3 / 1.7320508), numbers(checks, "base metal beside the weld").capacity(), 1);
  }

  /**
   * Over the top, the face: two lines of 40 mm, 50 apart. J = 2·(40·25² + 40³/12) = 60666.7 mm³. At
   * (25, −20): fx = 800/80 + 10000·20/J = 13.2967, fy = 600/80 + 10000·25/J = 11.6209.
   */
  @Test
  void over_the_top_the_face_takes_what_runs_along_it() {
    List<Check> checks = checks(Wrap.OVER_TOP, new Wrench(800, 600, 0, 0, 0, 10));
    assertEquals(
        perMm(Math.hypot(13.296703, 11.620879)),
        numbers(checks, "face along itself").demand(),
        1e-2);
    assertEquals(perMm(3 * 355 / 1.7320508), numbers(checks, "face along itself").capacity(), 1);
    Check face = named(checks, "face along itself");
    assertEquals("saddle rail wall", face.part());
    assertEquals("rail", face.where());
    assertEquals(perMm(13.296703), face.working().get(0).result(), 1e-2);
    assertEquals(perMm(11.620879), face.working().get(1).result(), 1e-2);
  }

  /**
   * On two faces a line of 50 mm at c = −20 joins them: L = 130, centroid at c = −7.6923, J =
   * 60416.67 + 22974.36 = 83391.03 mm³; about it 10000 − 7.6923·800 = 3846.15 N·mm. At (25, −20):
   * fx = 800/130 + 3846.15·12.3077/J = 6.72150, fy = 600/130 + 3846.15·25/J = 5.76843.
   */
  @Test
  void on_two_faces_the_far_edge_of_the_face_helps() {
    List<Check> checks = checks(Wrap.TWO_FACES, new Wrench(800, 600, 0, 0, 0, 10));
    assertEquals(
        perMm(Math.hypot(6.721500, 5.768430)), numbers(checks, "face along itself").demand(), 0.1);
  }

  /**
   * Over the top, a side: a U of 40, 50 and 40 mm. L = 130, centroid 27.6923 below the face, J =
   * 83391.03 mm³. Half of 2000 N and 30000/40 N give 1750 N, half of 20 N·m gives 10 N·m: at the
   * face's edge fx = 10000·27.6923/J = 3.32078, fy = 1750/130 + 10000·25/J = 16.45947.
   */
  @Test
  void over_the_top_a_side_takes_half_the_pull_a_couple_and_half_the_tipping() {
    List<Check> checks = checks(Wrap.OVER_TOP, new Wrench(0, 0, 2000, 30, 20, 0));
    assertEquals(
        perMm(Math.hypot(3.320780, 16.459473)), numbers(checks, "side along itself").demand(), 0.1);
    Check side = named(checks, "side along itself");
    assertEquals(
        "V = |Fz|/2 + |Mx|/b0 = |2.000 kN| / 2 + |0.03000 kN·m| / 40.00 mm = 1.750 kN",
        side.working().get(0).toString());
  }

  @Test
  void on_two_faces_the_one_side_takes_the_whole_pull_and_tipping() {
    // As above with 1750 N and 10 N·m on one side; the pull acts over it, 20 mm off the middle.
    List<Check> checks = checks(Wrap.TWO_FACES, new Wrench(0, 0, -1750, -35, -10, 0));
    assertEquals(
        perMm(Math.hypot(3.320780, 16.459473)), numbers(checks, "side along itself").demand(), 0.1);
    assertEquals(
        List.of("face along itself", "side along itself"),
        checks.stream()
            .filter(check -> check.part().equals("saddle rail wall"))
            .map(Check::what)
            .toList());
  }

  @Test
  void sides_matter_only_where_there_are_any() {
    assertEquals(0.180, bracket(Wrap.ONE_FACE, 40, 0, SEAM).weldLength(), 1e-12);
    assertEquals(0.180, bracket(Wrap.ONE_FACE, 40, 90, SEAM).weldLength(), 1e-12);
    assertEquals(0.340, bracket(Wrap.TWO_FACES, 40, 80, SEAM).weldLength(), 1e-12);
    Refused.with(
        "sides of bracket saddle 0 mm is not above zero",
        () -> bracket(Wrap.TWO_FACES, 40, 0, SEAM));
    Refused.with(
        "sides of bracket saddle is 81.00 mm; the rail allows at most 80.00 mm",
        () -> bracket(Wrap.OVER_TOP, 40, 81, SEAM));
  }
}
