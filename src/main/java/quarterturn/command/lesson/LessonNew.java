package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.place.Place;
import quarterturn.command.place.Placed;
import quarterturn.lesson.Pace;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanChecks;
import quarterturn.lesson.PlanDialogue;
import quarterturn.lesson.PlanPart;
import quarterturn.lesson.Planning;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PastPace;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.NextLesson;
import quarterturn.lesson.teacher.RealNecks;
import quarterturn.lesson.teacher.TurnedNeck;
import quarterturn.platform.Folders;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Program;
import quarterturn.unit.NotUnderstoodException;

/** {@code lesson new FOLDER}: plans a lesson, by options or by answering questions. */
@Command(
    addMethodSubcommands = false,
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

  @Option(
      names = "--blind",
      negatable = true,
      description = "Each student reads a gap alone; the spread is shown.")
  private @Nullable Boolean blind;

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
      description = {
        "Follows the lesson that is in the folder, as it was planned; what was missed comes back.",
        "Options change its plan; another --level has all begin there, not where each stood."
      })
  private boolean next;

  @Option(names = "--lines", description = "Asks in JSON, one object a line each way.")
  private boolean lines;

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Place.isThere("FOLDER", folder, "name another folder");
    Path plan = folder.resolve(LessonFolder.PLAN);
    if (Files.exists(plan) && !next) {
      throw new NotUnderstoodException(
          folder + " holds a lesson already; choose another folder, or follow it with --next");
    }
    Plan former = Files.exists(plan) ? PlanFile.in(folder) : null;
    Pace pace = PastPace.near(folder, sessions().rules().limits().clocks());
    PlanChecks checks = new PlanChecks(sessions(), pace);
    Map<PlanPart, String> given = given();
    Map<PlanPart, String> before = former == null ? Map.of() : NextLesson.typed(former);
    if (!lines && (!given.isEmpty() || former != null)) {
      return print(make(plan, former, given, checks));
    }
    PlanDialogue dialogue = new PlanDialogue(checks, before);
    try (Face face = Faces.asking(lines, clock.getZone())) {
      Dialogue.End end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED) {
        face.tell(make(plan, former, dialogue.typed(), checks));
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
    put(out, PlanPart.BLIND, blind == null ? null : blind ? "yes" : "no");
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
  private List<String> make(
      Path file, @Nullable Plan former, Map<PlanPart, String> said, PlanChecks checks)
      throws IOException, UnreadableException {
    Map<PlanPart, String> typed = new EnumMap<>(PlanPart.class);
    typed.putAll(former == null ? Map.of() : NextLesson.typed(former));
    typed.putAll(said);
    String titled = typed.getOrDefault(PlanPart.TITLE, PlanPart.TITLE.usual());
    LocalDate day = LocalDate.ofInstant(clock.instant(), clock.getZone());
    String id = Planning.id(day, titled, before());
    Plan plan = checks.plan(id, typed);
    if (former != null) {
      plan = NextLesson.after(former, plan, logs());
    }
    String time = checks.time(plan);
    byte[] text = PlanFile.text(plan, time).getBytes(StandardCharsets.UTF_8);
    PlanFile.read(LessonFolder.PLAN, text);
    try {
      write(file, former, text);
    } catch (FileSystemException e) {
      throw Place.unwritable("FOLDER", folder, "folder", e);
    }
    Plan.Setup first = plan.instruments().get(0);
    String bench = first.bench() == null ? "left" : first.bench();
    Program program = where.program();
    List<String> told = new ArrayList<>();
    told.add("The plan of lesson " + id + " is in " + file + ".");
    if (former != null) {
      told.add(NextLesson.words(former, plan));
    }
    told.add(time);
    if (plan.real()) {
      told.addAll(realNecks(former));
    }
    told.add(
        "At each bench: "
            + program.typed(
                "lesson join " + Program.word(folder.toString()) + " --bench " + bench));
    told.add(
        "At your own desk: " + program.typed("lesson desk " + Program.word(folder.toString())));
    return told;
  }

  /** Writes the plan; the former one stays beside it, and in its place where that fails. */
  private void write(Path file, @Nullable Plan former, byte[] text) throws IOException {
    boolean there = Files.isDirectory(folder);
    Files.createDirectories(folder);
    if (former == null) {
      try {
        Folders.write(file, text, false);
      } catch (IOException e) {
        if (!there) {
          Files.deleteIfExists(folder);
        }
        throw e;
      }
      return;
    }
    Path beside = folder.resolve(former.lesson() + ".yaml");
    Folders.write(beside, Files.readAllBytes(file), false);
    try {
      Folders.write(file, text, true);
    } catch (IOException e) {
      Files.deleteIfExists(beside);
      throw e;
    }
  }

  private List<String> realNecks(@Nullable Plan former) throws IOException, UnreadableException {
    List<TurnedNeck> left =
        former == null ? List.of() : LessonCommand.necks(folder, former, logs(), sessions());
    return RealNecks.plan(sessions().rules().limits(), left);
  }

  private List<WriterLog> logs() throws IOException {
    return LessonFolder.read(folder).logs();
  }

  /** Ids of the lessons that the folder has held. */
  private Set<String> before() throws IOException, UnreadableException {
    Set<String> ids = new TreeSet<>();
    if (Files.isDirectory(folder)) {
      for (WriterLog log : logs()) {
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
