package rungwork.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Statement;

/**
 * A record's evidence: of each analysis's own page the opening, down to its first table, in the
 * body, and the rest in an appendix, so that together they are the whole page. The cautions and the
 * lists of what was assumed and not checked stand once, in the body.
 */
final class RecordEvidence {
  private final DesignRecord record;
  private final Units units;
  private final Set<String> said = new HashSet<>();
  private final List<String> carried;
  private final List<Picture> drawn;
  private final List<List<Block>> pages;

  RecordEvidence(DesignRecord record, Units units) {
    this.record = record;
    this.units = units;
    carried = record.cautions().stream().map(Caution::text).toList();
    drawn = RecordData.drawings(record, units);
    for (Statement one : record.assumptions(units)) {
      said.add(one.words());
    }
    for (Statement one : record.notChecked(units)) {
      said.add(one.words());
    }
    pages = record.evidence().stream().map(one -> page(one.value())).toList();
  }

  /** What stands in the body: pictures and the answer; the first table where chapter 3 has none. */
  List<Block> opening(int i) {
    Evidence one = record.evidence().get(i);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(RecordPage.heading(i, one)));
    if (one.ofImpact()) {
      blocks.add(new Block.Warning(Caution.IMPACT.inBrief()));
    }
    List<Block> page = pages.get(i);
    page.subList(0, cut(one, page)).stream()
        .filter(block -> !(block instanceof Block.Folded))
        .forEach(blocks::add);
    return blocks;
  }

  /** Everything that the body left out. */
  List<Block> rest(int i) {
    Evidence one = record.evidence().get(i);
    List<Block> page = pages.get(i);
    List<Block> left = new ArrayList<>();
    page.subList(0, cut(one, page)).stream()
        .filter(Block.Folded.class::isInstance)
        .forEach(left::add);
    left.addAll(page.subList(resumed(page, cut(one, page)), page.size()));
    if (!left.isEmpty()) {
      left.add(0, new Block.Heading(RecordPage.heading(i, one)));
    }
    return left;
  }

  /** All checks of a piece of evidence, each with its working; nothing where it made none. */
  List<Block> checks(int i) {
    Evidence one = record.evidence().get(i);
    return one.sheet().map(sheet -> checks(RecordPage.heading(i, one), sheet)).orElse(List.of());
  }

  private List<Block> checks(String heading, CheckSheet sheet) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(heading + ", " + sheet.checks().size() + " checks"));
    blocks.addAll(SheetPage.table(sheet.checks(), units));
    return blocks;
  }

  /**
   * Where the body's part ends: behind the first table and the legend that belongs to it; before it
   * and its heading where the evidence's governing checks are in chapter 3.
   */
  private static int cut(Evidence one, List<Block> page) {
    int table = 0;
    while (table < page.size() && !(page.get(table) instanceof Table)) {
      table++;
    }
    if (table == page.size()) {
      return table;
    }
    if (one.sheet().isPresent()) {
      return table > 0 && page.get(table - 1) instanceof Block.Heading ? table - 1 : table;
    }
    boolean legend = table + 1 < page.size() && page.get(table + 1) instanceof Block.Remarks;
    return legend ? table + 2 : table + 1;
  }

  /** Behind the governing checks and their legend, which chapter 3 shows. */
  private static int resumed(List<Block> page, int cut) {
    boolean shown =
        cut < page.size()
            && page.get(cut) instanceof Block.Heading heading
            && heading.words().equals(SheetPage.GOVERNING);
    return shown ? cut + 3 : cut;
  }

  /** A value's page without its title, its cautions and what stands in the record already. */
  private List<Block> page(Object value) {
    List<Block> kept = new ArrayList<>();
    for (Block block : Presentation.blocks(value, units)) {
      if (block instanceof Block.Remarks list && said.containsAll(list.items())) {
        dropHeading(kept);
      } else if (!isElsewhere(block)) {
        kept.add(block);
      }
    }
    return kept;
  }

  private boolean isElsewhere(Block block) {
    return block instanceof Block.Title
        || block instanceof Block.Warning warning && carried.contains(warning.words())
        || block instanceof Block.Figure figure && drawn.contains(figure.picture());
  }

  private static void dropHeading(List<Block> kept) {
    int last = kept.size() - 1;
    if (last >= 0 && kept.get(last) instanceof Block.Heading) {
      kept.remove(last);
    }
  }
}
