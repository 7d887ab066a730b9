package rungwork.vehicle;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * What must be true of a ladder before it is one.
 *
 * @param ladder its parts, as collected
 */
record LadderRules(LadderBuilder ladder) {

  /** Refuses rails that are missing, not joined or crossed. */
  void checkRails() {
    refuseMissing();
    refuseCrossedRails();
  }

  /**
   * Refuses crossmembers, mounts and kick-ups, sorted from front to rear, that are out of place.
   */
  void checkCarried() {
    for (int i = 0; i < ladder.crossmembers.size(); i++) {
      Crossmember one = ladder.crossmembers.get(i);
      refuseOffRails("crossmember " + one.name(), one.x());
      refuseSameStation(i);
    }
    ladder.mounts.forEach(this::refuseMisplaced);
    for (int i = 0; i < ladder.kickUps.size(); i++) {
      Ladder.KickUp one = ladder.kickUps.get(i);
      refuseOffRails("the foot of kick-up " + one.name(), one.foot());
      refuseOffRails("the head of kick-up " + one.name(), one.head());
      refuseOverlap(i);
    }
    ladder.kickUps.forEach(this::refuseUnderground);
  }

  private void refuseMissing() {
    if (Double.isNaN(ladder.level)) {
      throw new ModelException(
          "ladder " + ladder.name + " has no level; give the height of the rails' centroid line");
    }
    for (Side side : Side.values()) {
      if (!ladder.rails.containsKey(side) || ladder.rails.get(side).reaches().isEmpty()) {
        throw new ModelException("ladder " + ladder.name + " has no " + Ladder.railPart(side));
      }
    }
    if (ladder.crossmembers.isEmpty()) {
      throw new ModelException(
          "ladder " + ladder.name + " has no crossmember; its rails are not joined");
    }
  }

  private void refuseCrossedRails() {
    Rail left = ladder.rails.get(Side.LEFT);
    Rail right = ladder.rails.get(Side.RIGHT);
    List<Double> stations = new ArrayList<>(List.of(left.x(), right.x()));
    left.reaches().forEach(reach -> stations.add(reach.x()));
    right.reaches().forEach(reach -> stations.add(reach.x()));
    for (double x : stations) {
      if (left.reaches(x) && right.reaches(x) && left.yAt(x) <= right.yAt(x)) {
        throw new ModelException(
            "the left rail is at y "
                + Scale.MM.show(left.yAt(x))
                + " where the right rail is at y "
                + Scale.MM.show(right.yAt(x))
                + ", at x "
                + Scale.MM.show(x)
                + "; the left rail must stay to the left");
      }
    }
  }

  private void refuseOffRails(String what, double x) {
    for (Side side : Side.values()) {
      refuseOffRail(what, x, ladder.rails.get(side));
    }
  }

  private static void refuseOffRail(String what, double x, Rail rail) {
    if (!rail.reaches(x)) {
      throw new ModelException(
          what
              + " sits at x "
              + Scale.MM.show(x)
              + (x > rail.x() ? ", ahead of" : ", behind")
              + " the rails, which run from "
              + Scale.MM.show(rail.x())
              + " to "
              + Scale.MM.show(rail.tail()));
    }
  }

  private void refuseSameStation(int index) {
    if (index > 0
        && ladder.crossmembers.get(index - 1).x() - ladder.crossmembers.get(index).x()
            < Layout.SAME_PLACE) {
      throw new ModelException(
          "crossmembers "
              + ladder.crossmembers.get(index - 1).name()
              + " and "
              + ladder.crossmembers.get(index).name()
              + " both sit at x "
              + Scale.MM.show(ladder.crossmembers.get(index).x()));
    }
  }

  private void refuseOverlap(int index) {
    if (index == 0) {
      return;
    }
    Ladder.KickUp ahead = ladder.kickUps.get(index - 1);
    Ladder.KickUp behind = ladder.kickUps.get(index);
    if (behind.front() > ahead.rear()) {
      throw new ModelException(
          "kick-up "
              + behind.name()
              + " reaches forward to x "
              + Scale.MM.show(behind.front())
              + ", into kick-up "
              + ahead.name()
              + ", which reaches back to x "
              + Scale.MM.show(ahead.rear())
              + "; let one end where the next begins");
    }
  }

  private void refuseUnderground(Ladder.KickUp kickUp) {
    double head =
        ladder.level + ladder.kickUps.stream().mapToDouble(one -> one.at(kickUp.head())).sum();
    if (head <= 0) {
      throw new ModelException(
          "kick-up "
              + kickUp.name()
              + " brings the rails to z "
              + Scale.MM.show(head)
              + " at x "
              + Scale.MM.show(kickUp.head())
              + "; they must stay above the ground");
    }
  }

  private void refuseMisplaced(Mount mount) {
    for (Side side : Side.values()) {
      if (mount.member().equals(Ladder.railPart(side))) {
        refuseOffRail("mount " + mount.name(), mount.at().x(), ladder.rails.get(side));
        return;
      }
    }
    Crossmember carrier =
        ladder.crossmembers.stream()
            .filter(crossmember -> crossmember.part().equals(mount.member()))
            .findFirst()
            .orElseThrow(
                () ->
                    new ModelException(
                        "mount "
                            + mount.name()
                            + " sits on the "
                            + mount.member()
                            + ", but ladder "
                            + ladder.name
                            + " has only "
                            + String.join(
                                ", ",
                                ladder.crossmembers.stream().map(Crossmember::part).toList())));
    refuseBeside(mount, carrier);
  }

  private void refuseBeside(Mount mount, Crossmember carrier) {
    double left = ladder.rails.get(Side.LEFT).yAt(carrier.x());
    double right = ladder.rails.get(Side.RIGHT).yAt(carrier.x());
    if (mount.at().y() > left || mount.at().y() < right) {
      throw new ModelException(
          "mount "
              + mount.name()
              + " sits at y "
              + Scale.MM.show(mount.at().y())
              + ", beside the "
              + carrier.part()
              + ", which runs from "
              + Scale.MM.show(left)
              + " to "
              + Scale.MM.show(right));
    }
  }
}
