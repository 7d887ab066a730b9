package rungwork.section;

import java.util.ArrayList;
import java.util.List;

/**
 * Textbook shapes of thin straight walls, by their centre lines, and what the walls give for them.
 *
 * @param centreY shear centre along y from the shape's origin [m]
 * @param centreZ shear centre along z from the shape's origin [m]
 * @param it torsion constant [m⁴]
 * @param iw warping constant of the centre lines [m⁶]
 * @param across what the walls' thickness adds to it [m⁶]
 */
public record ThinExample(double centreY, double centreZ, double it, double iw, double across) {
  private static ThinExample of(List<Strip> strips) {
    ThinWalls walls = new ThinWalls(strips);
    ShearTorsion.Resistance warping = walls.warping().resistance();
    Spot centre = walls.shearCentre();
    return new ThinExample(
        centre.y(), centre.z(), walls.torsionConstant(), warping.iw(), warping.across());
  }

  /** Web on y = 0, flanges along +y, lips inwards (or outwards when below zero). */
  public static ThinExample channel(double h, double b, double lip, double t) {
    List<Strip> walls = new ArrayList<>();
    Spot top = new Spot(0, h / 2);
    Spot bottom = new Spot(0, -h / 2);
    Spot topToe = new Spot(b, h / 2);
    Spot bottomToe = new Spot(b, -h / 2);
    if (lip != 0) {
      walls.add(Walls.strip(new Spot(b, h / 2 - lip), topToe, t));
      walls.add(Walls.strip(bottomToe, new Spot(b, lip - h / 2), t));
    }
    walls.add(Walls.strip(topToe, top, t));
    walls.add(Walls.strip(top, bottom, t));
    walls.add(Walls.strip(bottom, bottomToe, t));
    return of(walls);
  }

  /** Web on y = 0, one flange to each side. */
  public static ThinExample zed(double h, double b, double t) {
    Spot top = new Spot(0, h / 2);
    Spot bottom = new Spot(0, -h / 2);
    return of(
        List.of(
            Walls.strip(new Spot(b, h / 2), top, t),
            Walls.strip(top, bottom, t),
            Walls.strip(bottom, new Spot(-b, -h / 2), t)));
  }

  /** Web on y = 0 from the bottom flange's centre line at z = 0 to the top one's at h. */
  public static ThinExample iSection(double h, double bTop, double bBottom, double t) {
    Spot top = new Spot(0, h);
    return of(
        List.of(
            Walls.strip(new Spot(-bTop / 2, h), top, t),
            Walls.strip(top, new Spot(bTop / 2, h), t),
            Walls.strip(top, Spot.ORIGIN, t),
            Walls.strip(new Spot(-bBottom / 2, 0), Spot.ORIGIN, t),
            Walls.strip(Spot.ORIGIN, new Spot(bBottom / 2, 0), t)));
  }

  /** Stem on y = 0 from z = 0 to h, flange at h. */
  public static ThinExample tee(double h, double b, double stem, double flange) {
    Spot top = new Spot(0, h);
    return of(
        List.of(
            Walls.strip(new Spot(-b / 2, h), top, flange),
            Walls.strip(top, new Spot(b / 2, h), flange),
            Walls.strip(top, Spot.ORIGIN, stem)));
  }

  /** Legs along +y and +z from the origin. */
  public static ThinExample angle(double b, double h, double t) {
    return of(
        List.of(
            Walls.strip(new Spot(0, h), Spot.ORIGIN, t),
            Walls.strip(Spot.ORIGIN, new Spot(b, 0), t)));
  }

  /** An arc about the origin, its opening towards +y; {@code half} its half angle [rad]. */
  public static ThinExample arc(double radius, double half, double t) {
    Arc arc = new Arc(Spot.ORIGIN, radius, Math.PI - half, 2 * half);
    List<Strip> pieces = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      pieces.add(new Strip(Walls.part(arc, i / 16.0, (i + 1) / 16.0), t));
    }
    return of(pieces);
  }

  /** Two closed cells side by side, widths a and b, one height, walls of one thickness. */
  public static ThinExample twoCells(double a, double b, double h, double t) {
    Spot[] low = {new Spot(0, 0), new Spot(a, 0), new Spot(a + b, 0)};
    Spot[] high = {new Spot(0, h), new Spot(a, h), new Spot(a + b, h)};
    return of(
        List.of(
            Walls.strip(low[0], low[1], t),
            Walls.strip(low[1], low[2], t),
            Walls.strip(low[2], high[2], t),
            Walls.strip(high[2], high[1], t),
            Walls.strip(high[1], high[0], t),
            Walls.strip(high[0], low[0], t),
            Walls.strip(low[1], high[1], t)));
  }
}
