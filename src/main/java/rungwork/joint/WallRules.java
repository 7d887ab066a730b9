package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.fault.Scale;

/**
 * Which rule fits a plate on a tube, and whether it covers it: EN 1993-1-8:2005, table 7.8 and the
 * ranges of tables 7.13 and 7.14 (from memory).
 *
 * @param joint the plate on its tube
 * @param gamma the design factor [1]
 */
record WallRules(PlateOnTube joint, double gamma) {
  private static final double SLENDER = 35;
  private static final double THINNEST = 0.0025;

  static WallRules of(PlateOnTube joint, double gamma) {
    return new WallRules(joint, gamma);
  }

  /** The three uses of the face at once. */
  static Finding together(List<Finding> findings) {
    double[] shares = new double[] {0, 0, 0};
    List<Step> working = new ArrayList<>();
    List<Reason> outside = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      shares[i] = findings.get(i).utilisation();
      working.addAll(findings.get(i).working());
      outside.addAll(findings.get(i).outside());
    }
    return Finding.ratio(WallFormulas.SUM.with(shares))
        .after(working)
        .outside(outside.stream().distinct().toList());
  }

  Step punching() {
    Formula formula = patch() ? WallFormulas.PATCH_PUNCHING : WallFormulas.PUNCHING;
    return formula.with(wall(), strength(), gamma);
  }

  Step shear() {
    return WallFormulas.SHEAR.with(joint.foot().length(), wall(), strength(), gamma);
  }

  Finding pull(Step demand) {
    Step reduction = reduction();
    return Finding.compare(demand, pullCapacity(reduction.result()))
        .after(share(), reduction)
        .outside(range());
  }

  Optional<Finding> secondPull(Step demand) {
    PlateOnTube.Way way = joint.foot().way();
    if (way != PlateOnTube.Way.LONGITUDINAL && way != PlateOnTube.Way.THROUGH) {
      return Optional.empty();
    }
    double faces = way == PlateOnTube.Way.THROUGH ? 2 : 1;
    double use = Math.max(0, share().result());
    Step capacity =
        WallFormulas.AMERICAN.with(
            faces, strength(), wall(), along(), across(), width(), use, gamma);
    return Optional.of(Finding.compare(demand, capacity).after(share()));
  }

  /** A plate across the tube is held stiffly at the side walls and hardly between. */
  Optional<Finding> uneven(Step demand) {
    Step capacity = WallFormulas.UNEVEN.with(strength(), wall(), across(), width(), gamma);
    return transverse()
        ? Optional.of(Finding.compare(demand, capacity).outside(range()))
        : Optional.empty();
  }

  /** A foot as wide as the tube stands on its side walls. */
  Optional<Finding> sideWalls(Step demand) {
    boolean wide = across() >= (width() - 2 * wall()) * (1 - Rounding.TOLERANCE);
    if (!wide || !transverse() && !patch()) {
      return Optional.empty();
    }
    return Optional.of(transverse() ? crushing(demand) : buckling(demand));
  }

  private Finding crushing(Step demand) {
    Step reduction = reduction();
    Step capacity =
        WallFormulas.SIDE_WALL.with(reduction.result(), strength(), wall(), along(), gamma);
    return Finding.compare(demand, capacity).after(share(), reduction).outside(range());
  }

  private Finding buckling(Step demand) {
    Step reduction = reduction();
    double modulus = joint.tube().material().elasticity().youngsModulus();
    Step slenderness =
        WallFormulas.WALL_SLENDERNESS.with(joint.tube().depth(), wall(), modulus, strength());
    List<Step> strut = Buckling.reduction(slenderness.result());
    Step capacity =
        WallFormulas.WIDE_PATCH.with(
            reduction.result(), strut.get(1).result(), strength(), wall(), along(), gamma);
    return Finding.compare(demand, capacity)
        .after(strut)
        .after(share(), reduction, slenderness)
        .outside(tubeRange());
  }

  Finding tipping(Step demand) {
    Step reduction = reduction();
    if (transverse()) {
      Step pull = pullCapacity(reduction.result());
      List<Reason> outside = new ArrayList<>(range());
      outside.add(outside("table 7.13 gives no moment for a transverse plate"));
      return Finding.compare(demand, WallFormulas.HALF_LENGTH.with(across(), pull.result()))
          .after(share(), reduction, pull)
          .outside(outside);
    }
    return Finding.compare(demand, moment(WallFormulas.TIPPING, reduction.result()))
        .after(share(), reduction)
        .outside(momentRange());
  }

  Optional<Finding> rocking(Step demand) {
    if (!patch()) {
      return Optional.empty();
    }
    Step reduction = reduction();
    return Optional.of(
        Finding.compare(demand, moment(WallFormulas.ROCKING, reduction.result()))
            .after(share(), reduction)
            .outside(momentRange()));
  }

  private Step moment(Formula formula, double reduction) {
    return formula.with(reduction, strength(), wall(), along(), width(), narrow(), gamma);
  }

  private Step pullCapacity(double k) {
    return switch (joint.foot().way()) {
      case LONGITUDINAL ->
          WallFormulas.LONGITUDINAL.with(k, strength(), wall(), along(), across(), width(), gamma);
      case THROUGH ->
          WallFormulas.THROUGH.with(k, strength(), wall(), along(), across(), width(), gamma);
      case TRANSVERSE ->
          WallFormulas.TRANSVERSE.with(k, strength(), wall(), across(), width(), gamma);
      case PATCH ->
          WallFormulas.PATCH.with(k, strength(), wall(), along(), narrow(), width(), gamma);
    };
  }

  private boolean patch() {
    return joint.foot().way() == PlateOnTube.Way.PATCH;
  }

  private boolean transverse() {
    return joint.foot().way() == PlateOnTube.Way.TRANSVERSE;
  }

  private Step share() {
    return WallFormulas.SHARE.with(joint.chordStress(), strength());
  }

  private Step reduction() {
    return patch()
        ? WallFormulas.KN.with(share().result(), width(), across())
        : WallFormulas.KM.with(share().result());
  }

  private List<Reason> range() {
    List<Reason> reasons = new ArrayList<>(tubeRange());
    double beta = across() / width();
    Range range = Range.of(joint.foot().way());
    if (beta < range.least() * (1 - Rounding.TOLERANCE)
        || beta > range.most() * (1 + Rounding.TOLERANCE)) {
      reasons.add(
          outside(
              "the foot covers "
                  + Scale.NUMBER.number(beta, 3)
                  + " of the face's width, not "
                  + range));
    }
    return reasons;
  }

  private List<Reason> tubeRange() {
    List<Reason> reasons = new ArrayList<>();
    double slender = Math.max(width(), joint.tube().depth()) / wall();
    if (slender > SLENDER * (1 + Rounding.TOLERANCE)) {
      reasons.add(outside("side over wall " + Scale.NUMBER.show(slender) + " is over 35"));
    }
    if (wall() < THINNEST * (1 - Rounding.TOLERANCE)) {
      reasons.add(outside("wall {} is under {}", Amount.length(wall()), Amount.length(THINNEST)));
    }
    return reasons;
  }

  private List<Reason> momentRange() {
    List<Reason> reasons = new ArrayList<>(range());
    if (across() < 0.25 * width() * (1 - Rounding.TOLERANCE)) {
      reasons.add(outside("table 7.14 is for feet that cover a quarter of the face's width"));
    }
    return reasons;
  }

  private static Reason outside(String reason, Amount... amounts) {
    return Reason.of("outside EN 1993-1-8: " + reason, amounts);
  }

  private double strength() {
    return joint.tube().material().strength().weldedYield();
  }

  private double wall() {
    return joint.tube().wall();
  }

  private double width() {
    return joint.tube().width();
  }

  private double along() {
    return joint.foot().along();
  }

  private double across() {
    return joint.foot().across();
  }

  /** A patch that covers the whole face has no yield line; the rule ends at 0.85 of it. */
  private double narrow() {
    return Math.min(across(), Range.of(PlateOnTube.Way.PATCH).most() * width());
  }

  /**
   * The share of the face's width that a foot may cover.
   *
   * @param least of it [1]
   * @param most of it [1]
   */
  private record Range(double least, double most) {
    static Range of(PlateOnTube.Way way) {
      return switch (way) {
        case LONGITUDINAL, THROUGH -> new Range(0, 0.2);
        case TRANSVERSE -> new Range(0.4, 1);
        case PATCH -> new Range(0.25, 0.85);
      };
    }

    @Override
    public String toString() {
      return Scale.NUMBER.number(least, 2) + " to " + Scale.NUMBER.number(most, 2);
    }
  }
}
