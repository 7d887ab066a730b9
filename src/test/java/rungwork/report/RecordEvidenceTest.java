package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.check.Caution;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Inspection;
import rungwork.record.Statement;
import rungwork.section.Section;
import rungwork.study.Curlew;
import rungwork.study.Input;
import rungwork.study.Measure;
import rungwork.study.Scatter;
import rungwork.study.Search;
import rungwork.study.Study;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;

/** What must be true of every analysis that a record rests on. */
class RecordEvidenceTest {
  static Stream<Object> analyses() {
    Stream<Object> others =
        Stream.of(
            Examples.sheet(), Mounts.withHit(), Inspection.of(Curlew.ladder()), search(), survey());
    return Stream.of(
            ImpactPagesTest.values().stream().filter(RecordEvidenceTest::enters), others, studies())
        .flatMap(each -> each);
  }

  private static boolean enters(Object value) {
    try {
      Evidence.of(value);
      return true;
    } catch (ModelException e) {
      return false;
    }
  }

  private static Assessment standing(Ladder ladder) {
    return Assessment.of(Curlew.vehicle(), ladder, List.of(Event.standing()));
  }

  private static List<Survey.Variant<Ladder>> ladders() {
    return List.of(new Survey.Variant<>("as it is", Curlew::ladder));
  }

  private static Search search() {
    return Search.lightest(
        "front end",
        List.of("front crossmember"),
        ladders(),
        RecordEvidenceTest::standing,
        List.of());
  }

  private static Survey survey() {
    return Survey.of(
        "which ladder",
        List.of(new Survey.Variant<>("as it is", () -> standing(Curlew.ladder()))),
        List.of(Measure.frameMass()));
  }

  private static Stream<Object> studies() {
    Study<Assessment> study =
        Study.of(
            "the front crossmember",
            List.of(Input.of("wall", mm(3)).within(0.1, Input.ASSUMED)),
            setting ->
                standing(
                    Curlew.ladder()
                        .withCrossmember(
                            "front",
                            new Stock(
                                Section.squareTube(mm(60), setting.length("wall")), Curlew.STEEL))),
            List.of(Measure.frameMass()));
    return Stream.of(study.sensitivity(), study.scatter(Scatter.Sampling.random(8, 1)));
  }

  private static List<Block> shown(DesignRecord record, Units units) {
    RecordEvidence evidence = new RecordEvidence(record, units);
    List<Block> all = new ArrayList<>(evidence.opening(0));
    all.addAll(evidence.rest(0));
    return all;
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void body_and_appendix_are_together_the_analysis_s_whole_page(Object analysis) {
    DesignRecord record = DesignRecord.of("Record").with(analysis);
    List<Block> shown = shown(record, Units.METRIC);
    Set<String> said = new HashSet<>();
    record.assumptions(Units.METRIC).stream().map(Statement::words).forEach(said::add);
    record.notChecked(Units.METRIC).stream().map(Statement::words).forEach(said::add);
    List<String> carried = record.cautions().stream().map(Caution::text).toList();
    int kept = 0;
    for (Block block : Presentation.blocks(analysis, Units.METRIC)) {
      boolean elsewhere =
          block instanceof Block.Title
              || block instanceof Block.Warning one && carried.contains(one.words())
              || block instanceof Block.Heading
              || block instanceof Block.Remarks list && said.containsAll(list.items())
              || isGoverning(analysis, block);
      assertTrue(elsewhere || shown.contains(block), () -> text(block));
      kept += shown.contains(block) ? 1 : 0;
    }
    assertTrue(kept > 0);
    List<Block> pieces = shown.stream().filter(one -> !(one instanceof Block.Heading)).toList();
    assertEquals(pieces.size(), pieces.stream().distinct().count(), "a piece is shown twice");
  }

  /** The table of governing checks and its legend, which a chapter of their own shows. */
  private static boolean isGoverning(Object analysis, Block block) {
    List<Block> page = Presentation.blocks(analysis, Units.METRIC);
    int heading = page.indexOf(new Block.Heading(SheetPage.GOVERNING));
    return heading >= 0 && page.subList(heading, heading + 3).contains(block);
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void its_assumptions_and_gaps_are_in_the_record_under_its_label(Object analysis) {
    Evidence evidence = Evidence.of(analysis);
    DesignRecord record = DesignRecord.of("Record").with(analysis);
    for (Units units : Units.values()) {
      List<String> assumed = said(record.assumptions(units));
      assertEquals(Set.copyOf(evidence.assumed().in(units)), Set.copyOf(assumed));
      assertTrue(said(record.notChecked(units)).containsAll(evidence.open().in(units)));
    }
    assertTrue(record.cautions().containsAll(evidence.cautions()));
  }

  private static List<String> said(List<Statement> statements) {
    return statements.stream()
        .filter(one -> one.from().contains("E1"))
        .map(Statement::words)
        .toList();
  }

  @Test
  void whatever_is_about_an_impact_says_so_right_above_its_pictures() {
    List<Object> hits =
        ImpactPagesTest.values().stream().filter(RecordEvidenceTest::enters).toList();
    assertTrue(hits.size() > 9);
    for (Object hit : hits) {
      DesignRecord record = DesignRecord.of("Record").with(hit);
      assertEquals(Set.of(Caution.values()), record.cautions(), hit.toString());
      assertEquals(
          new Block.Warning(Caution.IMPACT.inBrief()),
          new RecordEvidence(record, Units.METRIC).opening(0).get(1));
    }
  }

  @Test
  void an_analysis_of_one_s_own_is_shown_by_its_words() {
    Evidence own =
        new Evidence(
            "load test",
            "60 kg hung from the tip, 4 mm of sag",
            java.util.Optional.empty(),
            units -> List.of("held at the rear"),
            units -> List.of("the other side"),
            Set.of());
    DesignRecord record = DesignRecord.of("Record").with(own, Examples.sheet());
    String text = Records.document(record, Units.METRIC).text();
    assertTrue(text.contains("E1  load test\n60 kg hung from the tip, 4 mm of sag"), text);
    assertTrue(text.contains("held at the rear"));
    assertFalse(text.contains("E1  load test, "), "it made no checks");
    assertTrue(text.contains("E2  Curlew, 6 checks"));
  }

  private static String text(Block block) {
    StringBuilder out = new StringBuilder("left out: ");
    block.text(out);
    return out.toString();
  }
}
