/**
 * The vehicle, its ladder frame, and what happens to them.
 *
 * <pre>
 *   left tail                      y to the left                left tip
 *      o-------o-----------------------o-----------------o-------o      left rail
 *              | rear left             | mid left        | front left
 *              |                       |                 |
 *              o rear middle           o                 o front middle   --&gt; x forward
 *              |                       |                 |
 *              | rear right            | mid right       | front right
 *      o-------o-----------------------o-----------------o-------o      right rail
 *   right tail                                              right tip
 * </pre>
 *
 * <p>Seen from the side the rails are level or have kick-ups:
 *
 * <pre>
 *                                               head o-----------o tip  &lt;-- R, the wall
 *                                                   /            ^
 *                                                  /             | rise
 *   tail o----------------------------------------o foot         v
 * </pre>
 *
 * <p>The wall's force R passes the low rail at the height of the high one: R times the rise bends
 * the foot, and on the slope R pushes along the rail and across it at once. A frame with kick-ups
 * is therefore solved with all six motions of a node coupled, each rail under its own share, and
 * the six forces at a cut are along and square to the rail as it leans there. Crossmembers stand at
 * the height of the rails.
 *
 * <p>A {@link rungwork.vehicle.Ladder} is two rails, crossmembers at stations, and mounts on rigid
 * arms; its features are named places that become nodes of a frame in plan. A {@link
 * rungwork.vehicle.Vehicle} is masses, wheels and seats, each carried by features. An {@link
 * rungwork.vehicle.Event} is what the ground or a wall does.
 *
 * <p><b>Balance.</b> Nothing holds the vehicle. The event's forces from outside are answered by the
 * inertia of every mass at its own place, the frame's own pieces included; weights need no term,
 * since a vehicle that stands feels 1 g upwards. Braking and cornering are steady by load transfer:
 * no turning is left over. An impact comes on top of standing, with masses on springs and belts
 * amplified as stated. Loads on several fastening points are shared like a rigid body on equal
 * springs, at the points themselves, and go along rigid arms to the nodes.
 *
 * <p><b>Joints</b> between crossmembers and rails are run rigid and released; see {@link
 * rungwork.vehicle.Joints} for which releases leave a ladder standing.
 *
 * <p><b>Buckling of the whole frame</b> under the forces of an event gives rails that take part in
 * it their effective lengths; near it, moments of second order count too. Which of both a check
 * uses stands with it, and never both; see {@code FrameStability}.
 *
 * <p><b>Left out:</b> suspension links (see the room {@code loadpath}), the bending of springs,
 * aerodynamic forces, tyre forces that change during an impact, friction at the wall.
 *
 * <p>Axes as in {@link rungwork.frame}: x forward, y to the left, z up, origin on the ground under
 * the middle of the front axle; a station behind the front axle has a negative x. The left rail's
 * beams run forward, the right rail's rearward and the crossmembers' from left to right, so that a
 * section's +y faces outwards on both rails and forward on crossmembers. SI units inside.
 *
 * <p>Sources: Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018; Brown,
 * Robertson and Serpento, Motor Vehicle Structures, Butterworth-Heinemann 2002; statics and Newton
 * and Euler.
 *
 * <p>Reading order: {@link rungwork.vehicle.Ladder} with {@link rungwork.vehicle.LadderBuilder},
 * {@link rungwork.vehicle.Rail}, {@link rungwork.vehicle.Crossmember}, {@link
 * rungwork.vehicle.Mount}; {@link rungwork.vehicle.Joints}; {@link rungwork.vehicle.Vehicle} with
 * {@link rungwork.vehicle.VehicleBuilder}, {@link rungwork.vehicle.Wheel}, {@link
 * rungwork.vehicle.Side}, {@link rungwork.vehicle.Axle}; {@link rungwork.vehicle.Event}; {@link
 * rungwork.vehicle.Balance}, {@link rungwork.vehicle.SeatDeceleration}; {@link
 * rungwork.vehicle.Assessment}; inside, {@code Screen} with {@code FollowingLoads}, {@code
 * StockGroup} and {@code TwistSweep}, {@code LadderRules}, {@code VehicleRules}, {@code Layout},
 * {@code Members}, {@code FrameStability}, {@code WheelForces}, {@code FrontalPush}, {@code
 * TwistRig}.
 *
 * <p>This room must not know the detail of joints (bolts, tabs) or of impacts (pulses, crush).
 */
package rungwork.vehicle;
