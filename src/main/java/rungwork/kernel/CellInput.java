package rungwork.kernel;

import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.reply.InputReply;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Stands in for {@code System.in}: a read asks the person at the client for a line. Where the
 * client allows no questions the stream is at its end.
 *
 * <p>The socket is used by a thread of its own, which no stopped cell can take down.
 */
final class CellInput extends InputStream {
  private final Wire wire;
  private final ExecutorService asker =
      Executors.newSingleThreadExecutor(work -> Wire.daemon("questions", work));
  private volatile Optional<Message<ExecuteRequest>> request = Optional.empty();
  private byte[] line = new byte[0];
  private int at;

  CellInput(Wire wire) {
    this.wire = wire;
    asker.submit(() -> {}); // starts the thread before the first cell, outside its group
  }

  /** From here on the questions belong to this request. */
  void begin(Message<ExecuteRequest> running) {
    request = Optional.of(running);
    line = new byte[0];
    at = 0;
  }

  /** The request is over. */
  void end() {
    request = Optional.empty();
  }

  @Override
  public synchronized int read() throws IOException {
    if (at == line.length && !fill()) {
      return -1;
    }
    return line[at++] & 0xFF;
  }

  @Override
  public synchronized int read(byte[] into, int from, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (at == line.length && !fill()) {
      return -1;
    }
    int taken = Math.min(length, line.length - at);
    System.arraycopy(line, at, into, from, taken);
    at += taken;
    return taken;
  }

  @Override
  public synchronized int available() {
    return line.length - at;
  }

  private boolean fill() throws IOException {
    Optional<Message<ExecuteRequest>> asking =
        request.filter(running -> running.getContent().isStdinEnabled());
    if (asking.isEmpty()) {
      return false;
    }
    JsonObject question = new JsonObject();
    question.addProperty("prompt", "");
    question.addProperty("password", false);
    Future<Optional<Message<?>>> answer = asker.submit(() -> wire.ask(asking.get(), question));
    try {
      line = text(answer.get()).getBytes(StandardCharsets.UTF_8);
      at = 0;
      return true;
    } catch (InterruptedException e) {
      throw new InterruptedIOException("the cell was stopped while it waited for an answer");
    } catch (ExecutionException e) {
      throw new IOException(e.getCause());
    } finally {
      answer.cancel(true); // frees the asking thread where the cell was stopped
    }
  }

  private static String text(Optional<Message<?>> answer) {
    return answer.isPresent() && answer.get().getContent() instanceof InputReply reply
        ? reply.getValue() + "\n"
        : "\n";
  }
}
