package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.Stage;
import quarterturn.unit.Dates;

/** A simulated instrument with several faults at once goes through the whole set-up. */
class SetupRehearsalTest {
  private static PracticeBench played(NamedNeck neck, String procedure, String kind)
      throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, kind);
    for (int i = 0; i < 900 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    return bench;
  }

  private static String outcome(PracticeBench bench) {
    return bench.prompt() instanceof Prompt.Done done ? done.outcome() : "not done";
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bass-34",
        "bass-30",
        "bass-35",
        "bass-fanned",
        "bass-fretless",
        "electric-25",
        "electric-24",
        "electric-twelve",
        "acoustic-steel"
      })
  void everyKindComesToSignOff(String kind) throws Exception {
    PracticeBench bench = played(NamedNeck.NEGLECTED, "setup", kind);
    assertThat(outcome(bench)).isEqualTo("signed-off");
    assertThat(bench.overview().stages()).hasSize(8);
    List<String> stale =
        bench.overview().stages().stream()
            .filter(stage -> !stage.status().usable())
            .filter(stage -> !stage.id().equals("pickup-height") || kind.startsWith("bass"))
            .map(Stage::id)
            .toList();
    assertWithMessage(kind).that(stale).isEmpty();
    double relief = bench.neck().relief();
    Kind of = Practising.relief().kind(kind);
    assertThat(relief).isAtLeast(of.target(Style.MEDIUM).window().lowMm() - 0.04);
    assertThat(relief).isAtMost(of.target(Style.MEDIUM).window().highMm() + 0.04);
  }

  @Test
  void theBassStandsInEveryWindowAfterADay() throws Exception {
    PracticeBench bench = played(NamedNeck.NEGLECTED, "setup", "bass-34");
    Kind kind = Practising.relief().kind("bass-34");
    for (Stage stage : bench.overview().stages()) {
      assertWithMessage(stage.toString()).that(stage.status().usable()).isTrue();
      assertWithMessage(stage.toString()).that(stage.status()).isNotEqualTo(Stage.Status.OUT);
    }
    Event first = bench.events().get(0);
    Event last = bench.events().get(bench.events().size() - 1);
    assertThat(Duration.between(first.at(), last.at())).isGreaterThan(Duration.ofHours(24));
    for (Event event : bench.events()) {
      if (event instanceof Event.Read read
          && read.step().equals("action-left")
          && read.value() != null) {
        int string = kind.strings().indexOf(String.valueOf(read.string()));
        assertThat(read.value())
            .isAtMost(kind.target(Quantity.ACTION, Style.MEDIUM, string).window().highMm());
      }
    }
  }

  @Test
  void itsSheetTellsWhatWasFoundDoneAndLeft() throws Exception {
    PracticeBench bench = played(NamedNeck.NEGLECTED, "setup", "bass-34");
    Sheet sheet = Sheet.of("rehearsal", bench.events(), new Shelf(null).load("setup"));
    String text = SheetFormat.TEXT.write(sheet, new Dates(java.time.ZoneOffset.UTC));
    for (String part :
        List.of(
            "It buzzes low down and plays high (invented)",
            ".110 .089 .068 .047",
            "touches",
            "loosened",
            "saddle",
            "signed")) {
      assertThat(text).contains(part);
    }
    assertThat(text.lines().filter(line -> line.length() > 80).collect(Collectors.toList()))
        .isEmpty();
  }

  @Test
  void aSeasonCheckOfASoundInstrumentTurnsNothing() throws Exception {
    PracticeBench bench = played(NamedNeck.RIGHT, "season", "bass-34");
    assertThat(outcome(bench)).isEqualTo("in-window");
    assertThat(bench.neck().moves()).isEqualTo(0);
  }

  @Test
  void aSeasonCheckPutsRightOnlyWhatHasMoved() throws Exception {
    PracticeBench bench = played(NamedNeck.TOO_MUCH, "season", "bass-34");
    assertThat(outcome(bench)).isEqualTo("adjusted");
    assertThat(bench.neck().moves()).isGreaterThan(0);
  }

  @Test
  void aBrokenRodEndsASetUpWithoutForce() throws Exception {
    PracticeBench bench = played(NamedNeck.DEAD, "setup", "bass-34");
    assertThat(bench.prompt()).isInstanceOf(Prompt.HandOver.class);
    assertThat(bench.neck().moves()).isAtMost(3);
  }
}
