package rungwork.vehicle;

import static rungwork.quantity.Quantities.Nmprad;

import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import rungwork.check.Member;
import rungwork.check.Member.Ends;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.quantity.RotationalStiffness;
import rungwork.section.Torsion;
import rungwork.solve.InertiaBalance;
import rungwork.solve.RigidAcceleration;

/**
 * A two-rail ladder frame: rails, crossmembers at stations, and mounts. Immutable.
 *
 * <p>Its features are named places: {@code left tip}, {@code right tip}, {@code left tail}, {@code
 * right tail}; for a crossmember named {@code front}: {@code front left}, {@code front middle},
 * {@code front right}; for a kick-up named {@code front}: {@code front kick-up left foot}, {@code
 * front kick-up left head} and the same on the right; and every mount by its own name.
 */
public final class Ladder {
  private final String name;
  private final double level;
  private final Map<Side, Rail> rails;
  private final List<Crossmember> crossmembers;
  private final List<Mount> mounts;
  private final List<KickUp> kickUps;
  private final Ends warping;
  private final Layout layout;
  private final Frame welded;
  private final List<Mass> ownMasses;

  Ladder(LadderBuilder from) {
    name = from.name;
    level = from.level;
    rails = Map.copyOf(from.rails);
    crossmembers = List.copyOf(from.crossmembers);
    mounts = List.copyOf(from.mounts);
    kickUps = List.copyOf(from.kickUps);
    warping = from.warping;
    layout = new Layout(this);
    welded = layout.frame(Joints.RIGID);
    ownMasses = List.copyOf(InertiaBalance.ownMasses(welded));
  }

  /**
   * Where both rails rise, or drop, seen from the side: their line of centroids goes straight from
   * the foot to the head and stays at the new height beyond it.
   *
   * <pre>
   *                head o-----------   rise, may be below zero
   *                    /
   *     ------------- o foot
   * </pre>
   *
   * @param name unique among the ladder's kick-ups, such as {@code front}
   * @param foot x where the rails leave the height that they have on the foot's side [m]
   * @param head x where they reach the new height, ahead of the foot or behind it [m]
   * @param rise of the head above the foot [m]
   */
  public record KickUp(String name, double foot, double head, double rise) {
    /** Refuses a kick-up that goes straight up. */
    public KickUp {
      name = Guard.name("kick-up", name);
      Guard.finite("foot of kick-up " + name, foot);
      Guard.finite("head of kick-up " + name, head);
      Guard.finite("rise of kick-up " + name, rise);
      if (Math.abs(head - foot) < Layout.SAME_PLACE) {
        throw new ModelException(
            "kick-up "
                + name
                + " has its foot and its head at x "
                + Scale.MM.show(foot)
                + ": the rails would go straight up; let them lie apart");
      }
    }

    /** How much of the rise a station has [m]. */
    double at(double x) {
      return rise * Math.max(0, Math.min(1, (x - foot) / (head - foot)));
    }

    /** Its rear end [m]. */
    double rear() {
      return Math.min(foot, head);
    }

    /** Its front end [m]. */
    double front() {
      return Math.max(foot, head);
    }

    /** The feature at its foot or its head on a side. */
    String feature(Side side, String end) {
      return name + " kick-up " + side.word() + " " + end;
    }
  }

  /**
   * Starts a ladder.
   *
   * @param name its name
   * @return a builder; {@link LadderBuilder#build()} checks all
   */
  public static LadderBuilder named(String name) {
    return new LadderBuilder(Guard.name("ladder", name));
  }

  /**
   * The ladder's name.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The height of the rails' centroid line between kick-ups; without any, the flat frame lies
   * there.
   *
   * @return z [m]
   */
  public double level() {
    return level;
  }

  /**
   * The kick-ups from front to rear.
   *
   * @return the kick-ups; none where the rails are level
   */
  public List<KickUp> kickUps() {
    return kickUps;
  }

  /**
   * The height of the rails' centroid line at a station.
   *
   * @param x the station [m]
   * @return z: the level and what each kick-up adds there [m]
   */
  public double heightAt(double x) {
    return level + kickUps.stream().mapToDouble(one -> one.at(x)).sum();
  }

  /**
   * A rail.
   *
   * @param side its side
   * @return the rail
   */
  public Rail rail(Side side) {
    return rails.get(side);
  }

  /**
   * The crossmembers, from front to rear.
   *
   * @return the crossmembers
   */
  public List<Crossmember> crossmembers() {
    return crossmembers;
  }

  /**
   * A crossmember by its name.
   *
   * @param crossmember its name, such as {@code front}
   * @return the crossmember
   * @throws ModelException when there is none of that name
   */
  public Crossmember crossmember(String crossmember) {
    return crossmembers.stream()
        .filter(one -> one.name().equals(crossmember))
        .findFirst()
        .orElseThrow(
            () ->
                LadderBuilder.unknown(
                    "crossmember",
                    crossmember,
                    name,
                    crossmembers.stream().map(Crossmember::name).toList()));
  }

  /**
   * The mounts in the order they were given.
   *
   * @return the mounts
   */
  public List<Mount> mounts() {
    return mounts;
  }

  /**
   * The same ladder with another stock for one crossmember.
   *
   * @param crossmember its name
   * @param stock what it is cut from now
   * @return the varied ladder
   */
  public Ladder withCrossmember(String crossmember, Stock stock) {
    Crossmember old = crossmember(crossmember);
    LadderBuilder varied = new LadderBuilder(this);
    varied.crossmembers.replaceAll(
        one -> one.equals(old) ? new Crossmember(one.name(), one.x(), stock) : one);
    return varied.build();
  }

  /**
   * The same ladder with both rails in another stock from tip to tail.
   *
   * @param stock what the rails are cut from now
   * @return the varied ladder
   */
  public Ladder withRails(Stock stock) {
    LadderBuilder varied = new LadderBuilder(this);
    varied.rails.replaceAll((side, rail) -> rail.of(stock));
    return varied.build();
  }

  /**
   * The frame in plan, without supports: flat, or rising where the rails have kick-ups. The left
   * rail's beams run forward, the right rail's rearward and the crossmembers' from left to right,
   * so a section's +y faces outwards on both rails and forward on crossmembers.
   *
   * @param joints what is assumed of the joints between crossmembers and rails
   * @return the frame
   */
  public Frame frame(Joints joints) {
    return frame(joints, Ends.FREE);
  }

  /**
   * The same with what the joints do to the warping of open sections.
   *
   * @param joints what is assumed of the joints between crossmembers and rails
   * @param ends one of the {@link Ends#cases() cases} of {@link #warping()}
   * @return the frame
   */
  public Frame frame(Joints joints, Ends ends) {
    joints.released().keySet().forEach(this::crossmember);
    return layout.frame(joints, ends);
  }

  /**
   * The node that a feature sits on.
   *
   * @param feature its name
   * @return the node
   * @throws ModelException when the ladder has no such feature
   */
  public Node node(String feature) {
    String node =
        layout
            .node(feature)
            .orElseThrow(() -> LadderBuilder.unknown("feature", feature, name, layout.features()));
    return new Node(node, layout.place(node));
  }

  /**
   * The features that are nodes of a rail.
   *
   * @param side its side
   * @return their names from the tip to the tail
   */
  public List<String> railFeatures(Side side) {
    return layout.railNodes(side);
  }

  /**
   * Where things are fastened at a feature: a mount's own point, or else the node itself.
   *
   * @param feature its name
   * @return the place in vehicle axes
   * @throws ModelException when the ladder has no such feature
   */
  public Point at(String feature) {
    return mounts.stream()
        .filter(mount -> mount.name().equals(feature))
        .map(Mount::at)
        .findFirst()
        .orElseGet(() -> node(feature).at());
  }

  /**
   * The masses of the rails' and crossmembers' own pieces between nodes.
   *
   * @return one mass a piece, named after its beam
   */
  public List<Mass> masses() {
    return ownMasses;
  }

  /**
   * The mass of rails and crossmembers from line to line; mounts and welds are not counted.
   *
   * @return the mass [kg]
   */
  public double mass() {
    return masses().stream().mapToDouble(Mass::kilograms).sum();
  }

  /**
   * The members as a builder sees them: crossmembers, and each rail from crossmember to
   * crossmember. Buckling lengths take the crossmembers as places that hold the rail; whether the
   * frame as a whole stays in shape is not their question.
   *
   * @return the members
   */
  public List<Member> members() {
    return new Members(this, Member.Sway.IN_LENGTHS).all();
  }

  /**
   * The bare frame's torsional stiffness between two of its crossmembers as a workshop would
   * measure it: stands under the rear one's ends, a couple at the front one's, joints rigid.
   *
   * @param front name of the crossmember that is twisted
   * @param rear name of the crossmember that rests on stands
   * @return K, moment for an angle
   * @throws ModelException when the ladder has no such crossmember
   */
  public Quantity<RotationalStiffness> torsionalStiffness(String front, String rear) {
    crossmember(front);
    crossmember(rear);
    TwistRig rig =
        new TwistRig(this, front + " left", front + " right", rear + " left", rear + " right");
    return Nmprad(rig.stiffness(Joints.RIGID));
  }

  /**
   * The assumptions about the joints that the ladder is run with.
   *
   * @return rigid; torsion of all crossmembers released; and, with two crossmembers or more, each
   *     one's joints released
   */
  public List<Joints> joints() {
    return Joints.all(crossmembers.stream().map(Crossmember::name).toList());
  }

  /**
   * What the joints do to the warping of open sections.
   *
   * @return as stated; free without an open section, not known without a statement
   */
  public Ends warping() {
    return hasOpenSection() ? warping : Ends.FREE;
  }

  Ends statedWarping() {
    return warping;
  }

  /** A section known by its properties alone tells nothing of its warping, held or not. */
  private boolean hasOpenSection() {
    return layout.frame(Joints.RIGID).beams().stream()
        .map(Beam::section)
        .anyMatch(one -> one.torsion() == Torsion.OPEN && one.properties().iwAcross() > 0);
  }

  /** What a load case's name adds about the warping of open sections; nothing without any. */
  String warpingWords(Ends ends) {
    return hasOpenSection() ? ", warping " + ends.words() : "";
  }

  /**
   * The part name of a rail.
   *
   * @param side its side
   * @return {@code left rail} or {@code right rail}
   */
  static String railPart(Side side) {
    return side.word() + " rail";
  }

  /**
   * The inertia of rails and crossmembers as loads along them.
   *
   * @param acceleration how the ladder accelerates
   * @return a load along each beam
   */
  List<Load> inertia(RigidAcceleration acceleration) {
    return acceleration.alongBeams(welded);
  }

  private String kickUpWords() {
    return kickUps.stream()
        .map(one -> "kick-up " + one.name() + " of " + Scale.MM.show(one.rise()) + ", ")
        .reduce("", String::concat);
  }

  /**
   * How features become nodes and members beams.
   *
   * @return the layout
   */
  Layout layout() {
    return layout;
  }

  @Override
  public String toString() {
    return "Ladder "
        + name
        + ": rails "
        + Scale.MM.show(rail(Side.LEFT).x() - rail(Side.LEFT).tail())
        + " long, "
        + crossmembers.size()
        + " crossmembers ("
        + String.join(", ", crossmembers.stream().map(Crossmember::name).toList())
        + "), "
        + mounts.size()
        + " mounts, "
        + kickUpWords()
        + Scale.KG.show(mass());
  }
}
