/**
 * The engine: what a frame does under its loads, and how a vehicle that nothing holds answers them.
 *
 * <p><b>Method.</b> Direct stiffness, linear elastic, first order unless said otherwise. A node has
 * six motions, of which frame action takes three (along p, q and about n) and grillage action the
 * other three; a frame that leaves its plane takes all six at once, coupled. A family of elements
 * is nothing but the list of its motions. A member is known by six deformations that no rigid
 * motion causes, and by its stiffness against them: K = Bᵀ k B. One factorisation L D Lᵀ of each
 * action serves all load cases.
 *
 * <pre>
 *        start                          end
 *   θ₁ ↶  o──────────────────────────────o  ↷ θ₂        bend: turns of the ends against the chord
 *         |←──────────── L ─────────────→|              stretch: along it;  twist: about it
 * </pre>
 *
 * <p><b>Between the ends</b> of a member its loads are terms that begin somewhere and stay
 * (Macaulay); forces and motions are exact polynomials from term to term. Releases and springs at
 * its ends are taken out of its stiffness one by one; warmth and misfit are deformations without
 * force; settled supports are motions that are known beforehand.
 *
 * <p><b>Second order.</b> {@link rungwork.solve.Solver#secondOrder} asks for equilibrium where the
 * loads have moved the frame: stability functions and, along a beam, exact waves or hyperbolas, in
 * the plane and out of it, each beam under its mean normal force, found by turns until it settles.
 * {@link rungwork.solve.Buckling} finds the lowest critical load of each action by counting, so
 * that none is missed. A rigid arm and an end that slides across are refused there where a normal
 * force acts. Where the shear centre lies off the centroid the force bends and twists at once
 * ({@code Eccentric}), without warping stiffness. Left out: shortening by bending, buckling by
 * twist alone, lateral-torsional buckling, yielding, a bow or lean that nobody stated.
 *
 * <p><b>Assumed.</b> Small motions; equilibrium on the undeformed frame but in second order;
 * sections that stay plane, without shear strain (Euler and Bernoulli) unless a beam says otherwise
 * (Timoshenko, with the section's shear areas); torsion free to warp (Saint-Venant); loads along a
 * beam on its line of centroids; joints of no size but for rigid arms. Where a section's shear
 * centre lies off its centroid in the frame's plane (an upright channel), bending out of the plane
 * and torsion run on the line of shear centres, joined to the nodes by rigid arms.
 *
 * <p><b>Audit.</b> Every response carries the largest force that its nodes leave out of balance,
 * over the load; above 1e-9 it is refused. A motion that nothing resists is refused by name.
 *
 * <p><b>Nothing holds a vehicle in an impact.</b> {@link rungwork.solve.InertiaBalance} finds the
 * six accelerations from the full mass matrix, before anything is split into actions, and the loads
 * by which the masses answer; {@link rungwork.solve.Carriers} shares each among the nodes that
 * carry it; {@link rungwork.solve.Solver#unsupported} holds six motions only to remove the free
 * one, and what they would carry counts as residual.
 *
 * <p><b>Collapse.</b> {@link rungwork.solve.Pushover} lets a load grow until ends of beams yield,
 * one after the other, on a {@link rungwork.solve.YieldSurface} in N, My, Mz and T, and the frame
 * moves under a load that grows no more. Small motions, no hardening, hinges at nodes, shear forces
 * left out; a collapse whose loads do not do just the work that its hinges take is refused. Its
 * corners, shapes and the elastic way back are kept; inside, {@code HingeByHinge} pushes and {@code
 * PushoverPath} remembers, on {@code NodalLoads}, {@code PlasticFrame} of {@code PlasticMember}s,
 * {@code HingeSearch}.
 *
 * <p><b>Vibration.</b> {@link rungwork.solve.Vibration} gives natural frequencies and shapes of a
 * frame with its masses, held or floating: consistent mass, all motions together, because a mass
 * that stands off the plane couples the two actions; the slowest shapes by subspace iteration, and
 * a count that none was missed.
 *
 * <p>Signs as in {@link rungwork.frame}. Reading order: {@link rungwork.solve.Solver}, {@link
 * rungwork.solve.Response}, {@link rungwork.solve.Displacement}, {@link
 * rungwork.solve.InternalForces}, {@link rungwork.solve.BeamForces}; {@link
 * rungwork.solve.InertiaBalance} with {@link rungwork.solve.AppliedWrench} and {@link
 * rungwork.solve.RigidAcceleration}, {@link rungwork.solve.Carriers}, {@link
 * rungwork.solve.SelfWeight}; {@link rungwork.solve.Buckling} with {@link
 * rungwork.solve.CriticalLoad}; inside, {@code Action}, {@code Member} on {@code BeamAxes} with
 * {@code Joint}, {@code Condensation} and {@code HeldEnds}, {@code Structure}, {@code Loading} with
 * {@code Span} and {@code Term}, {@code Equations} over {@code Assembly} and {@code BandFactor} and
 * {@code Mechanism}, {@code Solution} with {@code Motions}, {@code Deflection}; {@code
 * StabilityFunctions} and {@code Across} on {@code Stumpff}, {@code Eccentric}, {@code
 * SecondOrderLimits}; {@code CriticalCount} and {@code BuckledShape} on a {@code Cutting}; {@code
 * MovingMasses} of {@code BeamMass} and {@code ItemMass} under {@code Subspace}.
 *
 * <p>Sources: slope deflection and direct stiffness as in any text on matrix analysis of
 * structures; Timoshenko and Gere, Theory of Elastic Stability (1961, from memory); the count of
 * Wittrick and Williams (1971, from memory); sums in doubled digits after Ogita, Rump and Oishi
 * (2005, from memory).
 *
 * <p>This room must not know checks or text.
 */
package rungwork.solve;
