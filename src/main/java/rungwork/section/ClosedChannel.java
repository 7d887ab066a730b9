package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A channel that is closed to a box, by a plate or by its twin. The channel's own outline and the
 * plate's stand side by side and touch; along the walls' centre lines they form one cell.
 *
 * @param open the channel, its web's back at y = 0, its flanges pointing to +y; its walls run from
 *     the top toe to the bottom toe
 * @param depth along z [m]
 * @param reach of its flanges along y [m]
 * @param toe thickness of the flanges at their toes [m]
 * @param corner how far bends or fillets reach from the web's back [m]
 */
record ClosedChannel(ThinShape open, double depth, double reach, double toe, double corner) {
  private static final String PLATE = "plate";

  ThinShape platedOn(double height, double thickness) {
    guard(height, thickness);
    if (height < depth - toe - Pen.NOTHING) {
      throw new ModelException(
          "plate %s high does not reach over the middles of both toes of %s; it must be at least %s high"
              .formatted(Scale.MM.show(height), open.name(), Scale.MM.show(depth - toe)));
    }
    double y = reach + thickness / 2;
    List<Strip> strips = new ArrayList<>(open.strips());
    Spot top = open.strips().get(0).path().start();
    strips.add(new Strip(new Line(new Spot(y, top.z()), top), toe));
    strips.add(new Strip(new Line(below(top), new Spot(y, -top.z())), toe));
    Plate plate = new Plate(new Spot(y, 0), height, thickness);
    strips.add(new Strip(new Line(new Spot(y, -top.z()), new Spot(y, top.z())), thickness));
    int number = strips.size() - 1;
    if (height > depth + Pen.NOTHING) {
      strips.add(new Strip(new Line(new Spot(y, top.z()), new Spot(y, height / 2)), thickness));
      strips.add(new Strip(new Line(new Spot(y, -top.z()), new Spot(y, -height / 2)), thickness));
    }
    ThinShape box = closed(plate.named(open.name(), "on"), plate, strips, number);
    return box.marked(
        Stream.concat(
                Marks.across("root", strips.get(number - 2), number - 2, 0),
                Marks.across("root", strips.get(number - 1), number - 1, 1))
            .filter(mark -> mark.side() > 0)
            .toList());
  }

  ThinShape platedIn(double thickness) {
    double height = depth - 2 * innerThickness(thickness);
    guard(height, thickness);
    if (thickness > reach - corner - Pen.NOTHING) {
      throw new ModelException(
          "plate %s thick finds no flat part of the flanges in %s, which leaves %s between toes and bends; it must be thinner"
              .formatted(Scale.MM.show(thickness), open.name(), Scale.MM.show(reach - corner)));
    }
    double y = reach - thickness / 2;
    List<Strip> strips = new ArrayList<>(open.strips());
    int last = strips.size() - 1;
    double cut = (reach - y) / strips.get(0).path().length();
    strips.set(0, from(strips.get(0), cut));
    strips.set(last, upTo(strips.get(last), 1 - cut));
    Spot top = strips.get(0).path().start();
    strips.add(new Strip(new Line(below(top), top), thickness));
    Plate plate = new Plate(new Spot(y, 0), height, thickness);
    return closed(plate.named(open.name(), "in"), plate, strips, last + 1);
  }

  private static void guard(double height, double thickness) {
    Guard.positive("plate height", height, Scale.MM);
    Guard.positive("plate thickness", thickness, Scale.MM);
  }

  /** The flanges' thickness at the inner face of a plate that is set in; a bevel stays open. */
  private double innerThickness(double plate) {
    Segment flange = open.strips().get(0).path();
    double fall = (flange.start().z() - flange.end().z()) / (flange.start().y() - flange.end().y());
    return toe + 2 * fall * plate;
  }

  private static Strip from(Strip strip, double fraction) {
    Line cut = new Line(strip.path().at(fraction), strip.path().end());
    return new Strip(cut, strip.thickness());
  }

  private static Strip upTo(Strip strip, double fraction) {
    Line cut = new Line(strip.path().start(), strip.path().at(fraction));
    return new Strip(cut, strip.thickness());
  }

  private static Spot below(Spot spot) {
    return new Spot(spot.y(), -spot.z());
  }

  private ThinShape closed(String name, Plate plate, List<Strip> strips, int number) {
    List<Wall> flats = new ArrayList<>(open.flats().stream().map(ClosedChannel::held).toList());
    flats.addAll(plate.flats(depth, toe));
    return new ThinShape(
        name,
        open.outline().and(List.of(plate.edge())),
        strips,
        Stream.concat(outer(), plate.marks(strips, number)).toList(),
        flats,
        Torsion.CLOSED);
  }

  /** The channel's marks on its outside; inside a cell nothing is worse. */
  private Stream<Mark> outer() {
    return open.marks().stream().filter(mark -> mark.side() > 0);
  }

  private static Wall held(Wall wall) {
    return new Wall(
        wall.name(), wall.width(), wall.thickness(), Wall.Edge.INTERNAL, wall.from(), wall.to());
  }

  ThinShape toeToToe() {
    Spot seam = new Spot(reach, 0);
    List<Strip> twin = open.strips().stream().map(strip -> strip.halfTurned(seam)).toList();
    int count = twin.size();
    Stream<Mark> twinMarks =
        outer()
            .map(
                m ->
                    new Mark(
                        m.part(), m.fibre().halfTurned(seam), m.wall() + count, m.fraction(), 1));
    return new ThinShape(
        "2 x " + open.name() + " toe to toe",
        open.outline().and(open.outline().halfTurned(seam).loops()),
        Stream.concat(open.strips().stream(), twin.stream()).toList(),
        Stream.concat(outer(), twinMarks).toList(),
        boxFlats(seam),
        Torsion.CLOSED);
  }

  /** Two flanges in line are one flat, from bend to bend. */
  private List<Wall> boxFlats(Spot seam) {
    Wall flange = open.flats().get(0);
    Wall web = open.flats().get(1);
    Spot right = flange.to();
    Spot left = below(right.halfTurned(seam));
    Wall.Edge held = Wall.Edge.INTERNAL;
    double t = flange.thickness();
    Line webLine = new Line(web.from(), web.to());
    Line twin = (Line) Outline.halfTurned(webLine, seam);
    return List.of(
        Wall.between("flange", t, held, new Line(left, right)),
        Wall.between("web", web.thickness(), held, webLine),
        Wall.between("flange", t, held, new Line(below(right), below(left))),
        Wall.between("web", web.thickness(), held, twin));
  }

  /**
   * The plate that closes the channel.
   *
   * @param middle of the plate
   * @param height along z [m]
   * @param thickness along y [m]
   */
  private record Plate(Spot middle, double height, double thickness) {
    String named(String channel, String how) {
      return channel + Label.sized(" with plate", height, thickness) + " set " + how;
    }

    List<Segment> edge() {
      return Outline.rectangle(middle, height, thickness);
    }

    /** On its outer face; where it stands over, its edges belong to walls of their own. */
    Stream<Mark> marks(List<Strip> strips, int wall) {
      double y = middle.y() + thickness / 2;
      boolean over = strips.size() > wall + 1;
      double half = over ? strips.get(wall).path().end().z() : height / 2;
      Line face = new Line(new Spot(y, -half), new Spot(y, half));
      Mark upper = new Mark("corner", new Spot(y, height / 2), over ? wall + 1 : wall, 1, 1);
      Mark lower =
          new Mark("corner", new Spot(y, -height / 2), over ? wall + 2 : wall, over ? 1 : 0, 1);
      Stream<Mark> junctions =
          Stream.of(
              new Mark(PLATE, face.start(), wall, 0, 1), new Mark(PLATE, face.end(), wall, 1, 1));
      return Stream.of(Marks.outside(PLATE, face, wall), junctions, Stream.of(lower, upper))
          .flatMap(all -> all);
    }

    List<Wall> flats(double depth, double toe) {
      double clear = depth / 2 - toe;
      Wall between = flat(-clear, clear, Wall.Edge.INTERNAL);
      double over = height / 2;
      if (over <= depth / 2 + Pen.NOTHING) {
        return List.of(between);
      }
      return List.of(
          between,
          flat(depth / 2, over, Wall.Edge.OUTSTAND),
          flat(-over, -depth / 2, Wall.Edge.OUTSTAND));
    }

    private Wall flat(double low, double high, Wall.Edge edge) {
      Line line = new Line(new Spot(middle.y(), low), new Spot(middle.y(), high));
      return Wall.between(PLATE, thickness, edge, line);
    }
  }
}
