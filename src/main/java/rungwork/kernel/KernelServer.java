package rungwork.kernel;

import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.MessageType;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;

/**
 * A Jupyter kernel: answers the requests of clients with an evaluator until one of them shuts it
 * down, a cell cannot be stopped, or the sockets fail.
 *
 * <p>Requests on the shell socket are answered in turn; requests on the control socket (interrupt,
 * shutdown) at any time.
 */
public final class KernelServer {
  private static final long QUIET_MILLISECONDS = 1000;

  private final Evaluator evaluator;
  private final KernelIdentity identity;

  /** A kernel with a fresh evaluator and a name. */
  public KernelServer(Evaluator evaluator, KernelIdentity identity) {
    this.evaluator = evaluator;
    this.identity = identity;
  }

  /**
   * Serves a client of this process that runs the cells and shuts the kernel down, so that every
   * class that a start needs has been loaded once.
   */
  public KernelEnd rehearse(List<String> cells) throws IOException, GeneralSecurityException {
    return serve(Rehearsal.begin(cells));
  }

  /**
   * Serves at the places that a connection file names.
   *
   * @param connectionFile JSON as Jupyter writes it for a kernel that it starts
   * @return why serving ended
   */
  public KernelEnd serve(Path connectionFile) throws IOException, GeneralSecurityException {
    LogManager.getLogManager().reset();
    Logger.getLogger("").setLevel(Level.OFF); // the libraries log every message otherwise
    InputStream input = System.in;
    KernelConnectionProperties places =
        KernelConnectionProperties.parse(Files.readString(connectionFile));
    CompletableFuture<KernelEnd> end = new CompletableFuture<>();
    try (Wire wire = new Wire(places, () -> end.complete(KernelEnd.CUT_OFF))) {
      Requests requests = new Requests(wire, evaluator, identity, end);
      Thread shell = Wire.daemon("shell", () -> wire.shell().serve(requests::onShell));
      Thread control = Wire.daemon("control", () -> wire.control().serve(requests::onControl));
      wire.announce(MessageType.PUBLISH_STATUS, Answers.status("starting"));
      shell.start();
      control.start();
      KernelEnd reason = end.join();
      wire.control().end();
      wire.shell().end();
      quiet(control);
      quiet(shell); // a cell that runs is stopped by this
      return reason;
    } finally {
      System.setIn(input);
    }
  }

  private static void quiet(Thread thread) {
    thread.interrupt();
    try {
      thread.join(QUIET_MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
