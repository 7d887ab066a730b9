package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.material.Material;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Outline;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Torsion;

/** The table of a section's properties: what is equal by symmetry stands once. */
final class SectionProperties {
  /** Closer than this part of themselves two values are one [1]. */
  private static final double ROUNDING = 1e-6;

  private final Section section;
  private final Properties p;
  private final Units units;
  private final List<Row> rows = new ArrayList<>();

  private SectionProperties(Section section, Units units) {
    this.section = section;
    this.p = section.properties();
    this.units = units;
  }

  static Table of(Section section, Optional<Material> material, Units units) {
    SectionProperties table = new SectionProperties(section, units);
    table.mass(material);
    table.stiffness();
    table.torsion();
    table.bending();
    table.places();
    return new Table(
        List.of(
            Column.words("property"),
            Column.words("symbol"),
            Column.number("value"),
            Column.brief("unit")),
        table.rows);
  }

  /** Whether y and z are no principal axes. */
  static boolean leans(Section section) {
    Properties p = section.properties();
    return Math.abs(p.iyz()) > ROUNDING * (p.iy() + p.iz());
  }

  /** Mass of a metre; without a material that of steel, which the row says. */
  private void mass(Optional<Material> material) {
    double density = material.map(one -> one.elasticity().density()).orElse(SectionPage.STEEL);
    String what = "mass of a length" + (material.isPresent() ? "" : ", steel");
    add(what, "m", Kind.MASS_PER_LENGTH, p.area() * density);
  }

  private void stiffness() {
    add("area", "A", Kind.AREA, p.area());
    add("second moment about y", "Iy", Kind.SECOND_MOMENT, p.iy());
    add("second moment about z", "Iz", Kind.SECOND_MOMENT, p.iz());
    add("radius of gyration about y", "iy", Kind.LENGTH, Math.sqrt(p.iy() / p.area()));
    add("radius of gyration about z", "iz", Kind.LENGTH, Math.sqrt(p.iz() / p.area()));
    if (leans(section)) {
      add("product of inertia", "Iyz", Kind.SECOND_MOMENT, p.iyz());
      add("second moment about u", "Iu", Kind.SECOND_MOMENT, p.strongest());
      add("second moment about v", "Iv", Kind.SECOND_MOMENT, p.weakest());
      add("strong axis u from y to z", "α", Kind.ANGLE, p.principalAngle());
    }
  }

  private void torsion() {
    add("torsion constant", "It", Kind.SECOND_MOMENT, p.it());
    if (!section.points().isEmpty()) {
      add("torsion modulus", "Wt", Kind.SECTION_MODULUS, section.torsionModulus());
    }
    if (section.torsion() == Torsion.OPEN) {
      warping();
    }
  }

  /** Of a closed or solid section it counts for nothing. */
  private void warping() {
    if (p.iw() > ROUNDING * p.iwAcross()) {
      add("warping constant", "Iw", Kind.WARPING_CONSTANT, p.iw());
    }
    if (p.iwAcross() > 0) {
      add("warping across the walls", "Iw,t", Kind.WARPING_CONSTANT, p.iwAcross());
    }
  }

  private void bending() {
    if (section.outline().loops().isEmpty()) {
      add("elastic modulus about y", "Wel,y", Kind.SECTION_MODULUS, p.wely());
      add("elastic modulus about z", "Wel,z", Kind.SECTION_MODULUS, p.welz());
    } else {
      edges(new Outline.Moduli(section));
    }
    add("plastic modulus about y", "Wpl,y", Kind.SECTION_MODULUS, p.wply());
    add("plastic modulus about z", "Wpl,z", Kind.SECTION_MODULUS, p.wplz());
    if (leans(section) && !section.outline().loops().isEmpty()) {
      Outline.Moduli moduli = new Outline.Moduli(section);
      double axis = p.principalAngle();
      add("plastic modulus about u", "Wpl,u", Kind.SECTION_MODULUS, moduli.plastic(axis));
      double weak = moduli.plastic(axis + Math.PI / 2);
      add("plastic modulus about v", "Wpl,v", Kind.SECTION_MODULUS, weak);
    }
    add("shear area along y", "Av,y", Kind.AREA, p.shearY());
    add("shear area along z", "Av,z", Kind.AREA, p.shearZ());
  }

  private void edges(Outline.Moduli moduli) {
    pair("y", "top", moduli.top(), "bottom", moduli.bottom());
    pair("z", "left", moduli.left(), "right", moduli.right());
  }

  private void pair(String axis, String one, double first, String other, double second) {
    String symbol = "Wel," + axis;
    if (Math.abs(first - second) <= ROUNDING * first) {
      add("elastic modulus about " + axis, symbol, Kind.SECTION_MODULUS, first);
    } else {
      add("modulus about " + axis + ", " + one, symbol, Kind.SECTION_MODULUS, first);
      add("modulus about " + axis + ", " + other, symbol, Kind.SECTION_MODULUS, second);
    }
  }

  private void places() {
    if (!section.outline().loops().isEmpty()) {
      place("centroid from bottom edge", "ez", section.outline().furthest(spot -> -spot.z()));
      place("centroid from right edge", "ey", section.outline().furthest(spot -> -spot.y()));
    }
    place("shear centre along y", "yS", p.shearCentreY());
    place("shear centre along z", "zS", p.shearCentreZ());
  }

  private void place(String what, String symbol, double metres) {
    String shown = Numbers.place(metres, units) + " " + units.scale(Kind.LENGTH).unit();
    rows.add(Numbers.property(what, symbol, shown));
  }

  private void add(String what, String symbol, Kind kind, double value) {
    rows.add(Numbers.property(what, symbol, units.show(kind, value)));
  }
}
