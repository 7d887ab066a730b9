package rungwork.section;

import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A T, its flange on top, its web hanging down in the middle: welded from two plates or rolled.
 *
 * <p>A rolled one has equal height, width and thicknesses as EN 10055:1995 lists them: inner faces
 * that slope by 2 %, the flange's thickness measured half-way out, the web's half-way down; radii t
 * at the root, t/2 at the flange's toes, t/4 at the web's (from memory). Shear is that of three
 * straight walls that meet at their centre lines; torsion knows the bulge at the root.
 *
 * @param height over flange and web [m]
 * @param width of the flange [m]
 * @param web thickness [m]
 * @param flange thickness [m]
 */
record Tee(double height, double width, double web, double flange) {
  private static final double SLOPE = 0.02;

  private static final double DEGREES = Math.toDegrees(Math.atan(SLOPE));

  Tee {
    Guard.positive("tee height", height, Scale.MM);
    Guard.positive("tee width", width, Scale.MM);
    Guard.positive("web thickness", web, Scale.MM);
    Guard.positive("flange thickness", flange, Scale.MM);
    if (height <= flange) {
      throw new ModelException(
          "tee height %s leaves no web below a flange of %s; it must exceed it"
              .formatted(Scale.MM.show(height), Scale.MM.show(flange)));
    }
    if (width <= web) {
      throw new ModelException(
          "tee width %s leaves no flange beside a web of %s; it must exceed it"
              .formatted(Scale.MM.show(width), Scale.MM.show(web)));
    }
  }

  /** Two plates, the web welded under the flange. */
  ThinShape welded() {
    Spot middleOfWeb = new Spot(0, -(height + flange) / 2);
    List<Segment> upright = Outline.rectangle(middleOfWeb, height - flange, web);
    List<Segment> level = Outline.rectangle(new Spot(0, -flange / 2), flange, width);
    return shape("welded tee", new Outline(List.of(level, upright))).twisting(torsionConstant(0));
  }

  ThinShape rolled() {
    double least = 4 * flange;
    if (height <= least || width <= least) {
      throw new ModelException(
          "rolled tee %s by %s leaves nothing flat beside fillets and toes of a thickness of %s; both must exceed %s"
              .formatted(
                  Scale.MM.show(height),
                  Scale.MM.show(width),
                  Scale.MM.show(flange),
                  Scale.MM.show(least)));
    }
    return shape("rolled tee", new Outline(List.of(rolledEdge())))
        .twisting(torsionConstant(flange) - roundings());
  }

  private double torsionConstant(double root) {
    return RolledTorsion.wall(width, flange, flange)
        + RolledTorsion.wall(height - flange, web, web)
        - 2 * RolledTorsion.end(flange, 0)
        - RolledTorsion.end(web, 0)
        + new RolledTorsion(web, flange, root).tee();
  }

  private double roundings() {
    return 2 * RolledTorsion.rounding(flange / 2, flange)
        + 2 * RolledTorsion.rounding(flange / 4, web);
  }

  private ThinShape shape(String kind, Outline outline) {
    List<Strip> strips = strips();
    return new ThinShape(
        Label.sized(kind, height, width, web, flange),
        outline,
        strips,
        marks(strips),
        flats(),
        Torsion.OPEN);
  }

  /** The web upwards, the right half of the flange, the left half. */
  private List<Strip> strips() {
    Spot foot = new Spot(0, -height);
    Spot junction = new Spot(0, -flange / 2);
    Spot right = new Spot(-width / 2, -flange / 2);
    Spot left = new Spot(width / 2, -flange / 2);
    return List.of(
        new Strip(new Line(foot, junction), web),
        new Strip(new Line(junction, right), flange),
        new Strip(new Line(left, junction), flange));
  }

  private static List<Mark> marks(List<Strip> strips) {
    return Stream.of(
            Marks.bothFaces("web", strips.get(0), 0),
            Marks.across("toe", strips.get(0), 0, 0),
            Marks.across("root", strips.get(0), 0, 1),
            Marks.bothFaces("flange", strips.get(1), 1),
            Marks.across("root", strips.get(1), 1, 0),
            Marks.across("toe", strips.get(1), 1, 1),
            Marks.bothFaces("flange", strips.get(2), 2),
            Marks.across("toe", strips.get(2), 2, 0),
            Marks.across("root", strips.get(2), 2, 1))
        .flatMap(all -> all)
        .toList();
  }

  /** Overhang of the flange on either side and of the web, fillets not deducted: safe. */
  private List<Wall> flats() {
    double z = -flange / 2;
    Line right = new Line(new Spot(-web / 2, z), new Spot(-width / 2, z));
    Line left = new Line(new Spot(width / 2, z), new Spot(web / 2, z));
    Line down = new Line(new Spot(0, -flange), new Spot(0, -height));
    return List.of(
        Wall.between("flange", flange, Wall.Edge.OUTSTAND, left),
        Wall.between("flange", flange, Wall.Edge.OUTSTAND, right),
        Wall.between("web", web, Wall.Edge.OUTSTAND, down));
  }

  private List<Segment> rolledEdge() {
    double toe = Math.tan(Math.toRadians(90 - DEGREES) / 2);
    double root = Math.tan(Math.toRadians(90 - 2 * DEGREES) / 2);
    double upright = underside(width / 2) - toe * flange / 2;
    Spot corner = inner();
    double slant = Math.hypot(1, SLOPE);
    double under = slant * (width / 2 - corner.y()) - toe * flange / 2 - root * flange;
    double down = slant * (height + corner.z()) - root * flange - toe * flange / 4;
    double foot = 2 * (halfWeb(-height) - toe * flange / 4);
    return Pen.at(new Spot(width / 2, 0), 180)
        .forward(width)
        .turn(90)
        .forward(upright)
        .bend(flange / 2, 90 - DEGREES)
        .forward(under)
        .bend(flange, -90 + 2 * DEGREES)
        .forward(down)
        .bend(flange / 4, 90 - DEGREES)
        .forward(foot)
        .bend(flange / 4, 90 - DEGREES)
        .forward(down)
        .bend(flange, -90 + 2 * DEGREES)
        .forward(under)
        .bend(flange / 2, 90 - DEGREES)
        .forward(upright)
        .path();
  }

  /** Thickness of a rolled flange at a distance from the middle. */
  private double underside(double fromMiddle) {
    return flange + SLOPE * (width / 4 - fromMiddle);
  }

  /** Half the thickness of a rolled web at a height. */
  private double halfWeb(double z) {
    return web / 2 + SLOPE * (height / 2 + z);
  }

  /** Where the left faces of a rolled flange and web would meet without a fillet. */
  private Spot inner() {
    double half = web / 2 + SLOPE * (height / 2 - flange - SLOPE * width / 4);
    double y = half / (1 - SLOPE * SLOPE);
    return new Spot(y, -underside(y));
  }
}
