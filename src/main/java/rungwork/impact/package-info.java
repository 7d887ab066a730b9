/**
 * What happens in a crash: scenes, pulses, crush, the order of collapse, and the forces on belted
 * people.
 *
 * <p>This room holds no types yet. A frontal impact exists so far only as a stated deceleration
 * among the vehicle's load cases, which says where the frame reaches yield and nothing beyond it.
 * What will live here computes the pulse instead of stating it.
 *
 * <p>Conventions for what comes:
 *
 * <ul>
 *   <li>A pulse is a deceleration [m/s²] over time [s]; shown in g and ms. Its mean over time and
 *       its mean over distance are different numbers and carry different names.
 *   <li>Nothing holds the vehicle up: a barrier's force is balanced by the inertia of every mass.
 *   <li>Two strengths: a low one for what breaks, a high one for the forces that reach people,
 *       belts and mounts. Figures are ranges, never a single number.
 *   <li>An occupant's deceleration is not the vehicle's: belts and slack raise it.
 *   <li>Injury cannot be predicted from these numbers, and every result says so.
 * </ul>
 *
 * <pre>
 *   a |    __
 *     |   /  \        area = change of speed
 *     |  /    \__
 *     | /        \
 *     +------------ t
 * </pre>
 *
 * <p>This room must not know studies.
 */
package rungwork.impact;
