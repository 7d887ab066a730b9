package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/** A folded profile laid out in the plane: flat legs and round bends along its centre line. */
final class FoldedSheet {
  /** A shorter edge stiffener than this part of its flange does not hold it (EN 1993-1-3, 5.2). */
  private static final double LEAST_LIP = 0.2;

  private static final double QUARTER = Math.PI / 2;

  private final String name;
  private final double wall;
  private final double radius;
  private final double heading;
  private final List<Double> legs;
  private final List<Double> bends;

  FoldedSheet(String name, FoldedProfile profile) {
    this.name = name;
    wall = profile.wall();
    radius = profile.radius();
    heading = profile.heading();
    legs = profile.legs();
    bends = profile.bends();
  }

  ThinShape shape() {
    if (legs.size() < 2 || bends.size() != legs.size() - 1) {
      throw new ModelException(
          "folded profile %s has %d legs and %d bends; it needs two legs or more, a bend between each two and none at its end"
              .formatted(name, legs.size(), bends.size()));
    }
    List<Piece> pieces = pieces();
    refuseCrossing(pieces);
    List<Segment> centre = pieces.stream().map(Piece::path).toList();
    refuseMeeting(centre);
    List<Strip> strips = centre.stream().map(path -> new Strip(path, wall)).toList();
    return new ThinShape(
        name,
        new Outline(List.of(Outline.around(centre, wall))),
        strips,
        Marks.chain(pieces.stream().map(Piece::part).toList(), strips),
        pieces.stream().filter(Piece::isLeg).map(this::flat).toList(),
        Torsion.OPEN);
  }

  /** Legs and bends in turn; a bend beyond 90° in two pieces, so that marks stand close enough. */
  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    Spot at = Spot.ORIGIN;
    double direction = heading;
    for (int i = 0; i < legs.size(); i++) {
      Pen pen = Pen.at(at, Math.toDegrees(direction)).forward(flatLength(i));
      int halves = i == bends.size() ? 0 : Math.abs(bends.get(i)) > QUARTER + 1e-9 ? 2 : 1;
      for (int half = 0; half < halves; half++) {
        pen = pen.bend(radius + wall / 2, Math.toDegrees(bends.get(i) / halves));
      }
      for (Segment path : pen.path()) {
        pieces.add(new Piece(path instanceof Line ? 2 * i : 2 * i + 1, path));
      }
      at = pieces.get(pieces.size() - 1).path().end();
      direction += i == bends.size() ? 0 : bends.get(i);
    }
    return pieces;
  }

  /**
   * A leg, a bend or half a bend.
   *
   * @param order of the legs and bends, from 0; legs are even
   * @param path its centre line
   */
  private record Piece(int order, Segment path) {
    boolean isLeg() {
      return order % 2 == 0;
    }

    int number() {
      return order / 2 + 1;
    }

    String part() {
      return (isLeg() ? "leg " : "bend ") + number();
    }
  }

  private double flatLength(int leg) {
    double taken = (leg == 0 ? 0 : setback(leg - 1)) + (leg < bends.size() ? setback(leg) : 0);
    if (legs.get(leg) <= taken + Pen.NOTHING) {
      throw new ModelException(
          "leg %d of folded profile %s, %s, leaves nothing flat beside its bends of wall %s and inside radius %s; it must exceed %s"
              .formatted(
                  leg + 1,
                  name,
                  Scale.MM.show(legs.get(leg)),
                  Scale.MM.show(wall),
                  Scale.MM.show(radius),
                  Scale.MM.show(taken)));
    }
    return legs.get(leg) - taken;
  }

  /** How much of an outside length a bend takes: (r + t)·tan(α/2), not more than r + t. */
  private double setback(int bend) {
    return (radius + wall) * Math.tan(Math.min(Math.abs(bends.get(bend)), QUARTER) / 2);
  }

  private void refuseCrossing(List<Piece> pieces) {
    List<Polygon> edges =
        pieces.stream().map(piece -> Polygon.of(new Strip(piece.path(), wall))).toList();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        boolean apart = pieces.get(j).order() - pieces.get(i).order() > 2;
        if (apart && edges.get(i).overlaps(edges.get(j))) {
          throw new ModelException(
              "folded profile %s crosses itself: %s runs into %s; shorten a leg or change a bend"
                  .formatted(name, pieces.get(i).part(), pieces.get(j).part()));
        }
      }
    }
  }

  private void refuseMeeting(List<Segment> centre) {
    Spot gap = centre.get(centre.size() - 1).end().minus(centre.get(0).start());
    if (gap.size() < Pen.NOTHING * 10) {
      throw new ModelException(
          "the ends of folded profile %s meet; a seam that is not welded slips, so the cell is open: leave a gap there, or take a tube or a boxed channel for a welded one"
              .formatted(name));
    }
  }

  /**
   * A leg's flat width. A leg between two bends is held along both edges, unless all that holds one
   * of them is an end leg shorter than a fifth of it.
   */
  private Wall flat(Piece piece) {
    int leg = piece.number() - 1;
    int last = legs.size() - 1;
    boolean end = leg == 0 || leg == last;
    boolean weak = leg == 1 && tooShort(0, 1) || leg == last - 1 && tooShort(last, leg);
    Wall.Edge edge = end || weak ? Wall.Edge.OUTSTAND : Wall.Edge.INTERNAL;
    Line middle = new Line(piece.path().start(), piece.path().end());
    return Wall.between(piece.part(), wall, edge, middle);
  }

  private boolean tooShort(int lip, int flange) {
    return legs.get(lip) < LEAST_LIP * legs.get(flange);
  }
}
