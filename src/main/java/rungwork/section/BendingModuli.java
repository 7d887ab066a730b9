package rungwork.section;

import java.util.function.ToDoubleFunction;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * What the exact outline gives for bending beyond the {@link Properties}: elastic moduli at each
 * edge, plastic moduli about any axis, and what an axial force leaves of them.
 *
 * @param section a section with its outline
 */
public record BendingModuli(Section section) {
  /** Refuses a section that is known by its properties alone. */
  public BendingModuli {
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
    return section.outline().loops().stream()
        .flatMap(loop -> loop.stream().flatMap(piece -> piece.reaches().stream()))
        .mapToDouble(coordinate)
        .max()
        .orElseThrow();
  }

  /**
   * The plastic modulus about an axis through the centroid.
   *
   * @param angle of the axis from y towards z [rad]
   * @return moment about that axis over the yield strength, the neutral axis parallel to it [m³]
   */
  public double plastic(double angle) {
    return plastic(angle, 0);
  }

  /**
   * The plastic modulus that an axial force leaves: the exact curve of the outline, a neutral axis
   * parallel to the axis with stress at yield on both sides.
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
    return section.outline().turned(Turn.by(-angle)).plasticModulus(share);
  }

  /**
   * What EN 1993-1-1:2005, 6.2.9.1(5) leaves of the plastic modulus of a rectangular tube: (1 −
   * n)/(1 − 0.5·a), at most 1, a = (A − 2·b·t)/A at most 0.5, b·t of the walls that bend across
   * (from memory). For a round tube 1 − n^1.7 (ENV 1993-1-1 and EN 1993-1-1:2022, from memory).
   * Measured against the exact curve, the lines lie up to 6 % of the plastic moment on the unsafe
   * side under small forces, which they count as nothing, the round tube's curve up to 1 % under
   * large ones.
   *
   * @param axis angle of the axis: nil about y, a quarter turn about z [rad]
   * @param share of the force at yield that the axial force takes, without its sign [1]
   * @return the part of the plastic moment that is left [1]
   */
  public double byStandard(double axis, double share) {
    if (section.torsion() != Torsion.CLOSED) {
      throw new ModelException(
          "section "
              + section.name()
              + " is no tube; the standard's curve is for rectangular and round tubes");
    }
    double n = Math.abs(share);
    if (section.walls().stream().anyMatch(wall -> wall.edge() == Wall.Edge.ROUND)) {
      return 1 - Math.pow(n, 1.7);
    }
    double webs = Math.min(0.5, 1 - flanges(axis) / section.properties().area());
    return Math.min(1, (1 - n) / (1 - 0.5 * webs));
  }

  /** 2·b·t: whole width of the walls along the axis times their thickness. */
  private double flanges(double axis) {
    boolean aboutY = Math.abs(Math.cos(axis)) > Math.abs(Math.sin(axis));
    ToDoubleFunction<Spot> along = aboutY ? Spot::y : Spot::z;
    double width = reach(along) + reach(spot -> -along.applyAsDouble(spot));
    return section.walls().stream()
        .filter(wall -> isAlong(wall, along))
        .mapToDouble(wall -> width * wall.thickness())
        .sum();
  }

  private static boolean isAlong(Wall wall, ToDoubleFunction<Spot> coordinate) {
    Spot run = wall.to().minus(wall.from());
    return Math.abs(coordinate.applyAsDouble(run)) > run.size() / 2;
  }
}
