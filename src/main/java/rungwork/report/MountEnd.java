package rungwork.report;

import java.util.Optional;
import rungwork.joint.Pivot;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.ChainSheet.Arrival;

/**
 * A mount seen along its foot: the plates from their edge, the bolt, the welds beside the plates.
 *
 * @param parts the mount's parts
 * @param loaded what arrives, if anything does
 * @param canvas the drawing
 */
record MountEnd(MountParts parts, Optional<Arrival> loaded, Canvas canvas) {
  void draw(MountView view) {
    new MountTube(parts, canvas)
        .draw(
            view,
            parts.halfAcross(),
            !parts.across() && parts.under().isPresent(),
            -parts.offset());
    parts.tab().ifPresent(tab -> plates(view, tab));
    parts.welds().forEach(weld -> sidesOfWeld(view, weld));
    parts.pivot().ifPresent(pivot -> bolt(view, pivot));
  }

  private void plates(MountView view, Tab tab) {
    double half = tab.plate().thickness() / 2;
    double top = tab.plate().height() + tab.eye().end();
    for (double middle : parts.plates()) {
      view.block("steel", middle - half, 0, middle + half, top);
    }
    double last = parts.plates().get(parts.plates().size() - 1);
    view.along(last - half, last + half, top, view.place(0, top).y() - 24);
  }

  /** The bolt with what it carries: a ball beside a single tab, or between a pair. */
  private void bolt(MountView view, Pivot pivot) {
    double height = pivot.tab().plate().height();
    double radius = pivot.tab().eye().bolt().size().diameter() / 2;
    double half = pivot.stack().centre() / 2;
    boolean single = parts.plates().size() == 1;
    double thick = pivot.tab().plate().thickness() / 2;
    double middle = single ? ballSide() * (thick + pivot.stack().gap() + half) : 0;
    view.block(
        "weight", middle - half, height - 1.6 * radius, middle + half, height + 1.6 * radius);
    double reach = single ? Math.abs(middle) + half : parts.plates().get(1) + thick;
    double left = single ? (ballSide() > 0 ? -thick : -reach) : -reach;
    double right = single ? (ballSide() > 0 ? reach : thick) : reach;
    double head = 0.7 * 2 * radius;
    view.block("steel", left - head, height - 1.5 * radius, left, height + 1.5 * radius);
    view.block("steel", right, height - 1.5 * radius, right + head, height + 1.5 * radius);
    view.block("edge", left, height - radius, right, height + radius);
    Spot beside = view.place(right + head, height).plus(8, 4);
    canvas.label(Label.at(beside, pivot.tab().eye().bolt().toString()).css("small on"));
  }

  /** On which side of a single tab the ball sits: where the load arrives, or else to the right. */
  private double ballSide() {
    return loaded.map(a -> a.load().place().y() < -1e-6 ? -1.0 : 1.0).orElse(1.0);
  }

  private void sidesOfWeld(MountView view, WeldGroup weld) {
    weld.runs().stream()
        .flatMap(run -> run.corners().stream())
        .mapToDouble(spot -> spot.y())
        .distinct()
        .forEach(y -> view.fillet(y, weld.seam().size(), outwards(y)));
  }

  /** A fillet lies on the side of its plate that faces away from the plate's middle. */
  private double outwards(double y) {
    return parts.plates().stream()
        .min((a, b) -> Double.compare(Math.abs(a - y), Math.abs(b - y)))
        .map(middle -> y >= middle ? 1.0 : -1.0)
        .orElse(Math.signum(y));
  }
}
