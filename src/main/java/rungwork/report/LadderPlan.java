package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.check.CheckSheet;
import rungwork.frame.Mass;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Vehicle;

/**
 * A ladder seen from above and from its left, to scale, with dimensions as on a workshop drawing.
 *
 * @param ladder the ladder
 * @param vehicle whose masses and axles are drawn too, if any
 * @param sheet whose utilisations colour and label the members, if any
 */
public record LadderPlan(Ladder ladder, Optional<Vehicle> vehicle, Optional<CheckSheet> sheet)
    implements Shown {
  private static final double WIDTH = 780;

  /**
   * A ladder alone.
   *
   * @param ladder the ladder
   * @return its plan
   */
  public static LadderPlan of(Ladder ladder) {
    return new LadderPlan(ladder, Optional.empty(), Optional.empty());
  }

  /**
   * The same plan with masses as circles and the axles.
   *
   * @param carried the vehicle
   * @return the fuller plan
   */
  public LadderPlan with(Vehicle carried) {
    return new LadderPlan(ladder, Optional.of(carried), sheet);
  }

  /**
   * The same plan with each member in the colour of its governing check.
   *
   * @param checks a sheet whose parts are this ladder's members
   * @return the fuller plan
   */
  public LadderPlan with(CheckSheet checks) {
    return new LadderPlan(ladder, vehicle, Optional.of(checks));
  }

  /**
   * The drawing alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture picture(Units units) {
    return new PlanDrawing(this, units).draw();
  }

  /**
   * The ladder from its left, in the same scale, with heights above the ground.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture elevation(Units units) {
    return new ElevationDrawing(this, units).draw();
  }

  /** How large both drawings are [px/m]. */
  double scale() {
    Stream<Point> heavy = vehicle.stream().flatMap(v -> v.masses().stream().map(Mass::at));
    Stream<Point> nodes = ladder.frame(Joints.RIGID).nodes().stream().map(Node::at);
    return WIDTH / Sight.plan(1).around(Stream.concat(heavy, nodes).toList()).width();
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Ladder " + ladder.name() + " in plan"));
    sheet.ifPresent(checks -> blocks.add(new Block.VerdictLine(checks.verdictLine())));
    blocks.add(new Block.Figure(picture(units)));
    blocks.add(fromTheLeft(units));
    sheet.ifPresent(
        checks -> checks.cautions().forEach(one -> blocks.add(new Block.Warning(one.text()))));
    blocks.add(crossmembers(units));
    if (!ladder.kickUps().isEmpty()) {
      blocks.add(kickUps(units));
    }
    if (!ladder.mounts().isEmpty()) {
      blocks.add(new Block.Folded(ladder.mounts().size() + " mounts", List.of(mounts(units))));
    }
    return new Page(blocks);
  }

  /** Heights matter most while a frame is drawn up; beside its checks they are folded. */
  private Block fromTheLeft(Units units) {
    Block figure = new Block.Figure(elevation(units));
    return sheet.isEmpty() ? figure : new Block.Folded("The same from the left", List.of(figure));
  }

  private Table crossmembers(Units units) {
    List<Row> rows = new ArrayList<>();
    for (Crossmember one : ladder.crossmembers()) {
      rows.add(
          Row.of(
              one.part(),
              Numbers.dimension(one.x(), units),
              one.stock().section().name(),
              one.stock().material().name()));
    }
    return new Table(
        List.of(
            Column.words("crossmember"),
            Column.number("station x", units.scale(Kind.LENGTH).unit()),
            Column.words("section"),
            Column.words("material")),
        rows);
  }

  private Table kickUps(Units units) {
    String unit = units.scale(Kind.LENGTH).unit();
    List<Row> rows = new ArrayList<>();
    for (Ladder.KickUp one : ladder.kickUps()) {
      rows.add(
          Row.of(
              one.name(),
              Numbers.dimension(one.foot(), units),
              Numbers.dimension(one.head(), units),
              Numbers.dimension(one.rise(), units)));
    }
    return new Table(
        List.of(
            Column.words("kick-up"),
            Column.number("foot x", unit),
            Column.number("head x", unit),
            Column.number("rise", unit)),
        rows);
  }

  private Table mounts(Units units) {
    String unit = units.scale(Kind.LENGTH).unit();
    List<Row> rows = new ArrayList<>();
    for (Mount mount : ladder.mounts()) {
      rows.add(
          Row.of(
              mount.name(),
              mount.member(),
              Numbers.dimension(mount.at().x(), units),
              Numbers.dimension(mount.at().y(), units),
              Numbers.dimension(mount.at().z(), units)));
    }
    return new Table(
        List.of(
            Column.words("mount"),
            Column.words("carried by"),
            Column.number("x", unit),
            Column.number("y", unit),
            Column.number("z", unit)),
        rows);
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
