package rungwork.report;

import java.util.Comparator;
import java.util.List;
import rungwork.frame.Mass;
import rungwork.quantity.Units;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;

/**
 * What a ladder carries, as circles whose areas are in proportion to the masses.
 *
 * @param masses the heaviest first; the ladder's own members are not among them
 */
record Carried(List<Mass> masses) {
  private static final double LARGEST = 44;

  static Carried by(Ladder ladder, Vehicle vehicle) {
    List<String> own = ladder.masses().stream().map(Mass::name).toList();
    return new Carried(
        vehicle.masses().stream()
            .filter(mass -> !own.contains(mass.name()))
            .sorted(Comparator.comparingDouble(mass -> -mass.kilograms()))
            .toList());
  }

  /** A mass's radius [px]. */
  double radius(Mass mass) {
    return LARGEST * Math.sqrt(mass.kilograms() / masses.get(0).kilograms());
  }

  static String words(Mass mass, Units units) {
    return mass.name() + " " + Numbers.mass(mass.kilograms(), units);
  }
}
