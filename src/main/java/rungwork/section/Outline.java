package rungwork.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * The exact outline of a cross-section. Its area integrals follow from its edge by Green's theorem,
 * in closed form for lines and arcs.
 *
 * @param loops closed paths: the outer edge runs from y towards z, the edge of a bore the other way
 *     round, so that it subtracts
 */
public record Outline(List<List<Segment>> loops) {
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
    return loops.isEmpty() ? 0 : furthest(spot -> Math.abs(coordinate.applyAsDouble(spot)));
  }

  /**
   * The largest value of a coordinate on the edge.
   *
   * @param coordinate such as {@code Spot::z} for its upper end, or its negative for the lower one
   * @return that value [m]
   */
  public double furthest(ToDoubleFunction<Spot> coordinate) {
    return pieces()
        .flatMap(piece -> piece.reaches().stream())
        .mapToDouble(spot -> Guard.finite("coordinate", coordinate.applyAsDouble(spot)))
        .max()
        .orElseThrow(() -> new ModelException("an outline without lines has no edge"));
  }

  /**
   * What it takes to strain the whole area plastically, for a yield strength of one: ∫|stretch +
   * bendY·z − bendZ·y| dA, exact. With one of the three alone it is A, or a plastic modulus.
   *
   * @param stretch strain at the origin, the centroid in a section [1]
   * @param bendY strain by bending about y, per length along z [1/m]
   * @param bendZ strain by bending about z, per length against y [1/m]
   * @return the integral [m²]
   */
  public double plasticWork(double stretch, double bendY, double bendZ) {
    Guard.finite("stretch", stretch);
    Guard.finite("bend", Math.hypot(bendY, bendZ));
    return new NeutralAxis(this).work(stretch, bendY, bendZ);
  }

  /** The same outline, laid differently. */
  Outline turned(Turn turn) {
    Outline turned = mapped(piece -> piece.turned(turn));
    if (turn.handedness() > 0) {
      return turned;
    }
    return new Outline(turned.loops.stream().map(Outline::bore).toList());
  }

  /** What of it lies above a level. */
  Half above(double level) {
    Half sum = Half.NONE;
    for (List<Segment> loop : loops) {
      for (Segment piece : loop) {
        sum = sum.plus(piece.above(level));
      }
    }
    return sum;
  }

  private Outline mapped(Function<Segment, Segment> change) {
    return new Outline(loops.stream().map(loop -> loop.stream().map(change).toList()).toList());
  }

  private Stream<Segment> pieces() {
    return loops.stream().flatMap(List::stream);
  }

  /**
   * What the exact outline gives for bending beyond the {@link Properties}: elastic moduli at each
   * edge, plastic moduli about any axis, and what an axial force leaves of them.
   *
   * @param section a section with its outline
   */
  public record Moduli(Section section) {
    /** Refuses a section that is known by its properties alone. */
    public Moduli {
      if (section.outline().loops().isEmpty()) {
        throw new ModelException(
            "section "
                + section.name()
                + " is known by its properties alone; its moduli need its outline");
      }
    }

    /**
     * Elastic modulus at the top edge for bending about y.
     *
     * @return Iy over the height of the edge above the centroid [m³]
     */
    public double top() {
      return section.properties().iy() / reach(Spot::z);
    }

    /**
     * Elastic modulus at the bottom edge for bending about y.
     *
     * @return Iy over the depth of the edge below the centroid [m³]
     */
    public double bottom() {
      return section.properties().iy() / reach(spot -> -spot.z());
    }

    /**
     * Elastic modulus at the left edge for bending about z.
     *
     * @return Iz over the distance of the edge from the centroid [m³]
     */
    public double left() {
      return section.properties().iz() / reach(Spot::y);
    }

    /**
     * Elastic modulus at the right edge for bending about z.
     *
     * @return Iz over the distance of the edge from the centroid [m³]
     */
    public double right() {
      return section.properties().iz() / reach(spot -> -spot.y());
    }

    private double reach(ToDoubleFunction<Spot> coordinate) {
      return section.outline().furthest(coordinate);
    }

    /**
     * The plastic modulus about an axis through the centroid.
     *
     * @param angle of the axis from y towards z [rad]
     * @return moment about that axis over the yield strength, the neutral axis parallel to it [m³]
     */
    public double plastic(double angle) {
      Guard.finite("angle", angle);
      return plastic(angle, 0);
    }

    /**
     * The plastic modulus that an axial force leaves: the exact curve of the outline, a neutral
     * axis parallel to the axis with stress at yield on both sides.
     *
     * @param angle of the axis from y towards z [rad]
     * @param share of the force at yield that the axial force takes, N/(A·fy), from −1 to 1 [1]
     * @return moment about that axis and the centroid over the yield strength [m³]
     */
    public double plastic(double angle, double share) {
      if (Math.abs(Guard.finite("share of the force at yield", share)) > 1) {
        throw new ModelException(
            "an axial force of "
                + Scale.NUMBER.show(share)
                + " times that at yield leaves no moment; it may reach 1");
      }
      return new NeutralAxis(section.outline().turned(Turn.by(-angle))).modulus(share);
    }

    /**
     * What EN 1993-1-1:2005, 6.2.9.1(5) leaves of the plastic modulus of a rectangular tube: (1 −
     * n)/(1 − 0.5·a), at most 1, a = (A − 2·b·t)/A at most 0.5, b·t of the walls that bend across
     * (from memory). For a round tube 1 − n^1.7 (ENV 1993-1-1 and EN 1993-1-1:2022, from memory).
     * Measured against the exact curve, the lines lie up to 8 % of the plastic moment on the unsafe
     * side, at a quarter of the force at yield, which they count as nothing, the round tube's curve
     * up to 1 % under large ones.
     *
     * @param axis angle of the axis: nil about y, a quarter turn about z [rad]
     * @param share of the force at yield that the axial force takes, without its sign [1]
     * @return the part of the plastic moment that is left [1]
     */
    public double byStandard(double axis, double share) {
      return new StandardTubeCurve(section)
          .left(axis, Guard.finite("share of the axial force", share));
    }
  }
}
