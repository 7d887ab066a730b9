package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Caution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * Damage seen from behind: what was measured on a bent frame, and the loads that explain it. Each
 * run of a collapse is followed up to a load and let go elastically; where what is left agrees with
 * every measurement within its tolerance, that load explains it.
 *
 * @param name what the reader calls it
 * @param measured what was measured, at least one
 */
public record SeenDamage(String name, List<Measured> measured) {
  /** Copies the measurements. */
  public SeenDamage {
    name = Guard.name("damage", name);
    measured = List.copyOf(measured);
  }

  /**
   * One measurement.
   *
   * @param what in words
   * @param features between which it was taken, in the order of its kind
   * @param how its kind
   * @param value by how much it differs from the straight frame [m]
   * @param tolerance of the value, either way [m], above zero
   */
  public record Measured(
      String what, List<String> features, PermanentSet how, double value, double tolerance) {
    /** Refuses a measurement without a tolerance. */
    public Measured {
      features = List.copyOf(features);
      if (features.size() != how.places()) {
        throw new ModelException(
            "%s is measured between %d places, not %d"
                .formatted(what, how.places(), features.size()));
      }
      Guard.finite(what, value);
      Guard.positive("tolerance of " + what, tolerance, Scale.MM);
    }

    /**
     * Whether it differs from nothing by more than its tolerance.
     *
     * @return true when it shows
     */
    public boolean shows() {
      return Math.abs(value) > tolerance;
    }
  }

  /**
   * Damage of which nothing is known yet.
   *
   * @param name what the reader calls it
   * @return the damage, to be carried on with what was measured
   */
  public static SeenDamage named(String name) {
    return new SeenDamage(name, List.of());
  }

  /**
   * Two places have come nearer to each other.
   *
   * @param from a feature of the ladder, such as {@code left tip}
   * @param to another
   * @param by how much shorter it is
   * @param tolerance of that, either way
   * @return the damage
   */
  public SeenDamage shorter(
      String from, String to, Quantity<Length> by, Quantity<Length> tolerance) {
    String what = from + " to " + to + " shorter";
    return and(what, List.of(from, to), PermanentSet.SHORTER, by, tolerance);
  }

  /**
   * The diagonals between two crossmembers differ.
   *
   * @param front a crossmember
   * @param rear another behind it
   * @param by how much longer the one from front left to rear right is than the other
   * @param tolerance of that, either way
   * @return the damage
   */
  public SeenDamage diagonals(
      String front, String rear, Quantity<Length> by, Quantity<Length> tolerance) {
    String what = "diagonal from " + front + " left to " + rear + " right, over the other";
    List<String> corners =
        List.of(front + " left", rear + " right", front + " right", rear + " left");
    return and(what, corners, PermanentSet.DIAGONALS, by, tolerance);
  }

  /**
   * A place has sunk below the line between two others.
   *
   * @param place a feature
   * @param between a feature ahead of it and one behind it
   * @param by how far down
   * @param tolerance of that, either way
   * @return the damage
   */
  public SeenDamage sag(
      String place, List<String> between, Quantity<Length> by, Quantity<Length> tolerance) {
    if (between.size() != 2) {
      throw new ModelException(
          "sag of %s is measured from the line between two features; there are %d"
              .formatted(place, between.size()));
    }
    String what = "sag of " + place + " below " + between.get(0) + " and " + between.get(1);
    List<String> features = List.of(place, between.get(0), between.get(1));
    return and(what, features, PermanentSet.SAG, by, tolerance);
  }

  private SeenDamage and(
      String what,
      List<String> features,
      PermanentSet how,
      Quantity<Length> by,
      Quantity<Length> tolerance) {
    List<Measured> more = new ArrayList<>(measured);
    more.add(
        new Measured(what, features, how, si(what, by), si("tolerance of " + what, tolerance)));
    return new SeenDamage(name, more);
  }

  /**
   * What explains it.
   *
   * @param scenes collapses of the frame as it was, one for each hit that is thought possible
   * @return one explanation a scene, in their order
   * @throws ModelException when nothing was measured, no scene is given, or a feature is not on the
   *     ladder
   */
  public Explanations under(Collapse... scenes) {
    if (measured.isEmpty()) {
      throw new ModelException("nothing was measured of " + name + "; state a set at least");
    }
    if (scenes.length == 0) {
      throw new ModelException("no hit was given that may explain " + name + "; give a collapse");
    }
    List<Explanation> all =
        Stream.of(scenes).map(scene -> new DamageReading(this, scene).explanation()).toList();
    return new Explanations(this, all);
  }

  /**
   * The damage and what explains it.
   *
   * @param damage what was measured
   * @param scenes one explanation a scene
   */
  public record Explanations(SeenDamage damage, List<Explanation> scenes) {
    /** Copies the explanations. */
    public Explanations {
      scenes = List.copyOf(scenes);
    }

    /**
     * What stays open whatever explains it.
     *
     * @return sentences
     */
    public List<String> notChecked() {
      return List.of(
          "Not checked: welds, bolts, tabs and mounts, belts and their anchorages, suspension and"
              + " steering. What the frame took went through them too; look at each.",
          "Not checked: what happened before, what was straightened since, how the frame stood"
              + " while it was measured, cracks.",
          "Left out: walls that folded, whose moment falls, so that a smaller load would do; a hit"
              + " between those stated; speed.");
    }

    @Override
    public String toString() {
      StringBuilder text = new StringBuilder("Damage seen: " + damage.name());
      scenes.forEach(one -> text.append("\n  ").append(one));
      return text.append("\n").append(Caution.IMPACT.inBrief()).toString();
    }
  }

  /**
   * The loads of one scene that explain the damage.
   *
   * @param scene the hit
   * @param runs the runs that do, with their loads
   * @param reason why none does; empty where some do
   */
  public record Explanation(Collapse scene, List<Reading> runs, String reason) {
    /** Copies the runs. */
    public Explanation {
      runs = List.copyOf(runs);
    }

    /**
     * The deceleration of the centre of the masses that it took.
     *
     * @return over all runs that explain it [m/s²]; nothing where none does
     */
    public Optional<Range> deceleration() {
      return over(reading -> reading.load().deceleration());
    }

    /**
     * The obstacle's force that it took.
     *
     * @return [N]; nothing where no run explains it
     */
    public Optional<Range> force() {
      return over(reading -> reading.load().force());
    }

    /**
     * What the frame took.
     *
     * @return [J]; nothing where no run explains it
     */
    public Optional<Range> energy() {
      return over(reading -> reading.load().energy());
    }

    private Optional<Range> over(Figure figure) {
      return runs.stream().map(figure::of).reduce(Range::and);
    }

    /**
     * Where the frame must have yielded: in every run that explains it.
     *
     * @return hinges in words, as they open
     */
    public List<String> yieldedSurely() {
      Set<String> sure = new LinkedHashSet<>();
      runs.stream().limit(1).forEach(run -> sure.addAll(run.passed()));
      runs.forEach(run -> sure.retainAll(run.passed()));
      return List.copyOf(sure);
    }

    /**
     * Where it may have yielded: in some of the runs, or at their highest load only.
     *
     * @return hinges in words with the number of runs, most first; those that surely did left out
     */
    public List<String> yieldedPerhaps() {
      Map<String, Integer> some = new LinkedHashMap<>();
      runs.forEach(run -> run.perhaps().forEach(hinge -> some.merge(hinge, 1, Integer::sum)));
      some.keySet().removeAll(yieldedSurely());
      return some.entrySet().stream()
          .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
          .map(one -> one.getKey() + " (" + one.getValue() + " of " + runs.size() + ")")
          .toList();
    }

    /**
     * Whether some run has to move on as a mechanism to explain it.
     *
     * @return true when the load alone says little and the crush says more
     */
    public boolean beyondMechanism() {
      return runs.stream().anyMatch(Reading::mechanism);
    }

    @Override
    public String toString() {
      return scene.hit().words()
          + ": "
          + deceleration()
              .map(range -> runs.size() + " of " + scene.paths().size() + " runs, " + range)
              .orElse(reason);
    }
  }

  private interface Figure {
    Range of(Reading reading);
  }

  /**
   * The loads of one run that explain the damage.
   *
   * @param path the run
   * @param load from the least to the most
   * @param mechanism whether it lies beyond the mechanism
   * @param passed hinges that had opened at the least load
   * @param perhaps hinges that had opened at the most
   */
  public record Reading(
      Collapse.Path path,
      Loads load,
      boolean mechanism,
      List<String> passed,
      List<String> perhaps) {
    /** Copies its lists. */
    public Reading {
      passed = List.copyOf(passed);
      perhaps = List.copyOf(perhaps);
    }
  }

  /**
   * A stretch of a path.
   *
   * @param deceleration of the centre of the masses [m/s²]
   * @param force of the obstacle [N]
   * @param crush before it was let go [m]
   * @param energy taken [J]
   */
  public record Loads(Range deceleration, Range force, Range crush, Range energy) {
    static Loads between(Collapse.Path path, double from, double to) {
      double perGravity = Scale.G.inSi() / path.pushed().unit();
      Range forces = new Range(Kind.FORCE, path.force(from), path.force(to));
      return new Loads(
          forces.times(perGravity).kindOf(Kind.ACCELERATION),
          forces,
          new Range(Kind.LENGTH, from, to),
          new Range(Kind.ENERGY, path.energy(from), path.energy(to)));
    }
  }

  @Override
  public String toString() {
    List<String> lines =
        measured.stream()
            .map(
                one ->
                    one.what
                        + " "
                        + Range.brief(Kind.LENGTH, one.value, Units.METRIC)
                        + " ± "
                        + Range.brief(Kind.LENGTH, one.tolerance, Units.METRIC))
            .toList();
    return name + ": " + String.join("; ", lines);
  }
}
