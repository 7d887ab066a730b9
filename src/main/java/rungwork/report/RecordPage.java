package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.check.Caution;
import rungwork.quantity.Units;
import rungwork.record.Decision;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Statement;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * A design record as a document: what is built, its data and where they come from, the decisions,
 * what they rest on, what was assumed and not checked, room to sign; the whole working behind.
 */
final class RecordPage {
  private final DesignRecord record;
  private final Units units;
  private final RecordEvidence evidence;

  RecordPage(DesignRecord record, Units units, RecordEvidence evidence) {
    this.record = record;
    this.units = units;
    this.evidence = evidence;
  }

  /** The body of the document, from its title to the signatures. */
  List<Block> body(String program) {
    List<Block> blocks = new ArrayList<>();
    head(blocks, program);
    blocks.addAll(RecordData.of(record, units));
    decisions(blocks);
    governing(blocks);
    findings(blocks);
    statements(blocks, "5", "What was assumed", record.assumptions(units));
    statements(blocks, "6", "What was not checked", record.notChecked(units));
    madeWith(blocks, program);
    review(blocks);
    return blocks;
  }

  private void head(List<Block> blocks, String program) {
    DesignRecord.Head head = record.head();
    blocks.add(new Block.Title(head.title()));
    blocks.add(
        new Table(
            List.of(Column.words(""), Column.wide("")),
            List.of(
                Row.of("What is built", stated(head.building())),
                Row.of("For whom", stated(head.forWhom())),
                Row.of("Who answers for this record", stated(head.author())),
                Row.of("Date", stated(head.date().map(Object::toString).orElse(""))))));
    for (Caution caution : record.cautions()) {
      blocks.add(new Block.Warning(caution.text()));
    }
    record.ownCautions().forEach(words -> blocks.add(new Block.Warning(words)));
  }

  private static String stated(String words) {
    return words.isEmpty() ? "not stated" : words;
  }

  private void decisions(List<Block> blocks) {
    blocks.add(Chapter.of("2", "What was decided"));
    if (record.decisions().isEmpty()) {
      blocks.add(new Block.Paragraph("No decision is recorded."));
    }
    record.decisions().forEach(decision -> decision(blocks, decision));
  }

  private void decision(List<Block> blocks, Decision decision) {
    blocks.add(new Block.Heading(decision.question()));
    blocks.add(
        new Block.VerdictLine(
            decision.choice().map(name -> name + ": ").orElse("Still open: ") + decision.reason()));
    if (!decision.options().isEmpty()) {
      blocks.add(
          new Table(
              List.of(Column.words("looked at"), Column.words(""), Column.wide("found")),
              decision.options().stream().map(one -> option(one, decision.choice())).toList()));
    }
    if (!decision.agreements().isEmpty()) {
      blocks.add(new Block.Paragraph("Must still agree:"));
      blocks.add(
          new Block.Remarks(decision.agreements().stream().map(RecordPage::agreement).toList()));
    }
  }

  private Row option(Decision.Option option, Optional<String> choice) {
    boolean chosen = choice.filter(option.name()::equals).isPresent();
    return Row.of(option.name(), chosen ? "chosen" : "", option.words(units));
  }

  private static String agreement(Decision.Agreement agreement) {
    return agreement.about().isEmpty()
        ? agreement.who()
        : agreement.who() + ": " + agreement.about();
  }

  private void governing(List<Block> blocks) {
    blocks.add(Chapter.of("3", "What governs"));
    blocks.add(new Block.VerdictLine("The design " + sentence(record.sheet().verdictLine())));
    if (record.sheet().governingByPart().isEmpty()) {
      blocks.add(new Block.Paragraph("No check with a number is in this record."));
      return;
    }
    blocks.add(
        new Block.Paragraph(
            "The governing check of each part, over all evidence. All checks are in appendix B."));
    blocks.addAll(SheetPage.table(record.sheet().governingByPart(), units));
  }

  /** Chapter 6 lists what was not checked; here it is named where it is. */
  private static String sentence(String verdict) {
    int gaps = verdict.indexOf("; not checked: ");
    return (gaps < 0 ? verdict : verdict.substring(0, gaps))
        + "; not checked: all that chapter 6 lists";
  }

  private void findings(List<Block> blocks) {
    blocks.add(Chapter.of("4", "What the decisions rest on"));
    if (record.evidence().isEmpty()) {
      blocks.add(new Block.Paragraph("No analysis is in this record."));
    }
    for (int i = 0; i < record.evidence().size(); i++) {
      blocks.addAll(evidence.opening(i));
    }
  }

  private static void statements(
      List<Block> blocks, String number, String heading, List<Statement> all) {
    blocks.add(Chapter.of(number, heading));
    if (all.isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is stated."));
      return;
    }
    blocks.add(
        new Table(
            List.of(Column.words("by"), Column.wide("what")),
            all.stream().map(one -> Row.of(String.join(", ", one.from()), one.words())).toList()));
  }

  private void madeWith(List<Block> blocks, String program) {
    blocks.add(Chapter.of("7", "Made with"));
    blocks.add(new Block.Paragraph(program));
    List<String> sources = RecordData.sources(record);
    if (!sources.isEmpty()) {
      blocks.add(new Block.Remarks(sources));
    }
  }

  private void review(List<Block> blocks) {
    blocks.add(Chapter.of("8", "Review"));
    blocks.add(
        new Block.Paragraph(
            "A signature says that the signer has read the record. It makes a screening calculation"
                + " no approval, unless the law gives the signer that power and the signer writes"
                + " so."));
    Stream<Signatures.Line> author =
        Stream.of(
            new Signatures.Line(
                record.head().author().isEmpty() ? "author" : record.head().author(),
                "wrote this record"));
    Stream<Signatures.Line> others =
        Stream.concat(
            Stream.of(new Signatures.Line("reviewer", "has checked the working")),
            record.signatories().stream()
                .map(who -> new Signatures.Line(who, "agrees to what chapter 2 asks")));
    blocks.add(new Signatures(Stream.concat(author, others).toList()));
  }

  static String label(int i) {
    return "E" + (i + 1);
  }

  static String heading(int i, Evidence one) {
    return label(i) + "  " + one.subject();
  }
}
