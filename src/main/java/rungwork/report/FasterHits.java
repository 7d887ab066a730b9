package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import rungwork.fault.ModelException;
import rungwork.impact.CrushElement;
import rungwork.impact.RigidOrCrush;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;

/**
 * The same comparison at several closing speeds: what a faster hit does to each design.
 *
 * @param choices one a speed, rising
 */
public record FasterHits(List<RigidOrCrush> choices) implements Shown {
  private static final String[] LINES = {"first", "second", "third"};

  /** Refuses fewer than two speeds, which make no line. */
  public FasterHits {
    choices = List.copyOf(choices);
    if (choices.size() < 2) {
      throw new ModelException("give at least two speeds; one makes no line");
    }
    List<String> designs = designs(choices.get(0));
    for (RigidOrCrush choice : choices) {
      if (!designs(choice).equals(designs)) {
        throw new ModelException(
            "the speeds compare different designs: %s and %s".formatted(designs, designs(choice)));
      }
    }
  }

  private static List<String> designs(RigidOrCrush choice) {
    return choice.outcomes().stream().map(outcome -> outcome.design().name()).toList();
  }

  /**
   * Runs the comparison at each speed.
   *
   * @param choice what is compared
   * @param speeds rising, at least two
   * @return the comparisons
   */
  public static FasterHits of(RigidOrCrush choice, List<Quantity<Speed>> speeds) {
    return new FasterHits(speeds.stream().map(choice::at).toList());
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = ImpactBlocks.begin("Faster hits: " + choices.get(0).scene().name());
    blocks.add(
        new Block.Figure(
            plot(
                    "The vehicle's peak, over every combination",
                    one -> one.peak().low(),
                    one -> one.peak().high())
                .picture(units)));
    blocks.add(
        new Block.Figure(
            plot(
                    "The person's peak, over every combination",
                    one -> one.ride().peak().low(),
                    one -> one.ride().peak().high())
                .picture(units)));
    blocks.add(table(units));
    return ImpactBlocks.end(blocks);
  }

  private Plot plot(
      String title,
      ToDoubleFunction<RigidOrCrush.Outcome> low,
      ToDoubleFunction<RigidOrCrush.Outcome> high) {
    List<Plot.Curve> curves = new ArrayList<>();
    double[] speeds = choices.stream().mapToDouble(one -> one.scene().closing().high()).toArray();
    for (int i = 0; i < choices.get(0).outcomes().size(); i++) {
      String name = choices.get(0).outcomes().get(i).design().name();
      String line = LINES[i % LINES.length];
      curves.add(new Plot.Curve(name, line, speeds, values(i, high)));
      curves.add(new Plot.Curve("", line + " low", speeds, values(i, low)));
    }
    return Plot.of(
        title,
        new Plot.Axis("closing speed", Kind.SPEED),
        new Plot.Axis("deceleration", Kind.ACCELERATION),
        curves);
  }

  private double[] values(int design, ToDoubleFunction<RigidOrCrush.Outcome> value) {
    return choices.stream()
        .mapToDouble(choice -> value.applyAsDouble(choice.outcomes().get(design)))
        .toArray();
  }

  private Table table(Units units) {
    List<Row> rows = new ArrayList<>();
    for (RigidOrCrush choice : choices) {
      for (RigidOrCrush.Outcome one : choice.outcomes()) {
        long used =
            one.crashes().stream()
                .flatMap(crash -> crash.events().stream())
                .filter(event -> event.label().endsWith(": " + CrushElement.USED_UP))
                .count();
        rows.add(
            Row.of(
                choice.scene().closing().show(units),
                one.design().name(),
                one.peak().show(units),
                one.ride().peak().show(units),
                one.crush().show(units),
                used + " of " + one.crashes().size()));
      }
    }
    return new Table(
        List.of(
            Column.number("closing speed"),
            Column.words("design"),
            Column.number("vehicle, peak"),
            Column.number("person, peak"),
            Column.number("crush"),
            Column.number("stroke used up")),
        rows);
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
