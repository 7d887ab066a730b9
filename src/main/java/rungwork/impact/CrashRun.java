package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** One run of a crash model: its masses and links, the samples, and what they say. */
final class CrashRun {
  /** A pulse that is longer than this [s] is no crash. */
  private static final double LONGEST = 0.5;

  /** Of the initial kinetic energy: the balance closes to this, or nothing is returned. */
  private static final double BALANCE = 1e-3;

  /** A body that still is shaken by this part of its peak when the contact ends is marked. */
  private static final double SHAKEN = 0.1;

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
    return new Crash(model, bodies(samples), parts(samples), events(samples), residual);
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

  private List<Crash.Part> parts(List<LumpedMasses.Sample> samples) {
    List<Crash.Part> all = new ArrayList<>();
    for (int i = 0; i < stack.parts().size(); i++) {
      all.add(part(stack.parts().get(i), i, samples));
    }
    if (model.hasFrontMass()) {
      double[] crush = closings(samples, links.get(1));
      all.add(new Crash.Part(model.frame(), crush, forces(samples, 1)));
    }
    return all;
  }

  private Crash.Part part(CrushCurve curve, int index, List<LumpedMasses.Sample> samples) {
    double most = 0;
    double[] closings = closings(samples, links.get(0));
    double[] forces = forces(samples, 0);
    double[] crush = new double[closings.length];
    for (int i = 0; i < crush.length; i++) {
      most = Math.max(most, closings[i]);
      double spring = (stack.curve().force(most) - forces[i]) / curve.unloading();
      crush[i] = stack.share(index, most) - Math.max(0, spring);
    }
    return new Crash.Part(curve, crush, forces);
  }

  private static double[] closings(List<LumpedMasses.Sample> samples, Link link) {
    return samples.stream().mapToDouble(s -> link.closing(s.state())).toArray();
  }

  private static double[] forces(List<LumpedMasses.Sample> samples, int link) {
    return samples.stream().mapToDouble(s -> s.forces()[link]).toArray();
  }

  private List<Crash.Event> events(List<LumpedMasses.Sample> samples) {
    List<Crash.Event> events = new ArrayList<>();
    events.add(new Crash.Event(0, "contact"));
    for (Crash.Part part : parts(samples)) {
      part.curve().points().stream()
          .filter(point -> !point.label().isEmpty())
          .forEach(point -> passing(events, samples, part, point));
    }
    model.motor().ifPresent(motor -> stopped(events, samples, motor));
    double[] closing = closings(samples, links.get(0));
    int deepest = 0;
    for (int i = 1; i < closing.length; i++) {
      deepest = closing[i] > closing[deepest] ? i : deepest;
    }
    events.add(new Crash.Event(samples.get(deepest).time(), "most crushed"));
    events.add(new Crash.Event(samples.get(samples.size() - 1).time(), "comes off"));
    return events.stream().sorted(Comparator.comparingDouble(Crash.Event::time)).toList();
  }

  private static void passing(
      List<Crash.Event> events,
      List<LumpedMasses.Sample> samples,
      Crash.Part part,
      CrushCurve.Point point) {
    double[] crush = part.crush();
    for (int i = 1; i < crush.length; i++) {
      if (crush[i] >= point.crush() * (1 - 1e-9)) {
        events.add(
            new Crash.Event(samples.get(i).time(), part.curve().name() + ": " + point.label()));
        return;
      }
    }
  }

  private void stopped(
      List<Crash.Event> events, List<LumpedMasses.Sample> samples, CrashModel.Motor motor) {
    double[] closing = closings(samples, links.get(links.size() - 1));
    for (int i = 1; i < closing.length; i++) {
      if (closing[i] > motor.gap()) {
        events.add(new Crash.Event(samples.get(i).time(), motor.name() + " meets its stop"));
        return;
      }
    }
  }

  /** What the reader of a run must know. */
  static List<String> marks(Crash crash, Units units) {
    List<String> lines = new ArrayList<>();
    for (Crash.Part part : crash.parts()) {
      double end = part.curve().last().crush();
      if (part.mostCrush() > end * (1 + 1e-9)) {
        lines.add(
            "%s is crushed by %s and passes the end of its curve at %s; its last force was held beyond it, which nothing shows to be so."
                .formatted(
                    part.curve().name(),
                    Range.brief(Kind.LENGTH, part.mostCrush(), units),
                    Range.brief(Kind.LENGTH, end, units)));
      }
    }
    double[] body = crash.body("body").decelerations();
    double last = Math.abs(body[body.length - 1]);
    if (last > SHAKEN * crash.pulse().peak()) {
      lines.add(
          "The body is still shaken by %s when the contact ends; the pulse is cut there."
              .formatted(Scale.G.show(last, 3)));
    }
    return lines;
  }
}
