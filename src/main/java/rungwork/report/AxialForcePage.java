package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Outline;
import rungwork.section.Section;
import rungwork.section.Torsion;

/**
 * What an axial force leaves of a section's plastic moments about y and z: the exact curve of its
 * outline, for tubes the standard's beside it, and how far that stands on the unsafe side.
 */
final class AxialForcePage {
  private static final int STEPS = 100;

  /** Closer than this both axes have one curve [1]. */
  private static final double ONE = 1e-6;

  private static final String STANDARD = ", EN 1993-1-1";

  private final Section section;
  private final Outline.Moduli moduli;
  private final List<Plot.Curve> curves = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  private AxialForcePage(Section section) {
    this.section = section;
    moduli = new Outline.Moduli(section);
  }

  static Page of(Section section, Units units) {
    return new AxialForcePage(section).page(units);
  }

  private Page page(Units units) {
    about("y", 0, "first");
    if (Math.abs(moduli.plastic(0) / moduli.plastic(Math.PI / 2) - 1) > ONE) {
      about("z", Math.PI / 2, "second");
    }
    remarks.add(
        "in tension or compression without buckling; shear and torsion take their own share");
    Plot plot =
        Plot.of(
            "Plastic moment left by an axial force: " + section.name(),
            new Plot.Axis("axial force over that at yield", Kind.RATIO),
            new Plot.Axis("moment over the yield strength", Kind.SECTION_MODULUS),
            curves.stream().map(AxialForcePage::drawn).toList());
    return new Page(
        List.of(
            new Block.Title("Plastic moment and axial force: " + section.name()),
            new Block.Figure(plot.picture(units)),
            table(units),
            new Block.Remarks(remarks)));
  }

  private void about(String axis, double angle, String css) {
    curve(axis + ", exact", css, n -> moduli.plastic(angle, n));
    if (section.torsion() == Torsion.CLOSED) {
      double plain = moduli.plastic(angle);
      curve("about " + axis + STANDARD, css + " low", n -> plain * moduli.byStandard(angle, n));
      remarks.add(gap(axis, angle));
    }
  }

  private void curve(String name, String css, DoubleUnaryOperator left) {
    double[] share = shares().toArray();
    curves.add(new Plot.Curve(name, css, share, DoubleStream.of(share).map(left).toArray()));
  }

  /** Drawn from its far end, so that its name stands where its level part ends. */
  private static Plot.Curve drawn(Plot.Curve curve) {
    return curve.name().endsWith(STANDARD)
        ? new Plot.Curve(curve.name(), curve.css(), reversed(curve.x()), reversed(curve.y()))
        : curve;
  }

  private static double[] reversed(double[] values) {
    return IntStream.range(0, values.length)
        .mapToDouble(i -> values[values.length - 1 - i])
        .toArray();
  }

  private static DoubleStream shares() {
    return IntStream.rangeClosed(0, STEPS).mapToDouble(i -> (double) i / STEPS);
  }

  /** How far the standard's curve lies beside the exact one. */
  private String gap(String axis, double angle) {
    DoubleUnaryOperator above =
        n -> moduli.byStandard(angle, n) - moduli.plastic(angle, n) / moduli.plastic(angle);
    double unsafe = shares().map(above).max().orElseThrow();
    double at = shares().filter(n -> above.applyAsDouble(n) == unsafe).findFirst().orElse(0);
    double safe = -shares().map(above).min().orElseThrow();
    return "about %s EN 1993-1-1, 6.2.9.1 stands up to %s %% of the plastic moment on the unsafe side, at %s of the force at yield, and up to %s %% on the safe side"
        .formatted(axis, percent(unsafe), Scale.NUMBER.number(at, 2), percent(safe));
  }

  private static String percent(double part) {
    return Scale.NUMBER.number(100 * part, 2);
  }

  private Table table(Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.number("N/(A·fy)")));
    String unit = units.scale(Kind.SECTION_MODULUS).unit();
    curves.forEach(curve -> columns.add(Column.number("M/fy about " + curve.name(), unit)));
    List<Row> rows =
        IntStream.rangeClosed(0, 10).map(i -> i * STEPS / 10).mapToObj(i -> row(i, units)).toList();
    return new Table(columns, rows);
  }

  private Row row(int step, Units units) {
    List<String> cells = new ArrayList<>(List.of(Numbers.decimals((double) step / STEPS, 1)));
    for (Plot.Curve curve : curves) {
      double whole = curve.y()[0];
      cells.add(Numbers.beside(curve.y()[step], whole, Kind.SECTION_MODULUS, units));
    }
    return Row.of(cells.toArray(String[]::new));
  }
}
