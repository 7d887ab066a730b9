package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.frame.Frame;
import rungwork.frame.Mass;
import rungwork.frame.Point;

/** A heavy item moves as a rigid body with what carries it: ½vᵀMv is its kinetic energy. */
class ItemMassTest {
  private static final double KILOGRAMS = 12;
  private static final Mass.Inertia OWN = new Mass.Inertia(0.9, 1.3, 1.7, 0.11, -0.23, 0.31);

  /** Its centre of mass from the node L1: ahead, to the right and above. */
  private static final double[] ARM = {0.4, -0.3, 0.2};

  private static ItemMass on(String... carriers) {
    Frame ladder = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
    Point at = ladder.node("L1").at().plus(ARM[0], ARM[1], ARM[2]);
    Mass item = new Mass("item", KILOGRAMS, at, OWN, List.of(carriers), 1);
    return new ItemMass(new Structure(ladder, List.of()), item);
  }

  private static double energy(double[][] matrix, double[] v) {
    double sum = 0;
    for (int i = 0; i < v.length; i++) {
      for (int j = 0; j < v.length; j++) {
        sum += v[i] * matrix[i][j] * v[j];
      }
    }
    return sum / 2;
  }

  /** ½m|v + ω × r|² + ½(Ixx ωx² + …) − Ixy ωx ωy − Iyz ωy ωz − Izx ωz ωx. */
  private static double energy(double[] v, double[] w) {
    double x = v[0] + w[1] * ARM[2] - w[2] * ARM[1];
    double y = v[1] + w[2] * ARM[0] - w[0] * ARM[2];
    double z = v[2] + w[0] * ARM[1] - w[1] * ARM[0];
    double turning = OWN.xx() * w[0] * w[0] + OWN.yy() * w[1] * w[1] + OWN.zz() * w[2] * w[2];
    double products = OWN.xy() * w[0] * w[1] + OWN.yz() * w[1] * w[2] + OWN.zx() * w[2] * w[0];
    return KILOGRAMS * (x * x + y * y + z * z) / 2 + turning / 2 - products;
  }

  @ParameterizedTest(name = "{0} {1} {2}, turning {3} {4} {5}")
  @CsvSource({
    "1, 0, 0, 0, 0, 0",
    "0, 1, 0, 0, 0, 0",
    "0, 0, 1, 0, 0, 0",
    "0, 0, 0, 1, 0, 0",
    "0, 0, 0, 0, 1, 0",
    "0, 0, 0, 0, 0, 1",
    "0, 0, 0, 1, 1, 0",
    "0, 0, 0, 0, 1, 1",
    "0, 0, 0, 1, 0, 1",
    "0.3, -0.7, 1.1, 0.6, -1.3, 0.8"
  })
  void carried_by_one_node_it_has_the_kinetic_energy_of_a_rigid_body(
      double x, double y, double z, double rx, double ry, double rz) {
    double[] v = {x, y, z, rx, ry, rz};
    double expected = energy(new double[] {x, y, z}, new double[] {rx, ry, rz});
    double[][] matrix = on("L1").matrix();
    assertEquals(expected, energy(matrix, v), 1e-12 * expected);
  }

  /** Two nodes that move as one body: the second's move is v + ω × (its place from the first). */
  @Test
  void carried_by_two_nodes_that_move_as_one_body_it_has_the_same_energy() {
    double[] v = {0.3, -0.7, 1.1};
    double[] w = {0.6, -1.3, 0.8};
    double x = -Ladders.BAY;
    double[] both = {
      v[0], v[1], v[2], w[0], w[1], w[2], v[0], v[1] + w[2] * x, v[2] - w[1] * x, w[0], w[1], w[2]
    };
    double expected = energy(v, w);
    assertEquals(expected, energy(on("L1", "L2").matrix(), both), 1e-12 * expected);
  }

  /** The ladder's nodes are R0, L0, R1, L1, R2, L2 …: the fourth and the sixth. */
  @Test
  void its_matrix_works_with_the_motions_of_its_carriers() {
    assertArrayEquals(
        new int[] {18, 19, 20, 21, 22, 23, 30, 31, 32, 33, 34, 35}, on("L1", "L2").places());
  }
}
