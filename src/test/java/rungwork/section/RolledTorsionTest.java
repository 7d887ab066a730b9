package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.inch;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Torsion constants of rolled open shapes against Saint-Venant's torsion on their outline. */
class RolledTorsionTest {
  /** The judge judged: a square bar, 0.140577 b⁴ (series of Saint-Venant). */
  @Test
  void the_net_finds_the_constant_of_a_square_bar() {
    double it = OutlineTorsion.of(Section.flatBar(mm(10), mm(10)).outline(), 0.5e-3);
    assertEquals(0.140577e-8, it, 2e-4 * 0.140577e-8);
  }

  @ParameterizedTest
  @CsvSource({
    "80, 50, 4, 7, 10",
    "100, 55, 4.5, 7.5, 10",
    "140, 65, 5, 9, 12",
    "200, 80, 6, 11, 13",
    "100, 50, 5, 8.5, 9"
  })
  void parallel_channels_twist_as_their_outline_does(
      double h, double b, double tw, double tf, double r) {
    agrees(Section.rolledChannel(mm(h), mm(b), RolledWalls.of(mm(tw), mm(tf), mm(r))), 0, 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    "50, 38, 5, 7, 3.5",
    "80, 45, 6, 8, 4",
    "120, 55, 7, 9, 4.5",
    "160, 65, 7.5, 10.5, 5.5"
  })
  void tapered_channels_twist_as_their_outline_does(
      double h, double b, double tw, double tf, double toe) {
    RolledWalls walls = RolledWalls.eightPercent(mm(tw), mm(tf), mm(tf), mm(toe));
    agrees(Section.rolledChannel(mm(h), mm(b), walls), 0.009, 0.005);
  }

  @ParameterizedTest
  @CsvSource({
    "3, 1.410, 0.170, 0.273, 0.170",
    "3, 1.596, 0.356, 0.273, 0.170",
    "6, 1.920, 0.200, 0.343, 0.200",
    "8, 2.260, 0.220, 0.390, 0.220",
    "10, 3.033, 0.673, 0.436, 0.240"
  })
  void american_channels_twist_as_their_outline_does(
      double d, double bf, double tw, double tf, double lightest) {
    RolledWalls walls =
        RolledWalls.oneInSix(inch(tw), inch(tf), inch(lightest + 0.1), inch(0.6 * lightest));
    agrees(Section.rolledChannel(inch(d), inch(bf), walls), 0.006, 0.015);
  }

  @ParameterizedTest
  @CsvSource({
    "30, 30, 3, 5",
    "50, 50, 5, 7",
    "100, 100, 10, 12",
    "40, 20, 4, 4",
    "60, 30, 5, 5",
    "80, 40, 6, 7"
  })
  void angles_come_out_up_to_two_percent_stiffer_than_their_outline(
      double a, double b, double t, double r) {
    agrees(Section.angle(mm(a), mm(b), mm(t), mm(r)), 0.017, 0.005);
  }

  @ParameterizedTest
  @CsvSource({"30, 4", "50, 6", "80, 9"})
  void rolled_tees_twist_as_their_outline_does(double size, double t) {
    agrees(Section.rolledTee(mm(size), mm(t)), -0.012, 0.006);
  }

  @Test
  void a_shape_twice_as_large_is_sixteen_times_as_stiff_in_torsion() {
    RolledWalls small = RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4));
    RolledWalls large = RolledWalls.eightPercent(mm(12), mm(16), mm(16), mm(8));
    sixteenfold(
        Section.rolledChannel(mm(80), mm(45), small),
        Section.rolledChannel(mm(160), mm(90), large));
    sixteenfold(Section.rolledTee(mm(40), mm(5)), Section.rolledTee(mm(80), mm(10)));
    sixteenfold(
        Section.angle(mm(40), mm(30), mm(4), mm(4)), Section.angle(mm(80), mm(60), mm(8), mm(8)));
  }

  private static void sixteenfold(Section small, Section large) {
    double it = large.properties().it();
    assertEquals(16 * small.properties().it(), it, 1e-12 * it);
  }

  /** Two plates' own outlines only touch; one outline of both is solved here. */
  @ParameterizedTest
  @CsvSource({"60, 50, 5, 8", "60, 60, 8, 5", "80, 60, 6, 6"})
  void welded_tees_twist_as_one_piece_does(double h, double b, double tw, double tf) {
    List<Segment> edge =
        Pen.at(new Spot(b / 2e3, 0), 180)
            .forward(b / 1e3)
            .turn(90)
            .forward(tf / 1e3)
            .turn(90)
            .forward((b - tw) / 2e3)
            .turn(-90)
            .forward((h - tf) / 1e3)
            .turn(90)
            .forward(tw / 1e3)
            .turn(90)
            .forward((h - tf) / 1e3)
            .turn(-90)
            .forward((b - tw) / 2e3)
            .turn(90)
            .forward(tf / 1e3)
            .path();
    double exact = OutlineTorsion.of(new Outline(List.of(edge)), 0.5e-3);
    double it = BuiltUp.tee(mm(h), mm(b), mm(tw), mm(tf)).properties().it();
    assertEquals(1, it / exact, 0.01);
  }

  private static void agrees(Section section, double expected, double within) {
    double step = Math.sqrt(section.properties().area()) / 45;
    double outline = OutlineTorsion.of(section.outline(), step);
    double ratio = section.properties().it() / outline;
    assertEquals(1 + expected, ratio, within, section.name());
  }

  /**
   * El Darwish and Johnston's polynomials for the end of a wall, from memory: 0.10504 ± 0.1·s +
   * 0.0848·s² ± 0.06746·s³ + 0.0515·s⁴; at s = 0.5 0.187891 where it thickens, 0.071026 where it
   * thins out.
   */
  @Test
  void a_square_end_lacks_more_where_its_wall_thickens_towards_it() {
    assertEquals(0.10504, RolledTorsion.end(1, 0), 1e-12);
    assertEquals(0.187891 * 16, RolledTorsion.end(2, -0.5), 2e-5);
    assertEquals(0.071026 * 16, RolledTorsion.end(2, 0.5), 2e-5);
  }

  /**
   * A web of 6 under a flange of 8 with fillets of 7: the circle that touches all has a diameter of
   * (15² + 6·(7 + 1.5))/22 = 12.5455, its factor is −0.042 + 0.2204·0.75 + 0.1355·0.875 −
   * 0.0865·0.65625 − 0.0725·0.5625 = 0.144316 (El Darwish and Johnston, from memory).
   */
  @Test
  void a_web_and_a_flange_bulge_by_the_circle_between_their_fillets() {
    double expected = 0.144316 * Math.pow(276.0 / 22, 4);
    assertEquals(expected, new RolledTorsion(6, 8, 7).tee(), 1e-5 * expected);
  }
}
