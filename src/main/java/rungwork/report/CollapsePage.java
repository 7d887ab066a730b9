package rungwork.report;

import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwork.impact.Collapse;
import rungwork.impact.CrushCurve;
import rungwork.impact.CrushTube.Strength;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** A frame beyond yield: force over crush, hinges in order, shapes step by step. */
final class CollapsePage {
  private static final int[] CRUSHES = {50, 100, 200};

  private CollapsePage() {}

  static Page of(Collapse collapse, Units units) {
    Collapse.Path low = collapse.deciding(Strength.LOW);
    Collapse.Path high = collapse.deciding(Strength.HIGH);
    List<Block> blocks =
        ImpactBlocks.begin(
            "Collapse: " + collapse.vehicle().name() + ", " + collapse.hit().words());
    blocks.add(new Block.Paragraph(what(collapse)));
    blocks.add(figures(collapse, units));
    blocks.add(new Block.Figure(plot(collapse, low, high).picture(units)));
    order(blocks, "Hinges of the weakest run: ", low, units);
    blocks.add(new Block.Figure(new CollapseShapes(collapse, low, units).picture()));
    order(blocks, "Hinges of the strongest run: ", high, units);
    blocks.add(new Block.Folded("Shapes of the strongest run", shapes(collapse, high, units)));
    blocks.add(new Block.Folded("All runs", List.of(runs(collapse, units))));
    collapse.kickUps().forEach(fall -> KickUpBlocks.add(blocks, fall, units));
    ImpactBlocks.remarks(blocks, "Rail tips as crush elements", collapse.tips(units));
    ImpactBlocks.remarks(blocks, "Look again", collapse.warnings(units));
    ImpactBlocks.remarks(blocks, "Left out", collapse.leftOut());
    ImpactBlocks.remarks(blocks, "Assumed", collapse.assumptions());
    return ImpactBlocks.end(blocks);
  }

  private static List<Block> shapes(Collapse collapse, Collapse.Path path, Units units) {
    return List.of(new Block.Figure(new CollapseShapes(collapse, path, units).picture()));
  }

  private static String what(Collapse collapse) {
    return collapse.paths().size()
        + " runs: two strengths, "
        + collapse.ladder().joints().size()
        + " assumptions about the joints, masses on several mounts shared in three ways."
        + " Decelerations are those of the centre of the masses, as amplified; crush is how far the"
        + " hit point moves against the masses. A mechanism here is no crash: buckling or a weld"
        + " may come before.";
  }

  private static Table figures(Collapse collapse, Units units) {
    List<Row> rows = new ArrayList<>();
    rows.add(ImpactBlocks.figure("deceleration at the first hinge", collapse.firstHinge(), units));
    rows.add(ImpactBlocks.figure("deceleration at the mechanism", collapse.deceleration(), units));
    rows.add(ImpactBlocks.figure("force at the mechanism", collapse.force(), units));
    rows.add(ImpactBlocks.figure("crush at 95 % of that force", collapse.crush(), units));
    for (int crush : CRUSHES) {
      String words = "energy taken to a crush of " + units.show(mm(crush));
      rows.add(ImpactBlocks.figure(words, collapse.energy(mm(crush)), units));
    }
    return ImpactBlocks.figures(rows);
  }

  private static Plot plot(Collapse collapse, Collapse.Path low, Collapse.Path high) {
    double to = 1e3 * Math.max(0.05, 1.5 * collapse.crush().high());
    List<Plot.Curve> curves =
        List.of(
            curve("strongest run", "second", high.curve(mm(to))),
            curve("weakest run", "first", low.curve(mm(to))));
    List<Plot.Dot> dots = new ArrayList<>(dots(low, "weakest run, "));
    dots.addAll(dots(high, "strongest run, "));
    return Plot.of(
            "Force over crush, numbers at hinges as in the tables",
            new Plot.Axis("crush", Kind.LENGTH),
            new Plot.Axis("force", Kind.FORCE),
            curves)
        .dotted(dots);
  }

  private static Plot.Curve curve(String name, String css, CrushCurve curve) {
    return new Plot.Curve(
        name,
        css,
        curve.points().stream().mapToDouble(CrushCurve.Point::crush).toArray(),
        curve.points().stream().mapToDouble(CrushCurve.Point::force).toArray());
  }

  private static List<Plot.Dot> dots(Collapse.Path path, String run) {
    Map<Collapse.Hinge, Integer> numbers = CollapseShapes.numbers(path);
    List<Plot.Dot> dots = new ArrayList<>();
    for (Collapse.Stage stage : path.stages().subList(1, path.stages().size())) {
      String words = numbers(stage.opened(), numbers);
      String what = run + (words.isEmpty() ? "hinges lock" : "hinge " + words);
      dots.add(new Plot.Dot(stage.reached().crush(), stage.reached().force(), words, what));
    }
    return dots;
  }

  private static String numbers(List<Collapse.Hinge> hinges, Map<Collapse.Hinge, Integer> numbers) {
    return String.join(
        ", ", hinges.stream().map(numbers::get).sorted().map(String::valueOf).toList());
  }

  private static void order(List<Block> blocks, String heading, Collapse.Path path, Units units) {
    blocks.add(new Block.Heading(heading + path.of().words()));
    Map<Collapse.Hinge, Integer> numbers = CollapseShapes.numbers(path);
    List<Row> rows = new ArrayList<>();
    for (Collapse.Stage stage : path.stages()) {
      for (Collapse.Hinge hinge : stage.opened()) {
        rows.add(row(numbers.get(hinge) + " " + hinge.words(), "opens", stage, units));
      }
      for (Collapse.Hinge hinge : stage.locked()) {
        rows.add(row(numbers.get(hinge) + " " + hinge.words(), "turns back, locks", stage, units));
      }
    }
    rows.add(row("mechanism", "moves on by itself", path.last(), units));
    blocks.add(
        new Table(
            List.of(
                Column.words("hinge"),
                Column.words("what happens"),
                Column.number("deceleration", units.scale(Kind.ACCELERATION).unit()),
                Column.number("force", units.scale(Kind.FORCE).unit()),
                Column.number("crush", units.scale(Kind.LENGTH).unit())),
            rows));
  }

  private static Row row(String hinge, String what, Collapse.Stage stage, Units units) {
    return Row.of(
        hinge,
        what,
        units.scale(Kind.ACCELERATION).number(stage.reached().deceleration(), 3),
        units.scale(Kind.FORCE).number(stage.reached().force(), 3),
        units.scale(Kind.LENGTH).number(stage.reached().crush(), 3));
  }

  private static Table runs(Collapse collapse, Units units) {
    List<Row> rows =
        collapse.paths().stream()
            .map(
                path ->
                    Row.of(
                        path.of().words(),
                        path.first().opened().isEmpty()
                            ? "mechanism"
                            : path.first().opened().get(0).words(),
                        units
                            .scale(Kind.ACCELERATION)
                            .number(path.first().reached().deceleration(), 3),
                        units
                            .scale(Kind.ACCELERATION)
                            .number(path.last().reached().deceleration(), 3)))
            .toList();
    return new Table(
        List.of(
            Column.sentence("run"),
            Column.sentence("first hinge"),
            Column.number("first hinge", units.scale(Kind.ACCELERATION).unit()),
            Column.number("mechanism", units.scale(Kind.ACCELERATION).unit())),
        rows);
  }
}
