package rungwork.report;

import java.util.List;
import rungwork.impact.Pulse;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** A pulse: its curve, and the figures that are so easily taken for one another. */
final class PulsePage {
  private static final double THREE_MILLISECONDS = 3e-3;

  private PulsePage() {}

  static Page of(Pulse pulse, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Pulse: " + pulse.name());
    blocks.add(new Block.Figure(plot(pulse).picture(units)));
    blocks.add(
        new Table(List.of(Column.words("figure"), Column.number("value")), figures(pulse, units)));
    ImpactBlocks.remarks(blocks, "Look again", pulse.warnings());
    return ImpactBlocks.end(blocks);
  }

  private static List<Row> figures(Pulse pulse, Units units) {
    double speed = pulse.velocityChange();
    return List.of(
        row("peak", Kind.ACCELERATION, pulse.peak(), units),
        row("passed for 3 ms in all", Kind.ACCELERATION, pulse.clip(THREE_MILLISECONDS), units),
        row("mean over time", Kind.ACCELERATION, pulse.meanOverTime(), units),
        row("mean over distance, to rest", Kind.ACCELERATION, pulse.meanOverDistance(speed), units),
        row("duration", Kind.TIME, pulse.duration(), units),
        row("velocity change", Kind.SPEED, speed, units),
        row("way, from that speed to rest", Kind.LENGTH, pulse.stopDistance(speed), units));
  }

  private static Row row(String name, Kind kind, double value, Units units) {
    return Row.of(name, units.scale(kind).show(value, 3));
  }

  private static Plot plot(Pulse pulse) {
    return Plot.of(
            "Deceleration over time: " + pulse.name(),
            new Plot.Axis("time", Kind.TIME),
            new Plot.Axis("deceleration", Kind.ACCELERATION),
            List.of(new Plot.Curve(pulse.name(), "first", pulse.times(), pulse.decelerations())))
        .with(List.of(new Plot.Mark(pulse.peakTime(), "peak")));
  }
}
