package rungwork.notebook;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which Rungwork this is. */
final class Version {
  private Version() {}

  /** The version that the build wrote beside this class. */
  static String number() {
    return read("version.txt").strip();
  }

  private static String read(String resource) {
    try (InputStream in = Version.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The version of the tables of materials, bolts and sizes, from their descriptor. */
  static String ofData() {
    JsonObject descriptor =
        JsonParser.parseString(read("/rungwork/data/datapackage.json")).getAsJsonObject();
    return descriptor.get("version").getAsString();
  }

  /** What a result was made with. */
  static String ofProgramAndData() {
    return "Rungwork " + number() + ", tables of materials and sizes " + ofData();
  }

  static String banner() {
    return "Rungwork " + number() + ": a screening calculation, not an approval";
  }
}
