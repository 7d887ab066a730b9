package rungwork.kernel;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One value in every form that a page can show, keyed by MIME type. Plain text is always among
 * them.
 *
 * @param forms content by MIME type; text as it is, binary images in Base64
 */
public record MimeBundle(Map<String, String> forms) {
  /** Plain text. */
  public static final String TEXT = "text/plain";

  /** A fragment of HTML. */
  public static final String HTML = "text/html";

  /** A drawing in SVG. */
  public static final String SVG = "image/svg+xml";

  /** Keeps the forms in the order given and refuses a bundle without plain text. */
  public MimeBundle {
    if (!forms.containsKey(TEXT)) {
      throw new IllegalArgumentException("a bundle needs a " + TEXT + " form; it has " + forms);
    }
    forms = Collections.unmodifiableMap(new LinkedHashMap<>(forms));
  }

  /** A bundle of plain text alone. */
  public static MimeBundle text(String text) {
    return new MimeBundle(Map.of(TEXT, text));
  }

  /** This bundle with one more form. */
  public MimeBundle with(String mimeType, String content) {
    Map<String, String> more = new LinkedHashMap<>(forms);
    more.put(mimeType, content);
    return new MimeBundle(more);
  }

  /** This bundle with an HTML form. */
  public MimeBundle html(String fragment) {
    return with(HTML, fragment);
  }

  /** This bundle with an SVG form. */
  public MimeBundle svg(String drawing) {
    return with(SVG, drawing);
  }

  /** The plain-text form. */
  public String text() {
    return forms.get(TEXT);
  }
}
