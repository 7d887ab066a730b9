package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Wrench;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Units;

class BoxedTabTest {
  private static final String FOOT = "bending of the box at the foot";

  /** Two 5 mm plates, their holes for an M10 30 above the face. */
  private static Tab pair(RatedMaterial material, double foot) {
    Tab tab = Parts.tab();
    return new Tab("pair", material, tab.plate().withFoot(mm(foot)).paired(), tab.eye());
  }

  private static Check foot(RatedMaterial material, double foot, double across) {
    Tab tab = pair(material, foot);
    return named(
        tab.boxed(mm(across)).checks(Parts.load(Wrench.force(0, 0, 1000), tab.hole())), FOOT);
  }

  /**
   * A box of 40 mm along the foot, 42 along the pin and 5 thick under all six at once, by hand: A =
   * 40·42 − 30·32 = 720 mm²; Wx = (40·42³ − 30·32³)/252 = 7858.86 mm³; Wy = (42·40³ − 32·30³)/240 =
   * 7600 mm³; the walls' middle line encloses 35·37 = 1295 mm². About the face: Mx = 20000 −
   * 30·1000 = −10000, My = 5000 + 30·2000 = 65000, Mz = 8000 N·mm. σ = 9000/720 + 10000/7858.86 +
   * 65000/7600 = 22.3251 MPa; τ = 2000/400 + 1000/420 + 8000/(2·1295·5) = 7.9987 MPa; √(σ² + 3τ²) =
   * 26.2744 MPa.
   */
  @Test
  void six_forces_and_moments_at_once_add_up_at_its_worst_corner() {
    Tab tab = pair(Parts.S355, 40);
    FaceLoad load = Parts.load(new Wrench(2000, 1000, 9000, 20, 5, 8), tab.hole());
    Check check = named(tab.boxed(mm(42)).checks(load), FOOT);
    assertEquals(26.2744e6, check.verdict().numbers().orElseThrow().demand(), 50);
    assertEquals(355e6, check.verdict().numbers().orElseThrow().capacity(), 1e-3);
    assertTrue(check.made());
    assertEquals("foot", check.where());
    assertEquals("pair", tab.boxed(mm(42)).name());
  }

  /** Table 5.2: c/t of an inner part up to 42ε, c = outside less two walls. */
  @Test
  void its_plates_may_be_42_epsilon_wide_and_wider_ones_are_marked_outside() {
    // S235, ε = 1: 220 less two walls is 42 times 5 mm.
    assertTrue(foot(Parts.S235, 40, 220).made());
    assertTrue(foot(Parts.S235, 220, 40).made());
    assertEquals(
        "outside EN 1993-1-1, table 5.2: width over thickness 43.00 is over 42.00",
        foot(Parts.S235, 40, 225).verdict().reason(Units.METRIC));
    // S355, ε = √(235/355) = 0.8136: 42·0.8136 = 34.17.
    assertTrue(foot(Parts.S355, 180, 40).made());
    assertEquals(
        "outside EN 1993-1-1, table 5.2: width over thickness 35.00 is over 34.17",
        foot(Parts.S355, 185, 40).verdict().reason(Units.METRIC));
  }

  @Test
  void one_plate_and_a_box_without_room_are_refused() {
    Refused.with(
        "tab front tab is one plate; only a pair can be closed into a box",
        () -> Parts.tab().boxed(mm(40)));
    Refused.with(
        "box 10.00 mm along the pin of tab pair leaves no room between plates of 5.000 mm",
        () -> pair(Parts.S355, 40).boxed(mm(10)));
  }
}
