package rungwork.section;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Quantities;

/**
 * The walls of a rolled channel.
 *
 * @param web thickness of the web [m]
 * @param flange thickness of the flanges [m]; of tapered ones where their taper says
 * @param root radius of the fillets between them [m]
 * @param taper how the flanges thin out towards their toes
 */
public record RolledWalls(double web, double flange, double root, Taper taper) {
  /** Refuses walls that are not above zero and a radius below zero. */
  public RolledWalls {
    Guard.positive("web thickness", web, Scale.MM);
    Guard.positive("flange thickness", flange, Scale.MM);
    Guard.notNegative("root radius", root, Scale.MM);
  }

  RolledWalls(double web, double flange, double root) {
    this(web, flange, root, Taper.NONE);
  }

  /**
   * Walls with parallel flanges, their toes square.
   *
   * @param web thickness of the web
   * @param flange thickness of the flanges
   * @param root radius of the fillets between them
   * @return the walls
   */
  public static RolledWalls of(
      Quantity<Length> web, Quantity<Length> flange, Quantity<Length> root) {
    return tapered(web, flange, root, Taper.NONE);
  }

  /**
   * Walls with flanges that are thinner by 8 % of the way towards their toes, the flange thickness
   * measured at half the flange's width: UPN channels up to 300 mm deep (DIN 1026-1:2009, EN
   * 10365:2017; slope and place from memory).
   *
   * @param web thickness of the web
   * @param flange thickness of the flanges at half their width
   * @param root radius of the fillets between them, r1
   * @param toe radius of the toes, r2
   * @return the walls
   */
  public static RolledWalls eightPercent(
      Quantity<Length> web, Quantity<Length> flange, Quantity<Length> root, Quantity<Length> toe) {
    double radius = Quantities.si("toe radius", toe);
    return tapered(web, flange, root, new Taper(0.08, radius, Place.HALF_THE_WIDTH));
  }

  /**
   * Walls with flanges that are thinner by one in six towards their toes, the flange thickness
   * measured at half the part that stands clear of the web: American standard channels (ASTM
   * A6/A6M, C shapes; from memory, as are their radii: root 0.10 in over the web's thickness of the
   * lightest channel of that depth, toe 0.6 times that thickness).
   *
   * @param web thickness of the web
   * @param flange average thickness of the flanges
   * @param root radius of the fillets between them
   * @param toe radius of the toes
   * @return the walls
   */
  public static RolledWalls oneInSix(
      Quantity<Length> web, Quantity<Length> flange, Quantity<Length> root, Quantity<Length> toe) {
    double radius = Quantities.si("toe radius", toe);
    return tapered(web, flange, root, new Taper(1.0 / 6, radius, Place.HALF_THE_OVERHANG));
  }

  private static RolledWalls tapered(
      Quantity<Length> web, Quantity<Length> flange, Quantity<Length> root, Taper taper) {
    return new RolledWalls(
        Quantities.si("web thickness", web),
        Quantities.si("flange thickness", flange),
        Quantities.si("root radius", root),
        taper);
  }

  /** How thick a flange of a width [m] is at a distance from the back of the web [m]. */
  double thickness(double width, double fromBack) {
    double at = taper.place() == Place.HALF_THE_WIDTH ? width / 2 : (width + web) / 2;
    return flange + taper.slope() * (at - fromBack);
  }

  /** Where a tapered flange's thickness is measured. */
  public enum Place {
    /** At half the flange's width from the back of the web. */
    HALF_THE_WIDTH,
    /** At half the part of the flange that stands clear of the web. */
    HALF_THE_OVERHANG
  }

  /**
   * How flanges thin out towards their toes, on their inner faces.
   *
   * @param slope loss of thickness over the way
   * @param toe radius of the toes' inner edges [m]
   * @param place where the flange's thickness is measured
   */
  public record Taper(double slope, double toe, Place place) {
    static final Taper NONE = new Taper(0, 0, Place.HALF_THE_WIDTH);

    /** Refuses a slope outside 0 to 1 in 2 and a radius below zero. */
    public Taper {
      Guard.notNegative("flange slope", slope, Scale.NUMBER);
      Guard.notNegative("toe radius", toe, Scale.MM);
      if (slope > 0.5) {
        throw new ModelException(
            "flange slope %s is steeper than rolled channels are; it must not exceed 0.5"
                .formatted(Scale.NUMBER.show(slope)));
      }
    }

    boolean parallel() {
      return slope == 0;
    }

    /** The slope as an angle [degrees]. */
    double degrees() {
      return Math.toDegrees(Math.atan(slope));
    }

    /**
     * From the sharp corner of a sloped face and an upright one to where a rounding touches them:
     * its radius times this.
     */
    double reach() {
      return Math.tan(Math.toRadians(90 - degrees()) / 2);
    }
  }
}
