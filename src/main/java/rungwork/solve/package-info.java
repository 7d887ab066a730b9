/**
 * The engine: what a flat frame does under its loads.
 *
 * <p><b>Method.</b> Direct stiffness: first order, linear elastic, six motions a node, of which
 * frame action takes three (along p, q and about n) and grillage action the other three; a family
 * of elements is nothing but the list of its motions. One factorisation L D Lᵀ of each serves all
 * load cases.
 *
 * <p><b>Assumed.</b> Small motions; equilibrium on the undeformed frame; plane sections without
 * shear flexibility (Euler and Bernoulli); torsion free to warp (Saint-Venant); loads along a beam
 * uniform and on its line of centroids; joints of no size. Where a section's shear centre lies off
 * its centroid in the frame's plane (an upright channel), bending out of the plane and torsion run
 * on the line of shear centres, joined to the nodes by rigid arms.
 *
 * <p><b>Audit.</b> Every response carries the largest force that its nodes leave out of balance,
 * over the load; above 1e-9 it is refused. A motion that nothing resists is refused by name.
 *
 * <p>Signs as in {@link rungwork.frame}. Reading order: {@link rungwork.solve.Solver}, {@link
 * rungwork.solve.Response}, {@link rungwork.solve.Displacement}, {@link
 * rungwork.solve.InternalForces}, {@link rungwork.solve.BeamForces}; inside, {@code Action}, {@code
 * Member} with {@code Condensation}, {@code Structure}, {@code Equations} with {@code BandFactor},
 * {@code Solution}.
 *
 * <p>This room must not know checks or text.
 */
package rungwork.solve;
