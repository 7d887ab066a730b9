package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.si;

import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.quantity.Units;
import rungwork.section.Section;

class LadderStiffnessTest {
  private static final Stock TUBE =
      new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Material.rated("S355J2H"));

  @Test
  void a_rectangular_bay_is_as_stiff_as_the_energy_method_says() {
    double length = 2;
    double width = 0.7;
    double bending = 210e9 * TUBE.section().properties().iy();
    double torsion = TUBE.material().elasticity().shearModulus() * TUBE.section().properties().it();
    // F = 2 Tc/L + 2 Tr/b, minimum of U = Tr² (L/GJ + b/3EI) + Tc² (b/GJ + L/3EI); w = 2U/F.
    double rail = length / torsion + width / (3 * bending);
    double cross = width / torsion + length / (3 * bending);
    double inverse = 4 / (length * length * cross) + 4 / (width * width * rail);
    double lift = 2 / inverse;
    double expected = width * width / lift;
    double computed = si("stiffness", ladder().torsionalStiffness("front", "rear"));
    assertEquals(expected, computed, 1e-9 * expected);
  }

  @Test
  void the_stiffness_is_shown_in_workshop_units() {
    String shown = Units.METRIC.show(ladder().torsionalStiffness("front", "rear"));
    assertEquals("N·m/deg", shown.substring(shown.indexOf(' ') + 1));
  }

  @Test
  void an_unknown_crossmember_is_named() {
    Ladder ladder = ladder();
    ModelException refusal =
        assertThrows(ModelException.class, () -> ladder.torsionalStiffness("front", "aft"));
    assertEquals(
        "ladder mine has no crossmember named aft; it has front, rear", refusal.getMessage());
  }

  private static Ladder ladder() {
    return Ladder.named("mine")
        .level(mm(360))
        .rails(mm(200), mm(-1800), mm(700), TUBE)
        .crossmember("front", mm(200), TUBE)
        .crossmember("rear", mm(-1800), TUBE)
        .build();
  }
}
