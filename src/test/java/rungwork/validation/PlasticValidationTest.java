package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.section.Outline;
import rungwork.section.Properties;
import rungwork.section.Section;

/** Principal axes, plastic moduli about inclined axes, and plastic bending with axial force. */
class PlasticValidationTest {
  private static final double ABOUT_Z = Math.PI / 2;

  @ParameterizedTest
  @CsvSource({
    "50, 5, 7, 17.4, 4.55",
    "60, 6, 8, 36.1, 9.44",
    "80, 8, 10, 115, 29.9",
  })
  void equal_angles_have_the_table_s_principal_moments(
      double leg, double t, double r, String iu, String iv) {
    Section angle = Section.angle(mm(leg), mm(leg), mm(t), mm(r));
    Published.memory("EN 10056-1, table of equal angles", angle.name())
        .value("Iu", "cm⁴", iu, angle.properties().strongest() * 1e8)
        .value("Iv", "cm⁴", iv, angle.properties().weakest() * 1e8);
  }

  @Test
  void an_unequal_angle_has_the_table_s_principal_axes() {
    Properties p = Section.angle(mm(80), mm(40), mm(6), mm(7)).properties();
    Published.memory("EN 10056-1, table of unequal angles", "L 80x40x6")
        .value("Iy", "cm⁴", "44.9", p.iy() * 1e8)
        .value("Iz", "cm⁴", "7.59", p.iz() * 1e8)
        .value("Iu", "cm⁴", "47.6", p.strongest() * 1e8)
        .value("Iv", "cm⁴", "4.93", p.weakest() * 1e8)
        .value("tan α", "", "0.258", Math.abs(Math.tan(p.principalAngle())));
  }

  @Test
  void a_square_bar_on_its_edge_has_the_known_shape_factor() {
    Outline.Moduli bar = new Outline.Moduli(Section.flatBar(mm(30), mm(30)));
    double plastic = bar.plastic(Math.PI / 4);
    Published.memory(
            "B. G. Neal, The Plastic Methods of Structural Analysis, ch. 1", "square bar on edge")
        .value("Wpl/Wel", "", "2.000", plastic / (2.7e-5 / 6 / Math.sqrt(2)))
        .value("Wpl/a³", "", "0.2357", plastic / 2.7e-5);
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.9600", "0.5, 0.7500", "0.8, 0.3600"})
  void a_solid_rectangle_keeps_one_minus_n_squared_of_its_plastic_moment(double n, String left) {
    Outline.Moduli bar = new Outline.Moduli(Section.flatBar(mm(50), mm(20)));
    Published.memory(
            "B. G. Neal, The Plastic Methods of Structural Analysis, ch. 6: 1 − n²",
            "rectangle, n = " + n)
        .value("M/Mpl", "", left, bar.plastic(0, n) / bar.plastic(0));
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.9511", "0.5, 0.7071", "0.8, 0.3090"})
  void a_thin_round_tube_keeps_the_cosine_of_its_plastic_moment(double n, String left) {
    Outline.Moduli tube = new Outline.Moduli(Section.roundTube(mm(100), mm(0.02)));
    Published.memory(
            "W. F. Chen & T. Atsuta, Theory of Beam-Columns, thin tube: cos(π·n/2)",
            "thin round tube, n = " + n)
        .value("M/Mpl", "", left, tube.plastic(0, n) / tube.plastic(0));
  }

  /** a = (A − 2·b·t)/A = 0.4 and n = 0.5: (1 − 0.5)/(1 − 0.2). */
  @Test
  void a_rectangular_tube_keeps_what_the_standard_says() {
    Section tube = Section.rectangularTube(mm(60), mm(60), mm(3));
    double webs = 1 - 2 * 60 * 3e-6 / tube.properties().area();
    Published.memory("EN 1993-1-1:2005, 6.2.9.1(5)", "SHS 60x3, n = 0.5")
        .value(
            "M/Mpl",
            "",
            String.format(Locale.ROOT, "%.4f", 0.5 / (1 - 0.5 * webs)),
            new Outline.Moduli(tube).byStandard(ABOUT_Z, 0.5));
  }

  /** Sharp corners: the force's level first runs down the webs, then through a flange. */
  @ParameterizedTest
  @CsvSource({"0.1", "0.3", "0.7", "0.9"})
  void a_sharp_rectangular_tube_follows_its_closed_form(double n) {
    double h = 80;
    double b = 40;
    double t = 3;
    Outline.Moduli tube =
        new Outline.Moduli(Section.rectangularTube(mm(h), mm(b), mm(t), mm(1e-6)));
    double area = h * b - (h - 2 * t) * (b - 2 * t);
    double plain = (b * h * h - (b - 2 * t) * Math.pow(h - 2 * t, 2)) / 4;
    double core = n * area / (4 * t);
    double left = plain - 2 * t * core * core;
    if (core > h / 2 - t) {
      double z = h / 2 - area * (1 - n) / (2 * b);
      left = b * (h * h / 4 - z * z);
    }
    Published.derived(
            "yield stress on both sides of a level, sharp corners", "RHS 80x40x3, n = " + n)
        .value(
            "M/fy",
            "cm³",
            String.format(Locale.ROOT, "%.4f", left / 1e3),
            tube.plastic(0, n) * 1e6);
  }
}
