package rungwork.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Saint-Venant's torsion of any outline without a closed cell by Prandtl's stress function on a
 * square net: −∇²φ = 2, nothing at the edge; It = 2∫φ. Where the edge cuts a mesh the difference
 * formula takes the shorter arm (Shortley and Weller), so that the error falls with the square of
 * the mesh. Knows nothing of walls.
 */
final class OutlineTorsion {
  private static final double SETTLED = 1e-9;

  private final double step;
  private final int columns;
  private final int rows;

  /** Arms to the right, left, up and down of each node [m]. */
  private final double[][] arms = new double[4][];

  private final boolean[] steel;

  private OutlineTorsion(double[][] edge, double step) {
    this.step = step;
    double[] low = {least(edge[0]) - 1.37 * step, least(edge[1]) - 1.37 * step};
    columns = 3 + (int) Math.ceil((-least(negative(edge[0])) - low[0]) / step);
    rows = 3 + (int) Math.ceil((-least(negative(edge[1])) - low[1]) / step);
    steel = new boolean[columns * rows];
    for (int i = 0; i < 4; i++) {
      arms[i] = new double[steel.length];
      Arrays.fill(arms[i], step);
    }
    for (int row = 0; row < rows; row++) {
      cut(crossings(edge, 1, low[1] + row * step), low[0], row * columns, 1, 0);
    }
    for (int column = 0; column < columns; column++) {
      cut(crossings(edge, 0, low[0] + column * step), low[1], column, columns, 2);
    }
  }

  /** The constant for an infinitely fine net, from two nets. */
  static double of(Outline outline, double step) {
    double[][] edge = edge(outline.loops().get(0));
    double coarse = new OutlineTorsion(edge, step).constant();
    double fine = new OutlineTorsion(edge, step / 2).constant();
    return fine + (fine - coarse) / 3;
  }

  /** The edge as many short straight pieces: y and z of their ends. */
  private static double[][] edge(List<Segment> loop) {
    List<Spot> spots =
        loop.stream()
            .flatMap(piece -> IntStream.range(0, 40).mapToObj(i -> piece.at(i / 40.0)))
            .toList();
    return new double[][] {
      spots.stream().mapToDouble(Spot::y).toArray(), spots.stream().mapToDouble(Spot::z).toArray()
    };
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  private static double[] negative(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }

  /** Where the edge crosses a line on which one coordinate has a value, in order. */
  private static List<Double> crossings(double[][] edge, int fixed, double value) {
    List<Double> found = new ArrayList<>();
    int count = edge[0].length;
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      double a = edge[fixed][i] - value;
      double b = edge[fixed][next] - value;
      if (a < 0 != b < 0) {
        double[] other = edge[1 - fixed];
        found.add(other[i] + a / (a - b) * (other[next] - other[i]));
      }
    }
    found.sort(null);
    return found;
  }

  /** Marks the nodes of a line between pairs of crossings; shortens their outer arms. */
  private void cut(List<Double> crossings, double low, int first, int stride, int arm) {
    for (int k = 0; k + 1 < crossings.size(); k += 2) {
      int from = (int) Math.ceil((crossings.get(k) - low) / step);
      int to = (int) Math.floor((crossings.get(k + 1) - low) / step);
      for (int i = from; i <= to; i++) {
        steel[first + i * stride] = true;
      }
      if (from <= to) {
        arms[arm][first + to * stride] = arm(crossings.get(k + 1) - low - to * step);
        arms[arm + 1][first + from * stride] = arm(low + from * step - crossings.get(k));
      }
    }
  }

  private double arm(double length) {
    return Math.max(1e-6 * step, Math.min(step, length));
  }

  /** By successive over-relaxation. */
  private double constant() {
    double[] phi = new double[steel.length];
    int[] neighbours = {1, -1, columns, -columns};
    double change = 1;
    while (change > SETTLED) {
      double largest = 0;
      change = 0;
      for (int i = 0; i < phi.length; i++) {
        if (steel[i]) {
          double more = 1.8 * (balanced(phi, i, neighbours) - phi[i]);
          phi[i] += more;
          change = Math.max(change, Math.abs(more));
          largest = Math.max(largest, Math.abs(phi[i]));
        }
      }
      change /= largest;
    }
    double sum = 0;
    for (int i = 0; i < phi.length; i++) {
      sum += phi[i] * (arms[0][i] + arms[1][i]) * (arms[2][i] + arms[3][i]) / 4;
    }
    return 2 * sum;
  }

  private double balanced(double[] phi, int node, int[] neighbours) {
    double load = 2;
    double weight = 0;
    for (int k = 0; k < 4; k++) {
      double own = arms[k][node];
      double both = own + arms[k ^ 1][node];
      int next = node + neighbours[k];
      weight += 2 / (own * both);
      load += steel[next] && own >= step ? 2 / (own * both) * phi[next] : 0;
    }
    return load / weight;
  }
}
