package rungwork.material;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Density;

/**
 * Stiffness and density of an isotropic material.
 *
 * @param youngsModulus E [Pa], above zero
 * @param poissonsRatio ν [1], from 0 to below 0.5
 * @param density ρ [kg/m³], above zero
 */
public record Elasticity(double youngsModulus, double poissonsRatio, double density) {
  /** Refuses what no metal has. */
  public Elasticity {
    Guard.positive("Young's modulus", youngsModulus, new Scale("GPa", 1e9));
    Guard.positive("density", density, new Scale("kg/m³", 1));
    if (!(poissonsRatio >= 0 && poissonsRatio < 0.5)) {
      throw new ModelException(
          "Poisson's ratio "
              + Scale.NUMBER.show(poissonsRatio)
              + " is outside 0 to below 0.5; steel has 0.30");
    }
  }

  /**
   * From typed quantities.
   *
   * @param youngsModulus E
   * @param poissonsRatio ν [1]
   * @param density ρ
   * @return the elastic constants
   */
  public static Elasticity of(
      Quantity<Pressure> youngsModulus, double poissonsRatio, Quantity<Density> density) {
    return new Elasticity(
        si("Young's modulus", youngsModulus), poissonsRatio, si("density", density));
  }

  /**
   * Shear modulus G = E / (2 (1 + ν)).
   *
   * @return G [Pa]
   */
  public double shearModulus() {
    return youngsModulus / (2 * (1 + poissonsRatio));
  }
}
