package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rungwork.check.Caution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Units;

/**
 * What happened in one run of a crash model: one set of inputs, so one number each. Two runs, with
 * low and with high strength, make a range.
 *
 * @param model what was run
 * @param bodies the masses over time
 * @param parts what was crushed, from front to rear
 * @param events what happened when, in order of time
 * @param residual the open part of the energy balance over the initial kinetic energy [1], at most
 *     0.001
 */
public record Crash(
    CrashModel model, List<Body> bodies, List<Part> parts, List<Event> events, double residual) {

  /** Refuses a balance that is no number. */
  public Crash {
    Guard.solved("what the crash's energy leaves over", residual);
    bodies = List.copyOf(bodies);
    parts = List.copyOf(parts);
    events = List.copyOf(events);
  }

  /**
   * A mass over time.
   *
   * @param name such as {@code body}
   * @param mass [kg]
   * @param times [s]
   * @param decelerations [m/s²]
   * @param speeds forward [m/s]
   * @param ways forward since the contact [m]
   */
  public record Body(
      String name,
      double mass,
      double[] times,
      double[] decelerations,
      double[] speeds,
      double[] ways) {
    /** Copies the series. */
    public Body {
      Guard.positive("mass of " + name, mass, Scale.KG);
      for (double[] series : new double[][] {times, decelerations, speeds, ways}) {
        Guard.solved("motion of " + name, Arrays.stream(series).sum());
      }
      times = times.clone();
      decelerations = decelerations.clone();
      speeds = speeds.clone();
      ways = ways.clone();
    }

    @Override
    public double[] times() {
      return times.clone();
    }

    @Override
    public double[] decelerations() {
      return decelerations.clone();
    }

    @Override
    public double[] speeds() {
      return speeds.clone();
    }

    @Override
    public double[] ways() {
      return ways.clone();
    }
  }

  /**
   * Something that was crushed.
   *
   * @param curve its force over crush
   * @param crush over the same times as the bodies [m]
   * @param force over the same times [N]
   */
  public record Part(CrushCurve curve, double[] crush, double[] force) {
    /** Copies the series. */
    public Part {
      for (double[] series : new double[][] {crush, force}) {
        Guard.solved("crush of " + curve.name(), Arrays.stream(series).sum());
      }
      crush = crush.clone();
      force = force.clone();
    }

    @Override
    public double[] crush() {
      return crush.clone();
    }

    @Override
    public double[] force() {
      return force.clone();
    }

    /**
     * How far it was crushed.
     *
     * @return [m]
     */
    public double mostCrush() {
      double most = 0;
      for (double value : crush) {
        most = Math.max(most, value);
      }
      return most;
    }

    /**
     * The highest force that it carried.
     *
     * @return [N]
     */
    public double mostForce() {
      double most = 0;
      for (double value : force) {
        most = Math.max(most, value);
      }
      return most;
    }

    /**
     * What it took until it was crushed most, the part that it gave back included.
     *
     * @return [J]
     */
    public double energy() {
      return curve.energy(mostCrush());
    }
  }

  /**
   * Something that happened.
   *
   * @param time [s] after the contact
   * @param label what
   */
  public record Event(double time, String label) {
    /** Refuses what is not finite. */
    public Event {
      Guard.solved("time of an event", time);
    }
  }

  /**
   * A mass by its name.
   *
   * @param name such as {@code body}
   * @return it over time
   */
  public Body body(String name) {
    return bodies.stream()
        .filter(body -> body.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "there is no mass "
                        + name
                        + "; there are "
                        + String.join(", ", bodies.stream().map(Body::name).toList())));
  }

  /**
   * The pulse of the body, where the people sit.
   *
   * @return its deceleration over time
   */
  public Pulse pulse() {
    Body body = body("body");
    return Pulse.through(model.name(), body.times(), body.decelerations());
  }

  /**
   * Speed apart over speed together.
   *
   * @return e [1]
   */
  public double restitution() {
    double[] own = body("body").speeds();
    double other = 0;
    if (model.other().isPresent()) {
      double[] speeds = body("other vehicle").speeds();
      other = speeds[speeds.length - 1];
    }
    return (other - own[own.length - 1]) / model.speed();
  }

  /**
   * How far the vehicle's front was shortened at most.
   *
   * @return [m]
   */
  public double mostCrush() {
    int first = model.other().isPresent() ? 1 : 0;
    return parts.subList(first, parts.size()).stream().mapToDouble(Part::mostCrush).sum();
  }

  /**
   * What its reader must know: where a curve was left, what was still moving.
   *
   * @param units the reader's units
   * @return sentences; none when nothing stands out
   */
  public List<String> marks(Units units) {
    return CrashCourse.marks(this, units);
  }

  /**
   * What was assumed.
   *
   * @return sentences
   */
  public List<String> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add("Masses on one line; no pitch, no yaw, no ride up or under.");
    lines.add("Parts that stand one behind the other carry the same force.");
    model.motor().ifPresent(motor -> lines.add("Damping of the rubber is left out."));
    lines.add("What is crushed is let go along a straight steep line.");
    lines.add("People move with the body: their belts do not act back on it.");
    return lines;
  }

  @Override
  public String toString() {
    return model.name()
        + ": crush "
        + Scale.MM.show(mostCrush(), 3)
        + ", "
        + pulse()
        + "; energy balance open by "
        + new Scale("%", 0.01).show(residual, 2)
        + ". "
        + Caution.IMPACT.inBrief();
  }
}
