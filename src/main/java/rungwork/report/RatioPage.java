package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwork.fault.Scale;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Section;
import rungwork.section.Torsion;

/** Two sections side by side: to one scale, the ratio of each property as a bar and a number. */
final class RatioPage {
  private static final String FREE =
      "torsion of an open section is that of ends free to warp; ends held against warping make it"
          + " stiffer, the more so the shorter it is, at the price of stress along it";

  private static final String BOUNDS =
      "torsion of an open section lies between both bounds, ends free to warp and ends held; held"
          + " ends pay for their stiffness with stress along the flanges, which is not looked at"
          + " here";

  private RatioPage() {}

  static Page of(Section first, Section second, List<Trait> more, Units units) {
    List<Trait> traits = Stream.concat(Trait.ALL.stream(), more.stream()).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(second.name() + " beside " + first.name()));
    blocks.add(new Block.VerdictLine(verdict(first, second, more)));
    if (Stream.of(first, second).noneMatch(one -> one.outline().loops().isEmpty())) {
      blocks.add(new Block.Figure(SectionRow.of(List.of(first, second), units)));
    }
    blocks.add(
        new Block.Figure(
            RatioBars.of(
                "B over A, on a scale of equal ratios",
                traits.stream()
                    .map(trait -> new RatioBars.Entry(trait.words(), trait.ratio(first, second)))
                    .toList())));
    blocks.add(table(first, second, traits, units));
    blocks.add(new Block.Remarks(remarks(first, second, more)));
    return new Page(blocks);
  }

  private static String verdict(Section first, Section second, List<Trait> more) {
    String held =
        more.stream()
            .map(
                trait ->
                    " (%s: %s times)".formatted(trait.words(), times(trait.ratio(first, second))))
            .collect(Collectors.joining());
    return "%s has %s times the torsion constant of %s%s and %s times its stiffness upright, for %s times its mass"
        .formatted(
            second.name(),
            times(Trait.TWIST_STIFFNESS.ratio(first, second)),
            first.name(),
            held,
            times(Trait.UPRIGHT_STIFFNESS.ratio(first, second)),
            times(Trait.MASS.ratio(first, second)));
  }

  private static List<String> remarks(Section first, Section second, List<Trait> more) {
    List<String> remarks = new ArrayList<>();
    if (Stream.of(first, second).anyMatch(one -> one.torsion() == Torsion.OPEN)) {
      remarks.add(more.isEmpty() ? FREE : BOUNDS);
    }
    Trait.drilled(List.of(first, second)).ifPresent(remarks::add);
    remarks.add("sizes only: no load was looked at, nothing was checked");
    return remarks;
  }

  private static Table table(Section first, Section second, List<Trait> traits, Units units) {
    double mass = Trait.MASS.ratio(first, second);
    List<Row> rows =
        traits.stream()
            .map(
                trait ->
                    Row.of(
                        trait.words(),
                        trait.letter(),
                        trait.show(first, units),
                        trait.show(second, units),
                        times(trait.ratio(first, second)),
                        times(trait.ratio(first, second) / mass)))
            .toList();
    return new Table(
        List.of(
            Column.words("property"),
            Column.words("symbol"),
            Column.number("A: " + first.name()),
            Column.number("B: " + second.name()),
            Column.number("B/A"),
            Column.number("B/A for equal mass")),
        rows);
  }

  static String times(double ratio) {
    return Scale.NUMBER.number(ratio, 3);
  }
}
