package rungwork.frame;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A heavy item: how heavy, where, and which nodes carry it.
 *
 * @param name unique among the masses
 * @param kilograms its mass [kg], above zero
 * @param at its centre of mass in vehicle axes
 * @param own its own inertia about its centre of mass
 * @param carriers names of the nodes that carry it, at least one
 * @param amplification how much larger its peak acceleration is than the vehicle's under a sudden
 *     load, because it sits on a spring or a belt: 1 (rigid) to 2 (a spring, at once) [1]
 */
public record Mass(
    String name,
    double kilograms,
    Point at,
    Inertia own,
    List<String> carriers,
    double amplification) {
  /** Refuses a mass that weighs nothing, hangs on nothing or is amplified beyond 1 to 2. */
  public Mass {
    name = Guard.name("mass", name);
    Guard.positive("mass " + name, kilograms, Scale.KG);
    carriers = List.copyOf(carriers);
    if (carriers.isEmpty()) {
      throw new ModelException("mass " + name + " is carried by no node; name one at least");
    }
    if (!(amplification >= 1 && amplification <= 2)) {
      throw new ModelException(
          "amplification "
              + Scale.NUMBER.show(amplification)
              + " of mass "
              + name
              + " is outside 1 (rigid) to 2 (a spring under a sudden load)");
    }
  }

  /**
   * A point mass that moves with the frame.
   *
   * @param name unique among the masses
   * @param kilograms its mass [kg]
   * @param at its place
   * @param carriers names of the nodes that carry it
   * @return the mass
   */
  public static Mass point(String name, double kilograms, Point at, List<String> carriers) {
    return new Mass(name, kilograms, at, Inertia.NONE, carriers, 1);
  }

  /**
   * This mass as heavy as it feels under a sudden load: its mass and its own inertia times its
   * amplification.
   *
   * @return the amplified mass, itself rigid
   */
  public Mass amplified() {
    return new Mass(name, kilograms * amplification, at, own.times(amplification), carriers, 1);
  }

  /**
   * Own inertia of an item about its centre of mass, in vehicle axes.
   *
   * @param xx moment of inertia about x [kg·m²]
   * @param yy moment of inertia about y [kg·m²]
   * @param zz moment of inertia about z [kg·m²]
   * @param xy product of inertia ∫xy dm [kg·m²]
   * @param yz product of inertia ∫yz dm [kg·m²]
   * @param zx product of inertia ∫zx dm [kg·m²]
   */
  public record Inertia(double xx, double yy, double zz, double xy, double yz, double zx) {
    private static final Scale KG_M2 = new Scale("kg·m²", 1);

    /** Refuses moments of inertia below zero, and what is not finite. */
    public Inertia {
      Guard.notNegative("moment of inertia about x", xx, KG_M2);
      Guard.notNegative("moment of inertia about y", yy, KG_M2);
      Guard.notNegative("moment of inertia about z", zz, KG_M2);
      Guard.finite("product of inertia", xy + yz + zx);
    }

    /** A point. */
    public static final Inertia NONE = new Inertia(0, 0, 0, 0, 0, 0);

    /**
     * This inertia scaled.
     *
     * @param factor the factor [1]
     * @return the scaled inertia
     */
    public Inertia times(double factor) {
      return new Inertia(
          xx * factor, yy * factor, zz * factor, xy * factor, yz * factor, zx * factor);
    }

    /**
     * A uniform box along the vehicle's axes: m(b² + c²)/12 about each axis.
     *
     * @param kilograms its mass [kg]
     * @param length along x [m]
     * @param width along y [m]
     * @param height along z [m]
     * @return its inertia about its middle
     */
    public static Inertia box(double kilograms, double length, double width, double height) {
      double k = kilograms / 12;
      return new Inertia(
          k * (width * width + height * height),
          k * (length * length + height * height),
          k * (length * length + width * width),
          0,
          0,
          0);
    }
  }
}
