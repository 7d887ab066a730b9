/**
 * What happens in a frontal crash: scenes, pulses, crush, and the forces on belted people. It
 * screens and compares; injury cannot be predicted from these numbers, and every result says so.
 *
 * <p>Conventions:
 *
 * <ul>
 *   <li>A pulse is a deceleration [m/s²] over time [s], positive when it slows the vehicle; shown
 *       in g and ms. Its peak, its mean over time and its mean over distance are three numbers.
 *   <li>Two strengths: a low one for what breaks, a high one for the forces that reach people,
 *       belts and mounts. Inputs that are guessed are ranges; so are the figures that follow.
 *   <li>A mean folding force is an average after folding has begun. It is never ranked against the
 *       force that something begins at.
 *   <li>Places across the vehicle count from its middle, to the left.
 *   <li>An order of failure ranks by the vehicle's deceleration when a part first gives way, all
 *       unfactored; what nobody knows stays in the table as not checked.
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
 * <p>Reading order: {@link rungwork.impact.Range}, {@link rungwork.impact.Obstacle}, {@link
 * rungwork.impact.Scene} (momentum and energy alone); {@link rungwork.impact.Pulse} with {@link
 * rungwork.impact.Pulse.ChannelClass}, made by {@code IdealPulse} or read by {@code PulseTable};
 * {@link rungwork.impact.CrushCurve}, {@link rungwork.impact.CrushElement} with {@link
 * rungwork.impact.CrushTube} (when does a tube fold, and at what force: {@code TubeStrength},
 * {@code TubeBeginning}), {@link rungwork.impact.CrashModel}, which {@code LumpedMasses} integrates
 * to a {@link rungwork.impact.Crash}; {@link rungwork.impact.Occupant} and their {@link
 * rungwork.impact.Ride} with its {@code BeltPulls}; last {@link rungwork.impact.RigidOrCrush}, the
 * comparison of a bare frame with one behind tubes, which runs all {@code Combinations} of low and
 * high.
 *
 * <p>What the frame does before anything yields: {@link rungwork.impact.OrderOfFailure}, from the
 * bumper to the passengers; inside, {@code ElasticStage} runs the frame, {@code TwoStrengths} says
 * what low and high are, {@code MemberOnsets}, {@code FramePart} and {@code FrameParts} make rows
 * of it, {@code ElasticFigures} and {@code Margins} the figures beside them, {@code ChainFigures}
 * takes those of a mount, {@code TableOfParts} sorts them all.
 *
 * <p>What it does beyond: {@link rungwork.impact.Collapse}, hinge by hinge to the mechanism, force
 * over crush; inside, {@code CollapseAssumptions} says what holds for it, {@code CollapseRuns}
 * pushes it in all ways, {@code CollapseCourse} and {@code HingeNames} put it into words, {@code
 * ForceOverCrush} is its curve, {@code FrameStrength} says what beams carry. Read backwards it is
 * {@link rungwork.impact.SeenDamage}: from what is bent to the load that bent it, by {@code
 * DamageReading} and {@code PermanentSet}. What large motions add where rails have kick-ups: {@code
 * KickUps} with {@code CrankedRail} and {@code FoldingHinge}.
 *
 * <p>Sources: Newton for scenes; Varat and Husher, ESV-18 paper 501 (2003) for pulse shapes; SAE
 * J211-1 and ISO 6487 for the channel filter; Wierzbicki and Abramowicz 1983, Abramowicz and Jones
 * 1984, Alexander 1960, Guillow, Lu and Grzebieta 2001 for folding tubes; Kecman 1983, recalled,
 * for tubes that fold in bending; Cowper and Symonds for the strain rate; Hairer, Nørsett and
 * Wanner for the integration.
 *
 * <p>Left out, and said with the results: yaw and pitch once something has yielded, ride up and
 * under; rubber's damping; a person's head, neck and legs; what people do to the vehicle; the first
 * peak of a folding tube.
 *
 * <p>This room must not know studies.
 */
package rungwork.impact;
