package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.frame.Wrench;
import rungwork.joint.Bracket;
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
    canvas.part("the welds on the face", () -> new MountFace(parts, canvas).draw(onFace));
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
    int push = loaded.map(arrival -> arrival.load().wrench().fz() > 0 ? -1 : 1).orElse(1);
    new MountSide(parts, canvas, push).draw(view);
    force(view, Wrench::fx, Wrench::fz);
  }

  private void endView(MountView view) {
    new MountEnd(parts, loaded, canvas).draw(view);
    force(view, Wrench::fy, Wrench::fz);
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
