package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Quantities;

/**
 * Any profile folded from one sheet: legs and bends in turn, as a press brake makes them.
 *
 * <pre>
 *   FoldedProfile.of(mm(3), mm(3))       a sheet of 3 mm, bends of 3 mm inside radius
 *       .leg(mm(40)).bend(deg(90))       40 mm to the left, then upwards
 *       .leg(mm(80)).bend(deg(90))       80 mm up, then to the right
 *       .leg(mm(40))
 *       .section("channel")
 * </pre>
 *
 * <p>Legs are outside lengths, as one measures them: each reaches to where its outer face meets
 * that of the next leg; at a bend sharper than 90° to the bend's outermost place. The first leg
 * runs to the left (+y); a bend above zero turns from left to up, from up to right and so on.
 *
 * <p>A profile is open, however near its ends come to each other: a seam that is not welded slips.
 *
 * @param wall thickness of the sheet [m]
 * @param radius inside radius of the bends [m]
 * @param heading of the first leg, from y towards z [rad]
 * @param legs outside lengths [m]
 * @param bends angles between the legs [rad], positive from y towards z
 */
public record FoldedProfile(
    double wall, double radius, double heading, List<Double> legs, List<Double> bends) {
  /** A shorter edge stiffener than this part of its flange does not hold it (EN 1993-1-3, 5.2). */
  private static final double LEAST_LIP = 0.2;

  private static final double QUARTER = Math.PI / 2;

  private static final Scale DEGREE = new Scale("°", Math.PI / 180);

  /** Refuses a sheet without thickness, legs without length and bends beyond 180°. */
  public FoldedProfile {
    Guard.positive("sheet thickness", wall, Scale.MM);
    Guard.notNegative("inside bend radius", radius, Scale.MM);
    Guard.finite("heading of the first leg", heading);
    legs = List.copyOf(legs);
    bends = List.copyOf(bends);
    if (bends.size() != legs.size() && bends.size() != legs.size() - 1) {
      throw new ModelException(
          "%d legs and %d bends do not follow each other in turn; a folded profile goes leg, bend, leg"
              .formatted(legs.size(), bends.size()));
    }
  }

  /**
   * A sheet to be folded.
   *
   * @param wall its thickness
   * @param insideRadius of its bends
   * @return a profile without a leg yet
   */
  public static FoldedProfile of(Quantity<Length> wall, Quantity<Length> insideRadius) {
    double thickness = Quantities.si("sheet thickness", wall);
    double radius = Quantities.si("inside bend radius", insideRadius);
    return new FoldedProfile(thickness, radius, 0, List.of(), List.of());
  }

  /**
   * The same sheet with its first leg in another direction.
   *
   * @param direction from left towards up: 0 left, 90° up, 180° right
   * @return the profile
   */
  public FoldedProfile heading(Quantity<Angle> direction) {
    double turned = Quantities.si("heading of the first leg", direction);
    return new FoldedProfile(wall, radius, turned, legs, bends);
  }

  /**
   * One more leg.
   *
   * @param outside its length, outside
   * @return the longer profile
   */
  public FoldedProfile leg(Quantity<Length> outside) {
    String what = "leg " + (legs.size() + 1);
    double length = Guard.positive(what, Quantities.si(what, outside), Scale.MM);
    if (bends.size() < legs.size()) {
      throw new ModelException(
          "leg %d follows leg %d without a bend; bend first, or give one longer leg"
              .formatted(legs.size() + 1, legs.size()));
    }
    return new FoldedProfile(wall, radius, heading, and(legs, length), bends);
  }

  /**
   * A bend after the last leg.
   *
   * @param angle how far the next leg turns away, from y (left) towards z (up)
   * @return the profile with the bend
   */
  public FoldedProfile bend(Quantity<Angle> angle) {
    String what = "bend " + (bends.size() + 1);
    double turn = Guard.finite(what, Quantities.si(what, angle));
    if (bends.size() == legs.size()) {
      throw new ModelException(what + " has no leg before it; add a leg first");
    }
    if (turn == 0 || Math.abs(turn) > Math.PI + 1e-9) {
      throw new ModelException(
          "%s turns by %s; a bend turns by more than 0 and up to 180°, either way"
              .formatted(what, DEGREE.number(turn, 4) + "°"));
    }
    return new FoldedProfile(wall, radius, heading, legs, and(bends, turn));
  }

  private static List<Double> and(List<Double> list, double one) {
    return Stream.concat(list.stream(), Stream.of(one)).toList();
  }

  /**
   * A channel with lips, its web upright on the right, its flanges pointing left (+y); {@link
   * Section#mirrored} gives the other hand.
   *
   * @param depth along z, outside
   * @param flange along y, outside
   * @param lip along z, outside
   * @return the section
   */
  public Section lippedChannel(
      Quantity<Length> depth, Quantity<Length> flange, Quantity<Length> lip) {
    FoldedProfile profile =
        sheet(QUARTER).leg(lip).right().leg(flange).right().leg(depth).right().leg(flange);
    double[] sizes = {profile.legs.get(2), profile.legs.get(1), profile.legs.get(0), wall};
    return profile.right().leg(lip).shape(Label.sized("lipped channel", sizes)).section();
  }

  /**
   * A zed, its web upright, the lower flange to the left and the upper one to the right.
   *
   * @param depth along z, outside
   * @param flange of either side along y, outside, over the web
   * @return the section
   */
  public Section zed(Quantity<Length> depth, Quantity<Length> flange) {
    FoldedProfile profile = sheet(Math.PI).leg(flange).left().leg(depth).right().leg(flange);
    String name = Label.sized("zed", profile.legs.get(1), profile.legs.get(0), wall);
    return profile.shape(name).section();
  }

  /**
   * A top-hat, its crown up and its brims out to both sides.
   *
   * @param depth along z, outside
   * @param crown width of the crown along y, outside
   * @param overBrims width over both brims
   * @return the section
   */
  public Section topHat(
      Quantity<Length> depth, Quantity<Length> crown, Quantity<Length> overBrims) {
    double inner = Quantities.si("width of the crown", crown);
    double outer = Quantities.si("width over the brims", overBrims);
    if (outer <= inner) {
      throw new ModelException(
          "width over the brims %s leaves no brim beside a crown of %s; it must exceed the crown"
              .formatted(Scale.MM.show(outer), Scale.MM.show(inner)));
    }
    Quantity<Length> brim = Quantities.m((outer - inner) / 2 + wall);
    FoldedProfile profile = sheet(Math.PI).leg(brim).left().leg(depth).right().leg(crown);
    double high = profile.legs.get(1);
    String name = Label.sized("top-hat", high, inner, outer, wall);
    return profile.right().leg(depth).left().leg(brim).shape(name).section();
  }

  private FoldedProfile sheet(double direction) {
    return new FoldedProfile(wall, radius, direction, List.of(), List.of());
  }

  /** A right angle from y towards z: what ran to the left runs up. */
  private FoldedProfile right() {
    return bend(Quantities.rad(QUARTER));
  }

  private FoldedProfile left() {
    return bend(Quantities.rad(-QUARTER));
  }

  /**
   * The profile as a cross-section.
   *
   * @param name its name
   * @return the section
   */
  public Section section(String name) {
    return shape(Guard.name("section", name)).section();
  }

  ThinShape shape(String name) {
    if (legs.size() < 2 || bends.size() != legs.size() - 1) {
      throw new ModelException(
          "folded profile %s has %d legs and %d bends; it needs two legs or more, a bend between each two and none at its end"
              .formatted(name, legs.size(), bends.size()));
    }
    List<Piece> pieces = pieces(name);
    refuseCrossing(name, pieces);
    List<Segment> centre = pieces.stream().map(Piece::path).toList();
    refuseMeeting(name, centre);
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
  private List<Piece> pieces(String name) {
    List<Piece> pieces = new ArrayList<>();
    Spot at = Spot.ORIGIN;
    double direction = heading;
    for (int i = 0; i < legs.size(); i++) {
      Pen pen = Pen.at(at, Math.toDegrees(direction)).forward(flatLength(name, i));
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

  private double flatLength(String name, int leg) {
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

  private void refuseCrossing(String name, List<Piece> pieces) {
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

  private static void refuseMeeting(String name, List<Segment> centre) {
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
