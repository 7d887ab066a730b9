package rungwork.study;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;

/** How measures change along one input, as one curve or a family of them. Immutable. */
public final class Family {
  /** Steps of a curve beyond which nobody sees a difference [1]. */
  private static final int MOST_STEPS = 10_000;

  private final String name;
  private final Input across;
  private final double[] steps;
  private final List<String> curves;
  private final Answers answers;

  private Family(String name, Input across, double[] steps, List<String> curves, Answers answers) {
    this.name = name;
    this.across = across;
    this.steps = steps;
    this.curves = curves;
    this.answers = answers;
  }

  static Family of(
      String name,
      Input across,
      List<Setting> curves,
      int steps,
      BiFunction<Integer, IntFunction<Setting>, Answers> run) {
    if (steps < 2) {
      throw new ModelException(
          "a curve along %s needs 2 steps at least, not %d".formatted(across.name(), steps));
    }
    if (steps > MOST_STEPS) {
      throw new ModelException(
          "a curve along %s needs no more than %d steps, not %d"
              .formatted(across.name(), MOST_STEPS, steps));
    }
    double low = across.spread().low();
    double high = across.spread().high();
    double[] at =
        IntStream.range(0, steps).mapToDouble(i -> low + (high - low) * i / (steps - 1)).toArray();
    Answers answers =
        run.apply(steps * curves.size(), i -> curves.get(i / steps).with(across, at[i % steps]));
    return new Family(name, across, at, List.of("as designed"), answers);
  }

  /** The same with the curves named by the values of another input. */
  Family named(Input each, double[] values) {
    List<String> names =
        Arrays.stream(values)
            .mapToObj(value -> each.name() + " " + Units.METRIC.show(each.kind(), value))
            .toList();
    return new Family(name, across, steps, names, answers);
  }

  /**
   * The study's name.
   *
   * @return what it is about
   */
  public String name() {
    return name;
  }

  /**
   * The input that runs across.
   *
   * @return the input
   */
  public Input across() {
    return across;
  }

  /**
   * Its values.
   *
   * @return from the lowest [SI]
   */
  public double[] steps() {
    return steps.clone();
  }

  /**
   * The curves.
   *
   * @return their names
   */
  public List<String> curves() {
    return curves;
  }

  /**
   * What a measure's numbers measure.
   *
   * @param measure its name
   * @return the kind
   */
  public Kind kind(String measure) {
    return answers.asked().get(answers.measure(measure)).kind();
  }

  /**
   * What was measured.
   *
   * @return the measures' names
   */
  public List<String> measures() {
    return answers.asked().stream().map(Asked::name).toList();
  }

  /**
   * A measure along a curve.
   *
   * @param measure its name
   * @param curve the curve's name
   * @return a number for each step [SI]; not a number where the model refused it
   */
  public double[] values(String measure, String curve) {
    int m = answers.measure(measure);
    int c = curves.indexOf(curve);
    if (c < 0) {
      throw new ModelException(
          "there is no curve named %s; there are %s".formatted(curve, String.join(", ", curves)));
    }
    return IntStream.range(0, steps.length)
        .mapToDouble(i -> answers.number(m, c * steps.length + i))
        .toArray();
  }

  /**
   * The best value of a measure along a curve.
   *
   * @param measure its name
   * @param curve the curve's name
   * @param units the reader's units
   * @return for example {@code utilisation: best 0.62 at station −450 mm, worst 0.94 at 100 mm}
   */
  public String line(String measure, String curve, Units units) {
    Asked asked = answers.asked().get(answers.measure(measure));
    double[] values = values(measure, curve);
    int[] order =
        IntStream.range(0, values.length)
            .filter(i -> !Double.isNaN(values[i]))
            .boxed()
            .sorted((a, b) -> Double.compare(values[a], values[b]))
            .mapToInt(Integer::intValue)
            .toArray();
    if (order.length == 0) {
      return measure + ": no number along " + across.name();
    }
    boolean less = asked.better() == Measure.Better.LESS;
    int best = order[less ? 0 : order.length - 1];
    int worst = order[less ? order.length - 1 : 0];
    return "%s: best %s at %s %s, worst %s at %s"
        .formatted(
            measure,
            asked.show(values[best], units),
            across.name(),
            units.show(across.kind(), steps[best]),
            asked.show(values[worst], units),
            units.show(across.kind(), steps[worst]));
  }

  /**
   * What the model refused.
   *
   * @return one line for each point that was refused or not reached
   */
  public List<String> refusals() {
    return IntStream.range(0, answers.count())
        .filter(i -> !answers.answered(i))
        .mapToObj(
            i ->
                "%s, %s %s: %s"
                    .formatted(
                        curves.get(i / steps.length),
                        across.name(),
                        Units.METRIC.show(across.kind(), steps[i % steps.length]),
                        answers.refusal(i)))
        .toList();
  }

  /**
   * A measure along all curves as a table.
   *
   * @param measure its name
   * @param units the reader's units
   * @return a row for each step, a column for each curve
   */
  public Table table(String measure, Units units) {
    Asked asked = answers.asked().get(answers.measure(measure));
    double scale = asked.unit().isEmpty() ? units.scale(asked.kind()).inSi() : 1;
    double along = units.scale(across.kind()).inSi();
    Table table =
        Table.create(
            asked.head(units),
            DoubleColumn.create(
                new Asked(across.name(), across.kind(), "", Measure.Better.LESS).head(units),
                Arrays.stream(steps).map(step -> step / along).toArray()));
    for (String curve : curves) {
      table.addColumns(
          DoubleColumn.create(
              curve, Arrays.stream(values(measure, curve)).map(v -> v / scale).toArray()));
    }
    return table;
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(name + " along " + across.name() + ":");
    for (String curve : curves) {
      measures()
          .forEach(
              measure ->
                  out.append("\n- ")
                      .append(curves.size() > 1 ? curve + ", " : "")
                      .append(line(measure, curve, Units.METRIC)));
    }
    refusals().forEach(refusal -> out.append("\n- refused: ").append(refusal));
    return out.toString();
  }
}
