package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** The pages for readers hold together: every link leads somewhere, every picture is used. */
class DocsTest {
  private static final Path DOCS = Path.of("docs");
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*]\\((?<to>[^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ (?<words>.*)$");

  static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    try (Stream<Path> docs = Files.walk(DOCS)) {
      docs.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    return pages;
  }

  static List<Path> pictures() throws IOException {
    try (Stream<Path> files = Files.list(DOCS.resolve("img"))) {
      return files.sorted().toList();
    }
  }

  private static List<String> links(Path page) throws IOException {
    return LINK.matcher(Files.readString(page)).results().map(DocsTest::target).toList();
  }

  private static String target(MatchResult link) {
    return link.group(1);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_link_inside_the_project_leads_somewhere(Path page) throws IOException {
    for (String link : links(page)) {
      if (!link.contains("://")) {
        String[] parts = link.split("#", 2);
        Path to = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
        assertTrue(Files.exists(to), page + " links to " + link);
        assertTrue(parts.length == 1 || anchors(to).contains(parts[1]), page + " links to " + link);
      }
    }
  }

  /** The names that a Git host gives the headings of a page. */
  private static List<String> anchors(Path page) throws IOException {
    return HEADING
        .matcher(Files.readString(page))
        .results()
        .map(heading -> heading.group(1).toLowerCase(Locale.ROOT).strip())
        .map(words -> words.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .toList();
  }

  @Test
  void every_page_can_be_reached_from_the_readme() throws IOException {
    List<Path> reached = new ArrayList<>(List.of(Path.of("README.md")));
    for (int i = 0; i < reached.size(); i++) {
      for (String link : links(reached.get(i))) {
        Path to = reached.get(i).resolveSibling(link.split("#")[0]).normalize();
        if (to.toString().endsWith(".md") && Files.exists(to) && !reached.contains(to)) {
          reached.add(to);
        }
      }
    }
    List<Path> missed = new ArrayList<>(pages());
    missed.removeIf(page -> reached.contains(page) || page.startsWith(DOCS.resolve("decisions")));
    assertEquals(List.of(), missed);
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void a_picture_is_shown_by_a_page_and_calls_nothing(Path picture) throws Exception {
    boolean shown = false;
    for (Path page : pages()) {
      for (String link : links(page)) {
        shown |= page.resolveSibling(link).normalize().equals(picture);
      }
    }
    assertTrue(shown, picture + " is on no page");
    String svg = Files.readString(picture);
    String own = svg.replace("http://www.w3.org/2000/svg", "");
    assertFalse(own.matches("(?s).*(http|href|<script|url\\([^#]| on\\w+=).*"), "calls something");
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(picture.toFile())
            .getDocumentElement();
    assertEquals("svg", root.getTagName());
    assertTrue(root.getElementsByTagName("text").getLength() > 0, "words as text");
    assertTrue(svg.contains("prefers-color-scheme: dark"), "follows a dark page");
  }
}
