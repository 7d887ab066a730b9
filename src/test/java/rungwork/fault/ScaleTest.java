package rungwork.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
  @ParameterizedTest
  @CsvSource({
    "13, 4, 13.00",
    "13, 1, 10",
    "2200, 4, 2200",
    "12345.678, 4, 12350",
    "0.5, 4, 0.5000",
    "9.9999, 4, 10.00",
    "99.995, 4, 100.0",
    "-72.46, 3, -72.5",
    "0, 4, 0",
    "-0.0, 4, 0",
    "0.0001234, 3, 0.000123",
    "0.00001234, 3, 1.23e-5",
    "-1.5e-17, 2, -1.5e-17",
    "123456789, 4, 123500000",
    "1.5e12, 4, 1.500e12",
    "NaN, 4, not a number",
    "Infinity, 4, infinite",
    "-Infinity, 4, -infinite",
  })
  void numbers_keep_their_significant_digits(double value, int digits, String shown) {
    assertEquals(shown, Scale.NUMBER.number(value, digits));
  }

  @Test
  void a_number_stands_before_its_unit_in_every_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("13.50 mm", Scale.MM.show(0.0135));
      assertEquals("355 MPa", Scale.MPA.show(355e6, 3));
      assertEquals("1.500", Scale.NUMBER.show(1.5));
    } finally {
      Locale.setDefault(before);
    }
  }
}
