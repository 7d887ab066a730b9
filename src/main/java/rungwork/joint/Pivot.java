package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * The bolt through a tab's hole and what it carries: a rod end's ball or a bush between spacers, at
 * the side of one tab (single shear) or between a pair (double shear).
 *
 * <pre>
 *   single shear             double shear
 *      tab                   tab      tab
 *     ||  gap  centre        ||  gap centre gap  ||
 *   ==||=====[ ball ]==    ==||=====[ ball ]=====||==   bolt along y
 *     ||                     ||                  ||
 * </pre>
 *
 * <p>Bending of the bolt counts; what preload and clamped spacers take of it does not.
 *
 * @param name the bolt's name
 * @param tab the tab that it goes through
 * @param threads where its thread ends
 * @param stack what stands beside the tab
 */
public record Pivot(String name, Tab tab, Bolt.Threads threads, Stack stack) implements Joint {
  /** Refuses a bolt without a name. */
  public Pivot {
    name = Guard.name("pivot bolt", name);
  }

  /**
   * What stands beside the tab, or between the pair.
   *
   * @param gap spacers between a tab and the ball or bush, on one side [m], at least zero
   * @param centre width of the ball or bush [m], above zero
   */
  public record Stack(double gap, double centre) {
    /** Refuses a negative gap and a ball of no width. */
    public Stack {
      Guard.notNegative("gap beside the tab", gap, Scale.MM);
      Guard.positive("width of ball or bush", centre, Scale.MM);
    }

    /**
     * A stack from typed lengths.
     *
     * @param gap spacers between a tab and the ball or bush, on one side
     * @param centre width of the ball or bush
     * @return the stack
     */
    public static Stack of(Quantity<Length> gap, Quantity<Length> centre) {
      return new Stack(si("gap beside the tab", gap), si("width of ball or bush", centre));
    }
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    return new LoadedPivot(this, load).checks();
  }

  /**
   * The bending moment of the bolt.
   *
   * @param load the load
   * @return the moment [N·m]
   */
  public double bendingMoment(FaceLoad load) {
    return new LoadedPivot(this, load).bendingMoment();
  }
}
