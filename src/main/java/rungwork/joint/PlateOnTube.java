package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * The tube's wall under a plate that is welded to its face.
 *
 * @param name the place's name
 * @param tube the tube
 * @param foot where and how the plate stands
 * @param chordStress largest compressive stress in the tube beside the joint, from the frame;
 *     tension negative [Pa]; below the yield strength
 */
public record PlateOnTube(String name, TubeWall tube, Foot foot, double chordStress)
    implements Joint {
  /** Refuses a foot that the face cannot hold, and a tube that yields already. */
  public PlateOnTube {
    name = Guard.name("plate on a tube", name);
    Guard.finite("stress in the tube beside " + name, chordStress);
    double yield = tube.material().strength().weldedYield();
    if (chordStress >= yield) {
      throw new ModelException(
          "stress "
              + Scale.MPA.show(chordStress)
              + " in the tube beside "
              + name
              + " is not below its yield strength "
              + Scale.MPA.show(yield)
              + " beside a weld; the wall has nothing left");
    }
    double reach = foot.across() + 2 * Math.abs(foot.offset());
    if (reach > tube.width() * (1 + Rounding.TOLERANCE)) {
      throw new ModelException(
          "the foot of "
              + name
              + " reaches over the face: it needs "
              + Scale.MM.show(reach)
              + " of "
              + Scale.MM.show(tube.width()));
    }
  }

  /** How a foot stands on the tube. */
  public enum Way {
    /** A plate along the tube. */
    LONGITUDINAL,
    /** A plate across the tube. */
    TRANSVERSE,
    /** A plate along the tube that passes through both faces and is welded to both. */
    THROUGH,
    /** A broad foot welded all round, such as a spreader plate or the end of a box. */
    PATCH
  }

  /**
   * Where and how a plate stands on a face; its middle is the origin of the face's axes.
   *
   * @param way how it stands
   * @param length of the foot along its own x [m]
   * @param thickness of the foot along its own y: the plate's, or a patch's width [m]
   * @param offset of its middle from the face's centre line [m]
   */
  public record Foot(Way way, double length, double thickness, double offset) {
    /** Refuses a foot of no size. */
    public Foot {
      Guard.positive("length of the foot", length, Scale.MM);
      Guard.positive("thickness of the foot", thickness, Scale.MM);
      Guard.finite("offset of the foot", offset);
    }

    /**
     * A foot in the middle of the face.
     *
     * @param way how it stands
     * @param length of the foot along its own x
     * @param thickness of the foot along its own y
     * @return the foot
     */
    public static Foot central(Way way, Quantity<Length> length, Quantity<Length> thickness) {
      return new Foot(way, si("length of the foot", length), si("thickness", thickness), 0);
    }

    /**
     * The same foot moved off the face's centre line.
     *
     * @param offset how far
     * @return the foot
     */
    public Foot moved(Quantity<Length> offset) {
      return new Foot(way, length, thickness, si("offset of the foot", offset));
    }

    /** What it covers of the face's width [m]. */
    double across() {
      return way == Way.TRANSVERSE ? length : thickness;
    }

    /** What it covers along the tube [m]. */
    double along() {
      return way == Way.TRANSVERSE ? thickness : length;
    }
  }

  /**
   * A plate between the tab and the tube.
   *
   * @param material its material
   * @param length along the tab's foot [m]
   * @param width across it [m]
   * @param thickness its thickness [m]
   */
  public record Spreader(RatedMaterial material, double length, double width, double thickness) {
    /** Refuses a plate of no size. */
    public Spreader {
      Guard.positive("length of the spreader", length, Scale.MM);
      Guard.positive("width of the spreader", width, Scale.MM);
      Guard.positive("thickness of the spreader", thickness, Scale.MM);
    }

    /**
     * A spreader from typed lengths.
     *
     * @param material its material
     * @param length along the tab's foot
     * @param width across it
     * @param thickness its thickness
     * @return the spreader
     */
    public static Spreader of(
        RatedMaterial material,
        Quantity<Length> length,
        Quantity<Length> width,
        Quantity<Length> thickness) {
      return new Spreader(
          material,
          si("length of the spreader", length),
          si("width of the spreader", width),
          si("thickness of the spreader", thickness));
    }
  }

  /**
   * A plate on a tube that carries nothing else beside it.
   *
   * @param name the place's name
   * @param tube the tube
   * @param foot where and how the plate stands
   * @return the joint
   */
  public static PlateOnTube of(String name, TubeWall tube, Foot foot) {
    return new PlateOnTube(name, tube, foot, 0);
  }

  /**
   * The same joint on a tube that carries a load of its own.
   *
   * @param stress largest compressive stress in the tube beside the joint; tension negative
   * @return the joint
   */
  public PlateOnTube withChordStress(Quantity<Pressure> stress) {
    return new PlateOnTube(name, tube, foot, si("stress in the tube", stress));
  }

  /**
   * The same plate standing on a spreader that is welded to the tube all round.
   *
   * @param spreader the plate between
   * @return the tab on the spreader and the spreader on the tube, as one joint
   */
  public Joint over(Spreader spreader) {
    return SpreadFoot.of(this, spreader);
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    return new WallStrength(this, load).checks();
  }
}
