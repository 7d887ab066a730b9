package rungwork.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads markup back with a strict parser. */
final class Xml {
  private Xml() {}

  /** The root element; fails when the markup is not well formed. */
  static Element parse(String markup) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(markup)))
          .getDocumentElement();
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new AssertionError(e.getMessage() + "\n" + markup, e);
    }
  }

  /** All elements of a name, in order. */
  static List<Element> all(String markup, String tag) {
    NodeList found = parse(markup).getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** The texts of all elements of a name, in order. */
  static List<String> texts(String markup, String tag) {
    return all(markup, tag).stream().map(Element::getTextContent).toList();
  }

  /** What a reader sees: the text without styles. */
  static String seen(String markup) {
    Element root = parse(markup);
    NodeList styles = root.getElementsByTagName("style");
    while (styles.getLength() > 0) {
      styles.item(0).getParentNode().removeChild(styles.item(0));
    }
    return root.getTextContent();
  }
}
