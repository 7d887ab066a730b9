package rungwork.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rungwork.quantity.Units;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/**
 * The dimension lines of a ladder in plan.
 *
 * @param ladder the ladder
 * @param units the reader's units
 * @param sight how places come onto the drawing
 * @param canvas the drawing
 * @param labels the words already on it
 */
record PlanDimensions(Ladder ladder, Units units, Sight sight, Canvas canvas, Labels labels) {
  private static final double LINE = 15;

  /** Rails whose spacing differs by less are parallel [m]. */
  private static final double PARALLEL = 1e-4;

  /** Draws them around what is drawn already: lengths below, spacings beside. */
  void draw(Box drawn) {
    List<Double> stations = stations();
    double y = drawn.bottom() + 40;
    for (int i = 0; i + 1 < stations.size(); i++) {
      span(stations.get(i), stations.get(i + 1)).along(canvas, y + 12);
    }
    span(stations.get(0), stations.get(stations.size() - 1)).along(canvas, y + 48);
    stationNames(y - 14);
    double tail = Math.max(ladder.rail(Side.LEFT).tail(), ladder.rail(Side.RIGHT).tail());
    spacing(drawn.right() + 34, tail);
    double tip = Math.min(ladder.rail(Side.LEFT).x(), ladder.rail(Side.RIGHT).x());
    if (Math.abs(spacingAt(tip) - spacingAt(tail)) > PARALLEL) {
      spacing(drawn.left() - 34, tip);
    }
  }

  private void stationNames(double y) {
    for (Crossmember one : ladder.crossmembers()) {
      Label label = Label.middle(new Spot(sight.along(one.x(), 0, 0).x(), y), one.name());
      labels.put(List.of(label.css("small on"), label.css("small on").moved(0, -LINE)));
    }
  }

  /** Tips, crossmembers and tails along the vehicle, from the front. */
  List<Double> stations() {
    Stream<Double> ends =
        Stream.of(Side.values()).flatMap(s -> Stream.of(ladder.rail(s).x(), ladder.rail(s).tail()));
    Stream<Double> rungs = ladder.crossmembers().stream().map(Crossmember::x);
    return Stream.concat(ends, rungs).distinct().sorted(Comparator.reverseOrder()).toList();
  }

  private Dimension span(double front, double rear) {
    double y = sight.along(front, ladder.rail(Side.LEFT).yAt(front), 0).y();
    return new Dimension(
        new Spot(sight.along(front, 0, 0).x(), y),
        new Spot(sight.along(rear, 0, 0).x(), y),
        Numbers.dimension(front - rear, units));
  }

  private double spacingAt(double x) {
    return ladder.rail(Side.LEFT).yAt(x) - ladder.rail(Side.RIGHT).yAt(x);
  }

  private void spacing(double at, double x) {
    new Dimension(
            sight.along(x, ladder.rail(Side.RIGHT).yAt(x), 0),
            sight.along(x, ladder.rail(Side.LEFT).yAt(x), 0),
            Numbers.dimension(spacingAt(x), units))
        .up(canvas, at);
  }
}
