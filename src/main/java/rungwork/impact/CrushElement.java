package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** Something that crushes in front of a rail tip: computed from its size, or measured. */
public sealed interface CrushElement permits CrushTube, CrushElement.Measured {
  /** What a curve's point is called at which nothing is left to crush. */
  String USED_UP = "used up";

  /**
   * What the reader calls it.
   *
   * @return its name
   */
  String name();

  /**
   * Across the vehicle.
   *
   * @return [m]
   */
  double width();

  /**
   * What it weighs.
   *
   * @return [kg]
   */
  double mass();

  /**
   * Its force over crush at a strength.
   *
   * @param strength low or high
   * @return the curve, with a point {@link #USED_UP}
   */
  CrushCurve curve(CrushTube.Strength strength);

  /**
   * The highest force until it is used up.
   *
   * @return at both strengths [N]
   */
  Range foldingPeak();

  /**
   * The same element hit at a speed.
   *
   * @param hit the closing speed
   * @return the element
   */
  CrushElement hitAt(Quantity<Speed> hit);

  /**
   * Why its crush is not to be counted on, if so.
   *
   * @param units the reader's units
   * @return the reason; nothing when there is none
   */
  Optional<String> noStableFolding(Units units);

  /**
   * Where it is outside what its figures were tested on.
   *
   * @return sentences; none when it is inside
   */
  List<String> outsideTests();

  /**
   * What was assumed.
   *
   * @param units the reader's units
   * @return sentences
   */
  List<String> assumptions(Units units);

  /**
   * An element whose force over crush somebody measured.
   *
   * @param name what the reader calls it
   * @param width across the vehicle [m]
   * @param mass [kg]
   * @param low the lowest of what was measured
   * @param high the highest
   * @param source who measured it, how, how often
   */
  record Measured(
      String name, double width, double mass, CrushCurve low, CrushCurve high, String source)
      implements CrushElement {
    /** Refuses curves that do not say where they are used up, and figures without a source. */
    public Measured {
      name = Guard.name("crush element", name);
      source = Guard.name("source of crush element " + name, source);
      Guard.positive("width of " + name, width, Scale.MM);
      Guard.positive("mass of " + name, mass, Scale.KG);
      peak(low);
      peak(high);
    }

    private static double peak(CrushCurve curve) {
      double peak = 0;
      for (CrushCurve.Point point : curve.points()) {
        peak = Math.max(peak, point.force());
        if (point.label().equals(USED_UP)) {
          return peak;
        }
      }
      throw new ModelException(
          "crush curve "
              + curve.name()
              + " does not say where it is used up; label that point \"used up\" and go on to where"
              + " it is solid");
    }

    @Override
    public CrushCurve curve(CrushTube.Strength strength) {
      return strength == CrushTube.Strength.LOW ? low : high;
    }

    @Override
    public Range foldingPeak() {
      return new Range(Kind.FORCE, peak(low), peak(high));
    }

    @Override
    public CrushElement hitAt(Quantity<Speed> hit) {
      return this;
    }

    @Override
    public Optional<String> noStableFolding(Units units) {
      return Optional.empty();
    }

    @Override
    public List<String> outsideTests() {
      return List.of();
    }

    @Override
    public List<String> assumptions(Units units) {
      return List.of(
          "Force of "
              + name
              + ": "
              + source
              + "; at the speed of its test, not at that of the hit.");
    }
  }

  /**
   * An element that was tested.
   *
   * @param name what the reader calls it
   * @param width across the vehicle
   * @param mass of it
   * @return the element, still without its curves
   */
  static Tested measured(String name, Quantity<Length> width, Quantity<Mass> mass) {
    return new Tested(name, si("width of " + name, width), si("mass of " + name, mass));
  }

  /**
   * A tested element whose curves are still to be given.
   *
   * @param name what the reader calls it
   * @param width [m]
   * @param mass [kg]
   */
  record Tested(String name, double width, double mass) {
    /** Refuses what is no number. */
    public Tested {
      Guard.positive("width of " + name, width, Scale.MM);
      Guard.notNegative("mass of " + name, mass, Scale.KG);
    }

    /**
     * Gives the curves.
     *
     * @param low the lowest of what was measured
     * @param high the highest
     * @param source who measured it, how, how often
     * @return the element
     */
    public Measured between(CrushCurve low, CrushCurve high, String source) {
      return new Measured(name, width, mass, low, high, source);
    }
  }
}
