package rungwork.section;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Quantities;

/**
 * A cross-section in its own axes: y to the left, z up, seen along the beam's x, that is with x
 * going away from the reader; the origin at the centroid.
 *
 * @param name such as {@code RHS 80x40x3}
 * @param properties about the centroid
 * @param points where stresses are worth knowing
 * @param walls flat parts with their width-to-thickness; a solid bar has none
 * @param torsion how it carries twist
 * @param outline its exact outline; no loop when the section is known by its properties alone
 * @param net what holes leave of it for stress; nothing where it has none
 */
public record Section(
    String name,
    Properties properties,
    List<StressPoint> points,
    List<Wall> walls,
    Torsion torsion,
    Outline outline,
    Optional<Net> net) {

  private static final String TURNED = " turned";

  /** Refuses a section without a name; copies its lists. */
  public Section {
    name = Guard.name("section", name);
    points = List.copyOf(points);
    walls = List.copyOf(walls);
  }

  /**
   * A section without holes.
   *
   * @param name such as {@code RHS 80x40x3}
   * @param properties about the centroid
   * @param points where stresses are worth knowing
   * @param walls flat parts; a solid bar has none
   * @param torsion how it carries twist
   * @param outline its exact outline
   */
  public Section(
      String name,
      Properties properties,
      List<StressPoint> points,
      List<Wall> walls,
      Torsion torsion,
      Outline outline) {
    this(name, properties, points, walls, torsion, outline, Optional.empty());
  }

  /**
   * A section that is known by its properties, without an outline; its torsion counts as not known.
   *
   * @param name its name
   * @param properties about the centroid
   * @param points where stresses are worth knowing
   * @param walls flat parts
   */
  public Section(String name, Properties properties, List<StressPoint> points, List<Wall> walls) {
    this(name, properties, points, walls, Torsion.OPEN, Outline.unknown());
  }

  /**
   * A cold-formed rectangular tube, corners as EN 10219-2:2006 Annex B takes them: outside radius
   * 2.0 t up to 6 mm wall, 2.5 t up to 10 mm, 3.0 t above, inside one wall less.
   *
   * @param height along z, outside
   * @param width along y, outside
   * @param wall t
   * @return the section
   */
  public static Section rectangularTube(
      Quantity<Length> height, Quantity<Length> width, Quantity<Length> wall) {
    return RectangularTube.coldFormed(
            Quantities.si("tube height", height),
            Quantities.si("tube width", width),
            Quantities.si("tube wall", wall))
        .shape()
        .section();
  }

  /**
   * A rectangular tube with a stated corner; the inside radius is one wall less, not below zero.
   *
   * @param height along z, outside
   * @param width along y, outside
   * @param wall t
   * @param outsideRadius of the corners
   * @return the section
   */
  public static Section rectangularTube(
      Quantity<Length> height,
      Quantity<Length> width,
      Quantity<Length> wall,
      Quantity<Length> outsideRadius) {
    return RectangularTube.cornered(
            Quantities.si("tube height", height),
            Quantities.si("tube width", width),
            Quantities.si("tube wall", wall),
            Quantities.si("outside corner radius", outsideRadius))
        .shape()
        .section();
  }

  /**
   * A cold-formed square tube, corners as in {@link #rectangularTube}.
   *
   * @param side outside
   * @param wall t
   * @return the section
   */
  public static Section squareTube(Quantity<Length> side, Quantity<Length> wall) {
    return rectangularTube(side, side, wall);
  }

  /**
   * A hot-finished rectangular tube: outside radius 1.5 t, inside 1.0 t (EN 10210-2:2006, from
   * memory).
   *
   * @param height along z, outside
   * @param width along y, outside
   * @param wall t
   * @return the section
   */
  public static Section hotFinishedTube(
      Quantity<Length> height, Quantity<Length> width, Quantity<Length> wall) {
    return RectangularTube.hotFinished(
            Quantities.si("tube height", height),
            Quantities.si("tube width", width),
            Quantities.si("tube wall", wall))
        .shape()
        .section();
  }

  /**
   * A round tube.
   *
   * @param outside diameter
   * @param wall t
   * @return the section
   */
  public static Section roundTube(Quantity<Length> outside, Quantity<Length> wall) {
    return Round.tube(Quantities.si("outside diameter", outside), Quantities.si("tube wall", wall))
        .section();
  }

  /**
   * A round bar.
   *
   * @param diameter of the bar
   * @return the section
   */
  public static Section roundBar(Quantity<Length> diameter) {
    return Round.bar(Quantities.si("bar diameter", diameter)).section();
  }

  /**
   * A solid rectangular bar.
   *
   * @param height along z
   * @param width along y
   * @return the section
   */
  public static Section flatBar(Quantity<Length> height, Quantity<Length> width) {
    return new FlatBar(Quantities.si("bar height", height), Quantities.si("bar width", width))
        .section();
  }

  /**
   * A channel folded from plate, its web upright on the right, its flanges pointing left (+y);
   * {@link #mirrored} gives the other hand.
   *
   * @param depth along z, outside
   * @param flange along y, outside
   * @param wall t
   * @param insideRadius of the bends
   * @return the section
   */
  public static Section foldedChannel(
      Quantity<Length> depth,
      Quantity<Length> flange,
      Quantity<Length> wall,
      Quantity<Length> insideRadius) {
    return folded(depth, flange, wall, insideRadius).open().section();
  }

  /**
   * A folded channel closed by a plate of its own thickness, as high as the channel is deep and
   * welded on the toes: one closed cell, as wide as a flange and the plate.
   *
   * @param depth along z, outside
   * @param flange of the channel alone, along y, outside
   * @param wall t of the channel and of the plate
   * @param insideRadius of the bends
   * @return the section
   */
  public static Section boxedChannel(
      Quantity<Length> depth,
      Quantity<Length> flange,
      Quantity<Length> wall,
      Quantity<Length> insideRadius) {
    return folded(depth, flange, wall, insideRadius).boxed().section();
  }

  private static FoldedChannel folded(
      Quantity<Length> depth,
      Quantity<Length> flange,
      Quantity<Length> wall,
      Quantity<Length> insideRadius) {
    return new FoldedChannel(
        Quantities.si("channel depth", depth),
        Quantities.si("channel flange", flange),
        Quantities.si("channel wall", wall),
        Quantities.si("inside bend radius", insideRadius));
  }

  /**
   * A rolled channel, its web upright on the right, its flanges pointing left (+y), parallel or
   * tapered as its walls say.
   *
   * @param depth along z
   * @param width of a flange along y, over the web
   * @param walls thicknesses, root radius and taper
   * @return the section
   */
  public static Section rolledChannel(
      Quantity<Length> depth, Quantity<Length> width, RolledWalls walls) {
    return new RolledChannel(
            Quantities.si("channel depth", depth), Quantities.si("channel flange", width), walls)
        .shape()
        .section();
  }

  /**
   * A rolled angle, its heel at the bottom right, one leg up and one to the left.
   *
   * @param height of the upright leg, outside
   * @param width of the level leg, outside
   * @param wall t
   * @param rootRadius of the fillet between the legs; the toes have half of it
   * @return the section
   */
  public static Section angle(
      Quantity<Length> height,
      Quantity<Length> width,
      Quantity<Length> wall,
      Quantity<Length> rootRadius) {
    return new Angle(
            Quantities.si("angle height", height),
            Quantities.si("angle width", width),
            Quantities.si("angle wall", wall),
            Quantities.si("root radius", rootRadius))
        .shape()
        .section();
  }

  /**
   * The same section under another name.
   *
   * @param newName what it is to be called
   * @return the section
   */
  public Section named(String newName) {
    return new Section(newName, properties, points, walls, torsion, outline, net);
  }

  /**
   * A rolled T, its flange on top, as high as wide and of one thickness (EN 10055:1995: radii t at
   * the root, t/2 and t/4 at the toes, faces sloped by 2 %; from memory).
   *
   * @param height and width
   * @param thickness of web and flange
   * @return the section
   */
  public static Section rolledTee(Quantity<Length> height, Quantity<Length> thickness) {
    double size = Quantities.si("tee height", height);
    double t = Quantities.si("tee thickness", thickness);
    return new Tee(size, size, t, t).rolled().section();
  }

  /**
   * The section after a quarter turn: what pointed left points up.
   *
   * @return the same shape, laid on its other side
   */
  public Section turned() {
    boolean again = name.endsWith(TURNED);
    String newName = again ? name.substring(0, name.length() - TURNED.length()) : name + TURNED;
    return turned(Turn.QUARTER, newName);
  }

  /**
   * The section for the other hand: left and right changed.
   *
   * @return the mirror image
   */
  public Section mirrored() {
    return turned(Turn.MIRROR, name);
  }

  /**
   * Its torsion modulus: a torque over the greatest shear stress that it causes at a stress point,
   * free to warp, holes counted.
   *
   * @return Wt [m³]; infinite for a section without stress points
   */
  public double torsionModulus() {
    return 1 / points.stream().mapToDouble(point -> Math.abs(point.perT())).max().orElse(0);
  }

  /**
   * The same section, stiffer in torsion because the ends of a length of it hold its warping; its
   * other properties stay.
   *
   * @param times as stiff as free to warp [1], at least 1
   * @return the section as the frame's stiffness counts it
   */
  public Section stiffened(double times) {
    return new Section(name, properties.stiffened(times), points, walls, torsion, outline, net);
  }

  /**
   * The section without parts of its walls, for stress where they count as gone: about the centroid
   * of what is left, torsion and shear areas those of the whole.
   *
   * @param gone parts of its walls
   * @return what is left, or the section itself when nothing is gone
   */
  public Section without(List<Wall> gone) {
    return gone.isEmpty() ? this : ReducedSection.of(this, gone);
  }

  private Section turned(Turn turn, String newName) {
    return new Section(
        newName,
        properties.turned(turn),
        points.stream().map(point -> point.turned(turn)).toList(),
        walls.stream().map(wall -> wall.turned(turn)).toList(),
        torsion,
        outline.turned(turn),
        net.map(left -> left.turned(turn)));
  }

  /**
   * The section with a hole through the middle of one wall; for a hole through both walls drill the
   * second one too. Stiffness, stability and the line of centroids stay those of the gross section;
   * stress is that of the net section, the shear in the wall shared by what is left of it. The
   * stress peak at the hole's edge is not counted: steel yields there, but fatigue starts there.
   *
   * @param wall its name, such as {@code left wall}
   * @param diameter of the hole
   * @return the drilled section
   */
  public Section drilled(String wall, Quantity<Length> diameter) {
    return drilled(wall, diameter, Quantities.m(0));
  }

  /**
   * The section with a hole beside the middle of a wall.
   *
   * @param wall its name, such as {@code left wall}
   * @param diameter of the hole
   * @param fromMiddle of the wall's flat part, up, or to the left in a level wall
   * @return the drilled section
   */
  public Section drilled(String wall, Quantity<Length> diameter, Quantity<Length> fromMiddle) {
    return new Drill(
            Guard.positive("hole", Quantities.si("hole", diameter), Scale.MM),
            Quantities.si("place of the hole", fromMiddle))
        .through(this, wall);
  }

  /**
   * What holes leave of a section, for stress: its moments about its own centroid.
   *
   * @param area A [m²]
   * @param iy ∫z² dA [m⁴]
   * @param iz ∫y² dA [m⁴]
   * @param iyz ∫yz dA [m⁴]
   * @param outline what is left, about the gross section's centroid
   * @param centroid from the gross section's centroid
   * @param holes the holes
   */
  public record Net(
      double area,
      double iy,
      double iz,
      double iyz,
      Outline outline,
      Spot centroid,
      List<Hole> holes) {
    /** Refuses figures that no shape has; copies its holes. */
    public Net {
      Guard.positive("area of the net section", area, Scale.MM2);
      Guard.positive("∫z² dA of the net section", iy, Scale.NUMBER);
      Guard.positive("∫y² dA of the net section", iz, Scale.NUMBER);
      if (!(iyz * iyz < iy * iz)) {
        throw new ModelException(
            "no shape has ∫yz dA = %s m⁴ beside ∫z² dA = %s m⁴ and ∫y² dA = %s m⁴"
                .formatted(Scale.NUMBER.show(iyz), Scale.NUMBER.show(iy), Scale.NUMBER.show(iz)));
      }
      holes = List.copyOf(holes);
    }

    /**
     * The moments about y and z of the net section that cause the same stress by N/A + My·z/Iy −
     * Mz·y/Iz as the given ones do about its tilted axes (unsymmetric bending, any textbook). N
     * acts at the gross section's centroid.
     *
     * @param n normal force [N]
     * @param my moment about y [N·m]
     * @param mz moment about z [N·m]
     * @return both moments, about y and about z [N·m]
     */
    public double[] moments(double n, double my, double mz) {
      double aboutY = Guard.finite("moment about y", my - n * centroid.z());
      double aboutZ = Guard.finite("moment about z", mz + n * centroid.y());
      return bending().about(aboutY, aboutZ);
    }

    private TiltedAxes bending() {
      return new TiltedAxes(iy, iz, iyz);
    }

    /**
     * Elastic modulus for bending about y: a moment over the greatest stress that it causes, tilted
     * axes counted.
     *
     * @return of what is left [m³]
     */
    public double wely() {
      return modulus(1, 0);
    }

    /**
     * Elastic modulus for bending about z, as {@link #wely}.
     *
     * @return of what is left [m³]
     */
    public double welz() {
      return modulus(0, 1);
    }

    private double modulus(double my, double mz) {
      double most = outline.furthest(at -> Math.abs(bending().stress(my, mz, at.minus(centroid))));
      return Guard.solved("elastic modulus of the net section", 1 / most);
    }

    Net turned(Turn turn) {
      boolean swaps = turn.swapsAxes();
      return new Net(
          area,
          swaps ? iz : iy,
          swaps ? iy : iz,
          -iyz,
          outline.turned(turn),
          turn.of(centroid),
          holes.stream().map(hole -> hole.turned(turn)).toList());
    }
  }

  /**
   * A hole through one wall.
   *
   * @param wall the wall
   * @param diameter d [m]
   * @param fromMiddle of the wall's flat part, from its first towards its second end [m]
   */
  public record Hole(Wall wall, double diameter, double fromMiddle) {
    /** Refuses what is not finite. */
    public Hole {
      Guard.positive("diameter of a hole", diameter, Scale.MM);
      Guard.finite("place of a hole", fromMiddle);
    }

    Hole turned(Turn turn) {
      return new Hole(wall.turned(turn), diameter, fromMiddle);
    }
  }

  /**
   * Why a flat frame cannot take this section, if so: its shear centre or principal axes leave the
   * frame's plane, so plane and grillage action would mix.
   *
   * @return the reason, or nothing when it fits
   */
  public Optional<String> unfitForFlatFrame() {
    return new FlatFrameFit(properties).reason();
  }

  /** The name and the sizes of the section in workshop units. */
  @Override
  public String toString() {
    Properties p = properties;
    return "%s: A %s cm², Iy %s cm⁴, Iz %s cm⁴, It %s cm⁴, Wel,y %s cm³, Wel,z %s cm³"
        .formatted(
            name,
            digits(p.area(), 1e-4),
            digits(p.iy(), 1e-8),
            digits(p.iz(), 1e-8),
            digits(p.it(), 1e-8),
            digits(p.wely(), 1e-6),
            digits(p.welz(), 1e-6));
  }

  private static String digits(double value, double unit) {
    return new Scale("", unit).number(value, 4);
  }
}
