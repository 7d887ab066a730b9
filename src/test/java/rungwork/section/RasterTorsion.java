package rungwork.section;

import java.util.List;

/**
 * Saint-Venant's torsion of any outline without a closed cell, by Prandtl's stress function on a
 * square raster: −∇²φ = 2, nothing outside; It = 2∫φ. A third route, cruder than triangles but
 * indifferent to the shape.
 */
final class RasterTorsion {
  private final int columns;
  private final boolean[] steel;
  private final double step;

  RasterTorsion(Outline outline, double step) {
    this.step = step;
    double left = -outline.reach(Spot::y) - 1.37 * step;
    double low = -outline.reach(Spot::z) - 1.41 * step;
    columns = 2 + (int) Math.ceil(-2 * left / step);
    int rows = 2 + (int) Math.ceil(-2 * low / step);
    steel = new boolean[columns * rows];
    List<Polygon> loops = outline.loops().stream().map(Polygon::of).toList();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Spot spot = new Spot(left + column * step, low + row * step);
        steel[row * columns + column] = loops.stream().anyMatch(loop -> loop.holds(spot));
      }
    }
  }

  /** By successive over-relaxation. */
  double torsionConstant() {
    double[] phi = new double[steel.length];
    double change = 1;
    while (change > 1e-7) {
      double largest = 0;
      change = 0;
      for (int i = columns; i < phi.length - columns; i++) {
        if (steel[i]) {
          double mean = (phi[i - 1] + phi[i + 1] + phi[i - columns] + phi[i + columns]) / 4;
          double more = 1.7 * (mean + step * step / 2 - phi[i]);
          phi[i] += more;
          change = Math.max(change, Math.abs(more));
          largest = Math.max(largest, Math.abs(phi[i]));
        }
      }
      change /= largest;
    }
    double sum = 0;
    for (double value : phi) {
      sum += value;
    }
    return 2 * sum * step * step;
  }
}
