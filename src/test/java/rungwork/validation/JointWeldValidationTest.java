package rungwork.validation;

import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.demand;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.Spot;
import rungwork.joint.WeldGroup;
import rungwork.joint.WeldGroup.Kind;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.material.RatedMaterial;

class JointWeldValidationTest {
  private static final double INCH = 0.0254;
  private static final double KSI = 6.894757e6;
  private static final double KIP = 4448.222;
  private static final Point ORIGIN = new Point(0, 0, 0);

  /** Half a unit of the last digit of J as the book prints it, relative to J. */
  private static final double ROUNDED_J = 0.005 / 1.18;

  private static final String REASON =
      "half a unit of the printed J = 1.18, which the book goes on with";

  /** The whole length counts, as in the handbooks: the throat is given as a filled thickness. */
  private static WeldGroup whole(double throat, Run... runs) {
    return new WeldGroup(
        "weld",
        List.of(runs),
        new Seam(Kind.FULL_PENETRATION, throat, 490e6),
        new Parent(Parts.S355, 2 * throat));
  }

  private static Run line(double x1, double y1, double x2, double y2) {
    return Run.through(new Spot(x1, y1), new Spot(x2, y2));
  }

  @Test
  void shigley_problem_9_5_two_parallel_welds() {
    double throat = 0.707 * 5 / 16 * INCH;
    WeldGroup weld = whole(throat, line(-INCH, -INCH, -INCH, INCH), line(INCH, -INCH, INCH, INCH));
    FaceLoad direct = Parts.load(Wrench.force(0, -KIP, 0), ORIGIN);
    FaceLoad eccentric = Parts.load(Wrench.force(0, -KIP, 0), new Point(7 * INCH, 0, 0));
    FaceLoad twist = Parts.load(Wrench.moment(0, 0, 7 * INCH * KIP), ORIGIN);
    double stress = weld.largestForce(eccentric) / throat / KSI;
    Published source =
        Published.read("Budynas & Nisbett, Shigley's, 8th ed., problem 9-5", "two welds of 2 in");
    source
        .value("τ′ for 1 kip", "kpsi", "1.13", weld.largestForce(direct) / throat / KSI)
        .value("Ju", "in³", "5.333", polar(weld, Math.sqrt(2) * INCH) / Math.pow(INCH, 3))
        .value("J", "in⁴", "1.18", throat * polar(weld, Math.sqrt(2) * INCH) / Math.pow(INCH, 4));
    source
        .allowing(ROUNDED_J, REASON)
        .value(
            "τ″x for 1 kip",
            "kpsi",
            "5.93",
            weld.largestForce(twist) / Math.sqrt(2) / throat / KSI);
    source.allowing(ROUNDED_J, REASON).value("τmax for 1 kip", "kpsi", "9.22", stress);
    source
        .value("F for 20 kpsi", "kip", "2.17", 20 / stress)
        .value("F for 11 kpsi", "kip", "1.19", 11 / stress);
  }

  /** The polar second moment of a weld, found from what a torque does at a distance. */
  private static double polar(WeldGroup weld, double farthest) {
    return farthest / weld.largestForce(Parts.load(Wrench.moment(0, 0, 1), ORIGIN));
  }

  @Test
  void shigley_unit_properties_of_weld_lines() {
    double b = 0.06;
    double d = 0.10;
    Published source =
        Published.identity(
            "Budynas & Nisbett, Shigley's, tables 9-1 and 9-2, b 60, d 100 mm", "unit");
    Run left = line(-b / 2, -d / 2, -b / 2, d / 2);
    Run right = line(b / 2, -d / 2, b / 2, d / 2);
    Run below = line(-b / 2, -d / 2, b / 2, -d / 2);
    Run above = line(-b / 2, d / 2, b / 2, d / 2);
    double corner = Math.hypot(b, d) / 2;
    source
        .value("Ju of one line", "cm³", "83.33", polar(whole(0.003, left), d / 2) * 1e6)
        .value("Ju of two lines", "cm³", "346.7", polar(whole(0.003, left, right), corner) * 1e6)
        .value("Ju of a box", "cm³", "682.7", polar(box(b, d), corner) * 1e6)
        .value("Iu of two lines", "cm³", "166.7", bending(whole(0.003, left, right), d / 2) * 1e6)
        .value(
            "Iu of two cross lines",
            "cm³",
            "300.0",
            bending(whole(0.003, below, above), d / 2) * 1e6)
        .value("Iu of a box", "cm³", "466.7", bending(box(b, d), d / 2) * 1e6);
    double below2 = d * d / (2 * (b + d));
    double beside = b * b / (2 * (b + d));
    WeldGroup angle = whole(0.003, line(0, 0, 0, d), line(0, 0, b, 0));
    source.value("Ju of an L", "cm³", "228.8", polar(angle, Math.hypot(beside, d - below2)) * 1e6);
    WeldGroup channel =
        whole(0.003, Run.through(new Spot(b, 0), new Spot(0, 0), new Spot(0, d), new Spot(b, d)));
    double middle = b * b / (2 * b + d);
    source.value("Ju of a C", "cm³", "468.4", polar(channel, Math.hypot(b - middle, d / 2)) * 1e6);
  }

  private static WeldGroup box(double b, double d) {
    return new WeldGroup(
        "weld",
        List.of(Run.around(mm(b * 1e3), mm(d * 1e3))),
        new Seam(Kind.FULL_PENETRATION, 0.003, 490e6),
        new Parent(Parts.S355, 0.006));
  }

  private static double bending(WeldGroup weld, double farthest) {
    return farthest / weld.largestForce(Parts.load(Wrench.moment(1, 0, 0), ORIGIN));
  }

  @Test
  void shigley_9_4_and_9_1_parallel_and_transverse_welds() {
    double throat = 5.0 / 16 / Math.sqrt(2) * INCH;
    WeldGroup two = whole(throat, line(0, 0, 4 * INCH, 0), line(0, 2 * INCH, 4 * INCH, 2 * INCH));
    FaceLoad pull = Parts.load(Wrench.force(32 * KIP, 0, 0), new Point(0, INCH, 0));
    Published.read("Budynas & Nisbett, Shigley's, 8th ed., problem 9-4", "32 kip on two 4 in welds")
        .value("τ", "kpsi", "18.1", two.largestForce(pull) / throat / KSI);
    WeldGroup one = whole(throat, line(0, 0, 4 * INCH, 0));
    double unit = one.largestForce(Parts.load(Wrench.force(KIP, 0, 0), ORIGIN)) / throat / KSI;
    Published.read(
            "Budynas & Nisbett, Shigley's, 8th ed., problem 9-1", "4 in of 5/16 in at 20 kpsi")
        .value("F", "kip", "17.7", 20 / unit);
  }

  @Test
  void bhandari_8_9_eccentric_fillet() {
    WeldGroup weld =
        whole(0.004, line(-0.025, -0.025, 0.025, -0.025), line(-0.025, 0.025, 0.025, 0.025));
    FaceLoad load = Parts.load(Wrench.force(0, -7500, 0), new Point(0.125, 0, 0));
    Published.read("V. B. Bhandari, Design of Machine Elements, example 8.9", "7.5 kN at 125 mm")
        .value("throat for 100 MPa", "mm", "4.54", weld.largestForce(load) / 100e6 * 1e3);
  }

  @Test
  void aisc_strength_of_a_fillet() {
    List<Check> allowed =
        pull(
            fillet(3.0 / 8 * INCH, 70 * KSI, Parts.S355),
            new Factors(new DesignFactor(2, "Ω"), 1, 1));
    Published.read(
            "Budynas & Nisbett, Shigley's, example 9-2 (0.30 FEXX on the throat)", "3/8 in, E70")
        .value("allowed force", "kip/in", "5.57", second(allowed) / KIP * INCH);
    List<Check> nominal = pull(fillet(0.25 * INCH, 70 * KSI, Parts.S355), Factors.UNFACTORED);
    Published.memory("AISC 360, J2.4: 0.60 FEXX on the throat", "1/4 in, E70")
        .value("nominal strength", "kip/in", "7.42", second(nominal) / KIP * INCH);
    List<Check> sixteenth =
        pull(fillet(INCH / 16, 70 * KSI, Parts.S355), new Factors(DesignFactor.NONE, 1, 0.75));
    Published.memory("AISC Steel Construction Manual, part 8", "1/16 in of leg, E70")
        .value("φrn", "kip/in", "1.392", second(sixteenth) / KIP * INCH);
  }

  private static double second(List<Check> checks) {
    return capacity(checks, "weld throat, second opinion");
  }

  @ParameterizedTest
  @CsvSource({
    "3, S235, 441",
    "3, S355, 512",
    "4, S235, 588",
    "4, S355, 682",
    "5, S235, 735",
    "5, S355, 853"
  })
  void simplified_strength_by_leg(double leg, String grade, String printed) {
    RatedMaterial material = grade.equals("S235") ? Parts.S235 : Parts.S355;
    List<Check> checks =
        pull(fillet(leg * 1e-3, 490e6, material), new Factors(DesignFactor.NONE, 1.25, 0.75));
    Published.identity("fu/(√3·βw·γM2) times 0.707 of the leg", leg + " mm leg, " + grade)
        .value("Fw,Rd", "N/mm", printed, capacity(checks, "weld throat, simplified") / 1e3);
  }

  @ParameterizedTest
  @CsvSource({"S275, 0.94, 1.15", "S355, 1.01, 1.24"})
  void handbook_strengths_of_a_6_mm_fillet(String grade, String along, String across) {
    RatedMaterial material = grade.equals("S275") ? Parts.steel("S275", 275e6, 410e6) : Parts.S355;
    WeldGroup weld = fillet(4.2e-3 * Math.sqrt(2), 490e6, material);
    Factors factors = new Factors(DesignFactor.NONE, 1.25, 0.75);
    Published.memory(
            "Steel building design: design data (P363), fillet welds, throat 4.2 mm", grade)
        .value("along", "kN/mm", along, directional(weld, factors, Wrench.force(1e3, 0, 0)) / 1e6)
        .value(
            "across", "kN/mm", across, directional(weld, factors, Wrench.force(0, 0, 1e3)) / 1e6);
  }

  /** The force on a length at which the directional method is used up [N/m]. */
  private static double directional(WeldGroup weld, Factors factors, Wrench wrench) {
    FaceLoad load = new FaceLoad("pull", wrench, ORIGIN, factors);
    List<Check> checks = weld.checks(load);
    double use =
        demand(checks, "weld throat, directional") / capacity(checks, "weld throat, directional");
    return weld.largestForce(load) / use;
  }

  private static WeldGroup fillet(double leg, double electrode, RatedMaterial material) {
    return new WeldGroup(
        "weld",
        Run.bothSides(mm(100), mm(6)),
        new Seam(Kind.FILLET, leg, electrode),
        new Parent(material, 0.012));
  }

  private static List<Check> pull(WeldGroup weld, Factors factors) {
    return weld.checks(new FaceLoad("pull", Wrench.force(0, 0, 1e3), ORIGIN, factors));
  }
}
