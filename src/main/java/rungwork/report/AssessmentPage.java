package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.solve.Vibration;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.SeatDeceleration;

/** An assessed vehicle: the plan in colours, stiffness, seats, and the check sheet in full. */
final class AssessmentPage {
  private AssessmentPage() {}

  static Page of(Assessment assessment, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(assessment.sheet().title()));
    LadderPlan plan =
        new LadderPlan(
            assessment.ladder(),
            Optional.of(assessment.vehicle()),
            Optional.of(assessment.sheet()));
    blocks.add(new Block.Figure(plan.picture(units)));
    blocks.add(new Block.Figure(plan.elevation(units)));
    blocks.addAll(SheetPage.body(assessment.sheet(), units));
    blocks.add(new Block.Heading("Frame"));
    blocks.add(
        new Block.Paragraph(
            "Mass "
                + units.show(Kind.MASS, assessment.mass())
                + "; torsional stiffness with rigid joints "
                + units.show(Kind.ROTATIONAL_STIFFNESS, assessment.torsionalStiffness(Joints.RIGID))
                + ", measured from axle to axle."));
    blocks.add(new Block.Paragraph(vibrations(assessment)));
    seats(blocks, assessment, units);
    return new Page(blocks);
  }

  private static String vibrations(Assessment assessment) {
    return "Floating with its masses and rigid joints it vibrates "
        + slowest("in twist", assessment.firstTwist(Joints.RIGID))
        + " and "
        + slowest("in bending", assessment.firstBending(Joints.RIGID))
        + "; tyres, springs and damping are left out.";
  }

  private static String slowest(String kind, Optional<Vibration.Mode> mode) {
    return mode.map(one -> kind + " at " + Numbers.decimals(one.frequency(), 1) + " Hz")
        .orElse(kind + " at none of the slowest frequencies");
  }

  private static void seats(List<Block> blocks, Assessment assessment, Units units) {
    String unit = units.scale(Kind.ACCELERATION).unit();
    List<Row> rows = new ArrayList<>();
    for (Event event : assessment.events()) {
      if (event.kind() == Event.Kind.IMPACT) {
        assessment.seatDecelerations(event).forEach(one -> rows.add(row(event, one, units)));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Block.Heading("The vehicle's deceleration at the seats"));
      blocks.add(
          new Table(
              List.of(
                  Column.sentence("event"),
                  Column.words("seat"),
                  Column.number("rearwards", unit),
                  Column.number("in all", unit)),
              rows));
    }
  }

  private static Row row(Event event, SeatDeceleration seat, Units units) {
    return Row.of(
        event.name(),
        seat.seat(),
        units.scale(Kind.ACCELERATION).number(seat.rearwards(), 3),
        units.scale(Kind.ACCELERATION).number(seat.magnitude(), 3));
  }
}
