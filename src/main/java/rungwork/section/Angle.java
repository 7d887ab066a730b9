package rungwork.section;

import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A rolled angle, its heel at the bottom right, one leg up and one to the left. The outline has a
 * root fillet and toes rounded by half its radius (EN 10056-1, from memory); shear is that of two
 * straight walls that meet at their centre lines, torsion knows the bulge at the root.
 *
 * @param height of the upright leg, outside [m]
 * @param width of the level leg, outside [m]
 * @param wall t [m]
 * @param root radius of the fillet between the legs [m]
 */
record Angle(double height, double width, double wall, double root) {
  private static final String LEG = "leg";

  Angle {
    Guard.positive("angle height", height, Scale.MM);
    Guard.positive("angle width", width, Scale.MM);
    Guard.positive("angle wall", wall, Scale.MM);
    Guard.notNegative("root radius", root, Scale.MM);
    double leg = Math.min(height, width);
    if (leg <= wall + 1.5 * root) {
      throw new ModelException(
          "angle leg %s leaves nothing flat beside wall %s, root radius %s and a toe of half that radius; it must exceed %s"
              .formatted(
                  Scale.MM.show(leg),
                  Scale.MM.show(wall),
                  Scale.MM.show(root),
                  Scale.MM.show(wall + 1.5 * root)));
    }
    if (root > 2 * wall) {
      throw new ModelException(
          "root radius %s rounds the toes by more than the wall %s; it must not exceed %s"
              .formatted(Scale.MM.show(root), Scale.MM.show(wall), Scale.MM.show(2 * wall)));
    }
  }

  ThinShape shape() {
    double half = wall / 2;
    Line upright = new Line(new Spot(half, height), new Spot(half, half));
    Line level = new Line(new Spot(half, half), new Spot(width, half));
    List<Strip> strips = List.of(new Strip(upright, wall), new Strip(level, wall));
    Stream<Mark> heel = Stream.of(new Mark("heel", Spot.ORIGIN, 0, 1, 1));
    return new ThinShape(
            Label.sized("angle", height, width, wall),
            outline(),
            strips,
            Stream.concat(Marks.chain(List.of(LEG, LEG), strips).stream(), heel).toList(),
            flats(),
            Torsion.OPEN)
        .twisting(torsionConstant());
  }

  private double torsionConstant() {
    double centre = wall + root;
    return RolledTorsion.wall(height + width - wall, wall, wall)
        - 2 * RolledTorsion.end(wall, 0)
        - 2 * RolledTorsion.rounding(root / 2, wall)
        + new RolledTorsion(wall, wall, root).corner(new Spot(centre, centre));
  }

  private Outline outline() {
    double toe = root / 2;
    return new Outline(
        List.of(
            Pen.at(Spot.ORIGIN, 0)
                .forward(width)
                .turn(90)
                .forward(wall - toe)
                .bend(toe, 90)
                .forward(width - wall - root - toe)
                .bend(root, -90)
                .forward(height - wall - root - toe)
                .bend(toe, 90)
                .forward(wall - toe)
                .turn(90)
                .forward(height)
                .path()));
  }

  /** Whole legs, as EN 1993-1-1 table 5.2 takes them for angles. */
  private List<Wall> flats() {
    double half = wall / 2;
    return List.of(
        Wall.between(
            LEG, wall, Wall.Edge.OUTSTAND, new Line(new Spot(half, height), new Spot(half, 0))),
        Wall.between(
            LEG, wall, Wall.Edge.OUTSTAND, new Line(new Spot(0, half), new Spot(width, half))));
  }
}
