package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;

/**
 * Masses on one line with links between them, integrated in time by the eighth-order method of
 * Dormand and Prince with step control (Hairer, Nørsett and Wanner, Solving Ordinary Differential
 * Equations I, 2nd ed. 1993). A link's turning point is an event, so that what is let go unloads
 * from where it really turned.
 *
 * <p>Each state holds the places and then the speeds of all masses, forwards.
 */
final class LumpedMasses {
  /** No step is longer than this [s]: a car at 100 km/h moves 1.4 mm. */
  private static final double LONGEST_STEP = 5e-5;

  private static final double SHORTEST_STEP = 1e-12;

  /** Error a step [m, m/s] and relative: far below what the energy balance is held to. */
  private static final double TOLERANCE = 1e-10;

  /** How near to the ends of a stretch its driving deceleration is taken [1]. */
  private static final double INSIDE = 1e-9;

  private static final int MOST_EVENT_STEPS = 200;

  private final double[] masses;
  private final List<Link> links;
  private final DoubleUnaryOperator frameDeceleration;

  /** The most that each link was closed at a turning point. */
  private final double[] most;

  /** At the longest step two seconds; a crash and a belt are over in a fraction of one. */
  private static final int MOST_SAMPLES = 40_000;

  private final List<Sample> samples = new ArrayList<>();

  /** The stretch being integrated [s]: what drives it is taken from inside, not beyond a jump. */
  private double start;

  private double end;

  /**
   * @param masses [kg]
   * @param links between them
   * @param frameDeceleration of the frame in which places count [m/s²] over time; it drives all
   *     masses forward
   */
  LumpedMasses(double[] masses, List<Link> links, DoubleUnaryOperator frameDeceleration) {
    this.masses = masses.clone();
    this.links = List.copyOf(links);
    this.frameDeceleration = frameDeceleration;
    this.most = new double[links.size()];
  }

  /**
   * A moment of the run.
   *
   * @param time [s]
   * @param state places [m], then speeds [m/s]
   * @param forces of the links [N]
   * @param energies in the links [J]
   * @param decelerations of the masses by their links [m/s²]
   */
  record Sample(
      double time, double[] state, double[] forces, double[] energies, double[] decelerations) {}

  private double driven(double time) {
    double edge = INSIDE * (end - start);
    return frameDeceleration.applyAsDouble(Math.max(start + edge, Math.min(end - edge, time)));
  }

  /** Ends the run when the first link has let go and its masses move apart. */
  List<Sample> untilReleased(double[] speeds, double limit) {
    DormandPrince853Integrator integrator = integrator();
    integrator.addEventHandler(release(), LONGEST_STEP, 1e-12, MOST_EVENT_STEPS);
    run(integrator, 0, beginning(speeds), limit);
    return List.copyOf(samples);
  }

  /** Runs from rest from time to time; the frame's deceleration may jump at each of them. */
  List<Sample> through(double[] times) {
    double[] state = beginning(new double[masses.length]);
    for (int i = 1; i < times.length; i++) {
      run(integrator(), times[i - 1], state, times[i]);
    }
    return List.copyOf(samples);
  }

  private DormandPrince853Integrator integrator() {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, TOLERANCE, TOLERANCE);
    integrator.addStepHandler(recorder());
    for (int i = 0; i < links.size(); i++) {
      integrator.addEventHandler(turning(i), LONGEST_STEP, 1e-12, MOST_EVENT_STEPS);
    }
    return integrator;
  }

  private double[] beginning(double[] speeds) {
    double[] state = new double[2 * masses.length];
    System.arraycopy(speeds, 0, state, masses.length, masses.length);
    return state;
  }

  private void run(DormandPrince853Integrator integrator, double from, double[] state, double to) {
    if (Thread.currentThread().isInterrupted()) {
      throw new SolveException("the calculation of the crash was interrupted");
    }
    start = from;
    end = to;
    samples.add(sample(start, state));
    try {
      integrator.integrate(equations(), start, state, end, state);
    } catch (MathIllegalArgumentException | MathIllegalStateException e) {
      throw new SolveException("the time steps do not converge: " + e.getMessage());
    }
  }

  private FirstOrderDifferentialEquations equations() {
    return new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 2 * masses.length;
      }

      @Override
      public void computeDerivatives(double time, double[] state, double[] rates) {
        double[] held = decelerations(state);
        double driven = driven(time);
        for (int i = 0; i < masses.length; i++) {
          rates[i] = state[masses.length + i];
          rates[masses.length + i] = driven - held[i];
        }
      }
    };
  }

  private double[] decelerations(double[] state) {
    double[] held = new double[masses.length];
    for (int i = 0; i < links.size(); i++) {
      Link link = links.get(i);
      double force = link.force(link.closing(state), closingSpeed(link, state), most[i]);
      held[link.rear()] += force / masses[link.rear()];
      if (link.front() != Link.GROUND) {
        held[link.front()] -= force / masses[link.front()];
      }
    }
    return held;
  }

  private Sample sample(double time, double[] state) {
    double[] forces = new double[links.size()];
    double[] energies = new double[links.size()];
    for (int i = 0; i < forces.length; i++) {
      Link link = links.get(i);
      double closing = link.closing(state);
      forces[i] = link.force(closing, closingSpeed(link, state), most[i]);
      energies[i] = link.energy(closing, most[i]);
    }
    return new Sample(time, state.clone(), forces, energies, decelerations(state));
  }

  private StepHandler recorder() {
    return new StepHandler() {
      @Override
      public void init(double start, double[] state, double end) {
        // The first state is recorded before the run.
      }

      @Override
      public void handleStep(StepInterpolator interpolator, boolean last) {
        interpolator.setInterpolatedTime(interpolator.getCurrentTime());
        refuseEndless();
        samples.add(sample(interpolator.getCurrentTime(), interpolator.getInterpolatedState()));
      }
    };
  }

  private void refuseEndless() {
    if (samples.size() > MOST_SAMPLES || Thread.currentThread().isInterrupted()) {
      throw new SolveException(
          "the crash was stopped after %d time steps, at %s; softness, gaps or speed make it too long to follow"
              .formatted(
                  samples.size(), new Scale("s", 1).show(samples.get(samples.size() - 1).time())));
    }
  }

  private double closingSpeed(Link link, double[] state) {
    int n = masses.length;
    return state[n + link.rear()] - (link.front() == Link.GROUND ? 0 : state[n + link.front()]);
  }

  /** A link that closes no farther: from here it unloads. */
  private EventHandler turning(int index) {
    Link link = links.get(index);
    return new EventHandler() {
      @Override
      public void init(double start, double[] state, double end) {
        // Nothing to prepare.
      }

      @Override
      public double g(double time, double[] state) {
        return closingSpeed(link, state);
      }

      @Override
      public Action eventOccurred(double time, double[] state, boolean increasing) {
        if (increasing) {
          return Action.CONTINUE;
        }
        most[index] = Math.max(most[index], link.closing(state));
        return Action.RESET_DERIVATIVES;
      }

      @Override
      public void resetState(double time, double[] state) {
        // The state itself does not jump.
      }
    };
  }

  /** The first link has let go. */
  private EventHandler release() {
    Link.Crush link = (Link.Crush) links.get(0);
    return new EventHandler() {
      @Override
      public void init(double start, double[] state, double end) {
        // Nothing to prepare.
      }

      @Override
      public double g(double time, double[] state) {
        return most[0] <= 0 ? 1 : link.closing(state) - link.release(most[0]);
      }

      @Override
      public Action eventOccurred(double time, double[] state, boolean increasing) {
        return increasing ? Action.CONTINUE : Action.STOP;
      }

      @Override
      public void resetState(double time, double[] state) {
        // The state itself does not jump.
      }
    };
  }
}
