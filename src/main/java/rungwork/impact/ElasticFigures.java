package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.impact.OrderOfFailure.Elastic;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;
import rungwork.solve.AppliedWrench;
import rungwork.solve.RigidAcceleration;
import rungwork.vehicle.Balance;
import rungwork.vehicle.SeatDeceleration;

/**
 * What the whole vehicle does when its frame first yields.
 *
 * @param balance of the hit at the reference deceleration
 * @param stage the elastic stage
 * @param parts the frame's own
 */
record ElasticFigures(Balance balance, ElasticStage stage, List<Part> parts) {

  /** What the obstacle has to stop [kg]. */
  double amplifiedMass() {
    return felt().stream().mapToDouble(Mass::kilograms).sum();
  }

  private List<Mass> felt() {
    return balance.vehicle().masses().stream().map(Mass::amplified).toList();
  }

  Elastic all() {
    Range yield = firstYield();
    double scale = yield.low() / stage.reference();
    RigidAcceleration answer = balance.acceleration();
    return new Elastic(
        ElasticStage.words(balance.event().name()),
        yield,
        stage.critical(),
        answer.alphaY() * scale,
        answer.alphaZ() * scale,
        balance.atSeats().stream().map(seat -> scaled(seat, scale)).toList(),
        balance.forces().stream().map(AppliedWrench::at).toList(),
        centre(),
        notes(yield));
  }

  private Point centre() {
    return new Point(mean(Point::x), mean(Point::y), mean(Point::z));
  }

  private double mean(ToDoubleFunction<Point> axis) {
    double sum =
        felt().stream().mapToDouble(one -> one.kilograms() * axis.applyAsDouble(one.at())).sum();
    return sum / amplifiedMass();
  }

  private static SeatDeceleration scaled(SeatDeceleration seat, double scale) {
    return new SeatDeceleration(seat.seat(), seat.rearwards() * scale, seat.magnitude() * scale);
  }

  private Range firstYield() {
    return new Range(Kind.ACCELERATION, least(Range::low), least(Range::high));
  }

  private double least(ToDoubleFunction<Range> end) {
    return parts.stream()
        .filter(part -> part.zone() != Zone.WHOLE_FRAME)
        .flatMap(part -> part.first().stream())
        .mapToDouble(end)
        .min()
        .orElseThrow();
  }

  private List<String> notes(Range yield) {
    List<String> notes = new ArrayList<>();
    stage
        .critical()
        .filter(critical -> critical.low() < 10 * yield.low())
        .ifPresent(
            critical ->
                notes.add(
                    "The frame buckles at "
                        + Scale.NUMBER.number(critical.low() / yield.low(), 2)
                        + " times its first yield, below the 10 from which EN 1993-1-1, 5.2.1(3),"
                        + " lets first order do: moments grow beyond what is counted here."));
    return notes;
  }
}
