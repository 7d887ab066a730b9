package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.Scale;
import rungwork.impact.CrushTube.Shape;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What the formulas for a folding tube assume of it, and where it is outside their tests.
 *
 * @param tube the tube
 */
record TubeWords(CrushTube tube) {
  /** Sides of length that fold without bending: Abramowicz and Jones 1984 saw longer ones tilt. */
  private static final double LONGEST = 4;

  private static final double SHORTEST = 2;

  List<String> outsideTests() {
    List<String> lines = new ArrayList<>();
    double ratio = (tube.width() - tube.wall()) / tube.wall();
    String ratioShown = Scale.NUMBER.number(ratio, 3);
    if (tube.shape() == Shape.SQUARE && (ratio < 30 || ratio > 32.5)) {
      lines.add(
          "c/t "
              + ratioShown
              + " is outside the drop tests behind the formulas, at 30.25 and 32.18.");
    }
    if (tube.shape() == Shape.ROUND && (ratio < 10 || ratio > 450)) {
      lines.add("D/t " + ratioShown + " is outside the tests behind the formulas, 10 to 450.");
    }
    double sides = tube.length() / tube.width();
    if (sides < SHORTEST || sides > LONGEST) {
      lines.add(
          "Its length is "
              + Scale.NUMBER.number(sides, 2)
              + " times its width; 2 to 4 times fold without tilting.");
    }
    return lines;
  }

  List<String> assumptions(Units units) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Low strength: minimum yield beside welds and minimum ultimate strength, wall 10 % thin,"
            + " the lowest of the published formulas (that with the effective length less 20 %).");
    lines.add(
        "High strength: 1.4 times minimum yield and 1.3 times minimum ultimate strength (AISC"
            + " 341-16, second-hand), wall 10 % thick, the highest of them (that with the effective"
            + " length and 20 % more).");
    lines.add(
        tube.speed() > 0
            ? "Strain rate by Cowper and Symonds at "
                + Range.brief(Kind.SPEED, tube.speed(), units)
                + ", in the high strength only."
            : "Strain rate is left out; state the speed of the hit.");
    lines.add("The foot is held, the front end free to move aside (effective length 2 L).");
    lines.add(
        "With a trigger the folding peak is taken as twice the highest mean; only a test shows"
            + " it.");
    lines.add(
        "Straight axis, no weld or bend within the stroke, force along the axis within the stated"
            + " offset.");
    return lines;
  }
}
