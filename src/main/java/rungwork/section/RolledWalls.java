package rungwork.section;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.quantity.Quantities;

/**
 * The walls of a rolled channel with parallel flanges.
 *
 * @param web thickness of the web [m]
 * @param flange thickness of the flanges [m]
 * @param root radius of the fillets between them [m]
 */
public record RolledWalls(double web, double flange, double root) {
  /** Refuses walls that are not above zero and a radius below zero. */
  public RolledWalls {
    Guard.positive("web thickness", web, Scale.MM);
    Guard.positive("flange thickness", flange, Scale.MM);
    Guard.notNegative("root radius", root, Scale.MM);
  }

  /**
   * Walls of stated sizes.
   *
   * @param web thickness of the web
   * @param flange thickness of the flanges
   * @param root radius of the fillets between them
   * @return the walls
   */
  public static RolledWalls of(
      Quantity<Length> web, Quantity<Length> flange, Quantity<Length> root) {
    return new RolledWalls(
        Quantities.si("web thickness", web),
        Quantities.si("flange thickness", flange),
        Quantities.si("root radius", root));
  }
}
