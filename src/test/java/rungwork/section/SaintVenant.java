package rungwork.section;

/**
 * Saint-Venant's torsion of a quarter of a rounded tube by Prandtl's stress function on linear
 * triangles: −∇²φ = 2, nothing at the outer edge, one constant value at the bore; It = 2∫φ over
 * tube and bore. Independent of Bredt's formula and of the library's own integrals.
 */
final class SaintVenant {
  private final RectangularTube tube;
  private final int along;
  private final int across;
  private final double[] y;
  private final double[] z;

  SaintVenant(RectangularTube tube, int along, int across) {
    this.tube = tube;
    this.along = along;
    this.across = across;
    y = new double[(along + 1) * (across + 1)];
    z = new double[y.length];
    double t = tube.wall();
    for (int i = 0; i <= along; i++) {
      Spot inner =
          quarter(tube.height() / 2 - t, tube.width() / 2 - t, tube.inner(), (double) i / along);
      Spot outer = quarter(tube.height() / 2, tube.width() / 2, tube.outer(), (double) i / along);
      for (int j = 0; j <= across; j++) {
        Spot spot = inner.plus(outer.minus(inner).times((double) j / across));
        y[node(i, j)] = spot.y();
        z[node(i, j)] = spot.z();
      }
    }
  }

  private int node(int i, int j) {
    return i * (across + 1) + j;
  }

  /**
   * A place on a quarter of a rounded rectangle: the upright flat, the corner and the level flat
   * each take the share of the way that they have of the outer edge, so that outer edge and bore go
   * together.
   */
  private Spot quarter(double height, double width, double radius, double way) {
    double upright = tube.height() / 2 - tube.outer();
    double corner = Math.PI / 2 * tube.outer();
    double level = tube.width() / 2 - tube.outer();
    double done = way * (upright + corner + level);
    double angle = Math.PI / 2 * share(done - upright, corner);
    double up = share(done, upright) * (height - radius);
    double left = (1 - share(done - upright - corner, level)) * (width - radius);
    return new Spot(left + radius * Math.cos(angle), up + radius * Math.sin(angle));
  }

  private static double share(double done, double of) {
    return done <= 0 ? 0 : done >= of ? 1 : done / of;
  }

  double torsionConstant() {
    double[] load = load();
    double[] phi = conjugateGradients(load);
    double sum = 0;
    for (int i = 0; i < load.length; i++) {
      sum += load[i] * phi[i];
    }
    return 4 * sum;
  }

  /** 2∫N dA of each node, that of the bore on all bore nodes as one. */
  private double[] load() {
    double[] load = new double[y.length];
    double bore = 0;
    for (int i = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        for (int[] triangle : triangles(i, j)) {
          for (int corner : triangle) {
            load[corner] += 2 * area(triangle) / 3;
          }
        }
      }
      int a = node(i, 0);
      int b = node(i + 1, 0);
      bore += y[a] * z[b] - z[a] * y[b];
    }
    load[0] += bore;
    return held(load);
  }

  private int[][] triangles(int i, int j) {
    int a = node(i, j);
    int b = node(i, j + 1);
    int c = node(i + 1, j + 1);
    int d = node(i + 1, j);
    return (i + j) % 2 == 0
        ? new int[][] {{a, b, c}, {a, c, d}}
        : new int[][] {{a, b, d}, {b, c, d}};
  }

  private double area(int[] n) {
    return Math.abs(
            (y[n[1]] - y[n[0]]) * (z[n[2]] - z[n[0]]) - (z[n[1]] - z[n[0]]) * (y[n[2]] - y[n[0]]))
        / 2;
  }

  /** Gathers the bore's nodes into node 0 and lets go of the outer edge. */
  private double[] held(double[] vector) {
    for (int i = 1; i <= along; i++) {
      vector[0] += vector[node(i, 0)];
      vector[node(i, 0)] = 0;
    }
    for (int i = 0; i <= along; i++) {
      vector[node(i, across)] = 0;
    }
    return vector;
  }

  private double[] stiffnessTimes(double[] free) {
    double[] phi = free.clone();
    for (int i = 1; i <= along; i++) {
      phi[node(i, 0)] = phi[0];
    }
    double[] result = new double[y.length];
    for (int i = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        for (int[] triangle : triangles(i, j)) {
          add(triangle, phi, result);
        }
      }
    }
    return held(result);
  }

  private void add(int[] n, double[] phi, double[] result) {
    double[] dy = new double[3];
    double[] dz = new double[3];
    double gy = 0;
    double gz = 0;
    for (int k = 0; k < 3; k++) {
      dy[k] = z[n[(k + 1) % 3]] - z[n[(k + 2) % 3]];
      dz[k] = y[n[(k + 2) % 3]] - y[n[(k + 1) % 3]];
      gy += dy[k] * phi[n[k]];
      gz += dz[k] * phi[n[k]];
    }
    for (int k = 0; k < 3; k++) {
      result[n[k]] += (dy[k] * gy + dz[k] * gz) / (4 * area(n));
    }
  }

  private double[] conjugateGradients(double[] load) {
    double[] phi = new double[load.length];
    double[] rest = load.clone();
    double[] way = rest.clone();
    double size = dot(rest, rest);
    double enough = 1e-24 * size;
    while (size > enough) {
      double[] image = stiffnessTimes(way);
      double step = size / dot(way, image);
      for (int i = 0; i < phi.length; i++) {
        phi[i] += step * way[i];
        rest[i] -= step * image[i];
      }
      double next = dot(rest, rest);
      for (int i = 0; i < way.length; i++) {
        way[i] = rest[i] + next / size * way[i];
      }
      size = next;
    }
    return phi;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
