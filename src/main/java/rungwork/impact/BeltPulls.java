package rungwork.impact;

import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Load;
import rungwork.frame.Wrench;
import rungwork.loadpath.Anchorages;
import rungwork.quantity.Kind;

/**
 * What a belted person pulls at.
 *
 * @param ride what they go through
 */
record BeltPulls(Ride ride) {

  /** The strap's force at an anchorage [N]. */
  Range at(Occupant.Anchorage anchorage) {
    Range belt = ride.beltForce();
    return new Range(
        Kind.FORCE,
        belt.low() * anchorage.share() * anchorage.factor().low(),
        belt.high() * anchorage.share() * anchorage.factor().high());
  }

  /** One load an anchorage, at the high end: forwards and, where a strap rises, upwards. */
  List<Load> loads() {
    return ride.occupant().anchorages().stream().map(this::load).toList();
  }

  private Load load(Occupant.Anchorage anchorage) {
    double force = at(anchorage).high();
    Wrench wrench =
        Wrench.force(force * Math.cos(anchorage.rise()), 0, force * Math.sin(anchorage.rise()));
    return new Load.AtNode(anchorage.feature(), wrench);
  }

  /**
   * As a test of anchorages pulls, at the high end.
   *
   * @param onShoulder the part of the belt's force that the shoulder strap takes [1], 0 to 1
   * @return the pull on hips, torso and seat
   */
  Anchorages.Pull asTested(double onShoulder) {
    if (!(onShoulder >= 0 && onShoulder <= 1)) {
      throw new ModelException(
          "part "
              + Scale.NUMBER.show(onShoulder)
              + " on the shoulder strap is outside 0 to 1; common practice is 0.4 to 0.6");
    }
    double force = ride.beltForce().high();
    Anchorages.Person person =
        new Anchorages.Person(force, force * (1 - onShoulder), force * onShoulder);
    double seat = ride.pulses().stream().mapToDouble(Pulse::peak).max().orElseThrow();
    return new Anchorages.Pull(
        ride.occupant().name() + " in this scene, high end",
        "highest of " + ride.runs().size() + " combinations of pulse and belt, computed",
        person,
        seat / Scale.G.inSi());
  }
}
