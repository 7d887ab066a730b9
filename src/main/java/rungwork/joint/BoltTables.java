package rungwork.joint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/** The tables of sizes and strengths, {@code data/bolts.csv} and {@code data/bolt-classes.csv}. */
final class BoltTables {
  private static final List<CSVRecord> SIZES = rows("bolts.csv");
  private static final List<CSVRecord> CLASSES = rows("bolt-classes.csv");

  private BoltTables() {}

  static Bolt.Size size(String name) {
    return SIZES.stream()
        .filter(row -> row.get("size").equalsIgnoreCase(name.strip()))
        .findFirst()
        .map(BoltTables::size)
        .orElseThrow(
            () ->
                new ModelException(
                    "bolt size " + name + " is not in the table; it has " + names(SIZES, "size")));
  }

  static Bolt.Strength strength(String name, Bolt.Size size) {
    List<CSVRecord> named =
        CLASSES.stream().filter(row -> row.get("class").equalsIgnoreCase(name.strip())).toList();
    if (named.isEmpty()) {
      throw new ModelException(
          "bolt class " + name + " is not in the table; it has " + names(CLASSES, "class"));
    }
    return named.stream()
        .filter(row -> exists(row, size))
        .findFirst()
        .map(BoltTables::strength)
        .orElseThrow(
            () ->
                new ModelException(
                    "bolt class "
                        + name
                        + " does not exist in size "
                        + size.name()
                        + "; "
                        + range(named)));
  }

  private static boolean exists(CSVRecord row, Bolt.Size size) {
    boolean iso = row.get("series").equals("iso");
    return iso == size.name().startsWith("M")
        && number(row, "above_mm") * 1e-3 < size.diameter()
        && size.diameter() <= number(row, "to_mm") * 1e-3;
  }

  private static String range(List<CSVRecord> rows) {
    CSVRecord first = rows.get(0);
    CSVRecord last = rows.get(rows.size() - 1);
    String thread = first.get("series").equals("iso") ? "metric" : "inch";
    return "it is for "
        + thread
        + " threads above "
        + Scale.MM.show(number(first, "above_mm") * 1e-3)
        + " to "
        + Scale.MM.show(number(last, "to_mm") * 1e-3);
  }

  private static Bolt.Size size(CSVRecord row) {
    Optional<Bolt.Holes> holes =
        row.get("hole_fine_mm").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Bolt.Holes(
                    number(row, "hole_fine_mm") * 1e-3,
                    number(row, "hole_medium_mm") * 1e-3,
                    number(row, "hole_coarse_mm") * 1e-3));
    return new Bolt.Size(
        row.get("size"),
        number(row, "diameter_mm") * 1e-3,
        number(row, "stress_area_mm2") * 1e-6,
        number(row, "across_flats_mm") * 1e-3,
        holes,
        row.get("source"));
  }

  private static Bolt.Strength strength(CSVRecord row) {
    Bolt.Minimum minimum =
        new Bolt.Minimum(
            number(row, "ultimate_mpa") * 1e6,
            number(row, "yield_mpa") * 1e6,
            number(row, "proof_mpa") * 1e6);
    boolean covered = row.get("in_en_1993_1_8").equals("yes");
    return new Bolt.Strength(
        row.get("class"),
        minimum,
        number(row, "nominal_ultimate_mpa") * 1e6,
        number(row, "nominal_yield_mpa") * 1e6,
        new Bolt.ShearRule(number(row, "alpha_v_thread"), covered),
        row.get("source"));
  }

  private static String names(List<CSVRecord> rows, String column) {
    return String.join(", ", rows.stream().map(row -> row.get(column)).distinct().toList());
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static List<CSVRecord> rows(String file) {
    CSVFormat withHead = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream table = BoltTables.class.getResourceAsStream("/rungwork/data/" + file);
        CSVParser parser = CSVParser.parse(table, StandardCharsets.UTF_8, withHead)) {
      return List.copyOf(parser.getRecords());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
