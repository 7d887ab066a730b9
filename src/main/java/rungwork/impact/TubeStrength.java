package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rungwork.check.Column;
import rungwork.check.ColumnCurve;
import rungwork.check.Step;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.section.Properties;

/**
 * A crush tube at one of its two strengths.
 *
 * @param tube the tube
 * @param yield fy for what begins first [Pa]
 * @param wall t [m]
 * @param offset of the force [m]
 * @param scatter of tests about the formula with the effective length [1]
 * @param flow the steps to σ₀, last
 */
record TubeStrength(
    CrushTube tube, double yield, double wall, double offset, double scatter, List<Step> flow) {
  /** EN 10219-2 lets walls to 5 mm be 10 % off (second-hand). */
  static final double WALL_TOLERANCE = 0.1;

  /**
   * Expected over minimum, tubes: 1.3 to 1.4 of yield, 1.3 of ultimate: AISC 341-16, second-hand.
   */
  static final double EXPECTED_YIELD = 1.4;

  static final double EXPECTED_ULTIMATE = 1.3;

  /** What tests scatter about the formulas: Abramowicz and Jones 1984, from memory. */
  private static final double SCATTER = 0.2;

  /** Largest fold force over the mean where a trigger works: common practice, no source. */
  private static final double PEAK_OVER_MEAN = 2;

  /** A cantilever's effective length over its length. */
  private static final double CANTILEVER = 2;

  static TubeStrength of(CrushTube tube, CrushTube.Strength strength) {
    return strength == CrushTube.Strength.LOW ? low(tube) : high(tube);
  }

  private static TubeStrength low(CrushTube tube) {
    RatedMaterial.Strength least = tube.material().strength();
    Step flow = CrushFormulas.FLOW_STRESS.with(least.weldedYield(), least.ultimate());
    return new TubeStrength(
        tube,
        least.weldedYield(),
        tube.wall() * (1 - WALL_TOLERANCE),
        tube.offset().high(),
        1 - SCATTER,
        List.of(flow));
  }

  private static TubeStrength high(CrushTube tube) {
    RatedMaterial.Strength least = tube.material().strength();
    List<Step> steps = new ArrayList<>();
    double yield = EXPECTED_YIELD * least.yield();
    double ultimate = EXPECTED_ULTIMATE * least.ultimate();
    double first = yield;
    if (tube.speed() > 0) {
      double rate = strainRate(tube);
      Step ofYield = CrushFormulas.RATE_OF_YIELD.with(rate);
      Step ofUltimate = CrushFormulas.RATE_OF_ULTIMATE.with(rate);
      steps.add(ofYield);
      steps.add(ofUltimate);
      yield *= ofYield.result();
      ultimate *= ofUltimate.result();
      first *= CrushFormulas.RATE_OF_YIELD.with(tube.speed() / tube.length()).result();
    }
    steps.add(CrushFormulas.FLOW_STRESS.with(yield, ultimate));
    return new TubeStrength(
        tube, first, tube.wall() * (1 + WALL_TOLERANCE), tube.offset().low(), 1 + SCATTER, steps);
  }

  /** 0.33·v/c with half the speed of the hit: Abramowicz and Jones 1984, from memory [1/s]. */
  private static double strainRate(CrushTube tube) {
    return 0.33 * tube.speed() / 2 / (tube.width() - tube.wall());
  }

  private double flowStress() {
    return flow.get(flow.size() - 1).result();
  }

  private double middle() {
    return tube.width() - wall;
  }

  /** The formula with the effective length of a fold, about which tests scatter. */
  private Step effective() {
    return tube.shape() == CrushTube.Shape.SQUARE
        ? CrushFormulas.SQUARE_EFFECTIVE.with(flowStress(), wall, middle())
        : CrushFormulas.ROUND_EFFECTIVE.with(flowStress(), wall, middle());
  }

  private List<Step> others() {
    if (tube.shape() == CrushTube.Shape.SQUARE) {
      return List.of(CrushFormulas.SQUARE.with(flowStress(), wall, middle()));
    }
    return List.of(
        CrushFormulas.ROUND_ALEXANDER.with(flowStress(), wall, middle()),
        CrushFormulas.ROUND_FITTED.with(middle(), wall, flowStress()));
  }

  private DoubleStream means() {
    double scattered = effective().result() * scatter;
    return DoubleStream.concat(
        DoubleStream.of(scattered), others().stream().mapToDouble(Step::result));
  }

  double leastMean() {
    return means().min().orElseThrow();
  }

  double mostMean() {
    return means().max().orElseThrow();
  }

  private Properties properties() {
    return CrushTube.tube(tube.shape(), tube.width(), wall).properties();
  }

  private Step squashStep() {
    return CrushFormulas.SQUASH.with(properties().area(), yield);
  }

  double squash() {
    return squashStep().result();
  }

  double local() {
    Elasticity elasticity = tube.material().elasticity();
    return properties().area()
        * WallBuckling.stress(tube.shape(), middle() / wall, yield, elasticity);
  }

  double column() {
    Properties p = properties();
    double length = CANTILEVER * tube.length();
    Column column =
        new Column(tube.material().elasticity().youngsModulus(), p.area(), p.iy(), length);
    List<Step> reduction = column.reduction(ColumnCurve.C, yield);
    return reduction.get(reduction.size() - 1).result() * squash();
  }

  private Step hingeStep() {
    Properties p = properties();
    return CrushFormulas.HINGE.with(yield, p.area(), offset, p.wply());
  }

  double hinge() {
    return hingeStep().result();
  }

  double foldingPeak() {
    double peak = PEAK_OVER_MEAN * mostMean();
    return Math.min(peak, Math.min(squash(), local()));
  }

  List<Step> working() {
    List<Step> steps = new ArrayList<>(flow);
    steps.add(effective());
    steps.addAll(others());
    steps.add(squashStep());
    steps.add(hingeStep());
    return steps;
  }
}
