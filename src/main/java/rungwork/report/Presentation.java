package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.impact.Collapse;
import rungwork.impact.Crash;
import rungwork.impact.CrushTube;
import rungwork.impact.Occupant;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.Pulse;
import rungwork.impact.Ride;
import rungwork.impact.RigidOrCrush;
import rungwork.impact.Scene;
import rungwork.impact.SeenDamage;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.CornerForces;
import rungwork.loadpath.MountChain;
import rungwork.material.Material;
import rungwork.quantity.Units;
import rungwork.record.Inspection;
import rungwork.section.Section;
import rungwork.section.SheetTable;
import rungwork.section.SizeTable;
import rungwork.solve.Response;
import rungwork.study.Comparison;
import rungwork.study.Family;
import rungwork.study.Scatter;
import rungwork.study.Screening;
import rungwork.study.Search;
import rungwork.study.Sensitivity;
import rungwork.study.Shortlist;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;
import tech.tablesaw.api.Table;

/**
 * How values of one type are shown. {@link #all()} is what a notebook registers.
 *
 * @param <T> the type
 * @param type the type
 * @param maker makes a value's page in the reader's units
 */
public record Presentation<T>(Class<T> type, BiFunction<T, Units, Page> maker) {
  /**
   * The page of a value of this type.
   *
   * @param value the value
   * @param units the reader's units
   * @return its page
   */
  public Page page(Object value, Units units) {
    if (!type.isInstance(value)) {
      throw new ModelException(
          "a %s is no %s".formatted(value.getClass().getSimpleName(), type.getSimpleName()));
    }
    return maker.apply(type.cast(value), units);
  }

  /**
   * Every type that this room can show.
   *
   * @return one presentation a type
   */
  public static List<Presentation<?>> all() {
    return List.of(
        new Presentation<>(Page.class, (page, units) -> page),
        new Presentation<>(Picture.class, (picture, units) -> alone(picture)),
        new Presentation<>(Shown.class, Shown::page),
        new Presentation<>(Material.class, MaterialPage::of),
        new Presentation<>(Section.class, SectionPage::of),
        new Presentation<>(SizeTable.class, SizeTablePage::of),
        new Presentation<>(SizeTable.Size.class, SizeTablePage::of),
        new Presentation<>(SheetTable.class, SizeTablePage::of),
        new Presentation<>(Vehicle.class, VehiclePage::of),
        new Presentation<>(Ladder.class, (ladder, units) -> LadderPlan.of(ladder).page(units)),
        new Presentation<>(Event.class, (event, units) -> event(event)),
        new Presentation<>(Response.class, (one, units) -> DeflectedShape.of(one).page(units)),
        new Presentation<>(Check.class, Presentation::check),
        new Presentation<>(CheckSheet.class, SheetPage::of),
        new Presentation<>(CornerForces.class, CornerPage::of),
        new Presentation<>(MountChain.class, MountPage::of),
        new Presentation<>(ChainSheet.class, MountPage::of),
        new Presentation<>(Assessment.class, AssessmentPage::of),
        new Presentation<>(Comparison.class, ComparisonPage::of),
        new Presentation<>(Comparison.Choice.class, ComparisonPage::of),
        new Presentation<>(Shortlist.class, ShortlistPage::of),
        new Presentation<>(Survey.class, SurveyPage::of),
        new Presentation<>(Search.class, SearchPage::of),
        new Presentation<>(Screening.class, ScreeningPage::of),
        new Presentation<>(Sensitivity.class, SensitivityPage::of),
        new Presentation<>(Scatter.class, ScatterPage::of),
        new Presentation<>(Family.class, FamilyPage::of),
        new Presentation<>(Scene.class, ScenePage::of),
        new Presentation<>(Scene.LinearCrush.class, ScenePage::of),
        new Presentation<>(Pulse.class, PulsePage::of),
        new Presentation<>(CrushTube.class, CrushTubePage::of),
        new Presentation<>(Crash.class, CrashPage::of),
        new Presentation<>(Collapse.class, CollapsePage::of),
        new Presentation<>(SeenDamage.Explanations.class, DamagePage::of),
        new Presentation<>(Inspection.class, InspectionPage::of),
        new Presentation<>(Occupant.ClosedForm.class, ClosedFormPage::of),
        new Presentation<>(Ride.class, RidePage::of),
        new Presentation<>(RigidOrCrush.class, RigidOrCrushPage::of),
        new Presentation<>(OrderOfFailure.class, OrderOfFailurePage::of),
        new Presentation<>(Table.class, (table, units) -> TablePage.of(table)),
        new Presentation<>(Caution.class, (caution, units) -> caution(caution)));
  }

  /** What any value has to say: its page's pieces, or its text where no page is known for it. */
  static List<Block> blocks(Object value, Units units) {
    return all().stream()
        .filter(one -> one.type().isInstance(value))
        .findFirst()
        .map(one -> one.page(value, units).blocks())
        .orElseGet(() -> List.of(new Block.Paragraph(value.toString())));
  }

  private static Page alone(Picture picture) {
    return new Page(List.of(new Block.Figure(picture)));
  }

  private static Page caution(Caution caution) {
    return new Page(List.of(new Block.Warning(caution.text())));
  }

  private static Page event(Event event) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Event: " + event.name()));
    blocks.add(new Block.Paragraph("Source: " + event.source()));
    blocks.add(new Block.Remarks(event.assumptions()));
    return new Page(blocks);
  }

  private static Page check(Check check, Units units) {
    String title = check.what() + " of " + check.part();
    return SheetPage.of(CheckSheet.of(title, List.of(check)), units);
  }
}
