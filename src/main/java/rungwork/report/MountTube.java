package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.joint.Bracket;
import rungwork.joint.TubeWall;

/**
 * The tube under a mount, in section or from its side, with the bracket that wraps it.
 *
 * @param parts the mount's parts
 * @param canvas the drawing
 */
record MountTube(MountParts parts, Canvas canvas) {
  /** Cross-section of the tube, open where it is cut off, or its wall seen from the side. */
  void draw(MountView view, double half, boolean section, double middle) {
    if (parts.under().isEmpty()) {
      view.line("edge", -half, 0, half, 0);
      for (double x = -half; x < half; x += 0.005) {
        view.line("faint", x, 0, x - 0.003, -0.004);
      }
      return;
    }
    TubeWall tube = parts.under().get().tube();
    double deep = parts.depth();
    double side = section ? tube.width() / 2 : half;
    view.block("steel", middle - side, -tube.wall(), middle + side, 0);
    if (section) {
      view.block("steel", middle - side, -deep, middle - side + tube.wall(), -tube.wall());
      view.block("steel", middle + side - tube.wall(), -deep, middle + side, -tube.wall());
    } else {
      view.line("faint", middle - side, -deep, middle + side, -deep);
    }
    parts.bracket().ifPresent(bracket -> bracket(view, bracket, section));
  }

  /** A bracket seen along the rail wraps its section; seen from its side it covers it. */
  private void bracket(MountView view, Bracket bracket, boolean section) {
    double sides = MountParts.sides(bracket);
    double along = bracket.outline().along() / 2;
    if (!section) {
      view.block("tint", -along, -sides, along, 0);
      view.block("edge", -along, -sides, along, 0);
      return;
    }
    boolean one = bracket.stand().wrap() == Bracket.Wrap.ONE_FACE;
    double edge = one ? bracket.outline().across() / 2 : bracket.rail().width() / 2;
    double far = edge - bracket.outline().across();
    List<Spot> profile = new ArrayList<>();
    if (bracket.stand().wrap() == Bracket.Wrap.OVER_TOP) {
      profile.add(onRail(view, far, -sides));
    }
    profile.add(onRail(view, far, 0));
    profile.add(onRail(view, edge, 0));
    if (!one) {
      profile.add(onRail(view, edge, -sides));
    }
    canvas.polyline("weld-line", profile);
  }

  /** Across a rail that runs along the pin is against the foot's direction. */
  private Spot onRail(MountView view, double across, double up) {
    return view.place(parts.across() ? -across : across, up);
  }
}
