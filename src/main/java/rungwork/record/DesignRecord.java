package rungwork.record;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Verdict.Amount;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Quantities;
import rungwork.quantity.Units;
import rungwork.record.Entry.Known;
import rungwork.record.Entry.Note;
import rungwork.record.Entry.Subject;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;

/**
 * The record of a design: what is built and for whom, where its data come from, what was decided
 * and why, what the decisions rest on, what was assumed and what was not checked. It grows through
 * a notebook, each step a new value, and is read at the notebook's end.
 *
 * @param head what stands on its first page
 * @param entries all else, in the order of entering
 */
public record DesignRecord(Head head, List<Entry> entries) {
  /** Copies the entries. */
  public DesignRecord {
    entries = List.copyOf(entries);
  }

  /**
   * What stands on a record's first page.
   *
   * @param title what the record is about
   * @param building what is being built; empty until stated
   * @param forWhom for whom; empty until stated
   * @param author who answers for the record; empty until stated
   * @param date the day that the author gives; nothing reads a clock
   */
  public record Head(
      String title, String building, String forWhom, String author, Optional<LocalDate> date) {
    /** Refuses a record without a title. */
    public Head {
      title = Guard.name("design record", title);
      building = building.strip();
      forWhom = forWhom.strip();
      author = author.strip();
    }
  }

  /**
   * Begins a record.
   *
   * @param title what it is about, such as {@code New front end of the Curlew}
   * @return a record that holds nothing yet
   */
  public static DesignRecord of(String title) {
    return new DesignRecord(new Head(title, "", "", "", Optional.empty()), List.of());
  }

  /**
   * Says what is being built.
   *
   * @param what in a sentence
   * @return the fuller record
   */
  public DesignRecord building(String what) {
    return under(new Head(head.title, what, head.forWhom, head.author, head.date));
  }

  /**
   * Says for whom.
   *
   * @param whom who will own and drive it
   * @return the fuller record
   */
  public DesignRecord forWhom(String whom) {
    return under(new Head(head.title, head.building, whom, head.author, head.date));
  }

  /**
   * Says who answers for the record.
   *
   * @param who the author
   * @return the fuller record
   */
  public DesignRecord by(String who) {
    return under(new Head(head.title, head.building, head.forWhom, who, head.date));
  }

  /**
   * Dates the record.
   *
   * @param day year, month and day, such as {@code 2026-11-25}
   * @return the fuller record
   */
  public DesignRecord on(String day) {
    return under(
        new Head(head.title, head.building, head.forWhom, head.author, Optional.of(date(day))));
  }

  private static LocalDate date(String day) {
    try {
      return LocalDate.parse(day.strip());
    } catch (DateTimeParseException e) {
      throw new ModelException(
          "date " + day + " of the record cannot be read; write year-month-day, as in 2026-11-25");
    }
  }

  /**
   * The vehicle whose data are recorded. An assessment brings its own; this one goes before it.
   *
   * @param vehicle the vehicle
   * @return the fuller record
   */
  public DesignRecord vehicle(Vehicle vehicle) {
    return and(new Subject.OfVehicle(vehicle));
  }

  /**
   * The frame whose data are recorded. An assessment brings its own; this one goes before it.
   *
   * @param ladder the frame
   * @return the fuller record
   */
  public DesignRecord ladder(Ladder ladder) {
    return and(new Subject.OfLadder(ladder));
  }

  /**
   * Says that data of the vehicle or its frame were measured.
   *
   * @param how with what, such as {@code tape, both sides}
   * @param what the data's names, such as {@code wheelbase} or {@code battery}
   * @return the fuller record
   */
  public DesignRecord measured(String how, String... what) {
    return known(Origin.MEASURED, how, what);
  }

  /**
   * Says that data of the vehicle or its frame were taken from a drawing or a certificate.
   *
   * @param which the drawing
   * @param what the data's names
   * @return the fuller record
   */
  public DesignRecord drawn(String which, String... what) {
    return known(Origin.DRAWING, which, what);
  }

  /**
   * Says that data of the vehicle or its frame were guessed.
   *
   * @param why what the guess rests on
   * @param what the data's names
   * @return the fuller record
   */
  public DesignRecord guessed(String why, String... what) {
    return known(Origin.GUESSED, why, what);
  }

  private DesignRecord known(Origin origin, String how, String... what) {
    List<String> names = data().stream().map(Datum::what).toList();
    for (String name : what) {
      if (!names.contains(name)) {
        throw new ModelException(
            "nothing in the record is named " + name + "; its data are " + listed(names));
      }
    }
    return and(new Known(origin, how, Arrays.asList(what)));
  }

  private static String listed(List<String> names) {
    return names.isEmpty()
        ? "none yet: give it the vehicle, the ladder or an assessment first"
        : String.join(", ", names);
  }

  /**
   * A fact about the vehicle beyond what the calculation was given. One that the calculation
   * computes itself ({@code mass}, {@code front axle load}, {@code front left wheel load} and so
   * on) is shown beside the computed figure.
   *
   * @param what such as {@code front axle load}
   * @param value its value
   * @param origin where it comes from
   * @param how with what it was measured, from which drawing, or on what grounds
   * @return the fuller record
   */
  public DesignRecord fact(String what, Quantity<?> value, Origin origin, String how) {
    Amount size = new Amount(Quantities.kind(what, value), Quantities.si(what, value));
    return and(Datum.of(what, Datum.Value.of(size)).from(origin, how));
  }

  /**
   * A fact in words.
   *
   * @param what such as {@code steel of the rails}
   * @param words such as {@code stamped S355J2H}
   * @param origin where it comes from
   * @param how with what it was found, from which drawing, or on what grounds
   * @return the fuller record
   */
  public DesignRecord fact(String what, String words, Origin origin, String how) {
    return and(Datum.of(what, Datum.Value.of(words)).from(origin, how));
  }

  /**
   * A decision, or a question left open.
   *
   * @param decision the decision
   * @return the fuller record
   */
  public DesignRecord decision(Decision decision) {
    return and(decision);
  }

  /**
   * Analyses that the record rests on.
   *
   * @param analyses anything that {@link Evidence#of} reads
   * @return the fuller record
   */
  public DesignRecord with(Object... analyses) {
    DesignRecord fuller = this;
    for (Object analysis : analyses) {
      fuller = fuller.and(Evidence.of(analysis));
    }
    return fuller;
  }

  /**
   * What the author takes for granted.
   *
   * @param sentences one assumption each
   * @return the fuller record
   */
  public DesignRecord assumed(String... sentences) {
    return noted(Note.Kind.ASSUMED, sentences);
  }

  /**
   * What the author knows to be open.
   *
   * @param sentences one each
   * @return the fuller record
   */
  public DesignRecord notChecked(String... sentences) {
    return noted(Note.Kind.NOT_CHECKED, sentences);
  }

  /**
   * Warnings of the author's own, beside the cautions that no record loses.
   *
   * @param sentences one each
   * @return the fuller record
   */
  public DesignRecord caution(String... sentences) {
    return noted(Note.Kind.CAUTION, sentences);
  }

  private DesignRecord noted(Note.Kind kind, String... sentences) {
    DesignRecord fuller = this;
    for (String sentence : sentences) {
      fuller = fuller.and(new Note(kind, sentence));
    }
    return fuller;
  }

  private DesignRecord and(Entry entry) {
    List<Entry> all = new ArrayList<>(entries);
    all.add(entry);
    return new DesignRecord(head, all);
  }

  private DesignRecord under(Head other) {
    return new DesignRecord(other, entries);
  }

  /** The entries of one kind. */
  <T> List<T> each(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * Every datum with where it comes from: what the calculation was given, then what the author
   * adds.
   *
   * @return the data
   */
  public List<Datum> data() {
    return new Gathered(this).data();
  }

  /**
   * The vehicle: the one given last, or else that of the first assessment; with its frame's own
   * masses where the frame is known.
   *
   * @return the vehicle, if the record has one
   */
  public Optional<Vehicle> vehicle() {
    return new Gathered(this).vehicle();
  }

  /**
   * The frame: the one given last, or else that of the first assessment.
   *
   * @return the frame, if the record has one
   */
  public Optional<Ladder> ladder() {
    return new Gathered(this).ladder();
  }

  /**
   * What should be measured next: data that were guessed, and those of which nobody said more.
   *
   * @return the data, the guessed ones first
   */
  public List<Datum> toMeasureNext() {
    return data().stream()
        .filter(one -> one.origin().open())
        .sorted((a, b) -> a.origin().compareTo(b.origin()))
        .toList();
  }

  /**
   * The decisions and open questions.
   *
   * @return in the order of entering
   */
  public List<Decision> decisions() {
    return each(Decision.class);
  }

  /**
   * What the record rests on; the first is known as {@code E1}, the next as {@code E2}.
   *
   * @return in the order of entering
   */
  public List<Evidence> evidence() {
    return each(Evidence.class);
  }

  /**
   * What every analysis and the author assumed, each sentence once.
   *
   * @param units the reader's units
   * @return the assumptions, each with who makes it
   */
  public List<Statement> assumptions(Units units) {
    return new Gathered(this).assumptions(units);
  }

  /**
   * What was not checked, each sentence once: first what no record can do without, then what the
   * author and the analyses say.
   *
   * @param units the reader's units
   * @return what is open, each with who says so
   */
  public List<Statement> notChecked(Units units) {
    return new Gathered(this).notChecked(units);
  }

  /**
   * The project's cautions that this record must carry.
   *
   * @return {@link Caution#SCREENING} always, the stronger ones where evidence is about an impact
   */
  public Set<Caution> cautions() {
    EnumSet<Caution> carried = EnumSet.of(Caution.SCREENING);
    evidence().forEach(one -> carried.addAll(one.cautions()));
    return Collections.unmodifiableSet(carried);
  }

  /**
   * The author's own warnings.
   *
   * @return in the order of entering
   */
  public List<String> ownCautions() {
    return new Gathered(this).notes(Note.Kind.CAUTION).toList();
  }

  /**
   * Who must still agree, over all decisions.
   *
   * @return each person once, in the order of entering
   */
  public List<String> signatories() {
    return decisions().stream()
        .flatMap(decision -> decision.agreements().stream())
        .map(Decision.Agreement::who)
        .distinct()
        .toList();
  }

  /**
   * Every check that the evidence made or could not make.
   *
   * @return all checks, worst first, under the record's title
   */
  public CheckSheet sheet() {
    List<Check> all =
        evidence().stream()
            .flatMap(one -> one.sheet().stream())
            .flatMap(sheet -> sheet.checks().stream())
            .toList();
    Stream<Statement> open = notChecked(Units.METRIC).stream();
    return new CheckSheet(
        head.title, all, open.map(Statement::words).toList(), List.of(), cautions());
  }

  @Override
  public String toString() {
    return head.title
        + ": "
        + evidence().size()
        + " analyses, "
        + decisions().size()
        + " decisions; "
        + sheet().verdictLine();
  }
}
