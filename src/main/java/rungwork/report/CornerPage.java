package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.frame.Wrench;
import rungwork.loadpath.CornerForces;
import rungwork.loadpath.MountForce;
import rungwork.loadpath.SuspensionMember;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.Mount;

/** A wheel's suspension under one load case: a sketch to scale, and the forces in numbers. */
final class CornerPage {
  private CornerPage() {}

  static Page of(CornerForces forces, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Corner " + forces.corner().name() + " under " + forces.loadCase()));
    blocks.add(new Block.Figure(CornerSketch.of(forces, units)));
    forces.corner().weakness().ifPresent(line -> blocks.add(new Block.VerdictLine(line)));
    bars(forces, units).ifPresent(blocks::add);
    blocks.add(new Block.Heading("On the mounts"));
    blocks.add(mounts(forces, units));
    return new Page(blocks);
  }

  private static Optional<Block> bars(CornerForces forces, Units units) {
    List<Row> rows = new ArrayList<>();
    double size = magnitude(forces.tyre());
    for (SuspensionMember member : forces.corner().members()) {
      if (member instanceof SuspensionMember.Bar) {
        double along = forces.along(member.name());
        String shown = Numbers.beside(Math.abs(along), size, Kind.FORCE, units);
        String word = along < 0 ? "compression" : "tension";
        rows.add(Row.of(member.name(), shown, shown.equals("0") ? "" : word));
      }
    }
    Column force = Column.number("force", units.scale(Kind.FORCE).unit());
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Table(List.of(Column.words("bar"), force, Column.words("")), rows));
  }

  private static Table mounts(CornerForces forces, Units units) {
    String unit = units.scale(Kind.FORCE).unit();
    List<Column> columns = new ArrayList<>(List.of(Column.words("mount"), Column.sentence("case")));
    List.of("forward", "left", "up").forEach(head -> columns.add(Column.number(head, unit)));
    double size = magnitude(forces.tyre());
    List<Row> rows = new ArrayList<>();
    for (Mount mount : forces.corner().mounts()) {
      for (MountForce on : forces.on(mount.name())) {
        Wrench w = on.wrench();
        rows.add(
            Row.of(
                mount.name(),
                on.loadCase(),
                Numbers.beside(w.fx(), size, Kind.FORCE, units),
                Numbers.beside(w.fy(), size, Kind.FORCE, units),
                Numbers.beside(w.fz(), size, Kind.FORCE, units)));
      }
    }
    return new Table(columns, rows);
  }

  private static double magnitude(Wrench w) {
    return Math.hypot(Math.hypot(w.fx(), w.fy()), w.fz());
  }
}
