package quarterturn.lesson.student;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Quantity;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;

/**
 * A bench at work in a lesson: its sessions, and what the lesson puts before their prompts. A
 * prompt is given out only when nothing comes before it, so that no face can show a reading early.
 *
 * <p>An answer goes on record in the session first. What came of it is read from that record and
 * written into the lesson, after a crash as at any other time. One thread may look for the desk's
 * orders while another answers.
 */
public final class LessonSession implements Bench, Closeable {
  private static final String LATER =
      "How the neck really was is shown once every bench on it is done: join again then.";

  private final LessonBench file;
  private final Plan plan;
  private final Path folder;
  private final Clock clock;
  private final BenchSessions course;
  private final Signing signing;
  private final List<Event> earlier = new ArrayList<>();
  private final List<Library> libraries = new ArrayList<>();
  private BenchSessions.Run run;
  private int at;
  private boolean open;
  private boolean left;
  private List<WriterLog> logs = List.of();
  private Map<String, Long> lengths = Map.of("", 0L);

  /**
   * Opens a bench's session, or goes on with it.
   *
   * @param file of the bench, which is closed with this
   */
  public LessonSession(LessonBench file, Plan plan, Path folder, Clock clock, BenchSessions course)
      throws IOException, UnreadableException {
    this.file = file;
    this.plan = plan;
    this.folder = folder;
    this.clock = clock;
    this.course = course;
    this.signing = new Signing(folder);
    this.run = course.open(0);
    libraries.add(run.library());
    while (run.asked() instanceof Prompt.Done && next()) {
      // This procedure is done; what was still to be said about it is asked at the next prompt.
    }
  }

  /** Goes on to the plan's next procedure; false where there is none, or a repairer comes first. */
  public synchronized boolean next() throws IOException, UnreadableException {
    if (!(run.asked() instanceof Prompt.Done) || lastOfAll()) {
      return false;
    }
    earlier.addAll(run.events());
    run.close();
    at++;
    open = false;
    run = course.open(at);
    libraries.add(run.library());
    return true;
  }

  private boolean lastOfAll() {
    return at + 1 >= plan.procedures().size();
  }

  /** The bench's lesson so far. */
  public synchronized BenchLesson lesson() {
    return file.lesson();
  }

  public Plan plan() {
    return plan;
  }

  @Override
  public List<String> news() {
    return run.bench().news();
  }

  @Override
  public synchronized Map<Quantity, Plausible> plausible() {
    return run.bench().plausible();
  }

  private Instant time() {
    return clock.instant();
  }

  /** The gate that the bench stands at now. */
  public synchronized Gate gate() throws RefusedException, IOException {
    Gate gate = file.gate(moment(), plan, time());
    correct();
    open = gate instanceof Gate.Open;
    return gate;
  }

  private Moment moment() {
    Prompt asked = run.asked();
    PromptText said = asked.said();
    List<LessonQuestion> asks = Questions.at(run.library(), said.procedure(), said.step());
    Round way = lesson().pending(true);
    // Once it is locked, it stands until the turn is made.
    boolean turns = (way == null || way.shown() == null) && run.asksForTurn();
    return moments().at(asked, lesson().recent(), turns, asks);
  }

  private Moments moments() {
    List<Event> all = new ArrayList<>(earlier);
    all.addAll(run.events());
    return new Moments(all);
  }

  /** Notes an answer that was given again as its round's result, in place of the first. */
  private void correct() throws RefusedException, IOException {
    for (Round round : lesson().recent()) {
      Value came = round.result() == null ? null : moments().came(round);
      if (came != null && !came.equals(round.result()) && lesson().keptBy().isEmpty()) {
        file.record(new LessonEvent.Resulted(time(), round.n(), came));
      }
    }
  }

  /** Takes the desks' orders, and says now and then that the bench is there. */
  public synchronized void look() throws RefusedException, IOException {
    signing.look(lesson().bench(), time());
    try {
      Map<String, Long> now = LessonFolder.lengths(folder, lesson().bench());
      if (!now.equals(lengths)) {
        logs = LessonFolder.read(folder).logs();
        lengths = now;
      }
    } catch (IOException e) {
      // A shared folder may be away for a while; orders are taken when it is back.
      return;
    }
    List<WriterLog> ours =
        logs.stream()
            .filter(log -> log.header() != null && log.header().lesson().equals(plan.lesson()))
            .toList();
    file.take(ours, time());
  }

  /** The questions to think about before the reading at hand; a turn's own is what is asked. */
  synchronized List<String> before() {
    return plan.questions() == Questioning.FEW || !(run.asked() instanceof Prompt.Measure)
        ? List.of()
        : asks()
            .filter(ask -> ask.kind() == LessonQuestion.Kind.PREDICT)
            .map(LessonQuestion::question)
            .toList();
  }

  /** The questions of a step at which nothing is predicted, to be talked about. */
  synchronized List<String> talk() {
    Prompt asked = run.asked();
    return plan.questions() != Questioning.ALL
            || asked instanceof Prompt.Measure
            || asked instanceof Prompt.TurnRod
        ? List.of()
        : asks().map(LessonQuestion::question).toList();
  }

  private Stream<LessonQuestion> asks() {
    PromptText said = run.asked().said();
    return Questions.at(run.library(), said.procedure(), said.step()).stream();
  }

  /** Who types for all on this page, in turns; empty where a student is alone. */
  synchronized String typist() {
    List<String> here = lesson().students();
    return here.size() < 2 ? "" : here.get(lesson().rounds().size() % here.size());
  }

  /** The line that says who begins to type; none where a student is alone. */
  synchronized List<String> typing() {
    String who = typist();
    return who.isEmpty() ? List.of() : List.of("Each types a row, " + who + " first.");
  }

  /** The number of the prompt at hand among the prompts of the bench's sessions, from one. */
  public synchronized int asked() {
    return moment().spot().asked();
  }

  /**
   * The prompt at hand, for its kind and place only: its text may be shown once the gate is open.
   */
  public synchronized Prompt coming() {
    return run.asked();
  }

  /** The steps of the worked example before a reading, as far as the bench's level shows them. */
  public synchronized List<String> worked(boolean all) {
    Prompt asked = run.asked();
    if (!(asked instanceof Prompt.Measure)) {
      // What is written at a turn tells the turn.
      return List.of();
    }
    return Fade.worked(asked, all ? Level.WORKED : lesson().level());
  }

  /** A student sits down. */
  public synchronized void come(String student) throws RefusedException, IOException {
    file.record(plan.came(time(), student));
  }

  /** A student leaves the bench. */
  public synchronized void go(String student) throws RefusedException, IOException {
    file.record(new LessonEvent.Went(time(), student));
  }

  /**
   * Stops the bench until the teacher lets it go on. Who stopped it is not asked.
   *
   * @param reason empty where none is given
   */
  public synchronized void stop(String reason) throws RefusedException, IOException {
    String said = reason.strip();
    file.record(new LessonEvent.Stopped(time(), said.isEmpty() ? null : said));
  }

  /** Locks a prediction. */
  public synchronized void predict(int round, String student, Prediction prediction)
      throws RefusedException, IOException {
    file.record(new LessonEvent.Predicted(time(), round, student, prediction));
  }

  /** A student's own reading. */
  public synchronized void read(int round, String student, Bracket bracket)
      throws RefusedException, IOException {
    file.record(new LessonEvent.BlindRead(time(), round, student, bracket));
  }

  /** What this student's leaves show on a simulated neck; null on a real one. */
  public synchronized @Nullable Bracket leaves(int round, String student) {
    PracticeBench practice = run.practice();
    int hand = (plan.lesson() + "/" + lesson().bench() + "/" + round + "/" + student).hashCode();
    return practice == null ? null : practice.another(new SplittableRandom(hand));
  }

  /**
   * Notes what a student made of a round's result.
   *
   * @param reason null where it was not asked of this student
   * @param answer to the round's question, or null where it has none
   */
  public synchronized void reflect(
      Round on, String student, @Nullable String reason, @Nullable String answer, boolean missed)
      throws RefusedException, IOException {
    String question = on.opened().question();
    file.record(
        new LessonEvent.Reflected(time(), on.n(), student, reason, question, answer, missed));
  }

  /** Notes why students think that a turn went its way; null where a student typed nothing. */
  synchronized void reflect(Round on, String student, @Nullable String reason)
      throws RefusedException, IOException {
    file.record(on.way(time(), student, reason));
  }

  /** A question with what there is to choose from; one that no procedure has any more, without. */
  synchronized Choice choice(String question) {
    LessonQuestion ask = Questions.named(libraries, question);
    return new Choice(
        ask != null
            ? ask
            : new LessonQuestion(LessonQuestion.Kind.CHECK, question, null, null, List.of()));
  }

  /** The round numbered {@code round}. */
  public synchronized Round round(int n) {
    return Objects.requireNonNull(lesson().round(n), "there is no such round");
  }

  /**
   * The lines told once all have answered what was asked after a reading; for a turn only why it
   * went its way, where somebody had predicted another.
   */
  synchronized List<String> debrief(Round round) {
    String question = round.opened().question();
    LessonQuestion ask = question == null ? null : Questions.named(libraries, question);
    if (round.opened().turn() && ask == null) {
      return Debrief.way(round);
    }
    return round.predictions().isEmpty() ? List.of() : Debrief.lines(round, lesson(), ask);
  }

  /** Questions that a student missed in earlier lessons and was not asked again yet. */
  public synchronized List<String> due(String student) {
    Set<String> asked = new HashSet<>();
    for (LessonEvent event : file.events()) {
      if (event instanceof LessonEvent.AskedAgain again && again.student().equals(student)) {
        asked.add(again.question());
      }
    }
    return Returning.due(logs, plan.lesson(), student, season()).stream()
        .filter(question -> !asked.contains(question))
        .toList();
  }

  private boolean season() {
    Limits.Recheck season = run.library().limits().rechecks().season();
    return plan.procedures().contains(season.procedure());
  }

  /** Takes the answer to a question of an earlier lesson, and returns what speaks for it. */
  synchronized List<String> askedAgain(String student, Choice asked, String typed)
      throws RefusedException, IOException {
    Choice.Made made = asked.made(typed);
    String question = asked.ask().question();
    file.record(
        new LessonEvent.AskedAgain(
            time(), student, question, made.answer(), made.missed(), season()));
    return Questions.key(asked.ask());
  }

  /** The duties in the part at hand, or an empty text where a student is alone. */
  public synchronized String duties() {
    return Duties.words(lesson().students(), Math.max(1, Duties.moves(file.events())));
  }

  /**
   * The prompt as the bench's level shows it. While its gate is not open, a prompt that says only
   * that something comes before.
   */
  @Override
  public synchronized Prompt prompt() {
    if (open && run.asked().ended() && run.practice() != null && !lesson().over() && !alone()) {
      // Others may still predict what this would tell.
      return run.asked().noting(List.of(LATER));
    }
    if (open) {
      return Fade.of(run.bench().prompt(), lesson().level());
    }
    PromptText said = run.asked().said();
    String text = "Something comes before this step.";
    return new Prompt.Tell(
        new PromptText(
            said.procedure(), said.step(), said.part(), text, null, List.of(), null, List.of()));
  }

  /** Whether nobody else is still at work on this bench's neck. */
  private boolean alone() {
    Plan.Setup neck = plan.forBench(lesson().name());
    return logs.stream()
        .filter(log -> log.header() != null && log.header().role() == WriterLog.Part.BENCH)
        .filter(log -> log.header() != null && log.header().lesson().equals(plan.lesson()))
        .map(log -> BenchLesson.of(log.header().writer(), plan.level(), log.events()))
        .filter(other -> !other.bench().equals(lesson().bench()))
        .filter(other -> Objects.equals(neck, plan.forBench(other.name())))
        .allMatch(BenchLesson::gone);
  }

  /** What a simulated neck really was, where its session has ended. */
  synchronized List<String> unveiled() {
    return run.asked().ended() && run.practice() != null
        ? run.bench().prompt().said().notes()
        : List.of();
  }

  @Override
  public synchronized void answer(Answer answer) throws RefusedException, IOException {
    look();
    Gate gate = gate();
    boolean back = answer instanceof Answer.Correct && gate instanceof Gate.Reflect;
    if (!(gate instanceof Gate.Open) && !back) {
      throw new RefusedException(GateWords.shortly(gate));
    }
    run.bench().answer(answer);
    gate();
  }

  @Override
  public synchronized Overview overview() {
    Overview overview = run.bench().overview();
    return overview.of(run.practice() == null ? overview.instrument() : "Simulated instrument");
  }

  @Override
  public synchronized Instant now() {
    return run.bench().now();
  }

  @Override
  public synchronized void setClock(Instant to) throws RefusedException {
    run.bench().setClock(to);
  }

  @Override
  public synchronized String leave() throws IOException {
    left = true;
    return run.leave();
  }

  @Override
  public synchronized String standing() {
    return run.bench().standing();
  }

  @Override
  public synchronized void close() throws IOException {
    try (LessonBench lesson = file) {
      Prompt last = run.asked();
      boolean finished = last.ended() && (last instanceof Prompt.HandOver || lastOfAll());
      run.close();
      signing.end(lesson.lesson().bench());
      if (left || finished) {
        lesson.record(new LessonEvent.Left(time(), finished));
      }
    } catch (RefusedException e) {
      throw new IOException(e.getMessage(), e);
    }
  }
}
