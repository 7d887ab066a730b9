package rungwork.report;

import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;

/**
 * A mount seen along its pin: the tab's outline, its hole, the welds that end in this view.
 *
 * @param parts the mount's parts
 * @param canvas the drawing
 * @param push on which side of the hole a force's arrow comes in: -1 from below, 1 from above
 */
record MountSide(MountParts parts, Canvas canvas, int push) {
  void draw(MountView view) {
    new MountTube(parts, canvas).draw(view, parts.halfAlong(), parts.across(), 0);
    parts.tab().ifPresent(tab -> plate(view, tab));
    parts.welds().forEach(weld -> endsOfWeld(view, weld));
    parts.tab().ifPresent(tab -> hole(view, tab));
  }

  private void plate(MountView view, Tab tab) {
    Tab.Plate plate = tab.plate();
    double half = plate.foot() / 2;
    double end = tab.eye().end();
    canvas.polygon("steel", view.tabOutline(half, plate.width() / 2, plate.height(), end));
    double right = view.place(parts.halfAlong(), 0).x() + 22;
    view.upright(0, plate.height(), plate.width() / 2, right);
    view.upright(plate.height(), plate.height() + end, plate.width() / 2, right);
    double low = view.place(0, -parts.depth()).y() + 30;
    view.along(-half, half, 0, low);
    if (Math.abs(plate.foot() - plate.width()) > 1e-6) {
      view.along(-plate.width() / 2, plate.width() / 2, -parts.depth(), low + 30);
    }
  }

  private void hole(MountView view, Tab tab) {
    Spot middle = view.place(0, tab.plate().height());
    double radius = tab.eye().hole() / 2 * view.scale();
    canvas.circle("hollow", middle, radius);
    canvas.line("axis", middle.plus(-radius - 8, 0), middle.plus(radius + 8, 0));
    canvas.line("axis", middle.plus(0, -radius - 8), middle.plus(0, radius + 8));
    Spot free = middle.plus(0, push < 0 ? -radius - 12 : radius + 18);
    canvas.label(Label.middle(free, "⌀ " + view.length(tab.eye().hole())).css("small on"));
  }

  /** A weld that runs across the view's plane shows its section. */
  private void endsOfWeld(MountView view, WeldGroup weld) {
    weld.runs().stream()
        .flatMap(run -> run.corners().stream())
        .mapToDouble(spot -> spot.x())
        .distinct()
        .filter(x -> crossing(weld, x))
        .forEach(x -> view.fillet(x, weld.seam().size(), Math.signum(x)));
  }

  private static boolean crossing(WeldGroup weld, double x) {
    return weld.runs().stream()
        .anyMatch(
            run -> {
              for (int i = 1; i < run.corners().size(); i++) {
                if (Math.abs(run.corners().get(i).x() - x) < 1e-9
                    && Math.abs(run.corners().get(i - 1).x() - x) < 1e-9) {
                  return true;
                }
              }
              return false;
            });
  }
}
