package rungwork.vehicle;

import java.util.List;
import rungwork.frame.Stock;
import rungwork.solve.Sweep;

/**
 * A {@link TwistRig} for many stocks: the stiffness from the work of its couple, K = T²/(F·u),
 * since the stands do not move.
 */
final class TwistSweep {
  private final Sweep sweep;

  TwistSweep(TwistRig rig) {
    sweep = Sweep.of(rig.frame(Joints.RIGID), List.of(rig.twist()));
  }

  Bench bench() {
    return new Bench();
  }

  /** For one thread. */
  final class Bench {
    private final Sweep.Workspace workspace = sweep.workspace();

    /** K [N·m/rad] with a stock for each group of beams. */
    double stiffness(Stock[] stocks, int[] groupOf) {
      for (int beam = 0; beam < groupOf.length; beam++) {
        workspace.stock(beam, stocks[groupOf[beam]]);
      }
      workspace.solve();
      return TwistRig.COUPLE * TwistRig.COUPLE / workspace.work(0);
    }
  }
}
