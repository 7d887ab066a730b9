package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.impact.CrushTube;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Row;

/** A tube that is meant to fold: whether that may be assumed, at what force, over what stroke. */
final class CrushTubePage {
  private CrushTubePage() {}

  static Page of(CrushTube tube, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Crush tube: " + tube.name());
    String section = tube.section().name() + ", " + tube.material().name();
    blocks.add(
        new Block.Paragraph(
            section
                + ", "
                + units.scale(Kind.LENGTH).show(tube.length(), 3)
                + " long, "
                + units.scale(Kind.MASS).show(tube.mass(), 3)
                + "."));
    blocks.add(
        new Block.VerdictLine(
            tube.noStableFolding(units)
                .orElse(
                    "folding may be assumed for comparison: column and hinge exceed the folding peak at both strengths; not checked: a test")));
    List<Row> rows = new ArrayList<>();
    rows.add(ImpactBlocks.figure("mean folding force, once it folds", tube.meanForce(), units));
    rows.add(ImpactBlocks.figure("folding peak", tube.foldingPeak(), units));
    rows.add(ImpactBlocks.figure("stroke", tube.stroke(), units));
    rows.add(ImpactBlocks.figure("energy over the stroke", tube.energy(), units));
    blocks.add(ImpactBlocks.figures(rows));
    blocks.add(new Block.Heading("Where it would begin without a trigger"));
    blocks.add(
        ImpactBlocks.figures(
            tube.initiations().stream()
                .map(one -> ImpactBlocks.figure(one.what(), one.force(), units))
                .toList()));
    ImpactBlocks.remarks(blocks, "Outside the tests", tube.outsideTests());
    ImpactBlocks.remarks(blocks, "Assumed", tube.assumptions(units));
    ImpactBlocks.working(blocks, tube.working(), units);
    return ImpactBlocks.end(blocks);
  }
}
