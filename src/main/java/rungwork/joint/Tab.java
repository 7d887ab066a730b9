package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.material.RatedMaterial;

/**
 * A plate with a hole that stands on a face, or a pair of them: what a builder calls a tab, a lug
 * or a clevis. It takes a load at any angle in its own plane and across it. Each of a pair takes
 * half of everything: the bolt clamps them and what is between them into one.
 *
 * @param name the tab's name
 * @param material its material
 * @param plate its outline
 * @param eye its hole and bolt
 */
public record Tab(String name, RatedMaterial material, Plate plate, Eye eye) implements Joint {
  /** Length beside a weld over which the welded-zone strength counts [m]: 25 mm (from memory). */
  static final double WELDED_ZONE = 0.025;

  /** Refuses a hole that the plate cannot hold. */
  public Tab {
    name = Guard.name("tab", name);
    if (eye.hole() >= plate.width()) {
      throw new ModelException(
          "hole "
              + Scale.MM.show(eye.hole())
              + " leaves nothing of tab "
              + name
              + ", which is "
              + Scale.MM.show(plate.width())
              + " wide; it must stay below that");
    }
    if (eye.hole() / 2 >= plate.height()) {
      throw new ModelException(
          "hole "
              + Scale.MM.show(eye.hole())
              + " of tab "
              + name
              + " reaches into the face, "
              + Scale.MM.show(plate.height())
              + " below its centre");
    }
  }

  /** How many plates there are. */
  public enum Count {
    /** One plate: the bolt is in single shear. */
    SINGLE(1),
    /** A pair, the load between them: the bolt is in double shear. */
    PAIR(2);

    private final int plates;

    Count(int plates) {
      this.plates = plates;
    }

    /**
     * Number of plates, and of shear planes.
     *
     * @return 1 or 2
     */
    public int plates() {
      return plates;
    }
  }

  /**
   * The plate's outline.
   *
   * @param count one plate or a pair
   * @param thickness of each plate [m]
   * @param width at the hole [m]
   * @param foot width where it meets the face [m]
   * @param height from the face to the hole's centre [m]
   */
  public record Plate(Count count, double thickness, double width, double foot, double height) {
    /** Refuses lengths of nothing. */
    public Plate {
      Guard.positive("tab thickness", thickness, Scale.MM);
      Guard.positive("tab width at the hole", width, Scale.MM);
      Guard.positive("tab width at the foot", foot, Scale.MM);
      Guard.positive("height of the hole over the face", height, Scale.MM);
    }

    /**
     * One plate, as wide at the foot as at the hole.
     *
     * @param thickness its thickness
     * @param width its width
     * @param height from the face to the hole's centre
     * @return the plate
     */
    public static Plate single(
        Quantity<Length> thickness, Quantity<Length> width, Quantity<Length> height) {
      double wide = si("tab width", width);
      return new Plate(
          Count.SINGLE, si("tab thickness", thickness), wide, wide, si("height", height));
    }

    /**
     * The same plate twice, with the load between them.
     *
     * @return the pair
     */
    public Plate paired() {
      return new Plate(Count.PAIR, thickness, width, foot, height);
    }

    /**
     * The same plate with a wider or narrower foot.
     *
     * @param width the foot's width
     * @return the plate
     */
    public Plate withFoot(Quantity<Length> width) {
      return new Plate(count, thickness, this.width, si("foot width", width), height);
    }
  }

  /**
   * The hole and what goes through it.
   *
   * @param bolt the bolt
   * @param hole the hole's diameter [m], at least the bolt's
   * @param end from the hole's centre to the plate's free end [m], above the hole's radius
   */
  public record Eye(Bolt bolt, double hole, double end) {
    /** Refuses a hole too narrow for its bolt, and one that breaks through the end. */
    public Eye {
      Guard.positive("hole diameter", hole, Scale.MM);
      Guard.positive("end distance", end, Scale.MM);
      if (hole < bolt.size().diameter()) {
        throw new ModelException(
            "hole "
                + Scale.MM.show(hole)
                + " is too narrow for its bolt "
                + bolt
                + "; it must be at least "
                + Scale.MM.show(bolt.size().diameter()));
      }
      if (end <= hole / 2) {
        throw new ModelException(
            "end distance "
                + Scale.MM.show(end)
                + " lets the hole of "
                + Scale.MM.show(hole)
                + " break through the end; it must stay above "
                + Scale.MM.show(hole / 2));
      }
    }

    /**
     * An eye from typed lengths.
     *
     * @param bolt the bolt
     * @param hole the hole's diameter
     * @param end from the hole's centre to the plate's free end
     * @return the eye
     */
    public static Eye of(Bolt bolt, Quantity<Length> hole, Quantity<Length> end) {
      return new Eye(bolt, si("hole", hole), si("end distance", end));
    }
  }

  /**
   * Where the hole's centre is, in the face's axes: where loads arrive.
   *
   * @return the place
   */
  public Point hole() {
    return new Point(0, 0, plate.height());
  }

  /**
   * The bend of this tab when it is folded from sheet.
   *
   * @param insideRadius of the bend
   * @param holeToBend from the hole's edge to the start of the bend's radius
   * @return what is asked of the bend
   */
  public Joint folded(Quantity<Length> insideRadius, Quantity<Length> holeToBend) {
    return Fold.of(this, insideRadius, holeToBend);
  }

  /**
   * This pair closed by plates on both sides into a box, like the end of a tube that the bolt goes
   * through: bent as one.
   *
   * @param outside the box's width along the pin
   * @return what is asked of the box; its holes are asked as the pair's
   */
  public Joint boxed(Quantity<Length> outside) {
    return new BoxedTab(this, si("box along the pin", outside));
  }

  /**
   * This tab as the anchorage of a harness, by the limits of student-competition rules.
   *
   * @return what is asked besides
   */
  public Joint asHarnessTab() {
    return new HarnessTab(this);
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = holeChecks(load);
    checks.addAll(new TabFoot(this, load).checks());
    return checks;
  }

  /** Everything but the foot. */
  List<Check> holeChecks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(proportions(load));
    checks.addAll(new TabEye(this, load).checks());
    return checks;
  }

  /**
   * The smallest distance from the hole's centre to a free edge.
   *
   * @return the distance [m]
   */
  public double edge() {
    return Math.min(eye.end(), plate.width() / 2);
  }

  /** The plate's ultimate strength at the hole: that of the welded zone if the weld is near. */
  double ultimateAtHole() {
    boolean near = plate.height() - eye.hole() / 2 < WELDED_ZONE;
    return near ? Welded.ultimate(material) : material.strength().ultimate();
  }

  /** The plate's yield strength at the hole: that of the welded zone if the weld is near. */
  double yieldAtHole() {
    boolean near = plate.height() - eye.hole() / 2 < WELDED_ZONE;
    return near ? material.strength().weldedYield() : material.strength().yield();
  }

  private List<Check> proportions(FaceLoad load) {
    List<Check> checks = new ArrayList<>();
    checks.add(HoleRules.edge(Question.of("edge distance", name, load), eye.hole(), edge()));
    checks.addAll(HoleRules.width(Question.of("hole width", name, load), eye.bolt(), eye.hole()));
    return checks;
  }
}
