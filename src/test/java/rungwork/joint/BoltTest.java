package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoltTest {
  private static final String CLASSES =
      "4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9, grade 1, grade 2, grade 4, grade 5, grade"
          + " 5.2, grade 7, grade 8, grade 8.2";

  @Test
  void class_8_8_is_stronger_above_16_mm() {
    assertEquals(640e6, Bolt.of("M16", "8.8").strength().minimum().yield());
    assertEquals(660e6, Bolt.of("M20", "8.8").strength().minimum().yield());
  }

  @Test
  void a_fine_thread_leaves_a_larger_stress_area() {
    double coarse = Bolt.of("M10", "10.9").size().stressArea();
    assertTrue(Bolt.of("M10x1.25", "10.9").size().stressArea() > coarse);
  }

  @Test
  void names_are_read_whatever_their_case_and_blanks() {
    assertEquals("M10 8.8", Bolt.of(" m10 ", "8.8").toString());
    assertEquals("3/8-16 grade 5", Bolt.of("3/8-16", "Grade 5").toString());
  }

  @Test
  void an_unknown_class_is_refused() {
    Refused.with(
        "bolt class 8.9 is not in the table; it has " + CLASSES, () -> Bolt.of("M10", "8.9"));
  }

  @Test
  void an_unknown_size_is_refused() {
    String sizes =
        "M5, M6, M8, M10, M12, M14, M16, M20, M8x1, M10x1.25, M12x1.25, M12x1.5, M14x1.5,"
            + " M16x1.5, 1/4-20, 1/4-28, 5/16-18, 5/16-24, 3/8-16, 3/8-24, 7/16-14, 7/16-20,"
            + " 1/2-13, 1/2-20, 5/8-11, 5/8-18, 3/4-10, 3/4-16";
    Refused.with("bolt size M11 is not in the table; it has " + sizes, () -> Bolt.of("M11", "8.8"));
  }

  @Test
  void a_grade_of_the_other_kind_of_thread_is_refused() {
    Refused.with(
        "bolt class grade 5 does not exist in size M10; it is for inch threads above 6.000 mm to"
            + " 38.10 mm",
        () -> Bolt.of("M10", "grade 5"));
    Refused.with(
        "bolt class 9.8 does not exist in size M20; it is for metric threads above 0 mm to 16.00"
            + " mm",
        () -> Bolt.of("M20", "9.8"));
  }

  @Test
  void a_thread_wider_than_its_shank_is_refused() {
    Bolt.Size m10 = Bolt.of("M10", "8.8").size();
    Refused.with(
        "stress area 100.0 mm² of odd is not below the area of its shank of 10.00 mm",
        () -> new Bolt.Size("odd", 0.01, 100e-6, 0.016, m10.holes(), "a test"));
    Refused.with(
        "stress area 78.54 mm² of odd is not below the area of its shank of 10.00 mm",
        () -> new Bolt.Size("odd", 0.01, Math.PI * 0.01 * 0.01 / 4, 0.016, m10.holes(), "a test"));
  }

  @Test
  void the_descriptor_names_the_columns_of_both_tables() throws IOException {
    Path folder = Path.of("data");
    JsonObject descriptor =
        JsonParser.parseString(Files.readString(folder.resolve("datapackage.json")))
            .getAsJsonObject();
    for (String file : List.of("bolts.csv", "bolt-classes.csv")) {
      assertEquals(
          Files.readAllLines(folder.resolve(file)).get(0),
          String.join(",", columns(descriptor, file)));
    }
  }

  private static List<String> columns(JsonObject descriptor, String file) {
    List<String> names = new ArrayList<>();
    for (JsonElement resource : descriptor.getAsJsonArray("resources")) {
      if (resource.getAsJsonObject().get("path").getAsString().equals(file)) {
        JsonObject schema = resource.getAsJsonObject().getAsJsonObject("schema");
        schema
            .getAsJsonArray("fields")
            .forEach(field -> names.add(field.getAsJsonObject().get("name").getAsString()));
      }
    }
    return names;
  }
}
