package rungwork.loadpath;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.joint.Bracket;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.FatigueScreening;
import rungwork.joint.FatigueScreening.Detail;
import rungwork.joint.FatigueScreening.Swings;
import rungwork.joint.Joint;
import rungwork.joint.WeldGroup;

/**
 * Repeated load on the welds of a mount over a stated use: for each swing the largest stress range
 * of all ways in which a thrust may be shared, at the toe and at the root, added up by Miner's
 * rule.
 *
 * @param chain the mount
 * @param year the swings
 * @param gammaMf what a detail's class is divided by [1]
 */
record Repeated(MountChain chain, List<MountChain.Swing> year, double gammaMf) {
  /** A stress range between two loads. */
  @FunctionalInterface
  private interface Range {
    double between(FaceLoad from, FaceLoad to);
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (Joint part : chain.parts()) {
      if (part instanceof WeldGroup weld) {
        checks.add(screened(weld.name(), Detail.FILLET_TOE, weld::toeRange));
        if (weld.seam().kind() == WeldGroup.Kind.FILLET) {
          checks.add(screened(weld.name(), Detail.FILLET_ROOT, weld::rootRange));
        }
      }
      if (part instanceof Bracket bracket) {
        String name = bracket.name() + " weld";
        checks.add(screened(name, Detail.FILLET_TOE, bracket::toeRange));
        checks.add(screened(name, Detail.FILLET_ROOT, bracket::rootRange));
      }
    }
    return checks;
  }

  private Check screened(String part, Detail detail, Range range) {
    List<Swings> swings =
        year.stream()
            .map(swing -> new Swings(swing.event(), worst(swing, range), swing.count()))
            .toList();
    return new FatigueScreening(part, detail, swings, gammaMf).check();
  }

  /** A thrust does not move from one pivot to the other within a swing. */
  private double worst(MountChain.Swing swing, Range range) {
    List<FaceLoad> from = loads(swing.from());
    List<FaceLoad> to = loads(swing.to());
    double worst = 0;
    for (int i = 0; i < Math.max(from.size(), to.size()); i++) {
      FaceLoad start = from.get(Math.min(i, from.size() - 1));
      FaceLoad end = to.get(Math.min(i, to.size() - 1));
      worst = Math.max(worst, range.between(start, end));
    }
    return worst;
  }

  private List<FaceLoad> loads(CornerForces forces) {
    return forces.on(chain.mount()).stream()
        .map(force -> chain.face().load(force, Factors.UNFACTORED))
        .toList();
  }
}
