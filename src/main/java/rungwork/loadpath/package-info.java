/**
 * How a load gets from the tyre to the rail: suspension members by equilibrium, and mounts as
 * chains of joints, weakest first.
 *
 * <pre>
 *                       mounts            ball joints
 *   rail  [fore] o-----------------\
 *                |   upper arm      o---|upright|
 *   rail  [aft]  o-----------------/    |       |
 *   rack  [  ]   o------ tie rod -------o  hub  |( wheel
 *   rail  [fore] o-----------------\    |       |
 *                |   lower arm  s   o---|       |
 *   rail  [aft]  o-----------------/        contact with the ground
 *                    s: spring, to its own mount
 * </pre>
 *
 * <p>A {@link rungwork.loadpath.Corner} has as many unknown forces as equilibrium has equations:
 * six for the upright and six for each arm. One that moves is refused and its motion named; one
 * with more members than equations is refused; one that is hardly held is named among the
 * assumptions.
 *
 * <p><b>Conventions.</b> Vehicle axes as in ISO 8855: x forward, y to the left, z up [m]; forces
 * [N], moments [N·m]. A bar's tension is positive. A mount's force is what the suspension pushes on
 * the frame. Where two pivots share a thrust along their axis, statics cannot say how: each is
 * asked with none and with all of it; the ladder gets half at each.
 *
 * <p><b>Order.</b> A chain ranks its parts only where limit state and factors are the same; what
 * was not checked stands beside the order.
 *
 * <p><b>Left out:</b> movement of the suspension under load, resistance of rubber bushes to
 * turning, toe and camber of a wheel braked inboard, welds and ends of arms and links, the
 * stiffness of mounts (an input where a brace shares with them), friction of belts, repeated load.
 *
 * <p>Reading order: {@link rungwork.loadpath.SuspensionMember}, {@link rungwork.loadpath.Hub},
 * {@link rungwork.loadpath.Corner}, {@link rungwork.loadpath.BeamAxle}, {@link
 * rungwork.loadpath.CornerForces}, {@link rungwork.loadpath.MountForce}; {@link
 * rungwork.loadpath.WheelCase}, {@link rungwork.loadpath.Suspension}; {@link
 * rungwork.loadpath.Face}, {@link rungwork.loadpath.MountChain}, {@link
 * rungwork.loadpath.ChainSheet}; {@link rungwork.loadpath.SteeringGear}, {@link
 * rungwork.loadpath.Brace}; {@link rungwork.loadpath.Seating}, {@link
 * rungwork.loadpath.Anchorages}. Inside, a {@code Reaction} is a force of unknown size on a known
 * line, a {@code CrossmemberJoint} the end of a crossmember on its rail, {@code Statics} finds them
 * all, {@code MemberStrength} asks bars and arms at their {@code ArmCut}s.
 *
 * <p>Sources: equilibrium of rigid bodies; the least resisted motion by virtual work; 49 CFR
 * 571.207 and 571.210, UN Regulation 14 (test loads of anchorages); EN 1993-1-1:2005, 6.3.1
 * (buckling of bars); Gough (a tyre turned while parked).
 *
 * <p>This room must not know impact.
 */
package rungwork.loadpath;
