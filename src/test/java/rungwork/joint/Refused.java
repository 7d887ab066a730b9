package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;
import rungwork.fault.ModelException;

/** Refusals with their full text. */
final class Refused {
  private Refused() {}

  static void with(String message, Executable maker) {
    assertEquals(message, assertThrows(ModelException.class, maker).getMessage());
  }
}
