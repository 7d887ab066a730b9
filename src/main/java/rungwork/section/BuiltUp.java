package rungwork.section;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.quantity.Quantities;

/**
 * Sections of several parts that are fastened to each other and act as one: plates welded on
 * channels and tubes, channels toe to toe, tubes in tubes, tees.
 *
 * <pre>
 *   BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).platedOn(mm(80), mm(4))
 *   BuiltUp.tube(mm(80), mm(40), mm(3)).sleeved(mm(70), mm(30), mm(3))
 * </pre>
 *
 * <p>One section means one strain: plane sections stay plane across all parts. That holds where
 * welds run along the part, or where welds or bolts are so close that they carry the shear between
 * the parts; a weld's flow is that of the wall beside it. <b>A part that is only pushed in, or
 * fastened at its ends alone, does not act so</b>: count the other part without it.
 */
public final class BuiltUp {
  private BuiltUp() {}

  /**
   * A T welded from two plates, its flange on top.
   *
   * @param height over flange and web
   * @param width of the flange
   * @param web thickness
   * @param flange thickness
   * @return the section
   */
  public static Section tee(
      Quantity<Length> height,
      Quantity<Length> width,
      Quantity<Length> web,
      Quantity<Length> flange) {
    return new Tee(
            Quantities.si("tee height", height),
            Quantities.si("tee width", width),
            Quantities.si("web thickness", web),
            Quantities.si("flange thickness", flange))
        .welded()
        .section();
  }

  /**
   * A folded channel to be closed, its web on the right as in {@link Section#foldedChannel}.
   *
   * @param depth along z, outside
   * @param flange along y, outside
   * @param wall t
   * @param insideRadius of the bends
   * @return the channel
   */
  public static Channel channel(
      Quantity<Length> depth,
      Quantity<Length> flange,
      Quantity<Length> wall,
      Quantity<Length> insideRadius) {
    FoldedChannel folded =
        new FoldedChannel(
            Quantities.si("channel depth", depth),
            Quantities.si("channel flange", flange),
            Quantities.si("channel wall", wall),
            Quantities.si("inside bend radius", insideRadius));
    double corner = folded.wall() + folded.bend();
    return new Channel(
        new ClosedChannel(folded.open(), folded.depth(), folded.flange(), folded.wall(), corner));
  }

  /**
   * A rolled channel to be closed, its web on the right as in {@link Section#rolledChannel}.
   *
   * @param depth along z
   * @param width of a flange along y, over the web
   * @param walls thicknesses, root radius and taper
   * @return the channel
   */
  public static Channel rolledChannel(
      Quantity<Length> depth, Quantity<Length> width, RolledWalls walls) {
    RolledChannel rolled =
        new RolledChannel(
            Quantities.si("channel depth", depth), Quantities.si("channel flange", width), walls);
    double toe = walls.thickness(rolled.width(), rolled.width());
    double corner = walls.web() + walls.root();
    return new Channel(
        new ClosedChannel(rolled.shape(), rolled.depth(), rolled.width(), toe, corner));
  }

  /**
   * A cold-formed rectangular tube to be strengthened, as in {@link Section#rectangularTube}.
   *
   * @param height along z, outside
   * @param width along y, outside
   * @param wall t
   * @return the tube
   */
  public static Tube tube(Quantity<Length> height, Quantity<Length> width, Quantity<Length> wall) {
    return new Tube(coldFormed("tube", height, width, wall));
  }

  private static RectangularTube coldFormed(
      String what, Quantity<Length> height, Quantity<Length> width, Quantity<Length> wall) {
    return RectangularTube.coldFormed(
        Quantities.si(what + " height", height),
        Quantities.si(what + " width", width),
        Quantities.si(what + " wall", wall));
  }

  /**
   * A round tube to be strengthened.
   *
   * @param outside diameter
   * @param wall t
   * @return the tube
   */
  public static RoundTube roundTube(Quantity<Length> outside, Quantity<Length> wall) {
    return new RoundTube(
        Round.tube(Quantities.si("outside diameter", outside), Quantities.si("tube wall", wall)));
  }

  /** A channel that is to be closed to a box. */
  public static final class Channel {
    private final ClosedChannel closed;

    private Channel(ClosedChannel closed) {
      this.closed = closed;
    }

    /**
     * Closed by a plate that is welded on its toes.
     *
     * @param height of the plate along z; it may stand over
     * @param thickness of the plate
     * @return the section, one closed cell
     */
    public Section platedOn(Quantity<Length> height, Quantity<Length> thickness) {
      double high = Quantities.si("plate height", height);
      double thick = Quantities.si("plate thickness", thickness);
      return closed.platedOn(high, thick).section();
    }

    /**
     * Closed by a plate that is set in between its flanges, flush with their toes.
     *
     * @param thickness of the plate; its height is what is clear between the flanges
     * @return the section, one closed cell
     */
    public Section platedIn(Quantity<Length> thickness) {
      return closed.platedIn(Quantities.si("plate thickness", thickness)).section();
    }

    /**
     * Closed by its twin, welded along both pairs of toes.
     *
     * @return the section, one closed cell, twice as wide as a flange
     */
    public Section toeToToe() {
      return closed.toeToToe().section();
    }
  }

  /** A rectangular tube that is to be strengthened. */
  public static final class Tube {
    private final RectangularTube tube;

    private Tube(RectangularTube tube) {
      this.tube = tube;
    }

    /**
     * With a second tube inside, fastened along its length by plug welds or bolts.
     *
     * @param height of the sleeve along z, outside
     * @param width of the sleeve along y, outside
     * @param wall of the sleeve
     * @return the section: both bend and twist together
     */
    public Section sleeved(Quantity<Length> height, Quantity<Length> width, Quantity<Length> wall) {
      return new StrengthenedTube(tube)
          .sleeved(coldFormed("sleeve", height, width, wall))
          .section();
    }

    /**
     * With a plate on its upper face, welded along both edges. {@link Section#turned} lays the
     * section on its side.
     *
     * @param width of the plate along y
     * @param thickness of the plate
     * @return the section
     */
    public Section plated(Quantity<Length> width, Quantity<Length> thickness) {
      double wide = Quantities.si("plate width", width);
      double thick = Quantities.si("plate thickness", thickness);
      return new StrengthenedTube(tube).plated(wide, thick).section();
    }
  }

  /** A round tube that is to be strengthened. */
  public static final class RoundTube {
    private final Round tube;

    private RoundTube(Round tube) {
      this.tube = tube;
    }

    /**
     * With a second tube inside, fastened along its length by plug welds or bolts.
     *
     * @param outside diameter of the sleeve
     * @param wall of the sleeve
     * @return the section: both bend and twist together
     */
    public Section sleeved(Quantity<Length> outside, Quantity<Length> wall) {
      return tube.sleeved(
          Round.tube(
              Quantities.si("sleeve diameter", outside), Quantities.si("sleeve wall", wall)));
    }
  }
}
