package rungwork.impact;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwork.check.Member;
import rungwork.fault.ModelException;
import rungwork.impact.OrderOfFailure.Detail;
import rungwork.impact.OrderOfFailure.Elastic;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/**
 * The frame's own rows of the table, a left and a right member together as one part.
 *
 * @param balance of the hit at the reference deceleration
 * @param stage the elastic stage
 * @param rows the parts
 */
record FrameParts(Balance balance, ElasticStage stage, List<FramePart> rows) {
  static final List<String> NOT_MADE =
      List.of(
          "welds between crossmembers and rails, bolts and tabs without a chain of their own",
          "local crushing where the obstacle, a crossmember or a mount bears on a rail's wall",
          "lateral-torsional buckling in the hit; growth of moments by compression",
          "anything after the first part has yielded: forces find other ways then");

  static FrameParts of(Balance balance) {
    Ladder ladder = balance.ladder();
    ElasticStage stage = new ElasticStage(balance, TwoStrengths.usual());
    Map<String, FramePart> rows = new LinkedHashMap<>();
    for (Member member : ladder.members()) {
      FramePart part = FramePart.of(member, ladder, stage);
      rows.merge(part.name(), part, FramePart::and);
    }
    List<FramePart> all = new ArrayList<>(rows.values());
    all.add(FramePart.whole(stage));
    FrameParts parts = new FrameParts(balance, stage, List.copyOf(all));
    parts.refuseUnknown();
    return parts;
  }

  private void refuseUnknown() {
    List<Part> unknown = parts().stream().filter(part -> part.first().isEmpty()).toList();
    if (unknown.size() == rows.size()) {
      throw new ModelException(
          "no part of ladder "
              + ladder().name()
              + " could be checked: "
              + String.join("; ", unknown.get(0).detail().notes()));
    }
  }

  Ladder ladder() {
    return balance.ladder();
  }

  List<Part> parts() {
    return rows.stream().map(FramePart::part).toList();
  }

  /** By how much one part is stronger than another, as {@link Margins#of}. */
  Range margin(Part front, Part behind) {
    return new Margins(rows).of(front, behind);
  }

  /** Crush elements: the vehicle's deceleration when they push with their peak. */
  Part crush(CrushElement element, int met) {
    double mass = elasticFigures().amplifiedMass();
    Range peak = element.foldingPeak();
    Range first = peak.times(met / mass).kindOf(Kind.ACCELERATION);
    List<String> notes = new ArrayList<>();
    notes.add(
        met
            + " of them, with the peak of their force; the mean force is an average after folding"
            + " has begun and is not ranked");
    if (element.noStableFolding(Units.METRIC).isPresent()) {
      notes.add("no stable folding is shown: see its own page");
    }
    notes.addAll(element.outsideTests());
    Detail detail = new Detail("begins to fold", "at the rail tips", List.of(), notes);
    double tip = ladder().rail(Side.LEFT).x();
    return new Part(
        element.name(), Zone.CRUSH_ELEMENT, tip, Optional.of(first), Optional.empty(), detail);
  }

  /** The frame's plastic collapse: from the first hinge to the mechanism. */
  Part mechanism(Collapse collapse) {
    String own = ElasticStage.words(balance.event().name());
    String other = "frontal impact, " + collapse.hit().words();
    if (!collapse.ladder().equals(ladder()) || !own.equals(other)) {
      throw new ModelException(
          "the collapse of ladder "
              + collapse.ladder().name()
              + ", "
              + other
              + ", has no place in the order of ladder "
              + ladder().name()
              + ", "
              + own);
    }
    Detail detail =
        new Detail(
            "first plastic hinge",
            "until the frame moves as a mechanism: see the page of its collapse",
            List.of(),
            List.of());
    return new Part(
        "frame by plastic hinges",
        Zone.WHOLE_FRAME,
        Double.NEGATIVE_INFINITY,
        Optional.of(collapse.firstHinge()),
        Optional.of(collapse.deceleration()),
        detail);
  }

  Elastic elastic() {
    return elasticFigures().all();
  }

  private ElasticFigures elasticFigures() {
    return new ElasticFigures(balance, stage, parts());
  }

  List<String> assumptions() {
    List<String> lines = new ArrayList<>(balance.event().assumptions());
    lines.addAll(stage.strength().words());
    lines.add(
        "Nothing is divided by a factor. First yield is that of the first fibre, what stands at 1 g"
            + " counted all along; a part in compression may buckle as a column before, by the"
            + " frame's own critical load and curve c of EN 1993-1-1. Carries no more: a section"
            + " fully plastic, forces as in the elastic frame.");
    lines.add(
        "Run with every assumption on joints and with masses on all, on the foremost and on the"
            + " rearmost of their mounts; low is the least over all runs at the low strength, high"
            + " the most over all runs at the high one.");
    lines.add(
        "The frame buckles as seen from its centre of mass: the crossmember nearest to it stands"
            + " still, the wall holds nothing sideways, masses hold nothing.");
    return lines;
  }
}
