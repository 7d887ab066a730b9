package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.impact.Range;
import rungwork.impact.SeenDamage;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** Damage seen from behind: what was measured, which loads explain it, what else yielded then. */
final class DamagePage {
  private DamagePage() {}

  static Page of(SeenDamage.Explanations found, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Damage seen: " + found.damage().name());
    blocks.add(measured(found.damage(), units));
    if (found.damage().measured().stream().noneMatch(SeenDamage.Measured::shows)) {
      blocks.add(
          new Block.Paragraph(
              "Nothing stands out of its tolerance: the figures only say what the load did not"
                  + " exceed."));
    }
    blocks.add(new Block.Heading("Loads that explain it"));
    blocks.add(scenes(found, units));
    for (SeenDamage.Explanation one : found.scenes()) {
      yielded(blocks, one);
    }
    ImpactBlocks.remarks(blocks, "Not checked", found.notChecked());
    ImpactBlocks.remarks(blocks, "Left out", found.scenes().get(0).scene().leftOut());
    ImpactBlocks.remarks(blocks, "Assumed", found.scenes().get(0).scene().assumptions());
    return ImpactBlocks.end(blocks);
  }

  private static Table measured(SeenDamage damage, Units units) {
    List<Row> rows =
        damage.measured().stream()
            .map(
                one ->
                    Row.of(
                        one.what(),
                        units.scale(Kind.LENGTH).number(one.value(), 3),
                        units.scale(Kind.LENGTH).number(one.tolerance(), 2),
                        one.shows() ? "shows" : "not to be told from nothing"))
            .toList();
    String unit = units.scale(Kind.LENGTH).unit();
    return new Table(
        List.of(
            Column.sentence("measured"),
            Column.number("set", unit),
            Column.number("either way", unit),
            Column.words("does it show")),
        rows);
  }

  private static Table scenes(SeenDamage.Explanations found, Units units) {
    List<Row> rows = new ArrayList<>();
    for (SeenDamage.Explanation one : found.scenes()) {
      rows.add(
          Row.of(
              one.scene().hit().words(),
              one.runs().size() + " of " + one.scene().paths().size(),
              show(one.deceleration(), units),
              show(one.force(), units),
              show(one.energy(), units)));
    }
    return new Table(
        List.of(
            Column.words("hit"),
            Column.number("runs that explain it"),
            Column.number("deceleration"),
            Column.number("force"),
            Column.number("energy taken")),
        rows);
  }

  private static String show(Optional<Range> range, Units units) {
    return range.map(one -> one.show(units)).orElse("none");
  }

  private static void yielded(List<Block> blocks, SeenDamage.Explanation one) {
    List<String> lines = new ArrayList<>();
    if (one.runs().isEmpty()) {
      lines.add("Not explained: " + one.reason() + ".");
    } else {
      lines.add("Yielded in every run that explains it: " + all(one.yieldedSurely()));
      lines.add("Yielded in some of them, or at their highest load: " + all(one.yieldedPerhaps()));
    }
    if (one.beyondMechanism()) {
      lines.add(
          "In some runs the frame moved on as a mechanism: the load says little then, the crush and"
              + " the energy say more.");
    }
    ImpactBlocks.remarks(blocks, "If it was hit " + where(one), lines);
  }

  private static String where(SeenDamage.Explanation one) {
    return switch (one.scene().hit()) {
      case FULL_WIDTH -> "over the full width";
      case LEFT_TIP -> "at the left tip";
      case RIGHT_TIP -> "at the right tip";
      case CENTRE -> "in the middle";
    };
  }

  private static String all(List<String> hinges) {
    return hinges.isEmpty() ? "no place is common to all." : String.join("; ", hinges) + ".";
  }
}
