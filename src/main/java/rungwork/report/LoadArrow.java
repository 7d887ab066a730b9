package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/**
 * The arrow of a load: a force's ends where it acts, a moment's starts there.
 *
 * @param place where it is from, in words
 * @param arrow the arrow
 * @param free its end away from the frame
 * @param held its end at the frame
 */
record LoadArrow(String place, Arrow arrow, Spot free, Spot held) {
  private static final double LONGEST = 92;
  private static final double SHORTEST = 16;

  /** A moment's arrow points away from the frame. */
  private boolean turning() {
    return free.equals(arrow.tip());
  }

  /**
   * The arrow of a load.
   *
   * @param load what acts
   * @param kind its force or its moment
   * @param sight how the frame is seen
   * @param largest of the drawing, whose arrow is the longest [N or N·m]
   * @return its arrow
   */
  static LoadArrow of(ActingLoad load, Kind kind, Sight sight, double largest) {
    Wrench wrench = load.wrench();
    Spot here = sight.place(load.at());
    double k = length(load.size(kind), largest) / load.size(kind);
    if (kind == Kind.FORCE) {
      Spot way = unit(sight).along(wrench.fx() * k, wrench.fy() * k, wrench.fz() * k);
      Spot tail = here.plus(-way.x(), -way.y());
      return new LoadArrow(load.place(), new Arrow(tail, here), tail, here);
    }
    Spot way = unit(sight).along(wrench.mx() * k, wrench.my() * k, wrench.mz() * k);
    Spot tip = here.plus(way.x(), way.y());
    return new LoadArrow(load.place(), new Arrow(here, tip), tip, here);
  }

  /** From the shortest to the longest arrow. */
  private static double length(double size, double largest) {
    return SHORTEST + (LONGEST - SHORTEST) * size / largest;
  }

  /** The view without its scale. */
  private static Sight unit(Sight sight) {
    double scale = Math.max(Math.abs(sight.xx()), Math.abs(sight.zy()));
    return new Sight(
        sight.xx() / scale, sight.yx() / scale, sight.yy() / scale, sight.zy() / scale);
  }

  /** Draws it, its value beyond its free end. */
  void draw(Canvas canvas, Labels labels, String value) {
    canvas.part(
        place + ": " + value,
        () -> {
          if (turning()) {
            arrow.drawDouble(canvas, "force", "head-of-force");
          } else {
            arrow.draw(canvas, "force", "head-of-force");
          }
        });
    labels.put(beyond(value));
  }

  /** Places for words beyond its free end. */
  private List<Label> beyond(String words) {
    double down = Math.signum(free.y() - held.y());
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 5; row++) {
      double y = down < 0 ? -5 - 14 * row : 14 + 14 * row;
      places.add(Label.middle(free.plus(0, y), words).css("small on"));
      places.add(Label.at(free.plus(5, y - 5), words).css("small on"));
      places.add(Label.end(free.plus(-5, y - 5), words).css("small on"));
    }
    return places;
  }
}
