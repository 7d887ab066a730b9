package rungwork.fault;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class GuardTest {
  @Test
  void what_is_in_order_passes_through() {
    assertAll(
        () -> assertEquals(-2.5, Guard.finite("offset", -2.5)),
        () -> assertEquals(0.003, Guard.positive("wall", 0.003, Scale.MM)),
        () -> assertEquals(0, Guard.notNegative("mass", 0, Scale.KG)),
        () -> assertEquals("left rail", Guard.name("beam", " left rail ")));
  }

  @Test
  void refusals_say_what_and_its_value_with_the_unit() {
    assertAll(
        () ->
            refused(
                "offset is not a number; give a finite number",
                () -> Guard.finite("offset", Double.NaN)),
        () ->
            refused(
                "offset is infinite; give a finite number",
                () -> Guard.finite("offset", Double.POSITIVE_INFINITY)),
        () ->
            refused(
                "wall -3.000 mm is not above zero", () -> Guard.positive("wall", -0.003, Scale.MM)),
        () -> refused("wall 0 mm is not above zero", () -> Guard.positive("wall", 0, Scale.MM)),
        () ->
            refused("mass -62.00 kg is below zero", () -> Guard.notNegative("mass", -62, Scale.KG)),
        () -> refused("a node has no name; give it one", () -> Guard.name("node", " ")),
        () -> refused("a node has no name; give it one", () -> Guard.name("node", null)));
  }

  @Test
  void failed_numbers_have_an_exception_of_their_own() {
    assertEquals("no convergence", new SolveException("no convergence").getMessage());
  }

  private static void refused(String message, Executable guarded) {
    assertEquals(message, assertThrows(ModelException.class, guarded).getMessage());
  }
}
