package rungwork.kernel;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Comparator;
import java.util.Optional;

/**
 * Sees that a cell is filling the memory while there is still some left.
 *
 * <p>A full heap harms more than the cell: whichever thread asks next for a few bytes is refused.
 * So a thread of its own looks often while a cell runs, without needing memory for it. Where the
 * pool of what lives long is nearly full it has the heap collected, which tells living from dead;
 * if the living alone are beyond the limit, the cell has to go.
 *
 * <p>What the cells keep afterwards may stand above the limit. Then half of what is left is the
 * limit for the next cell, so that it can drop what is large. The parts are this room's own choice,
 * from trials.
 */
final class HeapWatch implements AutoCloseable {
  private static final double FULL = 0.8;

  /** Kept free at least, unless less than {@link #LEAST} of the heap could be used then: bytes. */
  private static final long ROOM = 64L << 20;

  private static final double LEAST = 0.6;

  /** Of the room above what lives, the part after whose use the heap is collected again. */
  private static final double AGAIN_AFTER = 0.25;

  private static final long LOOK_EVERY_MILLISECONDS = 3;

  private final MemoryPoolMXBean longLived =
      ManagementFactory.getMemoryPoolMXBeans().stream()
          .filter(pool -> pool.getType() == MemoryType.HEAP && pool.isUsageThresholdSupported())
          .max(Comparator.comparingLong(pool -> pool.getUsage().getMax()))
          .orElseThrow();
  private final long most = longLived.getUsage().getMax();
  private final double usual = Math.max(LEAST, Math.min(FULL, 1 - (double) ROOM / most));
  private final Thread thread = Wire.daemon("memory watch", this::watch);
  private volatile Optional<Runnable> whenFull = Optional.empty();
  private volatile double limit = usual;

  HeapWatch() {
    suspectFrom(usual);
    thread.start();
  }

  /**
   * Watches from now on; the work is done, again and again, once the memory is full. What earlier
   * cells left in it is not held against this one.
   */
  void begin(Runnable work) {
    if (used() > limit) {
      settle();
    }
    whenFull = Optional.of(work);
  }

  /** The cell is over. */
  void end() {
    whenFull = Optional.empty();
  }

  private void watch() {
    while (true) {
      try {
        Thread.sleep(LOOK_EVERY_MILLISECONDS);
        Optional<Runnable> work = whenFull;
        if (work.isPresent() && longLived.isUsageThresholdExceeded() && isFull()) {
          work.get().run();
        }
      } catch (InterruptedException closed) {
        return;
      } catch (Throwable full) { // no memory even for this: the next turn comes all the same
        continue;
      }
    }
  }

  private synchronized boolean isFull() {
    double living = living();
    suspectFrom(Math.max(limit, living + AGAIN_AFTER * (1 - living)));
    return living > limit;
  }

  /**
   * Looks at what is left after a cell that filled the memory, and sets the next cell's limit.
   *
   * @return the part of the heap that what still lives takes
   */
  synchronized double settle() {
    double living = living();
    limit = Math.max(usual, (1 + living) / 2);
    suspectFrom(limit);
    return living;
  }

  private double living() {
    System.gc();
    return used();
  }

  private double used() {
    return (double) longLived.getUsage().getUsed() / most;
  }

  private void suspectFrom(double part) {
    longLived.setUsageThreshold((long) (part * most));
  }

  @Override
  public void close() {
    thread.interrupt();
  }
}
