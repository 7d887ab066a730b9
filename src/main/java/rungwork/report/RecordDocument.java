package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;

/**
 * A design record as something to read, print and keep: a page in a notebook, a page that stands
 * alone, plain text, a table of all checks. The first three are one text in three forms.
 */
public final class RecordDocument {
  private static final String REST = "The rest of each analysis, and its working";
  private static final String ALL =
      "All checks; their working unfolds on screen and stands in the text file";

  private final DesignRecord record;
  private final Units units;
  private final List<Block> body;
  private final List<Block> rest = new ArrayList<>();
  private final List<Block> checks = new ArrayList<>();

  /**
   * Sets a record.
   *
   * @param record the record
   * @param units the reader's units
   * @param program what it was made with: the program's version and that of its data
   */
  public RecordDocument(DesignRecord record, Units units, String program) {
    this.record = record;
    this.units = units;
    RecordEvidence evidence = new RecordEvidence(record, units);
    body = new RecordPage(record, units, evidence).body(program);
    for (int i = 0; i < record.evidence().size(); i++) {
      rest.addAll(evidence.rest(i));
      checks.addAll(evidence.checks(i));
    }
  }

  /**
   * How a record is shown in a notebook's cell.
   *
   * @param program what it was made with
   * @return its presentation
   */
  public static Presentation<DesignRecord> presentation(String program) {
    return new Presentation<>(
        DesignRecord.class, (record, units) -> new RecordDocument(record, units, program).page());
  }

  /**
   * The page in a notebook's cell, its appendices folded.
   *
   * @return the page
   */
  public Page page() {
    List<Block> blocks = new ArrayList<>(body);
    blocks.add(new Block.Folded("Appendix A: " + REST, rest));
    blocks.add(new Block.Folded("Appendix B: " + ALL, checks));
    return new Page(blocks);
  }

  /**
   * A page that stands alone: everything that is in the record, nothing from outside, made to be
   * printed too.
   *
   * @return an HTML document
   */
  public String file() {
    Markup markup = new Markup();
    markup.element("html", () -> document(markup), "lang", "en");
    return "<!DOCTYPE html>\n" + markup.done() + "\n";
  }

  private void document(Markup markup) {
    markup.element(
        "head",
        () -> {
          markup.element("meta", () -> {}, "charset", "utf-8");
          markup.element(
              "meta",
              () -> {},
              "name",
              "viewport",
              "content",
              "width=device-width, initial-scale=1");
          markup.leaf("title", record.head().title());
          markup.leaf("style", Look.styleSheet() + new RecordPaper(record, units).style());
        });
    markup.element("body", () -> markup.raw(whole().html()), "class", "record");
  }

  /**
   * The record as plain text, with everything that is on the page.
   *
   * @return lines, the last with a line break
   */
  public String text() {
    List<Block> open = whole().blocks().stream().flatMap(one -> one.unfolded().stream()).toList();
    return Markup.printable(new Page(open).text()) + "\n";
  }

  /**
   * All checks as a table for a spreadsheet: comma-separated values by RFC 4180, a row a check and
   * a row for each thing that was not checked, units in the heads.
   *
   * @return the table, to be kept in UTF-8
   */
  public String csv() {
    return new CheckTable(record, units).csv();
  }

  /** The analyses' rest unfolded; under each check in the long list its working stays folded. */
  private Page whole() {
    List<Block> blocks = new ArrayList<>(body);
    blocks.add(new Chapter("A", REST, "fresh"));
    rest.forEach(block -> blocks.addAll(block.unfolded()));
    blocks.add(new Chapter("B", ALL, "fresh"));
    blocks.addAll(checks);
    return new Page(blocks);
  }
}
