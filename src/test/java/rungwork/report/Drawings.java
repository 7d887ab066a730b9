package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.w3c.dom.Element;

/** What must be true of every drawing. */
final class Drawings {
  private Drawings() {}

  /** Well formed, self-sufficient, every part titled, every word inside the picture. */
  static void holds(Picture picture) {
    String svg = picture.svg();
    Element root = Xml.parse(svg);
    assertTrue(root.getAttribute("class").equals("rw"));
    String own = svg.replace("http://www.w3.org/2000/svg", "");
    assertFalse(own.matches("(?s).*(http|href|<script|url\\(| on\\w+=).*"), "calls something");
    for (Element part : Xml.all(svg, "g")) {
      assertTrue(part.getFirstChild().getNodeName().equals("title"), "a part without a title");
    }
    String[] view = root.getAttribute("viewBox").split(" ");
    double left = Double.parseDouble(view[0]);
    double top = Double.parseDouble(view[1]);
    for (Element text : Xml.all(svg, "text")) {
      assertTrue(number(text, "x") >= left, text.getTextContent());
      assertTrue(number(text, "x") <= left + Double.parseDouble(view[2]), text.getTextContent());
      assertTrue(number(text, "y") >= top, text.getTextContent());
      assertTrue(number(text, "y") <= top + Double.parseDouble(view[3]), text.getTextContent());
    }
    assertFalse(picture.text().isBlank());
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  static List<String> words(Picture picture) {
    return Xml.texts(picture.svg(), "text");
  }

  /** The places of a polyline, x and y in turn. */
  static double[] places(Element polyline) {
    return java.util.Arrays.stream(polyline.getAttribute("points").split("[ ,]"))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
