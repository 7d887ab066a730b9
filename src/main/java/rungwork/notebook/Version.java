package rungwork.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which Rungwork this is. */
final class Version {
  private Version() {}

  /** The version that the build wrote beside this class. */
  static String number() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String banner() {
    return "Rungwork " + number() + ": a screening calculation, not an approval";
  }
}
