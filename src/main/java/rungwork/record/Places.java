package rungwork.record;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/** Where to put the tape on a ladder, in the order in which one walks round it. */
final class Places {
  private final Marks marks;
  private final List<Reading> all = new ArrayList<>();

  private Places(Marks marks) {
    this.marks = marks;
  }

  /** Everything worth measuring, unmeasured. */
  static List<Reading> of(Marks marks) {
    Places places = new Places(marks);
    List<String> stations = marks.stations();
    for (int i = 0; i + 1 < stations.size(); i++) {
      places.both(Kind.LENGTH, stations.get(i), stations.get(i + 1));
    }
    stations.forEach(station -> places.one(Kind.WIDTH, Side.LEFT, station, station));
    places.diagonals(stations);
    stations.forEach(station -> places.both(Kind.HEIGHT, station, station));
    stations
        .subList(1, Math.max(1, stations.size() - 1))
        .forEach(station -> places.both(Kind.BOW, station, station));
    return List.copyOf(places.all);
  }

  private void diagonals(List<String> stations) {
    for (int i = 0; i + 1 < stations.size(); i++) {
      both(Kind.DIAGONAL, stations.get(i), stations.get(i + 1));
    }
    List<String> rungs = marks.crossmembers();
    if (stations.size() > 2 && rungs.size() > 1) {
      both(Kind.DIAGONAL, rungs.get(0), rungs.get(rungs.size() - 1));
    }
  }

  private void both(Kind kind, String from, String to) {
    one(kind, Side.LEFT, from, to);
    one(kind, Side.RIGHT, from, to);
  }

  private void one(Kind kind, Side side, String from, String to) {
    Reading place =
        new Reading(
            kind, side, from, to, marks.truth(kind, side, from, to), OptionalDouble.empty());
    if (all.stream().noneMatch(place::sameAs)) {
      all.add(place);
    }
  }
}
