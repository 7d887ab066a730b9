package rungwork.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.frame.Load;
import rungwork.impact.Occupant;
import rungwork.impact.Range;
import rungwork.impact.Ride;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** A belted person: time and distance pictures of the hardest combination, ranges over all. */
final class RidePage {
  private RidePage() {}

  static Page of(Ride ride, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Belted person: " + ride.occupant().name());
    Ride.Run hardest =
        ride.runs().stream().max(Comparator.comparingDouble(Ride.Run::peak)).orElseThrow();
    blocks.add(new Block.Paragraph(hardest(ride, hardest, units)));
    blocks.add(new Block.Figure(overTime(hardest).picture(units)));
    blocks.add(new Block.Figure(overDistance(hardest).picture(units)));
    blocks.add(figures(ride, units));
    clearances(blocks, ride, units);
    anchorages(blocks, ride, units);
    limits(blocks, units);
    ImpactBlocks.remarks(blocks, "Look again", ride.warnings(units));
    ImpactBlocks.remarks(blocks, "Not checked", ride.notChecked());
    ImpactBlocks.remarks(blocks, "Assumed", ride.assumptions());
    return ImpactBlocks.end(blocks);
  }

  private static String hardest(Ride ride, Ride.Run run, Units units) {
    return "The pictures show the combination with the highest peak of "
        + ride.runs().size()
        + ": pulse "
        + run.pulse()
        + ", belt "
        + units.scale(Kind.STIFFNESS).show(run.stiffness(), 3)
        + ", slack "
        + units.scale(Kind.LENGTH).show(run.slack(), 3)
        + ".";
  }

  private static Plot overTime(Ride.Run run) {
    Ride.Series series = run.series();
    return Plot.of(
        "Deceleration of vehicle and person over time",
        new Plot.Axis("time", Kind.TIME),
        new Plot.Axis("deceleration", Kind.ACCELERATION),
        List.of(
            new Plot.Curve("vehicle", "first", series.times(), series.vehicle()),
            new Plot.Curve("person", "second", series.times(), series.person())));
  }

  /** The areas under both curves are energies: what lies over the vehicle's way is ridden down. */
  private static Plot overDistance(Ride.Run run) {
    Ride.Series series = run.series();
    double[] ways = series.ways();
    double[] excursions = series.excursions();
    int last =
        IntStream.range(0, ways.length)
            .reduce((a, b) -> sum(b, ways, excursions) > sum(a, ways, excursions) ? b : a)
            .orElseThrow();
    double[] person =
        IntStream.rangeClosed(0, last).mapToDouble(i -> sum(i, ways, excursions)).toArray();
    int stands =
        IntStream.range(0, ways.length).reduce((a, b) -> ways[b] > ways[a] ? b : a).orElseThrow();
    return Plot.of(
            "Deceleration over the way on the ground: the area is the energy of each kilogram",
            new Plot.Axis("way on the ground", Kind.LENGTH),
            new Plot.Axis("deceleration", Kind.ACCELERATION),
            List.of(
                new Plot.Curve(
                    "vehicle", "first", head(ways, stands), head(series.vehicle(), stands)),
                new Plot.Curve("person", "second", person, head(series.person(), last))))
        .with(List.of(new Plot.Mark(ways[stands], "vehicle's farthest")));
  }

  private static double sum(int i, double[] one, double[] other) {
    return one[i] + other[i];
  }

  private static double[] head(double[] values, int last) {
    return Arrays.copyOf(values, last + 1);
  }

  private static Table figures(Ride ride, Units units) {
    return ImpactBlocks.figures(
        List.of(
            ImpactBlocks.figure("person, peak", ride.peak(), units),
            ImpactBlocks.figure("person, passed for 3 ms in all", ride.clip(), units),
            ImpactBlocks.figure(
                "chest forward in the vehicle, slack included", ride.excursion(), units),
            ImpactBlocks.figure("all straps together, along the vehicle", ride.beltForce(), units),
            Row.of("part of the energy ridden down", ImpactBlocks.part(ride.rideDown())),
            ImpactBlocks.figure("the least on these distances", ride.bestCase(), units)));
  }

  private static void clearances(List<Block> blocks, Ride ride, Units units) {
    if (ride.occupant().clearances().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading("Room in front of the chest"));
    List<Row> rows =
        ride.occupant().clearances().stream()
            .map(c -> Row.of(c.what(), c.distance().show(units), ride.reach(c).words()))
            .toList();
    blocks.add(
        new Table(
            List.of(Column.words("what"), Column.number("room"), Column.words("in these runs")),
            rows));
    blocks.add(
        new Block.Paragraph(
            "The head goes farther than the chest and is not computed; what is not reached by the chest may be reached by it."));
  }

  private static void anchorages(List<Block> blocks, Ride ride, Units units) {
    blocks.add(new Block.Heading("Belt anchorages"));
    if (!ride.occupant().anchorages().isEmpty()) {
      blocks.add(pulls(ride, units));
    }
    blocks.add(published("published static test load", Ride.publishedTestLoads(), units));
    blocks.add(
        new Block.Paragraph(
            "The demand on an anchorage is the larger of the two. Passing a published test load is not adequacy in a harder hit."));
  }

  private static Table pulls(Ride ride, Units units) {
    List<Load> loads = ride.anchorageLoads();
    String unit = units.scale(Kind.FORCE).unit();
    List<Row> rows =
        IntStream.range(0, loads.size())
            .mapToObj(i -> pull(ride, i, (Load.AtNode) loads.get(i), units))
            .toList();
    return new Table(
        List.of(
            Column.words("at"),
            Column.number("share"),
            Column.number("geometry factor"),
            Column.number("strap's pull"),
            Column.number("forwards, high end", unit),
            Column.number("upwards, high end", unit)),
        rows);
  }

  private static Row pull(Ride ride, int index, Load.AtNode load, Units units) {
    Occupant.Anchorage anchorage = ride.occupant().anchorages().get(index);
    Range pull = ride.pull(anchorage);
    return Row.of(
        anchorage.feature(),
        Numbers.decimals(anchorage.share(), 2),
        anchorage.factor().show(units),
        pull.show(units),
        units.scale(Kind.FORCE).number(load.wrench().fx(), 3),
        units.scale(Kind.FORCE).number(load.wrench().fz(), 3));
  }

  private static void limits(List<Block> blocks, Units units) {
    blocks.add(new Block.Heading("Published figures, for context only"));
    blocks.add(
        new Block.Paragraph(
            "Measured on instrumented dummies with designed restraints; this calculation cannot claim them."));
    blocks.add(published("published", Ride.publishedLimits(), units));
  }

  private static Table published(String head, List<Ride.Published> figures, Units units) {
    List<Row> rows =
        figures.stream()
            .map(f -> Row.of(f.what(), units.scale(f.kind()).show(f.value(), 4), f.source()))
            .toList();
    return new Table(
        List.of(Column.sentence(head), Column.number("figure"), Column.sentence("source")), rows);
  }
}
