package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A rectangular tube with a sleeve in it or a plate on it.
 *
 * @param tube the tube
 */
record StrengthenedTube(RectangularTube tube) {
  /** A sleeve that just fits touches the bore; it is compared a trifle smaller. */
  private static final double TOUCHING = 1e-6;

  /** The upper face's place among the tube's walls. */
  private static final int TOP = 2;

  private static final String PLATE = "plate";

  /** Both tubes about one middle: each carries its share of bending and of twist. */
  ThinShape sleeved(RectangularTube sleeve) {
    ThinShape outer = tube.shape();
    ThinShape inner = sleeve.shape();
    refuseTight(outer, inner, sleeve);
    int count = outer.strips().size();
    Stream<Mark> inside =
        inner.marks().stream()
            .map(
                m ->
                    new Mark(
                        "sleeve " + m.part(), m.fibre(), m.wall() + count, m.fraction(), m.side()));
    Stream<Wall> walls = inner.flats().stream().map(StrengthenedTube::ofSleeve);
    return new ThinShape(
        outer.name() + " with sleeve " + inner.name(),
        outer.outline().and(inner.outline().loops()),
        Stream.concat(outer.strips().stream(), inner.strips().stream()).toList(),
        Stream.concat(outer.marks().stream(), inside).toList(),
        Stream.concat(outer.flats().stream(), walls).toList(),
        Torsion.CLOSED);
  }

  private static Wall ofSleeve(Wall wall) {
    Line line = new Line(wall.from(), wall.to());
    return Wall.between("sleeve wall", wall.thickness(), wall.edge(), line);
  }

  private void refuseTight(ThinShape outer, ThinShape inner, RectangularTube sleeve) {
    Polygon bore = Polygon.of(outer.outline().loops().get(1));
    List<Segment> edge = inner.outline().loops().get(0);
    if (bore.encloses(Polygon.of(edge).scaled(1 - TOUCHING))) {
      return;
    }
    double t = tube.wall();
    throw new ModelException(
        "sleeve %s, %s, does not go into %s, whose bore is %s"
            .formatted(
                inner.name(),
                cornered(sleeve.height(), sleeve.width(), sleeve.outer()),
                outer.name(),
                cornered(tube.height() - 2 * t, tube.width() - 2 * t, tube.inner())));
  }

  private static String cornered(double height, double width, double radius) {
    return "%s by %s with corners of %s"
        .formatted(Scale.MM.show(height), Scale.MM.show(width), Scale.MM.show(radius));
  }

  /** The plate's own wall lies over the tube's; welds along its edges join their centre lines. */
  ThinShape plated(double width, double thickness) {
    Guard.positive("plate width", width, Scale.MM);
    Guard.positive("plate thickness", thickness, Scale.MM);
    ThinShape alone = tube.shape();
    double flat = tube.width() - 2 * tube.outer();
    if (width > flat + Pen.NOTHING) {
      throw new ModelException(
          "plate %s wide stands over the rounded corners of %s, whose flat face is %s wide; it must not be wider"
              .formatted(Scale.MM.show(width), alone.name(), Scale.MM.show(flat)));
    }
    Spot middle = new Spot(0, (tube.height() + thickness) / 2);
    List<Strip> strips = platedStrips(alone.strips(), width, thickness);
    List<Wall> flats = new ArrayList<>(alone.flats());
    Line level =
        new Line(middle.plus(new Spot(width / 2, 0)), middle.plus(new Spot(-width / 2, 0)));
    flats.add(Wall.between(PLATE, thickness, Wall.Edge.INTERNAL, level));
    double z = tube.height() / 2 + thickness;
    Line face = new Line(new Spot(width / 2, z), new Spot(-width / 2, z));
    return new ThinShape(
        alone.name() + Label.sized(" with plate", width, thickness),
        alone.outline().and(List.of(Outline.rectangle(middle, thickness, width))),
        strips,
        platedMarks(alone, strips, face),
        flats,
        Torsion.CLOSED);
  }

  /** The tube's walls, the upper one up to the plate, then under it, beyond it, plate, welds. */
  private List<Strip> platedStrips(List<Strip> ring, double width, double thickness) {
    double low = (tube.height() - tube.wall()) / 2;
    double high = (tube.height() + thickness) / 2;
    Spot left = new Spot(width / 2, low);
    Spot right = new Spot(-width / 2, low);
    Spot leftEdge = new Spot(width / 2, high);
    Spot rightEdge = new Spot(-width / 2, high);
    double thinner = Math.min(tube.wall(), thickness);
    List<Strip> strips = new ArrayList<>(ring);
    Segment top = ring.get(TOP).path();
    strips.set(TOP, new Strip(new Line(top.start(), left), tube.wall()));
    strips.add(new Strip(new Line(left, right), tube.wall()));
    strips.add(new Strip(new Line(right, top.end()), tube.wall()));
    strips.add(new Strip(new Line(leftEdge, rightEdge), thickness));
    strips.add(Strip.weld(new Line(left, leftEdge), thinner));
    strips.add(Strip.weld(new Line(right, rightEdge), thinner));
    return strips.stream().filter(strip -> strip.path().length() > Pen.NOTHING).toList();
  }

  /** Outer faces all round; under the plate the tube's inner one. */
  private static List<Mark> platedMarks(ThinShape alone, List<Strip> strips, Line face) {
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : alone.marks()) {
      int wall = strips.indexOf(alone.strips().get(mark.wall()));
      if (wall >= 0) {
        marks.add(new Mark(mark.part(), mark.fibre(), wall, mark.fraction(), mark.side()));
      }
    }
    int plate = strips.size() - 3;
    Strip under =
        strips.stream()
            .filter(strip -> covers(face, strip))
            .findFirst()
            .orElseThrow(
                () ->
                    new ModelException(
                        "a plate %s wide is too narrow for its tube's wall to be followed under it"
                            .formatted(Scale.MM.show(face.length()))));
    for (int i = 0; i < plate; i++) {
      Strip strip = strips.get(i);
      if (strip.equals(under)) {
        Marks.bothFaces("wall under plate", strip, i).forEach(marks::add);
      } else if (!alone.strips().contains(strip)) {
        Segment outer = strip.path().aside(strip.thickness() / 2);
        Marks.outside("wall", outer, i).forEach(marks::add);
      }
      beside(strip, under, i).forEach(marks::add);
    }
    Marks.outside(PLATE, face, plate).forEach(marks::add);
    marks.add(new Mark("plate edge", face.start(), plate, 0, 1));
    marks.add(new Mark("plate edge", face.end(), plate, 1, 1));
    return marks;
  }

  private static boolean covers(Line plate, Strip strip) {
    return strip.path().start().y() == plate.start().y()
        && strip.path().end().y() == plate.end().y();
  }

  /** Where a wall ends at the plate's edge, and its flow goes on in two. */
  private static Stream<Mark> beside(Strip strip, Strip under, int wall) {
    if (near(strip.path().end(), under.path().start())) {
      return Marks.across("wall beside plate", strip, wall, 1).filter(mark -> mark.side() > 0);
    }
    if (near(strip.path().start(), under.path().end())) {
      return Marks.across("wall beside plate", strip, wall, 0).filter(mark -> mark.side() > 0);
    }
    return Stream.empty();
  }

  private static boolean near(Spot one, Spot other) {
    return one.minus(other).size() < Pen.NOTHING * 10;
  }
}
