package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rungwork.frame.Point;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.record.Inspection.Moved;
import rungwork.record.Reading;
import rungwork.vehicle.Side;

/** The marks of a measured frame on a drawing: where they were, where they are, what differs. */
final class MeasuredMarks {
  private static final double WIDTH = 760;

  /** The largest deviation is drawn no longer than this [px]. */
  private static final double LONGEST = 56;

  private static final int[] FACTORS = {100, 50, 20, 10, 5, 2, 1};

  private final Inspection seen;
  private final Units units;
  private final List<Moved> all;
  private final double scale;
  private final int factor;

  MeasuredMarks(Inspection seen, Units units) {
    this.seen = seen;
    this.units = units;
    all = seen.moved();
    double front = seen.mark(Side.LEFT, first()).x();
    double rear = seen.mark(Side.LEFT, last()).x();
    scale = WIDTH / (front - rear);
    factor = magnification();
  }

  private int magnification() {
    double most =
        all.stream()
            .flatMapToDouble(one -> DoubleStream.of(one.ahead(), one.left(), one.up()))
            .map(Math::abs)
            .max()
            .orElse(0);
    for (int one : FACTORS) {
      if (most * one * scale <= LONGEST) {
        return one;
      }
    }
    return 1;
  }

  Inspection seen() {
    return seen;
  }

  /** Whether nothing is measured that a drawing could show. */
  boolean blank() {
    return all.stream().noneMatch(one -> one.inPlan() || one.inHeight());
  }

  /** How many times as large deviations are drawn. */
  int factor() {
    return factor;
  }

  /** From front to rear, left before right. */
  List<Moved> all() {
    return all;
  }

  List<Moved> on(Side side) {
    return all.stream().filter(one -> one.side() == side).toList();
  }

  private String first() {
    return seen.stations().get(0);
  }

  String last() {
    return seen.stations().get(seen.stations().size() - 1);
  }

  /** A mark of the true frame in plan. */
  Spot plan(Side side, String station) {
    Point at = seen.mark(side, station);
    return new Spot(-at.x() * scale, at.y() * scale);
  }

  /** Where a mark was, in plan. */
  Spot truePlan(Moved one) {
    return plan(one.side(), one.station());
  }

  /** Where a mark is, in plan, what it deviates magnified. */
  Spot nowPlan(Moved one) {
    return truePlan(one).plus(-one.ahead() * factor * scale, one.left() * factor * scale);
  }

  /** A mark in elevation, so much above its true place [m], above a level of the drawing. */
  Spot side(Moved one, double up, double y) {
    Point at = seen.mark(one.side(), one.station());
    double height = at.z() - seen.mark(Side.LEFT, last()).z();
    return new Spot(-at.x() * scale, y - (height + up * factor) * scale);
  }

  /** What it deviates in plan by more than is known, in words. */
  List<String> wordsInPlan(Moved one) {
    List<String> parts = new ArrayList<>();
    part(parts, one.ahead(), "ahead", "back");
    part(parts, one.left(), "left", "right");
    return parts;
  }

  /** What it deviates by more than is known, in words. */
  List<String> words(Moved one) {
    List<String> parts = wordsInPlan(one);
    if (isHigher(one)) {
      part(parts, one.up(), "up", "down");
    }
    return parts;
  }

  private void part(List<String> parts, double value, String above, String below) {
    if (Math.abs(value) > seen.accuracy()) {
      parts.add(amount(Math.abs(value)) + " " + (value > 0 ? above : below));
    }
  }

  /** Higher or lower by more than is known there. */
  boolean isHigher(Moved one) {
    return seen.readings().stream()
        .filter(reading -> reading.kind() == Reading.Kind.HEIGHT)
        .filter(reading -> reading.side() == one.side() && reading.from().equals(one.station()))
        .anyMatch(reading -> Math.abs(one.up()) > seen.knownTo(reading));
  }

  String amount(double metres) {
    return InspectionPage.amount(metres, units);
  }
}
