package quarterturn.lesson.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Questioning;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Form;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Program;

/** A plan as YAML, which the teacher may read and edit. */
public final class PlanFile {
  private static final List<String> KEYS =
      List.of(
          "lesson",
          "title",
          "procedures",
          "instruments",
          "level",
          "holds",
          "blind",
          "students",
          "levels",
          "questions");
  private static final List<String> BEGINS = List.of("student", "level");
  private static final List<String> SETUP = List.of("bench", "kind", "neck", "seed");
  private static final int MOST_SEED = 999_999;
  private static final String HEAD = "# A lesson of quarterturn.\n";

  private PlanFile() {}

  /**
   * The plan in a lesson's folder.
   *
   * @throws IOException where there is none, saying what to do
   * @throws UnreadableException with every fault of the file, by line and column
   */
  public static Plan in(Path folder) throws IOException, UnreadableException {
    Path file = folder.resolve(LessonFolder.PLAN);
    if (!Files.isRegularFile(file)) {
      throw new IOException(
          "there is no lesson in "
              + folder
              + "; the teacher begins one with: "
              + Program.here().typed("lesson new " + Program.word(folder.toString())));
    }
    return read(LessonFolder.PLAN, Files.readAllBytes(file));
  }

  /**
   * Reads a plan.
   *
   * @throws UnreadableException with every fault of the file, by line and column
   */
  public static Plan read(String fileName, byte[] bytes) throws UnreadableException {
    Form form = Form.of(fileName, bytes, KEYS);
    String lesson = form.id("lesson", "a lesson");
    String title = form.line("title");
    List<String> procedures = form.ids("procedures", "a procedure");
    if (form.has("procedures") && procedures.isEmpty()) {
      form.wrong("procedures", "no procedure is named", "Name one at least");
    }
    List<Plan.Setup> setups = new ArrayList<>();
    for (Form piece : form.each("instruments", "an instrument", SETUP)) {
      setups.add(setup(piece, setups));
    }
    if (setups.isEmpty()) {
      form.wrong(
          "instruments", "no instrument is named", "Name one for all benches, or one a bench");
    }
    Level level = form.word("level", "a level", Level.values(), Level::word);
    List<String> holds = new ArrayList<>(form.lines("holds"));
    boolean everyTurn = holds.remove(Plan.EVERY_TURN);
    for (String hold : holds) {
      if (!hold.matches("([a-z0-9-]+/)?[a-z0-9-]+")) {
        form.wrong(
            "holds",
            "\"" + hold + "\" is no hold point",
            "Write the id of a step, or " + Plan.EVERY_TURN);
      }
    }
    boolean blind = form.truth("blind");
    List<String> students = form.lines("students");
    Map<String, Level> levels = new TreeMap<>();
    for (Form piece : form.each("levels", "a student's level", BEGINS)) {
      String student = piece.line("student");
      Level begin = piece.word("level", "a level", Level.values(), Level::word);
      piece.complete();
      if (student != null && begin != null) {
        levels.put(student, begin);
      }
    }
    // Plans of earlier versions say nothing of it.
    Questioning questions =
        form.has("questions")
            ? form.word("questions", "how many", Questioning.values(), Questioning::word)
            : null;
    form.end();
    return new Plan(
        Objects.requireNonNullElse(lesson, ""),
        Objects.requireNonNullElse(title, ""),
        procedures,
        setups,
        Objects.requireNonNullElse(level, Level.WORKED),
        everyTurn,
        holds,
        blind,
        students,
        levels,
        Objects.requireNonNullElse(questions, Questioning.SOME));
  }

  private static Plan.Setup setup(Form piece, List<Plan.Setup> before) {
    String bench = piece.lineOrNull("bench");
    String kind = piece.id("kind", "a kind");
    String[] necks =
        Stream.concat(Arrays.stream(NamedNeck.values()).map(NamedNeck::word), Stream.of(Plan.REAL))
            .toArray(String[]::new);
    String neck = piece.word("neck", "a neck", necks, word -> word);
    Integer seed = piece.countOrNull("seed", 0, MOST_SEED);
    piece.complete();
    if (before.stream().anyMatch(s -> Objects.equals(s.bench(), bench))) {
      piece.wrong(
          "bench",
          bench == null ? "two instruments for every bench" : "two instruments for bench " + bench,
          "Say with bench: which one this is for, or take one out");
    }
    return new Plan.Setup(
        bench,
        Objects.requireNonNullElse(kind, ""),
        neck == null || neck.equals(Plan.REAL) ? null : NamedNeck.of(neck),
        seed == null ? 1 : seed);
  }

  /** The plan's text, with a note for its reader. */
  public static String text(Plan plan, String note) {
    return HEAD + "# " + note + "\n" + text(plan).substring(HEAD.length());
  }

  /** The plan's text. */
  public static String text(Plan plan) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("lesson", plan.lesson()).put("title", plan.title());
    ArrayNode procedures = node.putArray("procedures");
    plan.procedures().forEach(procedures::add);
    ArrayNode instruments = node.putArray("instruments");
    plan.instruments().forEach(setup -> write(instruments.addObject(), setup));
    node.put("level", plan.level().word());
    ArrayNode holds = node.putArray("holds");
    if (plan.everyTurn()) {
      holds.add(Plan.EVERY_TURN);
    }
    plan.holds().forEach(holds::add);
    node.put("blind", plan.blind());
    node.put("questions", plan.questions().word());
    if (!plan.students().isEmpty()) {
      ArrayNode students = node.putArray("students");
      plan.students().forEach(students::add);
    }
    if (!plan.levels().isEmpty()) {
      ArrayNode levels = node.putArray("levels");
      new TreeMap<>(plan.levels())
          .forEach(
              (student, level) ->
                  levels.addObject().put("student", student).put("level", level.word()));
    }
    YAMLFactory factory =
        YAMLFactory.builder()
            .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
            .disable(YAMLGenerator.Feature.SPLIT_LINES)
            .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
            .build();
    try {
      return HEAD + new YAMLMapper(factory).writeValueAsString(node);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(ObjectNode out, Plan.Setup setup) {
    put(out, "bench", setup.bench());
    out.put("kind", setup.kind());
    put(out, "neck", setup.neck() == null ? Plan.REAL : setup.neck().word());
    if (setup.neck() != null) {
      out.put("seed", setup.seed());
    }
  }

  private static void put(ObjectNode out, String key, @Nullable String value) {
    if (value != null) {
      out.put(key, value);
    }
  }
}
