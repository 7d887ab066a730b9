package rungwork.section;

/**
 * Where a section that yields all over changes from tension to compression: a level of its outline,
 * and what the outline gives for it.
 *
 * @param outline the section's outline, z square to the neutral axis
 */
record NeutralAxis(Outline outline) {
  /** Trials after which a level is known for certain; most take less than ten. */
  private static final int TRIALS = 100;

  /** An area that is off by this part is met: rounding [1]. */
  private static final double ROUNDING = 1e-15;

  /** Bending that changes the strain by less than this part counts as none: rounding [1]. */
  private static final double NO_BEND = 1e-12;

  /**
   * The plastic modulus for bending about y, ∫|z − level| dA about the level that halves the area
   * [m³].
   */
  double modulus() {
    return modulus(0);
  }

  /**
   * The same when part of the area carries a force: ∫ ± (z − centroid) dA, positive above the level
   * that leaves that part of the area over [m³].
   *
   * @param share of the area that the force takes, from −1 in compression to 1 in tension [1]
   * @return moment about y over the yield strength
   */
  double modulus(double share) {
    Moments all = outline.moments();
    double level = level(all.area() * (1 + share) / 2, all.area());
    Half above = outline.above(level);
    double centre = all.z() / all.area();
    return 2 * (above.moment() + (level - centre) * above.area());
  }

  /** ∫|stretch + bendY·z − bendZ·y| dA, as {@link Outline#plasticWork} [m²]. */
  double work(double stretch, double bendY, double bendZ) {
    double bend = Math.hypot(bendY, bendZ);
    Moments all = outline.moments();
    if (bend * outline.reach(Spot::size) <= NO_BEND * Math.abs(stretch)) {
      return Math.abs(stretch) * all.area();
    }
    Outline along = outline.turned(Turn.by(Math.atan2(-bendZ, bendY)));
    double level = -stretch / bend;
    return bend * (2 * along.above(level).moment() - along.moments().z() + level * all.area());
  }

  /** The level with so much area above it, by chords; an end that stays counts half (Illinois). */
  private double level(double wanted, double area) {
    double low = -outline.reach(Spot::z);
    double high = -low;
    double tooMuch = area - wanted;
    double tooLittle = -wanted;
    double level = low;
    int moved = 0;
    for (int i = 0; i < TRIALS; i++) {
      level = low + (high - low) * tooMuch / (tooMuch - tooLittle);
      double off = outline.above(level).area() - wanted;
      if (Math.abs(off) <= ROUNDING * area || !(level > low && level < high)) {
        return level;
      }
      if (off > 0) {
        low = level;
        tooMuch = off;
        tooLittle = moved > 0 ? tooLittle / 2 : tooLittle;
        moved = 1;
      } else {
        high = level;
        tooLittle = off;
        tooMuch = moved < 0 ? tooMuch / 2 : tooMuch;
        moved = -1;
      }
    }
    return level;
  }
}
