package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CollapseAssumptionsTest {
  private static final List<String> LEFT_OUT =
      List.of(
          "Buckling of rails as columns: the frame may give way before.",
          "Folding of thin walls in a hinge, which makes its moment fall; kick-ups have an estimate"
              + " of their own.",
          "Large motions (P–Δ): small ones are assumed, so the level end of the curve is an upper"
              + " estimate where the frame stands far out of line.",
          "Shear forces in the yield surface; tearing of welds, joints and mounts.",
          "Strain hardening.");

  /** 1 + (1/40.4)^⅕ = 1.477. */
  @Test
  void the_usual_ones_state_the_strain_rate_and_leave_hardening_out() {
    CollapseAssumptions usual = CollapseAssumptions.USUAL;
    assertEquals(1, usual.strainRate());
    assertEquals(0, usual.hardening());
    assertEquals(
        List.of(
            "Low strength: minimum yield beside welds, wall 10 % thin, yield surface drawn inside"
                + " the true one.",
            "High strength: 1.4 times minimum yield (AISC 341-16 for tube, second-hand; taken for"
                + " every shape), wall 10 % thick, yield surface around the true one, yield times"
                + " 1.48 at 1.00 1/s in the hinges (Cowper & Symonds (1957), D 40.4 1/s, q 5).",
            "Hinges form at nodes (joints, mounts, bends of a rail) in N, My, Mz and T together;"
                + " torsion as reduced yield. Hinges that turn back lock.",
            "The standing vehicle's 1 g stays on the frame; the obstacle's force grows straight"
                + " rearwards at the height of the rails, answered by every mass at its own place,"
                + " amplified as stated.",
            "Joints rigid and released, masses on all, the foremost and the rearmost of their"
                + " mounts; the range holds all runs."),
        usual.words());
    assertEquals(LEFT_OUT, usual.leftOut());
  }

  @Test
  void hardening_is_stated_and_then_not_left_out() {
    CollapseAssumptions hard = CollapseAssumptions.USUAL.hardening(0.02);
    assertEquals(1, hard.strainRate());
    assertEquals(
        "Hinges harden at 0.0200 of the elastic stiffness over a length of one section depth, from"
            + " the mechanism on (common practice, no source).",
        hard.words().get(5));
    assertEquals(LEFT_OUT.subList(0, 4), hard.leftOut());
    assertEquals(0.1, hard.hardening(0.1).hardening());
    assertEquals(0.02, hard.strainRate(7).hardening());
    assertEquals(7, hard.strainRate(7).strainRate());
  }

  @Test
  void without_a_strain_rate_it_says_so() {
    assertEquals(
        "High strength: 1.4 times minimum yield (AISC 341-16 for tube, second-hand; taken for every"
            + " shape), wall 10 % thick, yield surface around the true one, strain rate left out.",
        CollapseAssumptions.USUAL.strainRate(0).words().get(1));
  }

  @Test
  void what_no_steel_does_is_refused() {
    Refused.with(
        "hardening of 0.1001 of the elastic stiffness is more than any steel has; give at most 0.1",
        () -> CollapseAssumptions.USUAL.hardening(0.1001));
    Refused.with(
        "hardening -0.01000 is below zero", () -> CollapseAssumptions.USUAL.hardening(-0.01));
    Refused.with(
        "strain rate in the hinges -1.000 1/s is below zero",
        () -> CollapseAssumptions.USUAL.strainRate(-1));
  }
}
