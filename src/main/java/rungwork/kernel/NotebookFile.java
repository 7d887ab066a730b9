package rungwork.kernel;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * A notebook as JSON, read in format 4 and written in format 4.5; what is not a cell's output stays
 * as it was.
 *
 * <p>Source of the layout: nbformat documentation, "The Notebook file format", version 4.5.
 */
final class NotebookFile {
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();
  private static final String IDENTIFIER = "[A-Za-z0-9_-]{1,64}";

  private final Path file;
  private final JsonObject root;

  private NotebookFile(Path file, JsonObject root) {
    this.file = file;
    this.root = root;
  }

  static NotebookFile read(Path file) throws IOException {
    JsonElement parsed;
    try {
      parsed = JsonParser.parseString(Files.readString(file));
    } catch (JsonParseException | java.nio.charset.CharacterCodingException e) {
      throw new IllegalArgumentException(file + " is no notebook: it does not hold JSON", e);
    }
    if (!parsed.isJsonObject() || !parsed.getAsJsonObject().has("nbformat")) {
      throw new IllegalArgumentException(file + " is no notebook: it has no field nbformat");
    }
    JsonObject root = parsed.getAsJsonObject();
    String format = root.get("nbformat").toString();
    if (!format.equals("4") || !(root.get("cells") instanceof JsonArray)) {
      throw new IllegalArgumentException(
          file + " has notebook format " + format + "; format 4 with a list of cells is needed");
    }
    NotebookFile notebook = new NotebookFile(file, root);
    notebook.raise();
    return notebook;
  }

  /** Brings the notebook to format 4.5, which wants an id for every cell. */
  private void raise() {
    root.addProperty("nbformat_minor", 5);
    Set<String> used = new HashSet<>();
    int number = 0;
    for (JsonObject cell : cells()) {
      number++;
      String id = cell.has("id") ? text(cell.get("id")) : "";
      String kept = id.matches(IDENTIFIER) && used.add(id) ? id : "cell-" + number;
      used.add(kept);
      cell.addProperty("id", kept);
      if (!(cell.get("metadata") instanceof JsonObject)) {
        cell.add("metadata", new JsonObject());
      }
    }
    if (!(root.get("metadata") instanceof JsonObject)) {
      root.add("metadata", new JsonObject());
    }
    root.getAsJsonObject("metadata").add("language_info", LanguageInfo.json());
  }

  Path folder() {
    return file.toAbsolutePath().getParent();
  }

  /** The file's name without its ending. */
  String name() {
    return file.getFileName().toString().replaceFirst("\\.ipynb$", "");
  }

  List<JsonObject> cells() {
    return StreamSupport.stream(root.getAsJsonArray("cells").spliterator(), false)
        .map(JsonElement::getAsJsonObject)
        .toList();
  }

  List<JsonObject> codeCells() {
    return cells().stream().filter(cell -> type(cell).equals("code")).toList();
  }

  String type(JsonObject cell) {
    return text(cell.get("cell_type"));
  }

  String source(JsonObject cell) {
    return text(cell.get("source"));
  }

  boolean mayFail(JsonObject cell) {
    return cell.getAsJsonObject("metadata").get("tags") instanceof JsonArray tags
        && tags.contains(new JsonPrimitive("raises-exception"));
  }

  void clear(JsonObject cell) {
    cell.add("execution_count", JsonNull.INSTANCE);
    cell.add("outputs", new JsonArray());
  }

  void fill(JsonObject cell, int count, List<CellOutput> outputs) {
    cell.addProperty("execution_count", count);
    cell.add("outputs", OutputJson.array(count, outputs));
  }

  String json() {
    return GSON.toJson(root) + "\n";
  }

  /** Text that the format keeps as one string or as a list of lines. */
  static String text(JsonElement element) {
    if (element instanceof JsonArray lines) {
      StringBuilder whole = new StringBuilder();
      lines.forEach(line -> whole.append(text(line)));
      return whole.toString();
    }
    return element instanceof JsonPrimitive value ? value.getAsString() : "";
  }
}
