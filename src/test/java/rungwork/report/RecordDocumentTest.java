package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.record.Statement;
import tech.tablesaw.api.Table;
import tech.tablesaw.io.csv.CsvReadOptions;

class RecordDocumentTest {
  private static final RecordDocument METRIC = Records.document(Records.full(), Units.METRIC);
  private static final RecordDocument INCH_POUND =
      Records.document(Records.full(), Units.INCH_POUND);

  /** Fixed lengths and stresses that a standard's rule is worded with. */
  private static final Pattern CONSTANTS_OF_STANDARDS =
      Pattern.compile("Within 25 mm of a weld|\\+ 16 mm|ε = √\\(235 MPa/fy\\) = √\\(235 MPa");

  private static final String PAGE = METRIC.file();
  private static final String TEXT = METRIC.text();
  private static final String CSV = METRIC.csv();

  private static String markup(String file) {
    return file.replaceFirst("<!DOCTYPE html>", "");
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** The words of a page outside its pictures, styles and the labels of what unfolds. */
  private static Set<String> wordsOf(String file) {
    Element root = Xml.parse(markup(file).replace("><", "> <"));
    for (String tag : List.of("style", "svg", "summary", "title")) {
      NodeList found = root.getElementsByTagName(tag);
      while (found.getLength() > 0) {
        Node one = found.item(0);
        one.getParentNode().removeChild(one);
      }
    }
    return words(root.getTextContent());
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.split("\\s+"))
        .filter(word -> !word.isBlank())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Table read(String csv) {
    return Table.read()
        .usingOptions(
            CsvReadOptions.builderFromString(csv)
                .columnTypes(name -> tech.tablesaw.api.ColumnType.STRING)
                .maxCharsPerColumn(50_000));
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void no_form_of_a_record_loses_a_caution_or_what_was_not_checked(Units units) {
    DesignRecord record = Records.full();
    RecordDocument document = Records.document(record, units);
    List<String> never = new ArrayList<>();
    record.notChecked(units).stream().map(Statement::words).forEach(never::add);
    List<String> forms =
        List.of(
            flat(Xml.seen(markup(document.file()))),
            flat(Xml.seen(document.page().html())),
            flat(document.text()),
            flat(document.page().text()));
    for (String form : forms) {
      for (Caution caution : Caution.values()) {
        assertTrue(form.contains(caution.text()), caution.name());
      }
      assertTrue(form.contains("All figures are invented."));
    }
    assertTrue(never.size() > 5);
    for (String item : never) {
      assertTrue(forms.get(0).contains(item), item);
      assertTrue(forms.get(1).contains(item), item);
      assertTrue(words(document.text()).containsAll(words(item)), item);
      assertTrue(document.csv().replace("\"\"", "\"").contains(item), item);
    }
  }

  @Test
  void an_empty_record_is_a_page_that_says_what_is_missing() {
    DesignRecord record = DesignRecord.of("Bare");
    RecordDocument document = Records.document(record, Units.METRIC);
    String seen = flat(Xml.seen(markup(document.file())));
    for (String line :
        List.of(
            "No data are recorded; nothing was measured.",
            "No decision is recorded.",
            "No check with a number is in this record.",
            "No analysis is in this record.",
            "not stated",
            "roll-over",
            Caution.SCREENING.text())) {
      assertTrue(seen.contains(line), line);
    }
    assertEquals(1 + record.notChecked(Units.METRIC).size(), document.csv().split("\r\n").length);
  }

  @Test
  void a_record_without_a_measured_datum_says_so_and_lists_what_to_measure_next() {
    DesignRecord guessed =
        DesignRecord.of("Guessed")
            .vehicle(rungwork.study.Curlew.vehicle())
            .guessed("by eye", "battery", "load");
    String text = flat(Records.document(guessed, Units.METRIC).text());
    assertTrue(
        text.contains(
            "Nothing was measured. Of 9 data: 0 measured, 0 from a drawing, 2"
                + " guessed, 7 not stated."),
        text);
    assertTrue(text.contains("Guessed, so to be measured next: battery (by eye); load (by eye)."));
    assertTrue(text.contains("count them as guessed: wheelbase; front track; rear track;"));
    assertFalse(flat(TEXT).contains("Nothing was measured"));
  }

  @Test
  void what_was_weighed_stands_beside_the_calculation_s_figure() {
    String text = flat(TEXT);
    assertTrue(
        text.matches(
            ".*front axle load 400 kg measured: corner scales"
                + " the calculation has \\d+(\\.\\d+)? kg, \\d+\\.\\d % (less|more).*"),
        text);
  }

  @Test
  void page_and_plain_text_hold_the_same_words() {
    Set<String> onPage = wordsOf(PAGE);
    Set<String> inText = words(TEXT);
    Set<String> missing = new TreeSet<>(onPage);
    missing.removeAll(inText);
    assertEquals(Set.of(), missing, "on the page only");
    Set<String> more = new TreeSet<>(inText);
    more.removeAll(onPage);
    more.removeAll(words(pictures(TEXT)));
    more.removeIf(word -> word.matches("[-=_]+") || word.equals("-"));
    assertEquals(Set.of(), more, "in the text only");
  }

  /** What pictures say in words, which a page draws. */
  private static String pictures(String text) {
    DesignRecord record = Records.full();
    StringBuilder out = new StringBuilder();
    List<Block> blocks = new ArrayList<>();
    record.evidence().forEach(one -> blocks.addAll(Presentation.blocks(one.value(), Units.METRIC)));
    RecordData.drawings(record, Units.METRIC).forEach(p -> blocks.add(new Block.Figure(p)));
    blocks.stream()
        .filter(Block.Figure.class::isInstance)
        .map(Block.Figure.class::cast)
        .forEach(figure -> figure.text(out));
    assertTrue(text.contains(RecordData.drawings(record, Units.METRIC).get(0).text()));
    return out.toString();
  }

  @Test
  void inch_pound_records_show_no_metric_unit() {
    for (String shown :
        List.of(Xml.seen(markup(INCH_POUND.file())), INCH_POUND.text(), INCH_POUND.csv())) {
      String own = CONSTANTS_OF_STANDARDS.matcher(shown).replaceAll("");
      java.util.regex.Matcher metric =
          Pattern.compile(
                  "(?<=\\d"
                      + " |\\[)(mm|cm.|kN|MPa|GPa|N|kN·m|N·m/deg|kg|kg/m³|km/h|kJ)(?=[\\],;.)\\s])")
              .matcher(own);
      assertFalse(
          metric.find(), () -> own.substring(Math.max(0, metric.start() - 80), metric.end() + 20));
    }
    assertTrue(INCH_POUND.file().contains("size: letter;"));
    assertTrue(PAGE.contains("size: A4;"));
    assertTrue(INCH_POUND.csv().startsWith("evidence,part,what,"));
    assertTrue(INCH_POUND.csv().lines().findFirst().orElseThrow().contains("demand [ksi]"));
  }

  @Test
  void the_body_shows_each_analysis_and_the_appendix_the_rest_of_it() {
    String text = TEXT;
    int appendix = text.indexOf("\nA  The rest of each analysis");
    assertTrue(appendix > 0);
    for (String heading : List.of("\nE1  ", "\nE2  ", "\nE3  ", "\nE4  ")) {
      assertTrue(text.indexOf(heading) < appendix, heading);
      assertTrue(text.indexOf(heading) > 0, heading);
      assertTrue(text.indexOf(heading, appendix) > 0, heading);
    }
    Set<String> shown = wordsOf(PAGE);
    Records.full().evidence().stream()
        .flatMap(one -> one.sheet().stream())
        .flatMap(sheet -> sheet.checks().stream())
        .map(check -> String.join(" ", Working.lines(check, Units.METRIC)))
        .forEach(lines -> assertTrue(shown.containsAll(words(lines)), lines));
  }

  @Test
  void decisions_show_options_choice_reason_and_who_signs() {
    String text = flat(TEXT);
    assertTrue(text.contains("light: lightest that meets the checks made"));
    assertTrue(text.contains("Still open: the weather"));
    assertTrue(text.contains("angle not modelled: "), text);
    assertTrue(text.contains("- the inspector: a new crossmember"));
    assertTrue(text.contains("Reviewer's remarks"));
    assertTrue(text.contains("the inspector agrees to what chapter 2 asks"));
    assertTrue(text.contains("A. Builder wrote this record"));
    assertTrue(text.contains(Records.PROGRAM));
  }

  @Test
  void the_table_of_checks_has_a_row_a_check_and_a_row_for_each_thing_not_checked() {
    Table table = read(CSV);
    List<Check> checks = Records.full().sheet().checks();
    int open = Records.full().notChecked(Units.METRIC).size();
    assertEquals(checks.size() + open, table.rowCount());
    assertTrue(table.columnNames().containsAll(List.of("demand [MPa]", "capacity [MPa]")));
    assertTrue(CSV.endsWith("\r\n"));
    long over = checks.stream().filter(Check::fails).count();
    assertEquals(
        over,
        table.stringColumn("result").asList().stream()
            .filter(one -> one.startsWith("over the limit"))
            .count());
    assertFalse(table.stringColumn("result").asList().stream().anyMatch(String::isBlank));
    Check first = Records.full().evidence().get(0).sheet().orElseThrow().checks().get(0);
    assertEquals("E1", table.stringColumn("evidence").get(0));
    assertEquals(first.part(), table.stringColumn("part").get(0));
    assertEquals(first.source(), table.stringColumn("source").get(0));
    assertEquals(
        first.utilisation().orElseThrow(),
        Double.parseDouble(table.stringColumn("utilisation [1]").get(0)),
        1e-5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        Examples.NASTY,
        "</style><script>alert(1)</script>",
        "\"; } body { display: none } /* \\",
        "=HYPERLINK(\"http://example.invalid\",\"x\")",
        "  +1,2\r\n@SUM(A1)",
        "{} {0} $1 %s SIZE TITLE DATE",
        "🛠 Ωµ \u202e \u0000 \ud83d x"
      })
  void a_hostile_name_is_text_everywhere(String name) {
    RecordDocument document = Records.document(Records.named(name), Units.METRIC);
    String plain = Markup.printable(name).strip();
    String file = document.file();
    String seen = flat(Xml.seen(markup(file)));
    assertTrue(seen.contains(flat(plain)), seen);
    assertFalse(file.toLowerCase(java.util.Locale.ROOT).contains("<script"));
    assertEquals(2, file.split("</style>").length - 1);
    assertTrue(words(document.text()).containsAll(words(plain)));
    Table table = read(document.csv());
    String part = table.stringColumn("part").get(0);
    String given = part.startsWith("'") ? part.substring(1) : part;
    assertEquals(plain.replace("\r\n", "\n"), given.strip());
    assertFalse(part.stripLeading().matches("(?s)[=+@-].*"), part);
  }

  @Test
  void ten_thousand_letters_stay_whole_in_the_text_and_short_in_the_running_head() {
    String name = "long name ".repeat(1000).strip();
    RecordDocument document = Records.document(Records.named(name), Units.METRIC);
    String file = document.file();
    assertTrue(Xml.seen(markup(file)).contains(name));
    assertTrue(flat(document.text()).contains(name));
    assertEquals(name, read(document.csv()).stringColumn("part").get(0));
    String style = file.substring(file.indexOf("<style>"), file.indexOf("</style>"));
    assertTrue(style.contains("content: \"long name long name"));
    assertFalse(style.contains("long name ".repeat(8)));
  }

  /** A browser reads a style as it stands: an escaped sign in it would end its rule. */
  @Test
  void no_rule_of_the_style_holds_a_sign_that_is_escaped() {
    List<String> styles =
        Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL)
            .matcher(PAGE)
            .results()
            .map(found -> found.group(1))
            .toList();
    assertTrue(styles.size() > 0);
    styles.forEach(style -> assertFalse(style.contains("&"), style));
  }

  @Test
  void a_record_is_written_alike_each_time() {
    assertEquals(PAGE, Records.document(Records.full(), Units.METRIC).file());
    assertEquals(CSV, Records.document(Records.full(), Units.METRIC).csv());
  }
}
