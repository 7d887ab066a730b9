package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;

/** One run of a crash model: its masses and links, the samples, and what they say. */
final class CrashRun {
  /** A pulse that is longer than this [s] is no crash. */
  private static final double LONGEST = 0.5;

  /** Of the initial kinetic energy: the balance closes to this, or nothing is returned. */
  private static final double BALANCE = 1e-3;

  private final CrashModel model;
  private final List<String> names = new ArrayList<>();
  private final List<Double> masses = new ArrayList<>();
  private final List<Double> speeds = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Stack stack;
  private final int body;

  CrashRun(CrashModel model) {
    this.model = model;
    stack = Stack.of(model.foremost());
    int hit =
        model.other().map(other -> mass("other vehicle", other.mass(), 0)).orElse(Link.GROUND);
    if (model.hasFrontMass()) {
      int front = mass("front mass", model.front().orElseThrow().mass(), model.speed());
      body = mass("body", model.body(), model.speed());
      links.add(new Link.Crush(hit, front, stack.curve(), 0));
      links.add(new Link.Crush(front, body, model.frame(), 0));
    } else {
      body = mass("body", model.body(), model.speed());
      links.add(new Link.Crush(hit, body, stack.curve(), 0));
    }
    model.motor().ifPresent(this::motor);
  }

  private int mass(String name, double kilograms, double speed) {
    names.add(name);
    masses.add(kilograms);
    speeds.add(speed);
    return names.size() - 1;
  }

  private void motor(CrashModel.Motor motor) {
    int at = mass(motor.name(), motor.mass(), model.speed());
    links.add(new Link.Spring(body, at, motor.rubber()));
    CrushCurve stop = CrushCurve.linear("stop of " + motor.name(), motor.stop(), 1);
    links.add(new Link.Crush(body, at, stop, motor.gap()));
  }

  Crash crash() {
    double[] kilograms = masses.stream().mapToDouble(Double::doubleValue).toArray();
    double[] start = speeds.stream().mapToDouble(Double::doubleValue).toArray();
    List<LumpedMasses.Sample> samples =
        new LumpedMasses(kilograms, links, time -> 0).untilReleased(start, LONGEST);
    refuseEndless(samples.get(samples.size() - 1));
    double residual = residual(samples);
    if (!(residual <= BALANCE)) {
      throw new SolveException(
          "the energy balance of "
              + model.name()
              + " is open by "
              + new Scale("%", 0.01).show(residual, 3)
              + " of the initial kinetic energy; at most 0.1 % is accepted");
    }
    CrashCourse course = new CrashCourse(model, stack, links, samples);
    return new Crash(model, bodies(samples), course.parts(), course.events(), residual);
  }

  private void refuseEndless(LumpedMasses.Sample last) {
    if (last.time() >= LONGEST) {
      throw new SolveException(
          "the pulse of %s does not end within %s: it still closes at %s; the frame is too weak for this mass and speed, or its curve too short"
              .formatted(
                  model.name(),
                  new Scale("ms", 1e-3).show(LONGEST, 3),
                  new Scale("km/h", 1 / 3.6).show(last.state()[masses.size() + body], 3)));
    }
  }

  /** The open part of the energy balance: kinetic by the integration, the rest by the curves. */
  private double residual(List<LumpedMasses.Sample> samples) {
    double start = kinetic(samples.get(0));
    double worst = 0;
    for (LumpedMasses.Sample sample : samples) {
      double held = Arrays.stream(sample.energies()).sum();
      worst = Math.max(worst, Math.abs(start - kinetic(sample) - held));
    }
    return worst / start;
  }

  private double kinetic(LumpedMasses.Sample sample) {
    double sum = 0;
    for (int i = 0; i < masses.size(); i++) {
      double speed = sample.state()[masses.size() + i];
      sum += masses.get(i) * speed * speed / 2;
    }
    return sum;
  }

  private List<Crash.Body> bodies(List<LumpedMasses.Sample> samples) {
    List<Crash.Body> all = new ArrayList<>();
    double[] times = samples.stream().mapToDouble(LumpedMasses.Sample::time).toArray();
    for (int i = 0; i < names.size(); i++) {
      int at = i;
      all.add(
          new Crash.Body(
              names.get(i),
              masses.get(i),
              times,
              samples.stream().mapToDouble(s -> s.decelerations()[at]).toArray(),
              samples.stream().mapToDouble(s -> s.state()[masses.size() + at]).toArray(),
              samples.stream().mapToDouble(s -> s.state()[at]).toArray()));
    }
    return all;
  }
}
