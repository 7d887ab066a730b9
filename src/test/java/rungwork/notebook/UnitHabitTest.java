package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One line at a notebook's top chooses the units of the record that it saves, too. */
class UnitHabitTest {
  private static final Path STARTER = Path.of("notebooks", "00-your-frame.ipynb");

  /** Lengths and stresses that a standard's rule or scope is worded with. */
  private static final Pattern WORDS_OF_STANDARDS =
      Pattern.compile("Within\\s+25\\s+mm|wall\\s+3\\s+to\\s+16\\s+mm|235 MPa");

  private static final Pattern METRIC =
      Pattern.compile(
          "(?:\\d |\\[)(?:mm|cm.|kN|MPa|GPa|N|kN·m|N·m|N·m/deg|kg|km/h|kJ)(?=[\\],;.)\\s])");
  private static final Pattern INCH_POUND =
      Pattern.compile("(?:\\d |\\[)(?:in.?|lbf|lbf·ft|lbf·ft/deg|ksi|lb|mph)(?=[\\],;.)\\s])");

  @TempDir Path folder;

  @Test
  void with_one_line_changed_the_starter_s_record_is_all_inch_pound() throws IOException {
    String metric = Files.readString(STARTER);
    String other = metric.replace("start(Units.METRIC)", "start(Units.INCH_POUND)");
    assertEquals(metric.length() + "INCH_POUND".length() - "METRIC".length(), other.length());
    Path notebook = Files.writeString(folder.resolve("inch.ipynb"), other);
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    int status =
        new Commands(nowhere, nowhere, Surroundings.ofProcess(nowhere))
            .run("run", notebook.toString(), "--out", folder.toString());
    assertEquals(0, status);
    assertAlone(INCH_POUND, METRIC, folder);
  }

  private static void assertAlone(Pattern own, Pattern foreign, Path saved) throws IOException {
    for (String file : List.of("my-frame.txt", "my-frame-checks.csv")) {
      String shown =
          WORDS_OF_STANDARDS.matcher(Files.readString(saved.resolve(file))).replaceAll("");
      assertTrue(own.matcher(shown).results().count() > 8, file);
      List<String> found =
          foreign
              .matcher(shown)
              .results()
              .map((MatchResult one) -> shown.substring(Math.max(0, one.start() - 60), one.end()))
              .toList();
      assertEquals(List.of(), found, file);
    }
  }
}
