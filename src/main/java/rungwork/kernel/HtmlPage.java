package rungwork.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An executed notebook as one HTML file that needs no network and no script; its content security
 * policy forbids both.
 */
final class HtmlPage {
  private static final String PAGE =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <meta http-equiv="Content-Security-Policy"
       content="default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:">
      <title>%s</title>
      <style>
      %s
      %s
      </style>
      </head>
      <body>
      <main>
      %s</main>
      %s</body>
      </html>
      """;

  private final NotebookFile notebook;
  private final PageStyle style;

  HtmlPage(NotebookFile notebook, PageStyle style) {
    this.notebook = notebook;
    this.style = style;
  }

  String text() {
    StringBuilder cells = new StringBuilder();
    notebook.cells().forEach(cell -> cells.append(cell(cell)));
    String footer = style.footer().isEmpty() ? "" : "<footer>" + style.footer() + "</footer>\n";
    return PAGE.formatted(AnsiText.escape(title()), layout(), style.styleSheet(), cells, footer);
  }

  /** The first heading, or the file's name. */
  private String title() {
    return notebook.cells().stream()
        .filter(cell -> notebook.type(cell).equals("markdown"))
        .flatMap(cell -> notebook.source(cell).lines())
        .filter(line -> line.startsWith("# "))
        .map(line -> line.substring(2).strip())
        .findFirst()
        .orElse(notebook.name());
  }

  private static String layout() {
    try (InputStream sheet = HtmlPage.class.getResourceAsStream("page.css")) {
      return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String cell(JsonObject cell) {
    String source = notebook.source(cell);
    return switch (notebook.type(cell)) {
      case "markdown" -> "<section class=\"prose\">\n" + markdown(cell) + "</section>\n";
      case "code" -> source.isBlank() ? "" : code(cell, source);
      default -> "<pre class=\"raw\">" + AnsiText.escape(source) + "</pre>\n";
    };
  }

  private String markdown(JsonObject cell) {
    Map<String, String> attachments = new LinkedHashMap<>();
    if (cell.get("attachments") instanceof JsonObject named) {
      for (String name : named.keySet()) {
        JsonObject forms = named.getAsJsonObject(name);
        forms
            .keySet()
            .forEach(
                type ->
                    attachments.put(
                        name,
                        "data:" + type + ";base64," + NotebookFile.text(forms.get(type)).strip()));
      }
    }
    return new MarkdownText(notebook.folder(), attachments).html(notebook.source(cell));
  }

  private String code(JsonObject cell, String source) {
    String count = NotebookFile.text(cell.get("execution_count"));
    StringBuilder html = new StringBuilder("<section class=\"code\">\n");
    html.append("<pre class=\"source\" data-count=\"" + AnsiText.escape(count) + "\">");
    html.append("<code>" + AnsiText.escape(source) + "</code></pre>\n");
    for (JsonElement output :
        cell.get("outputs") instanceof JsonArray all ? all : new JsonArray()) {
      html.append(output(output.getAsJsonObject()));
    }
    return html.append("</section>\n").toString();
  }

  private String output(JsonObject output) {
    return switch (NotebookFile.text(output.get("output_type"))) {
      case "stream" ->
          pre(NotebookFile.text(output.get("name")), NotebookFile.text(output.get("text")));
      case "error" -> {
        List<String> lines = new ArrayList<>();
        output.getAsJsonArray("traceback").forEach(line -> lines.add(NotebookFile.text(line)));
        yield pre("error", String.join("\n", lines));
      }
      default -> "<div class=\"output\">" + best(output.getAsJsonObject("data")) + "</div>\n";
    };
  }

  private static String pre(String kind, String text) {
    return "<pre class=\"" + AnsiText.escape(kind) + "\">" + AnsiText.html(text) + "</pre>\n";
  }

  /** The richest form that a page without script can show. */
  private String best(JsonObject data) {
    if (data.has(MimeBundle.HTML)) {
      return NotebookFile.text(data.get(MimeBundle.HTML));
    }
    if (data.has(MimeBundle.SVG)) {
      return NotebookFile.text(data.get(MimeBundle.SVG))
          .replaceFirst("(?s)^\\s*(<\\?xml.*?\\?>)?\\s*(<!DOCTYPE.*?>)?\\s*", "");
    }
    for (String type : List.of("image/png", "image/jpeg")) {
      if (data.has(type)) {
        String base64 = NotebookFile.text(data.get(type)).strip();
        return "<img alt=\"\" src=\"data:" + type + ";base64," + AnsiText.escape(base64) + "\">";
      }
    }
    return data.has("text/markdown")
        ? new MarkdownText(notebook.folder(), Map.of())
            .html(NotebookFile.text(data.get("text/markdown")))
        : pre("plain", NotebookFile.text(data.get(MimeBundle.TEXT)));
  }
}
