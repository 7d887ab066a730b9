package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pictures of README and docs are those that the notebooks show today. {@code
 * -Dpictures.write=true} writes them anew.
 */
class DocPicturesTest {
  private static final Path PICTURES = Path.of("docs", "img");
  private static final String FIRST = "01-crossmember-sizes";
  private static final Pattern PICTURE =
      Pattern.compile("<svg [^>]*><title>(?<title>[^<]*)</title>.*?</svg>", Pattern.DOTALL);

  /**
   * A picture, the notebook that shows it, the start of its title and which of that title it is.
   */
  enum Taken {
    CURLEW_PLAN(FIRST, "Ladder Curlew in plan", 1),
    CURLEW_SIDE(FIRST, "Ladder Curlew from its left", 1),
    BUMP_FORCES(FIRST, "Internal forces of front crossmember", 0),
    MOUNT_TORN_OFF("03-mount-tab-braking", "mount lower arm, fore to scale", 0),
    ORDER_OF_FAILURE("04-where-it-gives-way", "Deceleration of the vehicle at which", 0),
    SIX_RAILS("06-lightest-front-end", "utilisation against frame mass", 0),
    WHAT_MATTERS("06-lightest-front-end", "utilisation, each input alone", 0);

    private final String notebook;
    private final String title;
    private final int place;

    Taken(String notebook, String title, int place) {
      this.notebook = notebook;
      this.title = title;
      this.place = place;
    }

    Path file() {
      return PICTURES.resolve(name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg");
    }

    /** As the notebook's page shows it now. */
    String shown() throws IOException {
      Path page = Ran.notebook(Path.of("notebooks", notebook + ".ipynb")).page();
      List<String> pictures =
          PICTURE
              .matcher(Files.readString(page))
              .results()
              .filter(found -> found.group(1).startsWith(title))
              .map(MatchResult::group)
              .toList();
      return pictures.get(place) + "\n";
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_picture_is_what_its_notebook_shows(Taken picture) throws IOException {
    String shown = picture.shown();
    if (Boolean.getBoolean("pictures.write")) {
      Files.writeString(picture.file(), shown);
    }
    assertEquals(
        shown,
        Files.readString(picture.file()),
        picture.file() + " is not what its notebook shows; -Dpictures.write=true writes it anew");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2.962",
        "1161 mm behind the front axle",
        "6 mm to the left",
        "20.98 kN",
        "6.608 cm²",
        "52.25 cm⁴",
        "(2823 mm)² = 135.9 kN"
      })
  void the_figures_that_reviewers_are_shown_stand_in_notebook_01(String figure) throws IOException {
    String page = Files.readString(Ran.notebook(Path.of("notebooks", FIRST + ".ipynb")).page());
    assertTrue(page.contains(figure), figure);
    String told = Files.readString(Path.of("docs", "for-reviewers.md"));
    for (String number : figure.split("[^0-9.]+")) {
      assertTrue(told.contains(number), figure);
    }
  }
}
