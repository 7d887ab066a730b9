package rungwork.material;

import java.util.List;
import java.util.Map;
import rungwork.csv.CsvRow;
import rungwork.fault.ModelException;
import rungwork.material.RatedMaterial.Strength;

/**
 * One row of a table of grades. A grade whose strengths are all empty has none guaranteed.
 *
 * @param file the file's name, for messages
 * @param cells the row
 */
record MaterialRow(String file, CsvRow cells) {
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
          ? new RatedMaterial(cells.required("grade"), elasticity(), strength(), source())
          : new UnratedMaterial(cells.required("grade"), elasticity(), source());
    } catch (ModelException wrong) {
      boolean placed = wrong.getMessage().startsWith(file + " line ");
      throw placed ? wrong : cells.refusal(cells.text("grade"), wrong.getMessage());
    }
  }

  private boolean hasStrength() {
    return !STRENGTHS.stream().allMatch(column -> cells.text(column).isEmpty());
  }

  private Elasticity elasticity() {
    return new Elasticity(
        cells.number("youngs_modulus_gpa") * GPA,
        cells.number("poissons_ratio"),
        cells.number("density_kg_m3"));
  }

  private Strength strength() {
    return new Strength(
        cells.number("yield_mpa") * MPA,
        cells.number("ultimate_mpa") * MPA,
        cells.number("welded_yield_mpa") * MPA,
        cells.number("elongation_percent") * PERCENT);
  }

  private Source source() {
    Source.Tag tag = TAGS.get(cells.required("tag"));
    if (tag == null) {
      throw cells.refusal("tag", cells.text("tag") + " is none of read, second-hand, from memory");
    }
    String reference = cells.required("source") + ", edition " + cells.required("edition");
    return new Source(
        cells.text("note").isEmpty() ? reference : reference + "; " + cells.text("note"), tag);
  }
}
