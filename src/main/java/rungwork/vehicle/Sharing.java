package rungwork.vehicle;

import java.util.List;
import java.util.Locale;
import rungwork.frame.Mass;

/** Which of its carriers take a mass on several mounts, whose real share is not known. */
enum Sharing {
  /** All, like a rigid body on equal springs. */
  ALL,
  /** Bound: the foremost alone. */
  FOREMOST,
  /** Bound: the rearmost alone. */
  REARMOST;

  /** The ways in which an event's masses are shared: the bounds in an impact only. */
  static List<Sharing> of(Event event) {
    return event.kind() == Event.Kind.IMPACT ? List.of(values()) : List.of(ALL);
  }

  /** What a load case's name says of it. */
  String suffix() {
    return this == ALL
        ? ""
        : ", bound: masses on their " + name().toLowerCase(Locale.ROOT) + " mounts";
  }

  /** The carriers that take a mass. */
  List<String> carriers(Mass mass, Ladder ladder) {
    if (this == ALL) {
      return mass.carriers();
    }
    int way = this == FOREMOST ? 1 : -1;
    double end =
        mass.carriers().stream()
            .mapToDouble(carrier -> way * ladder.at(carrier).x())
            .max()
            .orElseThrow();
    return mass.carriers().stream()
        .filter(carrier -> way * ladder.at(carrier).x() > end - Layout.SAME_PLACE)
        .toList();
  }
}
