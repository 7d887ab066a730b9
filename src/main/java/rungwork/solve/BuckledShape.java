package rungwork.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import rungwork.frame.Beam;
import rungwork.frame.Freedom;
import rungwork.frame.Plane;

/** How a frame looks when it buckles: the motions of its nodes and of the cuts of its beams. */
final class BuckledShape {
  /** Change of the normal force by which its work is told from the stiffness [1]. */
  private static final double SMALL = 1e-4;

  /** A place this close to the largest motion counts as moving as much: rounding [1]. */
  private static final double AS_MUCH = 1 - 1e-6;

  private final Cutting cutting;
  private final Structure structure;
  private final double[] motions;

  /**
   * A shape.
   *
   * @param cutting the frame's pieces
   * @param structure the pieces under their critical normal forces
   * @param motions of all nodes of the pieces; their largest move becomes 1
   */
  BuckledShape(Cutting cutting, Structure structure, double[] motions) {
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
    return "the middle of beam "
        + cutting.whole().beams().get((node - own) / (cutting.pieces() - 1)).name();
  }

  /** How a node or cut moves, in vehicle axes. */
  Displacement at(String node) {
    int first = 6 * structure.node(node);
    Plane plane = structure.frame().plane();
    double[] u = plane.toVehicle(motions[first], motions[first + 1], motions[first + 2]);
    double[] r = plane.toVehicle(motions[first + 3], motions[first + 4], motions[first + 5]);
    return new Displacement(u[0], u[1], u[2], r[0], r[1], r[2]);
  }

  /** How the middle of a beam moves. */
  Displacement middle(Beam beam) {
    return at(cutting.node(beam, cutting.pieces() / 2));
  }

  /**
   * What the normal force in a beam does to further the buckling, per metre: ½|N|∫w′²dx/L, below
   * zero in tension. The energy of a beam under given motions of its nodes changes with the normal
   * force by ½∫w′²dx.
   */
  double work(int beam) {
    return IntStream.range(beam * cutting.pieces(), (beam + 1) * cutting.pieces())
            .mapToDouble(
                piece -> -(energy(piece, 1 + SMALL) - energy(piece, 1 - SMALL)) / (2 * SMALL))
            .sum()
        / structure.members().get(beam * cutting.pieces()).length();
  }

  private double energy(int piece, double factor) {
    Member member = structure.members().get(piece);
    double[][] k = member.under(factor * member.normalForce()).frameStiffness();
    int[] places = structure.places(piece);
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        sum += motions[places[i]] * k[i][j] * motions[places[j]];
      }
    }
    return sum / 2;
  }

  /** The largest compression in a beam at the critical load; zero without any [N]. */
  double compression(int beam) {
    return IntStream.range(beam * cutting.pieces(), (beam + 1) * cutting.pieces())
        .mapToDouble(piece -> -structure.members().get(piece).normalForce())
        .reduce(0, Math::max);
  }

  /** The frame that buckles. */
  Cutting cutting() {
    return cutting;
  }

  /** The larger EI of a beam among those that an action bends, shear strain left out [N·m²]. */
  double rigidity(int beam, Action action) {
    Member member = structure.members().get(beam * cutting.pieces());
    return action.across().stream()
        .mapToDouble(across -> across.bending(member).rigidity())
        .max()
        .orElseThrow();
  }
}
