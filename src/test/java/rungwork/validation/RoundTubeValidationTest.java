package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.section.Properties;
import rungwork.section.Section;

/** Sizes of round tube that small frames are built of, from a catalogue's reproduction. */
class RoundTubeValidationTest {
  private static final double STEEL = 7850;

  @ParameterizedTest
  @CsvSource({
    "42.4, 2.5, 2.46, 3.13, 6.26, 2.95, 3.99",
    "48.3, 3, 3.35, 4.27, 11.0, 4.55, 6.17",
    "60.3, 3, 4.24, 5.4, 22.2, 7.37, 9.86",
    "76.1, 3, 5.41, 6.89, 46.1, 12.1, 16.0",
    "88.9, 4, 8.38, 10.7, 96.3, 21.7, 28.9",
  })
  void cold_formed_round_tube_agrees_with_the_printed_table(
      double outside,
      double wall,
      String mass,
      String area,
      String inertia,
      String elastic,
      String plastic) {
    Section tube = Section.roundTube(mm(outside), mm(wall));
    Properties p = tube.properties();
    Published.read("EN 10219-2, table of cold-formed circular sections (reproduced)", tube.name())
        .value("mass per length", "kg/m", mass, p.area() * STEEL)
        .value("A", "cm²", area, p.area() * 1e4)
        .value("I", "cm⁴", inertia, p.iy() * 1e8)
        .value("Wel", "cm³", elastic, p.wely() * 1e6)
        .value("Wpl", "cm³", plastic, p.wply() * 1e6);
  }
}
