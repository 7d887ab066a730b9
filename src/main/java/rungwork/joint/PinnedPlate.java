package rungwork.joint;

/**
 * The plate of a tab round its hole under a load: what all rules for it read.
 *
 * @param tab the tab
 * @param load what pulls at its pin
 */
record PinnedPlate(Tab tab, FaceLoad load) {

  /** A question about the hole. */
  Question asks(String what) {
    return Question.of(what, tab.name(), load).at("hole");
  }

  /** t [m]. */
  double thickness() {
    return tab.plate().thickness();
  }

  /** w, whole [m]. */
  double width() {
    return tab.plate().width();
  }

  /** How many plates share the load. */
  int plates() {
    return tab.plate().count().plates();
  }

  /** d₀ [m]. */
  double hole() {
    return tab.eye().hole();
  }

  /** d of the bolt [m]. */
  double pin() {
    return tab.eye().bolt().size().diameter();
  }

  /** fy at the hole [Pa]. */
  double fy() {
    return tab.yieldAtHole();
  }

  /** fu at the hole [Pa]. */
  double fu() {
    return tab.ultimateAtHole();
  }

  /** φ of the American rules [1]. */
  double phi() {
    return load.factors().phi();
  }

  /** The design factor [1]. */
  double gamma() {
    return load.factors().design().value();
  }
}
