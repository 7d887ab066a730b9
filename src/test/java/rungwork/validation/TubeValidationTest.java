package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.section.Properties;
import rungwork.section.Section;

/** Hollow sections against the tables of their standards. */
class TubeValidationTest {
  private static final double STEEL = 7850;

  @ParameterizedTest
  @CsvSource({
    "40, 20, 2.0, 1.68, 2.14, 4.05, 2.02, 2.61, 1.38, 1.34, 1.34, 1.60, 0.79, 3.45, 2.36",
    "40, 20, 2.5, 2.03, 2.59, 4.69, 2.35, 3.09, 1.35, 1.54, 1.54, 1.88, 0.77, 4.06, 2.72",
    "40, 20, 3.0, 2.36, 3.01, 5.21, 2.60, 3.50, 1.32, 1.68, 1.68, 2.12, 0.75, 4.57, 3.00",
    "40, 30, 2.0, 1.99, 2.54, 5.49, 2.75, 3.37, 1.47, 3.51, 2.34, 2.77, 1.18, 7.07, 3.79",
    "40, 30, 3.0, 2.83, 3.61, 7.27, 3.63, 4.61, 1.42, 4.60, 3.07, 3.77, 1.13, 9.72, 5.03",
    "50, 30, 2.0, 2.31, 2.94, 9.54, 3.81, 4.74, 1.80, 4.29, 2.86, 3.33, 1.21, 9.77, 4.84",
    "50, 30, 2.5, 2.82, 3.59, 11.30, 4.52, 5.70, 1.77, 5.05, 3.37, 3.98, 1.19, 11.74, 5.72",
    "50, 30, 4.0, 4.20, 5.35, 15.25, 6.10, 8.05, 1.69, 6.69, 4.46, 5.58, 1.12, 16.53, 7.71",
    "60, 40, 2.5, 3.60, 4.59, 22.07, 7.36, 9.06, 2.19, 11.74, 5.87, 6.84, 1.60, 25.14, 9.72",
    "40, 30, 2.5, 2.42, 3.09, 6.45, 3.23, 4.03, 1.45, 4.10, 2.74, 3.30, 1.15, 8.47, 4.46",
    "50, 30, 3.0, 3.30, 4.21, 12.83, 5.13, 6.57, 1.75, 5.70, 3.80, 4.58, 1.16, 13.53, 6.49",
    "60, 40, 2.0, 2.93, 3.74, 18.41, 6.14, 7.47, 2.22, 9.83, 4.92, 5.65, 1.62, 20.70, 8.12",
    "60, 40, 3.0, 4.25, 5.41, 25.38, 8.46, 10.53, 2.17, 13.44, 6.72, 7.94, 1.58, 29.28, 11.17"
  })
  void cold_formed_rectangular_tubes_agree_with_the_standard_s_table(
      double h,
      double b,
      double t,
      String m,
      String a,
      String iy,
      String wely,
      String wply,
      String ry,
      String iz,
      String welz,
      String wplz,
      String rz,
      String it,
      String ct) {
    Section tube = Section.rectangularTube(mm(h), mm(b), mm(t));
    Properties p = tube.properties();
    Published.read("EN 10219-2:2006, table of rectangular sections", tube.name())
        .value("mass", "kg/m", m, p.area() * STEEL)
        .value("A", "cm²", a, p.area() * 1e4)
        .value("Iy", "cm⁴", iy, p.iy() * 1e8)
        .value("Wel,y", "cm³", wely, p.wely() * 1e6)
        .value("Wpl,y", "cm³", wply, p.wply() * 1e6)
        .value("iy", "cm", ry, Math.sqrt(p.iy() / p.area()) * 1e2)
        .value("Iz", "cm⁴", iz, p.iz() * 1e8)
        .value("Wel,z", "cm³", welz, p.welz() * 1e6)
        .value("Wpl,z", "cm³", wplz, p.wplz() * 1e6)
        .value("iz", "cm", rz, Math.sqrt(p.iz() / p.area()) * 1e2)
        .value("It", "cm⁴", it, p.it() * 1e8)
        .value("Ct", "cm³", ct, torsionModulus(tube));
  }

  @ParameterizedTest
  @CsvSource({
    "40, 3, 4.21, 9.32, 1.49, 4.66, 5.72, 15.8, 7.07, 3.30",
    "50, 3, 5.41, 19.5, 1.90, 7.79, 9.39, 32.1, 11.8, 4.25",
    "60, 3, 6.61, 35.1, 2.31, 11.7, 14.0, 57.1, 17.7, 5.19"
  })
  void cold_formed_square_tubes_agree_with_the_standard_s_table(
      double b,
      double t,
      String a,
      String i,
      String r,
      String wel,
      String wpl,
      String it,
      String ct,
      String m) {
    Section tube = Section.squareTube(mm(b), mm(t));
    square(Published.memory("EN 10219-2:2006, Annex C", tube.name()), tube)
        .give(a, i, r, wel, wpl, it, ct, m);
  }

  @ParameterizedTest
  @CsvSource({
    "50, 5, 8.73, 28.9, 1.82, 11.6, 14.5, 47.6, 16.7, 6.85",
    "60, 5, 10.7, 53.3, 2.23, 17.8, 21.9, 86.4, 25.7, 8.42",
    "80, 5, 14.7, 137, 3.05, 34.2, 41.1, 217, 49.8, 11.6"
  })
  void hot_finished_square_tubes_agree_with_the_standard_s_table(
      double b,
      double t,
      String a,
      String i,
      String r,
      String wel,
      String wpl,
      String it,
      String ct,
      String m) {
    Section tube = Section.hotFinishedTube(mm(b), mm(b), mm(t));
    square(Published.memory("EN 10210-2:2006, Annex B", tube.name()), tube)
        .give(a, i, r, wel, wpl, it, ct, m);
  }

  @ParameterizedTest
  @CsvSource({
    "33.7, 3.2, 3.07, 3.60, 1.08, 2.14, 2.99, 7.21, 4.28, 2.41",
    "60.3, 3.2, 5.74, 23.5, 2.02, 7.78, 10.4, 46.9, 15.6, 4.51",
    "88.9, 4.0, 10.7, 96.3, 3.00, 21.7, 28.9, 193, 43.3, 8.38"
  })
  void round_tubes_agree_with_the_standard_s_table(
      double d,
      double t,
      String a,
      String i,
      String r,
      String wel,
      String wpl,
      String it,
      String ct,
      String m) {
    Section tube = Section.roundTube(mm(d), mm(t));
    square(Published.memory("EN 10219-2:2006, table of circular sections", tube.name()), tube)
        .give(a, i, r, wel, wpl, it, ct, m);
  }

  @ParameterizedTest
  @CsvSource({
    "40, 40, 2, 2.94, 6.9, 3.47, 4.13, 6.9, 11.3, 2.31",
    "50, 50, 3, 5.41, 19.5, 7.79, 9.39, 19.5, 32.1, 4.25",
    "80, 40, 3, 6.61, 52.3, 13.06, 16.54, 17.6, 43.9, 5.19",
    "100, 50, 3, 8.41, 106.5, 21.29, 26.66, 36.1, 88.6, 6.60",
    "100, 50, 4, 10.95, 134.1, 26.83, 34.10, 44.9, 113.0, 8.59"
  })
  void builders_sizes_agree_with_the_standard_s_formulas_worked_by_hand(
      double h,
      double b,
      double t,
      String a,
      String iy,
      String wel,
      String wpl,
      String iz,
      String it,
      String m) {
    Section tube = Section.rectangularTube(mm(h), mm(b), mm(t));
    Properties p = tube.properties();
    Published.derived("EN 10219-2:2006, Annex B, its formulas worked separately", tube.name())
        .value("A", "cm²", a, p.area() * 1e4)
        .value("Iy", "cm⁴", iy, p.iy() * 1e8)
        .value("Wel,y", "cm³", wel, p.wely() * 1e6)
        .value("Wpl,y", "cm³", wpl, p.wply() * 1e6)
        .value("Iz", "cm⁴", iz, p.iz() * 1e8)
        .value("It", "cm⁴", it, p.it() * 1e8)
        .value("mass", "kg/m", m, p.area() * STEEL);
  }

  private interface Square {
    void give(String a, String i, String r, String wel, String wpl, String it, String ct, String m);
  }

  private static Square square(Published published, Section tube) {
    Properties p = tube.properties();
    return (a, i, r, wel, wpl, it, ct, m) ->
        published
            .value("A", "cm²", a, p.area() * 1e4)
            .value("I", "cm⁴", i, p.iy() * 1e8)
            .value("i", "cm", r, Math.sqrt(p.iy() / p.area()) * 1e2)
            .value("Wel", "cm³", wel, p.wely() * 1e6)
            .value("Wpl", "cm³", wpl, p.wply() * 1e6)
            .value("It", "cm⁴", it, p.it() * 1e8)
            .value("Ct", "cm³", ct, torsionModulus(tube))
            .value("mass", "kg/m", m, p.area() * STEEL);
  }

  /** Torque for a unit of the greatest stress [cm³]. */
  private static double torsionModulus(Section tube) {
    return 1e6
        / tube.points().stream().mapToDouble(point -> Math.abs(point.perT())).max().orElse(0);
  }
}
