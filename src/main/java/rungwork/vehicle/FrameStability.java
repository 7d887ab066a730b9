package rungwork.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rungwork.check.Member;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Sway;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.section.Properties;
import rungwork.solve.Buckling;
import rungwork.solve.CriticalLoad;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/**
 * What the buckling of the whole frame asks of its members under a load case.
 *
 * <p>The frame's own critical load, in its plane and out of it, gives the effective lengths of
 * those members that take part in its buckling, with moments of first order (EN 1993-1-1:2005,
 * 5.2.2(8)). Where it lies below {@value #FIRST_ORDER} times the load (5.2.1(3)) the members are
 * checked a second time, between held ends with moments of second order (5.2.2(7)b). Above {@value
 * #NO_BUCKLING} times the load buckling may be left out (6.3.1.2(4)) and nothing is searched for.
 * The design factor raises both limits. All from memory.
 */
final class FrameStability {
  /** From here on moments of first order suffice [1]. */
  static final double FIRST_ORDER = 10;

  /** From here on buckling takes no part of a column's strength [1]. */
  static final double NO_BUCKLING = 25;

  private static final String BEYOND =
      "the load is beyond the frame's critical load, so that there are no moments of second order";

  private final Response response;
  private final double gamma;
  private final List<String> reasons = new ArrayList<>();
  private boolean followed = true;
  private final Optional<CriticalLoad> inPlane;
  private final Optional<CriticalLoad> outOfPlane;

  /**
   * Looks for the critical loads.
   *
   * @param response of the anchored frame, in first order
   * @param gamma the design factor [1]
   */
  FrameStability(Response response, double gamma) {
    this.response = response;
    this.gamma = gamma;
    double far = NO_BUCKLING * gamma;
    inPlane = found(() -> Buckling.of(response).inPlaneBelow(far));
    outOfPlane = found(() -> Buckling.of(response).outOfPlaneBelow(far));
  }

  private Optional<CriticalLoad> found(Supplier<Optional<CriticalLoad>> search) {
    try {
      Optional<CriticalLoad> load = search.get();
      Optional<String> weak = load.flatMap(CriticalLoad::withoutWarping);
      weak.ifPresent(reasons::add);
      followed &= weak.isEmpty();
      return weak.isPresent() ? Optional.empty() : load;
    } catch (ModelException notCovered) {
      reasons.add(notCovered.getMessage());
      return Optional.empty();
    }
  }

  /** Why the frame's buckling was not followed; nothing where it was. */
  List<String> reasons() {
    return List.copyOf(reasons);
  }

  /** The lower of the critical loads; empty where none is near. */
  Optional<CriticalLoad> lowest() {
    return inPlane
        .filter(one -> outOfPlane.isEmpty() || one.factor() <= outOfPlane.get().factor())
        .or(() -> outOfPlane);
  }

  /** The member with the lengths that the frame's buckling gives it, if it takes part. */
  Member lengthened(Member member) {
    BucklingLengths own = member.buckling();
    Optional<Double> in = inPlane.flatMap(load -> length(member, load, true));
    Optional<Double> out = outOfPlane.flatMap(load -> length(member, load, false));
    if (in.isEmpty() && out.isEmpty()) {
      return member;
    }
    String reason = in.map(length -> words(inPlane.get())).orElse("");
    if (out.isPresent() && (in.isEmpty() || response.frame().isFlat())) {
      reason = (reason.isEmpty() ? "" : reason + "; ") + words(outOfPlane.get());
    }
    if (in.isEmpty() || out.isEmpty()) {
      reason += "; otherwise " + own.reason();
    }
    return member.with(
        new BucklingLengths(
            in.orElse(own.inPlane()),
            out.orElse(own.outOfPlane()),
            own.twist(),
            reason,
            Sway.IN_LENGTHS));
  }

  private static String words(CriticalLoad load) {
    return "from the frame's critical load, "
        + Scale.NUMBER.number(load.factor(), 3)
        + " times this load, "
        + load.motion();
  }

  /** Of the member's beams that take part the most compressed one's; its EI about the axis. */
  private Optional<Double> length(Member member, CriticalLoad load, boolean inPlane) {
    return member.beams().stream()
        .filter(load::takesPart)
        .map(beam -> load.effectiveLength(beam).orElseThrow())
        .min(Double::compare)
        .map(length -> length * aboutAxis(member, inPlane));
  }

  /** A frame in space buckles about both axes at once, and its lengths are the stiffer axis's. */
  private double aboutAxis(Member member, boolean inPlane) {
    Frame frame = response.frame();
    Properties p = frame.beam(member.beams().get(0)).section().properties();
    return frame.isFlat() ? 1 : Math.sqrt((inPlane ? p.iz() : p.iy()) / Math.max(p.iy(), p.iz()));
  }

  /** The response in second order, where it is asked for and there is one. */
  Optional<Response> secondOrder(Solver solver, LoadCase loads) {
    if (!followed || lowest().filter(load -> load.factor() < FIRST_ORDER * gamma).isEmpty()) {
      return Optional.empty();
    }
    if (lowest().get().factor() <= 1) {
      reasons.add(BEYOND);
      return Optional.empty();
    }
    try {
      return Optional.of(solver.solve(loads));
    } catch (ModelException | SolveException none) {
      reasons.add(none.getMessage());
      return Optional.empty();
    }
  }
}
