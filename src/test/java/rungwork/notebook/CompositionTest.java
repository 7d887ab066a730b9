package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.impact.Fronts;
import rungwork.kernel.Cell;
import rungwork.kernel.CellEnd;
import rungwork.kernel.CellOutput;
import rungwork.kernel.Evaluator;
import rungwork.kernel.MimeBundle;

/** Cells with the library's imports, displays and faults. */
class CompositionTest {
  private static Evaluator evaluator;

  @BeforeAll
  static void start() {
    evaluator = new Evaluator(Composition.setup(value -> {}));
    Rungwork.begin(evaluator, java.nio.file.Path.of("target"));
  }

  @AfterAll
  static void stop() {
    evaluator.close();
  }

  private static CellOutput last(String source) {
    List<CellOutput> outputs = new ArrayList<>();
    evaluator.run(new Cell(1, source), Duration.ofMinutes(1), outputs::add);
    return outputs.get(outputs.size() - 1);
  }

  @Test
  void a_check_sheet_shows_as_page_and_text_with_its_caution() {
    CellOutput.Result result =
        (CellOutput.Result) last("rungwork.check.CheckSheet.of(\"rail\", java.util.List.of())");
    assertTrue(result.bundle().forms().get(MimeBundle.HTML).contains("not an approval"));
    assertTrue(result.bundle().text().contains("not an approval"));
  }

  @Test
  void a_section_s_card_shows_as_page_and_text_that_claim_no_check() {
    String tube = "rungwork.section.SizeTable.of(\"square tube EN 10219-2\").at(\"50x50x3\")";
    CellOutput.Result card =
        (CellOutput.Result)
            last("rungwork.report.SectionCard.beside(" + tube + ", " + tube + ".turned())");
    assertTrue(card.bundle().forms().get(MimeBundle.HTML).contains("<svg"));
    assertTrue(card.bundle().text().contains("nothing was checked"));
    CellOutput.Result list =
        (CellOutput.Result) last("rungwork.study.Shortlist.of(java.util.List.of(" + tube + "))");
    assertTrue(list.bundle().forms().get(MimeBundle.HTML).contains("nothing was checked"));
    assertTrue(list.bundle().text().contains("nothing was checked"));
  }

  @Test
  void the_makers_of_quantities_are_there_without_an_import() {
    assertEquals(MimeBundle.text("50 mm"), ((CellOutput.Result) last("mm(50)")).bundle());
  }

  @Test
  void quantities_ranges_and_steps_of_working_show_in_the_readers_units() {
    String range = "new rungwork.impact.Range(rungwork.quantity.Kind.LENGTH, 0.0254, 0.0508)";
    String step =
        "rungwork.record.Inspection.of(ladder).diagonal(\"front\", \"rear\", inch(80), inch(81))"
            + ".distortions().get(0).steps().get(0)";
    for (String cell : Composition.REHEARSAL) {
      evaluator.run(new Cell(1, cell), Duration.ofMinutes(1), output -> {});
    }
    try {
      last("Rungwork.start(Units.INCH_POUND)");
      assertEquals(MimeBundle.text("2 in"), ((CellOutput.Result) last("mm(50.8)")).bundle());
      assertEquals("1.00 to 2.00 in", ((CellOutput.Result) last(range)).bundle().text());
      assertEquals(
          "Δ = d₁ − d₂ = 80.00 in − 81.00 in = -1.000 in",
          ((CellOutput.Result) last(step)).bundle().text());
    } finally {
      last("Rungwork.start(Units.METRIC)");
    }
    assertEquals("25.4 to 50.8 mm", ((CellOutput.Result) last(range)).bundle().text());
  }

  @Test
  void a_refused_input_shows_its_message_and_the_cells_line_alone() {
    CellOutput.Failure failure = (CellOutput.Failure) last("int a = 1;\nmm(0.0 / 0.0)");
    assertEquals("ModelException", failure.name());
    assertEquals(2, failure.trace().size(), () -> failure.trace().toString());
    assertEquals("    cell [1], line 2:  mm(0.0 / 0.0)", failure.trace().get(1));
  }

  @Test
  void the_cells_that_an_installation_rehearses_run() {
    for (String cell : Composition.REHEARSAL) {
      List<CellOutput> outputs = new ArrayList<>();
      assertEquals(
          CellEnd.FINISHED,
          evaluator.run(new Cell(1, cell), Duration.ofMinutes(1), outputs::add),
          outputs::toString);
    }
  }

  @Test
  void a_maker_of_sections_is_inspected_with_its_meaning_and_unit() {
    String code = "rungwork.section.Section.rectangularTube(";
    String text = evaluator.help().inspection(code, code.length()).orElseThrow().text();
    assertTrue(
        text.startsWith(
            "Section Section.rectangularTube(Quantity<Length> height, Quantity<Length> width,"),
        text);
    assertTrue(text.contains("\n\n    "), text);
    String component = "rungwork.frame.Point.at(mm(1), mm(2), mm(3)).x(";
    String unit = evaluator.help().inspection(component, component.length()).orElseThrow().text();
    assertTrue(unit.contains("[m]"), unit);
  }

  @Test
  void every_page_ends_with_the_caution() {
    assertTrue(Composition.style().footer().contains(Caution.SCREENING.text()));
  }

  @Test
  void a_choice_of_fronts_has_its_caution_on_the_terminal() {
    List<String> lines = Headlines.of(Fronts.choice());
    assertTrue(lines.get(0).contains("Injury cannot be predicted"), lines.get(0));
    assertEquals(3, lines.size());
    assertTrue(lines.get(2).startsWith("  two folding tubes: vehicle "), lines.get(2));
  }

  @Test
  void a_sheet_that_could_not_judge_says_so_on_the_terminal() {
    assertEquals(
        List.of("rail: could not be judged; not checked: nothing known"),
        Headlines.of(CheckSheet.of("rail", List.of())));
    assertEquals(List.of(), Headlines.of("anything else"));
  }
}
