package rungwork.loadpath;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A wheel on its upright: it turns about a line through its middle, along y.
 *
 * @param centre the wheel's middle
 * @param contact the middle of its contact with the ground
 * @param brakeCarriers names of the ladder's features that hold a brake or final drive inboard of a
 *     shaft; empty when the brake sits in the wheel
 * @param carrier what carries the wheel
 */
public record Hub(Point centre, Point contact, List<String> brakeCarriers, Carrier carrier) {
  /** Refuses a wheel whose middle is not above the ground. */
  public Hub {
    brakeCarriers = List.copyOf(brakeCarriers);
    Guard.positive("height of the wheel's middle", centre.z() - contact.z(), Scale.MM);
  }

  /** The body that the members hold. */
  public enum Carrier {
    /** An upright, for one wheel. */
    UPRIGHT("corner", "upright"),
    /** A beam, for two wheels. */
    BEAM("axle", "axle");

    private final String whole;
    private final String body;

    Carrier(String whole, String body) {
      this.whole = whole;
      this.body = body;
    }

    /** What messages call the body with its members. */
    String whole() {
      return whole;
    }

    /** What messages call the body. */
    String body() {
      return body;
    }
  }

  /**
   * A wheel with its brake in it: what brakes it is held by the upright.
   *
   * @param centre the wheel's middle
   * @param contact the middle of its contact with the ground
   * @return the hub
   */
  public static Hub brakedInWheel(Point centre, Point contact) {
    return new Hub(centre, contact, List.of(), Carrier.UPRIGHT);
  }

  /**
   * A wheel braked or driven by a shaft: what brakes it is held by the frame.
   *
   * @param centre the wheel's middle
   * @param contact the middle of its contact with the ground
   * @param carriers names of the ladder's features that hold the brake, at least one
   * @return the hub
   */
  public static Hub brakedInboard(Point centre, Point contact, String... carriers) {
    if (carriers.length == 0) {
      throw new ModelException("an inboard brake is held by nothing; name what holds it");
    }
    return new Hub(centre, contact, List.of(carriers), Carrier.UPRIGHT);
  }

  /**
   * What the shaft takes to the frame of a wrench at the contact: its moment about the wheel's
   * line.
   */
  Wrench onShaft(Wrench tyre) {
    double moment = brakeCarriers.isEmpty() ? 0 : tyre.moved(contact, centre).my();
    return Wrench.moment(0, moment, 0);
  }

  /** What the upright feels of a wrench at the contact, about the wheel's middle. */
  Wrench onUpright(Wrench tyre) {
    return tyre.moved(contact, centre).plus(onShaft(tyre).times(-1));
  }
}
