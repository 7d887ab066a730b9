package rungwork.impact;

import rungwork.solve.Pushover;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/** Hinges in a builder's words: the part, and where on it. */
final class HingeNames {
  private final Ladder ladder;

  HingeNames(Ladder ladder) {
    this.ladder = ladder;
  }

  /**
   * Names a hinge.
   *
   * @param place the end of a beam
   * @param middle x of the middle of that beam, which tells the side of the node [m]
   * @return for example {@code left rail just ahead of front crossmember}
   */
  String words(Pushover.Place place, double middle) {
    String part = place.beam().substring(0, place.beam().lastIndexOf(' '));
    for (Crossmember crossmember : ladder.crossmembers()) {
      for (Side side : Side.values()) {
        if (place.node().equals(joint(crossmember, side))) {
          return part.equals(crossmember.part())
              ? part + " at " + side.word() + " rail"
              : part
                  + (middle > crossmember.x() ? " just ahead of " : " just behind ")
                  + crossmember.part();
        }
      }
      if (part.equals(crossmember.part()) && place.node().endsWith(" middle")) {
        return part + " at its middle";
      }
    }
    return part + " at " + place.node();
  }

  private String joint(Crossmember crossmember, Side side) {
    return ladder.node(crossmember.name() + " " + side.word()).name();
  }
}
