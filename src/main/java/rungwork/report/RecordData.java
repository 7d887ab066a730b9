package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.check.Verdict.Amount;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.Datum;
import rungwork.record.DesignRecord;
import rungwork.record.Origin;
import rungwork.report.Table.Cell;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;

/** A record's data: a drawing, what to measure next, every datum with where it comes from. */
final class RecordData {
  private final DesignRecord record;
  private final Units units;

  private RecordData(DesignRecord record, Units units) {
    this.record = record;
    this.units = units;
  }

  static List<Block> of(DesignRecord record, Units units) {
    return new RecordData(record, units).blocks();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Chapter.of("1", "What it is and how well that is known"));
    blocks.add(new Block.VerdictLine(count()));
    next(blocks);
    drawings(record, units).forEach(picture -> blocks.add(new Block.Figure(picture)));
    if (!record.data().isEmpty()) {
      blocks.add(table());
    }
    return blocks;
  }

  /** The frame from above and from its left, if the record has one. */
  static List<Picture> drawings(DesignRecord record, Units units) {
    return record
        .ladder()
        .map(ladder -> new LadderPlan(ladder, record.vehicle(), Optional.empty()))
        .map(plan -> List.of(plan.picture(units), plan.elevation(units)))
        .orElse(List.of());
  }

  /** How many data come from where; a record without a measured one says so first. */
  private String count() {
    List<Datum> data = record.data();
    if (data.isEmpty()) {
      return "No data are recorded; nothing was measured.";
    }
    Map<Origin, Integer> counts = new LinkedHashMap<>();
    Stream.of(Origin.values()).forEach(origin -> counts.put(origin, 0));
    data.forEach(one -> counts.merge(one.origin(), 1, Integer::sum));
    List<String> parts = new ArrayList<>();
    counts.forEach((origin, many) -> parts.add(many + " " + origin.words()));
    String nothing = counts.get(Origin.MEASURED) == 0 ? "Nothing was measured. " : "";
    return nothing + "Of " + data.size() + " data: " + String.join(", ", parts) + ".";
  }

  private void next(List<Block> blocks) {
    List<Datum> guessed = open(Origin.GUESSED);
    List<Datum> unknown = open(Origin.NOT_STATED);
    if (!guessed.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "Guessed, so to be measured next: "
                  + String.join("; ", guessed.stream().map(RecordData::guess).toList())
                  + "."));
    }
    if (!unknown.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "Where these come from is not stated; count them as guessed: "
                  + String.join("; ", unknown.stream().map(Datum::what).toList())
                  + "."));
    }
  }

  private static String guess(Datum one) {
    return one.how().isEmpty() ? one.what() : one.what() + " (" + one.how() + ")";
  }

  private List<Datum> open(Origin origin) {
    return record.toMeasureNext().stream().filter(one -> one.origin() == origin).toList();
  }

  private Table table() {
    String unit = units.scale(Kind.LENGTH).unit();
    return new Table(
        List.of(
            Column.words("datum"),
            Column.words("value"),
            Column.number("x", unit),
            Column.number("y", unit),
            Column.number("z", unit),
            Column.words("origin")),
        record.data().stream().map(this::row).toList());
  }

  private Row row(Datum one) {
    Optional<Point> at = one.value().at();
    return Row.of(
            Cell.of(one.what()),
            Cell.of(value(one.value())),
            Cell.of(at.map(p -> Numbers.dimension(p.x(), units)).orElse("")),
            Cell.of(at.map(p -> Numbers.dimension(p.y(), units)).orElse("")),
            Cell.of(at.map(p -> Numbers.dimension(p.z(), units)).orElse("")),
            Cell.of(origin(one)))
        .noting(one.model().map(model -> beside(one, model)).orElse(""));
  }

  private static String origin(Datum one) {
    return one.how().isEmpty() ? one.origin().words() : one.origin().words() + ": " + one.how();
  }

  private String value(Datum.Value value) {
    return value.size().map(this::amount).orElse(value.words());
  }

  private String amount(Amount amount) {
    return Numbers.given(amount.value(), amount.kind(), units);
  }

  private String beside(Datum one, Amount model) {
    return "the calculation has "
        + amount(model)
        + one.offModel().map(RecordData::apart).orElse("");
  }

  /** How far the calculation is from what was stated. */
  private static String apart(double off) {
    double percent = -100 * off / (1 + off);
    return ", " + Numbers.decimals(Math.abs(percent), 1) + (percent < 0 ? " % less" : " % more");
  }

  /** What strengths and sizes rest on: each material of the frame with its source. */
  static List<String> sources(DesignRecord record) {
    return record
        .ladder()
        .map(
            ladder ->
                stocks(ladder)
                    .map(stock -> stock.material().name() + ": " + stock.material().source())
                    .distinct()
                    .toList())
        .orElse(List.of());
  }

  private static Stream<Stock> stocks(Ladder ladder) {
    Stream<Stock> rails =
        Stream.of(Side.values())
            .flatMap(side -> ladder.rail(side).reaches().stream())
            .map(Rail.Reach::stock);
    return Stream.concat(rails, ladder.crossmembers().stream().map(Crossmember::stock));
  }
}
