package rungwork.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;
import rungwork.fault.Guard;

/**
 * A CSV file of sizes; columns and units as {@code data/datapackage.json} describes them.
 *
 * @param file the file
 * @param table the name of the table that it holds
 */
record SizeFile(CsvFile file, String table) {
  /** Names of the tables that travel with Rungwork, and their files. */
  static final Map<String, String> BUILT_IN = builtIn();

  private static Map<String, String> builtIn() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("square tube EN 10219-2", "square-tubes.csv");
    files.put("rectangular tube EN 10219-2", "rectangular-tubes.csv");
    files.put("round tube EN 10219-2", "round-tubes.csv");
    files.put("round tube EN 10305", "precision-tubes.csv");
    files.put("channel UPE EN 10365", "channels-upe.csv");
    files.put("channel PFC EN 10365", "channels-pfc.csv");
    files.put("channel UPN DIN 1026-1", "channels-upn.csv");
    files.put("channel C ASTM A6", "channels-c.csv");
    files.put("equal angle EN 10056-1", "equal-angles.csv");
    files.put("unequal angle EN 10056-1", "unequal-angles.csv");
    files.put("flat EN 10058", "flats.csv");
    files.put("square tube inch", "inch-square-tubes.csv");
    files.put("rectangular tube inch", "inch-rectangular-tubes.csv");
    files.put("round tube inch", "inch-round-tubes.csv");
    files.put("square HSS AISC", "hss-square-tubes.csv");
    files.put("flat inch", "inch-flats.csv");
    return Collections.unmodifiableMap(files);
  }

  static SizeTable builtIn(String name) {
    String table = SizeName.choose("size table", name, List.copyOf(BUILT_IN.keySet()));
    String file = BUILT_IN.get(table);
    try (InputStream stream = SizeFile.class.getResourceAsStream("/rungwork/data/" + file)) {
      return new SizeFile(CsvFile.of(file, stream), table).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SizeTable own(Path path) {
    CsvFile file = CsvFile.read("list of sizes", path);
    return new SizeFile(file, file.name().replaceFirst("\\.[^.]*$", "")).read();
  }

  /** The table in the file's order. */
  SizeTable read() {
    file.columns().stream().filter(column -> !column.isEmpty()).forEach(this::refuseUnknown);
    List<SizeTable.Size> sizes = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (CsvRow cells : file.rows()) {
      SizeTable.Size size = new SizeRow(file, cells).size();
      if (!names.add(size.name().toLowerCase(Locale.ROOT))) {
        throw cells.refusal("size", size.name() + " stands twice");
      }
      sizes.add(size);
    }
    return new SizeTable(Guard.name("size table", table), sizes);
  }

  private void refuseUnknown(String column) {
    if (!SizeRow.knows(column)) {
      throw file.refusal(column, "no such column is known; known are " + SizeRow.known());
    }
  }
}
