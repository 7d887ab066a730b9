package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;

/** The loads of a frame whose beams are each cut in two pieces, named 1 and 2. */
final class CutLoads {
  private final Frame frame;
  private final double cut;
  private final List<Load> pieces = new ArrayList<>();

  CutLoads(Frame whole, double fraction) {
    frame = whole;
    cut = fraction;
  }

  LoadCase of(LoadCase loads) {
    loads.loads().forEach(this::add);
    return LoadCase.of("cut", pieces.toArray(Load[]::new));
  }

  private void add(Load load) {
    if (load instanceof Load.AlongBeam along) {
      for (String piece : List.of(" 1", " 2")) {
        pieces.add(new Load.AlongBeam(along.beam() + piece, along.wx(), along.wy(), along.wz()));
      }
    } else if (load instanceof Load.OnBeam on) {
      double place = place(on.beam());
      pieces.add(
          on.from() < place
              ? new Load.OnBeam(on.beam() + " 1", on.from(), on.wrench())
              : new Load.OnBeam(on.beam() + " 2", on.from() - place, on.wrench()));
    } else if (load instanceof Load.AlongPart part) {
      add(part, place(part.beam()));
    } else if (load instanceof Load.Warmth warmth) {
      for (String piece : List.of(" 1", " 2")) {
        pieces.add(
            new Load.Warmth(
                warmth.beam() + piece,
                warmth.expansion(),
                warmth.rise(),
                warmth.acrossY(),
                warmth.acrossZ()));
      }
    } else if (load instanceof Load.Misfit misfit) {
      pieces.add(part(misfit, " 1", cut));
      pieces.add(part(misfit, " 2", 1 - cut));
    } else {
      pieces.add(load);
    }
  }

  private double place(String beam) {
    return cut * frame.length(frame.beam(beam));
  }

  private void add(Load.AlongPart part, double place) {
    String one = part.beam() + " 1";
    String two = part.beam() + " 2";
    if (part.to() <= place) {
      pieces.add(new Load.AlongPart(one, part.from(), part.to(), part.first(), part.last()));
    } else if (part.from() >= place) {
      pieces.add(
          new Load.AlongPart(
              two, part.from() - place, part.to() - place, part.first(), part.last()));
    } else {
      Load.PerMetre there = between(part, (place - part.from()) / (part.to() - part.from()));
      pieces.add(new Load.AlongPart(one, part.from(), place, part.first(), there));
      pieces.add(new Load.AlongPart(two, 0, part.to() - place, there, part.last()));
    }
  }

  private static Load.PerMetre between(Load.AlongPart part, double t) {
    Load.PerMetre a = part.first();
    Load.PerMetre b = part.last();
    return new Load.PerMetre(
        a.wx() + t * (b.wx() - a.wx()),
        a.wy() + t * (b.wy() - a.wy()),
        a.wz() + t * (b.wz() - a.wz()));
  }

  /** The rise of an arc goes with the square of its chord. */
  private static Load.Misfit part(Load.Misfit misfit, String piece, double t) {
    return new Load.Misfit(
        misfit.beam() + piece,
        misfit.tooLong() * t,
        misfit.twisted() * t,
        misfit.bowY() * t * t,
        misfit.bowZ() * t * t);
  }
}
