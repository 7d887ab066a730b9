package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Caution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.LoadCase;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.solve.Displacement;
import rungwork.solve.Pushover;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.SeatDeceleration;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/**
 * What a ladder does in a frontal hit beyond yield: hinges one after the other until it moves as a
 * mechanism, seen from above, at what deceleration and force, and by how much it has then
 * shortened. Every figure is a range: between the two strengths, over all assumptions about the
 * joints, and over the ways in which masses on several mounts may be shared. Immutable.
 *
 * <p>Crush is how far the hit point moves against the masses, each weighted by the force that it
 * answers with, so force times crush is just the work that the frame takes.
 */
public final class Collapse {
  /** Of the mechanism's force: where its curve has all but levelled off [1]. */
  private static final double NEARLY_ALL = 0.95;

  private final Vehicle vehicle;
  private final Ladder ladder;
  private final Event.Hit hit;
  private final CollapseAssumptions assumed;
  private final CollapseRuns runs;

  private Collapse(Vehicle complete, Ladder ladder, Event.Hit hit, CollapseAssumptions assumed) {
    vehicle = complete;
    this.ladder = ladder;
    this.hit = hit;
    this.assumed = assumed;
    runs = new CollapseRuns(vehicle, ladder, hit, assumed);
  }

  /**
   * Pushes a vehicle's frame until it collapses.
   *
   * @param vehicle the vehicle as built, without its frame's own masses
   * @param ladder its frame, of rated materials
   * @param hit where it is hit
   * @return the collapse
   * @throws ModelException when a material has no stated strength, or the hit cannot happen
   * @throws rungwork.fault.SolveException when the frame is a mechanism before anything yields, or
   *     cannot carry its own masses standing
   */
  public static Collapse of(Vehicle vehicle, Ladder ladder, Event.Hit hit) {
    return new Collapse(vehicle.on(ladder), ladder, hit, CollapseAssumptions.USUAL);
  }

  /**
   * The same with another strain rate in the hinges, which the high strength alone knows.
   *
   * @param perSecond the rate [1/s]; 0 leaves it out
   * @return the collapse
   */
  public Collapse strainRate(double perSecond) {
    return new Collapse(vehicle, ladder, hit, assumed.strainRate(perSecond));
  }

  /**
   * The same with hinges that harden once the frame moves as a mechanism.
   *
   * @param ratio stiffness of yielded metal over its elastic one, such as 0.01; 0 leaves it out
   * @return the collapse
   */
  public Collapse hardening(double ratio) {
    return new Collapse(vehicle, ladder, hit, assumed.hardening(ratio));
  }

  /**
   * One run.
   *
   * @param strength low or high
   * @param joints what is assumed of the joints
   * @param growing the loads of 1 g, masses shared in one way
   */
  public record Case(CrushTube.Strength strength, Joints joints, LoadCase growing) {
    /**
     * The run in words.
     *
     * @return for example {@code low strength, joints rigid}
     */
    public String words() {
      int bound = growing.name().indexOf(", bound: ");
      return (strength == CrushTube.Strength.LOW ? "low" : "high")
          + " strength, "
          + joints.words()
          + (bound < 0 ? "" : "; " + growing.name().substring(bound + ", bound: ".length()));
    }
  }

  /**
   * A hinge.
   *
   * @param words the part and where on it
   * @param place the end of a beam
   */
  public record Hinge(String words, Pushover.Place place) {
    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * How far a stage is.
   *
   * @param deceleration of the centre of the masses [m/s²]
   * @param force of the obstacle [N]
   * @param crush of the hit point against the masses [m]
   * @param energy taken so far [J]
   */
  public record Reached(double deceleration, double force, double crush, double energy) {
    /** Refuses what is not finite. */
    public Reached {
      Guard.solved("state of a collapse", deceleration + force + crush + energy);
    }
  }

  /**
   * A state at which hinges open, or turn back and lock.
   *
   * @param number of the pushover's stage
   * @param reached how far it is
   * @param hinges all that work from here on
   * @param opened those that begin here
   * @param locked those that end here
   */
  public record Stage(
      int number, Reached reached, List<Hinge> hinges, List<Hinge> opened, List<Hinge> locked) {
    /** Copies its lists. */
    public Stage {
      hinges = List.copyOf(hinges);
      opened = List.copyOf(opened);
      locked = List.copyOf(locked);
    }
  }

  /**
   * The pushover behind a run.
   *
   * @param pushover hinge by hinge
   * @param unit the force of 1 g [N]
   * @param hardening what hardening hinges add beyond the mechanism [N/m]
   */
  public record Pushed(Pushover pushover, double unit, double hardening) {
    /** Refuses what is not finite. */
    public Pushed {
      Guard.solved("scale of a collapse", unit + hardening);
    }
  }

  /**
   * One run from standing to the mechanism.
   *
   * @param of the run
   * @param stages from the standing vehicle to the mechanism
   * @param corners of force over crush, from nothing on; straight between them
   * @param pushed the pushover behind it
   */
  public record Path(Case of, List<Stage> stages, List<Reached> corners, Pushed pushed) {
    /** Copies its stages. */
    public Path {
      stages = List.copyOf(stages);
      corners = List.copyOf(corners);
    }

    /**
     * The stage at which the first hinge opens.
     *
     * @return the mechanism itself where it comes at once
     */
    public Stage first() {
      return stages.stream()
          .skip(1)
          .filter(stage -> !stage.opened().isEmpty())
          .findFirst()
          .orElse(last());
    }

    /**
     * The mechanism.
     *
     * @return the last stage
     */
    public Stage last() {
      return stages.get(stages.size() - 1);
    }

    /**
     * Force over crush: elastic, from hinge to hinge, then level or as the hinges harden.
     *
     * @param to where it ends
     * @return the curve; it unloads as it first rises
     */
    public CrushCurve curve(Quantity<Length> to) {
      return curve(Guard.positive("end of the crush curve", si("its end", to), Scale.MM));
    }

    CrushCurve curve(double to) {
      return course().curve("frame, " + of.words(), to, this::label);
    }

    private String label(Reached corner) {
      return corner.equals(last().reached)
          ? "mechanism"
          : corner.equals(first().reached) ? "first hinge" : "";
    }

    private ForceOverCrush course() {
      return new ForceOverCrush(corners, pushed.hardening);
    }

    /** The force of the mechanism [N]. */
    double collapse() {
      return last().reached.force;
    }

    /**
     * The force at a crush.
     *
     * @param crush [m]
     * @return [N]
     */
    public double force(double crush) {
      return course().force(crush);
    }

    /**
     * The crush at which the force is 95 % of the mechanism's.
     *
     * @return [m]
     */
    public double crush() {
      return crushAt(NEARLY_ALL * collapse());
    }

    /** The crush at which a force below the mechanism's is first reached [m]. */
    double crushAt(double force) {
      return course().crushAt(force);
    }

    /**
     * The energy taken up to a crush: the area under the force.
     *
     * @param crush [m]
     * @return [J]
     */
    public double energy(double crush) {
      Guard.notNegative("crush", crush, Scale.MM);
      double beyond = Math.max(0, crush - last().reached.crush);
      return pushed.pushover.energy(crush * pushed.unit) + pushed.hardening * beyond * beyond / 2;
    }

    /**
     * How far a node has moved at a stage.
     *
     * @param stage one of the stages
     * @param node its name
     * @return its motion since the hit began
     */
    public Displacement moved(Stage stage, String node) {
      return pushed.pushover.displacement(stage.number(), node);
    }

    /**
     * How a node moves on once the mechanism is complete.
     *
     * @param node its name
     * @return its motion for a metre of crush [m/m, rad/m]
     */
    public Displacement movesOn(String node) {
      return pushed.pushover.collapsing(node).times(pushed.unit);
    }
  }

  /**
   * A point of a falling branch.
   *
   * @param turn of the kick-up's leg [rad]
   * @param crush of the rail [m]
   * @param force in the one rail [N]
   * @param energy that its hinges have taken [J]
   */
  public record Fallen(double turn, double crush, double force, double energy) {
    /** Refuses what is not finite. */
    public Fallen {
      Guard.solved("state of a kick-up", turn + crush + force + energy);
    }
  }

  /**
   * How the force in one rail falls while its kick-up folds over.
   *
   * @param kickUp the kick-up
   * @param section the rail's
   * @param low low strength, head free to turn, walls folding
   * @param high high strength, head held, walls not folding
   * @param tested whether tests cover the folding of its walls; nothing where it is no rectangular
   *     tube and their folding is not checked
   */
  public record KickUpFall(
      Ladder.KickUp kickUp,
      String section,
      List<Fallen> low,
      List<Fallen> high,
      Optional<Boolean> tested) {
    /** Copies its branches. */
    public KickUpFall {
      if (low.isEmpty() || high.isEmpty()) {
        throw new ModelException("a branch of kick-up %s has no point".formatted(kickUp.name()));
      }
      low = List.copyOf(low);
      high = List.copyOf(high);
    }

    /**
     * The force in one rail at which its kick-up begins to fold over.
     *
     * @return [N]
     */
    public Range beginning() {
      return new Range(Kind.FORCE, low.get(0).force, high.get(0).force);
    }
  }

  /**
   * What large motions do to the force where the rails have kick-ups.
   *
   * @return a falling branch for each kick-up, of one rail alone
   */
  public List<KickUpFall> kickUps() {
    return new KickUps(ladder, assumed.strainRate()).all();
  }

  /**
   * A rail ahead of the foremost crossmember as a tube that might fold, without a trigger.
   *
   * @param side of the vehicle
   * @return nothing where it is bent, ends there, or has a shape that no formula covers
   */
  public Optional<CrushTube> tip(Side side) {
    return new RailTips(ladder).tip(side);
  }

  /**
   * What may be expected of the rail tips as tubes that fold, and why not.
   *
   * @param units the reader's units
   * @return a sentence or two a side
   */
  public List<String> tips(Units units) {
    return new RailTips(ladder).words(units);
  }

  /**
   * The vehicle with its frame's own masses.
   *
   * @return the complete vehicle
   */
  public Vehicle vehicle() {
    return vehicle;
  }

  /**
   * The frame.
   *
   * @return the ladder
   */
  public Ladder ladder() {
    return ladder;
  }

  /**
   * Where it is hit.
   *
   * @return the hit
   */
  public Event.Hit hit() {
    return hit;
  }

  /**
   * All runs.
   *
   * @return low strength first, rigid joints and masses on all their mounts first
   */
  public List<Path> paths() {
    return List.copyOf(runs.paths());
  }

  /**
   * The run of a strength with rigid joints and masses on all their mounts.
   *
   * @param strength low or high
   * @return its path
   */
  public Path rigid(CrushTube.Strength strength) {
    return runs.rigid(strength);
  }

  /**
   * The run that decides an end of the range.
   *
   * @param strength low for the weakest of all runs, high for the strongest
   * @return its path
   */
  public Path deciding(CrushTube.Strength strength) {
    return runs.deciding(strength);
  }

  /**
   * The deceleration at the first hinge, of the centre of the masses.
   *
   * @return [m/s²]
   */
  public Range firstHinge() {
    return runs.range(Kind.ACCELERATION, path -> path.first().reached().deceleration());
  }

  /**
   * The deceleration at which the frame moves on by itself, of the centre of the masses.
   *
   * @return [m/s²]
   */
  public Range deceleration() {
    return runs.range(Kind.ACCELERATION, path -> path.last().reached().deceleration());
  }

  /**
   * The obstacle's force at which the frame moves on by itself.
   *
   * @return [N]
   */
  public Range force() {
    return runs.range(Kind.FORCE, path -> path.collapse());
  }

  /**
   * The crush at which nearly all of that force is reached; the last hinges may open far later.
   *
   * @return where the force is 95 % of the mechanism's [m]
   */
  public Range crush() {
    return runs.range(Kind.LENGTH, Path::crush);
  }

  /**
   * What the frame takes until a stated crush; small motions, so an upper estimate where it is
   * large.
   *
   * @param crush above zero
   * @return [J]
   */
  public Range energy(Quantity<Length> crush) {
    double to = Guard.positive("crush", si("crush", crush), Scale.MM);
    return runs.range(Kind.ENERGY, path -> path.energy(to));
  }

  /**
   * The weakest run's curve and the strongest run's, for a comparison with crush elements.
   *
   * @param to where they end
   * @return both
   */
  public RigidOrCrush.Rails rails(Quantity<Length> to) {
    return new RigidOrCrush.Rails(
        deciding(CrushTube.Strength.LOW).curve(to), deciding(CrushTube.Strength.HIGH).curve(to));
  }

  /**
   * What the seats see while the centre of the masses sees 1 g; turning makes them differ.
   *
   * @return one figure a seat
   */
  public List<SeatDeceleration> seatsAtOneG() {
    return runs.hit().atSeats();
  }

  /**
   * Inputs and results that look wrong, and runs that could not be made.
   *
   * @param units the reader's units
   * @return sentences; none when nothing does
   */
  public List<String> warnings(Units units) {
    List<String> lines = new ArrayList<>(runs.failed());
    Range mass = Range.exactly(Kind.MASS, vehicle.massTotal());
    Stream.of(Sane.VEHICLE_MASS.warning(mass, units), Sane.COLLAPSE.warning(deceleration(), units))
        .flatMap(Optional::stream)
        .forEach(lines::add);
    return lines;
  }

  /**
   * What was assumed.
   *
   * @return sentences
   */
  public List<String> assumptions() {
    return assumed.words();
  }

  /**
   * What was left out.
   *
   * @return sentences
   */
  public List<String> leftOut() {
    return assumed.leftOut();
  }

  @Override
  public String toString() {
    return "Collapse of %s, %s: first hinge at %s, mechanism at %s (%s), crushed by %s\n%s"
        .formatted(
            vehicle.name(),
            hit.words(),
            firstHinge(),
            deceleration(),
            force(),
            crush(),
            Caution.IMPACT.inBrief());
  }
}
