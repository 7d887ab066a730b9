package rungwork.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;

/**
 * Runs Java cells one after another in this process; what a cell defines, later cells see.
 *
 * <p>The value of a cell's last expression is shown unless a semicolon ends it. Nothing that a cell
 * throws leaves {@link #run}. While an evaluator lives it owns {@code System.out} and {@code
 * System.err}; text printed by threads that belong to no cell goes where it went before.
 */
public final class Evaluator implements AutoCloseable {
  /** How long a cell may take to stop once it was asked to. */
  public static final Duration GRACE = Duration.ofSeconds(4);

  private static final long LOOK_EVERY_MILLISECONDS = 50;

  private final EvaluatorSetup setup;
  private final OutputRouter router;
  private final ExecutorService worker = Executors.newSingleThreadExecutor(Evaluator::daemon);
  private final HeapWatch memory = new HeapWatch();
  private final CompletableFuture<CellRun.Session> session;
  private volatile Optional<Stop> stopAsked = Optional.empty();

  /**
   * Starts an evaluator whose cells see the class path of the class loader of this class. The
   * compiler is made ready in the background; the first cell waits for it.
   */
  public Evaluator(EvaluatorSetup setup) {
    this.setup = setup;
    router = new OutputRouter();
    session = CompletableFuture.supplyAsync(new SessionStart(setup, memory)::session, worker);
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "cells");
    thread.setDaemon(true); // threads that a cell leaves running inherit this
    return thread;
  }

  /**
   * Runs a cell and waits for its end.
   *
   * @param cell what to run
   * @param limit after this time the cell is stopped as by {@link #stop}
   * @param sink is given the cell's outputs in order, from other threads, one at a time; text of a
   *     thread that outlives the cell may come later
   */
  public CellEnd run(Cell cell, Duration limit, Consumer<CellOutput> sink) {
    CellOutputs outputs = new CellOutputs(sink);
    stopAsked = Optional.empty();
    memory.begin(() -> stop(Stop.Reason.MEMORY));
    try {
      session.get();
      return awaited(worker.submit(() -> runHere(cell, outputs)), limit, outputs);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // for whoever asked this thread to end
      return CellEnd.STUCK;
    } catch (ExecutionException e) {
      outputs.put(FaultText.failure("KernelFault", "cells cannot run: " + e.getCause(), List.of()));
      return CellEnd.FAILED;
    } finally {
      memory.end();
    }
  }

  private CellEnd awaited(Future<CellEnd> end, Duration limit, CellOutputs outputs)
      throws InterruptedException, ExecutionException {
    Instant latest = Instant.now().plus(limit);
    while (true) {
      try {
        return end.get(LOOK_EVERY_MILLISECONDS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException running) {
        if (stopAsked.isEmpty() && Instant.now().isAfter(latest)) {
          outputs.put(new CellOutput.Text(CellOutput.ERR, overTime(limit)));
          stop();
        }
        if (stopAsked.isPresent() && !stops(stopAsked.get().asked())) {
          outputs.put(stuck());
          return CellEnd.STUCK;
        }
      } catch (InterruptedException e) {
        stop();
        throw e;
      }
    }
  }

  /** Asks the cell to stop once more, as the first time may have fallen between two statements. */
  private boolean stops(Instant asked) {
    session.join().shell().stop();
    return Instant.now().isBefore(asked.plus(GRACE));
  }

  private CellEnd runHere(Cell cell, CellOutputs outputs) {
    router.begin(outputs);
    try {
      return new CellRun(session.join(), cell, outputs, () -> stopAsked).run();
    } finally {
      router.end(outputs);
    }
  }

  private static String overTime(Duration limit) {
    return "the cell ran longer than its limit of " + limit.toSeconds() + " s and is stopped\n";
  }

  private static CellOutput.Failure stuck() {
    return FaultText.failure(
        "Restart",
        "the cell did not stop within "
            + GRACE.toSeconds()
            + " s; every name is lost,"
            + " run the notebook from its first cell",
        List.of());
  }

  /** Stops the running cell, if there is one. */
  public void stop() {
    stop(Stop.Reason.ASKED);
  }

  private void stop(Stop.Reason reason) {
    if (stopAsked.isEmpty()) {
      stopAsked = Optional.of(new Stop(Instant.now(), reason));
    }
    if (reason == Stop.Reason.MEMORY) {
      session.thenAccept(ready -> ready.memory().spend());
    }
    session.thenAccept(ready -> ready.shell().stop());
  }

  /** Shows a value now, among the outputs of the cell whose thread asks for it. */
  public void display(Object value) {
    display(value, "");
  }

  /** Shows a value as {@link #display(Object)} does, under an id by which it can be replaced. */
  public void display(Object value, String id) {
    MimeBundle bundle = bundle(value);
    put(new CellOutput.Display(bundle, id), bundle);
  }

  /** Replaces every value that was shown under the id, in whichever cell. */
  public void update(Object value, String id) {
    MimeBundle bundle = bundle(value);
    put(new CellOutput.Update(bundle, id), bundle);
  }

  private MimeBundle bundle(Object value) {
    MimeBundle bundle = setup.displays().bundle(value);
    setup.shown().accept(value);
    return bundle;
  }

  /** A thread that belongs to no cell prints instead. */
  private void put(CellOutput output, MimeBundle bundle) {
    router
        .current()
        .ifPresentOrElse(cell -> cell.put(output), () -> System.out.println(bundle.text()));
  }

  /** Takes away what the cell of this thread has put out so far. */
  public void clear() {
    router.current().ifPresent(outputs -> outputs.put(new CellOutput.Clear()));
  }

  /** Completion, inspection and completeness of code, with this evaluator's names. */
  public CodeHelp help() {
    return session.join().help();
  }

  @Override
  public void close() {
    memory.close();
    worker.shutdownNow();
    session.thenAccept(ready -> ready.shell().close());
    router.close();
  }
}
