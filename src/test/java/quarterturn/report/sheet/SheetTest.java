package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Library;
import quarterturn.procedure.Results;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.SetUp;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/** What goes into a sheet. */
class SheetTest {
  private static final Bracket HIGH = new Bracket(0.60, 0.65);
  private static final Bracket IN = new Bracket(0.35, 0.40);

  /** Files that know nothing of a record's ids. */
  static final Library NOTHING =
      new Library(Map.of(), Map.of(), Map.of(), ShippedRules.LIMITS, Results.NONE);

  private static Sheet sheet(Event... after) {
    return sheetOf(SetUp.LIBRARY, after);
  }

  private static Sheet sheetOf(Library library, Event... after) {
    List<Event> events = new ArrayList<>(List.of(SetUp.started("demo-bass")));
    events.addAll(List.of(after));
    return Sheet.of("demo", events, library);
  }

  private static Sheet.Row row(Sheet sheet, Quantity quantity, String string) {
    return sheet.rows().stream()
        .filter(r -> r.quantity() == quantity && r.string().equals(string))
        .findFirst()
        .orElseThrow();
  }

  private static @Nullable Event found(Sheet.Row row) {
    return row.found() == null ? null : row.found().read();
  }

  @Test
  void asFoundIsTheLastReadingBeforeTheFirstWorkThatTouchesIt() {
    Event.Read second = SetUp.relief(2, "E1", HIGH);
    Event.Read nut = SetUp.nut(9, "E1", new Bracket(0.10, 0.15));
    Event.Read after = SetUp.relief(8, "E1", IN);
    Event.Read action = SetUp.action(10, "E1", 2.5);
    Sheet sheet =
        sheet(
            SetUp.relief(1, "E1", new Bracket(0.65, 0.70)),
            second,
            SetUp.turned(3, 0.125),
            after,
            nut,
            action);
    assertThat(found(row(sheet, Quantity.RELIEF, "E1"))).isEqualTo(second);
    assertThat(row(sheet, Quantity.RELIEF, "E1").left().read()).isEqualTo(after);
    assertWithMessage("a turn does not touch the slots")
        .that(found(row(sheet, Quantity.NUT_CLEARANCE, "E1")))
        .isEqualTo(nut);
    assertWithMessage("a turn touches the action")
        .that(found(row(sheet, Quantity.ACTION, "E1")))
        .isNull();
    assertThat(sheet.readings().stream().map(Sheet.Taken::part))
        .containsExactly(
            Sheet.Part.BETWEEN,
            Sheet.Part.AS_FOUND,
            Sheet.Part.AS_LEFT,
            Sheet.Part.FOUND_AND_LEFT,
            Sheet.Part.AS_LEFT)
        .inOrder();
  }

  @Test
  void aLastReadingThatWasSpoiledIsStaleAndOpen() {
    Sheet sheet = sheet(SetUp.relief(1, "E1", IN), SetUp.turned(2, -0.125));
    assertThat(row(sheet, Quantity.RELIEF, "E1").left().spoiled()).isEqualTo("the rod was turned");
    assertThat(sheet.open())
        .contains(
            "Relief on E1: the last reading, 0.35 to 0.40 mm, is stale (the rod was turned);"
                + " read it again.");
    assertThat(sheet(SetUp.relief(1, "E1", IN)).open())
        .containsExactly("The work is not finished: go on with it where it was left.");
  }

  @Test
  void aTurnThatDidNotMoveSpoilsNothing() {
    Sheet sheet = sheet(SetUp.relief(1, "E1", IN), SetUp.turned(2, 0));
    assertThat(row(sheet, Quantity.RELIEF, "E1").left().spoiled()).isNull();
    assertWithMessage("that it was tried").that(sheet.rod().moves()).hasSize(1);
  }

  @Test
  void workThatAStepTellsOfSpoilsToo() {
    Sheet sheet =
        sheet(
            SetUp.nut(1, "E1", new Bracket(0.10, 0.15)),
            SetUp.action(2, "E1", 2.5),
            new Event.Told(SetUp.minute(3), "dressed"));
    assertThat(row(sheet, Quantity.NUT_CLEARANCE, "E1").left().spoiled())
        .isEqualTo("the frets were worked on");
    assertThat(row(sheet, Quantity.ACTION, "E1").left().spoiled()).isNull();
  }

  @Test
  void newStringsAreNoWork() {
    Event.Read on = SetUp.relief(2, "E1", HIGH);
    Sheet sheet = sheet(new Event.Chose(SetUp.minute(1), "strings-on", "other", null), on);
    assertThat(found(row(sheet, Quantity.RELIEF, "E1"))).isEqualTo(on);
    assertThat(sheet.strings().get(0).text()).isEqualTo("A set of another gauge");
    Sheet later =
        sheet(
            SetUp.relief(1, "E1", HIGH),
            new Event.Chose(SetUp.minute(2), "strings-on", "other", null));
    assertThat(row(later, Quantity.RELIEF, "E1").left().spoiled())
        .isEqualTo("other strings were put on");
  }

  @Test
  void aWeekOrOtherAirIsAChange() {
    int week = 7 * 24 * 60;
    Sheet justWeek = sheet(SetUp.relief(0, "E1", IN), SetUp.pickup(week, "E1", 3));
    assertThat(row(justWeek, Quantity.RELIEF, "E1").left().spoiled()).isNull();
    Sheet longer = sheet(SetUp.relief(0, "E1", IN), SetUp.pickup(week + 1, "E1", 3));
    assertThat(row(longer, Quantity.RELIEF, "E1").left().spoiled()).isEqualTo("the air changed");
    Sheet drier =
        sheet(
            SetUp.air(1, Quantity.HUMIDITY, 55),
            SetUp.relief(2, "E1", IN),
            SetUp.air(3, Quantity.HUMIDITY, 44));
    assertThat(row(drier, Quantity.RELIEF, "E1").left().spoiled()).isEqualTo("the air changed");
    Sheet same =
        sheet(
            SetUp.air(1, Quantity.HUMIDITY, 55),
            SetUp.relief(2, "E1", IN),
            SetUp.air(3, Quantity.HUMIDITY, 45));
    assertThat(row(same, Quantity.RELIEF, "E1").left().spoiled()).isNull();
  }

  @Test
  void aWindowHoldsForItsOwnWayOfReadingOnly() {
    Event.Read usual = SetUp.relief(1, "E1", IN);
    Event.Read other =
        new Event.Read(
            SetUp.minute(2),
            "read-relief",
            Quantity.RELIEF,
            usual.which(),
            "E1",
            List.of(1, 15),
            7,
            0.05,
            IN,
            null);
    Sheet sheet = sheet(usual, other);
    assertThat(sheet.rows()).hasSize(2);
    assertThat(sheet.readings().get(0).verdict()).isEqualTo(Verdict.IN);
    assertThat(sheet.readings().get(1).window()).isNull();
  }

  @Test
  void everyStringHasItsOwnWindow() {
    Sheet sheet = sheet(SetUp.action(1, "E1", 2.25), SetUp.action(2, "D2", 2.26));
    assertThat(sheet.readings().get(0).verdict()).isEqualTo(Verdict.IN);
    assertThat(sheet.readings().get(1).verdict()).isEqualTo(Verdict.ABOVE);
    assertThat(sheet.open())
        .contains("Action on D2: 2.26 mm is out of its range, 1.75 to 2.25 mm.");
  }

  @Test
  void theStepSaysWhatItRecordsNotItsId() {
    Event noted = new Event.Noted(SetUp.minute(1), "complaint", "It buzzes.");
    assertThat(sheet(noted).complaint()).isEqualTo("It buzzes.");
    assertThat(sheetOf(NOTHING, noted).complaint()).isNull();
    assertThat(sheetOf(NOTHING, noted).notes()).hasSize(1);
  }

  private static Event played(int minute, String where) {
    return new Event.Noted(SetUp.minute(minute), "played", where);
  }

  private static Event playedAgain(int minute, String where) {
    return new Event.Chose(SetUp.minute(minute), "played-again", where, null);
  }

  @Test
  void theFirstPlayTestStandsBesideTheLast() {
    assertThat(sheet().played()).isNull();
    Sheet both =
        sheet(
            played(1, "Fret 5, E1."),
            played(2, "Fret 7."),
            playedAgain(3, "last-frets"),
            playedAgain(4, "nowhere"));
    assertThat(both.played()).isEqualTo(new Sheet.Played("Fret 5, E1.", "Nowhere"));
    assertWithMessage("it is told once").that(both.findings()).isEmpty();
    assertThat(both.notes()).isEmpty();
    assertThat(sheet(played(1, "Fret 5.")).played())
        .isEqualTo(new Sheet.Played("Fret 5.", "not played again"));
    assertThat(sheet(playedAgain(1, "last-frets")).played())
        .isEqualTo(new Sheet.Played("not played", "On the last frets"));
  }

  @Test
  void howItIsKeptStandsOnAFinishedSetUpAlone() {
    assertThat(Sheet.of("demo", SetUp.whole(), SetUp.LIBRARY).care())
        .containsExactly("Keep it in its case (invented).");
    List<Event> open = SetUp.whole().subList(0, SetUp.whole().size() - 1);
    assertThat(Sheet.of("demo", open, SetUp.LIBRARY).care()).isEmpty();
    assertThat(Sheet.of("demo", SetUp.handedOver(), SetUp.LIBRARY).care()).isEmpty();
    Event end = new Event.Ended(SetUp.minute(9), "finish", false, "in-window", "");
    assertWithMessage("the relief alone is no set-up")
        .that(sheet(SetUp.relief(1, "E1", IN), end).care())
        .isEmpty();
  }

  @Test
  void withoutTheFilesTheRecordStillReads() {
    Sheet sheet =
        sheetOf(
            NOTHING, SetUp.relief(1, "E1", HIGH), SetUp.turned(2, 0.125), SetUp.action(3, "E1", 2));
    assertThat(sheet.heading().kind()).isEqualTo("demo-bass");
    assertThat(row(sheet, Quantity.RELIEF, "E1").left().spoiled()).isEqualTo("rod");
    assertWithMessage("what is not known may have touched all")
        .that(row(sheet, Quantity.ACTION, "E1").found())
        .isNull();
    assertThat(Sheet.of("empty", List.of(), NOTHING).rows()).isEmpty();
  }

  @Test
  void whatWasWithdrawnIsNotOnIt() {
    Sheet sheet = Sheet.of("demo", SetUp.whole(), SetUp.LIBRARY);
    assertThat(sheet.readings().stream().map(t -> t.read().at())).doesNotContain(SetUp.minute(10));
    assertThat(sheet.complaint()).isEqualTo("It buzzes low down since the winter.");
  }

  @Test
  void theRodIsAddedUpEitherWay() {
    Sheet.Rod rod = sheet(SetUp.turned(1, 0.25), SetUp.turned(2, -0.125)).rod();
    assertThat(rod.net().turns()).isWithin(1e-12).of(0.125);
    assertThat(rod.total().turns()).isWithin(1e-12).of(0.375);
  }

  @Test
  void afterATurnADayAWeekAndASeason() {
    Event.Ended ended = new Event.Ended(SetUp.minute(30), "end", false, "adjusted", "It is done.");
    Sheet sheet = sheet(SetUp.turned(10, 0.125), SetUp.relief(30, "E1", IN), ended);
    assertThat(sheet.next().stream().map(Sheet.Again::at))
        .containsExactly(
            SetUp.minute(10 + 24 * 60),
            SetUp.minute(30 + 7 * 24 * 60),
            SetUp.minute(30 + 90 * 24 * 60))
        .inOrder();
    assertThat(sheet(SetUp.relief(1, "E1", IN), ended).next()).hasSize(2);
    assertWithMessage("while the work goes on")
        .that(sheet(SetUp.relief(1, "E1", IN)).next())
        .isEmpty();
    assertThat(Sheet.of("demo", SetUp.handedOver(), SetUp.LIBRARY).next()).isEmpty();
  }

  @Test
  void aHandOverAndAnUnsureTurnAreOpen() {
    Sheet sheet = Sheet.of("demo", SetUp.handedOver(), SetUp.LIBRARY);
    assertThat(sheet.open()).contains("For a qualified repairer: The rod did not answer.");
    assertThat(sheet.open().get(sheet.open().size() - 1)).contains("not sure how far");
  }

  @Test
  void aSkippedWaitKeepsItsReason() {
    Sheet sheet = Sheet.of("demo", SetUp.whole(), SetUp.LIBRARY);
    assertThat(sheet.waits().get(0).skipped()).isFalse();
    assertThat(Objects.requireNonNull(sheet.waits().get(1).reason())).contains("known to rest");
    Sheet open = sheet(new Event.WaitBegan(SetUp.minute(1), "settle", SetUp.minute(11)));
    assertThat(open.waits().get(0).ended()).isNull();
  }
}
