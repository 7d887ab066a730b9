package rungwork.section;

/**
 * What a section's walls give beyond its outline.
 *
 * @param it torsion constant, free to warp [m⁴]
 * @param shear shear areas along y and z [m²]
 * @param centre shear centre, in the axes of the outline [m]
 */
record ShearTorsion(double it, Spot shear, Spot centre) {}
