package rungwork.solve;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * A symmetric tensor that answers a moment by a turn, such as an inertia tensor. About an axis on
 * which everything lies it has no answer.
 */
final class TurnTensor {
  private final DMatrixRMaj tensor = new DMatrixRMaj(3, 3);
  private final double thin;
  private Optional<EigenDecomposition_F64<DMatrixRMaj>> principal = Optional.empty();

  /**
   * A tensor of zeros.
   *
   * @param thin an axis with less than this part of the largest principal value has no answer [1]
   */
  TurnTensor(double thin) {
    this.thin = thin;
  }

  /** Adds weight·(r² 1 − r rᵀ), the share of a point at r. */
  void addPoint(double weight, double[] r) {
    double square = r[0] * r[0] + r[1] * r[1] + r[2] * r[2];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        add(i, j, weight * ((i == j ? square : 0) - r[i] * r[j]));
      }
    }
  }

  /** Adds to one entry. */
  void add(int i, int j, double value) {
    tensor.add(i, j, value);
    principal = Optional.empty();
  }

  /** The principal axes, found once. */
  private EigenDecomposition_F64<DMatrixRMaj> axes() {
    if (principal.isEmpty()) {
      EigenDecomposition_F64<DMatrixRMaj> axes = DecompositionFactory_DDRM.eig(3, true, true);
      if (!axes.decompose(tensor.copy())) {
        throw new IllegalStateException("a symmetric tensor has principal axes");
      }
      principal = Optional.of(axes);
    }
    return principal.get();
  }

  /**
   * The turn that answers a moment, and the part of the moment that meets no answer.
   *
   * @param moment three components
   * @return the turn and the rest
   */
  Answer answer(double[] moment) {
    EigenDecomposition_F64<DMatrixRMaj> axes = axes();
    double largest = 0;
    for (int i = 0; i < 3; i++) {
      largest = Math.max(largest, axes.getEigenvalue(i).getReal());
    }
    Answer answer = new Answer(new double[3], new double[3]);
    for (int i = 0; i < 3; i++) {
      double value = axes.getEigenvalue(i).getReal();
      double[] axis = axes.getEigenVector(i).getData();
      double along = axis[0] * moment[0] + axis[1] * moment[1] + axis[2] * moment[2];
      boolean answers = value > thin * largest;
      answer.add(axis, answers ? along / value : 0, answers ? 0 : along);
    }
    return answer;
  }

  /**
   * What becomes of a moment.
   *
   * @param turn three components
   * @param rest the part of the moment about axes that have no answer, three components
   */
  record Answer(double[] turn, double[] rest) {
    private void add(double[] axis, double turning, double resting) {
      for (int i = 0; i < 3; i++) {
        turn[i] += turning * axis[i];
        rest[i] += resting * axis[i];
      }
    }
  }
}
