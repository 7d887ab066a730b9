/**
 * How a load gets from the tyre to the rail: suspension links, mounts, and their chain of joints,
 * weakest first.
 *
 * <p>This room holds no types yet: a wheel's load enters the frame where the vehicle says, and the
 * links between are not checked. What will live here follows a load through its links as a chain of
 * joints and members, each with its own {@link rungwork.check.Check}.
 *
 * <p>Conventions for what comes:
 *
 * <ul>
 *   <li>Vehicle axes as in ISO 8855: x forward, y to the left, z up [m]; forces [N], moments [N·m].
 *   <li>A link with a joint at both ends carries force along its line only; tension is positive.
 *   <li>A chain ranks its parts only where limit state and basis are the same; parts on another
 *       basis, and parts not checked, stand beside the order, not in it.
 * </ul>
 *
 * <pre>
 *   tyre -- hub -- link -- rod end -- bolt -- tab -- weld -- tube wall -- rail
 *          each part: demand / capacity; the largest is the weakest of its basis
 * </pre>
 *
 * <p>This room must not know impact.
 */
package rungwork.loadpath;
