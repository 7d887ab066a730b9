package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.section.Properties;
import rungwork.section.RolledWalls;
import rungwork.section.Section;
import rungwork.section.StressPoint;

/** Channels, angles, bars and plastic shape factors against tables and textbooks. */
class OpenSectionValidationTest {
  private static final double INCH = 25.4;

  @ParameterizedTest
  @CsvSource({
    "80, 50, 4, 7, 10, 10.1, 107, 26.8, 3.26, 25.5, 8.0, 1.59, 1.82, 3.71, 15.6",
    "100, 55, 4.5, 7.5, 10, 12.5, 207, 41.4, 4.07, 38.3, 10.6, 1.75, 1.91, 3.93, 24.0",
    "160, 70, 5.5, 9.5, 12, 21.7, 911, 114, 6.48, 107, 22.6, 2.22, 2.27, 4.76, 65.8",
    "120, 60, 5, 8, 12, 15.4, 364, 60.6, 4.86, 55.5, 13.8, 1.90, 1.98, 4.12, 35.2",
    "200, 80, 6, 11, 13, 29.0, 191e1, 191, 8.11, 187, 34.5, 2.54, 2.56, 5.41, 110"
  })
  void parallel_flange_channels_agree_with_the_standard_s_table(
      double h,
      double b,
      double tw,
      double tf,
      double r,
      String a,
      String iy,
      String wy,
      String ry,
      String iz,
      String wz,
      String rz,
      String ey,
      String xm,
      String sx) {
    Section channel = Section.rolledChannel(mm(h), mm(b), RolledWalls.of(mm(tw), mm(tf), mm(r)));
    Properties p = channel.properties();
    Published table =
        Published.read("DIN 1026-2 and EN 10365, table of UPE channels", "UPE " + (int) h);
    table
        .value("A", "cm²", a, p.area() * 1e4)
        .value("Iy", "cm⁴", iy, p.iy() * 1e8)
        .value("Wy", "cm³", wy, p.wely() * 1e6)
        .value("iy", "cm", ry, Math.sqrt(p.iy() / p.area()) * 1e2)
        .value("iz", "cm", rz, Math.sqrt(p.iz() / p.area()) * 1e2)
        .value("ey", "cm", ey, -lowest(channel) * 1e2)
        .value("xM", "cm", xm, -p.shearCentreY() * 1e2)
        .value("Sx", "cm³", sx, p.wply() / 2 * 1e6);
    table
        .allowing(
            0.005,
            "about z the table stands up to 0.4 % above its own dimensions with their fillets: "
                + "Iz 25.41, 55.40, 187.3 cm⁴ by two routes")
        .value("Iz", "cm⁴", iz, p.iz() * 1e8)
        .value("Wz", "cm³", wz, p.welz() * 1e6);
  }

  @Test
  void one_channel_of_the_table_has_a_second_moment_rounded_against_its_own_modulus() {
    Section channel = Section.rolledChannel(mm(140), mm(65), RolledWalls.of(mm(5), mm(9), mm(12)));
    Properties p = channel.properties();
    Published table = Published.read("DIN 1026-2 and EN 10365, table of UPE channels", "UPE 140");
    table
        .value("A", "cm²", "18.4", p.area() * 1e4)
        .value("Wy", "cm³", "85.6", p.wely() * 1e6)
        .value("iy", "cm", "5.71", Math.sqrt(p.iy() / p.area()) * 1e2)
        .value("xM", "cm", "4.54", -p.shearCentreY() * 1e2)
        .value("Sx", "cm³", "49.4", p.wply() / 2 * 1e6);
    table
        .allowing(0.0015, "the table prints 600 beside a modulus of 85.6 cm³, which is 599.2 / 7")
        .value("Iy", "cm⁴", "600", p.iy() * 1e8);
  }

  private static double lowest(Section section) {
    return section.points().stream().mapToDouble(StressPoint::y).min().orElse(0);
  }

  @ParameterizedTest
  @CsvSource({
    "C6x8.2, 6.00, 1.920, 0.343, 0.200, 0.599",
    "C8x11.5, 8.00, 2.260, 0.390, 0.220, 0.697"
  })
  void american_channels_have_the_table_s_shear_centre(
      String name, double d, double bf, double tf, double tw, String eo) {
    Published.memory("AISC Steel Construction Manual, table 1-5", name)
        .value("eo", "in", eo, behindWebBack(channel(d, bf, tf, tw)) / INCH);
  }

  @Test
  void a_textbook_channel_has_its_shear_centre() {
    double fromBack = behindWebBack(channel(15.0, 3.520, 0.650, 0.520)) / INCH;
    Published.read(
            "Gere & Goodno, Mechanics of Materials, 7th ed., problem 6.9-1, solution p. 544",
            "C15x40")
        .value("e", "in", "1.027", fromBack + 0.520 / 2);
  }

  private static Section channel(double depth, double flange, double tf, double tw) {
    RolledWalls walls = RolledWalls.of(mm(tw * INCH), mm(tf * INCH), mm(0));
    return Section.rolledChannel(mm(depth * INCH), mm(flange * INCH), walls);
  }

  /** From the back of the web to the shear centre [mm]. */
  private static double behindWebBack(Section channel) {
    return (lowest(channel) - channel.properties().shearCentreY()) * 1e3;
  }

  @Test
  void a_stadium_shaped_tube_twists_as_in_the_textbook() {
    Section tube = Section.rectangularTube(mm(108), mm(208), mm(8), mm(54));
    double t = 8e-3;
    double length = tube.properties().area() / t;
    double open = length * t * t * t / 3;
    double bredt = tube.properties().it() - open;
    double enclosed = Math.sqrt(bredt * length / 4 / t);
    double surface = tube.points().get(0).perT() * tube.properties().it();
    double flow = surface - t;
    Published.read(
            "Gere & Goodno, Mechanics of Materials, 7th ed., problem 3.10-6, solution p. 331",
            "stadium tube 100 + 2 x 50 mm, t = 8 mm, T = 10 kN·m")
        .value("Lm", "mm", "514.2", length * 1e3)
        .value("Am", "mm²", "1785e1", enclosed * 1e6)
        .value("τ, Bredt's term", "MPa", "35.0", 10e3 * flow / bredt / 1e6)
        .value("φ, Bredt's term", "rad", "0.00995", 10e3 * 1.5 / (76e9 * bredt))
        .allowing(0.0005, "the book goes on with Am rounded to 17 850 mm²")
        .value("J, Bredt's term", "10⁶ mm⁴", "19.83", bredt * 1e6);
    Published.identity("area of a rectangle and a circle", "stadium tube 100 + 2 x 50 mm")
        .value("Am", "mm²", "17854", enclosed * 1e6);
  }

  @Test
  void plastic_shape_factors_are_the_known_ones() {
    String source = "B. G. Neal, The Plastic Methods of Structural Analysis, ch. 1";
    Published.memory(source, "solid round bar")
        .value("Wpl/Wel", "", "1.698", shapeFactor(Section.roundBar(mm(30))));
    Published.memory(source, "thin round tube")
        .value("Wpl/Wel", "", "1.273", shapeFactor(Section.roundTube(mm(100), mm(0.01))));
    Published.memory(source, "rectangle")
        .value("Wpl/Wel", "", "1.500", shapeFactor(Section.flatBar(mm(40), mm(8))));
  }

  private static double shapeFactor(Section section) {
    return section.properties().wply() / section.properties().wely();
  }

  @ParameterizedTest
  @CsvSource({"1, 0.1406, 0.208", "2, 0.229, 0.246", "4, 0.281, 0.282", "10, 0.312, 0.312"})
  void bars_twist_as_the_exact_series_says(double ratio, String beta, String alpha) {
    Section bar = Section.flatBar(mm(10 * ratio), mm(10));
    double worst =
        bar.points().stream().mapToDouble(point -> Math.abs(point.perT())).max().orElse(0);
    Published.memory(
            "Timoshenko & Goodier, Theory of Elasticity, torsion of a rectangular bar, table",
            "b/t = " + (int) ratio)
        .value("It/(b t³)", "", beta, bar.properties().it() / (ratio * 1e-8))
        .value("Wt/(b t²)", "", alpha, 1 / worst / (ratio * 1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "50, 5, 7, 4.80, 11.0, 1.40",
    "60, 6, 8, 6.91, 22.8, 1.69",
    "80, 8, 10, 12.3, 72.2, 2.26"
  })
  void equal_angles_agree_with_the_standard_s_table(
      double leg, double t, double r, String a, String i, String e) {
    Section angle = Section.angle(mm(leg), mm(leg), mm(t), mm(r));
    Properties p = angle.properties();
    Published.memory("EN 10056-1, table of equal angles", angle.name())
        .value("A", "cm²", a, p.area() * 1e4)
        .value("I", "cm⁴", i, p.iy() * 1e8)
        .value("c", "cm", e, -lowest(angle) * 1e2);
  }
}
