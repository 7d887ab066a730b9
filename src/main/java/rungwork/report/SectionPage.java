package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungwork.check.WallLimits;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.section.Torsion;

/**
 * A cross-section: drawn to scale where its outline is known, its properties, its stress points.
 */
final class SectionPage {
  /** Density of steel [kg/m³], as the European tables of sections take it. */
  static final double STEEL = 7850;

  private static final String FREE =
      "open: no wall closes a cell, and a slit or an unwelded seam, however narrow, leaves one"
          + " open; torsion constant and modulus are those of ends free to warp, held ends make it"
          + " stiffer and stress it along its length";

  private SectionPage() {}

  static Page of(Section section, Units units) {
    return of(section, Optional.empty(), units);
  }

  /** The card of a section in a material: its mass and its class are the material's too. */
  static Page of(Section section, Optional<Material> material, Units units) {
    List<Block> blocks = new ArrayList<>();
    String of = material.map(one -> " in " + one.name()).orElse("");
    blocks.add(new Block.Title("Section " + section.name() + of));
    if (!section.outline().loops().isEmpty()) {
      blocks.add(new Block.Figure(SectionDrawing.of(section, units)));
    }
    section
        .unfitForFlatFrame()
        .ifPresent(reason -> blocks.add(new Block.VerdictLine("not for a flat frame: " + reason)));
    section.net().ifPresent(net -> blocks.add(new Block.Paragraph(net(section, net, units))));
    material.ifPresent(one -> blocks.add(new Block.Paragraph(wallClass(section, one))));
    blocks.add(SectionProperties.of(section, material, units));
    if (section.torsion() == Torsion.OPEN) {
      blocks.add(new Block.Paragraph(FREE));
    }
    String summary = section.points().size() + " stress points, from the centroid";
    blocks.add(new Block.Folded(summary, List.of(points(section.points(), units))));
    return new Page(blocks);
  }

  /** What the holes leave for stress; the table below is of the gross section. */
  private static String net(Section section, Section.Net net, Units units) {
    String holes =
        net.holes().stream()
            .map(hole -> units.show(Kind.LENGTH, hole.diameter()) + " in " + hole.wall().name())
            .collect(Collectors.joining(", "));
    return "holes: %s; stress is that of the net section: A %s of %s, Iy %s, Iz %s, Wel,y %s, Wel,z %s; stiffness and stability are those of the gross one below"
        .formatted(
            holes,
            units.show(Kind.AREA, net.area()),
            units.show(Kind.AREA, section.properties().area()),
            units.show(Kind.SECOND_MOMENT, net.iy()),
            units.show(Kind.SECOND_MOMENT, net.iz()),
            units.show(Kind.SECTION_MODULUS, net.wely()),
            units.show(Kind.SECTION_MODULUS, net.welz()));
  }

  private static String wallClass(Section section, Material material) {
    return material instanceof RatedMaterial rated
        ? WallLimits.classInCompression(section, rated)
            + "; "
            + WallLimits.classInBending(section, rated)
            + "; "
            + WallLimits.americanInBending(section, rated)
        : "class not checked: nobody guarantees the yield strength of " + material.name();
  }

  private static Table points(List<StressPoint> points, Units units) {
    String unit = units.scale(Kind.LENGTH).unit();
    List<Row> rows =
        IntStream.range(0, points.size())
            .mapToObj(
                i ->
                    Row.of(
                        String.valueOf(i + 1),
                        points.get(i).name(),
                        Numbers.place(points.get(i).y(), units),
                        Numbers.place(points.get(i).z(), units)))
            .toList();
    return new Table(
        List.of(
            Column.number("no."),
            Column.words("where"),
            Column.number("y", unit),
            Column.number("z", unit)),
        rows);
  }
}
