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
 * <p>A {@link rungwork.vehicle.Ladder} is two rails, crossmembers at stations, and mounts on rigid
 * arms; its features are named places that become nodes of a flat frame in plan. A {@link
 * rungwork.vehicle.Vehicle} is masses, wheels and seats, each carried by features. An {@link
 * rungwork.vehicle.Event} is what the ground or a wall does.
 *
 * <p>Axes as in {@link rungwork.frame}: x forward, y to the left, z up, origin on the ground under
 * the middle of the front axle; a station behind the front axle has a negative x. SI units inside.
 *
 * <p>Reading order: {@link rungwork.vehicle.Side}, {@link rungwork.vehicle.Axle}, {@link
 * rungwork.vehicle.Rail}, {@link rungwork.vehicle.Crossmember}, {@link rungwork.vehicle.Mount},
 * {@link rungwork.vehicle.Ladder} with {@link rungwork.vehicle.LadderBuilder}, {@link
 * rungwork.vehicle.Joints}, {@link rungwork.vehicle.Wheel}, {@link rungwork.vehicle.Seat}, {@link
 * rungwork.vehicle.Vehicle} with {@link rungwork.vehicle.VehicleBuilder}, {@link
 * rungwork.vehicle.Push}, {@link rungwork.vehicle.Event}.
 *
 * <p>This room must not know the detail of joints (bolts, tabs) or of impacts (pulses, crush).
 */
package rungwork.vehicle;
