package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import rungwork.fault.Guard;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A wrench on a mount, in the axes of the face that it stands on: x along the tab's foot, y across
 * the tab (along its pin), z out of the face; origin where the tab's middle plane meets the face
 * below the hole.
 *
 * @param loadCase the load case's name
 * @param wrench what pushes the mount, along the face's axes
 * @param place where it acts, in the face's axes
 * @param factors what capacities are divided by
 */
public record FaceLoad(String loadCase, Wrench wrench, Point place, Factors factors) {
  /** Refuses a load case without a name. */
  public FaceLoad {
    loadCase = Guard.name("load case", loadCase);
  }

  /**
   * No load yet, at a place.
   *
   * @param loadCase the load case's name
   * @param place where it will act, in the face's axes
   * @param factors what capacities are divided by
   * @return the load, zero
   */
  public static FaceLoad at(String loadCase, Point place, Factors factors) {
    return new FaceLoad(loadCase, Wrench.ZERO, place, factors);
  }

  /**
   * This load with a force added.
   *
   * @param x along the tab's foot
   * @param y along the pin
   * @param z out of the face: positive pulls the tab off it
   * @return the load
   */
  public FaceLoad force(Quantity<Force> x, Quantity<Force> y, Quantity<Force> z) {
    Wrench more = Wrench.force(si("force x", x), si("force y", y), si("force z", z));
    return new FaceLoad(loadCase, wrench.plus(more), place, factors);
  }

  /**
   * What changes from another load to this one, for a stress range.
   *
   * @param from the other load
   * @return the difference, at this one's place
   */
  public FaceLoad since(FaceLoad from) {
    Wrench change = wrench.plus(from.about(place).times(-1));
    return new FaceLoad(loadCase, change, place, factors);
  }

  /** The wrench at another place that does the same to a rigid body. */
  Wrench about(Point other) {
    return wrench.moved(place, other);
  }
}
