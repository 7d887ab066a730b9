/**
 * Cross-sections: shapes, their properties, their stress points and their walls.
 *
 * <pre>
 *            z up
 *            |        x goes away from the reader, so that
 *       _____|_____   y left and z up look as they do from the driver's seat
 *      (     |     )
 *      |     |     |  height along z
 *  y --|-----o     |  origin at the centroid
 *  left|           |
 *      (___________)
 *       width along y
 * </pre>
 *
 * <p><b>Conventions.</b> SI units inside. Angles and paths run from y towards z, so a torque T &gt;
 * 0 drives the shear flow that way round. Moments and forces as in the frame: σ = N/A + My·z/Iy −
 * Mz·y/Iz at a fibre, and a shear stress counts along its wall's path.
 *
 * <p><b>Two models.</b> Everything that bending asks comes from the exact outline, corner radii
 * included: area, centroid, second moments, elastic and plastic moduli. Shear and torsion come from
 * the walls' centre lines: shear flow, shear areas by energy, shear centre, torsion constant
 * (Bredt's term of closed cells and a third of b·t³). Round and flat bars and round tubes use their
 * own closed forms. Against Saint-Venant's torsion solved on the exact outline the constant of a
 * cold-formed tube is right to 0.5 %, that of a hot-finished one up to 3.2 % low, because its
 * corners are thicker than its standard's formula knows.
 *
 * <p><b>Stress points</b> pair the normal stress of the outer fibre with the shear flow under it.
 * At a bend they stand on the corners of the tangent polygon, so that no fibre lies outside. No
 * place of a thin wall is stressed by more than 2 % beyond the worst of them; no fibre of a round
 * section by more than 0.9 %.
 *
 * <p><b>Warping.</b> The sectorial coordinate follows from the same walls, open or with cells,
 * about their shear centre; {@code iw} is that of centre lines, as tables print it, {@code
 * iwAcross} what the walls' thickness adds. A closed shape with a slit is open, however narrow the
 * slit.
 *
 * <p><b>Torsion of open walls</b> depends on how far the ends hold the warping; it is known only as
 * free to warp, and {@link rungwork.section.Torsion#known()} says so.
 *
 * <p><b>Tapered flanges</b> are rows of five pieces in shear and torsion. Where tables take such
 * flanges as parallel with their average thickness, as American ones do for the shear centre, the
 * place found here lies nearer to the web, because the metal does: by 15 % of its distance from the
 * web's back.
 *
 * <p><b>Torsion constants of rolled open shapes</b> and of plates welded to a T add the bulge where
 * walls meet and take off what free ends lack ({@code RolledTorsion}), as European tables do.
 * Against Saint-Venant's torsion solved on the exact outline they are right to 2 %; angles stand
 * 1.4 to 2 % high.
 *
 * <p><b>Several parts</b> count as one section where they are fastened along their length; {@link
 * rungwork.section.BuiltUp} says when they are. A weld between two walls passes shear on; its own
 * metal is not counted.
 *
 * <p><b>Holes</b> leave a section's properties gross and give it a {@link
 * rungwork.section.Section.Net} for stress.
 *
 * <p><b>Sizes that can be bought</b> stand in {@code data/}, one CSV file a table with the source
 * of every row. {@link rungwork.section.SizeTable} makes sections of their dimensions; what a table
 * prints beside them is compared with what is computed, never used. {@link
 * rungwork.section.SheetTable} keeps the systems of sheet numbers apart.
 *
 * <p>Reading order: {@link rungwork.section.Section} (bought shapes), {@link
 * rungwork.section.FoldedProfile} (whatever a press brake makes), {@link rungwork.section.BuiltUp}
 * (parts welded to each other), {@link rungwork.section.Properties}, {@link
 * rungwork.section.StressPoint}, {@link rungwork.section.Wall}, {@link rungwork.section.Torsion},
 * {@link rungwork.section.Outline.Moduli} (edges, inclined axes, axial force); for drawings {@link
 * rungwork.section.Outline} with {@link rungwork.section.Segment}; then the engines behind them,
 * {@code Moments}, {@code NeutralAxis}, {@code TiltedAxes}, {@code ThinWalls}, {@code Warping} and
 * {@code RolledTorsion}, what a flat frame asks, {@code FlatFrameFit}, and a shape such as {@code
 * RectangularTube}.
 *
 * <p>Sources: EN 10219-2:2006 and EN 10210-2:2006 for tubes; EN 1993-1-1:2005 table 5.2 for what
 * counts as a flat width; DIN 1026-1, ASTM A6/A6M and EN 10055 for rolled channels and tees; EN
 * 10056-1 for angles; El Darwish and Johnston (1965) for the torsion of rolled shapes; EN 1993-1-3
 * for what holds a folded edge; thin-wall theory as any textbook gives it.
 *
 * <p>This room must not know materials.
 */
package rungwork.section;
