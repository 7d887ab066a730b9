package rungwork.kernel;

import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Runs the cells that clients send and counts them. */
final class Executions {
  private static final Duration NO_LIMIT = Duration.ofDays(3650);

  private final Evaluator evaluator;
  private final Wire wire;
  private final CellInput input;
  private final History history;
  private int count = 1;

  /**
   * What a request came to.
   *
   * @param end how the cell ended
   * @param reply the content of the reply
   */
  record Outcome(CellEnd end, JsonObject reply) {}

  Executions(Evaluator evaluator, Wire wire, CellInput input, History history) {
    this.evaluator = evaluator;
    this.wire = wire;
    this.input = input;
    this.history = history;
  }

  /** Runs a cell; its outputs go to every client, unless the request is silent. */
  Outcome run(Message<ExecuteRequest> request) {
    ExecuteRequest asked = request.getContent();
    Cell cell = new Cell(count, asked.getCode());
    if (!asked.isSilent()) {
      wire.publish(request, MessageType.PUBLISH_EXECUTE_INPUT, Answers.input(cell));
    }
    List<CellOutput> outputs = Collections.synchronizedList(new ArrayList<>());
    input.begin(request);
    CellEnd end =
        evaluator.run(
            cell,
            NO_LIMIT,
            output -> {
              outputs.add(output);
              if (!asked.isSilent()) {
                publish(request, cell, output);
              }
            });
    JsonObject reply = reply(cell, end, List.copyOf(outputs));
    if (end == CellEnd.FINISHED) {
      reply.add("user_expressions", values(asked));
    }
    input.end();
    remember(asked, cell, outputs);
    return new Outcome(end, reply);
  }

  private void remember(ExecuteRequest asked, Cell cell, List<CellOutput> outputs) {
    if (!asked.isSilent() && asked.shouldStoreHistory()) {
      history.add(
          cell, only(outputs, CellOutput.Result.class).map(r -> r.bundle().text()).orElse(""));
      count++;
    }
  }

  private void publish(Message<ExecuteRequest> request, Cell cell, CellOutput output) {
    if (output instanceof CellOutput.Text text) {
      wire.publish(request, MessageType.PUBLISH_STREAM, Answers.text(text));
    } else if (output instanceof CellOutput.Display display) {
      wire.publish(
          request,
          MessageType.PUBLISH_DISPLAY_DATA,
          Answers.display(display.bundle(), display.id()));
    } else if (output instanceof CellOutput.Update update) {
      wire.publish(
          request,
          MessageType.PUBLISH_UPDATE_DISPLAY_DATA,
          Answers.display(update.bundle(), update.id()));
    } else if (output instanceof CellOutput.Result result) {
      JsonObject content = Answers.bundle(result.bundle());
      content.addProperty("execution_count", cell.count());
      wire.publish(request, MessageType.PUBLISH_EXECUTION_RESULT, content);
    } else if (output instanceof CellOutput.Clear) {
      wire.publish(request, MessageType.PUBLISH_CLEAR_OUTPUT, Answers.clear());
    } else if (output instanceof CellOutput.Failure failure) {
      wire.publish(request, MessageType.PUBLISH_ERROR, Answers.failure(failure));
    }
  }

  private static JsonObject reply(Cell cell, CellEnd end, List<CellOutput> outputs) {
    JsonObject reply =
        only(outputs, CellOutput.Failure.class).map(Answers::failure).orElseGet(JsonObject::new);
    reply.addProperty("status", end == CellEnd.FINISHED ? "ok" : "error");
    reply.addProperty("execution_count", cell.count());
    return reply;
  }

  /** The values of expressions that the client wants to know after the cell. */
  private JsonObject values(ExecuteRequest asked) {
    JsonObject values = new JsonObject();
    Map<String, String> expressions = Optional.ofNullable(asked.getUserExpr()).orElse(Map.of());
    expressions.forEach((name, expression) -> values.add(name, value(expression)));
    return values;
  }

  private JsonObject value(String expression) {
    List<CellOutput> outputs = Collections.synchronizedList(new ArrayList<>());
    CellEnd end = evaluator.run(new Cell(count, expression), NO_LIMIT, outputs::add);
    JsonObject value =
        only(outputs, CellOutput.Result.class)
            .map(result -> Answers.bundle(result.bundle()))
            .or(() -> only(outputs, CellOutput.Failure.class).map(Answers::failure))
            .orElseGet(() -> Answers.bundle(MimeBundle.text("")));
    value.addProperty("status", end == CellEnd.FINISHED ? "ok" : "error");
    return value;
  }

  private static <T extends CellOutput> Optional<T> only(List<CellOutput> outputs, Class<T> type) {
    Stream<CellOutput> copy = List.copyOf(outputs).stream();
    return copy.filter(type::isInstance).map(type::cast).reduce((earlier, later) -> later);
  }
}
