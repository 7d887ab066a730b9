package rungwork.report;

import static rungwork.quantity.Quantities.g;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rungwork.impact.Crash;
import rungwork.impact.Range;
import rungwork.impact.Ride;
import rungwork.impact.RigidOrCrush;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** The bare frame and others side by side: pulses, people, energy, mass, order of giving way. */
final class RigidOrCrushPage {
  private static final String[] LINES = {"first", "second", "third"};
  private static final Plot.Axis TIME = new Plot.Axis("time", Kind.TIME);
  private static final Plot.Axis DECELERATION = new Plot.Axis("deceleration", Kind.ACCELERATION);

  private RigidOrCrushPage() {}

  static Page of(RigidOrCrush choice, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Rigid or crush: " + choice.scene().name());
    blocks.add(new Block.Paragraph(what(choice, units)));
    choice.outcomes().forEach(outcome -> blocks.add(new Block.Paragraph(order(outcome))));
    blocks.add(new Block.Figure(pulses(choice).picture(units)));
    blocks.add(new Block.Figure(people(choice).picture(units)));
    blocks.add(sideBySide(choice, units));
    for (RigidOrCrush.Outcome outcome : choice.outcomes()) {
      ImpactBlocks.remarks(blocks, outcome.design().name(), outcome.remarks(units));
    }
    blocks.add(new Block.Heading("How long a front would have to be"));
    blocks.add(lengths(choice, units));
    blocks.add(
        new Block.Paragraph(
            "The mean over the distance alone; a folding tube packs to a quarter of its length and more."
                + " Whatever is used up before the vehicle stands hands the rest to the frame."));
    ImpactBlocks.remarks(blocks, "Look again", choice.warnings(units));
    ImpactBlocks.remarks(blocks, "Not checked", choice.outcomes().get(0).ride().notChecked());
    ImpactBlocks.remarks(blocks, "Assumed", choice.assumptions(units));
    return ImpactBlocks.end(blocks);
  }

  private static String what(RigidOrCrush choice, Units units) {
    int runs = choice.outcomes().stream().mapToInt(one -> one.crashes().size()).sum();
    return choice.scene().mass().show(units)
        + " closing at "
        + choice.scene().closing().show(units)
        + " with "
        + choice.scene().obstacle().words(units)
        + "; "
        + runs
        + " crashes, each with every end of the belt. The pictures show of each design the crash"
        + " with the highest peak, dashed the one with the lowest.";
  }

  private static String order(RigidOrCrush.Outcome outcome) {
    String ratio =
        outcome.order() == RigidOrCrush.Order.NOTHING_IN_FRONT
            ? ""
            : "frame's first yield over the folding peak in front "
                + outcome.behindOverFront()
                + ": ";
    return outcome.design().name() + ": " + ratio + outcome.order().words() + ".";
  }

  private static <T> List<T> ends(List<T> all, Function<T, Double> peak) {
    Comparator<T> order = Comparator.comparing(peak);
    T high = all.stream().max(order).orElseThrow();
    T low = all.stream().min(order).orElseThrow();
    return high == low ? List.of(high) : List.of(high, low);
  }

  private static Plot pulses(RigidOrCrush choice) {
    List<Plot.Curve> curves = new ArrayList<>();
    for (int i = 0; i < choice.outcomes().size(); i++) {
      RigidOrCrush.Outcome outcome = choice.outcomes().get(i);
      List<Crash> ends = ends(outcome.crashes(), crash -> crash.pulse().peak());
      for (int end = 0; end < ends.size(); end++) {
        Crash.Body body = ends.get(end).body("body");
        curves.add(
            new Plot.Curve(
                end == 0 ? outcome.design().name() : "",
                LINES[i % LINES.length] + (end == 0 ? "" : " low"),
                body.times(),
                body.decelerations()));
      }
    }
    return Plot.of("The vehicle's deceleration over time", TIME, DECELERATION, curves);
  }

  private static Plot people(RigidOrCrush choice) {
    List<Plot.Curve> curves = new ArrayList<>();
    for (int i = 0; i < choice.outcomes().size(); i++) {
      RigidOrCrush.Outcome outcome = choice.outcomes().get(i);
      List<Ride.Run> ends = ends(outcome.ride().runs(), Ride.Run::peak);
      for (int end = 0; end < ends.size(); end++) {
        Ride.Series series = ends.get(end).series();
        curves.add(
            new Plot.Curve(
                end == 0 ? outcome.design().name() : "",
                LINES[i % LINES.length] + (end == 0 ? "" : " low"),
                series.times(),
                series.person()));
      }
    }
    String who = choice.occupant().name();
    return Plot.of("Deceleration of the " + who + " on the belt", TIME, DECELERATION, curves);
  }

  private static Table sideBySide(RigidOrCrush choice, Units units) {
    List<RigidOrCrush.Outcome> all = choice.outcomes();
    List<Column> columns = new ArrayList<>(List.of(Column.sentence("low to high")));
    all.forEach(one -> columns.add(Column.number(one.design().name())));
    List<Row> rows =
        List.of(
            row("crush of the front", all, one -> one.crush().show(units)),
            row("vehicle, mean over time", all, one -> one.meanOverTime().show(units)),
            row("vehicle, peak", all, one -> one.peak().show(units)),
            row("pulse lasts", all, one -> one.duration().show(units)),
            row("person, peak", all, one -> one.ride().peak().show(units)),
            row("person, passed for 3 ms", all, one -> one.ride().clip().show(units)),
            row("chest forward", all, one -> one.ride().excursion().show(units)),
            row("all straps together", all, one -> one.ride().beltForce().show(units)),
            row("part ridden down", all, one -> ImpactBlocks.part(one.ride().rideDown())),
            row("energy in the element", all, one -> none(one.elementEnergy(), units)),
            row("energy in the frame", all, one -> one.frameEnergy().show(units)),
            row("mass added", all, one -> mass(one.design().mass(), units)));
    return new Table(columns, rows);
  }

  private static String none(Range range, Units units) {
    return range.high() == 0 ? "none" : range.show(units);
  }

  private static String mass(double kilograms, Units units) {
    return kilograms == 0 ? "none" : units.scale(Kind.MASS).show(kilograms, 3);
  }

  private static Row row(
      String name,
      List<RigidOrCrush.Outcome> outcomes,
      Function<RigidOrCrush.Outcome, String> value) {
    return Row.of(
        Stream.concat(Stream.of(name), outcomes.stream().map(value)).toArray(String[]::new));
  }

  private static Table lengths(RigidOrCrush choice, Units units) {
    List<Row> rows =
        Stream.of(10.0, 15.0, 20.0, 30.0)
            .map(
                mean ->
                    Row.of(
                        units.scale(Kind.ACCELERATION).show(mean * 9.80665, 3),
                        choice.shortestCrush(g(mean)).show(units),
                        choice.shortestTube(g(mean)).show(units)))
            .toList();
    return new Table(
        List.of(
            Column.number("mean deceleration kept"),
            Column.number("shortest crush"),
            Column.number("tube for it")),
        rows);
  }
}
