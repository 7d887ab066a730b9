package rungwork.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.impact.OrderOfFailure;
import rungwork.quantity.Units;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;

class DesignRecordTest {
  private static final Assessment ASSESSMENT =
      Assessment.of(Curlew.vehicle(), Curlew.ladder(), List.of(Event.standing()));
  private static final List<String> NEVER_CHECKED =
      List.of("rear impact", "side impact", "roll-over", "corrosion allowance", "weld quality");

  private static DesignRecord empty() {
    return DesignRecord.of("New front end");
  }

  private static Datum datum(DesignRecord record, String what) {
    return record.data().stream()
        .filter(one -> one.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(what));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }

  @Test
  void an_empty_record_still_says_what_no_record_checks_and_what_it_is_not() {
    assertNeverLost(empty());
    assertEquals(Set.of(Caution.SCREENING), empty().cautions());
    assertEquals(CheckSheet.Outcome.NOT_JUDGED, empty().sheet().outcome());
  }

  private static void assertNeverLost(DesignRecord record) {
    for (Units units : Units.values()) {
      List<Statement> open = record.notChecked(units);
      for (String item : NEVER_CHECKED) {
        assertTrue(
            open.stream()
                .anyMatch(
                    one -> one.words().startsWith(item) && one.from().contains(Statement.ALWAYS)),
            item);
      }
    }
    assertTrue(record.cautions().contains(Caution.SCREENING));
    assertTrue(record.sheet().verdictLine().contains("roll-over"));
  }

  @Test
  void whatever_enters_a_record_takes_nothing_from_what_it_must_say() {
    DesignRecord record =
        empty()
            .with(ASSESSMENT)
            .notChecked("the old rear half")
            .with(
                new Evidence(
                    "nothing", "x", Optional.empty(), u -> List.of(), u -> List.of(), Set.of()));
    assertNeverLost(record);
    assertTrue(record.evidence().get(1).cautions().contains(Caution.SCREENING));
  }

  @Test
  void evidence_about_an_impact_brings_the_stronger_cautions() {
    DesignRecord mild = empty().with(ASSESSMENT);
    assertEquals(Set.of(Caution.SCREENING), mild.cautions());
    OrderOfFailure order =
        OrderOfFailure.of(Curlew.vehicle(), Curlew.ladder(), Event.Hit.FULL_WIDTH);
    DesignRecord hit = mild.with(order);
    assertEquals(Set.of(Caution.values()), hit.cautions());
    assertTrue(hit.evidence().get(1).ofImpact());
    assertFalse(hit.evidence().get(0).ofImpact());
  }

  @Test
  void each_sentence_stands_once_with_all_who_say_it() {
    String own = ASSESSMENT.sheet().assumptions().get(0);
    DesignRecord record =
        empty().assumed(own).with(ASSESSMENT).with(Evidence.of(ASSESSMENT.sheet()).named("again"));
    List<Statement> said = record.assumptions(Units.METRIC);
    assertEquals(new Statement(own, List.of(Statement.AUTHOR, "E1", "E2")), said.get(0));
    assertEquals(said.size(), said.stream().map(Statement::words).distinct().count());
    assertTrue(said.size() >= ASSESSMENT.sheet().assumptions().size());
  }

  @Test
  void every_check_of_every_sheet_is_in_the_record_worst_first() {
    List<Check> checks = empty().with(ASSESSMENT, ASSESSMENT.sheet()).sheet().checks();
    assertEquals(2 * ASSESSMENT.sheet().checks().size(), checks.size());
    assertEquals(ASSESSMENT.sheet().checks().get(0), checks.get(0));
  }

  @Test
  void a_comparison_s_rejected_designs_bring_no_checks() {
    Comparison comparison = Comparison.of("front crossmember", Curlew.candidates(), Curlew::assess);
    DesignRecord record = empty().with(comparison);
    assertTrue(record.sheet().checks().isEmpty());
    assertTrue(record.cautions().contains(Caution.IMPACT));
    assertFalse(record.assumptions(Units.METRIC).isEmpty());
  }

  @Test
  void an_inspection_after_a_crash_is_evidence_too() {
    Inspection seen = Inspection.of(Curlew.ladder()).on("2026-11-25");
    DesignRecord record = empty().with(seen);
    assertEquals("inspection of Curlew, 2026-11-25", record.evidence().get(0).subject());
    List<String> open = record.notChecked(Units.METRIC).stream().map(Statement::words).toList();
    assertTrue(open.containsAll(seen.notChecked()));
    assertFalse(seen.notChecked().isEmpty());
  }

  @Test
  void data_come_from_the_vehicle_and_the_frame_and_count_as_guessed_until_somebody_says() {
    DesignRecord record = empty().vehicle(Curlew.vehicle()).ladder(Curlew.ladder());
    assertEquals(Origin.NOT_STATED, datum(record, "wheelbase").origin());
    assertEquals(record.data().size(), record.toMeasureNext().size());
    DesignRecord known =
        record
            .measured("tape", "wheelbase", "left rail")
            .drawn("sheet 3", "front crossmember")
            .guessed("by eye", "battery");
    assertEquals(Origin.MEASURED, datum(known, "wheelbase").origin());
    assertEquals("tape", datum(known, "left rail").how());
    assertEquals(Origin.DRAWING, datum(known, "front crossmember").origin());
    assertEquals("battery", known.toMeasureNext().get(0).what());
    assertEquals(record.data().size() - 3, known.toMeasureNext().size());
    assertEquals(record.data(), empty().vehicle(Curlew.vehicle()).ladder(Curlew.ladder()).data());
  }

  @Test
  void an_assessment_brings_its_own_vehicle_and_frame_unless_others_were_given() {
    DesignRecord record = empty().with(ASSESSMENT);
    assertEquals("Curlew", record.vehicle().orElseThrow().name());
    assertEquals(
        Optional.of(Curlew.tapering()).map(l -> l.rail(rungwork.vehicle.Side.LEFT)),
        record.ladder(Curlew.tapering()).ladder().map(l -> l.rail(rungwork.vehicle.Side.LEFT)));
    List<String> names = record.data().stream().map(Datum::what).toList();
    assertTrue(names.containsAll(List.of("battery", "left person", "left rail")));
    assertEquals(names.size(), names.stream().distinct().count());
    assertFalse(names.contains("left rail 1"));
  }

  @Test
  void what_was_weighed_stands_beside_what_is_computed() {
    DesignRecord record =
        empty()
            .with(ASSESSMENT)
            .fact("front axle load", kg(400), Origin.MEASURED, "corner scales")
            .fact("paint", "two coats", Origin.GUESSED, "");
    double computed = ASSESSMENT.vehicle().axleLoads().get(rungwork.vehicle.Axle.FRONT) / 9.80665;
    Datum weighed = datum(record, "front axle load");
    assertEquals(400, weighed.value().size().orElseThrow().value(), 1e-9);
    assertEquals(computed, weighed.model().orElseThrow().value(), 1e-9);
    assertEquals((400 - computed) / computed, weighed.offModel().orElseThrow(), 1e-12);
    assertEquals(Optional.empty(), datum(record, "paint").model());
    Datum otherKind = datum(record.fact("mass", kN(7), Origin.MEASURED, "load cell"), "mass");
    assertEquals(Optional.empty(), otherKind.offModel());
  }

  @Test
  void a_record_is_a_value_and_each_step_leaves_the_one_before_as_it_was() {
    DesignRecord before = empty();
    DesignRecord after =
        before.building("rails").forWhom("owner").by("A. Builder").on("2026-11-25").caution("wet");
    assertEquals(empty(), before);
    assertEquals("rails", after.head().building());
    assertEquals("owner", after.head().forWhom());
    assertEquals("A. Builder", after.head().author());
    assertEquals(Optional.of(LocalDate.of(2026, 11, 25)), after.head().date());
    assertEquals(List.of("wet"), after.ownCautions());
    assertTrue(after.toString().startsWith("New front end: 0 analyses, 0 decisions; could not be"));
  }

  @Test
  void people_who_must_agree_are_named_once() {
    Decision one =
        Decision.on("Which rails?")
            .option("80", "fits")
            .choose("80", "fits")
            .mustAgree("inspector", "rails")
            .mustAgree("welder", "");
    Decision two = Decision.on("Which paint?").leaveOpen("weather").mustAgree("inspector", "");
    DesignRecord record = empty().decision(one).decision(two);
    assertEquals(List.of("inspector", "welder"), record.signatories());
    assertEquals(List.of(one, two), record.decisions());
    assertEquals(Optional.empty(), two.choice());
  }

  @Test
  void a_compared_candidate_is_an_option_with_what_was_found() {
    Comparison comparison = Comparison.of("front crossmember", Curlew.candidates(), Curlew::assess);
    Decision decision =
        Decision.on("Which?").among(comparison).choose("light", "lightest meeting the checks made");
    assertEquals(5, decision.options().size());
    String words = decision.options().get(2).words(Units.INCH_POUND);
    assertTrue(words.matches("frame [0-9.]+ lb, 0\\.\\d+ of its limit in .*; .*"), words);
    assertTrue(decision.options().get(4).words(Units.METRIC).startsWith("not modelled"));
  }

  @Test
  void what_cannot_be_recorded_is_refused_in_words() {
    refused("a design record has no name; give it one", () -> DesignRecord.of(" "));
    refused(
        "date 25.11.2026 of the record cannot be read; write year-month-day, as in 2026-11-25",
        () -> empty().on("25.11.2026"));
    refused(
        "nothing in the record is named wheelbase; its data are none yet: give it the vehicle, the"
            + " ladder or an assessment first",
        () -> empty().measured("tape", "wheelbase"));
    refused(
        "nothing in the record is named paint; its data are colour",
        () -> empty().fact("colour", "red", Origin.GUESSED, "").measured("eye", "paint"));
    refused(
        "a record cannot rest on a String; give it one of CheckSheet, Assessment, ChainSheet,"
            + " Comparison, Search, Sensitivity, Scatter, Survey, Scene, CrushTube, Crash,"
            + " Collapse, OrderOfFailure, Ride, RigidOrCrush, SeenDamage.Explanations, Inspection,"
            + " or an Evidence of your own",
        () -> empty().with("trust me"));
    refused(
        "\"100\" was not looked at for \"Which rails?\"; the options are 80; 90",
        () -> Decision.on("Which rails?").option("80", "").option("90", "").choose("100", "big"));
    refused(
        "\"100\" was not looked at for \"Which rails?\"; the options are none yet",
        () -> Decision.on("Which rails?").choose("100", "big"));
    refused(
        "two options for \"Which rails?\" are named 80; rename one",
        () -> Decision.on("Which rails?").option("80", "").option("80", ""));
    refused(
        "nothing says why \"Which rails?\" is answered so; say why",
        () -> Decision.on("Which rails?").leaveOpen(" "));
    refused("a question to decide has no name; give it one", () -> Decision.on(""));
    refused(
        "a person who must agree has no name; give it one",
        () -> Decision.on("Which?").leaveOpen("later").mustAgree("", "all"));
  }
}
