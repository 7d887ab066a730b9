package rungwork.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwork.fault.Scale;
import rungwork.solve.CriticalLoad;

/** What was found out about the buckling of the whole frame, event by event. */
final class StabilityNotes {
  private record Least(CriticalLoad load, String loadCase) {}

  private final Map<Event, Least> least = new LinkedHashMap<>();
  private final Set<Event> secondOrder = new LinkedHashSet<>();
  private final Map<String, Unmade> unmade = new LinkedHashMap<>();

  private record Unmade(String reason, Set<String> events) {}

  void add(Event event, String loadCase, FrameStability found) {
    found
        .lowest()
        .ifPresent(
            load ->
                least.merge(
                    event,
                    new Least(load, loadCase),
                    (one, two) -> two.load.factor() < one.load.factor() ? two : one));
    found
        .reasons()
        .forEach(
            reason ->
                unmade
                    .computeIfAbsent(withoutName(reason), none -> first(reason))
                    .events()
                    .add(event.name()));
  }

  void solvedInSecondOrder(Event event) {
    secondOrder.add(event);
  }

  /** A reason names a beam and says how large a force is, which differ from case to case. */
  private static String withoutName(String reason) {
    return withoutForce(reason).replaceFirst("^beam .*? (would|carries)", "$1");
  }

  private static Unmade first(String reason) {
    return new Unmade(withoutForce(reason), new LinkedHashSet<>());
  }

  private static String withoutForce(String reason) {
    return reason.replaceFirst(
        " carries a normal force of .*? and ", " carries a normal force and ");
  }

  /** What was done, for the sheet's assumptions. */
  List<String> done() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Buckling of the whole frame, held still at the crossmember nearest to its centre of mass:"
            + " where it lies below 25 times the load (times the design factor), members that take"
            + " part have their effective lengths from it, with moments of first order; where it"
            + " lies below 10 times, every member is checked a second time between held ends with"
            + " moments of second order (EN 1993-1-1, 5.2.1(3), 5.2.2, 6.3.1.2(4)). The worse"
            + " counts. No lean or bow of the whole frame is added.");
    least.forEach((event, found) -> lines.add(line(event, found)));
    return lines;
  }

  private String line(Event event, Least found) {
    return "In %s the frame buckles at %s times the load at least, %s (%s)%s."
        .formatted(
            event.name(),
            Scale.NUMBER.number(found.load.factor(), 3),
            found.load.motion(),
            found.loadCase,
            secondOrder.contains(event) ? "; moments of second order count too" : "");
  }

  /** What could not be followed. */
  List<String> notMade() {
    return unmade.values().stream()
        .map(
            one ->
                "buckling of the whole frame in "
                    + String.join("; ", one.events())
                    + ": "
                    + one.reason())
        .toList();
  }
}
