package rungwork.material;

import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import rungwork.fault.ModelException;
import rungwork.material.RatedMaterial.Strength;

/**
 * One row of a table of grades. A grade whose strengths are all empty has none guaranteed.
 *
 * @param file the file's name, for messages
 * @param line the line that the row ends on, for messages
 * @param cells the row
 */
record MaterialRow(String file, long line, CSVRecord cells) {
  private static final double MPA = 1e6;
  private static final double GPA = 1e9;
  private static final double PERCENT = 0.01;

  private static final List<String> STRENGTHS =
      List.of("yield_mpa", "ultimate_mpa", "welded_yield_mpa", "elongation_percent");

  private static final Map<String, Source.Tag> TAGS =
      Map.of(
          "read", Source.Tag.READ,
          "second-hand", Source.Tag.SECOND_HAND,
          "from memory", Source.Tag.FROM_MEMORY);

  /** The grade that the row describes. */
  Material material() {
    try {
      return hasStrength()
          ? new RatedMaterial(required("grade"), elasticity(), strength(), source())
          : new UnratedMaterial(required("grade"), elasticity(), source());
    } catch (ModelException wrong) {
      throw wrong.getMessage().startsWith(file)
          ? wrong
          : refusal(cell("grade"), wrong.getMessage());
    }
  }

  /** A refusal that names file, line and column. */
  ModelException refusal(String column, String reason) {
    return new ModelException(file + " line " + line + ", " + column + ": " + reason);
  }

  private boolean hasStrength() {
    return !STRENGTHS.stream().allMatch(column -> cell(column).isEmpty());
  }

  private Elasticity elasticity() {
    return new Elasticity(
        number("youngs_modulus_gpa") * GPA, number("poissons_ratio"), number("density_kg_m3"));
  }

  private Strength strength() {
    return new Strength(
        number("yield_mpa") * MPA,
        number("ultimate_mpa") * MPA,
        number("welded_yield_mpa") * MPA,
        number("elongation_percent") * PERCENT);
  }

  private Source source() {
    Source.Tag tag = TAGS.get(required("tag"));
    if (tag == null) {
      throw refusal("tag", cell("tag") + " is none of read, second-hand, from memory");
    }
    String reference = required("source") + ", edition " + required("edition");
    return new Source(cell("note").isEmpty() ? reference : reference + "; " + cell("note"), tag);
  }

  private double number(String column) {
    String text = required(column);
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw refusal(column, "\"" + text + "\" is not a number");
    }
  }

  private String required(String column) {
    if (cell(column).isEmpty()) {
      throw refusal(column, "nothing stands there");
    }
    return cell(column);
  }

  private String cell(String column) {
    if (!cells.isSet(column)) {
      throw refusal(column, "the row has no such column");
    }
    return cells.get(column).strip();
  }
}
