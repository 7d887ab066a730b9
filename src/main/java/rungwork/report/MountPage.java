package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.frame.Wrench;
import rungwork.joint.Joint;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.CornerForces;
import rungwork.loadpath.MountChain;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Cell;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * One mount: what is weakest within each basis, a sketch to scale with the forces of the governing
 * load case, the loads on their way from the tyre, and the parts in order with the working under
 * each.
 */
final class MountPage {
  private MountPage() {}

  /** A mount that nothing pushes yet. */
  static Page of(MountChain chain, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Mount " + chain.mount()));
    blocks.add(new Block.Figure(MountSketch.of(chain, Optional.empty(), units)));
    blocks.add(new Block.Remarks(chain.parts().stream().map(Joint::name).toList()));
    return new Page(blocks);
  }

  static Page of(ChainSheet sheet, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Mount " + sheet.chain().mount()));
    blocks.add(new Block.VerdictLine(sheet.sheet().verdictLine()));
    sheet.sheet().cautions().forEach(caution -> blocks.add(new Block.Warning(caution.text())));
    blocks.add(new Block.Figure(MountSketch.of(sheet.chain(), drawn(sheet), units)));
    blocks.addAll(weakest(sheet));
    blocks.addAll(chains(sheet, units));
    blocks.addAll(loads(sheet, units));
    blocks.addAll(SheetPage.gaps(sheet.sheet(), units));
    return new Page(blocks);
  }

  /** The load case to draw: that of the governing check, or else the first. */
  private static Optional<ChainSheet.Arrival> drawn(ChainSheet sheet) {
    return sheet
        .sheet()
        .governing()
        .flatMap(check -> sheet.arrival(check.loadCase()))
        .or(() -> sheet.arrivals().stream().findFirst());
  }

  private static List<Block> weakest(ChainSheet sheet) {
    return List.of(
        new Block.Heading("Weakest of each basis"), new Block.Remarks(sheet.weakestOfEach()));
  }

  /** The parts of each basis, worst first: bars to compare, the working folded. */
  private static List<Block> chains(ChainSheet sheet, Units units) {
    List<Block> blocks = new ArrayList<>();
    sheet
        .ranked()
        .forEach(
            (basis, checks) -> {
              blocks.add(new Block.Heading(heading(basis)));
              List<UtilisationBars.Entry> bars = checks.stream().map(MountPage::bar).toList();
              blocks.add(new Block.Figure(UtilisationBars.of("Utilisation by part", bars)));
              blocks.add(
                  new Block.Folded(
                      "Working of each part's governing check", SheetPage.table(checks, units)));
            });
    return blocks;
  }

  private static String heading(Basis basis) {
    String words = ChainSheet.shortly(basis);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static UtilisationBars.Entry bar(Check check) {
    return new UtilisationBars.Entry(
        check.part(),
        check.utilisation().stream().boxed().findFirst(),
        check.what() + ", " + check.loadCase(),
        check.made() ? "" : "open");
  }

  private static List<Block> loads(ChainSheet sheet, Units units) {
    List<Block> blocks = new ArrayList<>();
    if (!sheet.corners().isEmpty()) {
      blocks.add(new Block.Heading("On the tyre"));
      blocks.add(
          new Table(
              columns(units, "load case", List.of("forward", "left", "up"), "moment about z"),
              sheet.corners().stream().map(corner -> tyre(corner, units)).toList()));
    }
    blocks.add(new Block.Heading("On the mount, along the vehicle's axes and the tab's"));
    blocks.add(arrivals(sheet, units));
    return blocks;
  }

  private static List<Column> columns(
      Units units, String first, List<String> forces, String moment) {
    List<Column> columns = new ArrayList<>(List.of(Column.sentence(first)));
    forces.forEach(head -> columns.add(Column.number(head, units.scale(Kind.FORCE).unit())));
    columns.add(Column.number(moment, units.scale(Kind.MOMENT).unit()));
    return columns;
  }

  private static Row tyre(CornerForces corner, Units units) {
    Wrench w = corner.tyre();
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(corner.loadCase())));
    forces(cells, w, units);
    cells.add(Cell.of(units.scale(Kind.MOMENT).number(w.mz(), 3)));
    return Row.of(cells.toArray(Cell[]::new));
  }

  private static Table arrivals(ChainSheet sheet, Units units) {
    List<String> heads =
        List.of("forward", "left", "up", "along the foot", "along the pin", "off the face");
    List<Column> columns = new ArrayList<>(List.of(Column.sentence("load case")));
    String unit = units.scale(Kind.FORCE).unit();
    heads.forEach(head -> columns.add(Column.number(head, unit)));
    List<Row> rows = new ArrayList<>();
    for (ChainSheet.Arrival arrival : sheet.arrivals()) {
      List<Cell> cells = new ArrayList<>(List.of(Cell.of(arrival.load().loadCase())));
      forces(cells, arrival.force().wrench(), units);
      forces(cells, arrival.load().wrench(), units);
      rows.add(Row.of(cells.toArray(Cell[]::new)));
    }
    return new Table(columns, rows);
  }

  private static void forces(List<Cell> cells, Wrench w, Units units) {
    double size = Math.hypot(Math.hypot(w.fx(), w.fy()), w.fz());
    for (double force : new double[] {w.fx(), w.fy(), w.fz()}) {
      cells.add(Cell.of(Numbers.beside(force, size, Kind.FORCE, units)));
    }
  }
}
