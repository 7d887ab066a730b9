package rungwork.record;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.impact.Collapse;
import rungwork.impact.Crash;
import rungwork.impact.CrushTube;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.Ride;
import rungwork.impact.RigidOrCrush;
import rungwork.impact.Scene;
import rungwork.impact.SeenDamage;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Units;
import rungwork.study.Comparison;
import rungwork.study.Outcome;
import rungwork.study.Scatter;
import rungwork.study.Search;
import rungwork.study.Sensitivity;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;

/** How each kind of analysis is read as evidence. */
final class Readings {
  private static final Evidence.Lines NOTHING = units -> List.of();
  private static final Set<Caution> OF_IMPACT = EnumSet.allOf(Caution.class);

  /** Everything that can be read, by type. */
  private static final List<Reader<?>> ALL =
      List.of(
          new Reader<>(CheckSheet.class, one -> sheet(one, one)),
          new Reader<>(Assessment.class, one -> sheet(one, one.sheet())),
          new Reader<>(ChainSheet.class, one -> sheet(one, one.sheet())),
          new Reader<>(Comparison.class, Readings::comparison),
          new Reader<>(Search.class, Readings::search),
          new Reader<>(Sensitivity.class, one -> plain("what sways " + one.name(), one)),
          new Reader<>(Scatter.class, Readings::scatter),
          new Reader<>(Survey.class, one -> plain(one.question(), one)),
          new Reader<>(Scene.class, Readings::scene),
          new Reader<>(CrushTube.class, Readings::tube),
          new Reader<>(Crash.class, Readings::crash),
          new Reader<>(Collapse.class, Readings::collapse),
          new Reader<>(OrderOfFailure.class, Readings::order),
          new Reader<>(Ride.class, Readings::ride),
          new Reader<>(RigidOrCrush.class, Readings::rigidOrCrush),
          new Reader<>(SeenDamage.Explanations.class, Readings::damage),
          new Reader<>(Inspection.class, Readings::inspection));

  private Readings() {}

  /** How one type is read. */
  private record Reader<T>(Class<T> type, Function<T, Evidence> reads) {
    Evidence read(Object analysis) {
      return reads.apply(type.cast(analysis));
    }
  }

  static Evidence read(Object analysis) {
    return ALL.stream()
        .filter(one -> one.type().isInstance(analysis))
        .findFirst()
        .orElseThrow(() -> unknown(analysis))
        .read(analysis);
  }

  private static ModelException unknown(Object analysis) {
    List<String> known = ALL.stream().map(one -> name(one.type())).toList();
    return new ModelException(
        "a record cannot rest on a "
            + name(analysis.getClass())
            + "; give it one of "
            + String.join(", ", known)
            + ", or an Evidence of your own");
  }

  /** The type's name as a notebook writes it, such as {@code SeenDamage.Explanations}. */
  private static String name(Class<?> type) {
    String whole = type.getName();
    return whole.substring(whole.lastIndexOf('.') + 1).replace('$', '.');
  }

  private static Evidence sheet(Object value, CheckSheet sheet) {
    return new Evidence(
        sheet.title(),
        value,
        Optional.of(sheet),
        units -> sheet.assumptions(),
        units -> open(sheet, units),
        sheet.cautions());
  }

  /** What a sheet leaves open: one line for each question and reason, its parts named. */
  private static List<String> open(CheckSheet sheet, Units units) {
    List<String> lines = new ArrayList<>(sheet.notMade());
    lines.addAll(byReason(sheet.notChecked(), "", units));
    lines.addAll(byReason(sheet.outsideRange(), "only outside a formula's range: ", units));
    return lines;
  }

  private static List<String> byReason(List<Check> checks, String before, Units units) {
    Map<List<String>, Set<String>> parts = new LinkedHashMap<>();
    for (Check check : checks) {
      List<String> key = List.of(check.what(), check.verdict().reason(units));
      parts.computeIfAbsent(key, none -> new LinkedHashSet<>()).add(check.part());
    }
    List<String> lines = new ArrayList<>();
    parts.forEach(
        (key, names) ->
            lines.add(before + key.get(0) + " of " + String.join(", ", names) + ": " + key.get(1)));
    return lines;
  }

  private static Evidence comparison(Comparison comparison) {
    List<CheckSheet> sheets = comparison.assessed().stream().map(Outcome.Assessed::frame).toList();
    return studied("candidates for the " + comparison.part(), comparison, sheets);
  }

  private static Evidence search(Search search) {
    List<CheckSheet> sheets =
        search.found().stream().map(found -> found.assessment().sheet()).toList();
    return studied("lightest: " + search.question(), search, sheets);
  }

  /** A study's own checks are those of designs that may never be built; none enters the record. */
  private static Evidence studied(String subject, Object value, List<CheckSheet> sheets) {
    Set<Caution> cautions = EnumSet.of(Caution.SCREENING);
    sheets.forEach(sheet -> cautions.addAll(sheet.cautions()));
    return new Evidence(
        subject,
        value,
        Optional.empty(),
        units -> each(sheets, CheckSheet::assumptions),
        units -> each(sheets, CheckSheet::notMade),
        cautions);
  }

  private static List<String> each(List<CheckSheet> sheets, Function<CheckSheet, List<String>> of) {
    return sheets.stream().map(of).flatMap(List::stream).distinct().toList();
  }

  private static Evidence plain(String subject, Object value) {
    return new Evidence(
        subject, value, Optional.empty(), NOTHING, NOTHING, EnumSet.of(Caution.SCREENING));
  }

  private static Evidence scatter(Scatter scatter) {
    return new Evidence(
        "scatter of " + scatter.name(),
        scatter,
        Optional.empty(),
        units -> List.of(scatter.drawn()),
        units -> List.of(Scatter.NOT_SURVIVAL),
        EnumSet.of(Caution.SCREENING));
  }

  private static Evidence impact(
      String subject, Object value, Evidence.Lines assumed, Evidence.Lines open) {
    return new Evidence(subject, value, Optional.empty(), assumed, open, OF_IMPACT);
  }

  private static Evidence scene(Scene scene) {
    return impact(scene.name(), scene, units -> scene.assumptions(), scene::warnings);
  }

  private static Evidence tube(CrushTube tube) {
    return impact(
        "crush tube " + tube.name(),
        tube,
        tube::assumptions,
        units -> joined(tube.outsideTests(), tube.noStableFolding(units).stream().toList()));
  }

  private static Evidence crash(Crash crash) {
    return impact(
        "crash: " + crash.model().name(), crash, units -> crash.assumptions(), crash::marks);
  }

  private static Evidence collapse(Collapse collapse) {
    return impact(
        "collapse of " + collapse.ladder().name() + ", " + collapse.hit().words(),
        collapse,
        units -> collapse.assumptions(),
        units -> joined(collapse.leftOut(), collapse.warnings(units)));
  }

  private static Evidence order(OrderOfFailure order) {
    return impact(
        "where it gives way first: " + order.ladder().name() + ", " + order.elastic().hit(),
        order,
        units -> order.assumptions(),
        units -> joined(order.notChecked(), order.elastic().notes()));
  }

  private static Evidence ride(Ride ride) {
    return impact(
        ride.occupant().name() + " in the belt",
        ride,
        units -> ride.assumptions(),
        units -> joined(ride.notChecked(), ride.warnings(units)));
  }

  private static Evidence rigidOrCrush(RigidOrCrush choice) {
    return impact(
        "rigid or crush: " + choice.scene().name(),
        choice,
        choice::assumptions,
        units -> joined(choice.outcomes().get(0).ride().notChecked(), choice.warnings(units)));
  }

  private static Evidence damage(SeenDamage.Explanations seen) {
    return impact(
        "damage seen: " + seen.damage().name(), seen, NOTHING, units -> seen.notChecked());
  }

  private static Evidence inspection(Inspection seen) {
    return new Evidence(
        "inspection of " + seen.ladder().name() + (seen.date().isEmpty() ? "" : ", " + seen.date()),
        seen,
        Optional.empty(),
        NOTHING,
        units -> seen.notChecked(),
        EnumSet.of(Caution.SCREENING));
  }

  private static List<String> joined(List<String> first, List<String> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }
}
