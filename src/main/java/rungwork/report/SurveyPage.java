package rungwork.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.study.Survey;

/** Variants against measures: bars of utilisation, what beats what, a table, the refusals. */
final class SurveyPage {
  private SurveyPage() {}

  static Page of(Survey survey, Units units) {
    List<Block> blocks = StudyBlocks.begin(survey.question());
    List<String> measures = survey.measures();
    measures.stream()
        .filter(measure -> survey.kind(measure) == Kind.RATIO)
        .forEach(measure -> blocks.add(new Block.Figure(bars(survey, measure))));
    if (measures.size() > 1) {
      pareto(blocks, survey, units);
    }
    blocks.add(table(survey, units));
    List<String> refused =
        IntStream.range(0, survey.variants().size())
            .filter(i -> !survey.refusals().get(i).isEmpty())
            .mapToObj(i -> survey.variants().get(i) + ": " + survey.refusals().get(i))
            .toList();
    return StudyBlocks.end(blocks, refused);
  }

  private static Picture bars(Survey survey, String measure) {
    double[] values = survey.values(measure);
    List<UtilisationBars.Entry> entries =
        IntStream.range(0, values.length)
            .mapToObj(
                i ->
                    new UtilisationBars.Entry(
                        survey.variants().get(i),
                        Optional.of(values[i]).filter(value -> !Double.isNaN(value)),
                        Double.isNaN(values[i]) ? "refused" : "",
                        ""))
            .toList();
    return UtilisationBars.of(measure + ", by variant", entries);
  }

  /** The first measure against each other one: the line joins those that no other beats. */
  private static void pareto(List<Block> blocks, Survey survey, Units units) {
    String first = survey.measures().get(0);
    for (String second : survey.measures().subList(1, survey.measures().size())) {
      List<String> unbeaten = survey.unbeaten(first, second);
      if (!unbeaten.isEmpty()) {
        blocks.add(new Block.Figure(plot(survey, first, second, unbeaten).picture(units)));
        blocks.add(
            new Block.Paragraph(
                "Beaten by no other in both: " + String.join("; ", unbeaten) + "."));
      }
    }
  }

  private static Plot plot(Survey survey, String first, String second, List<String> unbeaten) {
    double[] x = survey.values(first);
    double[] y = survey.values(second);
    List<Plot.Dot> dots = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      if (!Double.isNaN(x[i]) && !Double.isNaN(y[i])) {
        dots.add(new Plot.Dot(x[i], y[i], survey.variants().get(i), survey.variants().get(i)));
      }
    }
    int[] front =
        unbeaten.stream()
            .map(name -> survey.variants().indexOf(name))
            .sorted(Comparator.comparingDouble(i -> x[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    Plot.Curve line =
        new Plot.Curve(
            "",
            "first low",
            IntStream.of(front).mapToDouble(i -> x[i]).toArray(),
            IntStream.of(front).mapToDouble(i -> y[i]).toArray());
    return Plot.of(
            second + " against " + first,
            new Plot.Axis(first, survey.kind(first), Plot.Axis.Begins.NEAR_THE_LEAST),
            new Plot.Axis(second, survey.kind(second)),
            List.of(line))
        .dotted(dots);
  }

  private static Table table(Survey survey, Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("variant")));
    survey.measures().forEach(measure -> columns.add(Column.number(survey.head(measure, units))));
    List<Row> rows =
        IntStream.range(0, survey.variants().size()).mapToObj(i -> row(survey, i, units)).toList();
    return new Table(columns, rows);
  }

  private static Row row(Survey survey, int variant, Units units) {
    List<String> cells = new ArrayList<>(List.of(survey.variants().get(variant)));
    List<String> notes = new ArrayList<>();
    for (String measure : survey.measures()) {
      double value = survey.values(measure)[variant];
      cells.add(Double.isNaN(value) ? "" : units.scale(survey.kind(measure)).number(value, 3));
      String words = survey.words(measure).get(variant);
      if (!words.isEmpty()) {
        notes.add(measure + ": " + words);
      }
    }
    return Row.of(cells.toArray(String[]::new)).noting(notes.toArray(String[]::new));
  }
}
