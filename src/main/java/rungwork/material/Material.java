package rungwork.material;

import java.util.List;

/**
 * What a member is made of. Its stiffness is always known; its strength only if somebody guarantees
 * it: {@link RatedMaterial} has one, {@link UnratedMaterial} refuses to give one.
 */
public sealed interface Material permits RatedMaterial, UnratedMaterial {
  /**
   * The grade's name.
   *
   * @return for example {@code S355J2H}
   */
  String name();

  /**
   * Stiffness and density.
   *
   * @return the elastic constants
   */
  Elasticity elasticity();

  /**
   * Where the figures come from.
   *
   * @return the source
   */
  Source source();

  /**
   * All grades of {@code data/materials.csv}, in its order.
   *
   * @return the grades
   */
  static List<Material> catalogue() {
    return Catalogue.GRADES;
  }

  /**
   * A grade of the catalogue, with or without a guaranteed strength.
   *
   * @param grade its name; capitals, blanks and hyphens do not matter
   * @return the material
   */
  static Material named(String grade) {
    return Catalogue.named(grade);
  }

  /**
   * A grade of the catalogue that has a guaranteed strength.
   *
   * @param grade its name; capitals, blanks and hyphens do not matter
   * @return the material
   */
  static RatedMaterial rated(String grade) {
    return Catalogue.rated(grade);
  }

  /**
   * A grade of the catalogue that has none, for {@link UnratedMaterial#stating}.
   *
   * @param grade its name; capitals, blanks and hyphens do not matter
   * @return the material
   */
  static UnratedMaterial unrated(String grade) {
    return Catalogue.unrated(grade);
  }
}
