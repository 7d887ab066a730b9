/**
 * The frame as data, and the conventions for axes and signs.
 *
 * <pre>
 *  vehicle axes (ISO 8855)                 a beam's own axes, frame seen along its normal n
 *
 *        z up   x forward                       q            y
 *         |    /                                |             \    x
 *         |   /                                 |     o        \  /
 *         |  /                                  |   end         \/
 *  y -----+                                     |              start
 *  left    origin: ground, mid front axle       +--------- p      z = n, towards you
 * </pre>
 *
 * <p><b>Frame axes.</b> A frame lies in plan (p, q, n = x, y, z), in side elevation (x, z, −y) or
 * in front elevation (y, z, x); {@link rungwork.frame.Plane} is the only place that converts.
 *
 * <p><b>Beam axes.</b> x runs from the start node to the end node, y lies in the frame's plane to
 * the left of that way, z is the frame's normal.
 *
 * <p><b>Internal forces</b> at a cut are what the part towards the end does to the part towards the
 * start, in the beam's axes: N along x (tension positive), Vy and Vz along y and z, T, My and Mz
 * right-handed about x, y and z. So N &gt; 0 pulls, Mz &gt; 0 compresses the fibre at +y, My &gt; 0
 * stretches the fibre at +z: σ = N/A + My·z/Iy − Mz·y/Iz, and dMz/dx = −Vy, dMy/dx = Vz.
 *
 * <p><b>Ends of beams.</b> An end may let go of any of the six internal forces ({@link
 * rungwork.frame.Release}), pass one on through a spring (a bolted joint), and stand off its node
 * by a rigid arm in the frame's plane. An arm out of the plane is refused in a flat frame.
 *
 * <p><b>Loads</b> act at nodes, at points of beams, along beams and parts of them; warmth, misfit
 * and settling supports strain the frame without a force.
 *
 * <p><b>Two actions.</b> Frame action (N, Vy, Mz) and grillage action (Vz, My, T) are independent
 * in first order when every section is symmetric about the frame's plane; a section that is not is
 * refused.
 *
 * <p><b>Out of the plane.</b> A frame begun by {@link rungwork.frame.Frame#rising} may leave its
 * plane, as rails do at a kick-up; then both actions are one. A beam's y stays square to the
 * frame's normal, its z leans with the beam.
 *
 * <p>Everything here is given in vehicle axes and SI units. Reading order: {@link
 * rungwork.frame.Point}, {@link rungwork.frame.Wrench}, {@link rungwork.frame.Plane}, {@link
 * rungwork.frame.Node}, {@link rungwork.frame.Stock}, {@link rungwork.frame.Beam} with {@link
 * rungwork.frame.End} and {@link rungwork.frame.Release}, {@link rungwork.frame.Support} with
 * {@link rungwork.frame.Freedom}, {@link rungwork.frame.Arc}, {@link rungwork.frame.Frame} with its
 * {@code FrameRules}, {@link rungwork.frame.Load}, {@link rungwork.frame.LoadCase}, {@link
 * rungwork.frame.Mass}.
 *
 * <p>This room must not know how a frame is solved.
 */
package rungwork.frame;
