package rungwork.quantity;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {
  @ParameterizedTest
  @EnumSource(Kind.class)
  void every_kind_has_a_unit_for_both_readers_and_a_noun(Kind kind) {
    for (Units units : Units.values()) {
      assertFalse(units.show(kind, 1.5).isBlank());
    }
    assertFalse(kind.noun().isBlank());
  }

  @Test
  void metric_readers_see_workshop_units() {
    assertAll(
        () -> assertEquals("2200 mm", Units.METRIC.show(Kind.LENGTH, 2.2)),
        () -> assertEquals("3.000 mm", Units.METRIC.show(Kind.LENGTH, 0.003)),
        () -> assertEquals("12.40 kN", Units.METRIC.show(Kind.FORCE, 12_400)),
        () -> assertEquals("0.8600 kN·m", Units.METRIC.show(Kind.MOMENT, 860)),
        () -> assertEquals("311.8 N/mm", Units.METRIC.show(Kind.LINE_LOAD, 311_800)),
        () -> assertEquals("72.50 MPa", Units.METRIC.show(Kind.STRESS, 72.5e6)),
        () -> assertEquals("6.740 cm²", Units.METRIC.show(Kind.AREA, 6.74e-4)),
        () -> assertEquals("210.0 GPa", Units.METRIC.show(Kind.MODULUS, 210e9)),
        () -> assertEquals("3.000 g", Units.METRIC.show(Kind.ACCELERATION, 29.41995)),
        () -> assertEquals("0.8712", Units.METRIC.show(Kind.RATIO, 0.87123)));
  }

  @Test
  void inch_pound_readers_see_theirs() {
    assertAll(
        () -> assertEquals("2.000 in", Units.INCH_POUND.show(Kind.LENGTH, 0.0508)),
        () -> assertEquals("2248 lbf", Units.INCH_POUND.show(Kind.FORCE, 10_000)),
        () -> assertEquals("571.0 lbf/in", Units.INCH_POUND.show(Kind.LINE_LOAD, 100_000)),
        () -> assertEquals("51.49 ksi", Units.INCH_POUND.show(Kind.STRESS, 355e6)),
        () -> assertEquals("30460 ksi", Units.INCH_POUND.show(Kind.MODULUS, 210e9)),
        () -> assertEquals("0.2836 lb/in³", Units.INCH_POUND.show(Kind.DENSITY, 7850)),
        () -> assertEquals("30.00 mph", Units.INCH_POUND.show(Kind.SPEED, 13.4112)),
        () -> assertEquals("3.000 g", Units.INCH_POUND.show(Kind.ACCELERATION, 29.41995)));
  }

  @Test
  void numbers_round_to_four_digits_and_never_depend_on_the_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("12350 mm", Units.METRIC.show(Kind.LENGTH, 12.345678));
      assertEquals("10.00 mm", Units.METRIC.show(Kind.LENGTH, 0.0099999));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void a_quantity_shows_in_the_readers_units_without_idle_zeros() {
    assertEquals("50 mm", Units.METRIC.show(Quantities.mm(50)));
    assertEquals("1.969 in", Units.INCH_POUND.show(Quantities.mm(50)));
    assertEquals("12.4 kN", Units.METRIC.show(Quantities.kN(12.4)));
    assertEquals("3 g", Units.METRIC.show(Quantities.g(3)));
    assertEquals("1000 N·m/deg", Units.METRIC.show(Quantities.Nmpdeg(1000)));
  }

  @Test
  void rounding_noise_in_loads_shows_as_nothing() {
    assertEquals("0 kN", Units.METRIC.show(Kind.FORCE, -6.0e-14));
    assertEquals("0 kN·m", Units.METRIC.show(Kind.MOMENT, 9e-7));
    assertEquals("0 N/mm", Units.METRIC.show(Kind.LINE_LOAD, 1.1e-13));
    assertEquals("2.000e-9 kN", Units.METRIC.show(Kind.FORCE, 2e-6));
  }
}
