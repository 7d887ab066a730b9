package rungwork.notebook;

import java.time.Duration;
import java.util.function.Consumer;
import rungwork.study.Study.Progress;

/**
 * A line that tells how far long work has come: a bar, the part done and the time left. When all is
 * done it says only how much, so that two runs end alike.
 */
final class ProgressBar implements Progress {
  private static final int LENGTH = 24;

  private final String what;
  private final Consumer<String> show;
  private String last = "";

  /**
   * A bar.
   *
   * @param what the work
   * @param show shows a line in place of the one before
   */
  ProgressBar(String what, Consumer<String> show) {
    this.what = what;
    this.show = show;
  }

  @Override
  public void at(int done, int total, Duration left) {
    String line = done >= total ? finished(total) : underway(done, total, left);
    if (!line.equals(last)) {
      last = line;
      show.accept(line);
    }
  }

  private String finished(int total) {
    return "%s: %d done".formatted(what, total);
  }

  private String underway(int done, int total, Duration left) {
    int full = (int) ((long) LENGTH * done / total);
    return "%s: %s%s %d %%, about %s left"
        .formatted(
            what,
            "█".repeat(full),
            "░".repeat(LENGTH - full),
            (int) (100L * done / total),
            time(left.toSeconds() + 1));
  }

  private static String time(long seconds) {
    return seconds < 120 ? seconds + " s" : (seconds + 30) / 60 + " min";
  }
}
