package rungwork.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Answers.Run;
import rungwork.study.Study.Progress;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * Any number of variants against any measures. A variant that cannot be modelled stays with its
 * reason and does not stop the others. Immutable.
 *
 * @see Comparison for candidates for one member, where a choice is made
 */
public final class Survey {
  private final String question;
  private final List<String> names;
  private final Answers answers;

  private Survey(String question, List<String> names, Answers answers) {
    this.question = question;
    this.names = names;
    this.answers = answers;
  }

  /**
   * A variant.
   *
   * @param name unique in its survey
   * @param made makes it
   * @param <D> what it is
   */
  public record Variant<D>(String name, Supplier<D> made) {
    /** Refuses a variant without a name. */
    public Variant {
      name = Guard.name("variant", name);
    }
  }

  /**
   * Asks all variants, on all cores.
   *
   * @param question what the survey is about
   * @param variants the variants, no two of one name
   * @param measures what is asked, no two of one name
   * @param progress is told how far it has come
   * @param <D> what a variant is
   * @return the answers
   * @throws ModelException when there is no variant or no measure, or two share a name
   */
  public static <D> Survey of(
      String question, List<Variant<D>> variants, List<Measure<D>> measures, Progress progress) {
    String named = Guard.name("survey", question);
    refuseUnusable(named, variants);
    Study.refuseTwins(named, measures);
    Run run = new Run(Work.cores(), progress);
    Answers answers = Answers.of(variants.size(), i -> variants.get(i).made().get(), measures, run);
    return new Survey(named, variants.stream().map(Variant::name).toList(), answers);
  }

  /**
   * Asks all variants, on all cores, telling nobody.
   *
   * @param question what the survey is about
   * @param variants the variants, no two of one name
   * @param measures what is asked, no two of one name
   * @param <D> what a variant is
   * @return the answers
   */
  public static <D> Survey of(
      String question, List<Variant<D>> variants, List<Measure<D>> measures) {
    return of(question, variants, measures, Progress.NONE);
  }

  /** Refuses no variant, and two of one name. */
  static <D> void refuseUnusable(String question, List<Variant<D>> variants) {
    if (variants.isEmpty()) {
      throw new ModelException("there is no variant to survey for " + question);
    }
    Set<String> names = new HashSet<>();
    for (Variant<D> variant : variants) {
      if (!names.add(variant.name())) {
        throw new ModelException("two variants are named " + variant.name() + "; rename one");
      }
    }
  }

  /**
   * What it is about.
   *
   * @return the question
   */
  public String question() {
    return question;
  }

  /**
   * The variants.
   *
   * @return their names, in their order
   */
  public List<String> variants() {
    return names;
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
   * A measure of all variants.
   *
   * @param measure its name
   * @return a number for each variant [SI]; not a number where it was refused
   */
  public double[] values(String measure) {
    int m = answers.measure(measure);
    return IntStream.range(0, names.size()).mapToDouble(i -> answers.number(m, i)).toArray();
  }

  /**
   * The words that go with a measure.
   *
   * @param measure its name
   * @return for each variant; empty where there are none
   */
  public List<String> words(String measure) {
    int m = answers.measure(measure);
    return IntStream.range(0, names.size()).mapToObj(i -> answers.words(m, i)).toList();
  }

  /**
   * Why a variant has no numbers.
   *
   * @return for each variant; empty where it has
   */
  public List<String> refusals() {
    return IntStream.range(0, names.size()).mapToObj(answers::refusal).toList();
  }

  /**
   * The variants that no other beats in both of two measures (Pareto).
   *
   * @param first a measure's name
   * @param second another's
   * @return their names, in their order
   */
  public List<String> unbeaten(String first, String second) {
    double[] a = signed(first);
    double[] b = signed(second);
    return IntStream.range(0, names.size())
        .filter(i -> !Double.isNaN(a[i]) && !Double.isNaN(b[i]))
        .filter(
            i ->
                IntStream.range(0, names.size())
                    .noneMatch(j -> a[j] <= a[i] && b[j] <= b[i] && (a[j] < a[i] || b[j] < b[i])))
        .mapToObj(names::get)
        .toList();
  }

  /** A measure with the sign that makes less better. */
  private double[] signed(String measure) {
    boolean less = answers.asked().get(answers.measure(measure)).better() == Measure.Better.LESS;
    return Arrays.stream(values(measure)).map(value -> less ? value : -value).toArray();
  }

  /**
   * The head of a measure's column.
   *
   * @param measure its name
   * @param units the reader's units
   * @return name and unit
   */
  public String head(String measure, Units units) {
    return answers.asked().get(answers.measure(measure)).head(units);
  }

  /**
   * A number of a measure with its unit.
   *
   * @param measure its name
   * @param value the number [SI]
   * @param units the reader's units
   * @return for example {@code 12.4 kg}
   */
  public String show(String measure, double value, Units units) {
    return answers.asked().get(answers.measure(measure)).show(value, units);
  }

  /**
   * The answers as a table.
   *
   * @param units the reader's units, which stand in the heads
   * @return a row for each variant; what a refused one lacks is missing, its reason the last column
   */
  public Table table(Units units) {
    Table table = Table.create(question, StringColumn.create("variant", names));
    for (Asked asked : answers.asked()) {
      double scale = asked.unit().isEmpty() ? units.scale(asked.kind()).inSi() : 1;
      DoubleColumn column = DoubleColumn.create(asked.head(units));
      for (double value : values(asked.name())) {
        column.append(value / scale);
      }
      table.addColumns(column);
      if (words(asked.name()).stream().anyMatch(word -> !word.isEmpty())) {
        table.addColumns(StringColumn.create(asked.name() + ": where", words(asked.name())));
      }
    }
    table.addColumns(StringColumn.create("refused", refusals()));
    return table;
  }

  /**
   * The table as comma-separated values, decimal points, one line a variant; no name or reason
   * becomes a formula in a spreadsheet.
   *
   * @param units the reader's units
   * @return the text of a CSV file
   */
  public String csv(Units units) {
    return Study.csv(table(units));
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(question + ":");
    for (int i = 0; i < names.size(); i++) {
      out.append("\n- ").append(names.get(i)).append(": ").append(row(i));
    }
    return out.toString();
  }

  private String row(int variant) {
    if (!answers.answered(variant)) {
      return "refused: " + answers.refusal(variant);
    }
    List<String> shown = new ArrayList<>();
    for (int m = 0; m < answers.asked().size(); m++) {
      Asked asked = answers.asked().get(m);
      String words = answers.words(m, variant);
      shown.add(
          asked.name()
              + " "
              + asked.show(answers.number(m, variant), Units.METRIC)
              + (words.isEmpty() ? "" : " (" + words + ")"));
    }
    return String.join(", ", shown);
  }
}
