package rungwork.report;

import java.util.ArrayList;
import java.util.List;

/** Puts words where they cover nothing else: the first free place of those offered. */
final class Labels {
  private final Canvas canvas;
  private final List<Box> taken = new ArrayList<>();

  Labels(Canvas canvas) {
    this.canvas = canvas;
  }

  /** Keeps labels out of a place. */
  void keepFree(Box box) {
    taken.add(box);
  }

  /** Writes a label at the first of these places that is free, or else at the first. */
  Label put(List<Label> places) {
    Label chosen =
        places.stream()
            .filter(label -> taken.stream().noneMatch(label.box()::overlaps))
            .findFirst()
            .orElse(places.get(0));
    taken.add(chosen.box());
    canvas.label(chosen);
    return chosen;
  }
}
