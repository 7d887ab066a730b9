package rungwork.study;

import java.time.Duration;

/** Is told how far long work has come, a few times a second. */
@FunctionalInterface
public interface Progress {
  /** Tells nobody. */
  Progress NONE = (done, total, left) -> {};

  /**
   * So much is done.
   *
   * @param done pieces of work that are done
   * @param total all pieces
   * @param left time that the rest takes at the speed so far; zero when all is done
   */
  void at(int done, int total, Duration left);
}
