package rungwork.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;

/** A cell's outputs as the notebook format keeps them. */
final class OutputJson {
  private OutputJson() {}

  static JsonArray array(int count, List<CellOutput> outputs) {
    JsonArray array = new JsonArray();
    merged(outputs).forEach(output -> array.add(object(count, output)));
    return array;
  }

  /** Neighbouring pieces of one stream become one. */
  private static List<CellOutput> merged(List<CellOutput> outputs) {
    List<CellOutput> merged = new ArrayList<>();
    for (CellOutput output : outputs) {
      int last = merged.size() - 1;
      if (output instanceof CellOutput.Clear) {
        merged.clear();
      } else if (output instanceof CellOutput.Text next
          && last >= 0
          && merged.get(last) instanceof CellOutput.Text before
          && before.stream().equals(next.stream())) {
        merged.set(last, new CellOutput.Text(next.stream(), before.text() + next.text()));
      } else {
        merged.add(output);
      }
    }
    return merged;
  }

  private static JsonObject object(int count, CellOutput output) {
    JsonObject json = new JsonObject();
    if (output instanceof CellOutput.Text text) {
      json.addProperty("output_type", "stream");
      json.addProperty("name", text.stream());
      json.add("text", lines(text.text()));
    } else if (output instanceof CellOutput.Display display) {
      json.addProperty("output_type", "display_data");
      addBundle(json, display.bundle());
    } else if (output instanceof CellOutput.Result result) {
      json.addProperty("output_type", "execute_result");
      json.addProperty("execution_count", count);
      addBundle(json, result.bundle());
    } else if (output instanceof CellOutput.Failure failure) {
      json.addProperty("output_type", "error");
      json.addProperty("ename", failure.name());
      json.addProperty("evalue", failure.message());
      JsonArray trace = new JsonArray();
      failure.trace().forEach(trace::add);
      json.add("traceback", trace);
    }
    return json;
  }

  private static void addBundle(JsonObject json, MimeBundle bundle) {
    JsonObject data = new JsonObject();
    bundle.forms().forEach((type, content) -> data.add(type, lines(content)));
    json.add("data", data);
    json.add("metadata", new JsonObject());
  }

  /** A list of lines, each with its line end. */
  private static JsonArray lines(String text) {
    JsonArray lines = new JsonArray();
    if (!text.isEmpty()) {
      for (String line : text.split("(?<=\n)")) {
        lines.add(line);
      }
    }
    return lines;
  }
}
