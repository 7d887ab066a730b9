package rungwork.joint;

import java.util.Optional;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A bolt: how thick it is and how strong.
 *
 * @param size its thread and dimensions
 * @param strength its property class or grade
 */
public record Bolt(Size size, Strength strength) {
  /**
   * A bolt from the tables.
   *
   * @param size such as {@code M10}, {@code M10x1.25}, {@code 3/8-16}, {@code 3/8-24}
   * @param strength an ISO 898-1 class such as {@code 8.8}, or an SAE J429 grade such as {@code
   *     grade 5}
   * @return the bolt
   * @throws ModelException when a table does not hold it, or the strength does not exist in that
   *     size
   */
  public static Bolt of(String size, String strength) {
    Size found = BoltTables.size(size);
    return new Bolt(found, BoltTables.strength(strength, found));
  }

  /**
   * A thread and its dimensions.
   *
   * @param name such as {@code M10}
   * @param diameter of the plain shank [m]
   * @param stressArea of the thread [m²]
   * @param acrossFlats of the hexagon [m]
   * @param holes clearance holes; nothing for an inch thread
   * @param source where the figures come from
   */
  public record Size(
      String name,
      double diameter,
      double stressArea,
      double acrossFlats,
      Optional<Holes> holes,
      String source) {
    /** Refuses a thread wider than its shank. */
    public Size {
      name = Guard.name("bolt size", name);
      Guard.positive("diameter of " + name, diameter, Scale.MM);
      Guard.positive("stress area of " + name, stressArea, Scale.MM2);
      Guard.positive("width across flats of " + name, acrossFlats, Scale.MM);
      if (stressArea >= Math.PI * diameter * diameter / 4) {
        throw new ModelException(
            "stress area "
                + Scale.MM2.show(stressArea)
                + " of "
                + name
                + " is not below the area of its shank of "
                + Scale.MM.show(diameter));
      }
    }
  }

  /**
   * Clearance holes of ISO 273.
   *
   * @param fine fine series [m]
   * @param medium medium series [m]
   * @param coarse coarse series [m]
   */
  public record Holes(double fine, double medium, double coarse) {
    /** Refuses holes of no size. */
    public Holes {
      Guard.positive("fine hole", fine, Scale.MM);
      Guard.positive("medium hole", medium, Scale.MM);
      Guard.positive("coarse hole", coarse, Scale.MM);
    }
  }

  /**
   * A property class or grade. Minimum values are those of ISO 898-1 or SAE J429; nominal values
   * are those that EN 1993-1-8, table 3.1 calculates with.
   *
   * @param name such as {@code 8.8}
   * @param minimum what the standard guarantees
   * @param nominalUltimate fub [Pa]
   * @param nominalYield fyb [Pa]
   * @param shear how EN 1993-1-8 treats it in shear
   * @param source where the figures come from
   */
  public record Strength(
      String name,
      Minimum minimum,
      double nominalUltimate,
      double nominalYield,
      ShearRule shear,
      String source) {
    /** Refuses a strength of nothing. */
    public Strength {
      name = Guard.name("property class", name);
      Guard.positive("nominal tensile strength of " + name, nominalUltimate, Scale.MPA);
      Guard.positive("nominal yield strength of " + name, nominalYield, Scale.MPA);
    }
  }

  /**
   * Guaranteed strengths.
   *
   * @param ultimate tensile strength [Pa]
   * @param yield yield strength or 0.2 % proof strength [Pa]
   * @param proof stress under proof load [Pa]
   */
  public record Minimum(double ultimate, double yield, double proof) {
    /** Refuses a strength of nothing. */
    public Minimum {
      Guard.positive("tensile strength of a bolt", ultimate, Scale.MPA);
      Guard.positive("yield strength of a bolt", yield, Scale.MPA);
      Guard.positive("proof stress of a bolt", proof, Scale.MPA);
    }
  }

  /**
   * Shear with the thread in the plane.
   *
   * @param threaded αv [1]
   * @param covered whether EN 1993-1-8 covers this class at all
   */
  public record ShearRule(double threaded, boolean covered) {
    /** Refuses a factor that is not finite. */
    public ShearRule {
      Guard.finite("shear factor of a threaded plane", threaded);
    }
  }

  /** Where the thread ends. */
  public enum Threads {
    /** The thread reaches into the shear plane: the common case, and the safe one. */
    IN_PLANE,
    /** The plain shank fills the shear plane. */
    CLEAR
  }

  /**
   * The force under which ISO 898-1 or SAE J429 allows no permanent set.
   *
   * @return stress under proof load times stress area [N]
   */
  public double proofLoad() {
    return strength.minimum().proof() * size.stressArea();
  }

  /**
   * The least force that breaks it.
   *
   * @return minimum tensile strength times stress area [N]
   */
  public double tensileLoad() {
    return strength.minimum().ultimate() * size.stressArea();
  }

  @Override
  public String toString() {
    return size.name() + " " + strength.name();
  }
}
