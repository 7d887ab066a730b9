package rungwork.report;

import static rungwork.quantity.Quantities.m;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import rungwork.impact.Range;
import rungwork.impact.Scene;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** A scene: what speed and mass alone say, and what a distance of crush would make of it. */
final class ScenePage {
  private static final double SHORTEST = 0.08;
  private static final double LONGEST = 0.8;
  private static final int POINTS = 60;

  private ScenePage() {}

  static Page of(Scene scene, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Scene: " + scene.name());
    blocks.add(
        new Block.Paragraph(
            scene.mass().show(units)
                + " closing at "
                + scene.closing().show(units)
                + " with "
                + scene.obstacle().words(units)
                + "."));
    blocks.add(new Block.Figure(overCrush(scene).picture(units)));
    blocks.add(
        ImpactBlocks.figures(
            List.of(
                ImpactBlocks.figure("own velocity change", scene.velocityChange(), units),
                ImpactBlocks.figure("energy to absorb", scene.energy(), units),
                at(scene, 0.2, units),
                at(scene, 0.4, units),
                at(scene, 0.6, units))));
    ImpactBlocks.remarks(blocks, "Look again", scene.warnings(units));
    ImpactBlocks.remarks(blocks, "Assumed", scene.assumptions());
    ImpactBlocks.working(blocks, scene.working(), units);
    return ImpactBlocks.end(blocks);
  }

  static Page of(Scene.LinearCrush crush, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Two linear fronts");
    blocks.add(
        ImpactBlocks.figures(
            List.of(
                ImpactBlocks.figure("largest force", crush.force(), units),
                ImpactBlocks.figure("own crush", crush.ownCrush(), units),
                ImpactBlocks.figure("other crush", crush.otherCrush(), units),
                ImpactBlocks.figure("own deceleration, highest", crush.ownDeceleration(), units),
                ImpactBlocks.figure(
                    "other vehicle's, highest", crush.otherAcceleration(), units))));
    blocks.add(new Block.Paragraph("Both fronts taken as linear springs; no real front is one."));
    return ImpactBlocks.end(blocks);
  }

  private static Table.Row at(Scene scene, double crush, Units units) {
    String distance = units.scale(Kind.LENGTH).show(crush, 3);
    return ImpactBlocks.figure(
        "mean deceleration over " + distance + " of crush",
        scene.meanDeceleration(m(crush)),
        units);
  }

  private static Plot overCrush(Scene scene) {
    double[] crush =
        IntStream.rangeClosed(0, POINTS)
            .mapToDouble(i -> SHORTEST + (LONGEST - SHORTEST) * i / POINTS)
            .toArray();
    Plot.Curve high = new Plot.Curve("high end", "first", crush, means(scene, crush, Range::high));
    Plot.Curve low = new Plot.Curve("", "first low", crush, means(scene, crush, Range::low));
    return Plot.of(
        "What a distance of crush makes of it: mean deceleration over the distance",
        new Plot.Axis("crush in all", Kind.LENGTH),
        new Plot.Axis("mean deceleration", Kind.ACCELERATION),
        scene.meanDeceleration(m(1)).exact() ? List.of(high) : List.of(high, low));
  }

  private static double[] means(Scene scene, double[] crush, ToDoubleFunction<Range> end) {
    return IntStream.range(0, crush.length)
        .mapToDouble(i -> end.applyAsDouble(scene.meanDeceleration(m(crush[i]))))
        .toArray();
  }
}
