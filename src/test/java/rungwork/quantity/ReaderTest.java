package rungwork.quantity;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.*;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.fault.ModelException;

class ReaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "50 mm | 0.05",
        "50mm | 0.05",
        " +50. mm | 0.05",
        "-.5 mm | -0.0005",
        "5e1 mm | 0.05",
        "3/16 in | 0.0047625",
        "3/16\" | 0.0047625",
        "1 1/2 in | 0.0381",
        "1-1/2 in | 0.0381",
        "-1 1/2 inches | -0.0381",
        "6' | 1.8288",
        "6 ft | 1.8288",
        "2.2 m | 2.2",
        "60 cm | 0.6",
      })
  void lengths_are_read_as_workshops_write_them(String text, double metres) {
    assertEquals(metres, si(text, length(text)), 1e-15 * Math.abs(metres));
  }

  @ParameterizedTest
  @CsvSource({
    "860 N·m, 860 Nm",
    "860 N·m, 860 N*m",
    "860 N·m, 860 N m",
    "355 MPa, 355 N/mm2",
    "355 MPa, 355 N/mm²",
    "4 cm⁴, 4 cm4",
    "4 cm⁴, 4 cm^4",
    "4 cm³, 4 cm3",
    "50 km/h, 50 kmh",
    "3000 N·m/deg, 3000 Nm/deg",
    "12 deg, 12°",
    "5 m/s², 5 m/s2",
    "20 lbf·ft, 20 lbf ft",
    "7850 kg/m³, 7850 kg/m3",
  })
  void a_unit_may_be_spelled_in_several_ways(String first, String second) {
    assertEquals(parse(first), parse(second));
  }

  @Test
  void there_is_a_reader_for_each_kind_that_people_type() {
    assertAll(
        () -> assertEquals(mm(50), length("50 mm")),
        () -> assertEquals(kN(4), force("4 kN")),
        () -> assertEquals(Nm(860), moment("860 N·m")),
        () -> assertEquals(Npm(120), lineLoad("120 N/m")),
        () -> assertEquals(MPa(355), stress("355 MPa")),
        () -> assertEquals(kg(62), mass("62 kg")),
        () -> assertEquals(g(3), acceleration("3 g")),
        () -> assertEquals(kmh(50), speed("50 km/h")),
        () -> assertEquals(kJ(62.2), energy("62.2 kJ")),
        () -> assertEquals(ms(90), time("90 ms")),
        () -> assertEquals(deg(12), angle("12 deg")),
        () -> assertEquals(Npmm(70), stiffness("70 N/mm")),
        () -> assertEquals(Nmpdeg(3000), rotationalStiffness("3000 N·m/deg")));
  }

  @Test
  void every_known_unit_is_read_as_what_its_maker_makes() {
    for (String unit : Vocabulary.known()) {
      assertEquals(Vocabulary.maker(unit).orElseThrow().apply(1.5), parse("1 1/2 " + unit), unit);
    }
  }

  @Test
  void reading_does_not_depend_on_the_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(mm(1.5), length("1.5 mm"));
      assertEquals("1.5 mm", length("1.5 mm").toString());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void nonsense_is_refused_with_what_would_do() {
    String example = "; write a number and a unit, such as 50 mm or 1 1/2 in";
    assertAll(
        () -> refused("\"3/0 in\" divides by zero; a fraction looks like 3/16", "3/0 in"),
        () -> refused("\"NaN mm\" does not begin with a number" + example, "NaN mm"),
        () -> refused("\"\" does not begin with a number" + example, " "),
        () -> refused("\"mm\" does not begin with a number" + example, "mm"),
        () -> refused("\"50\" has no unit" + example, "50"),
        () ->
            refused(
                "\"1,5 mm\" has a comma in its number; write the decimal sign as a point",
                "1,5 mm"),
        () ->
            refused(
                "\"1 3/2 in\" has a fraction of one or more after a whole number; write 1 1/2",
                "1 3/2 in"),
        () -> refused("length in mm is infinite; give a finite number", "1e999 mm"));
  }

  @Test
  void an_unknown_unit_is_refused_with_the_known_ones() {
    refused(
        "\"5 furlongs\" has the unknown unit furlongs; known are mm, cm, m, in, ft, mm², cm², mm³,"
            + " cm³, mm⁴, cm⁴, N, kN, lbf, kip, N·m, kN·m, lbf·ft, lbf·in, N/m, kN/m, lbf/ft, MPa,"
            + " GPa, ksi, psi, N/mm, kN/mm, lbf/in, N·m/deg, N·m/rad, lbf·ft/deg, kg, lb, kg/m³,"
            + " kg·m², g, m/s², km/h, mph, m/s, J, kJ, ms, s, deg, rad",
        "5 furlongs");
  }

  @Test
  void a_unit_of_the_wrong_kind_is_refused_by_name() {
    assertAll(
        () -> refused("5 MPa is a stress, not a length", () -> length("5 MPa")),
        () -> refused("62 kg is a mass, not a force", () -> force("62 kg")),
        () -> refused("3 g is an acceleration, not a mass", () -> mass("3 g")),
        () -> refused("20 N·m is a moment, not an energy", () -> energy("20 N·m")),
        () -> refused("5 deg is an angle, not a stress", () -> stress("5 deg")));
  }

  @Test
  void inches_are_a_number_alone() {
    assertEquals(mm(2.413), inch("0.095"));
    refused(
        "\"3/16 in\" is not a number alone; write it like 0.095, 3/16 or 1 1/2",
        () -> inch("3/16 in"));
    refused("\"3/0\" divides by zero; a fraction looks like 3/16", () -> inch("3/0"));
  }

  private static void refused(String message, String text) {
    refused(message, () -> parse(text));
  }

  private static void refused(String message, Executable reading) {
    assertEquals(message, assertThrows(ModelException.class, reading).getMessage());
  }
}
