package rungwork.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;

/** Interrupts a thread whose call takes too long, measured by its own processor time. */
final class Watch implements AutoCloseable {
  /** The longest that a call may take [ns]. */
  private static final long MOST = TimeUnit.SECONDS.toNanos(5);

  private static final long LOOK_EVERY = 250;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Thread watched = Thread.currentThread();
  private final Thread watching = new Thread(this::look, "watch");
  private long began;
  private boolean running;
  private boolean late;

  Watch() {
    watching.setDaemon(true);
    watching.start();
  }

  synchronized void starts() {
    began = THREADS.getThreadCpuTime(watched.getId());
    running = true;
    late = false;
  }

  /** Whether the call had to be interrupted. */
  synchronized boolean ends() {
    running = false;
    Thread.interrupted();
    return late;
  }

  private synchronized void interruptIfLate() {
    if (running && THREADS.getThreadCpuTime(watched.getId()) - began > MOST) {
      late = true;
      watched.interrupt();
    }
  }

  private void look() {
    try {
      while (true) {
        Thread.sleep(LOOK_EVERY);
        interruptIfLate();
      }
    } catch (InterruptedException closed) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    watching.interrupt();
  }
}
