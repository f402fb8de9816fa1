package quarterturn.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanChecks;
import quarterturn.lesson.PlanDialogue;
import quarterturn.lesson.PlanPart;
import quarterturn.lesson.Planning;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PastPace;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Program;
import quarterturn.unit.NotUnderstoodException;

/** {@code lesson new FOLDER}: plans a lesson, by options or by answering questions. */
@Command(
    name = "new",
    sortOptions = false,
    description = {
      "Plans a lesson in a folder: ${ROOT-COMMAND-NAME} lesson new first-turn --neck too-much",
      "Without an option it asks for each part in turn. The plan is lesson.yaml, which you may"
          + " edit."
    })
final class LessonNew extends Placed {
  @Parameters(paramLabel = "FOLDER", description = "Local, shared or synced; made where needed.")
  private Path folder = Path.of("");

  @Option(names = "--title", paramLabel = "TEXT", description = "What the lesson is called.")
  private @Nullable String title;

  @Option(
      names = "--procedure",
      paramLabel = "ID",
      description = "Again for the next; or relief,season.")
  private List<String> procedures = List.of();

  @Option(names = "--kind", paramLabel = "KIND", description = "For example bass-34.")
  private @Nullable String kind;

  @Option(
      names = "--neck",
      paramLabel = "NECK",
      description = {
        "real, or a simulated neck for all benches, or BENCH=NECK again for each bench.",
        "rehearse --help names the necks."
      })
  private List<String> necks = List.of();

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      description = "How much is shown to begin with: worked, last-missing, two-missing or own.")
  private @Nullable String level;

  @Option(
      names = "--hold",
      paramLabel = "STEP",
      description = "What waits for you: \"every turn\", none, or a step. Without it every turn.")
  private List<String> holds = List.of();

  @Option(names = "--blind", description = "Each student reads a gap alone; the spread is shown.")
  private boolean blind;

  @Option(
      names = "--student",
      paramLabel = "NAME",
      description = "Who is expected, again for the next; others may come too.")
  private List<String> students = List.of();

  @Option(
      names = "--questions",
      paramLabel = "MANY",
      description = "How many of the procedures' questions are asked: few, some or all; else some.")
  private @Nullable String questions;

  @Option(
      names = "--next",
      description = "Follows the lesson that is in the folder; what was missed there comes back.")
  private boolean next;

  @Option(names = "--lines", description = "Asks in JSON, one object a line each way.")
  private boolean lines;

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Path plan = folder.resolve(LessonFolder.PLAN);
    if (Files.exists(plan) && !next) {
      throw new NotUnderstoodException(
          folder + " holds a lesson already; choose another folder, or follow it with --next");
    }
    PlanChecks checks = new PlanChecks(sessions(), PastPace.near(folder));
    Map<PlanPart, String> given = given();
    if (!lines && !given.isEmpty()) {
      return print(make(plan, given, checks));
    }
    PlanDialogue dialogue = new PlanDialogue(checks);
    try (Face face = Faces.asking(lines, clock.getZone())) {
      Dialogue.End end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED) {
        face.tell(make(plan, dialogue.typed(), checks));
      } else if (end == Dialogue.End.CUT_SHORT) {
        face.tell(dialogue.whenLeft());
      }
      return end == Dialogue.End.INTERRUPTED ? ExitStatus.INTERRUPTED : ExitStatus.DONE;
    }
  }

  private Map<PlanPart, String> given() {
    Map<PlanPart, String> out = new EnumMap<>(PlanPart.class);
    put(out, PlanPart.TITLE, title);
    put(out, PlanPart.PROCEDURES, joined(procedures));
    put(out, PlanPart.KIND, kind);
    put(out, PlanPart.NECKS, joined(necks));
    put(out, PlanPart.LEVEL, level);
    put(out, PlanPart.HOLDS, joined(holds));
    put(out, PlanPart.BLIND, blind ? "yes" : null);
    put(out, PlanPart.STUDENTS, joined(students));
    put(out, PlanPart.QUESTIONS, questions);
    return out;
  }

  private static @Nullable String joined(List<String> values) {
    return values.isEmpty() ? null : String.join(",", values);
  }

  private static void put(Map<PlanPart, String> out, PlanPart part, @Nullable String value) {
    if (value != null) {
      out.put(part, value);
    }
  }

  /** Writes the plan; returns how the lesson goes on. */
  private List<String> make(Path file, Map<PlanPart, String> typed, PlanChecks checks)
      throws IOException, UnreadableException {
    Set<String> before = before();
    String titled = typed.getOrDefault(PlanPart.TITLE, PlanPart.TITLE.usual());
    String id = Planning.id(LocalDate.ofInstant(clock.instant(), clock.getZone()), titled, before);
    Plan plan = checks.plan(id, typed);
    String time = checks.time(plan);
    byte[] text = PlanFile.text(plan, time).getBytes(StandardCharsets.UTF_8);
    PlanFile.read(LessonFolder.PLAN, text);
    Files.createDirectories(folder);
    if (Files.exists(file)) {
      Plan former = PlanFile.in(folder);
      Files.move(file, folder.resolve(former.lesson() + ".yaml"));
    }
    Files.write(file, text, StandardOpenOption.CREATE_NEW);
    Plan.Setup first = plan.instruments().get(0);
    String bench = first.bench() == null ? "left" : first.bench();
    Program program = where.program();
    return List.of(
        "The plan of lesson " + id + " is in " + file + ".",
        time,
        "At each bench: "
            + program.typed("lesson join " + Program.word(folder.toString()) + " --bench " + bench),
        "At your own desk: " + program.typed("lesson desk " + Program.word(folder.toString())));
  }

  /** Ids of the lessons that the folder has held. */
  private Set<String> before() throws IOException, UnreadableException {
    Set<String> ids = new TreeSet<>();
    if (Files.isDirectory(folder)) {
      for (WriterLog log : LessonFolder.read(folder).logs()) {
        if (log.header() != null) {
          ids.add(log.header().lesson());
        }
      }
      if (Files.exists(folder.resolve(LessonFolder.PLAN))) {
        ids.add(PlanFile.in(folder).lesson());
      }
    }
    return ids;
  }
}
