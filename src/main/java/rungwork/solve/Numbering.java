package rungwork.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The order in which nodes are numbered, so that beams join near numbers: the nearer, the narrower
 * the band and the less work. Two orders are tried and the nearer one kept: along the frame's
 * longer side, which is best for a ladder; and outwards from a far node, neighbours of small degree
 * first, then turned round (Cuthill and McKee 1969, reversed by George 1971; from memory), which
 * serves any graph.
 */
final class Numbering {
  private final double[] along;
  private final double[] across;
  private final int[][] neighbours;

  /**
   * A graph of nodes.
   *
   * @param along each node's place along the frame's longer side [m]
   * @param across its place across it [m]
   * @param neighbours the nodes that beams join to each
   */
  Numbering(double[] along, double[] across, int[][] neighbours) {
    this.along = along;
    this.across = across;
    this.neighbours = neighbours;
  }

  /** The nodes in the better order. */
  int[] order() {
    int[] byPlace = byPlace();
    int[] outwards = outwards();
    return reach(byPlace) <= reach(outwards) ? byPlace : outwards;
  }

  private int[] byPlace() {
    return IntStream.range(0, neighbours.length)
        .boxed()
        .sorted(
            Comparator.<Integer>comparingDouble(node -> along[node])
                .thenComparingDouble(node -> across[node]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int[] outwards() {
    int[] order = new int[neighbours.length];
    boolean[] seen = new boolean[neighbours.length];
    int count = 0;
    for (int node : byPlace()) {
      if (!seen[node]) {
        count = spread(node, order, count, seen);
      }
    }
    reverse(order);
    return order;
  }

  private int spread(int start, int[] order, int from, boolean[] seen) {
    int count = from;
    order[count++] = start;
    seen[start] = true;
    for (int next = from; next < count; next++) {
      for (int neighbour : fewestFirst(neighbours[order[next]])) {
        if (!seen[neighbour]) {
          seen[neighbour] = true;
          order[count++] = neighbour;
        }
      }
    }
    return count;
  }

  private int[] fewestFirst(int[] nodes) {
    return Arrays.stream(nodes)
        .boxed()
        .sorted(Comparator.comparingInt(node -> neighbours[node].length))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static void reverse(int[] order) {
    for (int i = 0, j = order.length - 1; i < j; i++, j--) {
      int kept = order[i];
      order[i] = order[j];
      order[j] = kept;
    }
  }

  /** The largest distance between the numbers of two neighbours. */
  private int reach(int[] order) {
    int[] rank = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      rank[order[i]] = i;
    }
    int reach = 0;
    for (int node = 0; node < rank.length; node++) {
      for (int neighbour : neighbours[node]) {
        reach = Math.max(reach, rank[node] - rank[neighbour]);
      }
    }
    return reach;
  }
}
