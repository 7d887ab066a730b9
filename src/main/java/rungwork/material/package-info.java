/**
 * What members are made of: grades of steel and aluminium with their sources.
 *
 * <pre>
 *   Material.rated("S355J2H")                     strength guaranteed by its standard
 *   Material.unrated("A513 electric-welded")      none guaranteed; gives none ...
 *       .stating(MPa(230), MPa(330), "mill certificate 1234")    ... unless the user states one
 * </pre>
 *
 * <p>Conventions: strengths are minimum values; the welded-zone yield strength counts within 25 mm
 * of a weld; SI units inside. A strength that the user states shows in the material's name, so that
 * every output says so.
 *
 * <p>The grades stand in {@code data/materials.csv}, one row each with source, edition and how the
 * row got here; {@code data/datapackage.json} describes the columns. Strengths fall with thickness:
 * each row's note says for which thickness it holds, and nothing here checks that.
 *
 * <p>Reading order: {@link rungwork.material.Material}, {@link rungwork.material.Elasticity},
 * {@link rungwork.material.RatedMaterial}, {@link rungwork.material.UnratedMaterial}, {@link
 * rungwork.material.Source}.
 *
 * <p>Sources: EN 10219-1, EN 10025-2, EN 10149-2, ASTM A500 and A513, MIL-T-6736, a student
 * competition's rules for welded aluminium.
 *
 * <p>This room must not know sections.
 */
package rungwork.material;
