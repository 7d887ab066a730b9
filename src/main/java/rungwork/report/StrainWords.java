package rungwork.report;

import java.util.stream.Stream;
import rungwork.fault.Scale;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What strains a frame without a force, in words: warmth, misfit, supports that are forced.
 *
 * @param units the reader's units
 */
record StrainWords(Units units) {
  private static final Scale KELVIN = new Scale("K", 1);
  private static final Scale GRADIENT = new Scale("K/m", 1);
  private static final Scale TURN = new Scale("mrad", 1e-3);

  /** One sentence; nothing for a load that is a force. */
  Stream<String> of(Load load) {
    Scale length = units.scale(Kind.LENGTH);
    if (load instanceof Load.Warmth warmth) {
      return Stream.of(
          "%s warmed by %s, across y by %s, across z by %s"
              .formatted(
                  warmth.beam(),
                  KELVIN.show(warmth.rise()),
                  GRADIENT.show(warmth.acrossY()),
                  GRADIENT.show(warmth.acrossZ())));
    } else if (load instanceof Load.Misfit misfit) {
      return Stream.of(
          "%s made too long by %s, twisted by %s, bowed by %s along y and %s along z"
              .formatted(
                  misfit.beam(),
                  length.show(misfit.tooLong()),
                  TURN.show(misfit.twisted()),
                  length.show(misfit.bowY()),
                  length.show(misfit.bowZ())));
    } else if (load instanceof Load.Settlement settled) {
      boolean moves = settled.motion().ordinal() < Freedom.RX.ordinal();
      return Stream.of(
          "support at %s forced, %s, by %s"
              .formatted(
                  settled.node(),
                  settled.motion().motion(),
                  (moves ? length : TURN).show(settled.amount())));
    }
    return Stream.empty();
  }
}
