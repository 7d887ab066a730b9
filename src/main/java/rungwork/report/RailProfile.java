package rungwork.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;

/**
 * The left rail seen from the left: as deep as its section, mitred where it kicks up.
 *
 * @param ladder its ladder
 * @param sight the view from the left
 */
record RailProfile(Ladder ladder, Sight sight) {
  private static final double THINNEST = 4;

  /** Where the rail turns or changes its stock, from the front [m]. */
  List<Double> stations() {
    Rail rail = ladder.rail(Side.LEFT);
    Stream<Double> kicks = ladder.kickUps().stream().flatMap(k -> Stream.of(k.foot(), k.head()));
    Stream<Double> ends = rail.reaches().stream().map(Rail.Reach::x);
    return Stream.of(Stream.of(rail.x()), kicks, ends)
        .flatMap(each -> each)
        .filter(rail::reaches)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  Spot at(double x) {
    return sight.along(x, 0, ladder.heightAt(x));
  }

  /** Draws its straight pieces; what it covers is kept free of labels. */
  void draw(Canvas canvas, Labels labels) {
    List<Spot> line = stations().stream().map(this::at).toList();
    for (int i = 0; i + 1 < line.size(); i++) {
      double depth = depth(stations().get(i + 1));
      Spot front = across(line, i, depth / 2);
      Spot rear = across(line, i + 1, depth / 2);
      Spot a = line.get(i);
      Spot b = line.get(i + 1);
      canvas.polygon(
          "steel",
          List.of(
              a.plus(front.x(), front.y()),
              b.plus(rear.x(), rear.y()),
              b.plus(-rear.x(), -rear.y()),
              a.plus(-front.x(), -front.y())));
      for (double part : new double[] {-1, -0.5, 0, 0.5, 1}) {
        labels.keepFree(
            a.plus(part * front.x(), part * front.y()), b.plus(part * rear.x(), part * rear.y()));
      }
    }
  }

  /** The half mitre at a point of the line. */
  private static Spot across(List<Spot> line, int i, double half) {
    List<Spot> normals = new ArrayList<>();
    if (i > 0) {
      normals.add(normal(line.get(i - 1), line.get(i)));
    }
    if (i + 1 < line.size()) {
      normals.add(normal(line.get(i), line.get(i + 1)));
    }
    Spot a = normals.get(0);
    Spot b = normals.get(normals.size() - 1);
    double k = half / (1 + a.x() * b.x() + a.y() * b.y());
    return new Spot(k * (a.x() + b.x()), k * (a.y() + b.y()));
  }

  private static Spot normal(Spot from, Spot to) {
    double length = from.distance(to);
    return new Spot(-(to.y() - from.y()) / length, (to.x() - from.x()) / length);
  }

  /** How deep it is drawn just ahead of a station [px]. */
  double depth(double station) {
    Section section =
        ladder.rail(Side.LEFT).reaches().stream()
            .filter(reach -> station >= reach.x())
            .findFirst()
            .orElseThrow()
            .stock()
            .section();
    return Math.max(THINNEST, Outlines.height(section) * Math.abs(sight.zy()));
  }
}
