package rungwork.joint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/** The tables of sizes and strengths, {@code data/bolts.csv} and {@code data/bolt-classes.csv}. */
final class BoltTables {
  private static final List<CsvRow> SIZES = rows("bolts.csv");
  private static final List<CsvRow> CLASSES = rows("bolt-classes.csv");

  private BoltTables() {}

  static Bolt.Size size(String name) {
    return SIZES.stream()
        .filter(row -> row.text("size").equalsIgnoreCase(name.strip()))
        .findFirst()
        .map(BoltTables::size)
        .orElseThrow(
            () ->
                new ModelException(
                    "bolt size " + name + " is not in the table; it has " + names(SIZES, "size")));
  }

  static Bolt.Strength strength(String name, Bolt.Size size) {
    List<CsvRow> named =
        CLASSES.stream().filter(row -> row.text("class").equalsIgnoreCase(name.strip())).toList();
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

  private static boolean exists(CsvRow row, Bolt.Size size) {
    boolean iso = row.text("series").equals("iso");
    return iso == size.name().startsWith("M")
        && row.number("above_mm") * 1e-3 < size.diameter()
        && size.diameter() <= row.number("to_mm") * 1e-3;
  }

  private static String range(List<CsvRow> rows) {
    CsvRow first = rows.get(0);
    CsvRow last = rows.get(rows.size() - 1);
    String thread = first.text("series").equals("iso") ? "metric" : "inch";
    return "it is for "
        + thread
        + " threads above "
        + Scale.MM.show(first.number("above_mm") * 1e-3)
        + " to "
        + Scale.MM.show(last.number("to_mm") * 1e-3);
  }

  private static Bolt.Size size(CsvRow row) {
    Optional<Bolt.Holes> holes =
        row.text("hole_fine_mm").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Bolt.Holes(
                    row.number("hole_fine_mm") * 1e-3,
                    row.number("hole_medium_mm") * 1e-3,
                    row.number("hole_coarse_mm") * 1e-3));
    return new Bolt.Size(
        row.text("size"),
        row.number("diameter_mm") * 1e-3,
        row.number("stress_area_mm2") * 1e-6,
        row.number("across_flats_mm") * 1e-3,
        holes,
        row.text("source"));
  }

  private static Bolt.Strength strength(CsvRow row) {
    Bolt.Minimum minimum =
        new Bolt.Minimum(
            row.number("ultimate_mpa") * 1e6,
            row.number("yield_mpa") * 1e6,
            row.number("proof_mpa") * 1e6);
    boolean covered = row.text("in_en_1993_1_8").equals("yes");
    return new Bolt.Strength(
        row.text("class"),
        minimum,
        row.number("nominal_ultimate_mpa") * 1e6,
        row.number("nominal_yield_mpa") * 1e6,
        new Bolt.ShearRule(row.number("alpha_v_thread"), covered),
        row.text("source"));
  }

  private static String names(List<CsvRow> rows, String column) {
    return String.join(", ", rows.stream().map(row -> row.text(column)).distinct().toList());
  }

  private static List<CsvRow> rows(String file) {
    try (InputStream table = BoltTables.class.getResourceAsStream("/rungwork/data/" + file)) {
      return CsvFile.of(file, table).rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
