package rungwork.validation;

import static rungwork.joint.Parts.capacity;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.FatigueScreening;
import rungwork.joint.FatigueScreening.Detail;
import rungwork.joint.FatigueScreening.Swings;
import rungwork.joint.Parts;
import rungwork.joint.PlateOnTube;
import rungwork.joint.PlateOnTube.Foot;
import rungwork.joint.PlateOnTube.Way;
import rungwork.joint.TubeWall;

class JointWallValidationTest {
  private static final Point FOOT = new Point(0, 0, 0);
  private static final TubeWall TUBE = TubeWall.of(Parts.S355, mm(100), mm(100), mm(5));

  @Test
  void longitudinal_plate_on_a_tube() {
    PlateOnTube plate = PlateOnTube.of("rail", TUBE, Foot.central(Way.LONGITUDINAL, mm(80), mm(6)));
    List<Check> checks = plate.checks(Parts.load(Wrench.force(0, 0, 1e3), FOOT));
    String pull = "bending of the face by the pull";
    Published.memory("EN 1993-1-8, table 7.13, longitudinal plate", "b0 100, t0 5, h1 80, t1 6")
        .value("N1,Rd", "kN", "48.62", capacity(checks, pull) / 1e3);
    Published.memory("AISC 360, table K2.2, longitudinal plate", "b0 100, t0 5, h1 80, t1 6")
        .value("Rn", "kN", "51.72", capacity(checks, pull + ", second opinion") / 1e3);
  }

  @Test
  void moment_along_the_tube_of_a_longitudinal_plate() {
    double inch = 0.0254;
    double kipInch = 4448.222 * inch;
    TubeWall tube =
        new TubeWall(
            Parts.steel("A500", 46 * 6.894757e6, 58 * 6.894757e6), 8 * inch, 8 * inch, inch / 4);
    PlateOnTube plate =
        PlateOnTube.of("column", tube, new Foot(Way.LONGITUDINAL, 8 * inch, inch / 4, 0));
    FaceLoad load =
        new FaceLoad(
            "reaction",
            Wrench.moment(0, 33 * kipInch, 0),
            FOOT,
            new Factors(new DesignFactor(1.5, "Ω"), 1, 1));
    List<Check> checks = plate.checks(load);
    Published.read(
            "column tab calculated by AISC 360-10, eq. K3-6",
            "HSS 8 in, wall 1/4 in, tab 8 by 1/4 in")
        .value(
            "Mn/1.5",
            "kip·in",
            "54.65",
            capacity(checks, "bending of the face by the moment in the plate's plane") / kipInch);
  }

  @Test
  void arithmetic_of_fatigue_classes() {
    double million =
        63 / Math.cbrt(new FatigueScreening("tab", Detail.FILLET_TOE, swings(63, 1e6), 1).damage());
    Published.identity("Δσ = FAT·(2·10⁶/N)^(1/3)", "FAT 63 at 10⁶ cycles")
        .value("Δσ", "MPa", "79.4", million);
    Detail ninety = new Detail("category 90", 90e6, "the example");
    double damage = new FatigueScreening("part", ninety, swings(60, 1e6), 1).damage();
    Published.read(
            "worked example of Miner's rule, N = 2·10⁶·(90/60)³", "category 90, 60 MPa, 10⁶ cycles")
        .value("D", "", "0.1481", damage)
        .value("N", "", "6750000", 1e6 / damage);
  }

  private static List<Swings> swings(double range, double count) {
    return List.of(Swings.of("all", MPa(range), count));
  }
}
