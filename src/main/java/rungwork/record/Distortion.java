package rungwork.record;

import java.util.List;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.record.Reading.Limit;
import rungwork.record.Reading.Standing;

/**
 * What several readings mean together.
 *
 * @param form what kind of distortion it is
 * @param where in words, such as {@code front to dash}
 * @param steps how it follows, from the readings to the amount
 * @param value its size; the sign is told by {@link #which()} [m]
 * @param eitherWay how well it is known: the readings' accuracies as the root of their squares [m]
 * @param limits published tolerances, the tightest first
 */
public record Distortion(
    Form form, String where, List<Step> steps, double value, double eitherWay, List<Limit> limits) {
  /** Copies its lists. */
  public Distortion {
    Guard.finite("size of the " + form.words(), value);
    Guard.notNegative("accuracy of the " + form.words(), eitherWay, Scale.MM);
    steps = List.copyOf(steps);
    limits = List.copyOf(limits);
  }

  /** The ways in which a ladder goes out of shape. */
  public enum Form {
    /** Diagonals differ: a rail lies back, or the front went sideways. */
    DIAMOND(
        "diagonals",
        "left front to right rear is the longer",
        "right front to left rear is the longer"),
    /** A rail hangs between its ends. */
    SAG("sag", "the rail is low there", "the rail is high there: a hump"),
    /** The rails are no longer in one plane. */
    TWIST("twist", "the left rail is up in front", "the right rail is up in front"),
    /** Both rails went to one side. */
    SIDE_BOW("side bow", "to the left", "to the right"),
    /** A rail was pushed together. */
    MASH("shortening", "the rail is shorter", "the rail is longer");

    private final String words;
    private final String above;
    private final String below;

    Form(String words, String above, String below) {
      this.words = words;
      this.above = above;
      this.below = below;
    }

    /**
     * The form in words.
     *
     * @return for example {@code side bow}
     */
    public String words() {
      return words;
    }
  }

  /**
   * Whether it is more than the readings can be wrong by.
   *
   * @return true when it shows
   */
  public boolean shows() {
    return Math.abs(value) > eitherWay;
  }

  /**
   * Which way it goes.
   *
   * @return in words; that it is not to be told from nothing where it does not show
   */
  public String which() {
    if (!shows()) {
      return "not to be told from nothing";
    }
    return value > 0 ? form.above : form.below;
  }

  /**
   * Where it stands beside the published tolerances.
   *
   * @return the standing
   */
  public Standing standing() {
    return Standing.of(value, limits);
  }

  @Override
  public String toString() {
    return "%s, %s: %s ± %s, %s, %s"
        .formatted(
            form.words,
            where,
            Scale.MM.show(value, 3),
            Scale.MM.show(eitherWay, 2),
            which(),
            standing().words());
  }
}
