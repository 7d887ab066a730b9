package rungwork.vehicle;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Member.Ends;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Stock;

/** Collects the parts of a ladder in any order; {@link #build()} checks all. */
public final class LadderBuilder {
  final String name;
  final Map<Side, Rail> rails = new EnumMap<>(Side.class);
  final List<Crossmember> crossmembers = new ArrayList<>();
  final List<Mount> mounts = new ArrayList<>();
  final List<Ladder.KickUp> kickUps = new ArrayList<>();
  Ends warping = Ends.UNKNOWN;
  double level = Double.NaN;

  LadderBuilder(String name) {
    this.name = name;
  }

  LadderBuilder(Ladder like) {
    this(like.name());
    level = like.level();
    for (Side side : Side.values()) {
      rails.put(side, like.rail(side));
    }
    crossmembers.addAll(like.crossmembers());
    mounts.addAll(like.mounts());
    kickUps.addAll(like.kickUps());
    warping = like.statedWarping();
  }

  /**
   * Says how high the rails' centroid line is; with kick-ups, between their feet.
   *
   * @param height above the ground, above zero
   * @return this builder
   */
  public LadderBuilder level(Quantity<Length> height) {
    level = Guard.positive("level of ladder " + name, si("level", height), Scale.MM);
    return this;
  }

  /**
   * Two straight parallel rails of one stock.
   *
   * @param front x of their tips
   * @param rear x of their tails
   * @param spacing between their centroid lines, above zero
   * @param stock what they are cut from
   * @return this builder
   */
  public LadderBuilder rails(
      Quantity<Length> front, Quantity<Length> rear, Quantity<Length> spacing, Stock stock) {
    double half = Guard.positive("rail spacing", si("rail spacing", spacing), Scale.MM) / 2;
    double tail = si("rear end of the rails", rear);
    Rail.Reach reach = new Rail.Reach(tail, half, stock);
    return rails(new Rail(si("front end of the rails", front), half, List.of(reach)));
  }

  /**
   * Lets both rails rise, or drop, from a foot to a head; beyond the head they stay at the new
   * height. Crossmembers and rail tips there rise with them.
   *
   * @param kickUp its name, such as {@code front}
   * @param foot x of its foot
   * @param head x of its head, ahead of the foot or behind it
   * @param rise of the head above the foot; below zero for a drop
   * @return this builder
   */
  public LadderBuilder kickUp(
      String kickUp, Quantity<Length> foot, Quantity<Length> head, Quantity<Length> rise) {
    double from = si("foot of kick-up " + kickUp, foot);
    double to = si("head of kick-up " + kickUp, head);
    kickUps.add(new Ladder.KickUp(kickUp, from, to, si("rise of kick-up " + kickUp, rise)));
    return this;
  }

  /**
   * Two rails that mirror each other.
   *
   * @param left the left one
   * @return this builder
   */
  public LadderBuilder rails(Rail left) {
    return rail(Side.LEFT, left).rail(Side.RIGHT, left.mirrored());
  }

  /**
   * One rail.
   *
   * @param side its side
   * @param rail the rail
   * @return this builder
   */
  public LadderBuilder rail(Side side, Rail rail) {
    rails.put(side, rail);
    return this;
  }

  /**
   * Adds a crossmember from rail to rail.
   *
   * @param crossmember its name, such as {@code front}
   * @param x its station
   * @param stock what it is cut from
   * @return this builder
   */
  public LadderBuilder crossmember(String crossmember, Quantity<Length> x, Stock stock) {
    crossmembers.add(new Crossmember(crossmember, si("station of " + crossmember, x), stock));
    return this;
  }

  /**
   * Adds a mount that a rail carries at the mount's own station.
   *
   * @param mount its name
   * @param side of the rail
   * @param at the fastening point
   * @return this builder
   */
  public LadderBuilder mount(String mount, Side side, Point at) {
    mounts.add(new Mount(mount, Ladder.railPart(side), at));
    return this;
  }

  /**
   * Adds a mount that a crossmember carries at the mount's own distance from the middle.
   *
   * @param crossmember the crossmember's name
   * @param mount the mount's name
   * @param at the fastening point
   * @return this builder
   */
  public LadderBuilder mountOn(String crossmember, String mount, Point at) {
    mounts.add(new Mount(mount, crossmember + " crossmember", at));
    return this;
  }

  /**
   * States what all joints do to the warping of open sections. Without a statement the frame is
   * solved for free, one held and both ends held, and the worst counts.
   *
   * @param ends {@link Ends#FREE} for joints welded by the web only, {@link Ends#BOTH_HELD} for
   *     joints welded by web and both flanges
   * @return this builder
   */
  public LadderBuilder warping(Ends ends) {
    warping = ends;
    return this;
  }

  /**
   * Checks everything and makes the ladder.
   *
   * @return the ladder
   * @throws ModelException naming the part that is wrong
   */
  public Ladder build() {
    LadderRules rules = new LadderRules(this);
    rules.checkRails();
    crossmembers.sort(Comparator.comparingDouble(crossmember -> -crossmember.x()));
    kickUps.sort(Comparator.comparingDouble(kickUp -> -kickUp.front()));
    rules.checkCarried();
    return new Ladder(this);
  }

  /**
   * The refusal of a name that the ladder does not know.
   *
   * @param what crossmember or feature
   * @param unknown the name given
   * @param ladder the ladder's name
   * @param known the names there are
   * @return the exception to throw
   */
  static ModelException unknown(
      String what, String unknown, String ladder, Iterable<String> known) {
    return new ModelException(
        "ladder "
            + ladder
            + " has no "
            + what
            + " named "
            + unknown
            + "; it has "
            + String.join(", ", known));
  }
}
