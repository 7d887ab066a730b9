package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.frame.Wrench;
import rungwork.joint.Bracket;
import rungwork.joint.Pivot;
import rungwork.joint.Tab;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.ChainSheet.Arrival;
import rungwork.loadpath.Face;
import rungwork.loadpath.MountChain;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * A mount to scale in three views: along the pin, along the foot, and on the face with its welds;
 * the force of one load case where it arrives.
 */
final class MountSketch {
  /** Height of the tab with the drawn part of its tube [px]. */
  private static final double SIZE = 230;

  /** Largest width of the two upper views together [px]. */
  private static final double WIDTH = 520;

  private static final double BETWEEN = 150;
  private static final double LONGEST = 76;
  private static final double SHORTEST = 22;

  /** A smaller part of the force is not drawn. */
  private static final double DRAWN = 0.02;

  private final Face face;
  private final MountParts parts;
  private final Optional<Arrival> loaded;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private final double scale;

  private MountSketch(MountChain chain, Optional<Arrival> loaded, Units units) {
    face = chain.face();
    parts = MountParts.of(chain);
    this.loaded = loaded;
    this.units = units;
    scale =
        Math.min(
            SIZE / (parts.height() + parts.depth()),
            WIDTH / (2 * parts.halfAlong() + 2 * parts.halfAcross()));
  }

  static Picture of(MountChain chain, Optional<Arrival> loaded, Units units) {
    return new MountSketch(chain, loaded, units).draw(chain.mount());
  }

  private Picture draw(String mount) {
    MountView alongPin = view(0, 0);
    double aside = (parts.halfAlong() + parts.halfAcross()) * scale + BETWEEN;
    MountView alongFoot = view(aside, 0);
    double below = (parts.depth() + parts.halfAcross()) * scale + 100;
    MountView onFace = view(0, below);
    canvas.part("seen along the pin", () -> sideView(alongPin));
    canvas.part("seen along the foot", () -> endView(alongFoot));
    canvas.part("the welds on the face", () -> faceView(onFace));
    String out = face.outward().words();
    caption(alongPin, "along the pin", face.along().words(), out);
    caption(alongFoot, "along the foot", face.pin().words(), out);
    note(onFace, aside);
    String title = "mount " + mount + " to scale, " + units.scale(Kind.LENGTH).unit();
    return new Picture(title, canvas.done(title), words(mount));
  }

  private MountView view(double x, double y) {
    return new MountView(canvas, new Spot(x, y), scale, units);
  }

  /** Under a view: what is seen, and where its right and its top point on the vehicle. */
  private void caption(MountView view, String seen, String right, String up) {
    Spot at = view.origin().plus(0, parts.depth() * scale + 62);
    canvas.label(Label.middle(at, seen + ": → " + right + ", ↑ " + up).css("small"));
  }

  private void sideView(MountView view) {
    tube(view, parts.halfAlong(), parts.across(), 0);
    parts.tab().ifPresent(tab -> plate(view, tab));
    parts.welds().forEach(weld -> endsOfWeld(view, weld));
    parts.tab().ifPresent(tab -> hole(view, tab));
    force(view, Wrench::fx, Wrench::fz);
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
    double radius = tab.eye().hole() / 2 * scale;
    canvas.circle("hollow", middle, radius);
    canvas.line("axis", middle.plus(-radius - 8, 0), middle.plus(radius + 8, 0));
    canvas.line("axis", middle.plus(0, -radius - 8), middle.plus(0, radius + 8));
    Spot below = middle.plus(0, radius + 16);
    canvas.label(Label.middle(below, "⌀ " + view.length(tab.eye().hole())).css("small on"));
  }

  private void endView(MountView view) {
    tube(view, parts.halfAcross(), !parts.across() && parts.under().isPresent(), -offset());
    parts.tab().ifPresent(tab -> plates(view, tab));
    parts.welds().forEach(weld -> sidesOfWeld(view, weld));
    parts.pivot().ifPresent(pivot -> bolt(view, pivot));
    force(view, Wrench::fy, Wrench::fz);
  }

  private void plates(MountView view, Tab tab) {
    double half = tab.plate().thickness() / 2;
    double top = tab.plate().height() + tab.eye().end();
    for (double middle : parts.plates()) {
      view.block("steel", middle - half, 0, middle + half, top);
    }
    double last = parts.plates().get(parts.plates().size() - 1);
    view.along(last - half, last + half, top, view.place(0, top).y() - 12);
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

  /** Cross-section of the tube, open where it is cut off, or its wall seen from the side. */
  private void tube(MountView view, double half, boolean section, double middle) {
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

  private double offset() {
    return parts.under().map(MountParts.Under::offset).orElse(0.0);
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

  private void faceView(MountView view) {
    if (parts.under().isPresent()) {
      double half = parts.under().get().tube().width() / 2;
      double far = parts.across() ? parts.halfAcross() : parts.halfAlong();
      for (double edge : List.of(-half - offset(), half - offset())) {
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

  private void force(MountView view, ToDoubleFunction<Wrench> right, ToDoubleFunction<Wrench> up) {
    if (loaded.isEmpty() || parts.tab().isEmpty()) {
      return;
    }
    Wrench w = loaded.get().load().wrench();
    double all = Math.hypot(Math.hypot(w.fx(), w.fy()), w.fz());
    double x = right.applyAsDouble(w);
    double z = up.applyAsDouble(w);
    double own = Math.hypot(x, z);
    if (own <= DRAWN * all) {
      return;
    }
    double length = SHORTEST + (LONGEST - SHORTEST) * own / all;
    Spot tip = view.place(0, parts.tab().get().plate().height());
    view.force(tip, x / own * length, z / own * length, units.scale(Kind.FORCE).show(own, 3));
  }

  private void note(MountView onFace, double aside) {
    Spot at = new Spot(aside - parts.halfAcross() * scale, onFace.origin().y() - 20);
    List<String> lines = lines();
    for (int i = 0; i < lines.size(); i++) {
      canvas.label(Label.at(at.plus(0, 18 * i), lines.get(i)).css("small"));
    }
    double low = onFace.origin().y() + parts.halfAcross() * scale + 26;
    String turned = "on the face: → " + face.along().words() + ", ↑ " + face.pin().words();
    canvas.label(Label.middle(new Spot(0, low), turned + "; thick: weld or fold").css("small"));
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("dimensions [" + units.scale(Kind.LENGTH).unit() + "]");
    loaded.ifPresent(arrival -> lines.add("force under " + arrival.load().loadCase()));
    for (WeldGroup weld : parts.welds()) {
      String size = Numbers.dimension(weld.seam().size(), units);
      lines.add(weld.name() + ": " + kind(weld) + " " + size);
    }
    parts.bracket().ifPresent(bracket -> lines.add(bracket(bracket)));
    parts.under().ifPresent(under -> lines.add("tube: wall " + tube(under.tube())));
    return lines;
  }

  private static String kind(WeldGroup weld) {
    return weld.seam().kind() == WeldGroup.Kind.FILLET ? "fillet, leg" : "full penetration,";
  }

  private String bracket(Bracket bracket) {
    String words =
        bracket.name()
            + ": "
            + Numbers.dimension(bracket.outline().along(), units)
            + " along the rail, leg "
            + Numbers.dimension(bracket.seam().size(), units)
            + " all round, "
            + bracket.stand().wrap().words();
    double sides = MountParts.sides(bracket);
    return sides > 0 ? words + ", " + Numbers.dimension(sides, units) + " down" : words;
  }

  private String tube(TubeWall tube) {
    return Numbers.dimension(tube.wall(), units)
        + ", face "
        + Numbers.dimension(tube.width(), units);
  }

  private String words(String mount) {
    return "Mount " + mount + ": " + String.join("; ", lines()) + ".";
  }
}
