package rungwork.vehicle;

import java.util.List;
import rungwork.fault.Guard;

/**
 * Something that happens to a vehicle, with the source of its factors. What it does to the frame
 * depends on the vehicle and the ladder; {@link Events} holds the usual ones.
 *
 * @param name such as {@code bump, both front wheels, 3 g}
 * @param source where its factors come from
 * @param assumptions what was assumed to make it
 * @param kind road or impact
 * @param scene its forces from outside on a given vehicle
 */
public record Event(String name, String source, List<String> assumptions, Kind kind, Scene scene) {
  /** Copies its assumptions. */
  public Event {
    name = Guard.name("event", name);
    assumptions = List.copyOf(assumptions);
  }

  /** What sort of event it is, and the design factor that goes with it. */
  public enum Kind {
    /** Driving: factored loads, and 1.5 on yield (Brown, Robertson and Serpento, from memory). */
    ROAD(1.5),
    /** A crash: unfactored, sprung masses amplified, added to the standing vehicle. */
    IMPACT(1.0);

    private final double designFactor;

    Kind(double designFactor) {
      this.designFactor = designFactor;
    }

    /**
     * The factor that the strength is divided by.
     *
     * @return the design factor [1]
     */
    public double designFactor() {
      return designFactor;
    }
  }

  /** The forces from outside that make an event. */
  @FunctionalInterface
  public interface Scene {
    /**
     * The forces on a vehicle; in an impact, what comes on top of standing.
     *
     * @param vehicle the vehicle with its frame's own masses
     * @param ladder its frame
     * @return the forces from outside, the weights left out
     */
    List<Push> on(Vehicle vehicle, Ladder ladder);
  }

  /**
   * The factor that the strength is divided by.
   *
   * @return the design factor [1]
   */
  public double designFactor() {
    return kind.designFactor();
  }

  @Override
  public String toString() {
    return name + " (" + source + ")";
  }
}
