package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How far apart the numbers of joined nodes are. */
class NumberingTest {
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void a_ladder_told_in_any_order_is_numbered_crossmember_by_crossmember(long seed) {
    List<Integer> names = new ArrayList<>(IntStream.range(0, 24).boxed().toList());
    Collections.shuffle(names, new Random(seed));
    List<int[]> beams = new ArrayList<>();
    double[] along = new double[24];
    double[] across = new double[24];
    for (int station = 0; station < 12; station++) {
      for (int side = 0; side < 2; side++) {
        int node = names.get(2 * station + side);
        along[node] = -0.25 * station;
        across[node] = 0.7 * side;
        if (station > 0) {
          beams.add(new int[] {names.get(2 * station - 2 + side), node});
        }
      }
      beams.add(new int[] {names.get(2 * station), names.get(2 * station + 1)});
    }

    int[] order = new Numbering(along, across, neighbours(24, beams)).order();

    assertEquals(2, reach(order, beams));
  }

  @Test
  void a_ring_is_numbered_from_both_sides() {
    int count = 40;
    double[] along = new double[count];
    double[] across = new double[count];
    List<int[]> beams = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      along[i] = Math.cos(2 * Math.PI * i / count);
      across[i] = Math.sin(2 * Math.PI * i / count);
      beams.add(new int[] {i, (i + 1) % count});
    }

    int[] order = new Numbering(along, across, neighbours(count, beams)).order();

    assertEquals(2, reach(order, beams));
  }

  @Test
  void a_spiral_whose_turns_lie_side_by_side_is_numbered_along_itself() {
    int count = 60;
    double[] along = new double[count];
    double[] across = new double[count];
    List<int[]> beams = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      along[i] = (1 + 0.05 * i) * Math.cos(0.6 * i);
      across[i] = (1 + 0.05 * i) * Math.sin(0.6 * i);
      if (i > 0) {
        beams.add(new int[] {i - 1, i});
      }
    }

    int[] order = new Numbering(along, across, neighbours(count, beams)).order();

    assertEquals(2, reach(order, beams), "outwards from a place inside the chain");
  }

  @Test
  void parts_that_nothing_joins_are_all_numbered() {
    int[] order =
        new Numbering(new double[] {2, 0, 1}, new double[3], neighbours(3, List.of())).order();

    assertArrayEquals(new int[] {0, 1, 2}, Arrays.stream(order).sorted().toArray());
  }

  /** Alike along the frame, the node farther to the right (less across) comes first. */
  @Test
  void nodes_at_one_station_are_numbered_across() {
    List<int[]> beams =
        List.of(new int[] {0, 1}, new int[] {2, 3}, new int[] {0, 2}, new int[] {1, 3});
    int[] order =
        new Numbering(
                new double[] {1, 1, 0, 0},
                new double[] {0.5, -0.5, 0.5, -0.5},
                neighbours(4, beams))
            .order();
    assertArrayEquals(new int[] {3, 2, 1, 0}, order);
  }

  /**
   * A star of three arms, told by places that do not help: from the far node 0 outwards, of a
   * node's neighbours the end of an arm (one neighbour) before the arm that goes on, turned round.
   */
  @Test
  void outwards_a_node_with_fewer_neighbours_comes_first() {
    List<int[]> beams =
        List.of(
            new int[] {0, 1},
            new int[] {1, 2},
            new int[] {1, 3},
            new int[] {2, 4},
            new int[] {4, 5});
    double[] along = {0, 5, 1, 2, 3, 4};
    int[] order = new Numbering(along, new double[6], neighbours(6, beams)).order();
    assertArrayEquals(new int[] {5, 4, 2, 3, 1, 0}, order);
  }

  /** A chain whose places jump to and fro, and a node by itself. */
  @Test
  void a_part_by_itself_takes_no_number_from_the_others() {
    List<int[]> beams =
        List.of(new int[] {0, 1}, new int[] {1, 2}, new int[] {2, 3}, new int[] {3, 4});
    double[] along = {0, 3, 1, 4, 2, 10};
    int[] order = new Numbering(along, new double[6], neighbours(6, beams)).order();
    assertArrayEquals(new int[] {5, 4, 3, 2, 1, 0}, order);
  }

  private static int reach(int[] order, List<int[]> beams) {
    List<Integer> numbers = Arrays.stream(order).boxed().toList();
    return beams.stream()
        .mapToInt(beam -> Math.abs(numbers.indexOf(beam[0]) - numbers.indexOf(beam[1])))
        .max()
        .orElse(0);
  }

  private static int[][] neighbours(int count, List<int[]> beams) {
    int[][] neighbours = new int[count][];
    for (int node = 0; node < count; node++) {
      int n = node;
      neighbours[node] =
          beams.stream()
              .filter(beam -> beam[0] == n || beam[1] == n)
              .mapToInt(beam -> beam[0] + beam[1] - n)
              .toArray();
    }
    return neighbours;
  }
}
