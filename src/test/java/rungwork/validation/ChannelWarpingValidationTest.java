package rungwork.validation;

import static rungwork.quantity.Quantities.inch;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.section.RolledWalls;
import rungwork.section.Section;

/** Warping constants of American channels, by the table's own convention: parallel flanges. */
class ChannelWarpingValidationTest {
  @ParameterizedTest
  @CsvSource({
    "C5x6.7, 5, 1.750, 0.320, 0.190, 2.22",
    "C5x9, 5, 1.885, 0.320, 0.325, 2.93",
    "C6x8.2, 6, 1.920, 0.343, 0.200, 4.72",
    "C6x10.5, 6, 2.034, 0.343, 0.314, 5.95",
    "C6x13, 6, 2.157, 0.343, 0.437, 7.22",
    "C7x9.8, 7, 2.090, 0.366, 0.210, 9.18",
    "C7x12.25, 7, 2.194, 0.366, 0.314, 11.2",
    "C8x11.5, 8, 2.260, 0.390, 0.220, 16.5",
    "C8x13.75, 8, 2.343, 0.390, 0.303, 19.2",
    "C8x18.75, 8, 2.527, 0.390, 0.487, 25.1",
    "C9x13.4, 9, 2.433, 0.413, 0.233, 28.2",
    "C9x15, 9, 2.485, 0.413, 0.285, 31.0",
    "C9x20, 9, 2.648, 0.413, 0.448, 39.4",
    "C10x15.3, 10, 2.600, 0.436, 0.240, 45.6",
    "C10x20, 10, 2.739, 0.436, 0.379, 56.9",
    "C10x25, 10, 2.886, 0.436, 0.526, 68.4",
    "C10x30, 10, 3.033, 0.436, 0.673, 79.3"
  })
  void parallel_flanges_of_average_thickness_have_the_table_s_warping_constant(
      String name, double d, double bf, double tf, double tw, String cw) {
    RolledWalls walls = RolledWalls.of(inch(tw), inch(tf), inch(0));
    double iw = Section.rolledChannel(inch(d), inch(bf), walls).properties().iw();
    Published.read("AISC LRFD Manual, flexural-torsional properties of channels, p. 1-154", name)
        .allowing(0.015, "the table was computed with the taper's own flange; up to 1.3 % above")
        .value("Cw", "in⁶", cw, iw / Math.pow(0.0254, 6));
  }
}
