package rungwork.material;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.csv.CsvFile;
import rungwork.fault.ModelException;

class MaterialTableTest {
  private static final Path FOLDER = Path.of("data");

  private static final String HEAD =
      "grade,yield_mpa,ultimate_mpa,youngs_modulus_gpa,poissons_ratio,density_kg_m3,"
          + "elongation_percent,welded_yield_mpa,source,edition,tag,note";

  @Test
  void each_row_is_a_grade() throws IOException {
    List<Material> grades =
        read(
            HEAD,
            "Mild,235,360,210,0.30,7850,24,235,A Standard,2006,read,",
            "Plain,,,200,0.30,7850,,,Another,08a,from memory,\"wall, any\"");
    assertEquals(
        "Mild: yield 235 MPa, beside welds 235 MPa, ultimate 360 MPa, E 210 GPa; A Standard,"
            + " edition 2006 (read in the source)",
        grades.get(0).toString());
    assertEquals(
        "Plain: no guaranteed strength, E 200 GPa; Another, edition 08a; wall, any (from memory)",
        grades.get(1).toString());
  }

  @Test
  void a_bad_row_is_refused_with_file_line_and_column() {
    String good = "Mild,235,360,210,0.30,7850,24,235,A Standard,2006,read,";
    assertAll(
        () ->
            refused(
                "shop.csv line 3, yield_mpa: \"23O\" is not a number",
                good,
                "Bad,23O,360,210,0.30,7850,24,235,A Standard,2006,read,"),
        () ->
            refused(
                "shop.csv line 2, ultimate_mpa: nothing stands there",
                "Bad,235,,210,0.30,7850,24,235,A Standard,2006,read,"),
        () ->
            refused(
                "shop.csv line 2, edition: nothing stands there",
                "Bad,235,360,210,0.30,7850,24,235,A Standard,,read,"),
        () ->
            refused(
                "shop.csv line 2, tag: guess is none of read, second-hand, from memory",
                "Bad,235,360,210,0.30,7850,24,235,A Standard,2006,guess,"),
        () ->
            refused(
                "shop.csv line 2, grade: nothing stands there",
                ",235,360,210,0.30,7850,24,235,A Standard,2006,read,"),
        () ->
            refused(
                "shop.csv line 2, note: the row has no such column",
                "Bad,235,360,210,0.30,7850,24,235,A Standard,2006,read"),
        () ->
            refused(
                "shop.csv line 2, Bad: ultimate strength 200.0 MPa is below the yield strength"
                    + " 235.0 MPa",
                "Bad,235,200,210,0.30,7850,24,235,A Standard,2006,read,"),
        () -> refused("shop.csv line 3, grade: Mild stands twice", good, good));
  }

  @Test
  void the_descriptor_names_the_columns_of_the_table_in_order() throws IOException {
    List<String> described = new ArrayList<>();
    for (JsonElement field : fields()) {
      described.add(field.getAsJsonObject().get("name").getAsString());
    }
    assertEquals(
        Files.readAllLines(FOLDER.resolve("materials.csv")).get(0), String.join(",", described));
    assertEquals(HEAD, String.join(",", described));
  }

  @Test
  void the_descriptor_gives_every_number_its_unit() throws IOException {
    for (JsonElement element : fields()) {
      JsonObject field = element.getAsJsonObject();
      assertEquals(
          field.get("type").getAsString().equals("number"), field.has("unit"), field.toString());
    }
  }

  private static JsonArray fields() throws IOException {
    JsonObject descriptor =
        JsonParser.parseString(Files.readString(FOLDER.resolve("datapackage.json")))
            .getAsJsonObject();
    JsonObject materials = descriptor.getAsJsonArray("resources").get(0).getAsJsonObject();
    assertEquals("materials.csv", materials.get("path").getAsString());
    return materials.getAsJsonObject("schema").getAsJsonArray("fields");
  }

  private static List<Material> read(String... lines) throws IOException {
    byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    return new MaterialTable(CsvFile.of("shop.csv", new ByteArrayInputStream(text))).read();
  }

  private static void refused(String message, String... rows) {
    String[] lines = new String[rows.length + 1];
    lines[0] = HEAD;
    System.arraycopy(rows, 0, lines, 1, rows.length);
    assertEquals(message, assertThrows(ModelException.class, () -> read(lines)).getMessage());
  }
}
