package rungwork.solve;

import java.util.Arrays;
import rungwork.frame.Beam;
import rungwork.frame.Freedom;
import rungwork.frame.Plane;

/** How the nodes of a frame and the cuts of its beams move together; the largest move is 1. */
final class MovedShape {
  /** A place this close to the largest motion counts as moving as much: rounding [1]. */
  private static final double AS_MUCH = 1 - 1e-6;

  private final Cutting cutting;
  private final Structure structure;
  private final double[] motions;

  /**
   * A shape.
   *
   * @param cutting the frame's pieces
   * @param structure the pieces
   * @param motions of all nodes of the pieces; their largest move becomes 1
   */
  MovedShape(Cutting cutting, Structure structure, double[] motions) {
    this.cutting = cutting;
    this.structure = structure;
    this.motions = motions.clone();
    double largest = Math.abs(motions[largestMove()]);
    Arrays.setAll(this.motions, i -> motions[i] / largest);
  }

  private int largestMove() {
    int largest = 0;
    for (int i = 0; i < motions.length; i++) {
      if (i % 6 < 3 && Math.abs(motions[i]) * AS_MUCH > Math.abs(motions[largest])) {
        largest = i;
      }
    }
    return largest;
  }

  /** Where it moves most and along which axis, in the user's names. */
  String words() {
    int most = largestMove();
    Freedom freedom = structure.frame().plane().motions().get(most % 6);
    return place(most / 6) + " " + freedom.motion() + " most";
  }

  private String place(int node) {
    int own = cutting.whole().nodes().size();
    if (node < own) {
      return "node " + structure.nodes().get(node).name();
    }
    int cuts = cutting.pieces() - 1;
    String where = 2 * ((node - own) % cuts + 1) == cutting.pieces() ? "the middle of" : "in";
    return where + " beam " + cutting.whole().beams().get((node - own) / cuts).name();
  }

  /** The motion of a node or cut, in vehicle axes. */
  Displacement at(String node) {
    int first = 6 * structure.node(node);
    Plane plane = structure.frame().plane();
    double[] u = plane.toVehicle(motions[first], motions[first + 1], motions[first + 2]);
    double[] r = plane.toVehicle(motions[first + 3], motions[first + 4], motions[first + 5]);
    return new Displacement(u[0], u[1], u[2], r[0], r[1], r[2]);
  }

  /** The motion of the middle of a beam. */
  Displacement middle(Beam beam) {
    return at(cutting.node(beam, cutting.pieces() / 2));
  }

  /** One motion, counted as in {@link Structure}. */
  double motion(int place) {
    return motions[place];
  }

  /** The frame that moves. */
  Cutting cutting() {
    return cutting;
  }
}
