package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.inch;
import static rungwork.quantity.Quantities.mm;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

class SizeTableTest {
  private static final Path FOLDER = Path.of("data");

  @TempDir Path folder;

  static List<String> names() {
    return SizeTable.names();
  }

  @ParameterizedTest
  @CsvSource({
    "square tube EN 10219-2, 50x50x3, square tube 50x50x3",
    "Square tube EN10219-2, 50 × 50 × 3 mm, square tube 50x50x3",
    "square tube EN 10219-2, 50x3, square tube 50x50x3",
    "rectangular tube EN 10219-2, 80x40x3, rectangular tube 80x40x3",
    "round tube EN 10219-2, 48.3x3, round tube 48.3x3",
    "square tube inch, 2x2x.120, square tube 2x2x0.120 in",
    "square tube inch, 1 1/2 x 1 1/2 x 3/16 in, square tube 1-1/2x1-1/2x3/16 in",
    "square tube inch, 2\" x 2\" x 1/4\", square tube 2x2x1/4 in",
    "square HSS AISC, 2x2x1/8, HSS 2x2x1/8",
    "channel UPE EN 10365, upe100, UPE 100",
    "channel UPN DIN 1026-1, upn 80, UPN 80",
    "channel C ASTM A6, C 6 x 8.2, C6x8.2",
    "channel C ASTM A6, 3x4.1, C3x4.1",
    "channel UPE EN 10365, 80, UPE 80",
    "channel PFC EN 10365, 100 x 50 x 10, PFC 100x50x10",
    "equal angle EN 10056-1, 50x5, angle 50x50x5",
    "unequal angle EN 10056-1, 60 x 40 x 5 mm, angle 60x40x5"
  })
  void a_size_is_read_as_the_trade_writes_it(String table, String size, String name) {
    assertEquals(name, SizeTable.of(table).at(size).name());
  }

  @Test
  void a_size_is_the_section_that_its_dimensions_make() {
    assertEquals(
        Section.squareTube(mm(50), mm(3)).properties(),
        SizeTable.of("square tube EN 10219-2").at("50x50x3").properties());
    assertEquals(
        Section.rectangularTube(inch(3), inch(2), inch("3/16"), inch("3/8")).properties().iy(),
        SizeTable.of("rectangular tube inch").at("3x2x3/16").properties().iy(),
        1e-18);
  }

  @Test
  void a_wrong_size_is_refused_with_the_nearest() {
    assertAll(
        () ->
            refused(
                "square tube EN 10219-2 has no size 50x50x3.2; nearest are 50x50x3, 50x50x4,"
                    + " 50x50x2.5",
                () -> SizeTable.of("square tube EN 10219-2").at("50x50x3.2")),
        () ->
            refused(
                "square tube inch has no size 2x2x1/8; nearest are 2x2x0.120, 2x2x0.095,"
                    + " 1-3/4x1-3/4x0.120",
                () -> SizeTable.of("square tube inch").at("2x2x1/8")),
        () ->
            refused(
                "square tube inch has no size 50x50x3 mm; nearest are 2x2x0.120, 2x2x0.095,"
                    + " 1-3/4x1-3/4x0.120",
                () -> SizeTable.of("square tube inch").at("50x50x3 mm")),
        () ->
            refused(
                "channel UPE EN 10365 has no size UPE 90; nearest are UPE 100, UPE 80, UPE 120",
                () -> SizeTable.of("channel UPE EN 10365").at("UPE 90")),
        () ->
            refused(
                "square tube EN 10219-2 has no size 50; its sizes are written like 20x20x2",
                () -> SizeTable.of("square tube EN 10219-2").at("50")),
        () ->
            refused(
                "square tube EN 10219-2 has no size big; its sizes are written like 20x20x2",
                () -> SizeTable.of("square tube EN 10219-2").at("big")));
  }

  @Test
  void a_size_given_the_other_way_round_is_refused_with_the_way_to_turn_it() {
    refused(
        "rectangular tube EN 10219-2 has no size 30x50x3; it has 50x30x3, which turned() lays on"
            + " its side",
        () -> SizeTable.of("rectangular tube EN 10219-2").at("30x50x3"));
  }

  @Test
  void a_wrong_table_is_refused_with_the_likest_and_all_names() {
    refused(
        "there is no size table sqare tube EN10219; did you mean square tube EN 10219-2? There are "
            + String.join(", ", SizeTable.names()),
        () -> SizeTable.of("sqare tube EN10219"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void every_size_of_every_table_is_found_by_its_own_name_and_has_a_source(String name) {
    SizeTable table = SizeTable.of(name);
    for (SizeTable.Size size : table.sizes()) {
      assertEquals(size.section().name(), table.at(size.name()).name());
      assertTrue(size.source().length() > 10, size.source());
      assertTrue(size.tag() != SizeTable.Tag.OWN, size.name());
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void what_was_only_recalled_or_is_custom_is_not_called_read(String name) {
    for (SizeTable.Size size : SizeTable.of(name).sizes()) {
      boolean read = size.source().contains("read in a reproduction");
      assertEquals(read, size.tag() == SizeTable.Tag.READ, size::toString);
    }
  }

  @Test
  void a_size_shows_its_section_and_its_source() {
    assertEquals(
        "square tube 50x50x3: A 5.408 cm², Iy 19.47 cm⁴, Iz 19.47 cm⁴, It 32.13 cm⁴, Wel,y 7.787"
            + " cm³, Wel,z 7.787 cm³; EN 10219-2:1997, table of square sections (read in a"
            + " reproduction)",
        SizeTable.of("square tube EN 10219-2").size("50x50x3").toString());
  }

  @Test
  void an_own_list_mixes_shapes_and_units() throws IOException {
    Path file = folder.resolve("rack behind the shed.csv");
    Files.writeString(
        file,
        """
        size,shape,side_mm,depth_mm,flange_mm,wall_mm,wall_in,outside_in,inside_mm
        40x40x3,square tube,40,,,3,,,
        C80,folded channel,,80,40,3,,,3
        1-1/2x0.095,round tube,,,,,0.095,1.5,
        """);
    SizeTable rack = SizeTable.read(file);
    assertEquals("rack behind the shed: 40x40x3, C80, 1-1/2x0.095", rack.toString());
    assertEquals(
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).properties(),
        rack.at("C80").properties());
    assertEquals("round tube 1-1/2x0.095 in", rack.at("1-1/2 x .095").name());
    assertEquals(SizeTable.Tag.OWN, rack.size("40x3").tag());
    assertEquals("rack behind the shed.csv", rack.size("40x3").source());
  }

  @Test
  void a_bad_row_is_refused_with_file_line_and_column() {
    String good = "40x40x3,square tube,40,3,read";
    assertAll(
        () ->
            bad(
                "rack.csv line 3, wall_mm: \"3O\" is not a number",
                good,
                "50x50x3,square tube,50,3O,read"),
        () ->
            bad(
                "rack.csv line 2, side_mm: nothing stands there, nor in inches",
                "50x50x3,square tube,,3,read"),
        () ->
            bad(
                "rack.csv line 2, shape: hexagon is none of square tube, rectangular tube, round"
                    + " tube, parallel channel, eight percent channel, one in six channel, folded"
                    + " channel, angle, flat",
                "50x50x3,hexagon,50,3,read"),
        () ->
            bad(
                "rack.csv line 2, tag: guess is none of read, memory, practice, own",
                "50x50x3,square tube,50,3,guess"),
        () -> bad("rack.csv line 2, size: nothing stands there", ",square tube,50,3,read"),
        () -> bad("rack.csv line 2, tag: the row has no such column", "5,square tube,50,3"),
        () ->
            bad(
                "rack.csv line 2, 5x5x3: wall 3.000 mm leaves no bore in a tube of 5.000 mm by"
                    + " 5.000 mm; the wall must stay below 2.500 mm",
                "5x5x3,square tube,5,3,read"),
        () ->
            bad(
                "rack.csv line 2, side_mm: \"Infinity\" is not a number",
                "50x50x3,square tube,Infinity,3,read"),
        () ->
            bad(
                "rack.csv line 2, wall_mm: \"3,2\" is not a number; write the decimal sign as a"
                    + " point",
                "50x50x3,square tube,50,\"3,2\",read"),
        () ->
            bad(
                "rack.csv line 2, column 6: \"half a crown\" stands under no name",
                "50x50x3,square tube,50,3,read,half a crown"),
        () -> bad("rack.csv line 4, size: 40X40X3 stands twice", good, "", good.toUpperCase()),
        () -> bad("rack.csv line 3, size: 40x40x3 stands twice", good, good));
  }

  @Test
  void a_dimension_without_a_use_or_given_twice_is_refused() throws IOException {
    Path file = folder.resolve("rack.csv");
    Files.writeString(
        file, "size,shape,side_mm,side_in,wall_mm,height_mm\n40x3,square tube,40,,3,60\n");
    refused("rack.csv line 2, height_mm: a square tube has no height", () -> SizeTable.read(file));
    Files.writeString(
        file, "size,shape,side_mm,side_in,wall_mm,height_mm\n40x3,square tube,40,1.5,3,\n");
    refused(
        "rack.csv line 2, side_in: stands beside side_mm; give one of the two",
        () -> SizeTable.read(file));
  }

  @Test
  void a_figure_printed_beside_a_size_is_read_as_carefully() throws IOException {
    Path file = folder.resolve("rack.csv");
    String head = "size,shape,side_mm,wall_mm,area_cm2\n40x3,square tube,40,3,";
    Files.writeString(file, head + "4.2l\n");
    refused("rack.csv line 2, area_cm2: \"4.2l\" is not a number", () -> SizeTable.read(file));
    Files.writeString(file, head + "-4.2\n");
    refused(
        "rack.csv line 2, area_cm2: the printed value \"-4.2\" of A is no number",
        () -> SizeTable.read(file));
  }

  @Test
  void a_table_gives_its_sections_in_its_order_and_how_far_a_printed_figure_lies() {
    SizeTable table = SizeTable.of("square tube EN 10219-2");
    assertEquals(table.sizes().stream().map(SizeTable.Size::section).toList(), table.sections());
    assertTrue(table.sections().size() > 20);
    SizeTable.Printed printed = new SizeTable.Printed("A", Scale.MM, "200", 0.21);
    assertEquals(0.05, printed.difference(), 1e-12);
  }

  @Test
  void a_list_without_its_needed_columns_is_refused() throws IOException {
    Path file = folder.resolve("rack.csv");
    Files.writeString(file, "shape,side_mm,wall_mm\nsquare tube,40,3\n");
    refused("rack.csv line 2, size: there is no such column", () -> SizeTable.read(file));
    Files.writeString(file, "size,shape,side_mm,wall_cm\n40x3,square tube,40,3\n");
    String message = assertThrows(ModelException.class, () -> SizeTable.read(file)).getMessage();
    assertTrue(message.startsWith("rack.csv line 1, wall_cm: no such column is known; known are "));
  }

  @Test
  void a_column_that_means_nothing_is_refused() throws IOException {
    Path file = folder.resolve("rack.csv");
    Files.writeString(file, "size,shape,side_mm,wall\n40x3,square tube,40,3\n");
    refused(
        "rack.csv line 1, wall: no such column is known; known are size, shape, source, tag,"
            + " side_mm or _in, wall_mm or _in, corner_mm or _in, height_mm or _in, width_mm or"
            + " _in, outside_mm or _in, depth_mm or _in, flange_mm or _in, web_mm or _in,"
            + " thickness_mm or _in, root_mm or _in, toe_mm or _in, inside_mm or _in",
        () -> SizeTable.read(file));
  }

  @Test
  void a_list_that_is_not_there_is_refused() {
    Path file = folder.resolve("none.csv");
    refused("there is no list of sizes " + file, () -> SizeTable.read(file));
  }

  @Test
  void the_descriptor_names_the_columns_of_every_table_of_sizes() throws IOException {
    Map<String, List<JsonObject>> described = described();
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> all =
          files
              .map(path -> path.getFileName().toString())
              .filter(name -> name.endsWith(".csv"))
              .sorted()
              .toList();
      assertEquals(all, List.copyOf(described.keySet()));
    }
    for (String file : described.keySet()) {
      assertEquals(
          Files.readAllLines(FOLDER.resolve(file)).get(0),
          String.join(
              ",", described.get(file).stream().map(f -> f.get("name").getAsString()).toList()));
    }
  }

  @Test
  void the_descriptor_gives_every_number_its_unit() throws IOException {
    for (List<JsonObject> fields : described().values()) {
      for (JsonObject field : fields) {
        boolean number = field.get("type").getAsString().equals("number");
        assertEquals(number, field.has("unit"), field.toString());
      }
    }
  }

  private static Map<String, List<JsonObject>> described() throws IOException {
    Map<String, List<JsonObject>> fields = new TreeMap<>();
    JsonObject descriptor =
        JsonParser.parseString(Files.readString(FOLDER.resolve("datapackage.json")))
            .getAsJsonObject();
    for (JsonElement one : descriptor.getAsJsonArray("resources")) {
      JsonObject resource = one.getAsJsonObject();
      JsonObject schema = resource.getAsJsonObject("schema");
      fields.put(
          resource.get("path").getAsString(),
          StreamSupport.stream(schema.getAsJsonArray("fields").spliterator(), false)
              .map(JsonElement::getAsJsonObject)
              .toList());
    }
    return fields;
  }

  private void bad(String message, String... rows) throws IOException {
    Path file = folder.resolve("rack.csv");
    Files.writeString(file, "size,shape,side_mm,wall_mm,tag\n" + String.join("\n", rows) + "\n");
    refused(message, () -> SizeTable.read(file));
  }

  private static void refused(String message, Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}
