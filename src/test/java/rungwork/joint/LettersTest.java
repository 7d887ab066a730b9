package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

class LettersTest {
  @Test
  void each_letter_is_shown_in_the_unit_of_its_quantity() {
    assertEquals(new Symbol("n", Kind.RATIO, "share"), Letters.ratio("n", "share"));
    assertEquals(new Symbol("n", Kind.NUMBER, "bolts"), Letters.number("n", "bolts"));
    assertEquals(new Symbol("t", Kind.LENGTH, "wall"), Letters.length("t", "wall"));
    assertEquals(new Symbol("A", Kind.AREA, "area"), Letters.area("A", "area"));
    assertEquals(new Symbol("W", Kind.SECTION_MODULUS, "modulus"), Letters.modulus("W", "modulus"));
    assertEquals(new Symbol("F", Kind.FORCE, "force"), Letters.force("F", "force"));
    assertEquals(new Symbol("M", Kind.MOMENT, "moment"), Letters.moment("M", "moment"));
    assertEquals(new Symbol("σ", Kind.STRESS, "stress"), Letters.stress("σ", "stress"));
    assertEquals(new Symbol("f", Kind.LINE_LOAD, "force"), Letters.lineForce("f", "force"));
  }
}
