package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rungwork.fault.Scale;
import rungwork.impact.Crash;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/** One run of a crash: pulse with its events, speed and crush over time, where the energy went. */
final class CrashPage {
  private static final Plot.Axis TIME = new Plot.Axis("time", Kind.TIME);

  private CrashPage() {}

  static Page of(Crash crash, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Crash: " + crash.model().name());
    blocks.add(
        new Block.Paragraph(
            units.show(Kind.MASS, crash.model().mass())
                + " at "
                + units.scale(Kind.SPEED).show(crash.model().speed(), 3)
                + "; one combination of inputs, so single numbers. Run low and high for a range."));
    blocks.add(new Block.Figure(pulse(crash).picture(units)));
    blocks.add(new Block.Figure(speed(crash).picture(units)));
    blocks.add(new Block.Figure(force(crash).picture(units)));
    blocks.add(parts(crash, units));
    blocks.add(masses(crash, units));
    blocks.add(
        new Block.Paragraph(
            "Energy balance open by "
                + new Scale("%", 0.01).show(crash.residual(), 2)
                + " of the initial kinetic energy; above 0.1 % nothing would be shown."));
    ImpactBlocks.remarks(blocks, "Look again", crash.marks(units));
    ImpactBlocks.remarks(blocks, "Assumed", crash.assumptions());
    return ImpactBlocks.end(blocks);
  }

  private static Plot pulse(Crash crash) {
    List<Plot.Curve> curves = new ArrayList<>();
    Crash.Body body = crash.body("body");
    curves.add(new Plot.Curve("body", "first", body.times(), body.decelerations()));
    crash
        .model()
        .motor()
        .map(motor -> crash.body(motor.name()))
        .ifPresent(
            m -> curves.add(new Plot.Curve(m.name(), "second", m.times(), m.decelerations())));
    return Plot.of(
            "Deceleration over time: " + crash.model().name(),
            TIME,
            new Plot.Axis("deceleration", Kind.ACCELERATION),
            curves)
        .with(
            crash.events().stream()
                .map(event -> new Plot.Mark(event.time(), event.label()))
                .toList());
  }

  private static Plot speed(Crash crash) {
    Crash.Body body = crash.body("body");
    return Plot.of(
        "Speed of the body over time",
        TIME,
        new Plot.Axis("speed", Kind.SPEED),
        List.of(new Plot.Curve("body", "first", body.times(), body.speeds())));
  }

  private static Plot force(Crash crash) {
    String[] lines = {"first", "second", "third"};
    List<Plot.Curve> curves = new ArrayList<>();
    for (int i = 0; i < crash.parts().size(); i++) {
      Crash.Part part = crash.parts().get(i);
      curves.add(new Plot.Curve(part.curve().name(), lines[i % 3], part.crush(), part.force()));
    }
    return Plot.of(
        "Force over crush of each part, loading and letting go",
        new Plot.Axis("crush of the part", Kind.LENGTH),
        new Plot.Axis("force", Kind.FORCE),
        curves);
  }

  private static Table parts(Crash crash, Units units) {
    double whole = crash.parts().stream().mapToDouble(Crash.Part::energy).sum();
    List<Row> rows =
        crash.parts().stream()
            .map(
                part ->
                    Row.of(
                        part.curve().name(),
                        units.scale(Kind.LENGTH).number(part.mostCrush(), 3),
                        units.scale(Kind.FORCE).number(part.mostForce(), 3),
                        units.scale(Kind.ENERGY).number(part.energy(), 3),
                        Numbers.decimals(100 * part.energy() / whole, 0)))
            .toList();
    return new Table(
        List.of(
            Column.words("part"),
            Column.number("most crush", units.scale(Kind.LENGTH).unit()),
            Column.number("most force", units.scale(Kind.FORCE).unit()),
            Column.number("energy", units.scale(Kind.ENERGY).unit()),
            Column.number("share", "%")),
        rows);
  }

  private static Table masses(Crash crash, Units units) {
    List<Row> rows =
        crash.bodies().stream()
            .map(
                body ->
                    Row.of(
                        body.name(),
                        units.scale(Kind.MASS).number(body.mass(), 4),
                        units.scale(Kind.ACCELERATION).number(peak(body), 3)))
            .toList();
    return new Table(
        List.of(
            Column.words("mass"),
            Column.number("size", units.scale(Kind.MASS).unit()),
            Column.number("highest deceleration", units.scale(Kind.ACCELERATION).unit())),
        rows);
  }

  private static double peak(Crash.Body body) {
    return DoubleStream.of(body.decelerations()).map(Math::abs).max().orElseThrow();
  }
}
