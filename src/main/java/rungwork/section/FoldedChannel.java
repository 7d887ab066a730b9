package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A channel folded from plate, its web upright on the right, its flanges pointing left (+y); open,
 * or boxed by a plate of the same thickness that is welded on its toes.
 *
 * @param depth along z, outside [m]
 * @param flange along y, outside, without a plate [m]
 * @param wall t [m]
 * @param bend inside radius of the bends [m]
 */
record FoldedChannel(double depth, double flange, double wall, double bend) {
  private static final List<String> PARTS = List.of("flange", "bend", "web", "bend", "flange");

  FoldedChannel {
    Guard.positive("channel depth", depth, Scale.MM);
    Guard.positive("channel flange", flange, Scale.MM);
    Guard.positive("channel wall", wall, Scale.MM);
    Guard.notNegative("inside bend radius", bend, Scale.MM);
    String bends =
        "bends of wall %s and inside radius %s".formatted(Scale.MM.show(wall), Scale.MM.show(bend));
    requireRoom("flange", flange, bends, wall + bend);
    requireRoom("depth", depth, bends, 2 * (wall + bend));
  }

  private static void requireRoom(String what, double size, String bends, double taken) {
    if (size <= taken) {
      throw new ModelException(
          "channel %s %s leaves nothing flat beside %s; it must exceed %s"
              .formatted(what, Scale.MM.show(size), bends, Scale.MM.show(taken)));
    }
  }

  private double outer() {
    return wall + bend;
  }

  /** From the top toe over the web to the bottom toe; the web's outside at y = 0. */
  private List<Segment> centre(double reach) {
    return Pen.at(new Spot(reach, (depth - wall) / 2), 180)
        .forward(reach - outer())
        .bend(bend + wall / 2, 90)
        .forward(depth - 2 * outer())
        .bend(bend + wall / 2, 90)
        .forward(reach - outer())
        .path();
  }

  ThinShape open() {
    List<Segment> centre = centre(flange);
    List<Strip> strips = centre.stream().map(piece -> new Strip(piece, wall)).toList();
    return new ThinShape(
        Label.sized("channel", depth, flange, wall),
        new Outline(List.of(Outline.around(centre, wall))),
        strips,
        Marks.chain(PARTS, strips),
        flats(Wall.Edge.OUTSTAND),
        Torsion.OPEN);
  }

  ThinShape boxed() {
    double plate = flange + wall / 2;
    double top = (depth - wall) / 2;
    List<Segment> centre = new ArrayList<>(centre(plate));
    centre.add(new Line(new Spot(plate, -top), new Spot(plate, top)));
    List<Wall> flats = new ArrayList<>(flats(Wall.Edge.INTERNAL));
    double clear = depth / 2 - wall;
    Line between = new Line(new Spot(plate, -clear), new Spot(plate, clear));
    flats.add(Wall.between("plate", wall, Wall.Edge.INTERNAL, between));
    return new ThinShape(
        Label.sized("boxed channel", depth, flange, wall),
        boxedOutline(),
        centre.stream().map(piece -> new Strip(piece, wall)).toList(),
        boxedMarks(centre),
        flats,
        Torsion.CLOSED);
  }

  private Outline boxedOutline() {
    return new Outline(List.of(boxedEdge(0), Outline.bore(boxedEdge(wall))));
  }

  /** The boxed channel's edge, or its bore at one wall from the edge: square at the plate. */
  private List<Segment> boxedEdge(double inset) {
    double top = depth / 2 - inset;
    double radius = outer() - inset;
    double across = flange + wall - 2 * inset - radius;
    return Pen.at(new Spot(flange + wall - inset, top), 180)
        .forward(across)
        .bend(radius, 90)
        .forward(2 * (top - radius))
        .bend(radius, 90)
        .forward(across)
        .turn(90)
        .forward(2 * top)
        .path();
  }

  /** The plate is as high as the channel is deep, its flow's path a wall less. */
  private List<Mark> boxedMarks(List<Segment> centre) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < PARTS.size(); i++) {
      Marks.outside(PARTS.get(i), centre.get(i).aside(wall / 2), i).forEach(marks::add);
    }
    double y = flange + wall;
    Line face = new Line(new Spot(y, -depth / 2), new Spot(y, depth / 2));
    int plate = PARTS.size();
    Marks.outside("plate", face, plate).forEach(marks::add);
    marks.add(new Mark("corner", face.start(), plate, 0, 1));
    marks.add(new Mark("corner", face.end(), plate, 1, 1));
    return marks;
  }

  /** Flat widths from bend to bend, and from bend to toe or plate (EN 1993-1-1, table 5.2). */
  private List<Wall> flats(Wall.Edge held) {
    double z = (depth - wall) / 2;
    double half = depth / 2 - outer();
    Line web = new Line(new Spot(wall / 2, half), new Spot(wall / 2, -half));
    Line top = new Line(new Spot(flange, z), new Spot(outer(), z));
    Line bottom = new Line(new Spot(outer(), -z), new Spot(flange, -z));
    return List.of(
        Wall.between("flange", wall, held, top),
        Wall.between("web", wall, Wall.Edge.INTERNAL, web),
        Wall.between("flange", wall, held, bottom));
  }
}
