package rungwork.section;

/**
 * Where on a thin wall the stress is worth knowing: the fibre that gives the normal stress, and the
 * place on the centre line that gives the shear flow.
 *
 * @param part what it is, such as {@code corner}; its side is added
 * @param fibre the fibre, in the axes that the section is drawn in
 * @param wall number of the wall
 * @param fraction where on the wall's centre line
 * @param side 1 on the face to the right of the wall's path (seen with y to the right and z up), −1
 *     on the face to its left; Saint-Venant's stress differs in sign
 */
record Mark(String part, Spot fibre, int wall, double fraction, int side) {}
