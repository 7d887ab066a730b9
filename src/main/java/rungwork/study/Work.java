package rungwork.study;

import java.time.Duration;
import java.util.BitSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import rungwork.study.Study.Progress;

/**
 * Many pieces of work on all cores. Workers take them in order, look for an interruption of whoever
 * waits between any two, and keep what is done.
 */
final class Work {
  private static final long LOOK_MILLIS = 100;

  private final int total;
  private final IntConsumer piece;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicInteger count = new AtomicInteger();
  private final AtomicReference<Throwable> fault = new AtomicReference<>();
  private final boolean[] done;
  private volatile boolean stopped;

  private Work(int total, IntConsumer piece) {
    this.total = total;
    this.piece = piece;
    done = new boolean[total];
  }

  /**
   * Does the work.
   *
   * @param total how many pieces
   * @param threads how many at a time
   * @param piece does one, by its number; whatever it throws ends the work and is thrown on
   * @param progress is told how far it has come
   * @return which are done: not all when the waiting thread was interrupted, which stays marked
   */
  static BitSet each(int total, int threads, IntConsumer piece, Progress progress) {
    return new Work(total, piece).run(Math.max(1, Math.min(threads, total)), progress);
  }

  /** As many threads as there are cores. */
  static int cores() {
    return Runtime.getRuntime().availableProcessors();
  }

  private BitSet run(int threads, Progress progress) {
    CountDownLatch running = new CountDownLatch(threads);
    for (int i = 0; i < threads; i++) {
      Thread worker = new Thread(() -> work(running), "study " + (i + 1));
      worker.setDaemon(true);
      worker.start();
    }
    boolean interrupted = await(running, progress);
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    throwOn(fault.get());
    BitSet all = new BitSet(total);
    for (int i = 0; i < total; i++) {
      all.set(i, done[i]);
    }
    return all;
  }

  private void work(CountDownLatch running) {
    try {
      for (int i = next.getAndIncrement(); i < total && !stopped; i = next.getAndIncrement()) {
        piece.accept(i);
        done[i] = true;
        count.incrementAndGet();
      }
    } catch (RuntimeException | Error problem) {
      fault.compareAndSet(null, problem);
      stopped = true;
    } finally {
      running.countDown();
    }
  }

  /** Waits for the workers; an interruption stops them after the piece that each is at. */
  private boolean await(CountDownLatch running, Progress progress) {
    long start = System.nanoTime();
    boolean interrupted = false;
    boolean ended = false;
    while (!ended) {
      try {
        ended = running.await(LOOK_MILLIS, TimeUnit.MILLISECONDS);
        progress.at(count.get(), total, left(start));
      } catch (InterruptedException | ThreadDeath stop) {
        interrupted = true;
        stopped = true;
      }
    }
    return interrupted;
  }

  private Duration left(long start) {
    int so = count.get();
    double each = so == 0 ? 0 : (double) (System.nanoTime() - start) / so;
    return Duration.ofNanos((long) (each * (total - so)));
  }

  private static void throwOn(Throwable problem) {
    if (problem instanceof RuntimeException fault) {
      throw fault;
    }
    if (problem instanceof Error fault) {
      throw fault;
    }
  }
}
