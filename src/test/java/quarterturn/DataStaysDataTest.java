package quarterturn;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;

/** What a procedure or a file of policy says, no class says a second time. */
class DataStaysDataTest {
  private static final Path SOURCES = Path.of("src/main/java/quarterturn");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern COMMENT = Pattern.compile("\\s*(//|\\*|/\\*).*");

  /** Ids that are words of the program's own as well: where they stand, and as what. */
  private static final String WORDS =
      """
      a key of a file: procedure/read/KindsReader fretless frets gauges saddles sound-hole strings
      a key of a file: procedure/read/WindowsReader high low strings
      a key of a file: procedure/read/LimitsReader day rest settle wrong-way
      a key of a file: procedure/read/ProcedureReader retune
      a key of a file: procedure/read/SchemaKeys limit rest retune
      a key of a file: procedure/read/form/Keys read retune
      a key of a file: procedure/read/FormatSchema limit
      a key of a file: procedure/read/form/Renaming read
      a key of a file: procedure/read/StepReader rest
      a key of a file: procedure/read/TurnReader limit
      a key of a file: lesson/store/PlanFile level
      a key of a file: procedure/read/BoundsReader held
      a key of a file: procedure/read/Unlikely strings
      a key of JSON: lesson/store/LessonJson held left level
      a key of JSON: report/sheet/SheetJson held
      a key of JSON: script/PromptJson held
      a key of JSON: script/QuestionJson held
      a key of JSON: session/journal/EventJson held
      a word of English: procedure/check/words/Grammar now
      a word of English: report/DueList now
      a word of English: unit/Dates now
      a folder: platform/UserFolders share
      a word at the desk: lesson/teacher/DeskDialogue level
      a word at the desk: screen/DeskPage level
      a quantity in a message: procedure/condition/Amounts temperature
      a quantity: report/ReadingHistory action
      a quantity: report/HistoryTable action humidity
      a change: procedure/Results climate
      an outcome: procedure/InWindow in-window
      an outcome: session/engine/Guard limit no-response wrong-way
      an outcome: session/store/Opening limit
      an event: session/journal/EventJson adjusted left read
      a key of JSON: report/sheet/SheetJson complaint high low strings
      a key of JSON: reckon/PullTopic strings
      a key of JSON: script/AdviceLines action
      a key of JSON: script/PromptJson limit rest
      a key of JSON: script/ScriptFace left
      a key of JSON: session/store/InstrumentFile strings
      a kind of what is due: session/Due day season
      a form field: session/Instrument gauges
      a form field: session/store/FormField gauges nut relief strings
      a form field: session/store/FormFields gauges
      an answer of the engine's own: session/engine/Recall jammed noise
      an answer of the engine's own: session/engine/EngineQuestions take-back
      a command: reckon/FretsTopic frets
      a command: reckon/IntonationTopic intonation
      a command: reckon/MoistureTopic moisture
      a command: reckon/ShimTopic shim
      a command: command/data/DataWhere where
      a word at the desk: line/LineDesk taken
      a word at the desk: lesson/teacher/DeskDialogue hold
      a word at the desk: screen/DeskPage hold
      a kind of question: session/Question hold
      a word typed of a reading: quick/Terms high low
      a string's side: screen/page/Trail high low
      a state of a question: lesson/teacher/DeskView taken
      a bench's name in an example: command/lesson/LessonNew left
      an example in a message: lesson/Planning relief/confirm
      a simulated neck: rehearsal/simulated/NamedNeck twisted
      a mark in a graph: report/graph/ProcedureGraph retune
      a label in a picture: reckon/FretsTopic nut
      a label in a picture: reckon/NeckTopic nut
      a label in a picture: screen/page/PlacesPicture plate pocket
      a unit: unit/Dates day
      a key of JSON: lesson/store/LessonJson hold
      a verb: procedure/check/rule/TwoActions fit seat shim slacken trim tune
      a word of English: procedure/check/words/Act nut
      a word of English: procedure/check/words/Acting action ends nut off pocket shim strings trim tune
      a word of English: procedure/check/words/Implied nut read rest
      a word of English: procedure/check/words/Part nut
      a word of English: procedure/check/words/Verbs swing taken
      """;

  /** Where a length of time in days or hours may stand: it is no policy. */
  private static final Set<String> SPANS =
      Set.of(
          // From when on a plot's axis shows days and no hours.
          "report/TimePlot ofDays",
          // A simulated session's invented past.
          "rehearsal/cover/AnySession ofDays",
          // How long a simulated owner leaves the instrument, and a clock that is set wrong.
          "rehearsal/life/Life ofDays",
          "rehearsal/life/Life ofHours",
          // A limit's own unit.
          "procedure/Limits ofHours");

  private static Stream<Path> sources() throws IOException {
    return Files.walk(SOURCES).filter(file -> file.toString().endsWith(".java"));
  }

  private static String named(Path file) {
    return SOURCES.relativize(file).toString().replace('\\', '/').replace(".java", "");
  }

  private static List<String> code(Path file) throws IOException {
    return Files.readAllLines(file).stream()
        .filter(line -> !COMMENT.matcher(line).matches())
        .toList();
  }

  /** Ids of the procedures that come with the program, of their steps, and of both together. */
  private static Set<String> ids() throws IOException, UnreadableException {
    Set<String> ids = new TreeSet<>();
    for (String id : new Shelf(null).procedures()) {
      Procedure procedure = new Shelf(null).load(id).main();
      ids.add(id);
      ids.addAll(procedure.steps().keySet());
      procedure.steps().keySet().forEach(step -> ids.add(id + "/" + step));
    }
    return ids;
  }

  private static Set<String> words() {
    Set<String> words = new TreeSet<>();
    for (String line : WORDS.split("\n")) {
      List<String> said = List.of(line.substring(line.indexOf(": ") + 2).split(" "));
      said.stream().skip(1).forEach(word -> words.add(said.get(0) + " " + word));
    }
    return words;
  }

  @Test
  void noProcedureAndNoStepIsNamedInCode() throws Exception {
    Set<String> ids = ids();
    assertThat(ids).containsAtLeast("relief", "rod-place", "strings/new-gauges");
    Set<String> found = new TreeSet<>();
    for (Path file : sources().toList()) {
      for (String line : code(file)) {
        for (Matcher literal = LITERAL.matcher(line); literal.find(); ) {
          for (String word : literal.group(1).split(" ")) {
            boolean whole = word.equals(literal.group(1)) || word.contains("/");
            if (whole && ids.contains(word)) {
              found.add(named(file) + " " + word);
            }
          }
        }
      }
    }
    assertWithMessage("a step says in its file what it records; see Recorded")
        .that(found)
        .containsExactlyElementsIn(words());
  }

  @Test
  void whatIsPolicyStandsInTheLimits() throws IOException {
    Pattern span = Pattern.compile("Duration\\.(ofDays|ofHours)\\(|\\b(7|90|365) \\* 24\\b");
    Set<String> found = new LinkedHashSet<>();
    for (Path file : sources().filter(file -> !named(file).startsWith("craft/")).toList()) {
      Matcher spans = span.matcher(code(file).stream().collect(Collectors.joining("\n")));
      while (spans.find()) {
        found.add(named(file) + " " + (spans.group(1) == null ? spans.group() : spans.group(1)));
      }
    }
    assertWithMessage("a figure of policy stands in safety/limits.yaml alone")
        .that(found)
        .containsExactlyElementsIn(SPANS);
  }
}
