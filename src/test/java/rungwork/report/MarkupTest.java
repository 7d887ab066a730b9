package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class MarkupTest {
  @Test
  void what_a_person_typed_is_escaped_in_texts_and_attributes() {
    String markup = new Markup().leaf("p", Examples.NASTY, "class", Examples.NASTY).done();
    assertFalse(markup.contains("<script"));
    assertEquals(Examples.NASTY, Xml.parse(markup).getTextContent());
    assertEquals(Examples.NASTY, Xml.parse(markup).getAttribute("class"));
  }

  @Test
  void letters_that_markup_cannot_hold_are_replaced() {
    String markup = new Markup().leaf("p", "a\u0000b\uD83Dc\uFFFFd\te").done();
    assertEquals("a\uFFFDb\uFFFDc\uFFFDd\te", Xml.parse(markup).getTextContent());
  }
}
