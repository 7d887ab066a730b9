package rungwork.record;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rungwork.record.Distortion.Form;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * Which way a frame went. One pair of diagonals cannot tell a rail pushed back from a front gone
 * sideways, for both leave the same four corners; only the bays beside it can.
 *
 * @param taken what was measured
 * @param distortions what it means bay by bay
 */
record Pattern(Taken taken, List<Distortion> distortions) {
  List<String> sentences() {
    List<String> all = new ArrayList<>();
    all.add(diamond());
    one(Form.TWIST, all, "one end has turned against the other");
    one(Form.SAG, all, "look for wrinkles on the flanges where the slope changes");
    one(Form.SIDE_BOW, all, "the rails are bent sideways, not only out of square");
    one(Form.MASH, all, "pushed together, folded or bowed between its marks");
    return all;
  }

  private void one(Form form, List<String> all, String found) {
    List<Distortion> some = distortions.stream().filter(one -> one.form() == form).toList();
    String what = form.words().substring(0, 1).toUpperCase(Locale.ROOT) + form.words().substring(1);
    if (some.isEmpty()) {
      all.add("Not measured: " + form.words() + ".");
    } else if (some.stream().noneMatch(Distortion::shows)) {
      all.add("No " + form.words() + " beyond what the tape can tell.");
    }
    some.stream()
        .filter(Distortion::shows)
        .map(one -> "%s, %s: %s; %s.".formatted(what, one.where(), one.which(), found))
        .forEach(all::add);
  }

  /**
   * From one station to the next.
   *
   * @param from its front station
   * @param to its rear station
   * @param lean what its diagonals say
   */
  private record Bay(String from, String to, Distortion lean) {
    String words() {
      return from + " to " + to;
    }
  }

  private String diamond() {
    List<Bay> bays = bays();
    List<Bay> leaning = bays.stream().filter(bay -> bay.lean.shows()).toList();
    if (bays.isEmpty()) {
      return "Not measured: the diagonals of any bay, and with them diamond and side sway.";
    }
    if (leaning.isEmpty()) {
      return "The bays whose diagonals were measured are square as far as the tape can tell.";
    }
    String where = String.join(", ", leaning.stream().map(Bay::words).toList());
    if (bays.size() == 1) {
      return "The bay "
          + where
          + " is out of square. One bay alone does not tell a rail pushed back from a front gone"
          + " sideways: measure the diagonals behind it.";
    }
    long left = leaning.stream().filter(bay -> bay.lean.value() < 0).count();
    boolean alike = left == 0 || left == leaning.size();
    if (alike && leaning.size() == bays.size()) {
      return "Diamond: every bay leans the same way. The "
          + (left > 0 ? "left" : "right")
          + " rail lies back along the other, and every joint of a crossmember has turned.";
    }
    String sway = alike ? sway(left > 0) : ", not all one way.";
    return "Out of square only at " + where + sway + shorter(leaning);
  }

  private static String sway(boolean right) {
    return ": what is ahead went to the "
        + (right ? "right" : "left")
        + " (side sway), or one rail is shorter there; the other bays are square.";
  }

  /** The rail that is the shorter one, told at the bay where it is so most. */
  private String shorter(List<Bay> leaning) {
    return leaning.stream()
        .filter(bay -> Math.abs(longerLeft(bay)) > bay.lean.eitherWay())
        .max(comparingDouble(bay -> Math.abs(longerLeft(bay))))
        .map(
            bay ->
                " The %s rail is the shorter at %s: that side took the hit."
                    .formatted(longerLeft(bay) < 0 ? "left" : "right", bay.words()))
        .orElse("");
  }

  /** By how much more the left rail is longer than true than the right one [m]. */
  private double longerLeft(Bay bay) {
    return longer(Side.LEFT, bay) - longer(Side.RIGHT, bay);
  }

  /** How much longer than true a rail is in a bay, as far as read [m]. */
  private double longer(Side side, Bay bay) {
    return taken
        .at(Kind.LENGTH, side, bay.from, bay.to)
        .map(one -> one.difference().orElseThrow())
        .orElse(0.0);
  }

  /** Those whose diagonals were measured. */
  private List<Bay> bays() {
    List<String> stations = taken.marks().stations();
    List<Bay> bays = new ArrayList<>();
    for (int i = 0; i + 1 < stations.size(); i++) {
      String from = stations.get(i);
      String to = stations.get(i + 1);
      distortions.stream()
          .filter(one -> one.form() == Form.DIAMOND && one.where().equals(from + " to " + to))
          .forEach(lean -> bays.add(new Bay(from, to, lean)));
    }
    return bays;
  }
}
