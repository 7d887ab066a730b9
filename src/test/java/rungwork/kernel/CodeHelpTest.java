package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwork.kernel.CodeHelp.Completions;
import rungwork.kernel.CodeHelp.Readiness;

class CodeHelpTest {
  private static Evaluator evaluator;
  private static CodeHelp help;

  @BeforeAll
  static void start() {
    evaluator = new Evaluator(EvaluatorSetup.bare());
    evaluator.run(
        new Cell(1, "record Plate(int thickness) {}\nPlate plate = new Plate(3);"),
        Duration.ofSeconds(30),
        output -> {});
    help = evaluator.help();
  }

  @AfterAll
  static void stop() {
    evaluator.close();
  }

  @Test
  void names_that_cells_defined_are_completed() {
    assertEquals(new Completions(List.of("plate"), 0, 3), help.completions("pla", 3));
    assertEquals(List.of("thickness()"), help.completions("plate.thi", 9).matches());
  }

  @Test
  void names_of_the_library_are_completed() {
    Completions found = help.completions("rungwork.kernel.DisplayRegis", 28);
    assertEquals(
        List.of("DisplayRegistry"),
        found.matches().stream().filter(each -> !each.contains("Test")).toList());
    assertEquals(16, found.start());
  }

  @Test
  void the_middle_of_a_cell_is_completed_with_the_names_before_it() {
    String code = "// a note\nString word = \"x\";\nword.isBl;\nint after = 1;";
    int cursor = code.indexOf("isBl") + 4;
    assertEquals(
        new Completions(List.of("isBlank()"), cursor - 4, cursor), help.completions(code, cursor));
  }

  @Test
  void odd_text_raises_no_error() {
    String odd = "\u0000(((\uD800";
    assertDoesNotThrow(() -> help.completions(odd, odd.length()));
    assertTrue(help.inspection(odd, odd.length()).isEmpty());
    assertDoesNotThrow(() -> help.readiness(odd));
  }

  @Test
  void a_signature_is_shown_at_a_name_and_inside_its_brackets() {
    String expected = "double Math.abs(double a)";
    assertTrue(help.inspection("Math.abs", 8).orElseThrow().text().contains(expected));
    assertTrue(help.inspection("Math.abs(", 9).orElseThrow().text().contains(expected));
    assertTrue(help.inspection("int x = 1;\nMath.abs(2.0)", 14).isPresent());
    assertTrue(help.inspection("plate", 2).orElseThrow().text().contains("Plate"));
    assertTrue(help.inspection("nobody", 3).isEmpty());
  }

  private static String inspected(String code) {
    return help.inspection(code, code.length()).orElseThrow().text();
  }

  @Test
  void the_library_documents_its_types_and_members_with_their_parameters() {
    String type = inspected("rungwork.kernel.Cell");
    assertEquals(
        "rungwork.kernel.Cell\n\n"
            + "    One cell to run.\n\n"
            + "      count: the number shown beside the cell, by which errors name it\n"
            + "      source: its text",
        type);
    String made = inspected("new rungwork.kernel.Cell(");
    assertTrue(made.startsWith("Cell(int count, String source)\n\n    One cell to run."), made);
    String method = inspected("rungwork.kernel.MimeBundle.text(");
    assertEquals("MimeBundle MimeBundle.text(String text)", method.lines().findFirst().orElse(""));
    assertTrue(method.contains("    A bundle of plain text alone."), method);
    String field = inspected("rungwork.kernel.CellEnd.STUCK");
    assertTrue(field.contains("The cell did not stop when asked to"), field);
  }

  @Test
  void a_nested_type_and_a_records_component_are_documented() {
    String nested = inspected("rungwork.kernel.CodeHelp.Readiness.INVALID");
    assertTrue(nested.contains("Nothing that follows can make it Java."), nested);
    String component = inspected("rungwork.kernel.PageStyle.plain().footer(");
    assertEquals(
        "String PageStyle.footer()\n\n"
            + "    a fragment of HTML at the foot of the page; empty for none",
        component);
  }

  @Test
  void names_of_cells_are_inspected_by_their_signature() {
    assertEquals("plate:Plate", inspected("plate"));
    assertEquals("int Plate.thickness()", inspected("plate.thickness("));
  }

  @Test
  void a_comment_is_read_without_its_markup() {
    assertEquals(
        "First a < b, Cell.count and code. Second\nline? No: one.\n\nNext <P>.\n\n"
            + "  * one\n  * two\n\n"
            + "  length: over all [mm]\nreturns a thing",
        DocText.of(
            " First a &lt; b, {@link Cell#count} and {@code code}. Second<br>line? No:\n one.\n"
                + " <p>Next {@literal <P>}.\n <ul>\n <li>one\n <li>two\n </ul>\n"
                + " @param length over\n all [mm]\n @return a thing"));
  }

  @Test
  void text_is_complete_incomplete_or_invalid() {
    assertEquals(Readiness.COMPLETE, help.readiness("int a() { return 1; }\na()"));
    assertEquals(Readiness.COMPLETE, help.readiness("// nothing"));
    assertEquals(Readiness.INCOMPLETE, help.readiness("int a() {"));
    assertEquals(Readiness.INVALID, help.readiness("1 + ) 2"));
    assertEquals(Readiness.INVALID, help.readiness("int int = 3;"));
    assertEquals(Readiness.INVALID, help.readiness("int a = 1;\nclass 3 {}"));
    assertEquals(Readiness.COMPLETE, help.readiness("import java.util.*;\nnobody(1)"));
    assertEquals(Readiness.COMPLETE, help.readiness("for (int i = 0; i < 3; i++) { }"));
  }

  @Test
  void the_next_line_is_indented_after_an_open_brace() {
    assertEquals("    ", help.indent("void f() {"));
    assertEquals("      ", help.indent("void f() {\n  if (true) {"));
    assertEquals("  ", help.indent("void f() {\n  int x ="));
  }
}
