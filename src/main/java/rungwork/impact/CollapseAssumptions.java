package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * What a collapse assumes and leaves out: the two figures that the user may state otherwise, and
 * all of it in sentences.
 *
 * @param strainRate in the hinges, for the high strength [1/s]; 0 leaves it out
 * @param hardening stiffness of yielded metal over its elastic one [1]; 0 leaves it out
 */
record CollapseAssumptions(double strainRate, double hardening) {
  /** Mild steel in a hinge of a frame that hits at road speed: common practice, no source [1/s]. */
  private static final double USUAL_RATE = 1;

  /** What holds until the user states otherwise. */
  static final CollapseAssumptions USUAL = new CollapseAssumptions(USUAL_RATE, 0);

  /** Steels harden with less than a tenth of their elastic stiffness. */
  private static final double MOST_HARDENING = 0.1;

  CollapseAssumptions {
    Guard.notNegative("strain rate in the hinges", strainRate, new Scale("1/s", 1));
    Guard.notNegative("hardening", hardening, Scale.NUMBER);
    if (hardening > MOST_HARDENING) {
      throw new ModelException(
          "hardening of %s of the elastic stiffness is more than any steel has; give at most 0.1"
              .formatted(Scale.NUMBER.show(hardening)));
    }
  }

  CollapseAssumptions strainRate(double perSecond) {
    return new CollapseAssumptions(perSecond, hardening);
  }

  CollapseAssumptions hardening(double ratio) {
    return new CollapseAssumptions(strainRate, ratio);
  }

  /** In sentences. */
  List<String> words() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Low strength: minimum yield beside welds, wall 10 % thin, yield surface drawn inside the"
            + " true one.");
    lines.add(
        "High strength: 1.4 times minimum yield (AISC 341-16 for tube, second-hand; taken for every"
            + " shape), wall 10 % thick, yield surface around the true one"
            + (strainRate > 0 ? ", " + rate() : ", strain rate left out")
            + ".");
    lines.add(
        "Hinges form at nodes (joints, mounts, bends of a rail) in N, My, Mz and T together;"
            + " torsion as reduced yield. Hinges that turn back lock.");
    lines.add(
        "The standing vehicle's 1 g stays on the frame; the obstacle's force grows straight"
            + " rearwards at the height of the rails, answered by every mass at its own place,"
            + " amplified as stated.");
    lines.add(
        "Joints rigid and released, masses on all, the foremost and the rearmost of their mounts;"
            + " the range holds all runs.");
    if (hardening > 0) {
      lines.add(
          "Hinges harden at "
              + Scale.NUMBER.show(hardening, 3)
              + " of the elastic stiffness over a length of one section depth, from the mechanism"
              + " on (common practice, no source).");
    }
    return lines;
  }

  private String rate() {
    Step step = CrushFormulas.RATE_OF_YIELD.with(strainRate);
    return "yield times "
        + Scale.NUMBER.number(step.result(), 3)
        + " at "
        + Scale.NUMBER.number(strainRate, 3)
        + " 1/s in the hinges ("
        + step.formula().source()
        + ")";
  }

  /** What was left out, in sentences. */
  List<String> leftOut() {
    List<String> lines = new ArrayList<>();
    lines.add("Buckling of rails as columns: the frame may give way before.");
    lines.add(
        "Folding of thin walls in a hinge, which makes its moment fall; kick-ups have an estimate"
            + " of their own.");
    lines.add(
        "Large motions (P–Δ): small ones are assumed, so the level end of the curve is an upper"
            + " estimate where the frame stands far out of line.");
    lines.add("Shear forces in the yield surface; tearing of welds, joints and mounts.");
    if (hardening == 0) {
      lines.add("Strain hardening.");
    }
    return lines;
  }
}
