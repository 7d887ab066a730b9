package rungwork.impact;

import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import rungwork.check.Caution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * The choice: the bare frame against the same frame with something in front of it that crushes, in
 * the same scene with the same people. Every combination of low and high is run; figures are the
 * ranges over all of them.
 *
 * @param scene how fast, how heavy, against what
 * @param rails the frame's force over crush, at both strengths
 * @param motor a motor on rubber, if it counts apart
 * @param occupant who is compared
 * @param outcomes one a design, in the order given
 */
public record RigidOrCrush(
    Scene scene,
    Rails rails,
    Optional<CrashModel.Motor> motor,
    Occupant occupant,
    List<Outcome> outcomes) {
  /** Copies the outcomes. */
  public RigidOrCrush {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * The frame's force over crush at its two strengths; its straight beginning ends at first yield.
   *
   * @param low minimum strength
   * @param high expected strength
   */
  public record Rails(CrushCurve low, CrushCurve high) {
    /**
     * The force at which the straight beginning ends.
     *
     * @return at both strengths [N]
     */
    public Range firstYield() {
      return Range.spanning(
          Kind.FORCE, Stream.of(low, high).mapToDouble(curve -> curve.points().get(1).force()));
    }
  }

  /**
   * What stands in front of the frame.
   *
   * @param name what the reader calls it
   * @param element what crushes; nothing for the bare frame
   * @param places middles of the elements across the vehicle [m], to the left
   */
  public record Design(String name, Optional<CrushElement> element, List<Double> places) {
    /** Copies the places. */
    public Design {
      name = Guard.name("design", name);
      places = List.copyOf(places);
      for (double place : places) {
        Guard.finite("place of " + name, place);
      }
    }

    /**
     * The frame as it is.
     *
     * @param name what the reader calls it
     * @return the design
     */
    public static Design bare(String name) {
      return new Design(name, Optional.empty(), List.of());
    }

    /**
     * An element in front of the frame.
     *
     * @param name what the reader calls the design
     * @param element what crushes
     * @param place its middle across the vehicle, to the left
     * @return the design
     */
    public static Design with(String name, CrushElement element, Quantity<Length> place) {
      return new Design(
          name, Optional.of(element), List.of(si("place of " + element.name(), place)));
    }

    /**
     * The same design with one more such element.
     *
     * @param place its middle across the vehicle, to the left
     * @return the design
     */
    public Design and(Quantity<Length> place) {
      List<Double> more = new ArrayList<>(places);
      more.add(si("place of an element of " + name, place));
      return new Design(name, element, more);
    }

    /**
     * How many of its elements stand in the way of what is hit.
     *
     * @param obstacle what is hit
     * @return from none to all
     */
    public int met(Obstacle obstacle) {
      double half = element.map(CrushElement::width).orElse(0.0) / 2;
      return (int) places.stream().filter(at -> obstacle.meets(at - half, at + half)).count();
    }

    /**
     * What it adds to the vehicle.
     *
     * @return [kg]
     */
    public double mass() {
      return element.map(CrushElement::mass).orElse(0.0) * places.size();
    }
  }

  /** How the frame behind compares with what folds in front. */
  public enum Order {
    /** What stands behind is stronger by far: low over high from {@value #SHOWN} on. */
    HOLDS("holds by these figures"),
    /** It depends on where in their ranges both lie. */
    NOT_SHOWN("not shown to hold"),
    /** What stands behind is no stronger: high over low below {@value #HARDLY}. */
    DOES_NOT_HOLD("does not hold"),
    /** There is nothing in front, or nothing of it is met. */
    NOTHING_IN_FRONT("nothing in front");

    /**
     * What the strength behind must be over that in front before the order counts as shown: joints,
     * sharing between paths and the real walls are in no figure. Common practice, no source.
     */
    static final double SHOWN = 1.6;

    /** Below this what stands behind is no stronger than the scatter of its own figures [1]. */
    static final double HARDLY = 1.1;

    private final String words;

    Order(String words) {
      this.words = words;
    }

    /** What a ratio of strengths shows: behind over in front, low over high to high over low. */
    static Order of(Range ratio) {
      if (ratio.low() >= SHOWN) {
        return HOLDS;
      }
      return ratio.high() < HARDLY ? DOES_NOT_HOLD : NOT_SHOWN;
    }

    /**
     * In words.
     *
     * @return for example {@code not shown to hold}
     */
    public String words() {
      return words;
    }
  }

  /**
   * What one design gave.
   *
   * @param design what stands in front of the frame
   * @param crashes one a combination of low and high
   * @param ride what the person goes through in all of them
   * @param scene what was hit
   * @param behindOverFront first yield of the frame over the folding peak in front; 0 for nothing
   */
  public record Outcome(
      Design design, List<Crash> crashes, Ride ride, Scene scene, Range behindOverFront) {
    /** Copies the crashes. */
    public Outcome {
      crashes = List.copyOf(crashes);
    }

    /**
     * What the reader must know of it.
     *
     * @param units the reader's units
     * @return sentences; none when nothing stands out
     */
    public List<String> remarks(Units units) {
      return new OutcomeRemarks(this).in(units);
    }

    /**
     * Capacity design in one line: low strength behind over high strength in front.
     *
     * @return whether the frame stays elastic while the element folds
     */
    public Order order() {
      return behindOverFront.high() == 0 ? Order.NOTHING_IN_FRONT : Order.of(behindOverFront);
    }

    private Range over(Kind kind, ToDoubleFunction<Crash> value) {
      return Range.spanning(kind, crashes.stream().mapToDouble(value));
    }

    /** Speed at which it comes off over the closing speed [1]. */
    Range restitution() {
      return over(Kind.RATIO, Crash::restitution);
    }

    /**
     * The body's highest deceleration.
     *
     * @return [m/s²]
     */
    public Range peak() {
      return over(Kind.ACCELERATION, crash -> crash.pulse().peak());
    }

    /**
     * The body's mean over time.
     *
     * @return [m/s²]
     */
    public Range meanOverTime() {
      return over(Kind.ACCELERATION, crash -> crash.pulse().meanOverTime());
    }

    /**
     * How long the pulse lasts.
     *
     * @return [s]
     */
    public Range duration() {
      return over(Kind.TIME, crash -> crash.pulse().duration());
    }

    /**
     * How far the front is shortened, frame and element together.
     *
     * @return [m]
     */
    public Range crush() {
      return over(Kind.LENGTH, Crash::mostCrush);
    }

    /**
     * What the frame takes.
     *
     * @return [J]
     */
    public Range frameEnergy() {
      return over(Kind.ENERGY, crash -> crash.parts().get(crash.parts().size() - 1).energy());
    }

    /**
     * What the elements take; nothing without any.
     *
     * @return [J]
     */
    public Range elementEnergy() {
      return over(
          Kind.ENERGY,
          crash -> crash.model().front().map(front -> energyOf(crash, front)).orElse(0.0));
    }

    private static double energyOf(Crash crash, CrashModel.Front front) {
      return crash.parts().stream()
          .filter(part -> part.curve().equals(front.element()))
          .mapToDouble(Crash.Part::energy)
          .sum();
    }
  }

  /**
   * Runs every design in every combination of low and high.
   *
   * @param scene how fast, how heavy, against what
   * @param rails the frame's force over crush for this hit, at both strengths
   * @param occupant who is compared
   * @param designs at least one
   * @return the comparison
   */
  public static RigidOrCrush of(Scene scene, Rails rails, Occupant occupant, Design... designs) {
    return new RigidOrCrush(scene, rails, Optional.empty(), occupant, List.of())
        .run(List.of(designs));
  }

  /**
   * The same comparison with a motor on rubber.
   *
   * @param part the motor
   * @return the comparison, run anew
   */
  public RigidOrCrush with(CrashModel.Motor part) {
    return new RigidOrCrush(scene, rails, Optional.of(part), occupant, List.of()).run(designs());
  }

  /**
   * The same comparison at another speed.
   *
   * @param closing the speed
   * @return the comparison, run anew
   */
  public RigidOrCrush at(Quantity<Speed> closing) {
    Scene faster = scene.closing(closing, closing);
    return new RigidOrCrush(faster, rails, motor, occupant, List.of()).run(designs());
  }

  private List<Design> designs() {
    return outcomes.stream().map(Outcome::design).toList();
  }

  private RigidOrCrush run(List<Design> designs) {
    if (designs.isEmpty()) {
      throw new ModelException("there is no design to compare; give at least one");
    }
    return new RigidOrCrush(
        scene, rails, motor, occupant, designs.stream().map(this::outcome).toList());
  }

  private Outcome outcome(Design design) {
    int met = design.met(scene.obstacle());
    Optional<CrushElement> tube = design.element().filter(one -> met > 0).map(one -> hit(one));
    List<Crash> crashes = new ArrayList<>();
    for (CrashModel model : new Combinations(scene, rails, motor).of(design, tube, met)) {
      crashes.add(model.run());
    }
    double[] speeds = crashes.stream().mapToDouble(RigidOrCrush::toCommonSpeed).toArray();
    Ride ride = occupant.in(speeds, crashes.stream().map(Crash::pulse).toList());
    return new Outcome(design, crashes, ride, scene, behindOverFront(tube, met));
  }

  /** What is lost until nothing closes any more: at a wall all of it, else a part rides on. */
  private static double toCommonSpeed(Crash crash) {
    CrashModel model = crash.model();
    double part = model.other().map(hit -> hit.mass() / (hit.mass() + model.mass())).orElse(1.0);
    return part * model.speed();
  }

  private Range behindOverFront(Optional<CrushElement> tube, int met) {
    Range yield = rails.firstYield();
    return tube.map(
            one ->
                Range.ratio(
                    yield.low() / (met * one.foldingPeak().high()),
                    yield.high() / (met * one.foldingPeak().low())))
        .orElse(Range.exactly(Kind.RATIO, 0));
  }

  /**
   * The crush length that keeps a mean deceleration over the distance, whatever crushes.
   *
   * @param mean of the own vehicle
   * @return the crush [m]
   */
  public Range shortestCrush(Quantity<Acceleration> mean) {
    return scene.crushFor(mean);
  }

  /**
   * The length of a folding tube for that crush: folds pack to 25 to 30 % of the length.
   *
   * @param mean of the own vehicle
   * @return the tube's length [m]
   */
  public Range shortestTube(Quantity<Acceleration> mean) {
    Range crush = scene.crushFor(mean);
    return new Range(Kind.LENGTH, crush.low() / 0.75, crush.high() / 0.70);
  }

  /**
   * What its reader must know of the inputs.
   *
   * @param units the reader's units
   * @return sentences; none when nothing stands out
   */
  public List<String> warnings(Units units) {
    Set<String> lines = new LinkedHashSet<>(scene.warnings(units));
    outcomes.forEach(outcome -> lines.addAll(outcome.ride().warnings(units)));
    return List.copyOf(lines);
  }

  /**
   * What was assumed.
   *
   * @param units the reader's units
   * @return sentences
   */
  public List<String> assumptions(Units units) {
    Set<String> lines = new LinkedHashSet<>();
    for (Outcome outcome : outcomes) {
      outcome.design().element().ifPresent(tube -> lines.addAll(hit(tube).assumptions(units)));
      lines.addAll(outcome.crashes().get(0).assumptions());
      lines.addAll(outcome.ride().assumptions());
    }
    if (!scene.obstacle().central()) {
      lines.add("The hit is off centre; turning in plan is left out, and so is what it takes.");
    }
    return List.copyOf(lines);
  }

  private CrushElement hit(CrushElement element) {
    return element.hitAt(kmh(scene.closing().high() * 3.6));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(scene.toString());
    for (Outcome one : outcomes) {
      text.append("\n  ").append(one.design().name());
      text.append(": vehicle ").append(one.peak()).append(", person ").append(one.ride().peak());
      text.append("; ").append(one.order().words());
    }
    return text.append("\n").append(Caution.IMPACT.inBrief()).toString();
  }
}
