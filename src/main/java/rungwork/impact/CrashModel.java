package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Stiffness;

/**
 * A vehicle as a few masses on one line that runs against a wall or into another vehicle: the body
 * with its frame, whatever crushes in front of it, a motor on rubber.
 *
 * <pre>
 *   wall |~~ element ~~[front mass]~~ frame ~~[ body ]~~ rubber, gap, stop ~~[ motor ]
 * </pre>
 *
 * @param name what the reader calls it
 * @param speed at which both come together [m/s]
 * @param mass of the whole vehicle [kg], front mass and motor included
 * @param frame its force over crush
 * @param front what crushes in front of the frame, if anything
 * @param motor a motor on rubber, if it counts apart
 * @param other what is hit, if it moves; else a rigid wall
 */
public record CrashModel(
    String name,
    double speed,
    double mass,
    CrushCurve frame,
    Optional<Front> front,
    Optional<Motor> motor,
    Optional<Other> other) {
  private static final Scale STIFFNESS = new Scale("N/mm", 1e3);

  /**
   * What crushes in front of the frame.
   *
   * @param element its force over crush
   * @param mass between it and the frame, of the vehicle's whole mass [kg]; 0 for none
   */
  public record Front(CrushCurve element, double mass) {
    /** Refuses a mass below nothing. */
    public Front {
      Guard.notNegative("front mass", mass, Scale.KG);
    }
  }

  /**
   * A motor that moves on its rubber until it meets a stop.
   *
   * @param name what the reader calls it
   * @param mass of the vehicle's whole mass [kg], above zero
   * @param rubber stiffness of its mounts together, along the vehicle [N/m], above zero
   * @param gap to the stop [m], not negative
   * @param stop stiffness of what stops it [N/m], above zero
   */
  public record Motor(String name, double mass, double rubber, double gap, double stop) {
    /** Refuses a motor of nothing. */
    public Motor {
      name = Guard.name("motor", name);
      Guard.positive("mass of " + name, mass, Scale.KG);
      Guard.positive("rubber stiffness of " + name, rubber, STIFFNESS);
      Guard.notNegative("gap of " + name, gap, Scale.MM);
      Guard.positive("stop stiffness of " + name, stop, STIFFNESS);
    }

    /**
     * From typed quantities.
     *
     * @param name what the reader calls it
     * @param mass of the vehicle's whole mass
     * @return a motor, still to be put on its rubber
     */
    public static Weighed of(String name, Quantity<Mass> mass) {
      return new Weighed(name, si("mass of " + name, mass));
    }

    /**
     * A motor whose mounts are still to be stated.
     *
     * @param name what the reader calls it
     * @param mass [kg]
     */
    public record Weighed(String name, double mass) {
      /** Refuses a mass of nothing. */
      public Weighed {
        name = Guard.name("motor", name);
        Guard.positive("mass of " + name, mass, Scale.KG);
      }

      /**
       * Puts it on rubber.
       *
       * @param rubber stiffness of its mounts together, along the vehicle
       * @param gap to the stop
       * @param stop stiffness of what stops it
       * @return the motor
       */
      public Motor on(Quantity<Stiffness> rubber, Quantity<Length> gap, Quantity<Stiffness> stop) {
        return new Motor(
            name,
            mass,
            si("rubber stiffness of " + name, rubber),
            si("gap of " + name, gap),
            si("stop stiffness of " + name, stop));
      }
    }
  }

  /**
   * Another vehicle, standing.
   *
   * @param mass [kg]
   * @param curve force over crush of its front
   */
  public record Other(double mass, CrushCurve curve) {
    /** Refuses a mass of nothing. */
    public Other {
      Guard.positive("other mass", mass, Scale.KG);
    }
  }

  /** Refuses parts that are heavier than the whole. */
  public CrashModel {
    name = Guard.name("crash model", name);
    Guard.positive("closing speed", speed, new Scale("km/h", 1 / 3.6));
    Guard.positive("mass of " + name, mass, Scale.KG);
    double body = mass - frontMass(front) - motor.map(Motor::mass).orElse(0.0);
    if (!(body > 0)) {
      throw new ModelException(
          "front mass and motor of %s leave %s of %s for its body; they are parts of the whole mass"
              .formatted(name, Scale.KG.show(body), Scale.KG.show(mass)));
    }
  }

  /**
   * A vehicle against a rigid wall.
   *
   * @param name what the reader calls it
   * @param speed of closing
   * @param mass of the whole vehicle
   * @param frame its force over crush
   * @return the model
   */
  public static CrashModel of(
      String name, Quantity<Speed> speed, Quantity<Mass> mass, CrushCurve frame) {
    return new CrashModel(
        name,
        si("closing speed", speed),
        si("mass of " + name, mass),
        frame,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * With something that crushes in front of the frame, both carrying the same force.
   *
   * @param element its force over crush
   * @return the model
   */
  public CrashModel behind(CrushCurve element) {
    return with(Optional.of(new Front(element, 0)), motor, other);
  }

  /**
   * With something that crushes in front of the frame and a mass, such as a beam, between them.
   *
   * @param element its force over crush
   * @param between of the vehicle's whole mass, above zero
   * @return the model
   */
  public CrashModel behind(CrushCurve element, Quantity<Mass> between) {
    double beam = Guard.positive("front mass", si("front mass", between), Scale.KG);
    return with(Optional.of(new Front(element, beam)), motor, other);
  }

  /**
   * With a motor on rubber.
   *
   * @param part the motor
   * @return the model
   */
  public CrashModel with(Motor part) {
    return with(front, Optional.of(part), other);
  }

  /**
   * Into another vehicle instead of a wall.
   *
   * @param otherMass of it
   * @param curve force over crush of its front; it must not fall
   * @return the model
   */
  public CrashModel into(Quantity<Mass> otherMass, CrushCurve curve) {
    double kilograms = si("mass of the other vehicle", otherMass);
    Guard.positive("mass of the other vehicle", kilograms, Scale.KG);
    return with(front, motor, Optional.of(new Other(kilograms, curve)));
  }

  /**
   * At another speed.
   *
   * @param closing the speed
   * @return the model
   */
  public CrashModel at(Quantity<Speed> closing) {
    return new CrashModel(name, si("closing speed", closing), mass, frame, front, motor, other);
  }

  private CrashModel with(Optional<Front> element, Optional<Motor> part, Optional<Other> hit) {
    return new CrashModel(name, speed, mass, frame, element, part, hit);
  }

  /**
   * Runs the crash until the vehicle comes off what it hit.
   *
   * @return what happened
   */
  public Crash run() {
    return new CrashRun(this).crash();
  }

  private static double frontMass(Optional<Front> front) {
    return front.map(Front::mass).orElse(0.0);
  }

  /** The mass of the body alone [kg]. */
  double body() {
    return mass - frontMass(front) - motor.map(Motor::mass).orElse(0.0);
  }

  /** Whether a mass stands between element and frame. */
  boolean hasFrontMass() {
    return frontMass(front) > 0;
  }

  /** What crushes between what is hit and the foremost own mass, from front to rear. */
  List<CrushCurve> foremost() {
    List<CrushCurve> parts = new ArrayList<>();
    other.ifPresent(hit -> parts.add(hit.curve()));
    front.ifPresent(element -> parts.add(element.element()));
    if (!hasFrontMass()) {
      parts.add(frame);
    }
    return parts;
  }

  @Override
  public String toString() {
    String element = front.map(part -> part.element().name() + " before ").orElse("");
    String rubber = motor.map(part -> ", " + part.name() + " on rubber").orElse("");
    return name
        + ": "
        + Scale.KG.show(mass)
        + " at "
        + new Scale("km/h", 1 / 3.6).show(speed, 3)
        + ", "
        + element
        + frame.name()
        + rubber;
  }
}
