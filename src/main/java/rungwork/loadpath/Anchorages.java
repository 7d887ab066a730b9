package rungwork.loadpath;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.check.CheckSheet;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Load;
import rungwork.frame.Node;
import rungwork.frame.Wrench;
import rungwork.joint.Factors;
import rungwork.solve.AppliedWrench;
import rungwork.solve.Carriers;
import rungwork.vehicle.Mount;

/**
 * Belt and seat anchorages of all seats together, under published test loads and under what a scene
 * asks. Published loads say what an anchorage is tested with, not what a crash asks of it: the
 * demand is the larger of the two.
 *
 * @param seats all seats, one at least
 */
public record Anchorages(List<Seating> seats) {
  private static final double POUND_FORCE = 4.4482216152605;
  private static final double G = Scale.G.inSi();

  private static final List<String> ASSUMED =
      List.of(
          "all seats are loaded together",
          "belts: the person's force is level and forwards; the tension is alike all along, the"
              + " seat takes what is left over upright and sideways",
          "seats: their mounts share as a rigid body on equal springs would",
          "passing a published test load is not adequacy in a harder scene; the demand is the larger"
              + " of the two");
  private static final String NO_SCENE =
      "a scene harder than the published test loads: none was given";

  /** Refuses no seat, and two anchorages of one name in two places. */
  public Anchorages {
    seats = List.copyOf(seats);
    if (seats.isEmpty()) {
      throw new ModelException("anchorages hold no seat; give them one at least");
    }
    Map<String, Mount> known = new HashMap<>();
    for (Mount mount : allMounts(seats)) {
      Mount twin = known.putIfAbsent(mount.name(), mount);
      if (twin != null && !twin.equals(mount)) {
        throw new ModelException("anchorage " + mount.name() + " stands in two places");
      }
    }
  }

  /**
   * What pulls at each seat.
   *
   * @param name of the case
   * @param source where its figures come from
   * @param person what a person's body pulls
   * @param chair the seat's own mass times this many g, forwards, at its centre of mass [1]
   */
  public record Pull(String name, String source, Person person, double chair) {
    /**
     * 49 CFR 571.210: 5000 lb on a lap belt alone, 3000 lb on the lap and 3000 lb on the shoulder
     * belt together; with 20 times the seat's weight of 49 CFR 571.207.
     */
    public static final Pull CFR_571 =
        new Pull(
            "test loads of 49 CFR 571.210 and 571.207",
            "49 CFR 571.210, S4.2: 5000 lb lap alone, 3000 + 3000 lb lap and shoulder; 571.207,"
                + " S4.2: 20 times the seat's weight",
            new Person(5000 * POUND_FORCE, 3000 * POUND_FORCE, 3000 * POUND_FORCE),
            20);

    /**
     * UN Regulation 14, vehicles of category M1: 13 500 N on each block, 22 250 N on a lap belt
     * alone, with 20 times the seat's weight (from memory).
     */
    public static final Pull UN_R14 =
        new Pull(
            "test loads of UN R14",
            "UN Regulation 14, 6.4, category M1 (from memory): 13 500 N on each block, 22 250 N lap"
                + " alone, 20 times the seat's weight",
            new Person(22_250, 13_500, 13_500),
            20);

    /** Refuses a negative multiple. */
    public Pull {
      name = Guard.name("case", name);
      source = Guard.name("source of " + name, source);
      Guard.notNegative("multiple of the seat's weight", chair, Scale.NUMBER);
    }

    /**
     * What a scene asks: its high result for belts and seats.
     *
     * @param name of the scene
     * @param hips force of the hips on the lap belt
     * @param torso force of the torso on the shoulder belt
     * @param chair the seat's deceleration in g
     * @return the case
     */
    public static Pull scene(
        String name, Quantity<Force> hips, Quantity<Force> torso, double chair) {
      double low = si("force of the hips", hips);
      double high = si("force of the torso", torso);
      return new Pull(name, "stated by the user", new Person(low + high, low, high), chair);
    }
  }

  /**
   * Level forces of a body forwards.
   *
   * @param onLapAlone on a lap belt without a shoulder belt [N]
   * @param hips on the lap belt of two [N]
   * @param torso on the shoulder belt [N]
   */
  public record Person(double onLapAlone, double hips, double torso) {
    /** Refuses negative forces. */
    public Person {
      Guard.notNegative("force on a lap belt alone", onLapAlone, Scale.KN);
      Guard.notNegative("force of the hips", hips, Scale.KN);
      Guard.notNegative("force of the torso", torso, Scale.KN);
    }
  }

  /**
   * What pulls at one mount, all seats together.
   *
   * @param mount an anchorage, or a mount of a seat
   * @param pull the case
   * @return the force in vehicle axes
   */
  public MountForce on(String mount, Pull pull) {
    Map<Mount, Wrench> all = all(pull);
    return all.entrySet().stream()
        .filter(each -> each.getKey().name().equals(mount))
        .map(each -> new MountForce(each.getKey(), pull.name(), each.getValue()))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "no belt and no seat pulls at mount "
                        + mount
                        + "; they pull at "
                        + String.join(", ", all.keySet().stream().map(Mount::name).toList())));
  }

  /**
   * The same as loads for the ladder.
   *
   * @param pull the case
   * @return a force at each mount
   */
  public List<AppliedWrench> onFrame(Pull pull) {
    return all(pull).entrySet().stream()
        .map(
            each ->
                new AppliedWrench(
                    pull.name() + " at " + each.getKey().name(),
                    each.getValue(),
                    each.getKey().at(),
                    List.of(each.getKey().name())))
        .toList();
  }

  /**
   * A mount under the published test loads and under scenes; the worst governs.
   *
   * @param chain the mount
   * @param scenes what scenes ask; with none, the sheet says so
   * @return its sheet, nothing divided by a factor
   */
  public ChainSheet under(MountChain chain, List<Pull> scenes) {
    List<Pull> pulls = new ArrayList<>(List.of(Pull.CFR_571, Pull.UN_R14));
    pulls.addAll(scenes);
    List<MountForce> forces = pulls.stream().map(pull -> on(chain.mount(), pull)).toList();
    List<String> assumed = new ArrayList<>(ASSUMED);
    pulls.forEach(pull -> assumed.add(pull.name() + ": " + pull.source()));
    ChainSheet sheet = chain.under(forces, Factors.UNFACTORED, assumed);
    if (!scenes.isEmpty()) {
      return sheet;
    }
    CheckSheet open =
        new CheckSheet(sheet.sheet().title(), List.of(), List.of(NO_SCENE), List.of(), Set.of());
    return new ChainSheet(chain, List.of(), sheet.arrivals(), sheet.sheet().merged(open));
  }

  private Map<Mount, Wrench> all(Pull pull) {
    Map<Mount, Wrench> all = new LinkedHashMap<>();
    for (Seating seat : seats) {
      Map<Mount, Wrench> belts = belts(seat, pull.person());
      Wrench own = Wrench.force(pull.chair() * G * seat.chair().kilograms(), 0, 0);
      Wrench onChair = own;
      for (Map.Entry<Mount, Wrench> belt : belts.entrySet()) {
        if (seat.chair().belts() == Seating.Fixing.ON_VEHICLE) {
          all.merge(belt.getKey(), belt.getValue(), Wrench::plus);
        } else {
          onChair = onChair.plus(belt.getValue().moved(belt.getKey().at(), seat.chair().centre()));
        }
      }
      chair(seat.chair(), onChair).forEach((mount, w) -> all.merge(mount, w, Wrench::plus));
    }
    return all;
  }

  private static Map<Mount, Wrench> belts(Seating seat, Person person) {
    Map<Mount, Wrench> belts = new LinkedHashMap<>();
    double hips = seat.shoulder().isPresent() ? person.hips() : person.onLapAlone();
    add(belts, seat.lap(), hips);
    seat.shoulder().ifPresent(belt -> add(belts, belt, person.torso()));
    return belts;
  }

  private static void add(Map<Mount, Wrench> belts, Seating.Belt belt, double forward) {
    double tension = belt.tension(forward);
    belt.ends()
        .forEach(
            end -> {
              Vector3D f = end.pull().scalarMultiply(tension);
              belts.merge(end.anchor(), Wrench.force(f.getX(), f.getY(), f.getZ()), Wrench::plus);
            });
  }

  private static Map<Mount, Wrench> chair(Seating.Chair chair, Wrench atCentre) {
    Map<Mount, Wrench> shares = new LinkedHashMap<>();
    List<Node> nodes =
        chair.mounts().stream().map(mount -> new Node(mount.name(), mount.at())).toList();
    List<Load.AtNode> shared = new Carriers(nodes).share(atCentre, chair.centre());
    for (int i = 0; i < shared.size(); i++) {
      shares.put(chair.mounts().get(i), shared.get(i).wrench());
    }
    return shares;
  }

  private static Set<Mount> allMounts(List<Seating> seats) {
    Set<Mount> mounts = new LinkedHashSet<>();
    for (Seating seat : seats) {
      seat.lap().ends().forEach(end -> mounts.add(end.anchor()));
      seat.shoulder().ifPresent(belt -> belt.ends().forEach(end -> mounts.add(end.anchor())));
      mounts.addAll(seat.chair().mounts());
    }
    return mounts;
  }
}
