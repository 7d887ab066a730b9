package rungwork.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What happens in a crash, told from its samples: what is crushed by how much, and when.
 *
 * @param model what crashes
 * @param stack what is pressed together first
 * @param links between the masses: the stack, the frame behind a front mass, the motor's stop last
 * @param samples over time
 */
record CrashCourse(
    CrashModel model, Stack stack, List<Link> links, List<LumpedMasses.Sample> samples) {
  /** Crush that differs by less than this part is one: rounding [1]. */
  private static final double ROUNDING = 1e-9;

  /** A body that still is shaken by this part of its peak when the contact ends is marked. */
  private static final double SHAKEN = 0.1;

  /** What is crushed, from the front. */
  List<Crash.Part> parts() {
    List<Crash.Part> all = new ArrayList<>();
    for (int i = 0; i < stack.parts().size(); i++) {
      all.add(part(stack.parts().get(i), i));
    }
    if (model.hasFrontMass()) {
      double[] crush = closings(links.get(1));
      all.add(new Crash.Part(model.frame(), crush, forces(1)));
    }
    return all;
  }

  private Crash.Part part(CrushCurve curve, int index) {
    double most = 0;
    double[] closings = closings(links.get(0));
    double[] forces = forces(0);
    double[] crush = new double[closings.length];
    for (int i = 0; i < crush.length; i++) {
      most = Math.max(most, closings[i]);
      double spring = (stack.curve().force(most) - forces[i]) / curve.unloading();
      crush[i] = stack.share(index, most) - Math.max(0, spring);
    }
    return new Crash.Part(curve, crush, forces);
  }

  private double[] closings(Link link) {
    return samples.stream().mapToDouble(s -> link.closing(s.state())).toArray();
  }

  private double[] forces(int link) {
    return samples.stream().mapToDouble(s -> s.forces()[link]).toArray();
  }

  /** What happens, in order of time. */
  List<Crash.Event> events() {
    List<Crash.Event> events = new ArrayList<>();
    events.add(new Crash.Event(0, "contact"));
    for (Crash.Part part : parts()) {
      part.curve().points().stream()
          .filter(point -> !point.label().isEmpty())
          .flatMap(point -> passing(part, point).stream())
          .forEach(events::add);
    }
    model.motor().flatMap(this::stopped).ifPresent(events::add);
    events.add(new Crash.Event(time(deepest()), "most crushed"));
    events.add(new Crash.Event(time(samples.size() - 1), "comes off"));
    return events.stream().sorted(Comparator.comparingDouble(Crash.Event::time)).toList();
  }

  private double time(int sample) {
    return samples.get(sample).time();
  }

  private int deepest() {
    double[] closing = closings(links.get(0));
    int deepest = 0;
    for (int i = 1; i < closing.length; i++) {
      deepest = closing[i] > closing[deepest] ? i : deepest;
    }
    return deepest;
  }

  /** Where a part first comes to a point of its curve. */
  private Optional<Crash.Event> passing(Crash.Part part, CrushCurve.Point point) {
    double[] crush = part.crush();
    return first(i -> crush[i] >= point.crush() * (1 - ROUNDING))
        .map(time -> new Crash.Event(time, part.curve().name() + ": " + point.label()));
  }

  private Optional<Crash.Event> stopped(CrashModel.Motor motor) {
    double[] closing = closings(links.get(links.size() - 1));
    return first(i -> closing[i] > motor.gap())
        .map(time -> new Crash.Event(time, motor.name() + " meets its stop"));
  }

  /** The time of the first sample, but for that of the contact, of which something holds [s]. */
  private Optional<Double> first(IntPredicate holds) {
    return IntStream.range(1, samples.size()).filter(holds).boxed().findFirst().map(this::time);
  }

  /** What the reader of a run must know. */
  static List<String> marks(Crash crash, Units units) {
    List<String> lines = new ArrayList<>();
    for (Crash.Part part : crash.parts()) {
      double end = part.curve().last().crush();
      if (part.mostCrush() > end * (1 + ROUNDING)) {
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
