package rungwork.section;

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
    return new FoldedSheet(name, this).shape();
  }
}
