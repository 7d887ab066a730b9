package rungwork.kernel;

import io.github.spencerpark.jupyter.channels.JupyterSocket;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;
import java.util.logging.Logger;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/**
 * A socket on which requests arrive and on which they are answered. Messages that are unsigned,
 * wrongly signed or malformed are dropped; the socket goes on.
 */
final class RequestSocket extends JupyterSocket {
  private static final int POLL_MILLISECONDS = 100;

  private final ToIntFunction<KernelConnectionProperties> port;
  private final ZMQ.Poller poller;
  private volatile boolean over;

  RequestSocket(
      ZMQ.Context context, HMACGenerator key, ToIntFunction<KernelConnectionProperties> port) {
    super(context, SocketType.ROUTER, key, Logger.getLogger("requests"));
    this.port = port;
    this.poller = context.poller(1);
    poller.register(this, ZMQ.Poller.POLLIN);
  }

  @Override
  public void bind(KernelConnectionProperties at) {
    super.bind(formatAddress(at.getTransport(), at.getIp(), port.applyAsInt(at)));
  }

  /** Answers requests in this thread until {@link #end} is called. */
  void serve(Consumer<Message<?>> handler) {
    while (!over) {
      try {
        next(POLL_MILLISECONDS).ifPresent(handler);
      } catch (Throwable one) { // a request that cannot be answered must not end the answering
        continue;
      }
    }
  }

  /**
   * No further request is answered; an interrupt of the thread, which polling forgets, is no end.
   */
  void end() {
    over = true;
  }

  /** Takes the requests that wait already. */
  List<Message<?>> waiting() {
    List<Message<?>> waiting = new ArrayList<>();
    while (poller.poll(0) > 0) {
      read().ifPresent(waiting::add);
    }
    return waiting;
  }

  /** The next message, if one comes within the time. */
  Optional<Message<?>> next(int milliseconds) {
    return poller.poll(milliseconds) > 0 ? read() : Optional.empty();
  }

  private Optional<Message<?>> read() {
    try {
      return Optional.ofNullable(readMessage());
    } catch (RuntimeException refused) {
      return Optional.empty();
    }
  }
}
