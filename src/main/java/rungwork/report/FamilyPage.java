package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.quantity.Units;
import rungwork.study.Family;

/** Measures along one input: a line and curves for each. */
final class FamilyPage {
  private static final String[] LINES = {"first", "second", "third"};

  private FamilyPage() {}

  static Page of(Family family, Units units) {
    List<Block> blocks = StudyBlocks.begin(family.name() + " along " + family.across().name());
    for (String measure : family.measures()) {
      for (String curve : family.curves()) {
        String line = family.line(measure, curve, units);
        blocks.add(new Block.Paragraph(family.curves().size() > 1 ? curve + ": " + line : line));
      }
      List<Plot.Curve> curves = curves(family, measure);
      if (!curves.isEmpty()) {
        Plot plot =
            Plot.of(
                measure + " along " + family.across().name(),
                new Plot.Axis(family.across().name(), family.across().kind()),
                new Plot.Axis(measure, family.kind(measure)),
                curves);
        blocks.add(new Block.Figure(plot.picture(units)));
      }
    }
    return StudyBlocks.end(blocks, family.refusals());
  }

  /** Without the points that were refused. */
  private static List<Plot.Curve> curves(Family family, String measure) {
    List<Plot.Curve> curves = new ArrayList<>();
    for (int c = 0; c < family.curves().size(); c++) {
      double[] y = family.values(measure, family.curves().get(c));
      double[] x = family.steps();
      int[] there = IntStream.range(0, y.length).filter(i -> !Double.isNaN(y[i])).toArray();
      if (there.length > 1) {
        curves.add(
            new Plot.Curve(
                family.curves().get(c),
                LINES[c % LINES.length],
                IntStream.of(there).mapToDouble(i -> x[i]).toArray(),
                IntStream.of(there).mapToDouble(i -> y[i]).toArray()));
      }
    }
    return curves;
  }
}
