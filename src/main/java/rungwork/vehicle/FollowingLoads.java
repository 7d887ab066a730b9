package rungwork.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwork.fault.ModelException;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.solve.InertiaBalance.Body;
import rungwork.solve.RigidAcceleration;

/**
 * The load cases of a vehicle's events while its frame's stocks, and with them its masses, change.
 * Each is put together from the same basic load cases: a force or moment of 1 at each place where
 * something pushes, and the inertia of what is carried and of each group of beams for each
 * acceleration of 1. How many times each acts comes from the event's {@link Balance}.
 */
final class FollowingLoads {
  private static final Event STANDING = Event.standing();
  private static final Point ORIGIN = new Point(0, 0, 0);
  private static final List<RigidAcceleration> ACCELERATIONS =
      List.of(
          new RigidAcceleration(ORIGIN, 1, 0, 0, 0, 0, 0),
          new RigidAcceleration(ORIGIN, 0, 1, 0, 0, 0, 0),
          new RigidAcceleration(ORIGIN, 0, 0, 1, 0, 0, 0),
          new RigidAcceleration(ORIGIN, 0, 0, 0, 1, 0, 0),
          new RigidAcceleration(ORIGIN, 0, 0, 0, 0, 1, 0),
          new RigidAcceleration(ORIGIN, 0, 0, 0, 0, 0, 1));

  private final Vehicle bare;
  private final Ladder ladder;
  private final List<StockGroup> groups;
  private final List<Case> cases = new ArrayList<>();
  private final List<LoadCase> basics = new ArrayList<>();
  private final Map<Place, Integer> pushes = new LinkedHashMap<>();
  private final Map<Carried, Integer> carried = new LinkedHashMap<>();
  private final int ofGroups;

  /** One load case: an event with one way of sharing masses. */
  record Case(Event event, Sharing sharing) {}

  private record Place(Point at, List<String> carriers) {}

  private record Carried(boolean amplified, Sharing sharing) {}

  FollowingLoads(Vehicle bare, Ladder ladder, List<StockGroup> groups, List<Event> events) {
    this.bare = bare;
    this.ladder = ladder;
    this.groups = groups;
    Vehicle whole = bare.on(ladder);
    plan(STANDING, whole);
    for (Event event : events) {
      plan(event, whole);
      Sharing.of(event).forEach(sharing -> cases.add(new Case(event, sharing)));
    }
    ofGroups = basics.size();
    for (StockGroup group : groups) {
      ACCELERATIONS.forEach(one -> basics.add(basic(group.inertia(one, ladder))));
    }
  }

  private void plan(Event event, Vehicle whole) {
    for (AppliedWrench push : Balance.of(event, whole, ladder).forces()) {
      Place place = new Place(push.at(), push.carriers());
      if (pushes.putIfAbsent(place, basics.size()) == null) {
        Wrench.UNITS.forEach(
            one -> basics.add(basic(Balance.share(ladder, one, place.at, place.carriers))));
      }
    }
    for (Sharing sharing : Sharing.of(event)) {
      Carried key = new Carried(isImpact(event), sharing);
      if (carried.putIfAbsent(key, basics.size()) == null) {
        ACCELERATIONS.forEach(
            one -> basics.add(basic(inertia(Balance.felt(event, bare), one, sharing))));
      }
    }
  }

  private List<Load> inertia(List<Mass> masses, RigidAcceleration one, Sharing sharing) {
    List<Load> loads = new ArrayList<>();
    for (Mass mass : masses) {
      loads.addAll(
          Balance.share(ladder, one.inertia(mass), mass.at(), sharing.carriers(mass, ladder)));
    }
    return loads;
  }

  private static LoadCase basic(List<Load> loads) {
    return new LoadCase("basic", "basic", List.of(), loads);
  }

  /** What the load cases are put together from. */
  List<LoadCase> basics() {
    return basics;
  }

  /** The load cases. */
  List<Case> cases() {
    return cases;
  }

  /**
   * How many times each basic load case acts in each load case.
   *
   * @param weights how many times as heavy as with its first stock each group is [1]
   * @return a row for each load case
   */
  double[][] factors(double[] weights) {
    List<Mass> own = new ArrayList<>();
    for (int group = 0; group < weights.length; group++) {
      own.add(groups.get(group).mass(weights[group]));
    }
    Vehicle vehicle = bare.carrying(own);
    Body driven = Body.of(Balance.felt(STANDING, vehicle));
    double[][] factors = new double[cases.size()][];
    for (int c = 0; c < factors.length; c++) {
      factors[c] = new double[basics.size()];
      if (!isImpact(cases.get(c).event)) {
        Balance balance = Balance.of(cases.get(c).event, vehicle, ladder, driven);
        add(factors[c], balance, cases.get(c).sharing, weights);
      }
    }
    addImpacts(factors, vehicle, driven, weights);
    return factors;
  }

  /** Impacts come on top of standing; all of them move the same amplified masses. */
  private void addImpacts(double[][] factors, Vehicle vehicle, Body driven, double[] weights) {
    Optional<Event> first =
        cases.stream().map(Case::event).filter(FollowingLoads::isImpact).findFirst();
    if (first.isEmpty()) {
      return;
    }
    Balance standing = Balance.of(STANDING, vehicle, ladder, driven);
    Body hit = Body.of(Balance.felt(first.get(), vehicle));
    for (int c = 0; c < factors.length; c++) {
      Case one = cases.get(c);
      if (isImpact(one.event)) {
        add(factors[c], standing, Sharing.ALL, weights);
        add(factors[c], Balance.of(one.event, vehicle, ladder, hit), one.sharing, weights);
      }
    }
  }

  private static boolean isImpact(Event event) {
    return event.kind() == Event.Kind.IMPACT;
  }

  private void add(double[] factors, Balance balance, Sharing sharing, double[] weights) {
    for (AppliedWrench push : balance.forces()) {
      Wrench w = push.wrench();
      int at = place(push, balance.event());
      addAll(factors, at, 1, w.fx(), w.fy(), w.fz(), w.mx(), w.my(), w.mz());
    }
    RigidAcceleration a = balance.acceleration().at(ORIGIN);
    double[] all = {a.ax(), a.ay(), a.az(), a.alphaX(), a.alphaY(), a.alphaZ()};
    addAll(factors, carried.get(new Carried(isImpact(balance.event()), sharing)), 1, all);
    for (int group = 0; group < weights.length; group++) {
      addAll(factors, ofGroups + 6 * group, weights[group], all);
    }
  }

  private int place(AppliedWrench push, Event event) {
    return Optional.ofNullable(pushes.get(new Place(push.at(), push.carriers())))
        .orElseThrow(
            () ->
                new ModelException(
                    "event %s pushes at another place when the frame's mass changes (%s); assess each variant by itself"
                        .formatted(event.name(), push.name())));
  }

  private static void addAll(double[] factors, int at, double times, double... values) {
    for (int i = 0; i < values.length; i++) {
      factors[at + i] += times * values[i];
    }
  }
}
