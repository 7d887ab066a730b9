package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.frame.Load;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

class CarriersTest {
  private static final Node A = new Node("A", new Point(0, 0, 0));
  private static final Node B = new Node("B", new Point(2, 0, 0));
  private static final Node C = new Node("C", new Point(0, 1, 0));

  private static Wrench total(List<Node> nodes, List<Load.AtNode> shares, Point about) {
    Wrench total = Wrench.ZERO;
    for (int i = 0; i < nodes.size(); i++) {
      total = total.plus(shares.get(i).wrench().moved(nodes.get(i).at(), about));
    }
    return total;
  }

  @Test
  void a_force_in_the_middle_is_shared_equally() {
    List<Load.AtNode> shares =
        new Carriers(List.of(A, B)).share(Wrench.force(0, 0, -10), new Point(1, 0, 0));
    assertEquals(Wrench.force(0, 0, -5), shares.get(0).wrench().plus(Wrench.ZERO));
    assertEquals("B", shares.get(1).node());
    assertEquals(-5, shares.get(1).wrench().fz());
  }

  @Test
  void a_force_at_one_carrier_goes_to_it() {
    List<Load.AtNode> shares = new Carriers(List.of(A, B)).share(Wrench.force(0, 0, -10), A.at());
    assertEquals(-10, shares.get(0).wrench().fz(), 1e-12);
    assertEquals(0, shares.get(1).wrench().fz(), 1e-12);
  }

  @Test
  void a_moment_goes_out_as_forces_in_proportion_to_the_distance() {
    List<Node> row =
        List.of(A, B, new Node("D", new Point(6, 0, 0)), new Node("E", new Point(8, 0, 0)));
    List<Load.AtNode> shares =
        new Carriers(row).share(Wrench.moment(0, -80, 0), new Point(4, 0, 0));
    assertEquals(-8, shares.get(0).wrench().fz(), 1e-12);
    assertEquals(-4, shares.get(1).wrench().fz(), 1e-12);
    assertEquals(4, shares.get(2).wrench().fz(), 1e-12);
    assertEquals(8, shares.get(3).wrench().fz(), 1e-12);
  }

  @Test
  void a_moment_about_the_line_of_carriers_goes_to_them_as_moments() {
    List<Load.AtNode> shares =
        new Carriers(List.of(A, B)).share(Wrench.moment(6, 0, 0), new Point(1, 0, 0));
    assertEquals(3, shares.get(0).wrench().mx(), 1e-12);
    assertEquals(3, shares.get(1).wrench().mx(), 1e-12);
    assertEquals(0, shares.get(0).wrench().fz(), 1e-12);
  }

  @Test
  void one_carrier_takes_all() {
    Wrench wrench = new Wrench(1, 2, 3, 4, 5, 6);
    Point at = new Point(1, 1, 1);
    Wrench share = new Carriers(List.of(B)).share(wrench, at).get(0).wrench();
    assertEquals(wrench.moved(at, B.at()), share.plus(Wrench.ZERO));
  }

  @Test
  void carriers_a_hair_off_a_line_are_not_pried_apart() {
    Node near = new Node("near", new Point(1, 1e-4, 0));
    List<Load.AtNode> shares =
        new Carriers(List.of(A, near, B)).share(Wrench.moment(6, 0, 0), near.at());
    assertEquals(2, shares.get(1).wrench().mx(), 1e-3);
    assertEquals(0, shares.get(1).wrench().fz(), 1e-2);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void shares_do_the_same_to_a_rigid_body_as_the_wrench(int count) {
    for (int seed = 0; seed < 20; seed++) {
      Random random = new Random(100L * count + seed);
      List<Node> nodes = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        nodes.add(new Node("N" + i, point(random)));
      }
      Wrench wrench =
          new Wrench(number(random), number(random), number(random), 3, number(random), -2);
      Point at = point(random);
      Point about = point(random);
      Wrench expected = wrench.moved(at, about);
      Carriers carriers = new Carriers(nodes);
      Wrench sum = total(nodes, carriers.share(wrench, at), about);
      assertEquals(0, Totals.size(sum.plus(expected.times(-1))), 1e-12, "seed " + seed);
      for (Load.AtNode alone : carriers.oneByOne(wrench, at)) {
        Node node = nodes.get(Integer.parseInt(alone.node().substring(1)));
        Wrench moved = alone.wrench().moved(node.at(), about);
        assertEquals(0, Totals.size(moved.plus(expected.times(-1))), 1e-12, "seed " + seed);
      }
    }
  }

  @Test
  void no_carrier_and_a_carrier_named_twice_are_refused() {
    assertEquals(
        "nothing carries the load: name one carrier at least",
        assertThrows(ModelException.class, () -> new Carriers(List.of())).getMessage());
    assertEquals(
        "a carrier is named twice: A, C, A",
        assertThrows(ModelException.class, () -> new Carriers(List.of(A, C, A))).getMessage());
    assertEquals("carried by A, C", new Carriers(List.of(A, C)).toString());
  }

  private static double number(Random random) {
    return 2 * random.nextDouble() - 1;
  }

  private static Point point(Random random) {
    return new Point(number(random), number(random), number(random));
  }
}
