package rungwork.record;

import java.util.List;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;

/** One thing that a record holds. The order in which things were entered is kept. */
public sealed interface Entry
    permits Datum, Decision, Evidence, Entry.Subject, Entry.Note, Entry.Known {
  /** What is judged: the vehicle or its frame. */
  sealed interface Subject extends Entry {
    /** A vehicle. */
    record OfVehicle(Vehicle vehicle) implements Subject {}

    /** A frame. */
    record OfLadder(Ladder ladder) implements Subject {}
  }

  /**
   * A sentence of whoever keeps the record.
   *
   * @param kind what it is
   * @param words the sentence
   */
  record Note(Kind kind, String words) implements Entry {
    /** What a sentence is. */
    public enum Kind {
      /** Taken for granted. */
      ASSUMED,
      /** Known to be open. */
      NOT_CHECKED,
      /** A warning. */
      CAUTION
    }
  }

  /**
   * Where data come from.
   *
   * @param origin measured, from a drawing, or guessed
   * @param how with what, from which, or on what grounds
   * @param what the data's names
   */
  record Known(Origin origin, String how, List<String> what) implements Entry {
    /** Copies the names. */
    public Known {
      what = List.copyOf(what);
    }
  }
}
