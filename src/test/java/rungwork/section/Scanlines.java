package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A second route to an outline's properties: cut into thin level slices, each as wide as the
 * outline is there by intersection. Knows nothing of Green's theorem.
 */
final class Scanlines {
  /** Slices between two heights at which the outline bends or starts anew. */
  private static final int SLICES = 1000;

  private final List<Double> heights = new ArrayList<>();
  private final List<Double> areas = new ArrayList<>();

  Scanlines(Outline outline) {
    double[] bends =
        outline.loops().stream()
            .flatMap(List::stream)
            .flatMap(piece -> piece.reaches().stream())
            .mapToDouble(Spot::z)
            .sorted()
            .toArray();
    for (int k = 1; k < bends.length; k++) {
      double step = (bends[k] - bends[k - 1]) / SLICES;
      for (int i = 0; i < SLICES && step > 1e-12; i++) {
        double height = bends[k - 1] + (i + 0.5) * step;
        heights.add(height);
        areas.add(step * width(outline, height));
      }
    }
  }

  private static double width(Outline outline, double height) {
    List<Double> crossings = new ArrayList<>();
    outline.loops().forEach(loop -> loop.forEach(piece -> cross(piece, height, crossings)));
    crossings.sort(null);
    double width = 0;
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      width += crossings.get(i + 1) - crossings.get(i);
    }
    return width;
  }

  private static void cross(Segment piece, double height, List<Double> crossings) {
    if (piece instanceof Arc arc) {
      cross(arc, height, crossings);
      return;
    }
    double a = piece.start().z() - height;
    double b = piece.end().z() - height;
    if (a * b < 0) {
      crossings.add(piece.at(a / (a - b)).y());
    }
  }

  private static void cross(Arc arc, double height, List<Double> crossings) {
    double sine = (height - arc.centre().z()) / arc.radius();
    if (Math.abs(sine) >= 1) {
      return;
    }
    for (double direction : new double[] {Math.asin(sine), Math.PI - Math.asin(sine)}) {
      double fraction = (direction - arc.from()) / arc.angle();
      double turn = Math.abs(2 * Math.PI / arc.angle());
      double first = fraction - turn * Math.floor(fraction / turn);
      if (first < 1) {
        crossings.add(arc.centre().y() + arc.radius() * Math.cos(direction));
      }
    }
  }

  double integral(DoubleUnaryOperator ofHeight) {
    double sum = 0;
    for (int i = 0; i < areas.size(); i++) {
      sum += areas.get(i) * ofHeight.applyAsDouble(heights.get(i));
    }
    return sum;
  }

  double plasticModulus() {
    double half = integral(z -> 1) / 2;
    double below = 0;
    int i = 0;
    while (below + areas.get(i) < half) {
      below += areas.get(i++);
    }
    double level = heights.get(i);
    return integral(z -> Math.abs(z - level));
  }
}
