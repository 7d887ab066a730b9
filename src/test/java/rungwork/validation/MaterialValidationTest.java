package rungwork.validation;

import org.junit.jupiter.api.Test;
import rungwork.material.Elasticity;
import rungwork.material.Material;
import rungwork.material.RatedMaterial.Strength;

/** The table of grades against its sources, written down here a second time from them. */
class MaterialValidationTest {
  @Test
  void welded_aluminium_agrees_with_the_competition_rules() {
    Published rules =
        Published.read("student-competition rules, F.3.5.3 Aluminum Tubing", "6061-T6");
    Strength strength = Material.rated("6061-T6").strength();
    Elasticity elasticity = Material.rated("6061-T6").elasticity();
    rules
        .value("E", "GPa", "69", elasticity.youngsModulus() / 1e9)
        .value("yield strength", "MPa", "240", strength.yield() / 1e6)
        .value("yield strength", "ksi", "34.8", strength.yield() / PSI / 1e3)
        .value("ultimate strength", "MPa", "290", strength.ultimate() / 1e6)
        .value("ultimate strength", "ksi", "42.1", strength.ultimate() / PSI / 1e3)
        .value("yield strength beside a weld", "MPa", "115", strength.weldedYield() / 1e6)
        .value("yield strength beside a weld", "ksi", "16.7", strength.weldedYield() / PSI / 1e3);
  }

  @Test
  void structural_plate_agrees_with_its_standard() {
    plate("S235JR", "235", "360");
    plate("S275JR", "275", "410");
    plate("S355JR", "355", "470");
  }

  @Test
  void plate_for_folding_agrees_with_its_standard() {
    Strength strength = Material.rated("S355MC").strength();
    Published.read("EN 10149-2, table of mechanical properties (reproduced)", "S355MC")
        .value("yield strength", "MPa", "355", strength.yield() / 1e6)
        .value("ultimate strength", "MPa", "430", strength.ultimate() / 1e6)
        .value("elongation, under 3 mm", "%", "19", strength.elongation() * 100);
  }

  @Test
  void american_structural_tube_agrees_with_its_standard() {
    structuralTube("A500 B round", "42e3", "58e3");
    structuralTube("A500 B shaped", "46e3", "58e3");
    structuralTube("A500 C round", "46e3", "62e3");
    structuralTube("A500 C shaped", "50e3", "62e3");
  }

  private static void plate(String grade, String yield, String ultimate) {
    Strength strength = Material.rated(grade).strength();
    Published.read("EN 10025-2:2004, table 7 (reproduced)", grade)
        .value("yield strength", "MPa", yield, strength.yield() / 1e6)
        .value("ultimate strength", "MPa", ultimate, strength.ultimate() / 1e6);
  }

  private static void structuralTube(String grade, String yield, String ultimate) {
    Strength strength = Material.rated(grade).strength();
    Published.read("ASTM A500, tensile requirements (reproduced)", grade)
        .value("yield strength", "psi", yield, strength.yield() / PSI)
        .value("ultimate strength", "psi", ultimate, strength.ultimate() / PSI);
  }

  /** A pound-force a square inch [Pa]. */
  private static final double PSI = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
}
