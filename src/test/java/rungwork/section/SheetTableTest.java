package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.fault.ModelException;
import rungwork.quantity.Quantities;

class SheetTableTest {
  @ParameterizedTest
  @CsvSource({
    "Manufacturers' Standard gauge, 16, 1.519",
    "British standard wire gauge, 16, 1.626",
    "Birmingham tube gauge, 16, 1.651",
    "Birmingham tube gauge, 11, 3.048",
    "plate, 3, 3.000",
    "inch plate, 3/16, 4.762"
  })
  void one_number_means_different_steel_in_each_system(
      String system, String size, double millimetres) {
    double t = Quantities.si("t", SheetTable.of(system).at(size));
    assertEquals(millimetres, t * 1e3, 0.0006);
  }

  @Test
  void there_is_no_gauge_without_a_system() {
    assertEquals(
        List.of(
            "Manufacturers' Standard gauge",
            "British standard wire gauge",
            "Birmingham tube gauge",
            "plate",
            "inch plate"),
        SheetTable.systems());
    assertEquals(
        "there is no system of sheet thicknesses gauge; did you mean Birmingham tube gauge? There"
            + " are Manufacturers' Standard gauge, British standard wire gauge, Birmingham tube"
            + " gauge, plate, inch plate",
        assertThrows(ModelException.class, () -> SheetTable.of("gauge")).getMessage());
  }

  @Test
  void a_number_that_the_system_lacks_is_refused() {
    SheetTable plate = SheetTable.of("inch plate");
    assertEquals(
        "inch plate has no size 7/16; it has 1/8, 3/16, 1/4, 5/16, 3/8, 1/2",
        assertThrows(ModelException.class, () -> plate.at("7/16")).getMessage());
  }

  @Test
  void a_table_shows_its_thicknesses() {
    assertEquals(
        "inch plate: 1/8 = 3.175 mm, 3/16 = 4.762 mm, 1/4 = 6.350 mm, 5/16 = 7.938 mm, 3/8 ="
            + " 9.525 mm, 1/2 = 12.70 mm",
        SheetTable.of("inch plate").toString());
  }

  @Test
  void a_folded_part_takes_its_wall_from_a_sheet() {
    Section channel = Section.foldedChannel(mm(80), mm(40), SheetTable.of("plate").at("3"), mm(3));
    assertEquals(
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).properties(), channel.properties());
  }

  @ParameterizedTest
  @CsvSource({
    "Manufacturers' Standard gauge",
    "British standard wire gauge",
    "Birmingham tube gauge"
  })
  void a_higher_number_is_thinner(String system) {
    List<SheetTable.Sheet> sheets = SheetTable.of(system).sheets();
    for (int i = 1; i < sheets.size(); i++) {
      assertEquals(1, Double.compare(sheets.get(i - 1).thickness(), sheets.get(i).thickness()));
    }
  }
}
