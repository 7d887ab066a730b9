package rungwork.impact;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.impact.CrushTube.Initiation;
import rungwork.impact.CrushTube.Strength;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * How a crush tube may begin to give way, and whether it does before it folds.
 *
 * @param low the tube at its low strength
 * @param high the same at its high strength
 */
record TubeBeginning(TubeStrength low, TubeStrength high) {

  /** Squash, local buckling, column buckling, hinge. */
  List<Initiation> ways() {
    return List.of(
        way("squash", low.squash(), high.squash()),
        way("local buckling", low.local(), high.local()),
        way("column buckling", low.column(), high.column()),
        way("hinge by the offset", low.hinge(), high.hinge()));
  }

  private static Initiation way(String what, double low, double high) {
    return new Initiation(what, new Range(Kind.FORCE, low, high));
  }

  /** The lowest of all ways at a strength. */
  Initiation first(Strength strength) {
    return ways().stream()
        .reduce((a, b) -> end(b, strength) < end(a, strength) ? b : a)
        .orElseThrow();
  }

  private static double end(Initiation initiation, Strength strength) {
    return strength == Strength.LOW ? initiation.force().low() : initiation.force().high();
  }

  /** Why no folding is assumed without a trigger. */
  String unknown(Units units) {
    return "no stable folding assumed: without a trigger nobody knows where it begins; it may begin"
        + " with "
        + first(Strength.LOW).what()
        + " at "
        + Range.brief(Kind.FORCE, first(Strength.LOW).force().low(), units);
  }

  /**
   * What comes before the folds that a trigger starts; nothing where column and hinge allow them.
   */
  Optional<String> beforeFolding(Units units) {
    return Stream.of(before("low", low, units), before("high", high, units))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> before(String strength, TubeStrength at, Units units) {
    double least = Math.min(at.column(), at.hinge());
    return least > at.foldingPeak()
        ? Optional.empty()
        : Optional.of(
            "no stable folding assumed: at %s strength %s at %s does not exceed the folding peak of %s"
                .formatted(
                    strength,
                    at.column() < at.hinge() ? "column buckling" : "the hinge by the offset",
                    Range.brief(Kind.FORCE, least, units),
                    Range.brief(Kind.FORCE, at.foldingPeak(), units)));
  }
}
