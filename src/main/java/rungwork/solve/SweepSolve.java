package rungwork.solve;

import java.util.Arrays;
import java.util.Locale;
import rungwork.fault.SolveException;

/**
 * One action of a frame in a sweep: fills the band matrix, factorises it, solves all load cases
 * side by side and finds the forces of the beams' deformations. Allocates nothing. This is one of
 * the room's inner loops: an unknown's values in all cases of a block lie together.
 */
final class SweepSolve {
  private static final int CASES = SweepLoads.CASES;

  private final SweepPlan plan;
  private final SweepPlan.Part part;
  private final SweepLoads loads;
  private final double[] equations;
  private final BandFactor factor;
  private final double[] columns;
  private final double[] reference;
  private final double[] values;
  private final double[] rest;

  SweepSolve(SweepPlan plan, int action, SweepLoads loads) {
    this.plan = plan;
    this.loads = loads;
    part = plan.parts.get(action);
    equations = loads.equations[action];
    BandMatrix matrix = new BandMatrix(part.size, part.band);
    factor = new BandFactor(matrix);
    columns = matrix.columns();
    reference = new double[part.size];
    values = new double[part.size * CASES];
    rest = new double[part.size * CASES];
  }

  /**
   * Solves.
   *
   * @param rigidities EA, GJ, EIz and EIy of each beam
   * @param forces of each beam's six deformations in all cases; those of this action are replaced
   * @throws SolveException when a motion meets no resistance, or a load is left out of balance
   */
  void solve(double[] rigidities, double[] forces) {
    fill(rigidities);
    if (!factor.factorise(reference, BandFactor.UNRESISTED)) {
      throw new SolveException("with these stocks the frame is a mechanism");
    }
    for (int block = 0; block < loads.blocks(); block++) {
      System.arraycopy(equations, block * values.length, values, 0, values.length);
      factor.solveCases(values);
      recover(rigidities, forces, block);
      balance(forces, block);
      if (plan.structure.isFree()) {
        refine(rigidities, forces, block);
      }
      refuseRest(block);
    }
  }

  /** Solves once more for what is out of balance: a free frame is soft where it is held. */
  private void refine(double[] rigidities, double[] forces, int block) {
    factor.solveCases(rest);
    for (int i = 0; i < values.length; i++) {
      values[i] -= rest[i];
    }
    recover(rigidities, forces, block);
    balance(forces, block);
  }

  private void fill(double[] rigidities) {
    Arrays.fill(columns, 0);
    int[] place = part.entryPlace;
    int[] rigidity = part.entryRigidity;
    double[] factors = part.entryFactor;
    for (int i = 0; i < place.length; i++) {
      columns[place[i]] += factors[i] * rigidities[rigidity[i]];
    }
    for (int i = 0; i < part.size; i++) {
      columns[i * (part.band + 1)] += part.springs[i];
      reference[i] = columns[i * (part.band + 1)];
    }
  }

  /** s = k·B·u + what the loads clamp, for each deformation and case. */
  private void recover(double[] rigidities, double[] forces, int block) {
    int width = loads.width;
    for (int row = 0; row < part.rowOf.length; row++) {
      double rigidity = rigidities[part.rowRigidity[row]];
      double s0 = 0;
      double s1 = 0;
      double s2 = 0;
      double s3 = 0;
      double s4 = 0;
      double s5 = 0;
      double s6 = 0;
      double s7 = 0;
      for (int k = part.rowStart[row]; k < part.rowStart[row + 1]; k++) {
        double f = part.rowFactor[k] * rigidity;
        int at = part.rowEquation[k] * CASES;
        s0 += f * values[at];
        s1 += f * values[at + 1];
        s2 += f * values[at + 2];
        s3 += f * values[at + 3];
        s4 += f * values[at + 4];
        s5 += f * values[at + 5];
        s6 += f * values[at + 6];
        s7 += f * values[at + 7];
      }
      int deformation = part.rowOf[row];
      int to = deformation * width + block * CASES;
      double[] held = loads.held[deformation / Member.DEFORMATIONS];
      int from = deformation % Member.DEFORMATIONS * width + block * CASES;
      forces[to] = held[from] + s0;
      forces[to + 1] = held[from + 1] + s1;
      forces[to + 2] = held[from + 2] + s2;
      forces[to + 3] = held[from + 3] + s3;
      forces[to + 4] = held[from + 4] + s4;
      forces[to + 5] = held[from + 5] + s5;
      forces[to + 6] = held[from + 6] + s6;
      forces[to + 7] = held[from + 7] + s7;
    }
  }

  /** B·s + springs less the loads: what is out of balance, moments over the frame's size. */
  private void balance(double[] forces, int block) {
    for (int i = 0; i < values.length; i++) {
      rest[i] = part.springs[i / CASES] * values[i] - equations[block * values.length + i];
    }
    int width = loads.width;
    for (int row = 0; row < part.rowOf.length; row++) {
      int deformation = part.rowOf[row];
      int to = deformation * width + block * CASES;
      double[] held = loads.held[deformation / Member.DEFORMATIONS];
      int from = deformation % Member.DEFORMATIONS * width + block * CASES;
      for (int k = part.rowStart[row]; k < part.rowStart[row + 1]; k++) {
        double turn = part.rowTurn[k];
        int at = part.rowEquation[k] * CASES;
        for (int c = 0; c < CASES; c++) {
          rest[at + c] += turn * (forces[to + c] - held[from + c]);
        }
      }
    }
  }

  /** Loads times motions in a load case of the last block. */
  double work(int loadCase) {
    double work = 0;
    for (int i = loadCase; i < values.length; i += CASES) {
      work += equations[i] * values[i];
    }
    return work;
  }

  private void refuseRest(int block) {
    for (int i = 0; i < rest.length; i++) {
      int loadCase = block * CASES + i % CASES;
      double most = loadCase < loads.sizes.length ? loads.sizes[loadCase] : 0;
      if (!(Math.abs(rest[i]) * part.scale[i / CASES] <= FirstOrder.LARGEST_RESIDUAL * most)) {
        throw new SolveException(
            String.format(
                Locale.ROOT,
                "load case %s leaves more than %.0e of its load out of balance with these stocks",
                plan.name(loads, loadCase),
                FirstOrder.LARGEST_RESIDUAL));
      }
    }
  }
}
