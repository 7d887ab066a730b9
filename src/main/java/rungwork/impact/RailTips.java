package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.section.Torsion;
import rungwork.section.Wall;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;

/** The rails ahead of the foremost crossmember, looked at as tubes that might fold. */
final class RailTips {
  /** Sizes that differ by less are one [m]: rounding. */
  private static final double ROUNDING = 1e-6;

  private final Ladder ladder;

  RailTips(Ladder ladder) {
    this.ladder = ladder;
  }

  /** The tip of a rail as a tube without a trigger; nothing where no formula covers it. */
  Optional<CrushTube> tip(Side side) {
    Stock stock = stock(side);
    if (length(side) < ROUNDING
        || kinks(side)
        || !(stock.material() instanceof RatedMaterial rated)) {
      return Optional.empty();
    }
    return shape(stock.section())
        .map(
            shape ->
                new CrushTube(
                    name(side),
                    shape,
                    width(stock.section()),
                    wall(stock.section()),
                    length(side),
                    rated,
                    CrushTube.Trigger.NONE,
                    new Range(Kind.LENGTH, 0, wall(stock.section())),
                    0));
  }

  /** What may be expected of both tips, a sentence each. */
  List<String> words(Units units) {
    List<String> lines = new ArrayList<>();
    for (Side side : Side.values()) {
      lines.add(name(side) + ": " + tip(side).map(tube -> of(tube, units)).orElse(why(side)));
    }
    return lines;
  }

  private static String of(CrushTube tube, Units units) {
    return tube.noStableFolding(units).orElse("folding may be assumed for comparison")
        + ". Folds, once begun, would take "
        + tube.meanForce().show(units)
        + " on average over "
        + tube.stroke().show(units)
        + "; nothing counts on it.";
  }

  private String why(Side side) {
    if (length(side) < ROUNDING) {
      return "it ends at the foremost crossmember; nothing of it can fold.";
    }
    return "no stable folding assumed: "
        + (kinks(side) ? "it is bent, and bends there first." : "no formula here covers a ")
        + (kinks(side) ? "" : stock(side).section().name() + ".");
  }

  private static String name(Side side) {
    return side.word() + " rail tip";
  }

  private Stock stock(Side side) {
    return ladder.rail(side).reaches().get(0).stock();
  }

  private double length(Side side) {
    return ladder.rail(side).x() - ladder.crossmembers().get(0).x();
  }

  /** Whether it turns aside or rises before the crossmember. */
  private boolean kinks(Side side) {
    double end = ladder.crossmembers().get(0).x();
    Rail rail = ladder.rail(side);
    boolean aside = rail.reaches().get(0).x() > end + ROUNDING;
    return aside
        || Math.abs(rail.yAt(end) - rail.y()) > ROUNDING
        || ladder.kickUps().stream()
            .anyMatch(one -> Math.max(one.foot(), one.head()) > end + ROUNDING);
  }

  private static Optional<CrushTube.Shape> shape(Section section) {
    boolean equal = Math.abs(width(section) - depth(section)) < ROUNDING;
    if (section.torsion() != Torsion.CLOSED || !equal || section.walls().isEmpty()) {
      return Optional.empty();
    }
    boolean square =
        section.walls().size() == 4
            && section.walls().stream()
                .allMatch(one -> Math.abs(one.thickness() - wall(section)) < ROUNDING);
    boolean round = section.walls().stream().allMatch(one -> one.edge() == Wall.Edge.ROUND);
    return square
        ? Optional.of(CrushTube.Shape.SQUARE)
        : round ? Optional.of(CrushTube.Shape.ROUND) : Optional.empty();
  }

  private static double width(Section section) {
    return 2 * section.points().stream().mapToDouble(point -> point.y()).max().orElse(0);
  }

  private static double depth(Section section) {
    return 2 * section.points().stream().mapToDouble(point -> point.z()).max().orElse(0);
  }

  private static double wall(Section section) {
    return section.walls().get(0).thickness();
  }
}
