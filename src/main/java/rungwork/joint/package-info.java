/**
 * What holds parts to the frame: tabs and their bolts, bolt groups, welds, the tube's wall under
 * them, rod ends; and what repeated load does to a weld.
 *
 * <p><b>Axes of a mount.</b> One set of axes serves everything from the pin to the wall. The face
 * is that of the tube; whoever knows the vehicle turns the load into these axes.
 *
 * <pre>
 *            z  out of the face
 *            |      ___
 *            |     / o \   hole: where a load arrives, at (0, 0, height)
 *            |     |   |
 *            |     |   |   tab, its plane is x-z
 *       -----+-----+---+------- face, z = 0
 *           /          x  along the tab's foot
 *          y  across the tab, along the pin
 * </pre>
 *
 * <p>A bolt group or a weld lies in the face: its spots have x and y. A force along +z pulls the
 * tab off. Forces [N], moments [N·m], lengths [m], stresses [Pa].
 *
 * <p><b>What divides a capacity.</b> {@link rungwork.joint.Factors}: the design factor divides
 * every capacity; one on ultimate strength is divided by γM2 (EN 1993-1-8) or multiplied by φ (AISC
 * 360) besides. Each check says so in its basis. A second opinion is a check of its own, on its own
 * basis.
 *
 * <p><b>Outside.</b> A rule used outside its range shows its number and says "outside …"; where no
 * rule with a source is at hand, the check says "not checked" and why. Beside a weld the material
 * counts with its welded-zone strength. A fillet's throat is 1/√2 of its leg.
 *
 * <p>Reading order: {@link rungwork.joint.Joint}, {@link rungwork.joint.FaceLoad}, {@link
 * rungwork.joint.Factors}; {@link rungwork.joint.Bolt}, {@link rungwork.joint.Tab}, {@link
 * rungwork.joint.Pivot}; {@link rungwork.joint.Spot}, {@link rungwork.joint.BoltGroup}, {@link
 * rungwork.joint.WeldGroup} (both share a wrench by {@code Pattern}; a bolted plate that bends is a
 * {@code PriedGroup}, one held by friction a {@code SlipResistance}); {@link
 * rungwork.joint.TubeWall}, {@link rungwork.joint.PlateOnTube}, {@link rungwork.joint.Bracket},
 * {@link rungwork.joint.ThroughBolt}; {@link rungwork.joint.RodEnd}; {@link
 * rungwork.joint.FatigueScreening}. Inside, a {@code Finding} is what a rule found and becomes a
 * check when it answers a {@code Question}; the rules for a tab's hole, {@code TabEye}, {@code
 * LiftingLug} and {@code ObliqueLug}, read a {@code PinnedPlate}, those for the bolt in it a {@code
 * LoadedPivot}, those for a weld its {@code WeldPlace}s under {@code SeamRules}.
 *
 * <p>Sources: EN 1993-1-8:2005 (bolts, pins, welds, plates on hollow sections), EN 1993-1-1:2005
 * (buckling), EN 1993-1-9:2005 and IIW-1823-07 (fatigue), AISC 360-16 (D5, J2, J3, J7, K), ASME
 * BTH-1 (pinned plates), ISO 898-1, SAE J429, ISO 273 (bolts and holes), Budynas &amp; Nisbett
 * (groups), the AISC Manual, part 9 (prying). The aircraft handbooks' interaction for a lug under
 * an oblique load is a second opinion; their charts are not at hand, closed forms on the safe side
 * stand in for them ({@code ObliqueLug}).
 *
 * <p>This room must not know vehicles.
 */
package rungwork.joint;
