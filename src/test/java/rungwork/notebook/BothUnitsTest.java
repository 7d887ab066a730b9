package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.kernel.CellOutput;
import rungwork.kernel.MimeBundle;
import rungwork.quantity.Units;
import rungwork.report.MountTable;
import rungwork.report.Page;
import rungwork.report.Picture;
import rungwork.report.Presentation;

/**
 * The same notebook in metric and in inch-pound units by the one line at its top. Its quick cells
 * are run again with that line changed; every value that any cell displayed is shown in both.
 */
class BothUnitsTest {
  private static final String BEFORE = "(?<![\\w×.])(\\d[\\d.]*\\s?|\\[)";
  private static final String AFTER = "(?![\\w·/²³⁴])";

  private static final Pattern METRIC =
      Pattern.compile(
          BEFORE
              + "(mm[²³⁴]?|cm[²³⁴⁶]?|m|m/s²?|km/h|kN·m|kN/mm|kN/m|kN|N·m|N·m/deg|N·m/rad|N/mm|N/m"
              + "|MPa|GPa|kg|kg/m³?|kg·m²|kJ|J|N)"
              + AFTER);

  /** The word in is no unit, nor is it one behind a whole number at the end of a line. */
  private static final Pattern INCH_POUND =
      Pattern.compile(
          BEFORE
              + "(in[²³⁴⁶]|in(?=[\\],;.)])|(?<=\\.\\d{1,6}"
              + " )in(?=$)|ft|lb|lbf|kip|lbf·ft|ft·lbf|lbf·ft/deg|lbf/in|lbf/ft"
              + "|lb/ft|lb/in³|lb·ft²|ksi|psi|mph)"
              + AFTER);

  /** What a standard's own words and constants say, whatever the reader's units are. */
  private static final Pattern WORDS_OF_STANDARDS =
      Pattern.compile(
          "wall (up )?(\\d+ )?to \\d+ mm|wall up to \\d+ mm|Within 25 mm of a weld|\\+ 16 mm"
              + "|√\\(235 MPa ?/ ?");

  /** Drawings and labels that a cell made in its units; quick cells make them again. */
  private static final Set<Class<?>> MADE_BY_CELLS = Set.of(Picture.class, MountTable.class);

  /** A number made by a cell with a typed unit behind it. */
  private static final Pattern FORMATTED =
      Pattern.compile("%[-+0-9.]*[dfeg] ?(mm|cm|kN|N|MPa|GPa|kg|kJ|km/h|in|lbf?|ksi|mph)\\b.*");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  static Stream<Path> notebooks() throws IOException {
    return RealJupyterTest.notebooks().filter(file -> file.startsWith("notebooks"));
  }

  /** The words that a page shows. */
  private static String seen(String html) {
    return html.replaceAll("(?s)<style.*?</style>", "")
        .replaceAll("<[^>]+>", "\n")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }

  /** Lines in which a number carries such a unit that neither a standard nor the author typed. */
  private static List<String> leaks(Pattern unit, String text, String typed) {
    List<String> leaks = new ArrayList<>();
    for (String line : text.split("\n")) {
      Matcher found = unit.matcher(WORDS_OF_STANDARDS.matcher(line).replaceAll(""));
      while (found.find()) {
        if (found.group().startsWith("[") || !typed.contains(found.group())) {
          leaks.add(line.strip());
        }
      }
    }
    return leaks;
  }

  /** The author's own words in the code: names, sources, labels. */
  private static String typed(Path notebook) throws IOException {
    StringBuilder words = new StringBuilder();
    for (String source : new QuickCells(notebook).sources()) {
      LITERAL.matcher(source).results().forEach(one -> words.append(one.group(1)).append('\n'));
    }
    return words.toString();
  }

  private static String shown(Object value, Units units) {
    if (value instanceof Quantity<?> quantity) {
      return units.show(quantity);
    }
    for (Presentation<?> each : Presentation.all()) {
      if (each.type().isInstance(value)) {
        Page page = each.page(value, units);
        return seen(page.html()) + "\n" + page.text();
      }
    }
    return "";
  }

  private static String shown(CellOutput output) {
    if (output instanceof CellOutput.Text text) {
      return text.text();
    }
    if (output instanceof CellOutput.Result result) {
      return shown(result.bundle());
    }
    return output instanceof CellOutput.Display display ? shown(display.bundle()) : "";
  }

  private static String shown(MimeBundle bundle) {
    return String.join("\n", bundle.forms().values().stream().map(BothUnitsTest::seen).toList());
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void one_line_at_the_top_turns_a_notebook_into_inches_and_pounds(Path notebook)
      throws IOException {
    assertTrue(new QuickCells(notebook).canChoose(), "the line stands in the first cell");
    List<CellOutput> outputs = Ran.notebook(notebook).inInches();
    String typed = typed(notebook);
    assertEquals(
        List.of(),
        outputs.stream().flatMap(one -> leaks(METRIC, shown(one), typed).stream()).toList());
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void whatever_a_notebook_displays_shows_in_either_units_and_never_in_both(Path notebook)
      throws IOException {
    String typed = typed(notebook);
    List<Object> values = Ran.notebook(notebook).shown();
    assertFalse(values.isEmpty());
    for (Object value : values) {
      if (!MADE_BY_CELLS.contains(value.getClass())) {
        String name = value.getClass().getSimpleName() + " ";
        assertEquals(
            List.of(), leaks(METRIC, shown(value, Units.INCH_POUND), typed), name + "in inches");
        assertEquals(
            List.of(), leaks(INCH_POUND, shown(value, Units.METRIC), typed), name + "in metric");
      }
    }
  }

  /** Slow cells are not run again: that their own text follows the line at the top is read here. */
  @ParameterizedTest
  @MethodSource("notebooks")
  void no_cell_chooses_units_or_types_one_behind_a_number_it_made(Path notebook)
      throws IOException {
    String code = new QuickCells(notebook).rest();
    assertFalse(code.contains("Units.METRIC") || code.contains("Units.INCH_POUND"), "units chosen");
    assertEquals(
        List.of(), FORMATTED.matcher(typed(notebook)).results().map(MatchResult::group).toList());
  }

  @Test
  void a_leak_would_be_seen() {
    assertEquals(List.of("sag 0.70 mm"), leaks(METRIC, "tube 80x40x3\nsag 0.70 mm\n2 m", "2 m"));
    assertEquals(List.of("station [mm]"), leaks(METRIC, "S355\nstation [mm]", "x [mm]"));
    assertEquals(List.of("F = 3.1 kN / 2"), leaks(METRIC, "F = 3.1 kN / 2\n3 middle", ""));
    assertEquals(List.of("0.7 in.", "12 ksi"), leaks(INCH_POUND, "0.7 in.\n2 in all\n12 ksi", ""));
    assertEquals(List.of("2.00 in"), leaks(INCH_POUND, "part 1 in\n2.00 in", ""));
    assertEquals(List.of(), leaks(METRIC, "ε = √(235 MPa/fy)", ""));
    assertTrue(seen("<style>a 3 mm</style><b>3 &lt; 4</b>").contains("3 < 4"));
  }
}
