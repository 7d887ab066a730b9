package rungwork.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * What was measured so far.
 *
 * @param marks where the true frame has its marks
 * @param readings in the order in which they were given
 */
record Taken(Marks marks, List<Reading> readings) {
  Taken {
    readings = List.copyOf(readings);
  }

  /** One more; a second reading of a place, and one that cannot be, are refused. */
  Taken and(Kind kind, Side side, List<String> stations, double value) {
    String from = stations.get(0);
    String to = stations.get(1);
    if (from.equals(to) != (kind == Kind.WIDTH || kind == Kind.HEIGHT || kind == Kind.BOW)
        || marks.index(from) > marks.index(to)) {
      throw new ModelException(
          "a measurement from %s to %s needs its front station first and another behind it; from"
                  .formatted(from, to)
              + " the front there are "
              + String.join(", ", marks.stations()));
    }
    double truth = marks.truth(kind, side, from, to);
    Reading one = new Reading(kind, side, from, to, truth, OptionalDouble.of(value));
    readings.stream().filter(one::sameAs).findFirst().ifPresent(before -> refuse(one, before));
    List<Reading> more = new ArrayList<>(readings);
    more.add(one);
    Taken taken = new Taken(marks, more);
    taken.refuseImpossible();
    return taken;
  }

  private static void refuse(Reading one, Reading before) {
    throw new ModelException(
        "%s was measured twice, %s and %s; keep one"
            .formatted(
                one.where(),
                Scale.MM.show(before.measured().orElseThrow()),
                Scale.MM.show(one.measured().orElseThrow())));
  }

  /** The value read at a place. */
  Optional<Reading> at(Kind kind, Side side, String from, String to) {
    return readings.stream()
        .filter(one -> one.kind() == kind && one.side() == side)
        .filter(one -> one.from().equals(from) && one.to().equals(to))
        .findFirst();
  }

  Stream<Reading> of(Kind kind) {
    return readings.stream().filter(one -> one.kind() == kind);
  }

  /** The sides of each triangle of width, rail and diagonal must be able to close. */
  private void refuseImpossible() {
    of(Kind.DIAGONAL).toList().forEach(this::refuseOpen);
  }

  private void refuseOpen(Reading diagonal) {
    Side front = diagonal.side();
    String from = diagonal.from();
    String to = diagonal.to();
    Optional<Reading> ahead = at(Kind.WIDTH, Side.LEFT, from, from);
    Optional<Reading> behind = at(Kind.WIDTH, Side.LEFT, to, to);
    at(Kind.LENGTH, front.other(), from, to)
        .ifPresent(rail -> ahead.ifPresent(width -> refuseOpen(diagonal, width, rail)));
    at(Kind.LENGTH, front, from, to)
        .ifPresent(rail -> behind.ifPresent(width -> refuseOpen(diagonal, width, rail)));
  }

  private static void refuseOpen(Reading diagonal, Reading width, Reading rail) {
    double d = diagonal.measured().orElseThrow();
    double w = width.measured().orElseThrow();
    double l = rail.measured().orElseThrow();
    if (d >= w + l || d <= Math.abs(w - l)) {
      throw new ModelException(
          "no triangle has the diagonal %s of %s, the width %s of %s and the length %s of %s; the"
                  .formatted(
                      diagonal.where(),
                      Scale.MM.show(d),
                      width.where(),
                      Scale.MM.show(w),
                      rail.where(),
                      Scale.MM.show(l))
              + " diagonal must lie between "
              + Scale.MM.show(Math.abs(w - l))
              + " and "
              + Scale.MM.show(w + l)
              + ": measure again");
    }
  }
}
