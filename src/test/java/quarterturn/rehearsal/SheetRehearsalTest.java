package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.report.Labels;
import quarterturn.report.SessionLog;
import quarterturn.report.sheet.RepairNote;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.session.Stage;
import quarterturn.session.engine.Engine;
import quarterturn.unit.Dates;

/** What people read of whole sessions: titles where a record has ids, and what is open. */
class SheetRehearsalTest {
  private static final Dates DATES = new Dates(ZoneOffset.UTC);

  private static List<Event> played(NamedNeck neck, String procedure) throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, "bass-34");
    for (int i = 0; i < 900 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    assertThat(bench.prompt().ended()).isTrue();
    return bench.events();
  }

  @Test
  void eachReadingSaysInWhichStageAndPartItWasTaken() throws Exception {
    Sheet sheet =
        Sheet.of("x", played(NamedNeck.NEGLECTED, "setup"), new Shelf(null).load("setup"));
    assertThat(sheet.readings().stream().map(taken -> taken.taken().words()).distinct())
        .containsExactly(
            "Intake, read as found",
            "Neck relief, measure as found",
            "Neck relief, settle and read",
            "Nut clearance, measure",
            "Action, measure",
            "Intonation, measure",
            "Pickup height, measure",
            "Sign-off, as left")
        .inOrder();
    String text = SheetFormat.TEXT.write(sheet, DATES);
    assertThat(text).contains("Sign-off, as left  Relief, mm         E1 0.30 to 0.35;");
    assertThat(text).contains("not needed: still so");
  }

  @Test
  void aRehearsalSaysSoInItsTitle() throws Exception {
    List<Event> events = played(NamedNeck.RIGHT, "relief-check");
    Library library = new Shelf(null).load("relief-check");
    for (SheetFormat format : List.of(SheetFormat.TEXT, SheetFormat.MARKDOWN, SheetFormat.HTML)) {
      String rehearsed = format.write(Sheet.of(Overview.REHEARSAL, events, library), DATES);
      String real = format.write(Sheet.of("2027-03-01-x", events, library), DATES);
      assertThat(rehearsed.toLowerCase(java.util.Locale.ROOT))
          .contains("set-up sheet of a rehearsal on a simulated neck");
      assertThat(real).doesNotContain("ehearsal");
    }
  }

  /** The bench says what comes next by the state of each result; the sheet must say the same. */
  @ParameterizedTest
  @CsvSource({
    "TOO_MUCH, relief, 'Action;Intonation'",
    "NEGLECTED, setup, ''",
    "RIGHT, relief-check, ''",
    "TOO_MUCH, season, 'Intonation;Pickup height'"
  })
  void whatIsOpenAgreesWithWhatComesNext(NamedNeck neck, String procedure, String open)
      throws Exception {
    List<Event> events = played(neck, procedure);
    Library library = new Shelf(null).load(procedure);
    Sheet sheet = Sheet.of("x", events, library);
    List<String> named = sheet.open().stream().map(point -> point.replaceAll(":.*", "")).toList();
    assertThat(named)
        .containsExactlyElementsIn(open.isEmpty() ? List.of() : Arrays.asList(open.split(";")));
    List<Stage> stages = new Engine(library, new BeliefAdvisor()).handover(events).stages();
    for (Stage stage : stages) {
      Quantity quantity =
          Objects.requireNonNull(library.results().results().get(stage.id())).quantity();
      if (stage.status() == Stage.Status.STALE && quantity != null) {
        assertWithMessage(stage.name()).that(named).contains(stage.name());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"NEGLECTED, setup", "TOO_MUCH, ladder", "BACK_BOW, buzz", "JAMMED, relief"})
  void noStepIdIsInAnythingAPersonReads(NamedNeck neck, String procedure) throws Exception {
    List<Event> events = played(neck, procedure);
    Library library = new Shelf(null).load(procedure);
    Sheet sheet = Sheet.of("demo", events, library);
    List<String> pages = new ArrayList<>();
    for (SheetFormat format : List.of(SheetFormat.TEXT, SheetFormat.MARKDOWN, SheetFormat.HTML)) {
      pages.add(format.write(sheet, DATES));
      pages.add(format.write(RepairNote.TITLE, RepairNote.of(sheet, events, library, DATES)));
    }
    pages.add(
        String.join("\n", SessionLog.lines("demo", events, Labels.of(library, procedure), DATES)));
    // What a person types or says is no id: words of one part, and those that the texts use.
    String texts =
        library.procedures().values().stream()
            .flatMap(one -> one.steps().values().stream())
            .map(step -> step.words().text() + " " + step.words().part())
            .collect(Collectors.joining(" "));
    Set<String> ids =
        library.procedures().values().stream()
            .flatMap(one -> one.steps().keySet().stream())
            .filter(id -> id.contains("-") && !texts.contains(id))
            .filter(id -> !library.procedures().containsKey(id))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(ids).isNotEmpty();
    for (String page : pages) {
      String plain = page.replaceAll("(?s)<style>.*</style>", "");
      for (String id : ids) {
        assertWithMessage(id).that(plain).doesNotContainMatch("(?<![\\w-])" + id + "(?![\\w-])");
      }
    }
  }

  @Test
  void thePartsOfTheBowAreAmongAllReadings() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH, "ladder", "bass-34");
    for (int i = 0; i < 100 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    assertThat(
            bench.overview().all().stream()
                .filter(Overview.Entry.Other.class::isInstance)
                .map(entry -> ((Overview.Entry.Other) entry).words()))
        .containsExactly(
            "bow at the nut end E 0.15 to 0.20 mm",
            "bow in the middle E 0.10 to 0.15 mm",
            "bow before the joint E 0.20 to 0.25 mm",
            "bow at the body end E under 0.05 mm")
        .inOrder();
    assertThat(bench.overview().all().size()).isEqualTo(bench.overview().trail().size() + 4);
    Sheet sheet = Sheet.of("x", bench.events(), new Shelf(null).load("ladder"));
    assertThat(SheetFormat.TEXT.write(sheet, DATES))
        .containsMatch("E1 +0.15 to 0.20 +in +0.15 to 0.20 +in +0.12 to 0.23");
  }

  /** A column is never so narrow that a word of its cells is cut. */
  @Test
  void noWordIsBrokenAtTheEndOfALine() throws Exception {
    Sheet sheet =
        Sheet.of("x", played(NamedNeck.NEGLECTED, "setup"), new Shelf(null).load("setup"));
    Set<String> words = new TreeSet<>(words(SheetFormat.MARKDOWN.write(sheet, DATES)));
    for (String word : words(SheetFormat.TEXT.write(sheet, DATES))) {
      assertWithMessage(word).that(words).contains(word);
    }
  }

  private static List<String> words(String page) {
    return Arrays.stream(page.replaceAll("[\\\\|*#=]", " ").split("\\s+"))
        .map(word -> word.toLowerCase(java.util.Locale.ROOT).replaceAll("-{2,}", ""))
        .toList();
  }
}
