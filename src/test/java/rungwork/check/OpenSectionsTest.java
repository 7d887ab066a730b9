package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.only;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.section.FoldedProfile;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.solve.InternalForces;

/** Open sections that stand at an angle, lack a symmetry, or are known by their numbers alone. */
class OpenSectionsTest {
  private static final Section ANGLE = Section.angle(mm(80), mm(40), mm(6), mm(7));

  /** A bar of 1 m with the same forces all along. */
  private static LoadedMember loaded(Section section, double n, double my, double mz) {
    Stock stock = new Stock(section, S355);
    Beam beam = Beam.rigid("bar", "root", "tip", stock);
    InternalForces forces = new InternalForces(n, 0, 0, 0, my, mz);
    List<Cut> cuts =
        List.of(new Cut(beam, section, 0, 0, forces), new Cut(beam, section, 1, 1, forces));
    return new LoadedMember(BAR, "test load", stock, section, cuts, NONE);
  }

  private static String reason(Question question, LoadedMember member) {
    assertTrue(question.arises(member));
    List<Finding> findings = question.ask(member, S355);
    assertEquals(1, findings.size());
    assertEquals(question.what(), findings.get(0).what());
    return findings.get(0).verdict().reason(Units.METRIC);
  }

  /**
   * Plane sections: σ = a·z + b·y with My = a·Iy + b·Iyz and 0 = a·Iyz + b·Iz, because Mz = 0; and
   * likewise for Mz = −(a·Iyz + b·Iz).
   */
  @Test
  void an_angle_bends_about_an_axis_of_its_own() {
    Properties p = ANGLE.properties();
    double my = 120;
    double mz = 70;
    double det = p.iy() * p.iz() - p.iyz() * p.iyz();
    double a = (my * p.iz() + mz * p.iyz()) / det;
    double b = (-mz * p.iy() - my * p.iyz()) / det;
    double worst =
        ANGLE.points().stream()
            .mapToDouble(point -> Math.abs(a * point.z() + b * point.y()))
            .max()
            .orElseThrow();
    Check check = only("combined stress", MemberChecks.all(loaded(ANGLE, 0, my, mz)));
    assertEquals(worst, check.verdict().numbers().orElseThrow().demand(), 1e-9 * worst);
    double plain = my / p.wely() + Math.abs(mz) / p.welz();
    assertTrue(Math.abs(worst - plain) > 0.05 * plain, "the angle's own axes matter");
  }

  @Test
  void a_compressed_angle_is_not_checked_as_a_column() {
    assertEquals(
        "the section's principal axes lie at an angle to the frame; its bending and twisting are"
            + " not worked out here",
        reason(new OpenColumn(), loaded(ANGLE, -20e3, 0, 0)));
  }

  /** A top hat is symmetric about z: its shear centre lies over or under its centroid. */
  @Test
  void a_top_hat_may_escape_sideways_where_its_strong_axis_is_not_one_of_symmetry() {
    Section tall = FoldedProfile.of(mm(2), mm(2)).topHat(mm(80), mm(40), mm(60));
    Properties p = tall.properties();
    assertTrue(p.iy() > p.iz() && Math.abs(p.shearCentreZ()) > 5e-3);
    String open =
        "the section is not symmetric about its strong axis; the critical moment of such sections"
            + " is not worked out here";
    assertEquals(open, reason(new SidewaysStrength(), loaded(tall, 0, 200, 0)));
    assertEquals(open, reason(new OpenColumn(), loaded(tall, -20e3, 200, 0)));
    assertEquals("", reason(new OpenColumn(), loaded(tall, -20e3, 0, 0)));
    Section wide = FoldedProfile.of(mm(2), mm(2)).topHat(mm(30), mm(60), mm(140));
    Properties w = wide.properties();
    assertTrue(w.iz() > w.iy() && Math.abs(w.shearCentreZ()) > 5e-3);
    assertEquals("", reason(new SidewaysStrength(), loaded(wide, 0, 0, 200)));
  }

  @Test
  void a_section_that_is_known_by_its_properties_alone_is_not_checked() {
    // Area, Iy, Iz, Iyz, It, no warping constants, stiffening, moduli, shear areas, shear centre.
    Properties numbers =
        new Properties(
            5e-4, 4e-7, 9e-8, 0, 1.5e-9, 0, 0, 1, 1e-5, 4e-6, 1.2e-5, 5e-6, 2e-4, 2e-4, 0, 0);
    Section bare = new Section("bare", numbers, List.of(), List.of());
    String open = "the section is known by its properties alone, without its warping";
    assertEquals(open, reason(new OpenColumn(), loaded(bare, -20e3, 0, 0)));
    assertEquals(open, reason(new SidewaysStrength(), loaded(bare, 0, 200, 0)));
    assertFalse(new ColumnBuckling().arises(loaded(bare, -20e3, 0, 0)));
  }
}
