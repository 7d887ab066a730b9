package rungwork.check;

import java.util.Optional;
import rungwork.material.RatedMaterial;

/**
 * Whether EN 1993-1-1:2005 covers a material: steels of grades S235 to S460 (table 3.1), and to
 * S700 by EN 1993-1-12:2007 (both from memory).
 */
final class SteelRange {
  /** The stiffness of steel [Pa]; design rules take 200 or 210 GPa. */
  private static final double SOFTEST = 190e9;

  private static final double STIFFEST = 220e9;

  /** Yield strength of grade S700 [Pa]. */
  private static final double STRONGEST = 700e6;

  private SteelRange() {}

  /** Why the rules do not cover it, or nothing when they do. */
  static Optional<String> of(RatedMaterial material) {
    double stiffness = material.elasticity().youngsModulus();
    if (stiffness < SOFTEST || stiffness > STIFFEST) {
      return Optional.of("outside EN 1993-1-1: " + material.name() + " is not steel");
    }
    if (material.strength().yield() > STRONGEST) {
      return Optional.of(
          "outside EN 1993-1-1 and EN 1993-1-12: "
              + material.name()
              + " is stronger than grade S700, the last that they cover");
    }
    return Optional.empty();
  }
}
