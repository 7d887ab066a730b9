package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;

/**
 * The mounts of a ladder in plan, each with an arm to its member.
 *
 * @param ladder the ladder
 * @param sight how it is seen
 * @param canvas drawn on
 * @param labels already there
 */
record PlanMounts(Ladder ladder, Sight sight, Canvas canvas, Labels labels) {
  private static final double ROW = 15;

  /** Numbers and names stay off the mounts and their arms. */
  void keepFree() {
    ladder.mounts().forEach(this::keepFree);
  }

  void draw() {
    ladder.mounts().forEach(this::mount);
  }

  private void mount(Mount mount) {
    Spot at = sight.place(mount.at());
    canvas.part(
        "mount " + mount.name(),
        () -> {
          canvas.line("thin", at, foot(mount));
          canvas.polygon(
              "hollow", List.of(at.plus(0, -4), at.plus(4, 0), at.plus(0, 4), at.plus(-4, 0)));
          if (inside(mount)) {
            labels.put(besideMount(at, mount.name()));
          } else {
            double side = Math.signum(at.y());
            Label put = labels.put(beyondMount(at, mount.name()));
            canvas.line("faint", at.plus(0, side * 5), put.at().plus(0, side > 0 ? -11 : 3));
          }
        });
  }

  private void keepFree(Mount mount) {
    Spot at = sight.place(mount.at());
    labels.keepFree(Box.EMPTY.and(at).grown(5));
    labels.keepFree(Box.EMPTY.and(at).and(foot(mount)).grown(2));
  }

  private boolean inside(Mount mount) {
    double x = mount.at().x();
    double y = mount.at().y();
    return y < ladder.rail(Side.LEFT).yAt(x) && y > ladder.rail(Side.RIGHT).yAt(x);
  }

  private static List<Label> besideMount(Spot at, String name) {
    List<Label> places = new ArrayList<>();
    for (double row : new double[] {0, 1, -1, 2, -2, 3}) {
      places.add(Label.at(at.plus(7, 4 + row * ROW), name).css("small on"));
      places.add(Label.end(at.plus(-7, 4 + row * ROW), name).css("small on"));
    }
    return places;
  }

  private static List<Label> beyondMount(Spot at, String name) {
    List<Label> places = new ArrayList<>();
    for (int row = 1; row <= 6; row++) {
      double out = Math.signum(at.y()) * (12 + row * ROW);
      places.add(Label.middle(at.plus(0, out), name).css("small on"));
    }
    return places;
  }

  /** Where the arm of a mount meets the line of its member. */
  private Spot foot(Mount mount) {
    return ladder.crossmembers().stream()
        .filter(one -> one.part().equals(mount.member()))
        .findFirst()
        .map(one -> sight.along(one.x(), mount.at().y(), 0))
        .orElseGet(() -> sight.along(mount.at().x(), rail(mount).yAt(mount.at().x()), 0));
  }

  private Rail rail(Mount mount) {
    return ladder.rail(mount.member().equals("left rail") ? Side.LEFT : Side.RIGHT);
  }
}
