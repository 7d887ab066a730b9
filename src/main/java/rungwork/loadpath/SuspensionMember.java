package rungwork.loadpath;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.loadpath.Reaction.Given;
import rungwork.loadpath.Reaction.Ray;
import rungwork.vehicle.Mount;

/**
 * One part of a suspension that stands between the frame and the upright. Joints are free to turn:
 * what rubber bushes resist in turning is left out.
 */
public sealed interface SuspensionMember {
  /** The body that carries the wheel. */
  String UPRIGHT = "upright";

  /** Points closer than this are one point [m]: 0.1 mm, less than anyone measures. */
  double ONE_POINT = 1e-4;

  /**
   * Its name.
   *
   * @return unique in its corner
   */
  String name();

  /**
   * The mounts that hold it.
   *
   * @return one or two
   */
  List<Mount> mounts();

  /**
   * The forces that it takes.
   *
   * @return forces of unknown size on known lines
   */
  Reactions reactions();

  /** Forces of unknown size, and the body that they hold besides the upright. */
  final class Reactions {
    private final List<Reaction> forces;
    private final Optional<String> body;
    private final Optional<Given> given;

    private Reactions(List<Reaction> forces, Optional<String> body, Optional<Given> given) {
      this.forces = List.copyOf(forces);
      this.body = body;
      this.given = given;
    }

    private Reactions(List<Reaction> forces, Optional<String> body) {
      this(forces, body, Optional.empty());
    }

    List<Reaction> forces() {
      return forces;
    }

    /** A force of stated size. */
    Optional<Given> given() {
      return given;
    }

    Optional<String> body() {
      return body;
    }
  }

  /**
   * A bar with a free joint at both ends, so that its force lies on its line: link, tie rod, push
   * rod, spring with its damper.
   *
   * @param name unique in its corner
   * @param mount the mount at its inner end
   * @param end its outer end
   * @param body what its outer end holds: {@value #UPRIGHT}, or an arm's name
   */
  record Bar(String name, Mount mount, Point end, String body) implements SuspensionMember {
    /** Refuses a bar of no length. */
    public Bar {
      name = Guard.name("bar", name);
      body = Guard.name("body that bar " + name + " holds", body);
      refuseOnePoint("bar " + name, mount.at(), end);
    }

    /**
     * A bar to the upright.
     *
     * @param name unique in its corner
     * @param mount the mount at its inner end
     * @param end its outer end
     * @return the bar
     */
    public static Bar toUpright(String name, Mount mount, Point end) {
      return new Bar(name, mount, end, UPRIGHT);
    }

    @Override
    public List<Mount> mounts() {
      return List.of(mount);
    }

    @Override
    public Reactions reactions() {
      Vector3D pull = Ray.vector(end, mount.at()).normalize();
      Reaction force = Reaction.between(name, body, mount.name(), new Ray(mount.at(), pull));
      return new Reactions(List.of(force), Optional.empty());
    }
  }

  /**
   * The link of a roll bar: a bar whose force is stated, because it follows from the bar's twist
   * and not from equilibrium. The other wheel's link has the opposite force; the bar's bush on the
   * frame is taken at the link's upper end.
   *
   * @param name unique in its corner
   * @param mount where its upper end pushes the frame
   * @param end its lower end
   * @param body what its lower end holds: {@value #UPRIGHT}, or an arm's name
   * @param tension stated force, tension positive [N]
   */
  record RollBarLink(String name, Mount mount, Point end, String body, double tension)
      implements SuspensionMember {
    /** Refuses a link of no length. */
    public RollBarLink {
      name = Guard.name("roll bar link", name);
      body = Guard.name("body that roll bar link " + name + " holds", body);
      Guard.finite("tension of roll bar link " + name, tension);
      refuseOnePoint("roll bar link " + name, mount.at(), end);
    }

    /**
     * A link that pulls or pushes an arm.
     *
     * @param name unique in its corner
     * @param mount where its upper end pushes the frame
     * @param end its lower end, on the arm
     * @param arm the arm's name
     * @return the link, without a force yet
     */
    public static RollBarLink onArm(String name, Mount mount, Point end, String arm) {
      return new RollBarLink(name, mount, end, arm, 0);
    }

    /**
     * The same link with a force.
     *
     * @param force tension positive
     * @return the link
     */
    public RollBarLink pulling(Quantity<Force> force) {
      return new RollBarLink(name, mount, end, body, si("tension of a roll bar link", force));
    }

    @Override
    public List<Mount> mounts() {
      return List.of(mount);
    }

    @Override
    public Reactions reactions() {
      Vector3D pull = Ray.vector(end, mount.at()).normalize();
      Reaction force = Reaction.between(name, body, mount.name(), new Ray(mount.at(), pull));
      return new Reactions(List.of(), Optional.empty(), Optional.of(new Given(force, tension)));
    }
  }

  /**
   * A rigid arm that turns on two pivots and holds the upright by a ball joint; bars may stand on
   * it.
   *
   * @param name unique in its corner
   * @param first one pivot
   * @param second the other pivot
   * @param ball its ball joint
   */
  record Arm(String name, Mount first, Mount second, Point ball) implements SuspensionMember {
    /** Refuses pivots that meet in a point. */
    public Arm {
      name = Guard.name("arm", name);
      refuseOnePoint("arm " + name, first.at(), second.at());
    }

    /** How far a point stands off the axis of the pivots [m]. */
    double fromAxis(Point point) {
      Vector3D axis = Ray.vector(first.at(), second.at()).normalize();
      return axis.crossProduct(Ray.vector(first.at(), point)).getNorm();
    }

    @Override
    public List<Mount> mounts() {
      return List.of(first, second);
    }

    @Override
    public Reactions reactions() {
      List<Reaction> forces = new ArrayList<>(onPivots(name, name, mounts()));
      Vector3D axis = Ray.vector(first.at(), second.at());
      Ray.triad(ball, axis).forEach(ray -> forces.add(Reaction.between(name, UPRIGHT, name, ray)));
      return new Reactions(forces, Optional.of(name));
    }
  }

  /**
   * An arm that is one piece with the upright and turns on two pivots, such as a trailing arm.
   *
   * @param name unique in its corner
   * @param first one pivot
   * @param second the other pivot
   */
  record TrailingArm(String name, Mount first, Mount second) implements SuspensionMember {
    /** Refuses pivots that meet in a point. */
    public TrailingArm {
      name = Guard.name("trailing arm", name);
      refuseOnePoint("trailing arm " + name, first.at(), second.at());
    }

    @Override
    public List<Mount> mounts() {
      return List.of(first, second);
    }

    @Override
    public Reactions reactions() {
      return new Reactions(onPivots(name, UPRIGHT, mounts()), Optional.empty());
    }
  }

  /**
   * A strut that is one piece with the upright: its spring pushes along it, its rod takes side
   * force, its top joint is free to turn.
   *
   * @param name unique in its corner
   * @param top the mount at its top
   * @param foot a point of its line, lower down
   */
  record Strut(String name, Mount top, Point foot) implements SuspensionMember {
    /** Refuses a strut of no length. */
    public Strut {
      name = Guard.name("strut", name);
      refuseOnePoint("strut " + name, top.at(), foot);
    }

    @Override
    public List<Mount> mounts() {
      return List.of(top);
    }

    @Override
    public Reactions reactions() {
      List<Reaction> forces =
          Ray.triad(top.at(), Ray.vector(foot, top.at())).stream()
              .map(ray -> Reaction.between(name, UPRIGHT, top.name(), ray))
              .toList();
      return new Reactions(forces, Optional.empty());
    }
  }

  /** Each pivot takes force across the axis; both together take the thrust along it. */
  private static List<Reaction> onPivots(String member, String body, List<Mount> pivots) {
    Vector3D axis = Ray.vector(pivots.get(0).at(), pivots.get(1).at());
    List<Reaction> forces = new ArrayList<>();
    for (Mount pivot : pivots) {
      Ray.triad(pivot.at(), axis).stream()
          .skip(1)
          .forEach(ray -> forces.add(Reaction.between(member, body, pivot.name(), ray)));
    }
    List<String> names = pivots.stream().map(Mount::name).toList();
    forces.add(new Reaction(member, body, names, pivots.get(0).at(), axis.normalize()));
    return forces;
  }

  private static void refuseOnePoint(String what, Point from, Point to) {
    if (from.distance(to) < ONE_POINT) {
      throw new ModelException(
          "the two ends of "
              + what
              + " are "
              + Scale.MM.show(from.distance(to))
              + " apart; they must be more than "
              + Scale.MM.show(ONE_POINT));
    }
  }
}
