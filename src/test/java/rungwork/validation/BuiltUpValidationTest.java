package rungwork.validation;

import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.mm;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rungwork.section.BuiltUp;
import rungwork.section.FoldedProfile;
import rungwork.section.Properties;
import rungwork.section.RolledWalls;
import rungwork.section.Section;
import rungwork.section.StressPoint;

/** Sections of several parts and folded ones, against sums by hand. */
class BuiltUpValidationTest {
  private static final String STEINER = "parallel-axis theorem, summed by hand over the parts";

  /** 60 × 50 × 4 × 6: web 54 × 4 = 216 mm² at 27 mm, flange 50 × 6 = 300 mm² at 57 mm. */
  @Test
  void a_tee_of_two_plates() {
    Section tee = BuiltUp.tee(mm(60), mm(50), mm(4), mm(6));
    Properties p = tee.properties();
    Published.identity(STEINER, tee.name())
        .value("A", "mm²", "516", p.area() * 1e6)
        .value("centroid from the foot", "mm", "44.44", -lowest(tee) * 1e3)
        .value("Iy", "mm⁴", "166411", p.iy() * 1e12)
        .value("Iz", "mm⁴", "62788", p.iz() * 1e12)
        .value("Wpl,z", "mm³", "3966", p.wplz() * 1e9)
        .value("Wpl,y, halves of 258 mm²", "mm³", "6697", p.wply() * 1e9);
  }

  /** The tube's printed A and Iy with a plate of 28 × 4 = 112 mm², 32 mm above its middle. */
  @Test
  void a_plate_on_a_tube() {
    Section tube = Section.rectangularTube(mm(60), mm(40), mm(3));
    Section plated = BuiltUp.tube(mm(60), mm(40), mm(3)).plated(mm(28), mm(4));
    double area = 541 + 112;
    double apart = 32;
    double iy = 25.38e4 + 28 * 64 / 12.0 + 541 * 112 / area * apart * apart;
    Published.derived(
            "EN 10219-2, table of rectangular tubes, with a plate added by hand", plated.name())
        .allowing(0.001, "the table prints A to three digits")
        .value("A", "cm²", digits(area / 100), plated.properties().area() * 1e4)
        .value("Iy", "cm⁴", digits(iy / 1e4), plated.properties().iy() * 1e8)
        .value("Iz", "cm⁴", digits(13.44 + 4 * 21952 / 12e4), plated.properties().iz() * 1e8);
    Published.identity(STEINER, plated.name())
        .value(
            "A beside the tube's",
            "mm²",
            "112",
            (plated.properties().area() - tube.properties().area()) * 1e6);
  }

  /** Each tube by its printed row; both bend and twist alike, so everything adds. */
  @Test
  void a_tube_in_a_tube() {
    Section sleeved = BuiltUp.tube(mm(60), mm(40), mm(3)).sleeved(mm(50), mm(30), mm(3));
    Properties p = sleeved.properties();
    Published.derived("EN 10219-2, table of rectangular tubes, two rows added", sleeved.name())
        .value("A", "cm²", "9.62", p.area() * 1e4)
        .value("Iy", "cm⁴", "38.21", p.iy() * 1e8)
        .value("Iz", "cm⁴", "19.14", p.iz() * 1e8)
        .value("Wpl,y", "cm³", "17.10", p.wply() * 1e6)
        .value("Wpl,z", "cm³", "12.52", p.wplz() * 1e6)
        .value("It", "cm⁴", "42.81", p.it() * 1e8);
  }

  /** Twice the channel's printed Iz and A, its centroid 45 − 14.5 = 30.5 mm from the seam. */
  @Test
  void two_tapered_channels_toe_to_toe() {
    Section box =
        BuiltUp.rolledChannel(mm(80), mm(45), RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4)))
            .toeToToe();
    Properties p = box.properties();
    double iz = 2 * (19.4 + 11.0 * 3.05 * 3.05);
    Published.derived("DIN 1026-1, table of UPN channels, two rows added", box.name())
        .allowing(0.005, "A to three digits, the centroid to 0.05 mm")
        .value("A", "cm²", "22.0", p.area() * 1e4)
        .value("Iy", "cm⁴", "212", p.iy() * 1e8)
        .value("Iz", "cm⁴", digits(iz), p.iz() * 1e8);
  }

  /** Bends of one wall inside are a cold-formed tube's corners, so the halves make that tube. */
  @Test
  void two_folded_channels_toe_to_toe_make_a_square_tube() {
    Section box = BuiltUp.channel(mm(50), mm(25), mm(3), mm(3)).toeToToe();
    Properties p = box.properties();
    Published.memory("EN 10219-2, table of square tubes", "50 x 50 x 3 of two channels")
        .value("A", "cm²", "5.41", p.area() * 1e4)
        .value("I", "cm⁴", "19.5", p.iy() * 1e8)
        .value("Wel", "cm³", "7.79", p.welz() * 1e6)
        .value("Wpl", "cm³", "9.39", p.wplz() * 1e6)
        .value("It", "cm⁴", "32.1", p.it() * 1e8);
  }

  /** The plate's 74 × 4 = 296 mm², its middle 38 mm from the back of the web. */
  @Test
  void a_channel_with_a_plate_set_in() {
    Section open = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
    Section box = BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).platedIn(mm(4));
    double channel = open.properties().area();
    double plate = 74e-3 * 4e-3;
    double apart = 38e-3 + lowestY(open);
    double iz =
        open.properties().iz()
            + 74e-3 * 64e-9 / 12
            + channel * plate / (channel + plate) * apart * apart;
    double iy = open.properties().iy() + 4e-3 * Math.pow(74e-3, 3) / 12;
    Published.derived(STEINER, box.name())
        .value("A", "cm²", digits((channel + plate) * 1e4), box.properties().area() * 1e4)
        .value("Iy", "cm⁴", digits(iy * 1e8), box.properties().iy() * 1e8)
        .value("Iz", "cm⁴", digits(iz * 1e8), box.properties().iz() * 1e8);
  }

  /**
   * Centre lines 21 + 38 + 48 + 38 + 21 mm of 2 mm: the flow of a level unit force, summed over 20
   * 000 steps about the centroid 19.687 mm above the brims, turns about a place 32.821 mm above it.
   * Bends of 1 mm shift it by less than a hundredth.
   */
  @Test
  void a_top_hat_has_its_shear_centre_above_its_crown() {
    Section hat = FoldedProfile.of(mm(2), mm(0)).topHat(mm(40), mm(50), mm(90));
    Published.derived("shear flow summed in small steps on sharp centre lines", hat.name())
        .allowing(0.01, "the outline's centroid and the bends' centre lines are rounded")
        .value("centroid above the brims", "mm", "19.687", -lowest(hat) * 1e3 - 1)
        .value("shear centre above it", "mm", "32.821", hat.properties().shearCentreZ() * 1e3);
  }

  /** An L of two legs 38.5 mm on centre lines, folded without radius: I = t·s³·5/24 and s³/12. */
  @Test
  void a_folded_angle_has_the_known_moments_of_two_thin_legs() {
    Section angle =
        FoldedProfile.of(mm(1), mm(0)).leg(mm(50.5)).bend(deg(90)).leg(mm(50.5)).section("angle");
    double s = 50;
    Published.derived("two thin legs on centre lines, Iy = 5/24·t·s³, Iyz = t·s³/8", "angle 50 x 1")
        .allowing(0.012, "walls of one millimetre against lines")
        .value("Iy", "mm⁴", digits(5 * s * s * s / 24), angle.properties().iy() * 1e12)
        .value("|Iyz|", "mm⁴", digits(s * s * s / 8), Math.abs(angle.properties().iyz()) * 1e12);
  }

  /** Printed A 5.41 cm² less two holes of 9 × 3 mm; each 18.5 mm from the middle. */
  @Test
  void a_tube_with_a_hole_through_both_walls() {
    Section tube = Section.rectangularTube(mm(60), mm(40), mm(3));
    Section.Net net =
        tube.drilled("left wall", mm(9)).drilled("right wall", mm(9)).net().orElseThrow();
    Published.derived(
            "EN 10219-2, table of rectangular tubes, two holes taken out by hand", tube.name())
        .value("A,net", "cm²", "4.87", net.area() * 1e4)
        .value("Iy,net", "cm⁴", "25.34", net.iy() * 1e8)
        .value("Iz,net", "cm⁴", "11.59", net.iz() * 1e8);
  }

  /** The rolled tee's area; its second moments are not compared: no digits that can be trusted. */
  @Test
  void rolled_tees_have_the_table_s_area() {
    String source = "EN 10055, table of equal flange tees";
    Published.memory(source, "T 40")
        .value("A", "cm²", "3.77", Section.rolledTee(mm(40), mm(5)).properties().area() * 1e4);
    Published.memory(source, "T 60")
        .value("A", "cm²", "7.94", Section.rolledTee(mm(60), mm(7)).properties().area() * 1e4);
    Published.memory(source, "T 80")
        .value("A", "cm²", "13.6", Section.rolledTee(mm(80), mm(9)).properties().area() * 1e4);
  }

  private static String digits(double value) {
    return String.format(Locale.ROOT, "%.5g", value);
  }

  private static double lowest(Section section) {
    return section.points().stream().mapToDouble(StressPoint::z).min().orElse(0);
  }

  private static double lowestY(Section section) {
    return section.points().stream().mapToDouble(StressPoint::y).min().orElse(0);
  }
}
