package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
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
  /** Steps of a path; a frame of some tens of beams takes some tens [1]. */
  private static final int STEPS = 5000;

  /** How well the loads' work and the hinges' agree in the collapse [1]. */
  private static final double CERTAIN = 1e-5;

  private final Structure structure;
  private final PlasticFrame frame;
  private final List<Stage> stages = new ArrayList<>();
  private final List<double[]> shapes = new ArrayList<>();
  private final List<Corner> corners = new ArrayList<>();
  private final List<Integer> cornerOf = new ArrayList<>();
  private final double[] motions;
  private double factor;
  private double travel;
  private double energy;
  private double[] mechanism = new double[0];
  private double[] elastic = new double[0];

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

  private Pushover(Structure structure, Function<Beam, YieldSurface> strength) {
    this.structure = structure;
    frame = new PlasticFrame(structure, strength);
    motions = new double[structure.motions()];
  }

  /**
   * Pushes a frame on its supports.
   *
   * @param frame the frame
   * @param strength the yield surface of each beam
   * @param constant what acts from the beginning; it must not make the frame collapse
   * @param growing what grows
   * @return the way to collapse
   * @throws ModelException when a load is of a kind that a pushover does not know
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
   * @throws ModelException when a load is of a kind that a pushover does not know
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
    Pushover pushover = new Pushover(structure, strength);
    pushover.frame.refuseMechanism(pushover.frame.answer(new double[structure.motions()]));
    NodalLoads loads = new NodalLoads(structure);
    double[] first = loads.of(constant);
    double[] then = loads.of(growing);
    double firstTravel = pushover.elasticTravel(first);
    pushover.elastic = pushover.frame.answer(then).motions();
    double thenTravel = work(then, pushover.elastic);
    pushover.grow(constant.name(), first, firstTravel, 1);
    pushover.begin();
    pushover.grow(growing.name(), then, thenTravel, Double.POSITIVE_INFINITY);
    pushover.certify(first, then);
    return pushover;
  }

  private void begin() {
    if (collapses()) {
      throw new SolveException(
          "the frame collapses under the constant load alone, at %.2f of it".formatted(factor));
    }
    stages.clear();
    cornerOf.clear();
    shapes.clear();
    corners.clear();
    factor = 0;
    travel = 0;
    energy = 0;
    turnCorner();
    add(new Stage(0, 0, 0, hinges(), hinges(), List.of()));
  }

  private double elasticTravel(double[] load) {
    return work(load, frame.answer(load).motions());
  }

  private static double work(double[] load, double[] ways) {
    double work = 0;
    for (int i = 0; i < load.length; i++) {
      work += load[i] * ways[i];
    }
    return work;
  }

  /** The loads must do just the work that the hinges take: then both bounds meet. */
  private void certify(double[] constant, double[] growing) {
    double taken = 0;
    for (int m = 0; m < frame.members().size(); m++) {
      taken += frame.members().get(m).dissipation(mechanism, structure.places(m));
    }
    double given = factor * work(growing, mechanism) + work(constant, mechanism);
    if (!(Math.abs(given - taken) <= CERTAIN * Math.abs(taken))) {
      throw new SolveException(
          "the collapse at %.4g times the load is not certain: the loads do %.4g, the hinges take %.4g; stiffnesses differ too much"
              .formatted(factor, given, taken));
    }
  }

  private void grow(String name, double[] load, double elasticTravel, double until) {
    if (Arrays.stream(load).allMatch(force -> force == 0)) {
      return;
    }
    for (int step = 0; step < STEPS; step++) {
      List<Place> before = hinges();
      HingeSearch search = new HingeSearch(frame, load, elasticTravel);
      PlasticFrame.Answer answer = search.settle();
      note(before);
      if (answer.free()) {
        mechanism = perTravel(answer.motions(), load);
        noteEnd();
        return;
      }
      double room = Math.min(search.room(answer), until - factor);
      if (Double.isInfinite(room)) {
        throw new SolveException(
            "load case %s never makes the frame collapse: nothing in it yields under this load"
                .formatted(name));
      }
      advance(answer.motions(), load, room);
      if (factor >= until) {
        return;
      }
    }
    throw new SolveException(
        "load case %s has not come to collapse in %d steps".formatted(name, STEPS));
  }

  private void advance(double[] rates, double[] load, double step) {
    for (int m = 0; m < frame.members().size(); m++) {
      PlasticMember member = frame.members().get(m);
      member.advance(member.rates(rates, structure.places(m)), step);
    }
    double worked = step * work(load, rates);
    for (int i = 0; i < motions.length; i++) {
      motions[i] += step * rates[i];
    }
    travel += worked;
    energy += worked * (factor + step / 2);
    factor += step;
    turnCorner();
  }

  private void turnCorner() {
    corners.add(new Corner(factor, travel, energy));
    shapes.add(motions.clone());
  }

  private void note(List<Place> before) {
    List<Place> now = hinges();
    List<Place> opened = now.stream().filter(place -> !before.contains(place)).toList();
    List<Place> locked = before.stream().filter(place -> !now.contains(place)).toList();
    if (!opened.isEmpty() || !locked.isEmpty()) {
      add(new Stage(factor, travel, energy, now, opened, locked));
    }
  }

  /** The mechanism is a stage even where no hinge but another face of one completes it. */
  private void noteEnd() {
    if (stages.isEmpty() || stages.get(stages.size() - 1).factor() < factor) {
      add(new Stage(factor, travel, energy, hinges(), List.of(), List.of()));
    }
  }

  private void add(Stage stage) {
    stages.add(stage);
    cornerOf.add(corners.size() - 1);
  }

  private List<Place> hinges() {
    List<Place> places = new ArrayList<>();
    for (int m = 0; m < frame.members().size(); m++) {
      for (int end = 0; end < 2; end++) {
        if (frame.members().get(m).yieldsAt(end)) {
          places.add(place(m, end));
        }
      }
    }
    return places;
  }

  private Place place(int member, int end) {
    Beam beam = structure.members().get(member).beam();
    return new Place(beam.name(), end == 0 ? beam.start() : beam.end());
  }

  private static double[] perTravel(double[] rates, double[] load) {
    double unit = 1 / work(load, rates);
    return Arrays.stream(rates).map(rate -> rate * unit).toArray();
  }

  /**
   * The states at which hinges open or lock, in order; the first is before the growing load acts,
   * the last is the mechanism.
   *
   * @return the stages
   */
  public List<Stage> stages() {
    return List.copyOf(stages);
  }

  /**
   * Whether the load came to an end at which the frame moves on by itself.
   *
   * @return whether a mechanism was found
   */
  public boolean collapses() {
    return mechanism.length > 0;
  }

  /**
   * The growing load that the frame can carry.
   *
   * @return times the growing load [1]
   */
  public double collapseFactor() {
    return factor;
  }

  /**
   * The factor at which the first hinge forms.
   *
   * @return times the growing load [1]
   */
  public double firstHingeFactor() {
    return stages.stream()
        .filter(stage -> !stage.opened().isEmpty())
        .mapToDouble(Stage::factor)
        .findFirst()
        .orElse(factor);
  }

  /**
   * What the growing load has worked when it has travelled so far: the area under its path, level
   * after collapse.
   *
   * @param way as {@link Stage#travel}, at least zero [J]
   * @return the energy [J]
   */
  public double energy(double way) {
    Guard.finite("travel", way);
    Corner before = corners.get(0);
    for (int next = 1; next < corners.size() && corners.get(next).travel() <= way; next++) {
      before = corners.get(next);
    }
    double beyond = way - before.travel();
    return before.energy() + beyond * (before.factor() + slopeFrom(before) * beyond / 2);
  }

  private double slopeFrom(Corner from) {
    int next = corners.indexOf(from) + 1;
    if (next == corners.size()) {
      return 0;
    }
    Corner to = corners.get(next);
    return (to.factor() - from.factor()) / (to.travel() - from.travel());
  }

  /**
   * The corners of the path: where hinges open, lock, or go on along another face of their surface.
   *
   * @return from the beginning of the growing load to the mechanism
   */
  public List<Corner> corners() {
    return List.copyOf(corners);
  }

  /**
   * How far a node has moved when the frame collapses.
   *
   * @param node its name
   * @return its motion in vehicle axes, the constant load's included
   */
  public Displacement displacement(String node) {
    return displacement(motions, node);
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
    refuseUnknown("stage", stage, stages.size());
    return atCorner(cornerOf.get(stage), node);
  }

  /**
   * How far a node has moved at a corner of the path.
   *
   * @param corner its number in {@link #corners}
   * @param node its name
   * @return its motion in vehicle axes since the growing load began
   */
  public Displacement atCorner(int corner, String node) {
    refuseUnknown("corner", corner, shapes.size());
    double[] since = shapes.get(corner).clone();
    for (int i = 0; i < since.length; i++) {
      since[i] -= shapes.get(0)[i];
    }
    return displacement(since, node);
  }

  /**
   * How a node moves while nothing yields, and moves back when the load is taken away.
   *
   * @param node its name
   * @return its motion for a unit of the growing load, in vehicle axes
   */
  public Displacement elastic(String node) {
    return displacement(elastic, node);
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
    PlasticMember member = frame.members().get(index);
    return member.yielding(end, member.flow(mechanism, structure.places(index)));
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
    return displacement(mechanism, node);
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
    double[] s = frame.members().get(index).forces();
    double length = structure.members().get(index).length();
    double shearY = -(s[2] + s[3]) / length;
    double shearZ = (s[4] + s[5]) / length;
    return atEnd == 0
        ? new InternalForces(s[0], shearY, shearZ, s[1], -s[4], -s[2])
        : new InternalForces(s[0], shearY, shearZ, s[1], s[5], s[3]);
  }
}
