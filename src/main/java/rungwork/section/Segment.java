package rungwork.section;

import java.util.List;

/**
 * A piece of an outline, or of a wall's centre line: straight or a circular arc. Fractions run from
 * 0 at its start to 1 at its end.
 */
public sealed interface Segment permits Line, Arc {
  /** Where it starts. */
  Spot start();

  /** Where it ends. */
  Spot end();

  /** Its length [m]. */
  double length();

  /**
   * The spot at a fraction of its length.
   *
   * @param fraction from 0 at the start to 1 at the end
   * @return the spot
   */
  Spot at(double fraction);

  /** The unit vector along it at a fraction of its length. */
  Spot direction(double fraction);

  /** The integral of the place along the first part of it, ∫y ds and ∫z ds [m²]. */
  Spot lineMoment(double fraction);

  /** Twice the area that the line from the origin sweeps along all of it, ∫(y dz − z dy) [m²]. */
  default double sweep() {
    return sweep(1);
  }

  /** Twice the area that the line from the origin sweeps along the first part of it [m²]. */
  double sweep(double fraction);

  /** Integrals over the area that the line from the origin sweeps along it. */
  Moments moments();

  /**
   * Its share in what a closed outline holds above a level: −∫h dy and −∫h²/2 dy over the parts
   * where the height h above the level is positive (Green's theorem; the level itself adds
   * nothing).
   */
  Half above(double level);

  /** The places where it reaches furthest left, right, up and down, its ends among them. */
  List<Spot> reaches();

  /** The same piece a distance [m] to its right, seen with y to the right and z up. */
  Segment aside(double right);

  /** The same piece run through from its end to its start. */
  Segment backwards();

  /** The same piece moved. */
  Segment moved(Spot by);

  /** The same piece, laid differently. */
  Segment turned(Turn turn);
}
