package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * The bend of a tab that is folded from sheet. Limits on proportion, for steel up to S355; another
 * material's bend is not checked.
 *
 * @param tab the folded tab
 * @param insideRadius of the bend [m], above zero
 * @param holeToBend from the hole's edge to the start of the bend's radius on the inside face [m]
 */
record Fold(Tab tab, double insideRadius, double holeToBend) implements Joint {
  private static final double STRONGEST = 360e6;
  private static final double SOFTEST = 180e9;
  private static final String PRACTICE = "common practice, no source";
  private static final String GRAIN =
      "Fold across the rolling direction: a fold along it cracks on its outside.";
  private static final Symbol R = Letters.length("r", "inside radius of the bend");
  private static final Formula ROOM =
      new Formula(
          Letters.length("l,min", "room between hole and bend"),
          "2.5·{t} + {r}",
          List.of(Letters.T, R),
          PRACTICE,
          in -> 2.5 * in[0] + in[1]);

  /** Refuses a bend without a radius. */
  Fold {
    Guard.positive("inside radius of the fold of " + tab.name(), insideRadius, Scale.MM);
    Guard.positive("distance of hole and bend of " + tab.name(), holeToBend, Scale.MM);
  }

  /**
   * A fold from typed lengths.
   *
   * @param tab the folded tab
   * @param insideRadius of the bend
   * @param holeToBend from the hole's edge to the start of the bend's radius
   * @return the fold
   */
  static Fold of(Tab tab, Quantity<Length> insideRadius, Quantity<Length> holeToBend) {
    return new Fold(tab, si("inside radius", insideRadius), si("hole to bend", holeToBend));
  }

  @Override
  public String name() {
    return tab.name() + ", fold";
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    Question radius = Question.of("bend radius", tab.name(), load).at("fold").with(GRAIN);
    Question room = Question.of("hole beside the bend", tab.name(), load).at("fold");
    double thickness = tab.plate().thickness();
    double needed = 2.5 * thickness + insideRadius;
    return List.of(
        covered()
            ? HoleRules.limit(List.of(), thickness, insideRadius, PRACTICE).answers(radius)
            : radius.open(Factors.proportion(), reason(), PRACTICE),
        HoleRules.limit(List.of(ROOM.with(thickness, insideRadius)), needed, holeToBend, PRACTICE)
            .answers(room));
  }

  private boolean covered() {
    RatedMaterial material = tab.material();
    return material.strength().yield() <= STRONGEST
        && material.elasticity().youngsModulus() >= SOFTEST;
  }

  private String reason() {
    return "the rule that a bend's inside radius is at least the thickness is for steel up to S355;"
        + " ask the maker of "
        + tab.material().name()
        + " how tightly it folds";
  }
}
