/**
 * What members are made of: grades of steel and aluminium with their sources.
 *
 * <p>Strengths are minimum values. A grade that is sold without a guaranteed strength is an {@link
 * rungwork.material.UnratedMaterial} and gives none unless the user states it.
 *
 * <p>Reading order: {@link rungwork.material.Material}, {@link rungwork.material.Elasticity},
 * {@link rungwork.material.RatedMaterial}, {@link rungwork.material.UnratedMaterial}, {@link
 * rungwork.material.Source}. SI units inside.
 *
 * <p>This room must not know sections.
 */
package rungwork.material;
