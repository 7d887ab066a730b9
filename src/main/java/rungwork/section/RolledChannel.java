package rungwork.section;

import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A rolled channel with parallel flanges, its web upright on the right, its flanges pointing left
 * (+y). The root fillets count in the outline; shear and torsion are those of three straight walls
 * that meet at their centre lines, as tables of such channels take them.
 *
 * @param depth along z [m]
 * @param width of the flanges along y, over the web [m]
 * @param walls their thicknesses and root radius
 */
record RolledChannel(double depth, double width, RolledWalls walls) {
  private static final List<String> PARTS = List.of("flange", "web", "flange");

  RolledChannel {
    Guard.positive("channel depth", depth, Scale.MM);
    Guard.positive("channel flange", width, Scale.MM);
    requireRoom("flange", width, walls.web() + walls.root());
    requireRoom("depth", depth, 2 * (walls.flange() + walls.root()));
  }

  private static void requireRoom(String what, double size, double taken) {
    if (size <= taken) {
      throw new ModelException(
          "channel %s %s leaves nothing flat beside walls and root fillets; it must exceed %s"
              .formatted(what, Scale.MM.show(size), Scale.MM.show(taken)));
    }
  }

  ThinShape shape() {
    List<Strip> strips = strips();
    Stream<Mark> corners =
        Stream.of(
            new Mark("corner", new Spot(0, depth / 2), 1, 0, 1),
            new Mark("corner", new Spot(0, -depth / 2), 1, 1, 1));
    return new ThinShape(
        Label.sized("rolled channel", depth, width, walls.web(), walls.flange()),
        outline(),
        strips,
        Stream.concat(Marks.chain(PARTS, strips).stream(), corners).toList(),
        flats(),
        Torsion.OPEN);
  }

  private List<Strip> strips() {
    double y = walls.web() / 2;
    double z = (depth - walls.flange()) / 2;
    return List.of(
        new Strip(new Line(new Spot(width, z), new Spot(y, z)), walls.flange()),
        new Strip(new Line(new Spot(y, z), new Spot(y, -z)), walls.web()),
        new Strip(new Line(new Spot(y, -z), new Spot(width, -z)), walls.flange()));
  }

  private Outline outline() {
    double flange = walls.flange();
    double root = walls.root();
    double flat = width - walls.web() - root;
    return new Outline(
        List.of(
            Pen.at(new Spot(width, depth / 2), 180)
                .forward(width)
                .turn(90)
                .forward(depth)
                .turn(90)
                .forward(width)
                .turn(90)
                .forward(flange)
                .turn(90)
                .forward(flat)
                .bend(root, -90)
                .forward(depth - 2 * (flange + root))
                .bend(root, -90)
                .forward(flat)
                .turn(90)
                .forward(flange)
                .path()));
  }

  /** Flat widths beside the root fillets (EN 1993-1-1, table 5.2). */
  private List<Wall> flats() {
    double half = depth / 2 - walls.flange() - walls.root();
    double root = walls.web() + walls.root();
    double y = walls.web() / 2;
    double z = (depth - walls.flange()) / 2;
    Line web = new Line(new Spot(y, half), new Spot(y, -half));
    Line top = new Line(new Spot(width, z), new Spot(root, z));
    Line bottom = new Line(new Spot(root, -z), new Spot(width, -z));
    return List.of(
        Wall.between("flange", walls.flange(), Wall.Edge.OUTSTAND, top),
        Wall.between("web", walls.web(), Wall.Edge.INTERNAL, web),
        Wall.between("flange", walls.flange(), Wall.Edge.OUTSTAND, bottom));
  }
}
