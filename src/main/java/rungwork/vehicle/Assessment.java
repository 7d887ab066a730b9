package rungwork.vehicle;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.check.DesignFactor;
import rungwork.check.Member;
import rungwork.check.Member.Ends;
import rungwork.check.MemberChecks;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Stock;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.Vibration;

/**
 * A vehicle on its ladder under several events: every event with every assumption about the joints,
 * every member checked, the worst answer kept. Immutable.
 */
public final class Assessment {
  private static final List<String> NOT_MADE =
      List.of("side, rear and roll-over impact", "collapse beyond first yield");

  private final Vehicle vehicle;
  private final Ladder ladder;
  private final List<Event> events;
  private final List<Member> members;
  private final List<Member> held;
  private final StabilityNotes stability = new StabilityNotes();
  private final Map<String, Balance> balances = new LinkedHashMap<>();
  private final Map<Joints, Map<String, Response>> responses = new LinkedHashMap<>();
  private final CheckSheet sheet;

  private Assessment(Vehicle vehicle, Ladder ladder, List<Event> events) {
    this.vehicle = vehicle;
    this.ladder = ladder;
    this.events = events;
    members = ladder.members();
    held = new Members(ladder, Member.Sway.IN_MOMENTS).all();
    events.forEach(event -> balances.put(event.name(), Balance.of(event, vehicle, ladder)));
    sheet = sheet(run());
  }

  /**
   * Assesses a vehicle.
   *
   * @param vehicle the vehicle as built, without its frame's own masses
   * @param ladder its frame
   * @param events the events, no two of one name
   * @return the assessment
   * @throws ModelException when there is no event, when an event cannot happen to this vehicle, or
   *     when a mass or wheel is carried by what the ladder does not have
   */
  public static Assessment of(Vehicle vehicle, Ladder ladder, List<Event> events) {
    refuseUnusable(vehicle, events);
    return new Assessment(vehicle.on(ladder), ladder, List.copyOf(events));
  }

  private static void refuseUnusable(Vehicle vehicle, List<Event> events) {
    if (events.isEmpty()) {
      throw new ModelException("there is no event to assess vehicle " + vehicle.name() + " under");
    }
    Set<String> names = new HashSet<>();
    for (Event event : events) {
      if (!names.add(event.name())) {
        throw new ModelException("two events are named " + event.name() + "; rename one");
      }
    }
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
   * The events.
   *
   * @return the events in the order given
   */
  public List<Event> events() {
    return events;
  }

  /**
   * All checks: of each question to a member in an event the worst answer over the joints and the
   * bounds of sharing, which the check's load case names.
   *
   * @return the sheet
   */
  public CheckSheet sheet() {
    return sheet;
  }

  /**
   * The forces of an event and the acceleration that answers them.
   *
   * @param event one of the events, known by its name
   * @return its balance
   */
  public Balance balance(Event event) {
    return Optional.ofNullable(balances.get(event.name())).orElseThrow(() -> unknown(event));
  }

  /**
   * What the frame does in an event, its masses shared by all their mounts.
   *
   * @param event one of the events, known by its name
   * @param joints one of the ladder's {@link Ladder#joints()}
   * @return the response
   */
  public Response response(Event event, Joints joints) {
    balance(event);
    return Optional.ofNullable(responses.get(joints))
        .orElseThrow(
            () ->
                new ModelException(
                    "the ladder was not run with " + joints + "; it was with " + ladder.joints()))
        .get(event.name());
  }

  /**
   * The vehicle's deceleration at each seat in an event.
   *
   * @param event one of the events, known by its name
   * @return one figure a seat, in the vehicle's order
   */
  public List<SeatDeceleration> seatDecelerations(Event event) {
    return balance(event).atSeats();
  }

  /**
   * The frame's torsional stiffness as a workshop would measure it at the axles.
   *
   * @param joints what is assumed of the joints
   * @return K [N·m/rad]
   */
  public double torsionalStiffness(Joints joints) {
    return TwistRig.of(vehicle, ladder).stiffness(joints);
  }

  /**
   * The slowest vibration in which the rails move up and down against each other. The ladder floats
   * with its masses, each rigid on the nodes under its fastening points; tyres, springs and damping
   * are left out.
   *
   * @param joints what is assumed of the joints
   * @return the vibration; empty when it is not among the slowest dozen
   */
  public Optional<Vibration.Mode> firstTwist(Joints joints) {
    return new LadderModes(vehicle, ladder, joints).twist();
  }

  /**
   * The slowest vibration in which the rails bend up and down together, as for {@link #firstTwist}.
   *
   * @param joints what is assumed of the joints
   * @return the vibration; empty when it is not among the slowest dozen
   */
  public Optional<Vibration.Mode> firstBending(Joints joints) {
    return new LadderModes(vehicle, ladder, joints).bending();
  }

  /**
   * The frame's own mass.
   *
   * @return rails and crossmembers [kg]
   */
  public double mass() {
    return ladder.mass();
  }

  /**
   * What the parts of a ladder are cut from.
   *
   * @param rails both rails, all along
   * @param crossmembers each crossmember, in the ladder's order
   */
  public record Stocks(Stock rails, List<Stock> crossmembers) {
    /** Copies its list. */
    public Stocks {
      crossmembers = List.copyOf(crossmembers);
    }

    /**
     * A ladder cut from these.
     *
     * @param ladder its lines and mounts
     * @return the ladder
     */
    public Ladder on(Ladder ladder) {
      inOrder(1 + ladder.crossmembers().size());
      Ladder cut = ladder.withRails(rails);
      for (int i = 0; i < crossmembers.size(); i++) {
        cut = cut.withCrossmember(cut.crossmembers().get(i).name(), crossmembers.get(i));
      }
      return cut;
    }

    Stock[] inOrder(int parts) {
      if (1 + crossmembers.size() != parts) {
        throw new ModelException(
            "the ladder has %d crossmembers; %d stocks for them were given"
                .formatted(parts - 1, crossmembers.size()));
      }
      Stock[] all = new Stock[parts];
      all[0] = rails;
      for (int i = 1; i < parts; i++) {
        all[i] = crossmembers.get(i - 1);
      }
      return all;
    }
  }

  /**
   * The numbers of one choice of stocks.
   *
   * @param mass of the frame [kg]
   * @param utilisation the highest over the members and load cases screened [1]
   * @param what which check it is of
   * @param part which part
   * @param loadCase in which load case
   * @param notChecked what could not be checked, part by part
   */
  public record Screened(
      double mass,
      double utilisation,
      String what,
      String part,
      String loadCase,
      List<String> notChecked) {
    /** Refuses what is no number. */
    public Screened {
      Guard.solved("frame mass", mass);
      Guard.solved("utilisation of " + part, utilisation);
      notChecked = List.copyOf(notChecked);
    }
  }

  /**
   * Numbers alone for one choice of stocks after another: all checks of all members in all events,
   * in first order, without their working. For one thread at a time. The loads follow the frame's
   * mass. Stocks that come again are best given as the same objects.
   *
   * <p>Left out of what an assessment looks at: the buckling of the whole frame, with the effective
   * lengths and moments of second order that come of it; joints other than those screened with; the
   * warping of open sections other than its first bound. A choice that passes is only a candidate;
   * an assessment decides.
   */
  public interface Screening {
    /**
     * Screens a choice of stocks.
     *
     * @param stocks the choice
     * @return its numbers
     * @throws ModelException when it does not fit the ladder
     * @throws rungwork.fault.SolveException when the frame is a mechanism with it
     */
    default Screened of(Stocks stocks) {
      return of(stocks, Double.POSITIVE_INFINITY);
    }

    /**
     * Screens a choice of stocks until it is known to be no good.
     *
     * @param stocks the choice
     * @param enough once an assumption about the joints gives more than this utilisation, no other
     *     is asked for [1]
     * @return its numbers; where the utilisation is above {@code enough}, it may not be the highest
     * @throws ModelException when it does not fit the ladder
     * @throws rungwork.fault.SolveException when the frame is a mechanism with it
     */
    Screened of(Stocks stocks, double enough);

    /**
     * The torsional stiffness with a choice of stocks, as {@link Assessment#torsionalStiffness} has
     * it for rigid joints.
     *
     * @param stocks the choice
     * @return K [N·m/rad]
     */
    double torsionalStiffness(Stocks stocks);
  }

  /**
   * Prepares a screening.
   *
   * @param vehicle the vehicle as built, without its frame's own masses
   * @param ladder the frame with stocks of the kind that will be screened
   * @param events the events, no two of one name
   * @param joints the assumptions about the joints to screen with, such as {@link Joints#RIGID}
   * @return gives a screening to each thread that asks
   * @throws ModelException as for {@link #of}, or when the frame cannot be swept
   */
  public static Supplier<Screening> screening(
      Vehicle vehicle, Ladder ladder, List<Event> events, List<Joints> joints) {
    refuseUnusable(vehicle, events);
    Screen screen = new Screen(vehicle, ladder, List.copyOf(events), joints);
    return screen::bench;
  }

  private WorstChecks run() {
    WorstChecks worst = new WorstChecks();
    Map<Event, List<LoadCase>> loads = new LinkedHashMap<>();
    for (Event event : events) {
      Balance balance = balances.get(event.name());
      loads.put(event, Sharing.of(event).stream().map(balance::loadCase).toList());
    }
    for (Joints joints : ladder.joints()) {
      for (Ends ends : ladder.warping().cases()) {
        run(joints, ends, loads, worst);
      }
    }
    return worst;
  }

  /** The response kept is that of the first ends: free to warp, unless stated. */
  private void run(Joints joints, Ends ends, Map<Event, List<LoadCase>> loads, WorstChecks worst) {
    Frame frame = ladder.layout().frame(joints, ends);
    Frame anchored = frame.on(balances.values().iterator().next().anchors());
    Solver solver = Solver.unsupported(frame);
    Run run = new Run(ends, Solver.of(anchored), Solver.secondOrder(anchored));
    Map<String, Response> shared = new LinkedHashMap<>();
    loads.forEach(
        (event, cases) -> {
          List<Response> answers =
              cases.stream().map(loadCase -> solver.solve(named(loadCase, joints, ends))).toList();
          shared.put(event.name(), answers.get(0));
          answers.forEach(answer -> check(event, answer, run, worst));
        });
    responses.putIfAbsent(joints, shared);
  }

  /** One assumption on the joints, and what solves the frame that stands still in its middle. */
  private record Run(Ends ends, Solver anchored, Solver secondOrder) {}

  private void check(Event event, Response answer, Run run, WorstChecks worst) {
    DesignFactor factor = event.designFactor();
    LoadCase loads = answer.loadCase();
    FrameStability frame = new FrameStability(run.anchored.solve(loads), factor.value());
    for (Member member : members) {
      Member lengthened = frame.lengthened(member.with(run.ends));
      worst.add(event, MemberChecks.of(lengthened, answer, factor));
    }
    frame
        .secondOrder(run.secondOrder, loads)
        .ifPresent(
            second -> {
              stability.solvedInSecondOrder(event);
              for (Member member : held) {
                worst.add(event, MemberChecks.of(member.with(run.ends), second, factor));
              }
            });
    stability.add(event, loads.name(), frame);
  }

  private LoadCase named(LoadCase loads, Joints joints, Ends ends) {
    String name = loads.name() + ", " + joints.words() + ladder.warpingWords(ends);
    return new LoadCase(name, loads.source(), loads.assumptions(), loads.loads());
  }

  private CheckSheet sheet(WorstChecks worst) {
    List<String> notMade = new ArrayList<>(MemberChecks.notMade());
    notMade.addAll(stability.notMade());
    notMade.addAll(NOT_MADE);
    boolean impact = events.stream().anyMatch(event -> event.kind() == Event.Kind.IMPACT);
    return new CheckSheet(
        vehicle.name() + " on ladder " + ladder.name(),
        worst.all(),
        notMade,
        assumptions(),
        impact ? EnumSet.of(Caution.SCREENING, Caution.IMPACT) : EnumSet.of(Caution.SCREENING));
  }

  private List<String> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Frame: "
            + (ladder.kickUps().isEmpty() ? "flat" : "rising at its kick-ups, solved in space")
            + ", on the centroid lines of rails and crossmembers; mounts on rigid arms;"
            + " crossmembers reach from line to line.");
    lines.add(
        "Joints between crossmembers and rails: run in "
            + ladder.joints().size()
            + " ways: all rigid; the torsion of all crossmembers let go at either end"
            + (ladder.crossmembers().size() > 1
                ? "; each crossmember in turn letting go both bendings and, at either end, torsion"
                : "")
            + ". The worst counts.");
    lines.add(
        "Masses: a mass on several mounts is shared like a rigid body on equal springs; in an"
            + " impact also all on the foremost and all on the rearmost; sideways, and in driving,"
            + " the sharing is not bounded.");
    vehicle.masses().stream()
        .filter(mass -> mass.amplification() > 1)
        .forEach(mass -> lines.add(amplified(mass)));
    lines.addAll(ofEvents());
    lines.addAll(stability.done());
    lines.addAll(MemberChecks.assumptions());
    return lines;
  }

  private static String amplified(Mass mass) {
    return "Mass "
        + mass.name()
        + " counts "
        + Scale.NUMBER.show(mass.amplification(), 3)
        + " times in an impact, as stated.";
  }

  /** Each assumption once, with the events that make it. */
  private List<String> ofEvents() {
    Map<String, List<String>> made = new LinkedHashMap<>();
    for (Event event : events) {
      event
          .assumptions()
          .forEach(line -> made.computeIfAbsent(line, none -> new ArrayList<>()).add(event.name()));
    }
    return made.entrySet().stream()
        .map(line -> "In " + String.join("; ", line.getValue()) + ": " + line.getKey() + ".")
        .toList();
  }

  private ModelException unknown(Event event) {
    return new ModelException(
        "event "
            + event.name()
            + " was not assessed; there are "
            + String.join("; ", events.stream().map(Event::name).toList()));
  }

  @Override
  public String toString() {
    return vehicle.name() + " on ladder " + ladder.name() + ": " + sheet.verdictLine();
  }
}
