package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * A plate bolted to a face by several equal bolts. The load is shared elastically: forces in the
 * face as shear, forces and moments out of it as tension, compression bearing on the same plane
 * through the centroid. Prying of a thin plate and preload are not counted.
 *
 * @param name the group's name
 * @param bolt the bolts
 * @param threads where their threads end
 * @param spots where they are in the face
 * @param plate the thinner plate and its holes
 */
public record BoltGroup(String name, Bolt bolt, Bolt.Threads threads, List<Spot> spots, Plate plate)
    implements Joint {
  private static final Symbol FX = Letters.force("fx", "share along x");
  private static final Symbol FY = Letters.force("fy", "share along y");
  private static final Symbol FZ = Letters.force("fz", "share along z");
  private static final Formula SHEAR =
      new Formula(
          Letters.force("Fv", "shear on the bolt"),
          "√({fx}² + {fy}²)",
          List.of(FX, FY),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  private static final Formula TENSION =
      new Formula(
          Letters.force("Ft", "tension in the bolt"),
          "max({fz}, 0)",
          List.of(FZ),
          "statics",
          in -> Math.max(in[0], 0));
  private static final String PRYING =
      "Prying of a thin plate adds to the tension; it is not counted. Preload is not counted.";

  /** Refuses a group of fewer than two bolts and two bolts in one place. */
  public BoltGroup {
    name = Guard.name("bolt group", name);
    spots = List.copyOf(spots);
    if (spots.size() < 2) {
      throw new ModelException(
          "bolt group " + name + " has " + spots.size() + " bolt; it needs two at least");
    }
    double nearest = nearest(spots);
    if (nearest <= plate.hole()) {
      throw new ModelException(
          "two bolts of group "
              + name
              + " are "
              + Scale.MM.show(nearest)
              + " apart; their holes of "
              + Scale.MM.show(plate.hole())
              + " would meet");
    }
    refuseNarrow(name, bolt, plate);
  }

  /**
   * The thinner plate.
   *
   * @param material its material
   * @param thickness its thickness [m]
   * @param hole diameter of each hole [m]
   * @param edge from a hole's centre to the nearest edge [m], above the hole's radius
   */
  public record Plate(RatedMaterial material, double thickness, double hole, double edge) {
    /** Refuses a hole that breaks through the edge. */
    public Plate {
      Guard.positive("thickness of the bolted plate", thickness, Scale.MM);
      Guard.positive("hole diameter", hole, Scale.MM);
      Guard.positive("edge distance", edge, Scale.MM);
      if (edge <= hole / 2) {
        throw new ModelException(
            "edge distance "
                + Scale.MM.show(edge)
                + " lets the hole of "
                + Scale.MM.show(hole)
                + " break through the edge; it must stay above "
                + Scale.MM.show(hole / 2));
      }
    }

    /**
     * A plate from typed lengths.
     *
     * @param material its material
     * @param thickness its thickness
     * @param hole diameter of each hole
     * @param edge from a hole's centre to the nearest edge
     * @return the plate
     */
    public static Plate of(
        RatedMaterial material,
        Quantity<Length> thickness,
        Quantity<Length> hole,
        Quantity<Length> edge) {
      return new Plate(
          material, si("plate thickness", thickness), si("hole", hole), si("edge distance", edge));
    }
  }

  /**
   * The shear force on each bolt, in the order of the bolts.
   *
   * @param load the load
   * @return shear forces [N]
   */
  public List<Double> shears(FaceLoad load) {
    return shares(load).stream().map(share -> share.shear().result()).toList();
  }

  /**
   * The tension in each bolt, in the order of the bolts; zero where the plate is pressed on.
   *
   * @param load the load
   * @return tensions [N]; empty when the bolts cannot take the load
   */
  public List<Double> tensions(FaceLoad load) {
    return Pattern.ofBolts(spots).cannotTake(load).isPresent()
        ? List.of()
        : shares(load).stream().map(share -> share.tension().result()).toList();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(proportions(load));
    BoltStrength strength = new BoltStrength(bolt, threads, load.factors());
    Optional<String> open = Pattern.ofBolts(spots).cannotTake(load);
    open.ifPresent(reason -> checks.add(notShared(load, reason)));
    checks.addAll(shear(load, strength));
    checks.add(bearing(load, strength));
    if (open.isEmpty()) {
      checks.addAll(tension(load, strength));
    }
    return checks;
  }

  private List<Check> shear(FaceLoad load, BoltStrength strength) {
    Share worst = worst(load, share -> share.shear().result());
    Finding european =
        Finding.compare(worst.shear(), strength.shear())
            .after(worst.lines())
            .outside(strength.outside());
    Finding american = Finding.compare(worst.shear(), strength.americanShear());
    return List.of(
        european.answers(asks("bolt shear", load, worst), load.factors().ultimate()),
        american
            .after(worst.lines())
            .answers(asks("bolt shear, second opinion", load, worst), load.factors().american()));
  }

  private List<Check> tension(FaceLoad load, BoltStrength strength) {
    Share pulled = worst(load, share -> share.tension().result());
    Share both =
        worst(
            load,
            share -> strength.combined(share.shear().result(), share.tension().result()).result());
    Step combined = strength.combined(both.shear().result(), both.tension().result());
    double fu = plate.material().strength().ultimate();
    List<Finding> findings =
        List.of(
            Finding.compare(pulled.tension(), strength.tension()).after(pulled.lines()),
            Finding.compare(pulled.tension(), strength.punching(plate.thickness(), fu))
                .after(pulled.lines()),
            Finding.ratio(combined)
                .after(both.shear(), both.tension(), strength.shear(), strength.tension())
                .after(both.lines()));
    List<Question> questions =
        List.of(
            asks("bolt tension", load, pulled).with(PRYING),
            asks("head through the plate", load, pulled),
            asks("bolt shear and tension", load, both).with(PRYING));
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i).outside(strength.outside());
      checks.add(finding.answers(questions.get(i), load.factors().ultimate()));
    }
    return checks;
  }

  private Check bearing(FaceLoad load, BoltStrength strength) {
    double fu = plate.material().strength().ultimate();
    BoltStrength.Hole hole =
        new BoltStrength.Hole(plate.hole(), plate.edge(), plate.thickness(), fu);
    Share worst = worst(load, share -> share.shear().result());
    Question question =
        asks("bearing of the plate", load, worst)
            .with(
                "Every bolt counts as if it stood at the edge and next to its nearest neighbour.");
    Optional<Reason> tooNear = hole.tooNear().or(this::tooClose);
    if (tooNear.isPresent()) {
      return question.open(load.factors().ultimate(), tooNear.get(), "EN 1993-1-8:2005, table 3.4");
    }
    List<Step> steps = strength.bearing(hole, nearest(spots));
    return Finding.compare(worst.shear(), steps.get(2))
        .after(steps.subList(0, 2))
        .after(worst.lines())
        .outside(strength.outside())
        .answers(question, load.factors().ultimate());
  }

  private Optional<Reason> tooClose() {
    double least = HoleRules.DISTANCE * plate.hole();
    return nearest(spots) >= least * (1 - Rounding.TOLERANCE)
        ? Optional.empty()
        : Optional.of(
            Reason.of(
                "two bolts are {} apart; the bearing rule needs {}",
                Amount.length(nearest(spots)),
                Amount.length(least)));
  }

  private List<Check> proportions(FaceLoad load) {
    List<Check> checks = new ArrayList<>();
    checks.add(
        HoleRules.edge(Question.of("edge distance", name, load), plate.hole(), plate.edge()));
    checks.add(
        HoleRules.distance(Question.of("hole distance", name, load), plate.hole(), nearest(spots)));
    checks.addAll(HoleRules.width(Question.of("hole width", name, load), bolt, plate.hole()));
    return checks;
  }

  private Check notShared(FaceLoad load, String reason) {
    return Question.of("bolt tension", name, load)
        .open(load.factors().ultimate(), reason, "elastic vector method");
  }

  private Question asks(String what, FaceLoad load, Share share) {
    return Question.of(what, name, load).at("bolt " + share.number());
  }

  private Share worst(FaceLoad load, ToDoubleFunction<Share> measure) {
    return shares(load).stream().max(Comparator.comparingDouble(measure)).orElseThrow();
  }

  private List<Share> shares(FaceLoad load) {
    Pattern pattern = Pattern.ofBolts(spots);
    List<Share> shares = new ArrayList<>();
    for (Spot spot : spots) {
      List<Step> lines = pattern.share(spot, load);
      Step shear = SHEAR.with(lines.get(0).result(), lines.get(1).result());
      Step tension = TENSION.with(lines.get(2).result());
      shares.add(new Share(shares.size() + 1, lines, shear, tension));
    }
    return shares;
  }

  private static double nearest(List<Spot> spots) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        nearest = Math.min(nearest, spots.get(i).distance(spots.get(j)));
      }
    }
    return nearest;
  }

  private static void refuseNarrow(String name, Bolt bolt, Plate plate) {
    if (plate.hole() < bolt.size().diameter()) {
      throw new ModelException(
          "hole "
              + Scale.MM.show(plate.hole())
              + " of "
              + name
              + " is too narrow for its bolt "
              + bolt
              + "; it must be at least "
              + Scale.MM.show(bolt.size().diameter()));
    }
  }

  /** What one bolt takes: its number, the lines that lead to it, its shear and its tension. */
  private record Share(int number, List<Step> lines, Step shear, Step tension) {}
}
