package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwork.check.Caution;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.record.Distortion;
import rungwork.record.Inspection;
import rungwork.record.Reading;
import rungwork.record.Reading.Limit;
import rungwork.record.Reading.Standing;
import rungwork.record.RepairRule;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** A frame measured after a crash beside the true one: what it shows, and what follows from it. */
final class InspectionPage {
  private static final String UNTOLD = "none to tell";

  private final Inspection seen;
  private final Units units;
  private final List<Block> blocks = new ArrayList<>();

  private InspectionPage(Inspection seen, Units units) {
    this.seen = seen;
    this.units = units;
  }

  static Page of(Inspection seen, Units units) {
    boolean blank =
        seen.readings().stream().allMatch(one -> one.standing() == Standing.NOT_MEASURED);
    return blank ? InspectionSheet.of(seen, units) : new InspectionPage(seen, units).filled();
  }

  private Page filled() {
    String day = seen.date().isEmpty() ? "" : ", " + seen.date();
    blocks.add(new Block.Title("Inspection of ladder " + seen.ladder().name() + day));
    blocks.add(new Block.VerdictLine(seen.verdictLine()));
    blocks.add(new Block.Figure(new InspectionDrawing(seen, units).draw()));
    ImpactBlocks.remarks(blocks, "What it means", seen.meaning());
    suspects();
    if (!seen.distortions().isEmpty()) {
      blocks.add(new Block.Heading("Out of shape by"));
      blocks.add(distortions());
    }
    blocks.add(new Block.Heading("Readings"));
    blocks.add(new Block.Paragraph(howRead()));
    blocks.add(readings());
    open();
    ImpactBlocks.remarks(blocks, "Tolerances", sources());
    blocks.add(new Block.Heading("Used again or replaced"));
    blocks.add(rules(units));
    end(blocks, seen);
    return new Page(blocks);
  }

  static Table rules(Units units) {
    return new Table(
        List.of(Column.words("part"), Column.sentence("rule"), Column.words("source")),
        Stream.of(RepairRule.values())
            .map(rule -> Row.of(rule.part(), rule.text(units), rule.source().toString()))
            .toList());
  }

  /** What every sheet ends with: what no tape tells, the caution. */
  static void end(List<Block> blocks, Inspection seen) {
    ImpactBlocks.remarks(blocks, "Not checked", seen.notChecked());
    blocks.add(
        new Block.Paragraph(
            "Which hit leaves such damage, and what else yielded in it, is another question: state"
                + " the diagonals, the sag and the shortening as damage seen and try the collapses"
                + " that may explain them."));
    blocks.add(new Block.Warning(Caution.SCREENING.text()));
  }

  private void suspects() {
    List<String> some = seen.suspects().stream().map(Reading::where).toList();
    if (!some.isEmpty()) {
      blocks.add(
          new Block.Warning(
              "The readings contradict each other. Measure again: "
                  + String.join("; ", some)
                  + "."));
    }
  }

  private String howRead() {
    return "Each reading is known to "
        + Numbers.dimension(seen.accuracy(), units)
        + " "
        + unit()
        + " either way; a smaller difference says nothing. Heights and the picture are told from "
        + seen.straight().get(0)
        + " to "
        + seen.straight().get(seen.straight().size() - 1)
        + ", which is held for straight, or from all marks where that was not measured; far from"
        + " there they are known less well. Outwards from a string counts above zero. Within:"
        + " inside the tightest tolerance; sources differ: outside that, inside another; none to"
        + " tell: no more than the reading can be wrong by.";
  }

  private Table distortions() {
    List<Row> rows = new ArrayList<>();
    for (Distortion one : seen.distortions()) {
      List<String> working = new ArrayList<>();
      one.steps().forEach(step -> working.add(step.text(units)));
      one.steps()
          .forEach(
              step ->
                  working.add(
                      step.formula().result().letter()
                          + ": "
                          + step.formula().result().meaning()
                          + " ("
                          + step.formula().source()
                          + ")"));
      rows.add(
          Row.of(
                  one.form().words(),
                  one.where(),
                  amount(one.value()),
                  verdict(one.standing(), !one.shows()),
                  one.which(),
                  "± " + amount(one.eitherWay()),
                  limits(one.limits()))
              .folding(working));
    }
    return new Table(
        List.of(
            Column.words("form"),
            Column.words("where"),
            Column.number("by", unit()),
            Column.words("verdict"),
            Column.sentence("which way"),
            Column.number("known to", unit()),
            Column.number("tolerance", unit())),
        rows);
  }

  private Table readings() {
    List<Row> rows =
        seen.readings().stream()
            .filter(one -> one.standing() != Standing.NOT_MEASURED)
            .map(this::row)
            .toList();
    return new Table(
        List.of(
            Column.words("place"),
            Column.number("true", unit()),
            Column.number("read", unit()),
            Column.number("difference", unit()),
            Column.words("verdict"),
            Column.number("tolerance", unit()),
            Column.number("as built", unit())),
        rows);
  }

  private Row row(Reading one) {
    double difference = one.difference().orElseThrow();
    boolean nothing = Math.abs(difference) <= seen.knownTo(one);
    return Row.of(
        one.where(),
        amount(one.truth()),
        amount(one.measured()),
        amount(difference),
        verdict(one.standing(), nothing),
        limits(one.limits()),
        "± " + Numbers.dimension(seen.asBuilt(one).value(), units));
  }

  /** A difference that nobody can tell is none, unless the tolerance is finer than the tape. */
  private static String verdict(Standing standing, boolean untold) {
    if (!untold) {
      return standing.words();
    }
    return standing == Standing.WITHIN ? UNTOLD : standing.words() + ", " + UNTOLD;
  }

  private String limits(List<Limit> limits) {
    return limits.stream()
        .map(limit -> Numbers.dimension(limit.value(), units))
        .collect(Collectors.joining(" / ", "± ", ""));
  }

  private void open() {
    List<String> open =
        seen.readings().stream()
            .filter(one -> one.standing() == Standing.NOT_MEASURED)
            .map(Reading::where)
            .toList();
    if (!open.isEmpty()) {
      blocks.add(
          new Block.Folded(
              open.size() + " places were not measured", List.of(new Block.Remarks(open))));
    }
  }

  private List<String> sources() {
    Set<String> all = new LinkedHashSet<>();
    seen.distortions().forEach(one -> one.limits().forEach(limit -> all.add(source(limit))));
    seen.readings().forEach(one -> one.limits().forEach(limit -> all.add(source(limit))));
    all.add(
        "For twist and sag by themselves no published figure was found; those for heights stand in"
            + " their place.");
    Set<String> built =
        seen.readings().stream()
            .map(one -> seen.asBuilt(one).source().toString())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    all.add(
        "As built: how far off welded work may be when new, "
            + String.join("; ", built)
            + ". Not a tolerance for a repair.");
    return List.copyOf(all);
  }

  private String source(Limit limit) {
    return "± " + Numbers.dimension(limit.value(), units) + " " + unit() + ": " + limit.source();
  }

  private String unit() {
    return units.scale(Kind.LENGTH).unit();
  }

  private String amount(OptionalDouble metres) {
    return metres.isPresent() ? amount(metres.getAsDouble()) : "";
  }

  private String amount(double metres) {
    return amount(metres, units);
  }

  /** As a tape reads: a tenth of a millimetre, a hundredth of an inch. */
  static String amount(double metres, Units units) {
    double inUnit = metres / units.scale(Kind.LENGTH).inSi();
    return Numbers.decimals(inUnit, units == Units.METRIC ? 1 : 2);
  }
}
