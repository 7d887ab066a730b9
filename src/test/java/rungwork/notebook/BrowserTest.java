package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.report.RecordDocument;

/** The runner's pages before a real browser. */
class BrowserTest {
  private static final double MILLIMETRES_A_POINT = 25.4 / 72;

  /** In the browser's log: a request made by the loader of a page's parts, named by its number. */
  private static final Pattern PART_OF_PAGE =
      Pattern.compile("\"traffic_annotation\":101845102,\"url\":\"([^\"]+)\"");

  @TempDir static Path folder;

  @BeforeAll
  static void look() {
    External.need("Chromium", External.BROWSER, "--version");
  }

  private static Path page(Path notebook) throws IOException {
    return Ran.notebook(notebook).page();
  }

  private static External.Result browse(Path page, String... options) throws IOException {
    List<String> command = new ArrayList<>(List.of(External.BROWSER));
    command.addAll(
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
            "--user-data-dir=" + Files.createTempDirectory(folder, "profile")));
    command.addAll(List.of(options));
    command.add(page.toUri().toString());
    return External.run(Map.of(), 120, command.toArray(String[]::new));
  }

  static List<Path> notebooks() throws IOException {
    return RealJupyterTest.notebooks().toList();
  }

  /** The addresses that a page's own parts were asked from, the browser's own business left out. */
  private static List<String> askedBy(Path page) throws IOException {
    Path log = folder.resolve("net.json");
    External.Result result =
        browse(page, "--log-net-log=" + log, "--virtual-time-budget=3000", "--dump-dom");
    assertEquals(0, result.status(), result.output());
    assertTrue(result.output().contains("<main>"), result.output());
    Matcher request = PART_OF_PAGE.matcher(Files.readString(log));
    return request.results().map(found -> found.group(1)).distinct().toList();
  }

  @Test
  void a_request_of_a_page_would_be_seen() throws IOException {
    String picture = "http://127.0.0.1:1/a.png";
    Path page = folder.resolve("asking.html");
    Files.writeString(page, "<main>one <img src=\"" + picture + "\"></main>");
    assertEquals(List.of(picture), askedBy(page));
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void a_page_asks_for_nothing(Path notebook) throws IOException {
    assertEquals(List.of(), askedBy(page(notebook)));
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void a_page_prints_on_a4(Path notebook) throws IOException {
    assertPaper(210, 297, page(notebook));
  }

  @Test
  void a_record_prints_on_a4_or_on_letter_as_the_reader_s_units_have_it() throws IOException {
    assertPaper(210, 297, record(Units.METRIC));
    assertPaper(215.9, 279.4, record(Units.INCH_POUND));
  }

  private static Path record(Units units) throws IOException {
    DesignRecord record = DesignRecord.of("</style>\"; @page { size: A6 }").on("2026-11-25");
    RecordDocument document = new RecordDocument(record, units, Version.ofProgramAndData());
    return Files.writeString(folder.resolve(units + ".html"), document.file());
  }

  private static void assertPaper(double width, double height, Path page) throws IOException {
    Path pdf = folder.resolve("print.pdf");
    External.Result result = browse(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
    assertEquals(0, result.status(), result.output());
    Matcher box =
        Pattern.compile("/MediaBox \\[0 0 ([\\d.]+) ([\\d.]+)]")
            .matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
    assertTrue(box.find(), "the print has no page");
    assertEquals(width, Double.parseDouble(box.group(1)) * MILLIMETRES_A_POINT, 0.5);
    assertEquals(height, Double.parseDouble(box.group(2)) * MILLIMETRES_A_POINT, 0.5);
  }
}
