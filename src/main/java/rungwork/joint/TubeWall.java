package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * The rectangular tube under a joint, seen from the face that the joint stands on.
 *
 * @param material its material
 * @param width of that face, b₀ [m]
 * @param depth across it, h₀ [m]
 * @param wall t₀ [m], below half the width and half the depth
 */
public record TubeWall(RatedMaterial material, double width, double depth, double wall) {
  /** Refuses a wall that leaves no bore. */
  public TubeWall {
    Guard.positive("width of the tube's face", width, Scale.MM);
    Guard.positive("depth of the tube", depth, Scale.MM);
    Guard.positive("wall of the tube", wall, Scale.MM);
    double least = Math.min(width, depth);
    if (2 * wall >= least) {
      throw new ModelException(
          "wall "
              + Scale.MM.show(wall)
              + " leaves no bore in a tube of "
              + Scale.MM.show(least)
              + "; the wall must stay below "
              + Scale.MM.show(least / 2));
    }
  }

  /**
   * A tube from typed lengths.
   *
   * @param material its material
   * @param width of the face that the joint stands on
   * @param depth across it
   * @param wall its wall
   * @return the tube
   */
  public static TubeWall of(
      RatedMaterial material,
      Quantity<Length> width,
      Quantity<Length> depth,
      Quantity<Length> wall) {
    return new TubeWall(
        material, si("tube width", width), si("tube depth", depth), si("tube wall", wall));
  }
}
