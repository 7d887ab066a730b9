package rungwork.report;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes well-formed markup: every name and text that a person typed is escaped on its way through
 * here. An element is opened and closed by the same call, so none can stay open.
 */
final class Markup {
  private final StringWriter out = new StringWriter();
  private final XMLStreamWriter xml;

  Markup() {
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A step of writing that may fail only if this program is wrong. */
  private interface Writing {
    void run() throws XMLStreamException;
  }

  /**
   * Writes an element.
   *
   * @param tag its name
   * @param inside writes what it holds
   * @param attributes names and values in turn
   * @return this
   */
  Markup element(String tag, Runnable inside, String... attributes) {
    write(() -> open(tag, attributes));
    inside.run();
    write(xml::writeEndElement);
    return this;
  }

  /** Writes an element that holds a text. */
  Markup leaf(String tag, String text, String... attributes) {
    return element(tag, () -> text(text), attributes);
  }

  /** Writes a text, escaped. */
  Markup text(String text) {
    write(() -> xml.writeCharacters(printable(text)));
    return this;
  }

  /** Writes markup that this room has made; never what a person typed. */
  Markup raw(String markup) {
    write(
        () -> {
          xml.writeCharacters("");
          xml.flush();
        });
    out.write(markup);
    return this;
  }

  /** What has been written. */
  String done() {
    write(xml::flush);
    return out.toString();
  }

  private void open(String tag, String... attributes) throws XMLStreamException {
    xml.writeStartElement(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      xml.writeAttribute(attributes[i], printable(attributes[i + 1]));
    }
    xml.writeCharacters("");
  }

  private static void write(Writing writing) {
    try {
      writing.run();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Replaces what no page can hold (control characters, half surrogates) by U+FFFD. */
  static String printable(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints().map(c -> allowed(c) ? c : 0xFFFD).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean allowed(int c) {
    boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
    boolean halfSurrogate = c >= 0xD800 && c <= 0xDFFF;
    return !control && !halfSurrogate && c != 0xFFFE && c != 0xFFFF;
  }
}
