package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jline.terminal.Terminal;
import quarterturn.line.LineHome;
import quarterturn.line.Typing;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.Role;
import quarterturn.procedure.UnreadableException;
import quarterturn.rehearsal.NamedNeck;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.report.Dates;
import quarterturn.screen.HomeChoice;
import quarterturn.screen.HomeFace;
import quarterturn.screen.HomeItem;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.terminal.Surface;
import quarterturn.screen.terminal.SystemTerminal;
import quarterturn.session.Due;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;
import quarterturn.session.store.Dues;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/** The home view: unfinished sessions, what is due, and a start. */
record Home(Sessions sessions, Looks looks) {
  private static final String REHEARSE =
      "Practise without an instrument. Nothing can break, and at the end you see the neck as it"
          + " really was.";
  private static final String WATCH = "See how it is done: a rehearsal that plays by itself.";

  int open() throws IOException, UnreadableException, InterruptedException {
    Faces faces = looks.faces();
    return switch (faces.kind()) {
      case SCREEN -> onScreen(faces);
      case TYPED -> typed(faces);
      case SCRIPT ->
          throw new NotUnderstoodException(
              "--lines needs a command: start relief --lines, or resume --lines");
    };
  }

  private int onScreen(Faces faces) throws IOException, UnreadableException, InterruptedException {
    Library rules = sessions.rules();
    HomeLine.Lines lines = lines(rules);
    Results results = rules.results();
    List<HomeItem> starts = new ArrayList<>();
    results.shown().forEach(offer -> starts.add(new HomeItem(offer.name(), offer.about(), "")));
    starts.add(new HomeItem("Rehearse on a simulated neck", REHEARSE, ""));
    starts.add(new HomeItem("Watch a rehearsal", WATCH, ""));
    ScreenFace.Outcome outcome;
    try (Terminal terminal = SystemTerminal.open()) {
      try (Surface surface = Surface.open(terminal, faces.settings(terminal))) {
        HomeChoice choice =
            HomeFace.run(
                surface,
                HomeLine.Lines.drawn(lines.due()),
                HomeLine.Lines.drawn(lines.unfinished()),
                starts);
        if (choice instanceof HomeChoice.Interrupted) {
          return ExitStatus.INTERRUPTED;
        }
        if (choice instanceof HomeChoice.Quit) {
          return ExitStatus.DONE;
        }
        outcome = played(surface, chosen(choice, lines, results));
      }
      ScreenFace.say(terminal, outcome);
    }
    return outcome.status();
  }

  private static LineHome.Choice chosen(HomeChoice choice, HomeLine.Lines lines, Results results) {
    if (choice instanceof HomeChoice.Due due) {
      return HomeLine.Lines.choice(lines.due(), due.index());
    }
    if (choice instanceof HomeChoice.Resume resume) {
      return HomeLine.Lines.choice(lines.unfinished(), resume.index());
    }
    int index = choice instanceof HomeChoice.Start start ? start.index() : 0;
    return LineHome.starts(results).get(index).choice();
  }

  private ScreenFace.Outcome played(Surface surface, LineHome.Choice choice)
      throws IOException, UnreadableException, InterruptedException {
    ZoneId zone = ZoneId.systemDefault();
    if (choice instanceof LineHome.Choice.Rehearse rehearse) {
      PracticeBench bench = practice(rehearse);
      return rehearse.watch()
          ? ScreenFace.watch(surface, new Player(bench, bench::truth, 1), zone)
          : ScreenFace.run(surface, bench, zone);
    }
    try (Sessions.Opened opened = opened(choice)) {
      return ScreenFace.run(surface, opened.bench(), zone);
    }
  }

  /** One to watch goes well; one to practise on may be any. */
  private PracticeBench practice(LineHome.Choice.Rehearse rehearse)
      throws IOException, UnreadableException {
    Practice practice = Practice.usual(sessions);
    return rehearse.watch()
        ? practice.on(NamedNeck.TOO_MUCH)
        : practice.on(new Random().nextInt(Practice.NUMBERED));
  }

  private int typed(Faces faces) throws IOException, UnreadableException {
    try (Typing typing = faces.typing()) {
      Library rules = sessions.rules();
      HomeLine.Lines lines = lines(rules);
      LineHome.Choice choice =
          LineHome.ask(
              HomeLine.Lines.typed(lines.due()),
              HomeLine.Lines.typed(lines.unfinished()),
              rules.results(),
              List.copyOf(sessions.store().instrumentNames()),
              typing.source(),
              typing.out());
      if (choice instanceof LineHome.Choice.Quit quit) {
        return quit.interrupted() ? ExitStatus.INTERRUPTED : ExitStatus.DONE;
      }
      if (choice instanceof LineHome.Choice.Rehearse rehearse) {
        PracticeBench bench = practice(rehearse);
        return rehearse.watch()
            ? faces.watched(typing, new Player(bench, bench::truth, 1))
            : Faces.typed(typing, bench, null);
      }
      try (Sessions.Opened opened = opened(choice)) {
        return Faces.typed(typing, opened.bench(), opened.notice());
      }
    }
  }

  private Sessions.Opened opened(LineHome.Choice choice) throws IOException, UnreadableException {
    if (choice instanceof LineHome.Choice.Resume resume) {
      return sessions.resume(resume.name());
    }
    if (choice instanceof LineHome.Choice.Begin begin) {
      return sessions.start(
          new Sessions.Wish(begin.procedure(), begin.instrument(), null, null, begin.role()));
    }
    String procedure = ((LineHome.Choice.Start) choice).procedure();
    return sessions.start(new Sessions.Wish(procedure, null, null, null, Role.BEGINNER));
  }

  /** The sessions are read once, and no procedure is. */
  private HomeLine.Lines lines(Library rules) throws IOException {
    Instant now = sessions.clock().instant();
    List<Store.Glance> glances = sessions.store().sessions();
    Limits.Rechecks rechecks = rules.limits().rechecks();
    List<Due> dues = Dues.of(glances, sessions.store().instrumentNames(), rechecks, now);
    return HomeLine.lines(
        glances, Dues.pressing(dues, rechecks, now), now, new Dates(sessions.clock().getZone()));
  }
}
