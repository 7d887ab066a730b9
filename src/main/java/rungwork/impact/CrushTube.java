package rungwork.impact;

import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;

/**
 * A straight tube that is meant to fold in front of the frame. Its mean force is an average after
 * folding has begun; whether it begins, and does not bend or buckle instead, is a question of its
 * own.
 *
 * @param name what the reader calls it
 * @param shape square or round
 * @param width outside side or diameter [m]
 * @param wall t [m]
 * @param length that can fold [m]
 * @param material what it is made of
 * @param trigger what starts the folds
 * @param offset of the force from its axis [m]
 * @param speed of the hit [m/s], for the strain rate; 0 leaves it out
 */
public record CrushTube(
    String name,
    Shape shape,
    double width,
    double wall,
    double length,
    RatedMaterial material,
    Trigger trigger,
    Range offset,
    double speed)
    implements CrushElement {

  /** The part of its length over which folds can pack: common practice, no source. */
  private static final Range STROKE = new Range(Kind.RATIO, 0.70, 0.75);

  /** Square or round. */
  public enum Shape {
    /** A square tube. */
    SQUARE,
    /** A round tube. */
    ROUND
  }

  /** What starts the folds. */
  public enum Trigger {
    /** Nothing: nobody knows where it begins to give way. */
    NONE,
    /** Cut-outs, beads or a chamfer at the front end. */
    FRONT_END
  }

  /** Which of the two strengths. */
  public enum Strength {
    /** Minimum yield, thin wall, welded zone: for what breaks. */
    LOW,
    /** Expected yield, strain rate, thick wall: for the force that reaches what stands behind. */
    HIGH
  }

  /** Refuses a tube without a bore or a length. */
  public CrushTube {
    name = Guard.name("crush tube", name);
    Guard.positive("length of " + name, length, Scale.MM);
    Guard.notNegative("speed of the hit", speed, new Scale("km/h", 1 / 3.6));
    Guard.notNegative("offset of the force on " + name, offset.low(), Scale.MM);
    tube(shape, width, wall);
  }

  /**
   * A square tube without a trigger, the force up to one wall off its axis.
   *
   * @param name what the reader calls it
   * @param side outside
   * @param wall t
   * @return the tube, still without length and material
   */
  public static Bare square(String name, Quantity<Length> side, Quantity<Length> wall) {
    return new Bare(name, Shape.SQUARE, si("side of " + name, side), si("wall of " + name, wall));
  }

  /**
   * A round tube without a trigger, the force up to one wall off its axis.
   *
   * @param name what the reader calls it
   * @param outside diameter
   * @param wall t
   * @return the tube, still without length and material
   */
  public static Bare round(String name, Quantity<Length> outside, Quantity<Length> wall) {
    return new Bare(
        name, Shape.ROUND, si("diameter of " + name, outside), si("wall of " + name, wall));
  }

  /**
   * A tube that still needs a length and a material.
   *
   * @param name what the reader calls it
   * @param shape square or round
   * @param width outside [m]
   * @param wall t [m]
   */
  public record Bare(String name, Shape shape, double width, double wall) {
    /** Refuses a tube without size. */
    public Bare {
      Guard.positive("size of " + name, width, Scale.MM);
      Guard.positive("wall of " + name, wall, Scale.MM);
    }

    /**
     * Cuts it off.
     *
     * @param length that can fold
     * @param material what it is made of
     * @return the tube
     */
    public CrushTube of(Quantity<Length> length, RatedMaterial material) {
      return new CrushTube(
          name,
          shape,
          width,
          wall,
          si("length of " + name, length),
          material,
          Trigger.NONE,
          new Range(Kind.LENGTH, 0, wall),
          0);
    }
  }

  /**
   * The same tube with cut-outs, beads or a chamfer at its front end.
   *
   * @return the tube
   */
  public CrushTube triggered() {
    return with(length, Trigger.FRONT_END, offset, speed);
  }

  /**
   * The same tube hit off its axis.
   *
   * @param low the least offset
   * @param high the most
   * @return the tube
   */
  public CrushTube offset(Quantity<Length> low, Quantity<Length> high) {
    Range off = new Range(Kind.LENGTH, si("least offset", low), si("most offset", high));
    return with(length, trigger, off, speed);
  }

  /**
   * The same tube hit at a speed, so that the high strength knows its strain rate.
   *
   * @param hit the closing speed
   * @return the tube
   */
  @Override
  public CrushTube hitAt(Quantity<Speed> hit) {
    return with(length, trigger, offset, si("speed of the hit", hit));
  }

  /**
   * The same tube of another length.
   *
   * @param other the length
   * @return the tube
   */
  public CrushTube length(Quantity<Length> other) {
    return with(si("length of " + name, other), trigger, offset, speed);
  }

  private CrushTube with(double metres, Trigger how, Range off, double hit) {
    return new CrushTube(name, shape, width, wall, metres, material, how, off, hit);
  }

  static Section tube(Shape shape, double width, double wall) {
    return shape == Shape.SQUARE
        ? Section.squareTube(mm(width * 1e3), mm(wall * 1e3))
        : Section.roundTube(mm(width * 1e3), mm(wall * 1e3));
  }

  /**
   * Its section at nominal size.
   *
   * @return the tube's section
   */
  public Section section() {
    return tube(shape, width, wall);
  }

  /**
   * What it weighs.
   *
   * @return [kg]
   */
  @Override
  public double mass() {
    return section().properties().area() * length * material.elasticity().density();
  }

  TubeStrength at(Strength strength) {
    return TubeStrength.of(this, strength);
  }

  /**
   * The mean force over many folds: the published formulas at both strengths, with ±20 % scatter
   * about the one with the effective length of a fold.
   *
   * @return Pm [N]
   */
  public Range meanForce() {
    return new Range(Kind.FORCE, at(Strength.LOW).leastMean(), at(Strength.HIGH).mostMean());
  }

  /**
   * The highest force that folding may need: twice the mean at the high strength where a trigger
   * works (common practice, no source), never more than what starts it without one.
   *
   * @return at both strengths [N]
   */
  @Override
  public Range foldingPeak() {
    return new Range(Kind.FORCE, at(Strength.LOW).foldingPeak(), at(Strength.HIGH).foldingPeak());
  }

  /**
   * What it may shorten by before it is solid.
   *
   * @return [m]
   */
  public Range stroke() {
    return new Range(Kind.LENGTH, STROKE.low() * length, STROKE.high() * length);
  }

  /**
   * What it may take: mean force times stroke.
   *
   * @return [J]
   */
  public Range energy() {
    return new Range(
        Kind.ENERGY, meanForce().low() * stroke().low(), meanForce().high() * stroke().high());
  }

  /**
   * A way in which it may begin to give way.
   *
   * @param what such as {@code column buckling}
   * @param force at low and at high strength [N]
   */
  public record Initiation(String what, Range force) {}

  /**
   * All ways in which it may begin to give way without a trigger.
   *
   * @return squash, local buckling, column buckling, hinge
   */
  public List<Initiation> initiations() {
    return beginning().ways();
  }

  private TubeBeginning beginning() {
    return new TubeBeginning(at(Strength.LOW), at(Strength.HIGH));
  }

  /**
   * What begins first at a strength.
   *
   * @param strength low or high
   * @return the lowest of all ways
   */
  public Initiation first(Strength strength) {
    return beginning().first(strength);
  }

  /**
   * Why stable folding is not assumed, if so.
   *
   * @param units the reader's units
   * @return the reason; nothing when trigger, column and hinge allow it
   */
  @Override
  public Optional<String> noStableFolding(Units units) {
    return trigger == Trigger.NONE
        ? Optional.of(beginning().unknown(units))
        : beginning().beforeFolding(units);
  }

  /**
   * Its force over crush at a strength: the mean force to the end of its stroke, then solid. The
   * first peak is no part of it.
   *
   * @param strength low or high
   * @return the curve
   */
  @Override
  public CrushCurve curve(Strength strength) {
    noStableFolding(Units.METRIC)
        .ifPresent(
            why -> {
              throw new ModelException(name + ": " + why + "; so there is no curve for it");
            });
    TubeStrength at = at(strength);
    double mean = strength == Strength.LOW ? at.leastMean() : at.mostMean();
    double stroke = strength == Strength.LOW ? stroke().low() : stroke().high();
    double solid = 10 * section().properties().area() * material.strength().ultimate();
    return new CrushCurve(
        name,
        List.of(
            new CrushCurve.Point(0, 0, ""),
            new CrushCurve.Point(0.02 * length, mean, "folds"),
            new CrushCurve.Point(stroke, mean * 1.001, USED_UP),
            new CrushCurve.Point(stroke + 0.03 * length, Math.max(2 * mean, solid), "solid")),
        Math.max(2 * mean, solid) / (0.02 * length));
  }

  /**
   * The formulas with their numbers, at both strengths.
   *
   * @return the steps in order
   */
  public List<Step> working() {
    List<Step> steps = new ArrayList<>(at(Strength.LOW).working());
    steps.addAll(at(Strength.HIGH).working());
    return steps;
  }

  /**
   * Where it is outside what the formulas were tested on.
   *
   * @return sentences; none when it is inside
   */
  @Override
  public List<String> outsideTests() {
    return new TubeWords(this).outsideTests();
  }

  /**
   * What was assumed.
   *
   * @param units the reader's units
   * @return sentences
   */
  @Override
  public List<String> assumptions(Units units) {
    return new TubeWords(this).assumptions(units);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + section().name()
        + ", "
        + Scale.MM.show(length, 3)
        + " long, mean folding force "
        + meanForce()
        + "; "
        + noStableFolding(Units.METRIC).orElse("folding may be assumed for comparison");
  }
}
