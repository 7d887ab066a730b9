package rungwork.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.numbers;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Step;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.Bolt;
import rungwork.joint.BoltGroup;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.Pivot;
import rungwork.joint.Spot;
import rungwork.joint.Tab;
import rungwork.material.RatedMaterial;

class JointBoltValidationTest {
  private static final double KSI = 6.894757e6;
  private static final double KIP = 4448.222;
  private static final double INCH = 0.0254;
  private static final Point ORIGIN = new Point(0, 0, 0);

  private static final String ROUNDED =
      "a whole unit of the third digit: the standard rounds some loads up and others down";

  /** One unit of the third digit, as a share of the load. */
  private static final ToDoubleFunction<String> WHOLE_UNIT =
      newtons -> Math.pow(10, newtons.length() - 3) / Double.parseDouble(newtons);

  @ParameterizedTest
  @CsvSource({
    "M6, 8.8, 11600",
    "M8, 8.8, 21200",
    "M10, 8.8, 33700",
    "M12, 8.8, 48900",
    "M14, 8.8, 66700",
    "M16, 8.8, 91000",
    "M20, 8.8, 147000",
    "M8, 10.9, 30400",
    "M10, 10.9, 48100",
    "M12, 10.9, 70000",
    "M16, 10.9, 130000",
    "M10, 12.9, 56300",
    "M12, 12.9, 81800",
    "M12, 4.6, 19000",
    "M10, 5.8, 22000"
  })
  void proof_loads_of_iso_898_1(String size, String grade, String newtons) {
    // The table prints three significant digits and fills up with noughts.
    int nulls = newtons.length() - 3;
    String printed = newtons.substring(0, 3) + "e" + nulls;
    Published.read("ISO 898-1, table of proof loads, coarse thread (reproduction)", size)
        .allowing(WHOLE_UNIT.applyAsDouble(newtons), ROUNDED)
        .value("proof load, class " + grade, "N", printed, Bolt.of(size, grade).proofLoad());
  }

  @ParameterizedTest
  @CsvSource({
    "M6, 8.8, 16100", "M10, 8.8, 46400", "M16, 8.8, 125000", "M20, 8.8, 203000",
    "M10, 10.9, 60300", "M12, 10.9, 87700", "M10, 12.9, 70800", "M12, 12.9, 103000"
  })
  void breaking_loads_of_iso_898_1(String size, String grade, String newtons) {
    int nulls = newtons.length() - 3;
    String printed = newtons.substring(0, 3) + "e" + nulls;
    Published.read("ISO 898-1, table of minimum tensile loads, coarse thread (reproduction)", size)
        .allowing(WHOLE_UNIT.applyAsDouble(newtons), ROUNDED)
        .value("tensile load, class " + grade, "N", printed, Bolt.of(size, grade).tensileLoad());
  }

  @ParameterizedTest
  @CsvSource({
    "8.8, M20, 600, 830, 660",
    "9.8, M12, 650, 900, 720",
    "10.9, M12, 830, 1040, 940",
    "12.9, M12, 970, 1220, 1100"
  })
  void metric_classes(String grade, String size, String proof, String tensile, String yield) {
    Bolt.Minimum minimum = Bolt.of(size, grade).strength().minimum();
    Published.read("Budynas & Nisbett, Shigley's, table 8-11 (ISO 898-1)", grade + ", " + size)
        .value("proof stress", "MPa", proof, minimum.proof() / 1e6)
        .value("tensile", "MPa", tensile, minimum.ultimate() / 1e6)
        .value("yield", "MPa", yield, minimum.yield() / 1e6);
  }

  @ParameterizedTest
  @CsvSource({
    "grade 2, 55, 74, 57",
    "grade 5, 85, 120, 92",
    "grade 7, 105, 133, 115",
    "grade 8, 120, 150, 130"
  })
  void inch_grades(String grade, String proof, String tensile, String yield) {
    Bolt.Minimum minimum = Bolt.of("1/2-13", grade).strength().minimum();
    Published.read("Budynas & Nisbett, Shigley's, table 8-9 (SAE J429)", grade + ", 1/2 in")
        .value("proof stress", "kpsi", proof, minimum.proof() / KSI)
        .value("tensile", "kpsi", tensile, minimum.ultimate() / KSI)
        .value("yield", "kpsi", yield, minimum.yield() / KSI);
  }

  @Test
  void clearance_holes_of_iso_273() {
    Bolt bolt = Bolt.of("M12", "8.8");
    Bolt.Holes holes = bolt.size().holes().orElseThrow();
    Published.read("ISO 273, table (reproduction)", "M12")
        .value("fine", "mm", "13.0", holes.fine() * 1e3)
        .value("medium", "mm", "13.5", holes.medium() * 1e3)
        .value("coarse", "mm", "14.5", holes.coarse() * 1e3);
  }

  @Test
  void a_worked_sheet_of_one_fastener_by_en_1993_1_8() {
    List<Check> checks = sheet(0.0264, 0.0528).checks(pull(1000, 1000));
    Published source =
        Published.read(
            "Design resistance of individual fasteners, EN 1993-1-8, worked sheet",
            "M20 4.6, 8 mm S235");
    source
        .value("Fv,Rd", "kN", "47.04", capacity(checks, "bolt shear") / 1e3)
        .value("Ft,Rd", "kN", "70.56", capacity(checks, "bolt tension") / 1e3)
        .value("Bp,Rd", "kN", "130.288", capacity(checks, "head through the plate") / 1e3)
        .value("αb", "", "0.4", step(checks, "bearing of the plate", "αb").result())
        .value("k1", "", "1.66", step(checks, "bearing of the plate", "k1").result())
        .value("e1", "mm", "26.4", demand(checks, "edge distance") * 1e3)
        .value("p2", "mm", "52.8", demand(checks, "hole distance") * 1e3);
  }

  private static Step step(List<Check> checks, String what, String letter) {
    return Parts.named(checks, what).working().stream()
        .filter(step -> step.formula().result().letter().equals(letter))
        .findFirst()
        .orElseThrow();
  }

  /** Two M20 4.6 in 22 mm holes of an 8 mm plate. */
  private static BoltGroup sheet(double edge, double pitch) {
    return new BoltGroup(
        "sheet",
        Bolt.of("M20", "4.6"),
        Bolt.Threads.IN_PLANE,
        List.of(new Spot(0, 0), new Spot(pitch, 0)),
        new BoltGroup.Plate(Parts.S235, 0.008, 0.022, edge));
  }

  private static FaceLoad pull(double across, double out) {
    Wrench wrench = Wrench.force(across, 0, out);
    Point middle = new Point(0.0264, 0, 0);
    return Parts.coded(wrench, middle);
  }

  @Test
  void shigley_example_8_7_eccentric_bolt_group() {
    List<Spot> spots =
        List.of(
            new Spot(0.075, 0.060),
            new Spot(0.075, -0.060),
            new Spot(-0.075, -0.060),
            new Spot(-0.075, 0.060));
    BoltGroup group =
        new BoltGroup(
            "example 8-7",
            Bolt.of("M16", "8.8"),
            Bolt.Threads.IN_PLANE,
            spots,
            new BoltGroup.Plate(Parts.S235, 0.010, 0.017, 0.030));
    FaceLoad load = Parts.load(Wrench.force(0, -16e3, 0), new Point(0.425, 0, 0));
    List<Double> shears = group.shears(load);
    Published.read("Budynas & Nisbett, Shigley's, 9th ed., example 8-7", "eccentric bolt group")
        .value("FA, FB", "kN", "21.0", shears.get(0) / 1e3)
        .value("FC, FD", "kN", "14.8", shears.get(2) / 1e3)
        .value("shear stress on 144 mm²", "MPa", "146", shears.get(0) / 144)
        .value("moment part", "kN", "17.7", group.shears(moment(6800)).get(0) / 1e3)
        .value("direct part", "kN", "4", group.shears(central()).get(0) / 1e3);
  }

  @Test
  void slip_of_a_bolted_lap_by_aisc_j3_8() {
    // 3/4 in A325: 28 kip each, times Du 1.13; class A in the edition of the example: 0.35.
    BoltGroup pair =
        new BoltGroup(
            "lap",
            Bolt.of("3/4-10", "grade 5"),
            Bolt.Threads.CLEAR,
            List.of(new Spot(0, 0), new Spot(3 * INCH, 0)),
            new BoltGroup.Plate(Parts.A36, 0.5 * INCH, 0.8125 * INCH, 1.5 * INCH));
    FaceLoad load = Parts.load(Wrench.force(1000, 0, 0), new Point(1.5 * INCH, 0, 0));
    // The least clamping force is all of the bolt's proof load, so the mean's 1.13 multiplies
    // after.
    double least = capacity(pair.clamped(kN(28 * KIP / 1e3), 0.35).checks(load), "slip");
    Published.read("A Beginner's Guide to the Steel Construction Manual, example 4.1", "slip")
        .value("rn of a bolt", "kip", "11.1", 1.13 * least / KIP)
        .value("Rn of 11 bolts", "kip", "122", 11 * 1.13 * least / KIP);
  }

  @Test
  void prying_of_a_flange_worked_by_the_aisc_manual() {
    // Bolts of 7/8 in with 90 ksi nominal tension, 3 in of flange each, Fu 65 ksi, 0.715 in thick.
    Bolt bolt =
        new Bolt(
            new Bolt.Size("7/8-9", 0.875 * INCH, 2.98e-4, 0.0365, Optional.empty(), "a test"),
            Bolt.of("3/4-10", "grade 5").strength());
    BoltGroup group =
        new BoltGroup(
            "flange",
            bolt,
            Bolt.Threads.IN_PLANE,
            List.of(new Spot(0, 0), new Spot(3 * INCH, 0)),
            new BoltGroup.Plate(
                Parts.steel("A992", 50 * KSI, 65 * KSI),
                0.715 * INCH,
                0.9375 * INCH,
                1.3125 * INCH));
    Check check =
        Parts.named(
            group
                .pried(mm(2.035 * 25.4), mm(76.2))
                .checks(
                    Parts.coded(Wrench.force(0, 0, 2 * 6.31 * KIP), new Point(1.5 * INCH, 0, 0))),
            "bending of the plate with prying");
    Published.read(
            "Tamboli, Handbook of Structural Steel Connection Design and Details, 2nd ed., chapter"
                + " 2, p. 107",
            "prying of a W16×57 flange")
        .value("bolt, φrn", "kip", "40.6", step(check, "φrn") / KIP)
        .value("b′", "in", "1.598", step(check, "b′") / INCH)
        .value("δ", "1", "0.6875", step(check, "δ"))
        .value("ρ", "1", "0.91", step(check, "ρ"))
        .value("α′", "1", "1.44", step(check, "α′"))
        .value("Td", "kip", "23.7", step(check, "Td") / KIP)
        .allowing(0.0005 / 1.215 + 0.0005, "the book puts 4.44 for 4/0.9 and prints three decimals")
        .value("tc", "in", "1.215", step(check, "tc") / INCH);
  }

  private static double step(Check check, String letter) {
    return check.working().stream()
        .filter(line -> line.formula().result().letter().equals(letter))
        .findFirst()
        .orElseThrow()
        .result();
  }

  private static FaceLoad moment(double torque) {
    return Parts.load(Wrench.moment(0, 0, torque), ORIGIN);
  }

  private static FaceLoad central() {
    return Parts.load(Wrench.force(0, -16e3, 0), ORIGIN);
  }

  @Test
  void aisc_bolt_shear_of_the_steel_manual() {
    // A325 has the strength of grade 5; its nominal shear strength is 54 and 68 ksi.
    Published.read("bracket calculation by AISC 360-10, A325-N bolt", "3/4 in, thread in the plane")
        .value("φRn", "kip", "17.892", second("3/4-10", Bolt.Threads.IN_PLANE) / KIP);
  }

  private static double second(String size, Bolt.Threads threads) {
    Tab tab =
        new Tab(
            "plate",
            Parts.A36,
            Tab.Plate.single(mm(10), mm(80), mm(60)),
            new Tab.Eye(Bolt.of(size, "grade 5"), 0.0206, 0.040));
    List<Check> checks =
        new Pivot("bolt", tab, threads, new Pivot.Stack(0, 0.01))
            .checks(Parts.coded(Wrench.force(0, 0, 1), tab.hole()));
    return capacity(checks, "bolt shear, second opinion");
  }

  @ParameterizedTest
  @CsvSource({
    "M10, CLEAR, 1, 37.7", "M12, CLEAR, 1, 54.3", "M10, IN_PLANE, 1, 27.8",
    "M12, IN_PLANE, 1, 40.5", "M10, CLEAR, 1.25, 30.2", "M12, CLEAR, 1.25, 43.4",
    "M10, IN_PLANE, 1.25, 22.3", "M12, IN_PLANE, 1.25, 32.4"
  })
  void single_shear_of_class_8_8(String size, Bolt.Threads threads, double gamma, String printed) {
    Tab tab = plate(size, Parts.S355);
    FaceLoad load =
        new FaceLoad(
            "pull", Wrench.force(0, 0, 1), tab.hole(), new Factors(DesignFactor.NONE, gamma, 0.75));
    List<Check> checks = new Pivot("bolt", tab, threads, new Pivot.Stack(0, 0.01)).checks(load);
    Published.identity("0.6·fub·A/γM2 of EN 1993-1-8, table 3.4", size + " 8.8, " + threads)
        .value("Fv, γM2 " + gamma, "kN", printed, capacity(checks, "bolt shear") / 1e3);
  }

  @Test
  void bearing_of_a_3_mm_tab() {
    Published source =
        Published.identity("EN 1993-1-8, table 3.4, e1 = 1.5·d0, γM2 = 1.25", "M10, 3 mm");
    source
        .value("S235", "kN", "10.8", bearing(Parts.S235) / 1e3)
        .value("S355", "kN", "14.1", bearing(Parts.S355) / 1e3);
  }

  private static double bearing(RatedMaterial material) {
    Tab tab = plate("M10", material);
    FaceLoad load = Parts.coded(Wrench.force(0, 0, 1), tab.hole());
    Pivot pivot = new Pivot("bolt", tab, Bolt.Threads.IN_PLANE, new Pivot.Stack(0, 0.01));
    return capacity(pivot.checks(load), "bearing of the tab");
  }

  /** A 3 mm tab whose edges are 1.5 holes from the hole's centre. */
  private static Tab plate(String size, RatedMaterial material) {
    Bolt bolt = Bolt.of(size, "8.8");
    double hole = bolt.size().holes().orElseThrow().fine();
    Tab.Plate outline = new Tab.Plate(Tab.Count.SINGLE, 0.003, 3 * hole, 3 * hole, 0.05);
    return new Tab("tab", material, outline, new Tab.Eye(bolt, hole, 1.5 * hole));
  }

  @Test
  void aisc_example_d_7_pin_connected_plate() {
    // The example's 1 in pin in a 1.03 in hole; the table's nearest bolt is made to measure.
    Bolt half = Bolt.of("1/2-13", "grade 5");
    Bolt.Size pin =
        new Bolt.Size("1 in pin", INCH, 0.6 * INCH * INCH, 1.5 * INCH, Optional.empty(), "example");
    Tab tab =
        new Tab(
            "plate",
            Parts.A36,
            new Tab.Plate(Tab.Count.SINGLE, 0.5 * INCH, 4.25 * INCH, 4.25 * INCH, 6 * INCH),
            new Tab.Eye(new Bolt(pin, half.strength()), 1.03 * INCH, (2.25 + 1.03 / 2) * INCH));
    FaceLoad load = Parts.load(Wrench.force(0, 0, 1000), tab.hole());
    List<Check> checks = tab.checks(load);
    Published source =
        Published.read("AISC Design Examples v14, example D.7", "pin-connected plate");
    source
        .value("shear rupture", "kip", "95.7", capacity(checks, "shearing out of the hole") / KIP)
        .value("bearing", "kip", "32.4", capacity(checks, "bearing in the hole") / KIP);
    Published.read(
            "AISC Design Examples v14, example D.7, be limited by the edge", "pin-connected plate")
        .value("tensile rupture", "kip", "93.4", capacity(checks, "tearing beside the hole") / KIP);
  }

  @Test
  void bth_1_lifting_lugs() {
    Published.read("lifting lug by ASME BTH-1-2014, worked sheet", "0.75 in lug of A36, Nd 3")
        .value("Cr", "", "0.8583533", lug(SMALL, 3, "Cr"))
        .value("beff", "in", "0.9321", lug(SMALL, 3, "be") / INCH)
        .value("Pt", "kip", "19.3343", lug(SMALL, 3, "Pt") / KIP)
        .value("Pb", "kip", "17.0312", lug(SMALL, 3, "Pb") / KIP);
    Published.read("lifting lug by ASME BTH-1-2005, worked sheet", "0.75 in lug of A36, Nd 2")
        .value("Cr", "", "0.841", lug(LARGE, 2, "Cr"))
        .value("beff", "in", "1.62", lug(LARGE, 2, "be") / INCH)
        .value("Pt", "kip", "49.30", lug(LARGE, 2, "Pt") / KIP)
        .value("Pb", "kip", "68.76", lug(LARGE, 2, "Pb") / KIP);
  }

  /** Pin, hole, width beside the hole, and hole's centre to the end, in inches. */
  private static final double[] SMALL = {0.75, 0.875, 1.0625, 1.5};

  private static final double[] LARGE = {1.375, 1.6875, 1.66, 4.15625};

  private static double lug(double[] inches, double nd, String letter) {
    double pin = inches[0] * INCH;
    double width = (inches[1] + 2 * inches[2]) * INCH;
    Bolt.Size size =
        new Bolt.Size("pin", pin, 0.6 * pin * pin, 1.5 * pin, Optional.empty(), "example");
    Bolt bolt = new Bolt(size, Bolt.of("1/2-13", "grade 5").strength());
    Tab tab =
        new Tab(
            "lug",
            Parts.A36,
            new Tab.Plate(Tab.Count.SINGLE, 0.75 * INCH, width, width, 6 * INCH),
            new Tab.Eye(bolt, inches[1] * INCH, inches[3] * INCH));
    Factors factors = new Factors(new DesignFactor(nd, "Nd"), 1, 1);
    FaceLoad load = new FaceLoad("lift", Wrench.force(0, 0, 1000), tab.hole(), factors);
    String what =
        letter.equals("Pb")
            ? "splitting of the end (hoop), second opinion"
            : "tearing beside the hole, second opinion";
    return step(tab.checks(load), what, letter).result();
  }

  @Test
  void bending_of_a_bolt_across_a_gap() {
    Tab tab = plate("M12", Parts.S355);
    Pivot single = new Pivot("bolt", tab, Bolt.Threads.CLEAR, new Pivot.Stack(0.003, 0.010));
    FaceLoad load = Parts.load(Wrench.force(3000, 0, 4000), tab.hole());
    Published.identity("F·(t/2 + gap + b/2)", "5 kN, tab 3 mm, gap 3 mm, ball 10 mm")
        .value("M", "N·m", "47.5", single.bendingMoment(load));
    Tab pair = new Tab(tab.name(), tab.material(), tab.plate().paired(), tab.eye());
    Pivot doubled = new Pivot("bolt", pair, Bolt.Threads.CLEAR, new Pivot.Stack(0.003, 0.010));
    Published.identity(
            "F/8·(b + 4c + 2a), EN 1993-1-8, figure 3.11",
            "5 kN, pair of 3 mm, gap 3 mm, ball 10 mm")
        .value("M", "N·m", "17.5", doubled.bendingMoment(load));
    double bending = numbers(single.checks(load), "bolt bending, first yield").demand();
    double shank = Math.PI * 0.012 * 0.012 / 4;
    double sigma = 32 * 47.5 / (Math.PI * Math.pow(0.012, 3));
    double expected = Math.sqrt(sigma * sigma + 3 * Math.pow(5000 / shank, 2));
    assertEquals(expected, bending, 1e-6 * expected);
    assertEquals(5000, demand(single.checks(load), "bolt shear"), 1e-9);
  }
}
