package rungwork.kernel;

import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.channels.IOPubChannel;
import io.github.spencerpark.jupyter.channels.JupyterSocket;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageContext;
import io.github.spencerpark.jupyter.messages.MessageType;
import java.security.GeneralSecurityException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** The five sockets of a kernel, bound to nothing but what the connection file names. */
final class Wire implements AutoCloseable {
  private static final int LINGER_MILLISECONDS = 1000;
  private static final int ANSWER_POLL_MILLISECONDS = 100;

  private final AtomicBoolean whole = new AtomicBoolean(true);
  private final ZMQ.Context context = ZMQ.context(1);
  private final RequestSocket shell;
  private final RequestSocket control;
  private final RequestSocket questions;
  private final IOPubChannel broadcast;
  private final ZMQ.Socket heartbeat;

  /**
   * Binds the sockets.
   *
   * @param at what the connection file says
   * @param broken is run when a thread that carries the messages dies
   */
  Wire(KernelConnectionProperties at, Runnable broken) throws GeneralSecurityException {
    Thread.UncaughtExceptionHandler breaks =
        (thread, cause) -> {
          whole.set(false);
          broken.run();
        };
    context.setUncaughtExceptionHandler(breaks); // before the first socket, which starts threads
    HMACGenerator key = at.createHMACGenerator();
    shell = new RequestSocket(context, key, KernelConnectionProperties::getShellPort);
    control = new RequestSocket(context, key, KernelConnectionProperties::getControlPort);
    questions = new RequestSocket(context, key, KernelConnectionProperties::getStdinPort);
    broadcast = new IOPubChannel(context, key);
    broadcast.setHWM(0); // no limit: a message over a limit would be lost without a word
    for (JupyterSocket socket : new JupyterSocket[] {shell, control, questions, broadcast}) {
      socket.setLinger(LINGER_MILLISECONDS);
      socket.bind(at);
    }
    heartbeat = context.socket(SocketType.REP);
    heartbeat.setLinger(0);
    heartbeat.bind(at.getTransport() + "://" + at.getIp() + ":" + at.getHbPort());
    Thread beating = daemon("heartbeat", this::beat);
    beating.setUncaughtExceptionHandler(breaks);
    beating.start();
  }

  static Thread daemon(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  private void beat() {
    try (heartbeat) {
      while (true) {
        heartbeat.send(heartbeat.recv());
      }
    } catch (ZMQException closed) {
      return; // the context is being closed
    }
  }

  RequestSocket shell() {
    return shell;
  }

  RequestSocket control() {
    return control;
  }

  /** Tells every client something in the course of a request. */
  void publish(MessageContext request, MessageType<?> type, JsonObject content) {
    broadcast.sendMessage(message(request, type, content));
  }

  /** Tells every client something that no request caused. */
  void announce(MessageType<?> type, JsonObject content) {
    Header<Object> header = new Header<>("kernel", untyped(type));
    broadcast.sendMessage(new Message<>(header, (Object) content));
  }

  static Message<Object> message(MessageContext request, MessageType<?> type, JsonObject content) {
    return new Message<>(request, untyped(type), content);
  }

  /** The library ties each type to a content class of its own; JSON stands for any of them. */
  @SuppressWarnings("unchecked")
  private static MessageType<Object> untyped(MessageType<?> type) {
    return (MessageType<Object>) type;
  }

  /** Asks the client whose request runs; returns its answer unless the thread is interrupted. */
  Optional<Message<?>> ask(MessageContext request, JsonObject question) {
    questions.sendMessage(message(request, MessageType.INPUT_REQUEST, question));
    while (!Thread.currentThread().isInterrupted()) {
      Optional<Message<?>> answer = questions.next(ANSWER_POLL_MILLISECONDS);
      if (answer.isPresent()) {
        return answer;
      }
    }
    return Optional.empty();
  }

  /** Sends what is still to be sent; of a broken wire nothing can be, and it would wait forever. */
  @Override
  public void close() {
    if (!whole.get()) {
      return;
    }
    for (JupyterSocket socket : new JupyterSocket[] {shell, control, questions, broadcast}) {
      socket.close();
    }
    context.close();
  }
}
