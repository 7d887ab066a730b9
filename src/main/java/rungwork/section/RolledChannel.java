package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A rolled channel with parallel or tapered flanges, its web upright on the right, its flanges
 * pointing left (+y). Fillets and rounded toes count in the outline and in the torsion constant;
 * shear is that of straight walls that meet at their centre lines, as tables of such channels take
 * them for the shear centre. A tapered flange is a row of pieces, each as thick as it is in its
 * middle.
 *
 * @param depth along z [m]
 * @param width of the flanges along y, over the web [m]
 * @param walls their thicknesses, root radius and taper
 */
record RolledChannel(double depth, double width, RolledWalls walls) {
  /** Pieces of a tapered flange: odd, so that one has the flange's middle in its own. */
  private static final int PIECES = 5;

  private static final String FLANGE = "flange";

  RolledChannel {
    Guard.positive("channel depth", depth, Scale.MM);
    Guard.positive("channel flange", width, Scale.MM);
    RolledWalls.Taper taper = walls.taper();
    double rounded = taper.reach() * (walls.root() + taper.toe());
    requireRoom("flange", width, walls.web() + rounded * Math.cos(Math.atan(taper.slope())));
    double thick = walls.thickness(width, walls.web());
    requireRoom("depth", depth, 2 * (thick + taper.reach() * walls.root()));
    double toe = walls.thickness(width, width);
    if (toe <= taper.reach() * taper.toe() + Pen.NOTHING) {
      throw new ModelException(
          "channel flange %s thins out to %s at its toe, where a radius of %s finds no room; it must stay above %s there"
              .formatted(
                  Scale.MM.show(width),
                  Scale.MM.show(toe),
                  Scale.MM.show(taper.toe()),
                  Scale.MM.show(taper.reach() * taper.toe())));
    }
  }

  private static void requireRoom(String what, double size, double taken) {
    if (size <= taken + Pen.NOTHING) {
      throw new ModelException(
          "channel %s %s leaves nothing flat beside walls and root fillets; it must exceed %s"
              .formatted(what, Scale.MM.show(size), Scale.MM.show(taken)));
    }
  }

  ThinShape shape() {
    List<Strip> strips = strips();
    String kind = walls.taper().parallel() ? "rolled channel" : "taper-flange channel";
    return new ThinShape(
            Label.sized(kind, depth, width, walls.web(), walls.flange()),
            new Outline(List.of(edge())),
            strips,
            marks(strips).toList(),
            flats(),
            Torsion.OPEN)
        .twisting(torsionConstant());
  }

  private double torsionConstant() {
    double slope = walls.taper().slope();
    double toe = thickness(width);
    double root = thickness(walls.web());
    double out = walls.web() + walls.root();
    Spot fillet = new Spot(out, thickness(out) + walls.root() * Math.hypot(1, slope));
    double flange =
        RolledTorsion.wall(width - walls.web(), toe, root)
            + RolledTorsion.wall(walls.web(), root, root)
            - RolledTorsion.end(toe, slope)
            - RolledTorsion.end(root, -slope)
            - RolledTorsion.rounding(walls.taper().toe(), toe)
            + new RolledTorsion(walls.web(), root, walls.root()).corner(fillet);
    return 2 * flange + RolledTorsion.wall(depth - 2 * root, walls.web(), walls.web());
  }

  private double thickness(double fromBack) {
    return walls.thickness(width, fromBack);
  }

  /** On a flange's centre line at a distance from the back of the web. */
  private Spot centre(double fromBack) {
    return new Spot(fromBack, (depth - thickness(fromBack)) / 2);
  }

  /** From the top toe over the web to the bottom toe. */
  private List<Strip> strips() {
    List<Strip> top = flange();
    List<Strip> strips = new ArrayList<>(top);
    Spot corner = centre(walls.web() / 2);
    strips.add(new Strip(new Line(corner, below(corner)), walls.web()));
    for (int i = top.size() - 1; i >= 0; i--) {
      Segment above = top.get(i).path();
      Line piece = new Line(below(above.end()), below(above.start()));
      strips.add(new Strip(piece, top.get(i).thickness()));
    }
    return strips;
  }

  private List<Strip> flange() {
    int pieces = pieces();
    double length = (width - walls.web() / 2) / pieces;
    return IntStream.range(0, pieces)
        .mapToDouble(i -> width - i * length)
        .mapToObj(
            y -> new Strip(new Line(centre(y), centre(y - length)), thickness(y - length / 2)))
        .toList();
  }

  private int pieces() {
    return walls.taper().parallel() ? 1 : PIECES;
  }

  private static Spot below(Spot spot) {
    return new Spot(spot.y(), -spot.z());
  }

  private Stream<Mark> marks(List<Strip> strips) {
    Stream<Mark> along =
        walls.taper().parallel()
            ? Marks.chain(List.of(FLANGE, "web", FLANGE), strips).stream()
            : tapered(strips);
    double top = depth / 2;
    int web = pieces();
    Mark upper = new Mark("corner", new Spot(0, top), web, 0, 1);
    Mark lower = new Mark("corner", new Spot(0, -top), web, 1, 1);
    return Stream.concat(along, Stream.of(upper, lower));
  }

  /** Every piece of a flange in its middle, the web all along, toes and roots at their ends. */
  private Stream<Mark> tapered(List<Strip> strips) {
    int web = pieces();
    int last = strips.size() - 1;
    Stream<Mark> pieces =
        IntStream.rangeClosed(0, last)
            .boxed()
            .flatMap(
                i ->
                    i == web
                        ? Marks.bothFaces("web", strips.get(i), i)
                        : Marks.across(FLANGE, strips.get(i), i, 0.5));
    Stream<Mark> roots =
        Stream.of(0, 1).flatMap(end -> Marks.across("root", strips.get(web), web, end));
    return Stream.of(pieces, roots, toe(1, 0, 0), toe(-1, last, 1)).flatMap(all -> all);
  }

  /** Both edges of a toe, above (1) or below (−1). */
  private Stream<Mark> toe(int side, int wall, int end) {
    Spot outer = new Spot(width, side * depth / 2);
    Spot inner = new Spot(width, side * (depth / 2 - thickness(width)));
    return Stream.of(
        new Mark("toe", outer, wall, end, 1), new Mark("toe inside", inner, wall, end, -1));
  }

  private List<Segment> edge() {
    RolledWalls.Taper taper = walls.taper();
    double upright = thickness(width) - taper.reach() * taper.toe();
    double thick = thickness(walls.web());
    double rounded = taper.reach() * walls.root();
    double turn = 90 - taper.degrees();
    double sloped =
        Math.hypot(1, taper.slope()) * (width - walls.web())
            - taper.reach() * (walls.root() + taper.toe());
    return Pen.at(new Spot(width, depth / 2), 180)
        .forward(width)
        .turn(90)
        .forward(depth)
        .turn(90)
        .forward(width)
        .turn(90)
        .forward(upright)
        .bend(taper.toe(), turn)
        .forward(sloped)
        .bend(walls.root(), -turn)
        .forward(depth - 2 * (thick + rounded))
        .bend(walls.root(), -turn)
        .forward(sloped)
        .bend(taper.toe(), turn)
        .forward(upright)
        .path();
  }

  /** Flat widths beside the root fillets (EN 1993-1-1, table 5.2). */
  private List<Wall> flats() {
    double rounded = walls.taper().reach() * walls.root();
    double half = depth / 2 - thickness(walls.web()) - rounded;
    double y = walls.web() / 2;
    Line web = new Line(new Spot(y, half), new Spot(y, -half));
    Line top = new Line(centre(width), centre(walls.web() + rounded));
    Line bottom = new Line(below(top.end()), below(top.start()));
    return List.of(
        Wall.between(FLANGE, walls.flange(), Wall.Edge.OUTSTAND, top),
        Wall.between("web", walls.web(), Wall.Edge.INTERNAL, web),
        Wall.between(FLANGE, walls.flange(), Wall.Edge.OUTSTAND, bottom));
  }
}
