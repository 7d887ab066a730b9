package rungwork.report;

import java.util.ArrayList;
import java.util.List;

/** Puts words where they cover nothing else: the first free place of those offered. */
final class Labels {
  /** Length of line that one box covers [px]. */
  private static final double PIECE = 4;

  private final Canvas canvas;
  private final List<Box> taken = new ArrayList<>();

  Labels(Canvas canvas) {
    this.canvas = canvas;
  }

  /** Keeps labels out of a place. */
  void keepFree(Box box) {
    taken.add(box);
  }

  /** Keeps labels off a line. */
  void keepFree(Spot from, Spot to) {
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    int pieces = (int) Math.ceil(length / PIECE);
    for (int i = 0; i <= pieces; i++) {
      double part = pieces == 0 ? 0 : (double) i / pieces;
      Spot at = from.plus(part * (to.x() - from.x()), part * (to.y() - from.y()));
      taken.add(Box.EMPTY.and(at).grown(PIECE / 2));
    }
  }

  /**
   * Writes labels each at the first of its places that is free, or none of them where one has no
   * free place.
   *
   * @param offers the places of each label
   * @return whether they are written
   */
  boolean putAll(List<List<Label>> offers) {
    List<Label> chosen = new ArrayList<>();
    for (List<Label> places : offers) {
      places.stream()
          .filter(this::free)
          .filter(label -> chosen.stream().noneMatch(one -> one.box().overlaps(label.box())))
          .findFirst()
          .ifPresent(chosen::add);
    }
    boolean all = chosen.size() == offers.size();
    if (all) {
      chosen.forEach(this::write);
    }
    return all;
  }

  /** Writes a label at the first of these places that is free, or else at the first. */
  Label put(List<Label> places) {
    return write(places.stream().filter(this::free).findFirst().orElse(places.get(0)));
  }

  private boolean free(Label label) {
    return taken.stream().noneMatch(label.box()::overlaps);
  }

  private Label write(Label label) {
    taken.add(label.box());
    canvas.label(label);
    return label;
  }
}
