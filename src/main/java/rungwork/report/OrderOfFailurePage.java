package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Step;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.OrderOfFailure.Elastic;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.Range;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.SeatDeceleration;

/** Where a frame gives way first in a hit: pictures, the table, the elastic stage. */
final class OrderOfFailurePage {
  private OrderOfFailurePage() {}

  static Page of(OrderOfFailure order, Units units) {
    List<Block> blocks =
        ImpactBlocks.begin(
            "Where it gives way first: " + order.ladder().name() + ", " + order.elastic().hit());
    blocks.add(new Block.Figure(new OrderDrawing(order, units).draw()));
    blocks.add(new Block.Figure(new OrderBars(order, units).draw()));
    blocks.add(new Block.Paragraph(firstWords(order, units)));
    order
        .capacityDesign()
        .ifPresent(line -> blocks.add(new Block.VerdictLine("Capacity design: " + line + ".")));
    blocks.add(new Block.Heading("From the front to the passengers"));
    blocks.add(table(order, units));
    blocks.add(new Block.Heading("While the frame is elastic"));
    blocks.add(elastic(order.elastic(), units));
    ImpactBlocks.remarks(blocks, "Look again", order.elastic().notes());
    ImpactBlocks.remarks(blocks, "Not checked", order.notChecked());
    ImpactBlocks.remarks(blocks, "Assumed", order.assumptions());
    return ImpactBlocks.end(blocks);
  }

  private static String firstWords(OrderOfFailure order, Units units) {
    Part first = order.order().get(0);
    return "First at the low strengths: "
        + first.name()
        + ", "
        + OrderOfFailure.shown(first.first().orElseThrow(), units)
        + " ("
        + first.detail().begins()
        + "). All figures are decelerations of the vehicle's centre of mass on top of standing,"
        + " nothing divided by a factor. Next over this: what the next one in the order takes over"
        + " what this one takes, low over high to high over low; below 1 they may change places.";
  }

  private static Table table(OrderOfFailure order, Units units) {
    String g = units.scale(Kind.ACCELERATION).unit();
    List<Part> ranked = order.order();
    List<Row> rows = new ArrayList<>();
    for (Part part : order.parts()) {
      rows.add(row(order, ranked, part, units));
    }
    return new Table(
        List.of(
            Column.number("order"),
            Column.words("part"),
            Column.number("first gives way", g),
            Column.number("carries no more", g),
            Column.number("next over this"),
            Column.words("what begins")),
        rows);
  }

  private static Row row(OrderOfFailure order, List<Part> ranked, Part part, Units units) {
    int place = ranked.indexOf(part);
    Row row =
        Row.of(
            place < 0 ? "" : String.valueOf(place + 1),
            part.name(),
            figure(part.first(), units),
            figure(part.ultimate(), units),
            next(order, ranked, place),
            part.detail().begins());
    List<String> notes = new ArrayList<>();
    notes.add(part.detail().where());
    notes.addAll(part.detail().notes());
    return row.noting(notes.toArray(String[]::new)).folding(working(part, units));
  }

  private static String figure(Optional<Range> range, Units units) {
    String unit = " " + units.scale(Kind.ACCELERATION).unit();
    return range
        .map(known -> OrderOfFailure.shown(known, units).replace(unit, ""))
        .orElse("not checked");
  }

  private static String next(OrderOfFailure order, List<Part> ranked, int place) {
    if (place < 0 || place == ranked.size() - 1) {
      return "";
    }
    return ImpactBlocks.part(order.margin(ranked.get(place), ranked.get(place + 1)));
  }

  private static List<String> working(Part part, Units units) {
    return part.detail().working().stream()
        .map((Step step) -> step.text(units) + "  (" + step.formula().source() + ")")
        .toList();
  }

  private static Table elastic(Elastic elastic, Units units) {
    List<Row> rows = new ArrayList<>();
    rows.add(ImpactBlocks.figure("first yield of the frame", elastic.firstYield(), units));
    elastic
        .critical()
        .ifPresent(
            critical ->
                rows.add(
                    ImpactBlocks.figure("the frame buckles as a whole, elastic", critical, units)));
    for (SeatDeceleration seat : elastic.seats()) {
      rows.add(
          Row.of(
              "at the low end of first yield, place of " + seat.seat(),
              units.scale(Kind.ACCELERATION).show(seat.rearwards(), 3) + " rearwards"));
    }
    rows.add(
        Row.of(
            "at the same: pitch, " + way(elastic.pitch(), "nose down", "nose up"),
            turn(elastic.pitch(), units)));
    rows.add(
        Row.of(
            "at the same: yaw, " + way(elastic.yaw(), "nose to the left", "nose to the right"),
            turn(elastic.yaw(), units)));
    return new Table(List.of(Column.sentence("figure"), Column.number("low to high")), rows);
  }

  /** Less than this is rounding [rad/s²]. */
  private static final double STEADY = 1e-6;

  private static String way(double turn, String positive, String negative) {
    return Math.abs(turn) < STEADY ? "none" : turn > 0 ? positive : negative;
  }

  private static String turn(double turn, Units units) {
    double shown = Math.abs(turn) < STEADY ? 0 : Math.abs(turn);
    return units.scale(Kind.ANGULAR_ACCELERATION).show(shown, 3);
  }
}
