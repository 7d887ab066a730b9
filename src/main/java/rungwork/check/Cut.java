package rungwork.check;

import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.section.Section;
import rungwork.section.Spot;
import rungwork.solve.InternalForces;

/**
 * A cut through a member, with what acts there.
 *
 * @param beam the beam that is cut
 * @param section what of its section counts
 * @param fraction of the beam's length from its start [1]
 * @param along from the member's start [m]
 * @param forces the internal forces
 */
record Cut(Beam beam, Section section, double fraction, double along, InternalForces forces) {
  /** Closer to a node than this part of the length counts as at the node. */
  private static final double AT_NODE = 1e-9;

  /** The same cut with another section, whose centroid is shifted; the normal force stays put. */
  Cut about(Section left, Spot shift) {
    InternalForces f = forces;
    InternalForces moved =
        new InternalForces(
            f.n(), f.vy(), f.vz(), f.t(), f.my() - f.n() * shift.z(), f.mz() + f.n() * shift.y());
    return new Cut(beam, left, fraction, along, moved);
  }

  /** The place in words without units, such as {@code at front left}. */
  String place() {
    if (fraction < AT_NODE) {
      return "at " + beam.start();
    }
    if (fraction > 1 - AT_NODE) {
      return "at " + beam.end();
    }
    return Scale.NUMBER.number(100 * fraction, 2)
        + " % of the way from "
        + beam.start()
        + " to "
        + beam.end();
  }
}
