package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgressBarTest {
  @Test
  void a_bar_tells_the_part_and_the_time_left_and_at_last_only_how_much() {
    List<String> lines = new ArrayList<>();
    ProgressBar bar = new ProgressBar("scatter", lines::add);
    bar.at(0, 400, Duration.ofSeconds(3));
    bar.at(100, 400, Duration.ofSeconds(29));
    bar.at(100, 400, Duration.ofSeconds(29));
    bar.at(200, 400, Duration.ofMinutes(4));
    bar.at(400, 400, Duration.ZERO);
    assertEquals(
        List.of(
            "scatter: ░░░░░░░░░░░░░░░░░░░░░░░░ 0 %, about 4 s left",
            "scatter: ██████░░░░░░░░░░░░░░░░░░ 25 %, about 30 s left",
            "scatter: ████████████░░░░░░░░░░░░ 50 %, about 4 min left",
            "scatter: 400 done"),
        lines);
  }
}
