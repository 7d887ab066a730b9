package rungwork.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rungwork.csv.CsvFile;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;

/** The grades that travel with Rungwork, read once. */
final class Catalogue {
  private static final String FILE = "materials.csv";

  static final List<Material> GRADES = load();

  private Catalogue() {}

  static Material named(String grade) {
    String wanted = plain(Guard.name("grade", grade));
    return GRADES.stream()
        .filter(material -> plain(material.name()).equals(wanted))
        .findFirst()
        .orElseThrow(
            () -> new ModelException("unknown grade " + grade.strip() + "; known are " + names()));
  }

  static RatedMaterial rated(String grade) {
    if (named(grade) instanceof RatedMaterial rated) {
      return rated;
    }
    String name = named(grade).name();
    throw new ModelException(
        name
            + " has no guaranteed strength; state it: Material.unrated(\""
            + name
            + "\").stating(MPa(…), MPa(…), \"mill certificate …\")");
  }

  static UnratedMaterial unrated(String grade) {
    if (named(grade) instanceof UnratedMaterial unrated) {
      return unrated;
    }
    String name = named(grade).name();
    throw new ModelException(
        name + " has a guaranteed strength; take Material.rated(\"" + name + "\")");
  }

  private static List<Material> load() {
    try (InputStream stream = Catalogue.class.getResourceAsStream("/rungwork/data/" + FILE)) {
      return new MaterialTable(CsvFile.of(FILE, stream)).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String names() {
    return GRADES.stream().map(Material::name).collect(Collectors.joining(", "));
  }

  private static String plain(String grade) {
    return grade.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
  }
}
