package rungwork.study;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * What each input does to each measure when it alone goes to its low and to its high value. It says
 * nothing of inputs that move together, nor of what lies between. Immutable.
 */
public final class Sensitivity {
  private final String name;
  private final List<Input> inputs;
  private final Answers answers;

  Sensitivity(String name, List<Input> inputs, Answers answers) {
    this.name = name;
    this.inputs = inputs;
    this.answers = answers;
  }

  /**
   * What one input does to one measure.
   *
   * @param input the input
   * @param low the measure with the input at its low value [SI]; not a number where the model
   *     refused it
   * @param high the measure with the input at its high value [SI]; likewise
   */
  public record Swing(Input input, double low, double high) {
    /**
     * How far the measure moves between the two.
     *
     * @return the distance [SI]; zero where one of them is missing
     */
    public double size() {
      double size = Math.abs(high - low);
      return Double.isNaN(size) ? 0 : size;
    }
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
   * A measure with everything as designed.
   *
   * @param measure its name
   * @return the number [SI]
   */
  public double designed(String measure) {
    return answers.number(answers.measure(measure), 0);
  }

  /**
   * What each input does to a measure, the strongest first.
   *
   * @param measure its name
   * @return one swing for each input
   */
  public List<Swing> swings(String measure) {
    int m = answers.measure(measure);
    return IntStream.range(0, inputs.size())
        .mapToObj(
            i ->
                new Swing(
                    inputs.get(i), answers.number(m, 1 + 2 * i), answers.number(m, 2 + 2 * i)))
        .sorted(Comparator.comparingDouble(Swing::size).reversed())
        .toList();
  }

  /**
   * The input that matters most for a measure, in one line.
   *
   * @param measure its name
   * @param units the reader's units
   * @return for example {@code utilisation: rail wall matters most, 0.71 to 0.93 (0.81 as
   *     designed)}
   */
  public String line(String measure, Units units) {
    Asked asked = answers.asked().get(answers.measure(measure));
    Swing most = swings(measure).get(0);
    if (most.size() == 0) {
      return measure + ": no input moves it";
    }
    return "%s: %s matters most, %s to %s (%s as designed)"
        .formatted(
            measure,
            most.input().name(),
            asked.show(Math.min(most.low(), most.high()), units),
            asked.show(Math.max(most.low(), most.high()), units),
            asked.show(designed(measure), units));
  }

  /**
   * A number of a measure with its unit.
   *
   * @param measure its name
   * @param value the number [SI]
   * @param units the reader's units
   * @return for example {@code 0.81}
   */
  public String show(String measure, double value, Units units) {
    return answers.asked().get(answers.measure(measure)).show(value, units);
  }

  /**
   * What the model refused.
   *
   * @return one line for each input at a value that was refused or not reached
   */
  public List<String> refusals() {
    return IntStream.range(0, answers.count())
        .filter(i -> !answers.answered(i))
        .mapToObj(i -> place(i) + ": " + answers.refusal(i))
        .toList();
  }

  private String place(int index) {
    if (index == 0) {
      return "as designed";
    }
    Input input = inputs.get((index - 1) / 2);
    double value = index % 2 == 1 ? input.spread().low() : input.spread().high();
    return input.name() + " " + Units.METRIC.show(input.kind(), value);
  }

  /**
   * All swings of a measure as a table.
   *
   * @param measure its name
   * @param units the reader's units
   * @return a row for each input, the strongest first
   */
  public Table table(String measure, Units units) {
    Asked asked = answers.asked().get(answers.measure(measure));
    StringColumn input = StringColumn.create("input");
    StringColumn from = StringColumn.create("from");
    StringColumn to = StringColumn.create("to");
    StringColumn source = StringColumn.create("source");
    DoubleColumn low = DoubleColumn.create(asked.head(units) + " at low");
    DoubleColumn high = DoubleColumn.create(asked.head(units) + " at high");
    double scale = asked.unit().isEmpty() ? units.scale(asked.kind()).inSi() : 1;
    for (Swing swing : swings(measure)) {
      Input one = swing.input();
      input.append(one.name());
      from.append(units.show(one.kind(), one.spread().low()));
      to.append(units.show(one.kind(), one.spread().high()));
      low.append(swing.low() / scale);
      high.append(swing.high() / scale);
      source.append(one.source());
    }
    return Table.create("What moves the " + measure, input, from, to, low, high, source);
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder("What matters in " + name + ":");
    measures().forEach(measure -> out.append("\n- ").append(line(measure, Units.METRIC)));
    refusals().forEach(refusal -> out.append("\n- refused: ").append(refusal));
    return out.toString();
  }
}
