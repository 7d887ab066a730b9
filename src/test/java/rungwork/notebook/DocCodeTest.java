package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.kernel.Cell;
import rungwork.kernel.CellEnd;
import rungwork.kernel.CellOutput;
import rungwork.kernel.Evaluator;

/** The Java blocks of a page, run in order as the cells of one notebook. */
class DocCodeTest {
  private static final Duration LIMIT = Duration.ofMinutes(2);
  private static final Pattern BLOCK =
      Pattern.compile("^```java\n(?<code>.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);

  /** Every page that has Java in it. */
  static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>();
    for (Path page : DocsTest.pages()) {
      if (!blocks(page).isEmpty()) {
        pages.add(page);
      }
    }
    return pages;
  }

  private static List<String> blocks(Path page) throws IOException {
    return BLOCK.matcher(Files.readString(page)).results().map(found -> found.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_block_of_a_page_runs_after_those_before_it(Path page) throws IOException {
    List<String> blocks = blocks(page);
    try (Evaluator evaluator = new Evaluator(Composition.setup(value -> {}))) {
      Rungwork.begin(evaluator, Path.of("target"));
      for (int i = 0; i < blocks.size(); i++) {
        List<CellOutput> outputs = new ArrayList<>();
        assertEquals(
            CellEnd.FINISHED,
            evaluator.run(new Cell(i + 1, blocks.get(i)), LIMIT, outputs::add),
            () -> page + ": " + outputs);
      }
    }
  }

  @Test
  void the_readme_the_tutorial_and_the_how_tos_have_code() throws IOException {
    List<String> pages = pages().stream().map(Path::toString).toList();
    for (String page :
        List.of(
            "README.md",
            "docs/tutorial.md",
            "docs/how-to-compare-tube-and-channel.md",
            "docs/how-to-check-a-tab.md",
            "docs/how-to-document-the-reasoning.md")) {
      assertTrue(pages.contains(page), page);
    }
  }
}
