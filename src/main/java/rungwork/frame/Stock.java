package rungwork.frame;

import rungwork.material.Material;
import rungwork.section.Section;

/**
 * What a member is cut from: a section of a material.
 *
 * @param section the cross-section
 * @param material the material
 */
public record Stock(Section section, Material material) {}
