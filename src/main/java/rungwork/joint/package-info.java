/**
 * What holds members together: bolts, welds, tabs and lugs, a plate on a tube's wall, rod ends.
 *
 * <p>This room holds no types yet: no joint is checked, and every sheet that rests on one says "not
 * checked". What will live here takes a wrench at a joint, the joint's own dimensions and a grade,
 * and answers with {@link rungwork.check.Check}s whose working an inspector can follow.
 *
 * <p>Conventions for what comes:
 *
 * <ul>
 *   <li>A joint has a flat face with its own axes: x and y in the face, z out of it. The wrench
 *       acts at the centroid of the bolts or of the weld lines, so that an eccentric load arrives
 *       here already as force and moment. Forces [N], moments [N·m], lengths [m].
 *   <li>Weld leg and throat are never confused: a fillet's throat is 0.707 of its leg.
 *   <li>A formula used outside its range shows its number and says so; it does not pass.
 *   <li>Beside a weld the material counts with its welded-zone strength.
 * </ul>
 *
 * <pre>
 *        y
 *        |   o      o      bolts o, centroid +
 *        |      +----------- F at its eccentricity: F and the moment F·e at +
 *        |   o      o
 *        +--------- x      z towards the reader, out of the face
 * </pre>
 *
 * <p>Sources it will use: EN 1993-1-8 (bolts, fillet welds, edge distances), ISO 898-1 (property
 * classes), ISO 273 (holes).
 *
 * <p>This room must not know vehicles.
 */
package rungwork.joint;
