package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The band solver against a general dense one, and against itself. */
class BandFactorTest {
  /** Some tens of roundings in each of some tens of sums. */
  private static final double ROUNDING = 1e-11;

  @ParameterizedTest(name = "{0} unknowns, band {1}")
  @CsvSource({"1,0", "2,1", "5,0", "7,2", "40,39", "72,8", "101,11"})
  void its_solution_is_that_of_a_dense_solver(int size, int band) {
    DMatrixRMaj dense = random(size, band, 17);
    BandFactor factor = banded(dense, band);
    assertTrue(factor.factorise());
    double[] rightHandSide = values(size, 3);
    DMatrixRMaj expected = new DMatrixRMaj(size, 1);
    assertTrue(CommonOps_DDRM.solve(dense, new DMatrixRMaj(rightHandSide), expected));

    factor.solve(rightHandSide);

    for (int i = 0; i < size; i++) {
      assertEquals(expected.get(i, 0), rightHandSide[i], ROUNDING);
    }
  }

  @ParameterizedTest(name = "{0} unknowns, band {1}")
  @CsvSource({"1,0", "5,0", "7,2", "40,39", "72,8"})
  void cases_side_by_side_are_solved_as_one_by_one(int size, int band) {
    BandFactor factor = banded(random(size, band, 23), band);
    assertTrue(factor.factorise());
    double[] sideBySide = values(size * BandFactor.CASES, 5);
    double[][] single = new double[BandFactor.CASES][size];
    for (int i = 0; i < sideBySide.length; i++) {
      single[i % BandFactor.CASES][i / BandFactor.CASES] = sideBySide[i];
    }

    factor.solveCases(sideBySide);

    for (int c = 0; c < BandFactor.CASES; c++) {
      factor.solve(single[c]);
      for (int i = 0; i < size; i++) {
        assertEquals(single[c][i], sideBySide[i * BandFactor.CASES + c], ROUNDING);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void a_matrix_filled_anew_is_factorised_as_a_new_one(long seed) {
    BandFactor used = banded(random(30, 4, seed), 4);
    used.factorise();
    DMatrixRMaj next = random(30, 4, seed + 100);
    used.matrix().clear();
    fill(used.matrix(), next);
    used.factorise();
    BandFactor fresh = banded(next, 4);
    fresh.factorise();
    double[] a = values(30, seed);
    double[] b = a.clone();

    used.solve(a);
    fresh.solve(b);

    for (int i = 0; i < a.length; i++) {
      assertEquals(b[i], a[i]);
    }
  }

  @Test
  void a_chain_of_springs_that_nothing_holds_moves_as_a_whole() {
    BandMatrix chain = new BandMatrix(5, 1);
    for (int i = 0; i < 4; i++) {
      chain.add(i, i, 1);
      chain.add(i + 1, i + 1, 1);
      chain.add(i + 1, i, -1);
    }
    BandFactor factor = new BandFactor(chain);

    assertFalse(factor.factorise());

    for (double motion : factor.freeMotion()) {
      assertEquals(1, motion);
    }
  }

  private static DMatrixRMaj random(int size, int band, long seed) {
    Random random = new Random(seed);
    DMatrixRMaj matrix = new DMatrixRMaj(size, size);
    for (int i = 0; i < size; i++) {
      for (int j = Math.max(0, i - band); j < i; j++) {
        double value = random.nextDouble() - 0.5;
        matrix.set(i, j, value);
        matrix.set(j, i, value);
      }
      matrix.set(i, i, band + 1);
    }
    return matrix;
  }

  private static BandFactor banded(DMatrixRMaj dense, int band) {
    BandMatrix matrix = new BandMatrix(dense.numRows, band);
    fill(matrix, dense);
    return new BandFactor(matrix);
  }

  private static void fill(BandMatrix matrix, DMatrixRMaj dense) {
    for (int i = 0; i < dense.numRows; i++) {
      for (int j = Math.max(0, i - matrix.band());
          j < Math.min(i + matrix.band() + 1, dense.numCols);
          j++) {
        matrix.add(i, j, dense.get(i, j));
      }
    }
  }

  private static double[] values(int count, long seed) {
    return new Random(seed).doubles(count, -1, 1).toArray();
  }

  @Test
  void pivots_below_zero_are_counted_past_one_that_vanishes() {
    BandMatrix matrix = new BandMatrix(3, 1);
    matrix.add(1, 0, 2);
    matrix.add(2, 2, -5);
    matrix.add(2, 1, 1);
    BandFactor factor = new BandFactor(matrix);
    // The values of {{0, 2, 0}, {2, 0, 1}, {0, 1, -5}} are 1.94, -1.79 and -5.15.
    assertEquals(2, factor.factoriseThrough());
  }
}
