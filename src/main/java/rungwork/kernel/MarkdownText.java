package rungwork.kernel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Markdown as HTML in which raw HTML is escaped and images are held in the page itself. A picture
 * that would have to be fetched becomes a link.
 */
final class MarkdownText {
  private static final List<Extension> TABLES = List.of(TablesExtension.create());
  private static final Map<String, String> PICTURES =
      Map.of(
          "png", "image/png",
          "jpg", "image/jpeg",
          "jpeg", "image/jpeg",
          "gif", "image/gif",
          "svg", "image/svg+xml");

  private final Path folder;
  private final Map<String, String> attachments;

  /**
   * A maker of HTML.
   *
   * @param folder where relative pictures lie
   * @param attachments data URIs by name
   */
  MarkdownText(Path folder, Map<String, String> attachments) {
    this.folder = folder;
    this.attachments = Map.copyOf(attachments);
  }

  String html(String markdown) {
    Node document = Parser.builder().extensions(TABLES).build().parse(markdown);
    document.accept(new Embedding());
    return HtmlRenderer.builder()
        .extensions(TABLES)
        .escapeHtml(true)
        .sanitizeUrls(true)
        .build()
        .render(document);
  }

  private Optional<String> data(String destination) {
    if (destination.startsWith("data:image/")) {
      return Optional.of(destination);
    }
    if (destination.startsWith("attachment:")) {
      return Optional.ofNullable(attachments.get(destination.substring("attachment:".length())));
    }
    String ending = destination.substring(destination.lastIndexOf('.') + 1).toLowerCase();
    return Optional.ofNullable(PICTURES.get(ending)).flatMap(type -> file(destination, type));
  }

  private Optional<String> file(String destination, String type) {
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(destination));
      return Optional.of("data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes));
    } catch (IOException | InvalidPathException e) {
      return Optional.empty(); // no file of that name: the picture becomes a link
    }
  }

  private final class Embedding extends AbstractVisitor {
    @Override
    public void visit(Image image) {
      Optional<String> data = data(image.getDestination());
      if (data.isPresent()) {
        image.setDestination(data.get());
        return;
      }
      Link link = new Link(image.getDestination(), image.getTitle());
      for (Node child = image.getFirstChild(); child != null; child = image.getFirstChild()) {
        link.appendChild(child);
      }
      image.insertAfter(link);
      image.unlink();
    }
  }
}
