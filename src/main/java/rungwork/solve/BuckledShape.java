package rungwork.solve;

import java.util.stream.IntStream;

/** How a frame looks when it buckles: the motions of its nodes and of the cuts of its beams. */
final class BuckledShape {
  /** Change of the normal force by which its work is told from the stiffness [1]. */
  private static final double SMALL = 1e-4;

  private final Structure structure;
  private final MovedShape shape;

  /**
   * A shape.
   *
   * @param cutting the frame's pieces
   * @param structure the pieces under their critical normal forces
   * @param motions of all nodes of the pieces; their largest move becomes 1
   */
  BuckledShape(Cutting cutting, Structure structure, double[] motions) {
    this.structure = structure;
    shape = new MovedShape(cutting, structure, motions);
  }

  /** How it looks. */
  MovedShape moves() {
    return shape;
  }

  /**
   * What the normal force in a beam does to further the buckling, per metre: ½|N|∫w′²dx/L, below
   * zero in tension. The energy of a beam under given motions of its nodes changes with the normal
   * force by ½∫w′²dx.
   */
  double work(int beam) {
    return IntStream.range(beam * pieces(), (beam + 1) * pieces())
            .mapToDouble(
                piece -> -(energy(piece, 1 + SMALL) - energy(piece, 1 - SMALL)) / (2 * SMALL))
            .sum()
        / (pieces() * structure.members().get(beam * pieces()).length());
  }

  private int pieces() {
    return shape.cutting().pieces();
  }

  private double energy(int piece, double factor) {
    Member member = structure.members().get(piece);
    double[][] k = member.under(factor * member.normalForce()).frameStiffness();
    int[] places = structure.places(piece);
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        sum += shape.motion(places[i]) * k[i][j] * shape.motion(places[j]);
      }
    }
    return sum / 2;
  }

  /** The largest compression in a beam at the critical load; zero without any [N]. */
  double compression(int beam) {
    return IntStream.range(beam * pieces(), (beam + 1) * pieces())
        .mapToDouble(piece -> -structure.members().get(piece).normalForce())
        .reduce(0, Math::max);
  }

  /** The larger EI of a beam among those that an action bends, shear strain left out [N·m²]. */
  double rigidity(int beam, Action action) {
    Member member = structure.members().get(beam * pieces());
    return action.across().stream()
        .mapToDouble(across -> across.bending(member).rigidity())
        .max()
        .orElseThrow();
  }
}
