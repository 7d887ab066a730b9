package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.fault.ModelException;

class RectangularTubeTest {
  /** Half a unit in the last of the digits that EN 10219-2 prints. */
  @ParameterizedTest
  @CsvSource({
    "40, 20, 2.0, 2.14, 4.05, 2.02, 2.61, 1.34, 1.34, 1.60, 3.45",
    "40, 30, 2.5, 3.09, 6.45, 3.23, 4.03, 4.10, 2.74, 3.30, 8.47",
    "50, 30, 3.0, 4.21, 12.83, 5.13, 6.57, 5.70, 3.80, 4.58, 13.53",
    "60, 40, 2.0, 3.74, 18.41, 6.14, 7.47, 9.83, 4.92, 5.65, 20.70",
    "60, 40, 3.0, 5.41, 25.38, 8.46, 10.53, 13.44, 6.72, 7.94, 29.28"
  })
  void properties_agree_with_the_standard_to_its_printed_digits(
      double h,
      double b,
      double t,
      double a,
      double iy,
      double wely,
      double wply,
      double iz,
      double welz,
      double wplz,
      double it) {
    Properties p = Section.rectangularTube(mm(h), mm(b), mm(t)).properties();
    assertEquals(a, p.area() * 1e4, 0.005);
    assertEquals(iy, p.iy() * 1e8, 0.005);
    assertEquals(wely, p.wely() * 1e6, 0.005);
    assertEquals(wply, p.wply() * 1e6, 0.005);
    assertEquals(iz, p.iz() * 1e8, 0.005);
    assertEquals(welz, p.welz() * 1e6, 0.005);
    assertEquals(wplz, p.wplz() * 1e6, 0.005);
    assertEquals(it, p.it() * 1e8, 0.005);
  }

  @Test
  void a_wall_of_half_the_tube_is_refused() {
    ModelException refusal =
        assertThrows(ModelException.class, () -> Section.rectangularTube(mm(80), mm(25), mm(13)));
    assertEquals(
        "wall 13.00 mm leaves no bore in a tube of 80.00 mm by 25.00 mm; the wall must stay below 12.50 mm",
        refusal.getMessage());
  }

  @Test
  void it_fits_a_flat_frame_both_ways() {
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    assertTrue(tube.unfitForFlatFrame().isEmpty());
    assertTrue(tube.turned().unfitForFlatFrame().isEmpty());
  }
}
