package rungwork.impact;

import java.util.List;
import rungwork.quantity.Kind;

/**
 * What regulations print, to stand beside results as context. None of it is a limit that this
 * calculation could be held to, and none of it comes from volunteers.
 */
final class PublishedFigures {
  private static final double G = 9.80665;
  private static final double POUND_FORCE = 4.4482216152605;
  private static final double FOOT = 0.3048;

  private static final String DUMMIES = "49 CFR 571.208 (instrumented dummies)";
  private static final String BELTS = "49 CFR 571.210 (second-hand)";

  /** Of dummies: what can be compared at all is the chest's 3 ms value. */
  static final List<Ride.Published> DUMMY =
      List.of(
          new Ride.Published("chest, 3 ms", Kind.ACCELERATION, 60 * G, DUMMIES),
          new Ride.Published(
              "chest compression, not computed here",
              Kind.LENGTH,
              0.063,
              DUMMIES + ", from memory"),
          new Ride.Published("chest compression, not computed here", Kind.LENGTH, 0.042, "UN R137"),
          new Ride.Published(
              "thigh force, not computed here", Kind.FORCE, 10e3, DUMMIES + ", from memory"));

  /** Of pulses that seats are tested with. */
  static final List<Ride.Published> SEAT_TEST =
      List.of(
          new Ride.Published(
              "seat test, forward: peak at least",
              Kind.ACCELERATION,
              16 * G,
              "14 CFR 25.562(b)(2)"),
          new Ride.Published(
              "seat test, forward: peak not later than", Kind.TIME, 0.09, "14 CFR 25.562(b)(2)"),
          new Ride.Published(
              "seat test, forward: velocity change at least",
              Kind.SPEED,
              44 * FOOT,
              "14 CFR 25.562(b)(2)"));

  /** Of heavy items near people, as static ultimate loads. */
  static final List<Ride.Published> HEAVY_ITEMS =
      List.of(
          new Ride.Published("heavy items, forward", Kind.ACCELERATION, 9 * G, "14 CFR 25.561"),
          new Ride.Published("heavy items, sideways", Kind.ACCELERATION, 3 * G, "14 CFR 25.561"),
          new Ride.Published("heavy items, down", Kind.ACCELERATION, 6 * G, "14 CFR 25.561"),
          new Ride.Published("heavy items, up", Kind.ACCELERATION, 3 * G, "14 CFR 25.561"));

  /** Of belt anchorages. */
  static final List<Ride.Published> ANCHORAGES =
      List.of(
          new Ride.Published("lap belt alone, on all", Kind.FORCE, 5000 * POUND_FORCE, BELTS),
          new Ride.Published(
              "lap part, with the shoulder part", Kind.FORCE, 3000 * POUND_FORCE, BELTS),
          new Ride.Published(
              "shoulder part, with the lap part", Kind.FORCE, 3000 * POUND_FORCE, BELTS),
          new Ride.Published(
              "lap and shoulder block, each", Kind.FORCE, 1350 * 10, "UN R14, M1 (second-hand)"));

  private PublishedFigures() {}
}
