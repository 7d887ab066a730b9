package rungwork.report;

import java.util.List;
import rungwork.impact.Occupant;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** A person's peak in closed form, with whether it may be used at all. */
final class ClosedFormPage {
  private ClosedFormPage() {}

  static Page of(Occupant.ClosedForm form, Units units) {
    List<Block> blocks = ImpactBlocks.begin("Belt in closed form");
    blocks.add(new Block.VerdictLine(verdict(form, units)));
    ImpactBlocks.working(blocks, List.of(form.peak(), form.timeToPeak(), form.most()), units);
    return ImpactBlocks.end(blocks);
  }

  private static String verdict(Occupant.ClosedForm form, Units units) {
    String peak = units.scale(Kind.ACCELERATION).show(form.peak().result(), 3);
    String when = units.scale(Kind.TIME).show(form.timeToPeak().result(), 3);
    String stops = units.scale(Kind.TIME).show(form.stops(), 3);
    String most = units.scale(Kind.ACCELERATION).show(form.most().result(), 3);
    return form.holds()
        ? peak
            + " after "
            + when
            + ", while the vehicle decelerates for "
            + stops
            + "; at most "
            + most
        : "outside its range: the peak of "
            + peak
            + " would come after "
            + when
            + ", when the vehicle has stopped after "
            + stops
            + "; integrate instead, never above "
            + most;
  }
}
