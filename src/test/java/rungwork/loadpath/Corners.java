package rungwork.loadpath;

import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.frame.Point;
import rungwork.loadpath.SuspensionMember.Arm;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.loadpath.SuspensionMember.Strut;
import rungwork.loadpath.SuspensionMember.TrailingArm;
import rungwork.vehicle.Mount;

/** Corners whose forces can be found by hand: everything stands along the axes. */
public final class Corners {
  private static final Point CENTRE = at(0, 600, 270);
  private static final Point CONTACT = at(0, 600, 0);

  private Corners() {}

  public static Point at(double x, double y, double z) {
    return Point.at(mm(x), mm(y), mm(z));
  }

  public static Mount mount(String name, double x, double y, double z) {
    return new Mount(name, "left rail", at(x, y, z));
  }

  public static Hub hub() {
    return Hub.brakedInWheel(CENTRE, CONTACT);
  }

  public static Hub inboard() {
    return Hub.brakedInboard(CENTRE, CONTACT, "gearbox");
  }

  public static Arm lower() {
    return new Arm(
        "lower arm",
        mount("lower fore", 150, 400, 170),
        mount("lower aft", -150, 400, 170),
        at(0, 600, 170));
  }

  public static Arm upper() {
    return new Arm(
        "upper arm",
        mount("upper fore", 100, 400, 370),
        mount("upper aft", -100, 400, 370),
        at(0, 600, 370));
  }

  public static Bar tieRod() {
    return Bar.toUpright("tie rod", mount("rack", -120, 400, 270), at(-120, 580, 270));
  }

  /** A spring upright on the lower arm, a part of the way from its pivots to its ball joint. */
  public static Bar spring(double part) {
    double y = 400 + 200 * part;
    return new Bar("spring", mount("spring top", 0, y, 520), at(0, y, 170), "lower arm");
  }

  /** Two arms 200 mm apart and 200 mm long, the ball joints over the contact. */
  public static Corner twoArms() {
    return twoArms(hub(), 0.6);
  }

  public static Corner twoArms(Hub hub, double part) {
    return new Corner("front left", hub, List.of(lower(), upper(), tieRod(), spring(part)));
  }

  /** An upright strut over the lower arm. */
  public static Corner strut() {
    Strut strut = new Strut("strut", mount("strut top", 0, 600, 770), at(0, 600, 270));
    return new Corner("front left", hub(), List.of(lower(), tieRod(), strut));
  }

  /** Pivots 400 mm ahead of the wheel at its height, an upright spring 100 mm ahead of it. */
  public static Corner trailingArm() {
    return new Corner(
        "rear left",
        hub(),
        List.of(
            new TrailingArm(
                "trailing arm",
                mount("inner pivot", 400, 300, 270),
                mount("outer pivot", 400, 500, 270)),
            Bar.toUpright("spring", mount("spring top", 100, 600, 600), at(100, 600, 270))));
  }
}
