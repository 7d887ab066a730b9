package rungwork.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rungwork.check.Verdict.Amount;
import rungwork.quantity.Units;
import rungwork.record.Entry.Known;
import rungwork.record.Entry.Note;
import rungwork.record.Entry.Subject;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;

/** What a record's entries say together. */
final class Gathered {
  /** What arithmetic of this kind never checks; no record may lose one of these. */
  private static final List<String> NEVER_CHECKED =
      List.of(
          "rear impact",
          "side impact",
          "roll-over",
          "corrosion allowance",
          "weld quality: what is inside a seam, and whether it is as drawn");

  private final DesignRecord record;

  Gathered(DesignRecord record) {
    this.record = record;
  }

  /** The vehicle with its frame's own masses, where the frame is known. */
  Optional<Vehicle> vehicle() {
    return last(record.each(Subject.OfVehicle.class))
        .map(given -> complete(given.vehicle()))
        .or(() -> assessment().map(Assessment::vehicle));
  }

  private Vehicle complete(Vehicle vehicle) {
    return vehicle.frameMasses().isEmpty() ? ladder().map(vehicle::on).orElse(vehicle) : vehicle;
  }

  Optional<Ladder> ladder() {
    return last(record.each(Subject.OfLadder.class))
        .map(Subject.OfLadder::ladder)
        .or(() -> assessment().map(Assessment::ladder));
  }

  private Optional<Assessment> assessment() {
    return record.evidence().stream()
        .map(Evidence::value)
        .filter(Assessment.class::isInstance)
        .map(Assessment.class::cast)
        .findFirst();
  }

  private static <T> Optional<T> last(List<T> all) {
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  List<Datum> data() {
    List<Datum> data = new ArrayList<>();
    vehicle().ifPresent(vehicle -> data.addAll(DesignData.of(vehicle)));
    ladder().ifPresent(ladder -> data.addAll(DesignData.of(ladder)));
    Map<String, Amount> computed = vehicle().map(DesignData::computed).orElse(Map.of());
    for (Datum fact : record.each(Datum.class)) {
      Optional<Amount> model = Optional.ofNullable(computed.get(fact.what()));
      data.add(model.map(fact::beside).orElse(fact));
    }
    record.each(Known.class).forEach(known -> data.replaceAll(one -> told(one, known)));
    return List.copyOf(data);
  }

  private static Datum told(Datum datum, Known known) {
    return known.what().contains(datum.what()) ? datum.from(known.origin(), known.how()) : datum;
  }

  Stream<String> notes(Note.Kind kind) {
    return record.each(Note.class).stream().filter(note -> note.kind() == kind).map(Note::words);
  }

  List<Statement> assumptions(Units units) {
    Map<String, List<String>> said = new LinkedHashMap<>();
    notes(Note.Kind.ASSUMED).forEach(words -> say(said, words, Statement.AUTHOR));
    everyone(said, one -> one.assumed().in(units));
    return statements(said);
  }

  List<Statement> notChecked(Units units) {
    Map<String, List<String>> said = new LinkedHashMap<>();
    NEVER_CHECKED.forEach(words -> say(said, words, Statement.ALWAYS));
    notes(Note.Kind.NOT_CHECKED).forEach(words -> say(said, words, Statement.AUTHOR));
    everyone(said, one -> one.open().in(units));
    return statements(said);
  }

  private void everyone(
      Map<String, List<String>> said, Function<Evidence, List<String>> sentences) {
    List<Evidence> evidence = record.evidence();
    for (int i = 0; i < evidence.size(); i++) {
      String label = "E" + (i + 1);
      sentences.apply(evidence.get(i)).forEach(words -> say(said, words, label));
    }
  }

  private static void say(Map<String, List<String>> said, String words, String who) {
    List<String> from = said.computeIfAbsent(words.strip(), none -> new ArrayList<>());
    if (!from.contains(who)) {
      from.add(who);
    }
  }

  private static List<Statement> statements(Map<String, List<String>> said) {
    return said.entrySet().stream()
        .map(one -> new Statement(one.getKey(), one.getValue()))
        .toList();
  }
}
