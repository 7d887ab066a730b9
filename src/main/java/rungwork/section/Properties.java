package rungwork.section;

import rungwork.fault.Guard;

/**
 * Properties of a cross-section about its centroid, in the section's axes: y to the left, z up.
 *
 * @param area A [m²]
 * @param iy second moment for bending about y, ∫z² dA [m⁴]
 * @param iz second moment for bending about z, ∫y² dA [m⁴]
 * @param iyz product of inertia ∫yz dA [m⁴]
 * @param it torsion constant, free to warp [m⁴]
 * @param iw warping constant of the walls' centre lines, as tables print it [m⁶]
 * @param iwAcross what the walls' thickness adds to it: a part in a hundred in a channel, all there
 *     is in an angle or a T; not counted in solid bars [m⁶]
 * @param stiffening how many times as stiff in torsion it counts as free to warp; above 1 where the
 *     ends of a length of it hold the warping [1]
 * @param wely elastic modulus for bending about y, the smaller of both edges [m³]
 * @param welz elastic modulus for bending about z, the smaller of both edges [m³]
 * @param wply plastic modulus for bending about y [m³]
 * @param wplz plastic modulus for bending about z [m³]
 * @param shearY area that carries shear along y [m²]
 * @param shearZ area that carries shear along z [m²]
 * @param shearCentreY shear centre from the centroid along y [m]
 * @param shearCentreZ shear centre from the centroid along z [m]
 */
public record Properties(
    double area,
    double iy,
    double iz,
    double iyz,
    double it,
    double iw,
    double iwAcross,
    double stiffening,
    double wely,
    double welz,
    double wply,
    double wplz,
    double shearY,
    double shearZ,
    double shearCentreY,
    double shearCentreZ) {
  /** Refuses what is not finite. */
  public Properties {
    Guard.solved("area of a section", area);
    Guard.solved("second moment about y of a section", iy);
    Guard.solved("second moment about z of a section", iz);
    Guard.solved("product moment of a section", iyz);
    Guard.solved("torsion constant of a section", it);
    Guard.solved("warping constant of a section", iw);
    Guard.solved("warping product of a section", iwAcross);
    Guard.solved("stiffening of a section", stiffening);
    Guard.solved("elastic modulus about y of a section", wely);
    Guard.solved("elastic modulus about z of a section", welz);
    Guard.solved("plastic modulus about y of a section", wply);
    Guard.solved("plastic modulus about z of a section", wplz);
    Guard.solved("shear area along y of a section", shearY);
    Guard.solved("shear area along z of a section", shearZ);
    Guard.solved("shear centre of a section", shearCentreY + shearCentreZ);
  }

  /** The properties of an outline about its centroid, and of its walls. */
  static Properties of(Outline centred, ShearTorsion rest) {
    Moments moments = centred.moments();
    return new Properties(
        moments.area(),
        moments.zz(),
        moments.yy(),
        moments.yz(),
        rest.it(),
        rest.warping().iw(),
        rest.warping().across(),
        1,
        moments.zz() / centred.reach(Spot::z),
        moments.yy() / centred.reach(Spot::y),
        new NeutralAxis(centred).modulus(),
        new NeutralAxis(centred.turned(Turn.QUARTER)).modulus(),
        rest.shear().y(),
        rest.shear().z(),
        rest.centre().y(),
        rest.centre().z());
  }

  /**
   * How far the axis of the larger second moment is turned from y towards z.
   *
   * @return from −π/2 to π/2 [rad]; nil where every axis is a principal one
   */
  public double principalAngle() {
    return Math.atan2(-2 * iyz, iy - iz) / 2;
  }

  /**
   * The larger second moment of all axes through the centroid.
   *
   * @return about the strong principal axis [m⁴]
   */
  public double strongest() {
    return (iy + iz) / 2 + Math.hypot((iy - iz) / 2, iyz);
  }

  /**
   * The smaller second moment of all axes through the centroid.
   *
   * @return about the weak principal axis [m⁴]
   */
  public double weakest() {
    return (iy + iz) / 2 - Math.hypot((iy - iz) / 2, iyz);
  }

  /**
   * The normal stress at a fibre, also where y and z are no principal axes: σ = N/A + ((My·Iz +
   * Mz·Iyz)·z − (Mz·Iy + My·Iyz)·y)/(Iy·Iz − Iyz²) (unsymmetric bending, any textbook on strength
   * of materials).
   *
   * @param n normal force, tension positive [N]
   * @param my moment about y [N·m]
   * @param mz moment about z [N·m]
   * @param at the fibre from the centroid
   * @return σ, tension positive [Pa]
   */
  public double normalStress(double n, double my, double mz, Spot at) {
    Guard.finite("internal forces", n + my + mz);
    double upwards = (my * iz + mz * iyz) * at.z();
    double leftwards = (mz * iy + my * iyz) * at.y();
    return n / area + (upwards - leftwards) / (iy * iz - iyz * iyz);
  }

  /**
   * The torsion constant that its stiffness counts with: free to warp, times the stiffening.
   *
   * @return GK over G [m⁴]
   */
  public double twistConstant() {
    return it * stiffening;
  }

  Properties stiffened(double times) {
    return new Properties(
        area,
        iy,
        iz,
        iyz,
        it,
        iw,
        iwAcross,
        times,
        wely,
        welz,
        wply,
        wplz,
        shearY,
        shearZ,
        shearCentreY,
        shearCentreZ);
  }

  Properties turned(Turn turn) {
    boolean swaps = turn.swapsAxes();
    Spot centre = turn.of(new Spot(shearCentreY, shearCentreZ));
    return new Properties(
        area,
        swaps ? iz : iy,
        swaps ? iy : iz,
        -iyz,
        it,
        iw,
        iwAcross,
        stiffening,
        swaps ? welz : wely,
        swaps ? wely : welz,
        swaps ? wplz : wply,
        swaps ? wply : wplz,
        swaps ? shearZ : shearY,
        swaps ? shearY : shearZ,
        centre.y(),
        centre.z());
  }
}
