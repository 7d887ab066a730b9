package rungwork.kernel;

import java.time.Instant;

/**
 * A cell was asked to stop.
 *
 * @param asked when
 * @param reason why
 */
record Stop(Instant asked, Reason reason) {
  /** Why a cell has to stop. */
  enum Reason {
    /** Somebody asked for it, or its time is up. */
    ASKED,
    /** It was filling the memory. */
    MEMORY
  }
}
