package rungwork.vehicle;

import java.util.List;
import rungwork.fault.ModelException;
import rungwork.frame.Point;

/**
 * A wheel: where it touches the ground, and the mounts that hold it.
 *
 * @param axle its axle
 * @param side its side
 * @param contact the middle of its contact with the ground
 * @param carriers names of the ladder's features that hold it, at least one
 */
public record Wheel(Axle axle, Side side, Point contact, List<String> carriers) {
  /** Refuses a wheel that nothing holds. */
  public Wheel {
    carriers = List.copyOf(carriers);
    if (carriers.isEmpty()) {
      throw new ModelException(
          axle.word() + " " + side.word() + " wheel is held by nothing; name its mounts");
    }
  }

  /**
   * The wheel in a sentence.
   *
   * @return for example {@code front left wheel}
   */
  public String name() {
    return axle.word() + " " + side.word() + " wheel";
  }
}
