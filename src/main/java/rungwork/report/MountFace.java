package rungwork.report;

import java.util.List;
import rungwork.joint.Bracket;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;

/**
 * The face that a mount stands on, with the feet of its plates and its welds.
 *
 * @param parts the mount's parts
 * @param canvas the drawing
 */
record MountFace(MountParts parts, Canvas canvas) {
  void draw(MountView view) {
    if (parts.under().isPresent()) {
      double half = parts.under().get().tube().width() / 2;
      double far = parts.across() ? parts.halfAcross() : parts.halfAlong();
      for (double edge : List.of(-half - parts.offset(), half - parts.offset())) {
        if (parts.across()) {
          view.line("thin", edge, -far, edge, far);
        } else {
          view.line("thin", -far, edge, far, edge);
        }
      }
    }
    parts.bracket().ifPresent(bracket -> plate(view, bracket));
    parts.tab().ifPresent(tab -> feet(view, tab));
    parts.welds().forEach(weld -> runs(view, weld));
  }

  private void plate(MountView view, Bracket bracket) {
    boolean one = bracket.stand().wrap() == Bracket.Wrap.ONE_FACE;
    double edge = one ? bracket.outline().across() / 2 : bracket.rail().width() / 2;
    double far = edge - bracket.outline().across();
    double along = bracket.outline().along() / 2;
    Spot[] corners =
        parts.across()
            ? new Spot[] {
              view.place(-edge, -along),
              view.place(-far, -along),
              view.place(-far, along),
              view.place(-edge, along),
              view.place(-edge, -along)
            }
            : new Spot[] {
              view.place(-along, far),
              view.place(along, far),
              view.place(along, edge),
              view.place(-along, edge),
              view.place(-along, far)
            };
    canvas.polyline("weld-line", List.of(corners));
  }

  private void feet(MountView view, Tab tab) {
    double half = tab.plate().foot() / 2;
    double thick = tab.plate().thickness() / 2;
    parts
        .plates()
        .forEach(middle -> view.block("steel", -half, middle - thick, half, middle + thick));
  }

  private void runs(MountView view, WeldGroup weld) {
    weld.runs()
        .forEach(
            run ->
                canvas.polyline(
                    "weld-line",
                    run.corners().stream().map(spot -> view.place(spot.x(), spot.y())).toList()));
  }
}
