package rungwork.kernel;

import com.google.gson.JsonObject;

/** The language of the cells, as notebooks and clients want to be told it. */
final class LanguageInfo {
  private LanguageInfo() {}

  static JsonObject json() {
    JsonObject info = new JsonObject();
    info.addProperty("name", "java");
    info.addProperty("version", System.getProperty("java.version"));
    info.addProperty("mimetype", "text/x-java-source");
    info.addProperty("file_extension", ".java");
    info.addProperty("pygments_lexer", "java");
    info.addProperty("codemirror_mode", "text/x-java");
    return info;
  }
}
