package rungwork.vehicle;

import java.util.List;
import rungwork.check.DesignFactor;
import rungwork.fault.Guard;
import rungwork.solve.AppliedWrench;

/**
 * Something that happens to a vehicle, with the source of its factors. What it does to the frame
 * depends on the vehicle and the ladder; {@link Events} holds the usual ones.
 *
 * @param name such as {@code bump, both front wheels, 3.0 g}
 * @param source where its factors come from
 * @param assumptions what was assumed to make it
 * @param kind driving or impact
 * @param scene its forces from outside on a given vehicle
 */
public record Event(String name, String source, List<String> assumptions, Kind kind, Scene scene) {
  /** Copies its assumptions. */
  public Event {
    name = Guard.name("event", name);
    assumptions = List.copyOf(assumptions);
  }

  /** What sort of event it is. */
  public enum Kind {
    /** Driving: the scene gives all forces of the ground. */
    DRIVING(DesignFactor.ROAD),
    /**
     * A crash: the scene gives what comes on top of standing; masses on springs and belts count
     * amplified in it, and no design factor is taken.
     */
    IMPACT(DesignFactor.NONE);

    private final DesignFactor designFactor;

    Kind(DesignFactor designFactor) {
      this.designFactor = designFactor;
    }
  }

  /** The forces from outside that make an event. */
  @FunctionalInterface
  public interface Scene {
    /**
     * The forces on a vehicle. Weights do not count: a body that stands is pushed up by the ground.
     *
     * @param vehicle the vehicle with its frame's own masses
     * @param ladder its frame
     * @return the forces, their carriers named by the ladder's features
     */
    List<AppliedWrench> on(Vehicle vehicle, Ladder ladder);
  }

  /**
   * What strengths are divided by.
   *
   * @return the design factor
   */
  public DesignFactor designFactor() {
    return kind.designFactor;
  }

  @Override
  public String toString() {
    return name + " (" + source + ")";
  }
}
