package rungwork.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;

/**
 * Whether a compressed wall buckles before it yields: width-to-thickness against the class 3 limit
 * of EN 1993-1-1:2005, table 5.2, that of AISC 360 beside it. A flat wall beyond it counts with its
 * effective width. Flat walls with the stresses at their edges where they are compressed most;
 * round tubes as if compressed uniformly, which is on the safe side.
 */
final class WallSlenderness implements Question {
  static final String WHAT = "wall slenderness";

  private static final String SOURCE = "EN 1993-1-1:2005, table 5.2";

  @Override
  public String what() {
    return WHAT;
  }

  @Override
  public LimitState limitState() {
    return LimitState.PROPORTION;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return worst(member).isPresent();
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    Optional<String> outside = SteelRange.of(material);
    if (outside.isPresent()) {
      return List.of(Finding.notChecked(what(), outside.get(), SOURCE));
    }
    return worst(member).stream().map(wall -> finding(wall, material)).toList();
  }

  private Finding finding(CompressedWall wall, RatedMaterial material) {
    List<Step> working = new ArrayList<>(wall.working(material.strength().yield()));
    double limit = working.get(working.size() - 1).result();
    working.add(american(wall, material));
    String where = wall.wall().name() + " " + wall.cut().place();
    if (wall.ratio() > limit) {
      return classFour(wall, material.strength().yield(), where, working);
    }
    return new Finding(
        what(),
        where + ": " + wall.classInCompression(material.strength().yield()),
        new Measured(wall.ratio(), limit, Kind.RATIO),
        working,
        SOURCE);
  }

  /** The limit for bending where the member does nothing but bend, else that for compression. */
  private static Step american(CompressedWall wall, RatedMaterial material) {
    double e = material.elasticity().youngsModulus();
    double yield = material.strength().yield();
    double axial = Math.abs(wall.cut().forces().n()) / wall.cut().section().properties().area();
    return axial < LoadedMember.NEGLIGIBLE_STRAIN * e
        ? AmericanLimits.flexure(wall.wall().edge(), wall.psi(), e, yield)
        : AmericanLimits.compression(wall.wall().edge(), e, yield);
  }

  /** A flat wall counts with its effective width; a round one has no such rule here. */
  private Finding classFour(
      CompressedWall wall, double yield, String where, List<Step> upToItsLimit) {
    if (!EffectiveWidth.asked(wall, yield)) {
      String reason =
          wall.wall().name()
              + " is of class 4: it buckles before it yields; EN 1993-1-6 is for such round tubes"
              + " and is not worked out here";
      return new Finding(what(), where, new NotChecked(reason), upToItsLimit, SOURCE);
    }
    EffectiveWidth effective = new EffectiveWidth(wall, yield);
    List<Step> working = new ArrayList<>(upToItsLimit);
    working.addAll(effective.working());
    return new Finding(
        what(),
        where + ": class 4, its strength counted with effective widths",
        new Measured(wall.ratio(), effective.widest(), Kind.RATIO),
        working,
        SOURCE + "; EN 1993-1-5:2006, 4.4; range of EN 1993-1-3:2006, table 5.1");
  }

  /** The wall that is nearest to its limit; nothing where none is compressed. */
  private static Optional<CompressedWall> worst(LoadedMember member) {
    return member.stock().section().walls().stream()
        .map(wall -> CompressedWall.of(wall, member.cuts()))
        .filter(wall -> wall.stress() > member.negligibleStress())
        .max(Comparator.comparingDouble(CompressedWall::use));
  }
}
