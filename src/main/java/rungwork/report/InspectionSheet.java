package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.record.Reading;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.Side;

/** The blank sheet: where to put the tape, the true values, and room for what it reads. */
final class InspectionSheet {
  private static final String BOX = "________";

  private InspectionSheet() {}

  static Page of(Inspection seen, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Where to put the tape: ladder " + seen.ladder().name()));
    blocks.add(
        new Block.VerdictLine(
            seen.verdictLine() + ". Measured on ____________ by ____________________"));
    blocks.add(new Block.Figure(new InspectionDrawing(seen, units).draw()));
    blocks.add(
        new Block.Remarks(
            List.of(
                "Stand the frame on level stands, free of load. Clean it and look for flaked paint,"
                    + " wrinkles and cracks first.",
                "Mark the middle line of each rail, on the same face all along, at the middle of"
                    + " each crossmember and at the rails' ends; a punch mark holds the tape.",
                "Pull the tape straight from mark to mark, without touching anything between; read"
                    + " twice, from both ends.")));
    for (Reading.Kind kind : Reading.Kind.values()) {
      group(blocks, seen, kind, units);
    }
    blocks.add(
        new Block.Folded(
            "What is used again, what is replaced", List.of(InspectionPage.rules(units))));
    InspectionPage.end(blocks, seen);
    return new Page(blocks);
  }

  private static void group(List<Block> blocks, Inspection seen, Reading.Kind kind, Units units) {
    List<Reading> places = seen.readings().stream().filter(one -> one.kind() == kind).toList();
    if (places.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(heading(kind, seen)));
    String unit = "[" + units.scale(rungwork.quantity.Kind.LENGTH).unit() + "]";
    double zero = kind == Reading.Kind.HEIGHT ? places.get(places.size() - 1).truth() : 0;
    blocks.add(
        kind == Reading.Kind.WIDTH
            ? new Table(
                List.of(Column.words("at"), Column.number("true " + unit), Column.words("read")),
                places.stream()
                    .map(one -> Row.of(one.from(), InspectionPage.amount(one.truth(), units), BOX))
                    .toList())
            : new Table(columns(kind, unit), pairs(places, zero, units)));
  }

  private static List<Column> columns(Reading.Kind kind, String unit) {
    boolean diagonal = kind == Reading.Kind.DIAGONAL;
    String left = diagonal ? "left front" : "left";
    String right = diagonal ? "right front" : "right";
    return List.of(
        Column.words(kind == Reading.Kind.HEIGHT || kind == Reading.Kind.BOW ? "at" : "from, to"),
        Column.number(left + ", true " + unit),
        Column.words(left + ", read"),
        Column.number(right + ", true " + unit),
        Column.words(right + ", read"));
  }

  private static List<Row> pairs(List<Reading> places, double zero, Units units) {
    List<Row> rows = new ArrayList<>();
    for (Reading one : places) {
      if (one.side() == Side.LEFT) {
        Reading twin =
            places.stream()
                .filter(other -> other.side() == Side.RIGHT)
                .filter(other -> other.from().equals(one.from()) && other.to().equals(one.to()))
                .findFirst()
                .orElseThrow();
        rows.add(
            Row.of(
                one.from().equals(one.to()) ? one.from() : one.from() + " to " + one.to(),
                InspectionPage.amount(one.truth() - zero, units),
                BOX,
                InspectionPage.amount(twin.truth() - zero, units),
                BOX));
      }
    }
    return rows;
  }

  private static String heading(Reading.Kind kind, Inspection seen) {
    List<String> stations = seen.stations();
    String rear = stations.get(stations.size() - 1);
    return switch (kind) {
      case LENGTH -> "1. Lengths along each rail";
      case WIDTH -> "2. Widths from rail to rail";
      case DIAGONAL ->
          "3. Diagonals, from a rail's front mark across to the other rail's rear mark";
      case HEIGHT -> "4. Heights above any level datum; true above the mark at " + rear;
      case BOW -> "5. Outwards from a string along each rail, " + stations.get(0) + " to " + rear;
    };
  }
}
