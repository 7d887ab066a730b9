package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** A material's card: its figures with their source, or that nobody guarantees its strength. */
final class MaterialPage {
  private MaterialPage() {}

  static Page of(Material material, Units units) {
    List<Row> rows = new ArrayList<>();
    var elasticity = material.elasticity();
    rows.add(
        Numbers.property(
            "Young's modulus", "E", units.show(Kind.MODULUS, elasticity.youngsModulus())));
    rows.add(
        Numbers.property(
            "shear modulus", "G", units.show(Kind.MODULUS, elasticity.shearModulus())));
    rows.add(Numbers.property("density", "ρ", units.show(Kind.DENSITY, elasticity.density())));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Material " + material.name()));
    if (material instanceof RatedMaterial rated) {
      strengths(rows, rated.strength(), units);
    } else {
      blocks.add(
          new Block.VerdictLine("nobody guarantees its strength; state one to check against it"));
    }
    blocks.add(
        new Table(
            List.of(
                Column.words("property"),
                Column.words("symbol"),
                Column.number("value"),
                Column.brief("unit")),
            rows));
    blocks.add(new Block.Paragraph("Source: " + material.source()));
    return new Page(blocks);
  }

  private static void strengths(List<Row> rows, RatedMaterial.Strength strength, Units units) {
    rows.add(
        Numbers.property(
            "minimum yield strength", "fy", units.show(Kind.STRESS, strength.yield())));
    rows.add(
        Numbers.property(
            "minimum ultimate strength", "fu", units.show(Kind.STRESS, strength.ultimate())));
    rows.add(
        Numbers.property(
            "yield strength beside welds",
            "fy,w",
            units.show(Kind.STRESS, strength.weldedYield())));
  }
}
