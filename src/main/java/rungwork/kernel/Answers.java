package rungwork.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.messages.Header;
import java.util.Locale;
import java.util.Optional;

/** The contents of the messages that a kernel sends, as the messaging protocol wants them. */
final class Answers {
  private Answers() {}

  static JsonObject ok() {
    JsonObject content = new JsonObject();
    content.addProperty("status", "ok");
    return content;
  }

  static JsonObject status(String state) {
    JsonObject content = new JsonObject();
    content.addProperty("execution_state", state);
    return content;
  }

  static JsonObject aborted() {
    JsonObject content = new JsonObject();
    content.addProperty("status", "aborted");
    return content;
  }

  static JsonObject clear() {
    JsonObject content = new JsonObject();
    content.addProperty("wait", false);
    return content;
  }

  static JsonObject input(Cell cell) {
    JsonObject content = new JsonObject();
    content.addProperty("code", cell.source());
    content.addProperty("execution_count", cell.count());
    return content;
  }

  static JsonObject text(CellOutput.Text text) {
    JsonObject content = new JsonObject();
    content.addProperty("name", text.stream());
    content.addProperty("text", text.text());
    return content;
  }

  static JsonObject bundle(MimeBundle bundle) {
    JsonObject data = new JsonObject();
    bundle.forms().forEach(data::addProperty);
    JsonObject content = new JsonObject();
    content.add("data", data);
    content.add("metadata", new JsonObject());
    return content;
  }

  /** A bundle with the id by which clients find it again, if it has one. */
  static JsonObject display(MimeBundle bundle, String id) {
    JsonObject content = bundle(bundle);
    JsonObject passing = new JsonObject();
    if (!id.isEmpty()) {
      passing.addProperty("display_id", id);
    }
    content.add("transient", passing);
    return content;
  }

  static JsonObject failure(CellOutput.Failure failure) {
    JsonArray trace = new JsonArray();
    failure.trace().forEach(trace::add);
    JsonObject content = new JsonObject();
    content.addProperty("ename", failure.name());
    content.addProperty("evalue", failure.message());
    content.add("traceback", trace);
    return content;
  }

  static JsonObject completions(CodeHelp.Completions found, String code) {
    JsonArray matches = new JsonArray();
    found.matches().forEach(matches::add);
    JsonObject content = ok();
    content.add("matches", matches);
    content.addProperty("cursor_start", code.codePointCount(0, found.start()));
    content.addProperty("cursor_end", code.codePointCount(0, found.end()));
    content.add("metadata", new JsonObject());
    return content;
  }

  static JsonObject inspection(Optional<MimeBundle> found) {
    JsonObject content = found.map(Answers::bundle).orElseGet(() -> bundle(MimeBundle.text("")));
    content.addProperty("status", "ok");
    content.addProperty("found", found.isPresent());
    return content;
  }

  static JsonObject readiness(CodeHelp help, String code) {
    JsonObject content = new JsonObject();
    CodeHelp.Readiness readiness = help.readiness(code);
    content.addProperty("status", readiness.name().toLowerCase(Locale.ROOT));
    if (readiness == CodeHelp.Readiness.INCOMPLETE) {
      content.addProperty("indent", help.indent(code));
    }
    return content;
  }

  static JsonObject kernel(KernelIdentity identity) {
    JsonObject content = ok();
    content.addProperty("protocol_version", Header.PROTOCOL_VERISON);
    content.addProperty("implementation", identity.name());
    content.addProperty("implementation_version", identity.version());
    content.add("language_info", LanguageInfo.json());
    content.addProperty("banner", identity.banner());
    content.addProperty("debugger", false);
    content.add("help_links", new JsonArray());
    return content;
  }
}
