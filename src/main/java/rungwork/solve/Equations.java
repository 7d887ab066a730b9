package rungwork.solve;

import java.util.Arrays;
import rungwork.fault.SolveException;

/** The stiffness equations of one action, factorised. */
final class Equations {
  /** Number of a motion that has no equation: held, or of another action. */
  private static final int NONE = -1;

  private final Structure structure;
  private final Action action;
  private final int[] number;
  private final int count;
  private final BandFactor factor;

  /**
   * Assembles and factorises.
   *
   * @throws SolveException naming a motion that nothing resists
   */
  Equations(Structure structure, Action action) {
    this.structure = structure;
    this.action = action;
    number = new int[structure.motions()];
    count = count();
    factor = new BandFactor(assembled());
    if (factor.isFree()) {
      throw new SolveException(
          new Mechanism(structure, motions(factor.freeMotion())).message(action));
    }
  }

  private int count() {
    Arrays.fill(number, NONE);
    int next = 0;
    for (int node = 0; node < structure.nodes().size(); node++) {
      for (int i = 0; i < action.motionsPerNode(); i++) {
        int motion = 6 * node + action.motion(i);
        if (!structure.held(motion)) {
          number[motion] = next++;
        }
      }
    }
    return next;
  }

  private BandMatrix assembled() {
    int band = structure.members().stream().mapToInt(this::reach).max().orElse(0);
    BandMatrix matrix = new BandMatrix(count, band);
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        matrix.add(number[motion], number[motion], structure.spring(motion));
      }
    }
    structure.members().forEach(member -> add(matrix, member));
    return matrix;
  }

  private void add(BandMatrix matrix, Member member) {
    int[] equations = equations(member);
    double[][] k = member.frameStiffness();
    for (int i = 0; i < equations.length; i++) {
      for (int j = 0; j < equations.length; j++) {
        if (equations[i] != NONE && equations[j] != NONE) {
          matrix.add(equations[i], equations[j], k[i][j]);
        }
      }
    }
  }

  private int[] equations(Member member) {
    return Arrays.stream(structure.places(member)).map(place -> number[place]).toArray();
  }

  private int reach(Member member) {
    int[] used = Arrays.stream(equations(member)).filter(e -> e != NONE).sorted().toArray();
    return used.length == 0 ? 0 : used[used.length - 1] - used[0];
  }

  /** Adds the motions that some forces cause; forces of another action are passed over. */
  void addMotions(double[] forces, Motions motions) {
    double[] values = new double[count];
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        values[number[motion]] = forces[motion];
      }
    }
    factor.solve(values);
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        motions.add(motion, values[number[motion]]);
      }
    }
  }

  private double[] motions(double[] values) {
    double[] motions = new double[number.length];
    for (int motion = 0; motion < number.length; motion++) {
      motions[motion] = number[motion] == NONE ? 0 : values[number[motion]];
    }
    return motions;
  }
}
