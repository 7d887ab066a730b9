package rungwork.kernel;

import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.request.CompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.HistoryRequest;
import io.github.spencerpark.jupyter.messages.request.InspectRequest;
import io.github.spencerpark.jupyter.messages.request.IsCompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ShutdownRequest;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Answers each request: says busy, does it, replies, says idle. */
final class Requests {
  private final Wire wire;
  private final Evaluator evaluator;
  private final KernelIdentity identity;
  private final CompletableFuture<KernelEnd> end;
  private final History history = new History();
  private final Executions executions;

  Requests(
      Wire wire, Evaluator evaluator, KernelIdentity identity, CompletableFuture<KernelEnd> end) {
    this.wire = wire;
    this.evaluator = evaluator;
    this.identity = identity;
    this.end = end;
    CellInput input = new CellInput(wire);
    System.setIn(input);
    executions = new Executions(evaluator, wire, input, history);
  }

  /** Answers a request on the shell socket. */
  void onShell(Message<?> message) {
    if (message.getContent() instanceof ExecuteRequest) {
      execute(message);
    } else {
      answer(wire.shell(), message);
    }
  }

  /** Answers a request on the control socket. */
  void onControl(Message<?> message) {
    answer(wire.control(), message);
  }

  @SuppressWarnings("unchecked") // the content was looked at
  private void execute(Message<?> message) {
    Message<ExecuteRequest> request = (Message<ExecuteRequest>) message;
    busy(request);
    Executions.Outcome outcome = outcome(request);
    boolean stops = request.getContent().shouldStopOnError() && outcome.end() != CellEnd.FINISHED;
    List<Message<?>> dropped = stops ? wire.shell().waiting() : List.of();
    idle(request); // before the reply: whoever holds the reply has everything else
    reply(wire.shell(), request, outcome.reply());
    for (Message<?> next : dropped) {
      if (next.getContent() instanceof ExecuteRequest) {
        busy(next);
        reply(wire.shell(), next, Answers.aborted());
        idle(next);
      } else {
        onShell(next);
      }
    }
    if (outcome.end() == CellEnd.STUCK) {
      end.complete(KernelEnd.GIVEN_UP);
    }
  }

  /** Whatever happens, the client that waits for this cell is answered. */
  private Executions.Outcome outcome(Message<ExecuteRequest> request) {
    try {
      return executions.run(request);
    } catch (Throwable e) {
      JsonObject reply =
          Answers.failure(FaultText.failure("KernelFault", "the cell was lost: " + e, List.of()));
      reply.addProperty("status", "error");
      return new Executions.Outcome(CellEnd.FAILED, reply);
    }
  }

  private void answer(RequestSocket socket, Message<?> request) {
    busy(request);
    content(request).ifPresent(content -> reply(socket, request, content));
    idle(request);
    if (request.getContent() instanceof ShutdownRequest) {
      end.complete(KernelEnd.SHUT_DOWN);
    }
  }

  private Optional<JsonObject> content(Message<?> request) {
    Object asked = request.getContent();
    if (asked instanceof CompleteRequest complete) {
      String code = complete.getCode();
      int cursor = character(code, complete.getCursorPos());
      return Optional.of(Answers.completions(evaluator.help().completions(code, cursor), code));
    }
    if (asked instanceof InspectRequest inspect) {
      int cursor = character(inspect.getCode(), inspect.getCursorPos());
      return Optional.of(
          Answers.inspection(evaluator.help().inspection(inspect.getCode(), cursor)));
    }
    if (asked instanceof IsCompleteRequest ready) {
      return Optional.of(Answers.readiness(evaluator.help(), ready.getCode()));
    }
    return asked instanceof HistoryRequest past ? Optional.of(history.reply(past)) : plain(request);
  }

  /** Requests whose answer does not depend on code. */
  private Optional<JsonObject> plain(Message<?> request) {
    JsonObject content = Answers.ok();
    switch (request.getHeader().getType().getName()) {
      case "kernel_info_request" -> content = Answers.kernel(identity);
      case "comm_info_request" -> content.add("comms", new JsonObject());
      case "interrupt_request" -> evaluator.stop();
      case "shutdown_request" ->
          content.addProperty("restart", ((ShutdownRequest) request.getContent()).isRestart());
      default -> {
        return Optional.empty();
      }
    }
    return Optional.of(content);
  }

  /** Jupyter counts in Unicode code points, Java in UTF-16 units. */
  private static int character(String code, int codePoints) {
    int within = Math.max(0, Math.min(codePoints, code.codePointCount(0, code.length())));
    return code.offsetByCodePoints(0, within);
  }

  private void busy(Message<?> request) {
    wire.publish(request, MessageType.PUBLISH_STATUS, Answers.status("busy"));
  }

  private void idle(Message<?> request) {
    wire.publish(request, MessageType.PUBLISH_STATUS, Answers.status("idle"));
  }

  private static void reply(RequestSocket socket, Message<?> request, JsonObject content) {
    String type = request.getHeader().getType().getName().replace("_request", "_reply");
    socket.sendMessage(Wire.message(request, MessageType.getType(type), content));
  }
}
