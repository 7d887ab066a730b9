package rungwork.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The exact outline of a cross-section. Its area integrals follow from its edge by Green's theorem,
 * in closed form for lines and arcs.
 *
 * @param loops closed paths: the outer edge runs from y towards z, the edge of a bore the other way
 *     round, so that it subtracts
 */
public record Outline(List<List<Segment>> loops) {
  /** Halvings of the depth after which a level is known to the last bit of a double. */
  private static final int HALVINGS = 60;

  /** Copies its loops. */
  public Outline {
    loops = loops.stream().map(List::copyOf).toList();
  }

  /** An outline without any edge, of a section that is known by its properties alone. */
  static Outline unknown() {
    return new Outline(List.of());
  }

  /** A path run through backwards, as the edge of a bore. */
  static List<Segment> bore(List<Segment> path) {
    List<Segment> back = new ArrayList<>(path.stream().map(Segment::backwards).toList());
    Collections.reverse(back);
    return back;
  }

  /** The edge of a strip of one thickness [m] along an open centre line. */
  static List<Segment> around(List<Segment> centre, double thickness) {
    List<Segment> right = aside(centre, thickness / 2);
    List<Segment> left = bore(aside(centre, -thickness / 2));
    int last = centre.size() - 1;
    List<Segment> edge = new ArrayList<>(drawn(right));
    edge.add(new Line(right.get(last).end(), left.get(0).start()));
    edge.addAll(drawn(left));
    edge.add(new Line(left.get(last).end(), right.get(0).start()));
    return edge;
  }

  private static List<Segment> aside(List<Segment> path, double right) {
    return path.stream().map(piece -> piece.aside(right)).toList();
  }

  /** Without pieces of no length, such as the inside of a bend without radius. */
  private static List<Segment> drawn(List<Segment> path) {
    return path.stream().filter(piece -> piece.length() > Pen.NOTHING).toList();
  }

  /** A piece after half a turn about a place. */
  static Segment halfTurned(Segment piece, Spot about) {
    return piece.turned(Turn.QUARTER).turned(Turn.QUARTER).moved(about.times(2));
  }

  /** The four sides of an upright rectangle, run through from y towards z. */
  static List<Segment> rectangle(Spot middle, double height, double width) {
    return Pen.roundedRectangle(height, width, 0).stream().map(side -> side.moved(middle)).toList();
  }

  /** This and another outline together; they may touch. */
  Outline and(List<List<Segment>> others) {
    return new Outline(Stream.concat(loops.stream(), others.stream()).toList());
  }

  Outline halfTurned(Spot about) {
    return mapped(piece -> halfTurned(piece, about));
  }

  Moments moments() {
    return pieces().map(Segment::moments).reduce(Moments.NONE, Moments::plus);
  }

  Outline centred() {
    Spot back = moments().centroid().times(-1);
    return mapped(piece -> piece.moved(back));
  }

  /** The furthest that it reaches from the origin along an axis, on either side [m]. */
  double reach(ToDoubleFunction<Spot> coordinate) {
    return pieces()
        .flatMap(piece -> piece.reaches().stream())
        .mapToDouble(spot -> Math.abs(coordinate.applyAsDouble(spot)))
        .max()
        .orElse(0);
  }

  /**
   * The plastic modulus for bending about y, ∫|z − level| dA about the level that halves the area
   * [m³].
   */
  double plasticModulus() {
    return plasticModulus(0);
  }

  /**
   * The same when part of the area carries a force: ∫ ± (z − centroid) dA, positive above the level
   * that leaves that part of the area over [m³].
   *
   * @param share of the area that the force takes, from −1 in compression to 1 in tension [1]
   * @return moment about y over the yield strength
   */
  double plasticModulus(double share) {
    double low = -reach(Spot::z);
    double high = -low;
    Moments all = moments();
    double half = all.area() * (1 + share) / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (above(middle).area() > half) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double level = (low + high) / 2;
    Half above = above(level);
    double centre = all.z() / all.area();
    return 2 * (above.moment() + (level - centre) * above.area());
  }

  /** The same outline, laid differently. */
  Outline turned(Turn turn) {
    Outline turned = mapped(piece -> piece.turned(turn));
    if (turn.handedness() > 0) {
      return turned;
    }
    return new Outline(turned.loops.stream().map(Outline::bore).toList());
  }

  private Half above(double level) {
    return pieces().map(piece -> piece.above(level)).reduce(Half.NONE, Half::plus);
  }

  private Outline mapped(Function<Segment, Segment> change) {
    return new Outline(loops.stream().map(loop -> loop.stream().map(change).toList()).toList());
  }

  private Stream<Segment> pieces() {
    return loops.stream().flatMap(List::stream);
  }
}
