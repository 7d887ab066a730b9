package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.impact.Collapse;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * How the force in one rail falls while its kick-up folds over: curve, figures, what it rests on.
 */
final class KickUpBlocks {
  private static final int EVERY = 10;

  private KickUpBlocks() {}

  static void add(List<Block> blocks, Collapse.KickUpFall fall, Units units) {
    blocks.add(new Block.Heading("Kick-up " + fall.kickUp().name() + " at large motions"));
    blocks.add(new Block.Paragraph(what(fall, units)));
    blocks.add(new Block.Figure(plot(fall).picture(units)));
    blocks.add(table(fall, units));
  }

  private static String what(Collapse.KickUpFall fall, Units units) {
    String folding =
        fall.tested()
            .map(
                inside ->
                    " Its walls fold by a mechanism after Kecman (1983; recalled, an estimate)"
                        + (inside ? "." : "; outside his tests."))
            .orElse(" Folding of its walls: not checked for this shape.");
    return fall.section()
        + ", rising by "
        + units.scale(Kind.LENGTH).show(Math.abs(fall.kickUp().rise()), 3)
        + ", one rail alone, force along it: rigid and plastic, statics. It begins to fold over at "
        + fall.beginning().show(units)
        + ". Low: the head free to turn, low strength. High: the head held, high strength."
        + folding;
  }

  private static Plot plot(Collapse.KickUpFall fall) {
    return Plot.of(
        "Force in one rail over its shortening, from the first hinge on",
        new Plot.Axis("shortening", Kind.LENGTH),
        new Plot.Axis("force", Kind.FORCE),
        List.of(curve("high", "second", fall.high()), curve("low", "first", fall.low())));
  }

  private static Plot.Curve curve(String name, String css, List<Collapse.Fallen> branch) {
    return new Plot.Curve(
        name,
        css,
        branch.stream().mapToDouble(Collapse.Fallen::crush).toArray(),
        branch.stream().mapToDouble(Collapse.Fallen::force).toArray());
  }

  private static Table table(Collapse.KickUpFall fall, Units units) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < fall.low().size(); i += EVERY) {
      Collapse.Fallen low = fall.low().get(i);
      Collapse.Fallen high = fall.high().get(i);
      rows.add(
          Row.of(
              Numbers.decimals(Math.toDegrees(low.turn()), 0),
              units.scale(Kind.LENGTH).number(low.crush(), 3),
              range(units, Kind.FORCE, low.force(), high.force()),
              range(units, Kind.ENERGY, low.energy(), high.energy())));
    }
    return new Table(
        List.of(
            Column.number("turned by", "°"),
            Column.number("shortening", units.scale(Kind.LENGTH).unit()),
            Column.number("force", units.scale(Kind.FORCE).unit()),
            Column.number("energy", units.scale(Kind.ENERGY).unit())),
        rows);
  }

  private static String range(Units units, Kind kind, double low, double high) {
    return units.scale(kind).number(low, 3) + " to " + units.scale(kind).number(high, 3);
  }
}
