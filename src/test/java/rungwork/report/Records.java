package rungwork.report;

import static rungwork.quantity.Quantities.kg;

import java.util.List;
import rungwork.impact.OrderOfFailure;
import rungwork.quantity.Units;
import rungwork.record.Decision;
import rungwork.record.DesignRecord;
import rungwork.record.Evidence;
import rungwork.record.Origin;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;

/** A record that holds one of everything, invented, for tests of how it is shown. */
final class Records {
  static final String PROGRAM = "Rungwork 0.0, tables 0.0";

  private static final Assessment ASSESSMENT =
      Assessment.of(Curlew.vehicle(), Curlew.ladder(), Curlew.events());
  private static final Comparison COMPARISON =
      Comparison.of("front crossmember", Curlew.candidates().subList(1, 5), Curlew::assess);
  private static final OrderOfFailure ORDER =
      OrderOfFailure.of(Curlew.vehicle(), Curlew.ladder(), Event.Hit.FULL_WIDTH);

  private Records() {}

  /** Without numbers that a person typed into a sentence. */
  static DesignRecord full() {
    return DesignRecord.of("New front end of the Curlew")
        .building("a front crossmember")
        .forWhom("its owner")
        .by("A. Builder")
        .on("2026-11-25")
        .with(ASSESSMENT, COMPARISON, Mounts.sheet(), ORDER)
        .measured("tape", "wheelbase")
        .guessed("by eye", "battery")
        .fact("front axle load", kg(400), Origin.MEASURED, "corner scales")
        .decision(
            Decision.on("Which front crossmember?")
                .among(COMPARISON)
                .choose("light", "lightest that meets the checks made")
                .mustAgree("the inspector", "a new crossmember"))
        .decision(Decision.on("Which paint?").option("red", "").leaveOpen("the weather"))
        .assumed("the road is dry")
        .notChecked("the old rear half")
        .caution("All figures are invented.");
  }

  /** Everything that a person can name, named so. */
  static DesignRecord named(String name) {
    return DesignRecord.of(name)
        .building(name)
        .forWhom(name)
        .by(name)
        .fact(name, name, Origin.GUESSED, name)
        .decision(Decision.on(name).option(name, name).choose(name, name).mustAgree(name, name))
        .with(
            Evidence.of(
                    new rungwork.check.CheckSheet(
                        name,
                        List.of(
                            Examples.measured(name, 0.5),
                            Examples.open(name),
                            Examples.outside(name)),
                        List.of(name),
                        List.of(name),
                        java.util.Set.of()))
                .named(name))
        .assumed(name)
        .notChecked(name)
        .caution(name);
  }

  static RecordDocument document(DesignRecord record, Units units) {
    return new RecordDocument(record, units, PROGRAM);
  }
}
