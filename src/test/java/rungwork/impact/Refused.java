package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;
import rungwork.fault.ModelException;

/** The full text of a refusal. */
final class Refused {
  private Refused() {}

  static void with(String message, Executable what) {
    assertEquals(message, assertThrows(ModelException.class, what).getMessage());
  }
}
