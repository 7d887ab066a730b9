package rungwork.joint;

import rungwork.material.RatedMaterial;

/** What a weld's heat leaves of a material's strength. */
final class Welded {
  private Welded() {}

  /**
   * Ultimate strength beside a weld: lowered in the same proportion as the yield strength (common
   * practice, no source; on the safe side, heat lowers the yield strength more).
   *
   * @param material the material
   * @return fu beside a weld [Pa]
   */
  static double ultimate(RatedMaterial material) {
    RatedMaterial.Strength strength = material.strength();
    return strength.ultimate() * strength.weldedYield() / strength.yield();
  }
}
