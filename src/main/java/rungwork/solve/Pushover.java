package rungwork.solve;

import java.util.List;
import java.util.function.Function;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;

/**
 * What a frame does when a load grows until it gives way: ends of beams yield one after the other,
 * each by a hinge in N, My, Mz and T together, until enough of them work for the frame to move
 * under a load that grows no more.
 *
 * <p>Event to event: between events the frame is linear, and each step ends where the next force
 * reaches its yield surface, or where a hinge would turn backwards and locks. Small motions: what
 * large ones do to equilibrium is left out, so the collapse load errs high where members in
 * compression stand far out of line. Hinges form at nodes only: cut a beam where loads bend it
 * between them; loads along beams act at their ends. Hinges neither harden nor tear, and walls do
 * not buckle: class 1 sections. Shear forces do not weaken them.
 *
 * <p>Source: hinge-by-hinge plastic analysis, as in B. G. Neal, The Plastic Methods of Structural
 * Analysis, with the flow rule of a surface in several forces; from memory. The tests compare it
 * with both bounds by linear programming.
 */
public final class Pushover {
  private final Structure structure;
  private final HingeByHinge run;
  private final PushoverPath path;

  /**
   * A beam's end.
   *
   * @param beam its beam
   * @param node the node there
   */
  public record Place(String beam, String node) {
    @Override
    public String toString() {
      return beam + " at " + node;
    }
  }

  /**
   * A corner of the path: between two of them load and travel grow in proportion.
   *
   * @param factor on the growing load [1]
   * @param travel as {@link Stage#travel} [J]
   * @param energy as {@link Stage#energy} [J]
   */
  public record Corner(double factor, double travel, double energy) {
    /** Refuses what is not finite. */
    public Corner {
      Guard.solved("state of a collapse", factor + travel + energy);
    }
  }

  /**
   * A state on the way.
   *
   * @param factor on the growing load [1]
   * @param travel what a unit of the growing load has worked so far: the sum of its forces times
   *     their ways [J]
   * @param energy what the growing load has worked so far [J]
   * @param hinges where the frame yields from here on
   * @param opened hinges that were not there before
   * @param locked hinges that were there before and turn no more
   */
  public record Stage(
      double factor,
      double travel,
      double energy,
      List<Place> hinges,
      List<Place> opened,
      List<Place> locked) {
    /** Refuses what is not finite; copies its lists. */
    public Stage {
      Guard.solved("state of a collapse", factor + travel + energy);
      hinges = List.copyOf(hinges);
      opened = List.copyOf(opened);
      locked = List.copyOf(locked);
    }
  }

  private Pushover(Structure structure, HingeByHinge run) {
    this.structure = structure;
    this.run = run;
    path = run.path();
  }

  /**
   * Pushes a frame on its supports.
   *
   * @param frame the frame
   * @param strength the yield surface of each beam
   * @param constant what acts from the beginning; it must not make the frame collapse
   * @param growing what grows
   * @return the way to collapse
   * @throws ModelException when a load is of a kind that a pushover does not know, or none grows
   * @throws SolveException when the frame is a mechanism from the start, collapses under the
   *     constant load, or never collapses
   */
  public static Pushover of(
      Frame frame, Function<Beam, YieldSurface> strength, LoadCase constant, LoadCase growing) {
    return of(new Structure(frame, frame.supports()), strength, constant, growing);
  }

  /**
   * Pushes a frame that nothing holds, by loads that balance themselves.
   *
   * @param frame the frame; its supports are taken away
   * @param strength the yield surface of each beam
   * @param constant what acts from the beginning, in balance
   * @param growing what grows, in balance
   * @return the way to collapse
   * @throws ModelException when a load is of a kind that a pushover does not know, or none grows
   * @throws SolveException as from {@link #of}
   */
  public static Pushover unsupported(
      Frame frame, Function<Beam, YieldSurface> strength, LoadCase constant, LoadCase growing) {
    Frame free = frame.on(List.of());
    return of(new Structure(free, new FreeMotion(free).holds()), strength, constant, growing);
  }

  private static Pushover of(
      Structure structure,
      Function<Beam, YieldSurface> strength,
      LoadCase constant,
      LoadCase growing) {
    HingeByHinge run = new HingeByHinge(structure, strength);
    run.push(constant, growing);
    return new Pushover(structure, run);
  }

  /**
   * The states at which hinges open or lock, in order; the first is before the growing load acts,
   * the last is the mechanism.
   *
   * @return the stages
   */
  public List<Stage> stages() {
    return path.stages();
  }

  /**
   * Whether the load came to an end at which the frame moves on by itself.
   *
   * @return whether a mechanism was found
   */
  public boolean collapses() {
    return run.collapses();
  }

  /**
   * The growing load that the frame can carry.
   *
   * @return times the growing load [1]
   */
  public double collapseFactor() {
    return path.factor();
  }

  /**
   * The factor at which the first hinge forms.
   *
   * @return times the growing load [1]
   */
  public double firstHingeFactor() {
    return path.firstHingeFactor();
  }

  /**
   * What the growing load has worked when it has travelled so far: the area under its path, level
   * after collapse.
   *
   * @param way as {@link Stage#travel}, at least zero [J]
   * @return the energy [J]
   */
  public double energy(double way) {
    return path.energy(Guard.finite("travel", way));
  }

  /**
   * The corners of the path: where hinges open, lock, or go on along another face of their surface.
   *
   * @return from the beginning of the growing load to the mechanism
   */
  public List<Corner> corners() {
    return path.corners();
  }

  /**
   * How far a node has moved when the frame collapses.
   *
   * @param node its name
   * @return its motion in vehicle axes, the constant load's included
   */
  public Displacement displacement(String node) {
    return displacement(path.motions(), node);
  }

  private static void refuseUnknown(String what, int number, int count) {
    if (number < 0 || number >= count) {
      throw new ModelException(
          "there is no %s %d; they are numbered from 0 to %d".formatted(what, number, count - 1));
    }
  }

  /**
   * How far a node has moved at a state on the way.
   *
   * @param stage its number in {@link #stages}
   * @param node its name
   * @return its motion in vehicle axes since the growing load began
   */
  public Displacement displacement(int stage, String node) {
    refuseUnknown("stage", stage, path.stages().size());
    return atCorner(path.cornerOf(stage), node);
  }

  /**
   * How far a node has moved at a corner of the path.
   *
   * @param corner its number in {@link #corners}
   * @param node its name
   * @return its motion in vehicle axes since the growing load began
   */
  public Displacement atCorner(int corner, String node) {
    refuseUnknown("corner", corner, path.corners().size());
    return displacement(path.shapeSinceBeginning(corner), node);
  }

  /**
   * How a node moves while nothing yields, and moves back when the load is taken away.
   *
   * @param node its name
   * @return its motion for a unit of the growing load, in vehicle axes
   */
  public Displacement elastic(String node) {
    return displacement(run.elastic(), node);
  }

  /**
   * How the frame yields at a place in the collapse.
   *
   * @param place one of the last stage's hinges
   * @return for a unit of travel; nothing where the place does not yield
   */
  public Yielding yielding(Place place) {
    int index = structure.member(place.beam());
    int end = place.node().equals(structure.frame().beam(place.beam()).start()) ? 0 : 1;
    PlasticMember member = run.member(index);
    return member.yielding(end, member.flow(run.mechanism(), structure.places(index)));
  }

  /**
   * What happens in a hinge, for a unit of travel.
   *
   * @param stretch along the beam, against N [m/J]
   * @param turnY against My [rad/J]
   * @param turnZ against Mz [rad/J]
   * @param twist against T [rad/J]
   */
  public record Yielding(double stretch, double turnY, double turnZ, double twist) {
    /** Refuses what is not finite. */
    public Yielding {
      Guard.solved("plastic motion", stretch + turnY + turnZ + twist);
    }
  }

  /**
   * How a node moves on in the collapse.
   *
   * @param node its name
   * @return its motion for a unit of travel, in vehicle axes [m/J, rad/J]
   */
  public Displacement collapsing(String node) {
    return displacement(run.mechanism(), node);
  }

  private Displacement displacement(double[] of, String node) {
    int first = 6 * structure.node(node);
    Plane plane = structure.frame().plane();
    double[] u = plane.toVehicle(of[first], of[first + 1], of[first + 2]);
    double[] r = plane.toVehicle(of[first + 3], of[first + 4], of[first + 5]);
    return new Displacement(u[0], u[1], u[2], r[0], r[1], r[2]);
  }

  /**
   * The internal forces at a beam's end when the frame collapses.
   *
   * @param beam its name
   * @param atEnd 0 at the start, 1 at the end
   * @return N, T, My and Mz there; the shear forces follow from the moments
   */
  public InternalForces forces(String beam, int atEnd) {
    int index = structure.member(beam);
    double[] s = run.member(index).forces();
    double length = structure.members().get(index).length();
    double shearY = -(s[2] + s[3]) / length;
    double shearZ = (s[4] + s[5]) / length;
    return atEnd == 0
        ? new InternalForces(s[0], shearY, shearZ, s[1], -s[4], -s[2])
        : new InternalForces(s[0], shearY, shearZ, s[1], s[5], s[3]);
  }
}
