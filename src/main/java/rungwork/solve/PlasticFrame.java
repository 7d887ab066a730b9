package rungwork.solve;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;

/**
 * A frame whose beams yield at their ends, and its stiffness as it is now: all six motions of a
 * node together, since yielding couples the two actions.
 */
final class PlasticFrame {
  private static final int NONE = -1;

  /** A motion that meets less than this part of the elastic resistance is free: rounding [1]. */
  private static final double FREE = 1e-10;

  private final Structure structure;
  private final List<PlasticMember> members;
  private final int[] number;
  private final BandFactor factor;
  private final double[] elastic;

  PlasticFrame(Structure structure, Function<Beam, YieldSurface> surfaces) {
    this.structure = structure;
    members =
        structure.members().stream()
            .map(member -> new PlasticMember(member, surfaces.apply(member.beam())))
            .toList();
    number = new int[structure.motions()];
    int count = count();
    int band = IntStream.range(0, members.size()).map(this::reach).max().orElse(0);
    factor = new BandFactor(new BandMatrix(count, band));
    assemble();
    elastic = new double[count];
    for (int i = 0; i < count; i++) {
      elastic[i] = factor.matrix().columns()[i * (band + 1)];
    }
  }

  private int count() {
    int next = 0;
    for (int node : structure.order()) {
      for (int motion = 6 * node; motion < 6 * node + 6; motion++) {
        number[motion] = structure.held(motion) ? NONE : next++;
      }
    }
    return next;
  }

  private int reach(int member) {
    int[] used =
        IntStream.of(structure.places(member))
            .map(place -> number[place])
            .filter(n -> n != NONE)
            .sorted()
            .toArray();
    return used.length == 0 ? 0 : used[used.length - 1] - used[0];
  }

  private void assemble() {
    BandMatrix matrix = factor.matrix();
    matrix.clear();
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        matrix.add(number[motion], number[motion], structure.spring(motion));
      }
    }
    for (int member = 0; member < members.size(); member++) {
      add(matrix, structure.places(member), members.get(member).frameStiffness());
    }
  }

  private void add(BandMatrix matrix, int[] places, double[][] k) {
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        if (number[places[i]] != NONE && number[places[j]] != NONE) {
          matrix.add(number[places[i]], number[places[j]], k[i][j]);
        }
      }
    }
  }

  Structure structure() {
    return structure;
  }

  List<PlasticMember> members() {
    return members;
  }

  /** How the nodes move for a unit of the load; or, where the frame gives way, how that goes. */
  Answer answer(double[] load) {
    assemble();
    if (!factor.factorise(elastic, FREE)) {
      return new Answer(onAllPlaces(factor.freeMotion()), true);
    }
    double[] values = new double[elastic.length];
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        values[number[motion]] = load[motion];
      }
    }
    factor.solve(values);
    return new Answer(onAllPlaces(values), false);
  }

  private double[] onAllPlaces(double[] values) {
    double[] motions = new double[number.length];
    for (int motion = 0; motion < number.length; motion++) {
      motions[motion] = number[motion] == NONE ? 0 : values[number[motion]];
    }
    return motions;
  }

  /** Refuses a frame that moves before anything has yielded. */
  void refuseMechanism(Answer answer) {
    if (answer.free()) {
      throw new SolveException(
          "the frame is a mechanism before anything yields: "
              + new Mechanism(structure, answer.motions()).place());
    }
  }

  /**
   * Motions.
   *
   * @param motions of all nodes, in frame axes
   * @param free whether nothing resists them
   */
  record Answer(double[] motions, boolean free) {}
}
