package rungwork.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungwork.check.Check;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** A comparison as a table of columns; what a refused candidate lacks is missing. */
final class Tabulation {
  private final Comparison comparison;
  private final Units units;

  Tabulation(Comparison comparison, Units units) {
    this.comparison = comparison;
    this.units = units;
  }

  Table table() {
    return Table.create(
        "Candidates for the " + comparison.part(),
        words("candidate", outcome -> outcome.candidate().name()),
        words("section", outcome -> outcome.candidate().stock().section().name()),
        words("material", outcome -> outcome.candidate().stock().material().name()),
        number("frame mass", Kind.MASS, Outcome.Assessed::mass),
        number(
            "torsional stiffness", Kind.ROTATIONAL_STIFFNESS, Outcome.Assessed::torsionalStiffness),
        number("utilisation", Kind.RATIO, Tabulation::utilisation),
        words("governing check", outcome -> governing(outcome, c -> c.what() + " of " + c.part())),
        words("load case", outcome -> governing(outcome, Check::loadCase)),
        words("standing", outcome -> outcome.standing().words()),
        words("objections", outcome -> String.join("; ", outcome.objections())));
  }

  private StringColumn words(String head, Function<Outcome, String> words) {
    return StringColumn.create(head, comparison.outcomes().stream().map(words).toList());
  }

  private DoubleColumn number(String head, Kind kind, ToDoubleFunction<Outcome.Assessed> value) {
    Scale scale = units.scale(kind);
    List<Outcome> outcomes = comparison.outcomes();
    DoubleColumn column =
        DoubleColumn.create(scale.unit().isEmpty() ? head : head + " [" + scale.unit() + "]");
    for (Outcome outcome : outcomes) {
      if (outcome instanceof Outcome.Assessed assessed) {
        column.append(value.applyAsDouble(assessed) / scale.inSi());
      } else {
        column.appendMissing();
      }
    }
    return column;
  }

  private static double utilisation(Outcome.Assessed outcome) {
    return outcome
        .governing()
        .map(check -> check.utilisation().orElse(Double.NaN))
        .orElse(Double.NaN);
  }

  private static String governing(Outcome outcome, Function<Check, String> words) {
    return Optional.of(outcome)
        .filter(Outcome.Assessed.class::isInstance)
        .map(Outcome.Assessed.class::cast)
        .flatMap(Outcome.Assessed::governing)
        .map(words)
        .orElse("");
  }
}
