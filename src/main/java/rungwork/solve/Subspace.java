package rungwork.solve;

import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Several shapes that are turned together towards the slowest vibrations: each step solves (K + sM)
 * x' = M x for all of them and takes the best combinations (Rayleigh and Ritz; subspace iteration
 * after Bathe and Wilson, 1972, from memory). The shift s lets a frame move that nothing holds.
 */
final class Subspace {
  private final MovingMasses masses;
  private final BandFactor factor;
  private final double[][] shapes;
  private final double[] values;
  private double shift;

  /**
   * Starts from shapes without a pattern.
   *
   * @param masses stiffness and mass
   * @param shapes how many, not more than there are free motions
   * @param shift s, above zero where nothing holds the frame [1/s²]
   */
  Subspace(MovingMasses masses, int shapes, double shift) {
    this.masses = masses;
    this.shapes = new double[shapes][masses.size()];
    values = new double[shapes];
    factor = masses.factor();
    for (int k = 0; k < shapes; k++) {
      for (int i = 0; i < masses.size(); i++) {
        this.shapes[k][i] = Math.cos((double) (i + 1) * (i + 1) * (k + 1));
      }
    }
    makeOrthonormal();
    shift(shift);
  }

  /** Changes the shift. */
  void shift(double to) {
    shift = to;
    masses.fill(factor, -shift);
    factor.factorise();
  }

  /**
   * One step for all shapes.
   *
   * @return ω² of each, from the lowest [1/s²]
   */
  double[] step() {
    int count = shapes.length;
    double[][] next = new double[count][];
    DMatrixRMaj gram = new DMatrixRMaj(count, count);
    for (int k = 0; k < count; k++) {
      double[] inertia = masses.massTimes(shapes[k]);
      next[k] = inertia.clone();
      factor.solve(next[k]);
      shapes[k] = inertia;
    }
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        gram.set(i, j, (dot(shapes[i], next[j]) + dot(shapes[j], next[i])) / 2);
      }
    }
    combine(gram, next);
    makeOrthonormal();
    return values.clone();
  }

  private void combine(DMatrixRMaj gram, double[][] next) {
    int count = shapes.length;
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(count, true, true);
    if (!eigen.decompose(gram)) {
      throw new IllegalStateException("a symmetric matrix has principal axes");
    }
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted((a, b) -> Double.compare(value(eigen, b), value(eigen, a)))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int k = 0; k < count; k++) {
      values[k] = 1 / value(eigen, order[k]) - shift;
      double[] along = eigen.getEigenVector(order[k]).getData();
      shapes[k] = new double[masses.size()];
      for (int j = 0; j < count; j++) {
        addTimes(shapes[k], along[j], next[j]);
      }
    }
  }

  private static double value(EigenDecomposition_F64<DMatrixRMaj> eigen, int index) {
    return eigen.getEigenvalue(index).getReal();
  }

  /** Gram and Schmidt, twice over, so that rounding does not bring the shapes together. */
  private void makeOrthonormal() {
    for (int k = 0; k < shapes.length; k++) {
      for (int turn = 0; turn < 2; turn++) {
        double[] inertia = masses.massTimes(shapes[k]);
        for (int j = 0; j < k; j++) {
          addTimes(shapes[k], -dot(shapes[j], inertia), shapes[j]);
        }
        double size = Math.sqrt(dot(shapes[k], masses.massTimes(shapes[k])));
        for (int i = 0; i < shapes[k].length; i++) {
          shapes[k][i] /= size;
        }
      }
    }
  }

  /** A shape; its largest entry is of no particular size. */
  double[] shape(int index) {
    return shapes[index].clone();
  }

  private static void addTimes(double[] sum, double factor, double[] more) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * more[i];
    }
  }

  private static double dot(double[] left, double[] right) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * right[i];
    }
    return sum;
  }
}
