package rungwork.kernel;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Stands in for {@code System.out} and {@code System.err} while an evaluator lives, and gives
 * printed text to the cell whose thread, or whose thread's descendant, prints it. A worker of a
 * fork-join pool prints to the cell that runs at the moment. Text of any other thread goes where it
 * went before.
 */
final class OutputRouter implements AutoCloseable {
  private static final int FLUSH_EVERY_MILLISECONDS = 100;

  private final InheritableThreadLocal<CellOutputs> own = new InheritableThreadLocal<>();
  private final PrintStream out = System.out;
  private final PrintStream err = System.err;
  private final ScheduledExecutorService flusher =
      Executors.newSingleThreadScheduledExecutor(OutputRouter::daemon);
  private final Set<CellOutputs> printed = ConcurrentHashMap.newKeySet();
  private volatile Optional<CellOutputs> running = Optional.empty();

  OutputRouter() {
    System.setOut(new PrintStream(new Routed(CellOutput.OUT, out), true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(new Routed(CellOutput.ERR, err), true, StandardCharsets.UTF_8));
    flusher.scheduleWithFixedDelay(
        this::passOn, FLUSH_EVERY_MILLISECONDS, FLUSH_EVERY_MILLISECONDS, TimeUnit.MILLISECONDS);
  }

  /** Also what threads print whose cell is over. */
  private void passOn() {
    for (CellOutputs each : printed) {
      printed.remove(each); // before: what is printed from here on enters it again
      try {
        each.flush();
      } catch (Throwable full) { // such as no memory: the next turn comes all the same
        printed.add(each);
      }
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "cell output");
    thread.setDaemon(true);
    return thread;
  }

  /** From here on this thread and the threads that it starts print to the cell. */
  void begin(CellOutputs outputs) {
    own.set(outputs);
    running = Optional.of(outputs);
  }

  /** The cell is over; its outputs are passed on. */
  void end(CellOutputs outputs) {
    running = Optional.empty();
    own.remove();
    outputs.flush();
  }

  /** The outputs of the cell that this thread belongs to. */
  Optional<CellOutputs> current() {
    return Thread.currentThread() instanceof ForkJoinWorkerThread
        ? running
        : Optional.ofNullable(own.get());
  }

  @Override
  public void close() {
    flusher.shutdown();
    System.setOut(out);
    System.setErr(err);
  }

  private final class Routed extends FilterOutputStream {
    private final String stream;

    private Routed(String stream, OutputStream before) {
      super(before);
      this.stream = stream;
    }

    @Override
    public void write(int single) throws IOException {
      write(new byte[] {(byte) single}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      Optional<CellOutputs> cell = current();
      if (cell.isPresent()) {
        cell.get().print(stream, Arrays.copyOfRange(bytes, from, from + length), length);
        printed.add(cell.get());
      } else {
        super.out.write(bytes, from, length);
      }
    }
  }
}
