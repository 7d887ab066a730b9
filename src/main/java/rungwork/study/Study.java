package rungwork.study;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import rungwork.csv.CsvLines;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.study.Answers.Run;
import tech.tablesaw.api.NumberColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * A model that is built anew from numbers which are not exactly known, and what is asked of it. The
 * same study answers what matters most ({@link #sensitivity}), how sure the answer is ({@link
 * #scatter}), and how it changes along one number ({@link #family}). Immutable; runs on all cores,
 * and no answer depends on how many.
 *
 * @param <D> what the model makes of a setting, such as an assessment
 */
public final class Study<D> {
  private final String name;
  private final List<Input> inputs;
  private final Function<Setting, D> model;
  private final List<Measure<D>> measures;
  private final Run run;

  private Study(
      String name,
      List<Input> inputs,
      Function<Setting, D> model,
      List<Measure<D>> measures,
      Run run) {
    this.name = name;
    this.inputs = inputs;
    this.model = model;
    this.measures = measures;
    this.run = run;
  }

  /** Is told how far long work has come, a few times a second. */
  @FunctionalInterface
  public interface Progress {
    /** Tells nobody. */
    Progress NONE = (done, total, left) -> {};

    /**
     * So much is done.
     *
     * @param done pieces of work that are done
     * @param total all pieces
     * @param left time that the rest takes at the speed so far; zero when all is done
     */
    void at(int done, int total, Duration left);
  }

  /**
   * A study.
   *
   * @param name what it is about
   * @param inputs the numbers, no two of one name
   * @param model builds what is asked about from a value for each input; used by several threads at
   *     a time; what it refuses is kept as a refusal
   * @param measures what is asked, no two of one name
   * @param <D> what the model makes of a setting
   * @return the study
   * @throws ModelException when there is no input or no measure, or two share a name
   */
  public static <D> Study<D> of(
      String name, List<Input> inputs, Function<Setting, D> model, List<Measure<D>> measures) {
    String named = Guard.name("study", name);
    if (inputs.isEmpty()) {
      throw new ModelException("study " + named + " has no input; give one at least");
    }
    Setting.of(inputs);
    refuseTwins(named, measures);
    return new Study<>(named, List.copyOf(inputs), model, List.copyOf(measures), Run.ALL_CORES);
  }

  /** Refuses no measure, and two of one name. */
  static <D> void refuseTwins(String study, List<Measure<D>> measures) {
    if (measures.isEmpty()) {
      throw new ModelException("study " + study + " measures nothing; give one measure at least");
    }
    Set<String> names = new HashSet<>();
    for (Measure<D> measure : measures) {
      if (!names.add(measure.name())) {
        throw new ModelException("two measures are named " + measure.name() + "; rename one");
      }
    }
  }

  /**
   * The same study with somebody to tell how far it has come.
   *
   * @param watcher is told
   * @return the study
   */
  public Study<D> watchedBy(Progress watcher) {
    return new Study<>(name, inputs, model, measures, new Run(run.threads(), watcher));
  }

  /**
   * The same study on so many threads.
   *
   * @param count at least 1
   * @return the study
   */
  public Study<D> onThreads(int count) {
    return new Study<>(name, inputs, model, measures, new Run(count, run.progress()));
  }

  /**
   * Each input at its low and at its high value, all others as designed.
   *
   * @return what each does to each measure
   */
  public Sensitivity sensitivity() {
    Setting designed = Setting.of(inputs);
    List<Setting> settings = new ArrayList<>(List.of(designed));
    for (Input input : inputs) {
      settings.add(designed.with(input, input.spread().low()));
      settings.add(designed.with(input, input.spread().high()));
    }
    return new Sensitivity(name, inputs, answers(settings.size(), settings::get));
  }

  /**
   * Many settings drawn from the inputs' spreads.
   *
   * @param sampling how they are drawn
   * @return how the measures scatter
   */
  public Scatter scatter(Scatter.Sampling sampling) {
    double[][] parts = sampling.parts(inputs.size());
    Setting designed = Setting.of(inputs);
    Answers answers = answers(sampling.count(), i -> designed.with(values(parts, i)));
    return new Scatter(name, inputs, sampling, answers);
  }

  private double[] values(double[][] parts, int sample) {
    double[] values = new double[inputs.size()];
    Arrays.setAll(values, i -> inputs.get(i).spread().quantile(parts[i][sample]));
    return values;
  }

  /**
   * One input in equal steps from its low to its high value, all others as designed.
   *
   * @param across the input's name
   * @param steps how many values, at least 2
   * @return one curve for each measure
   */
  public Family family(String across, int steps) {
    Setting designed = Setting.of(inputs);
    return Family.of(name, designed.input(across), List.of(designed), steps, this::answers);
  }

  /**
   * One input in equal steps from its low to its high value, for a few values of another.
   *
   * @param across the input that runs across, by its name
   * @param steps how many values of it, at least 2
   * @param each the input that makes the curves, by its name
   * @param values of that input [SI], one for each curve
   * @return for each measure a curve for each of the values
   */
  public Family family(String across, int steps, String each, double... values) {
    Setting designed = Setting.of(inputs);
    Input other = designed.input(each);
    List<Setting> curves =
        Arrays.stream(values).mapToObj(value -> designed.with(other, value)).toList();
    return Family.of(name, designed.input(across), curves, steps, this::answers)
        .named(other, values);
  }

  private Answers answers(int count, IntFunction<Setting> setting) {
    return Answers.of(count, i -> model.apply(setting.apply(i)), measures, run);
  }

  @Override
  public String toString() {
    return "Study of %s: %d inputs, %d measures".formatted(name, inputs.size(), measures.size());
  }

  /**
   * A table of any study as comma-separated values, decimal points; no name or reason in it becomes
   * a formula in a spreadsheet.
   *
   * @param table the table
   * @return the text of a CSV file
   */
  public static String csv(Table table) {
    CsvLines lines = new CsvLines();
    table.columnNames().forEach(lines::words);
    lines.end();
    for (int row = 0; row < table.rowCount(); row++) {
      for (Column<?> column : table.columns()) {
        String cell = column.getUnformattedString(row);
        boolean number = column instanceof NumberColumn;
        Consumer<String> adds = number ? lines::number : lines::words;
        adds.accept(cell);
      }
      lines.end();
    }
    return lines.toString();
  }
}
