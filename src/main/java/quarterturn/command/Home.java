package quarterturn.command;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jline.terminal.Terminal;
import quarterturn.line.LineHome;
import quarterturn.line.Typing;
import quarterturn.procedure.Role;
import quarterturn.procedure.Unreadable;
import quarterturn.rehearsal.NamedNeck;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.report.Dates;
import quarterturn.screen.HomeChoice;
import quarterturn.screen.HomeFace;
import quarterturn.screen.HomeItem;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.Surface;
import quarterturn.screen.SystemTerminal;
import quarterturn.session.Player;
import quarterturn.session.Store;
import quarterturn.unit.NotUnderstood;

/** The home view: unfinished sessions, what is due, and a start. */
final class Home {
  private static final String RELIEF =
      "Bring the curve of the neck into this player's window. You need a capo, feeler leaves, a"
          + " pitch meter, the key for the rod nut and eye protection.";

  private static final String REHEARSE =
      "Practise without an instrument. Nothing can break, and at the end you see the neck as it"
          + " really was.";
  private static final String WATCH = "See how it is done: a rehearsal that plays by itself.";

  private final Desk desk;
  private final Looks looks;

  Home(Desk desk, Looks looks) {
    this.desk = desk;
    this.looks = looks;
  }

  int open() throws IOException, Unreadable, InterruptedException {
    Faces faces = looks.faces();
    return switch (faces.kind()) {
      case SCREEN -> onScreen(faces);
      case TYPED -> typed(faces);
      case SCRIPT ->
          throw new NotUnderstood(
              "--lines needs a command: start relief --lines, or resume --lines");
    };
  }

  private int onScreen(Faces faces) throws IOException, Unreadable, InterruptedException {
    List<LineHome.Item> unfinished = items();
    List<HomeItem> shown =
        unfinished.stream()
            .map(item -> new HomeItem(item.what(), item.name(), item.due()))
            .toList();
    List<HomeItem> starts =
        List.of(
            new HomeItem("Neck relief", RELIEF, ""),
            new HomeItem("Rehearse on a simulated neck", REHEARSE, ""),
            new HomeItem("Watch a rehearsal", WATCH, ""));
    ScreenFace.Outcome outcome;
    try (Terminal terminal = SystemTerminal.open()) {
      try (Surface surface = Surface.open(terminal, faces.settings(terminal))) {
        HomeChoice choice = HomeFace.run(surface, shown, starts);
        if (choice instanceof HomeChoice.Interrupted) {
          return ScreenFace.INTERRUPTED;
        }
        if (choice instanceof HomeChoice.Quit) {
          return ScreenFace.DONE;
        }
        outcome = played(surface, chosen(choice, unfinished));
      }
      ScreenFace.say(terminal, outcome);
    }
    return outcome.status();
  }

  private static LineHome.Choice chosen(HomeChoice choice, List<LineHome.Item> unfinished) {
    if (choice instanceof HomeChoice.Resume resume) {
      return new LineHome.Choice.Resume(unfinished.get(resume.index()).name());
    }
    int index = choice instanceof HomeChoice.Start start ? start.index() : 0;
    return index == 0 ? new LineHome.Choice.Start() : new LineHome.Choice.Rehearse(index == 2);
  }

  private ScreenFace.Outcome played(Surface surface, LineHome.Choice choice)
      throws IOException, Unreadable, InterruptedException {
    ZoneId zone = ZoneId.systemDefault();
    if (choice instanceof LineHome.Choice.Rehearse rehearse) {
      PracticeBench bench = practice(rehearse);
      return rehearse.watch()
          ? ScreenFace.watch(surface, new Player(bench, bench::truth, 1), zone)
          : ScreenFace.run(surface, bench, zone);
    }
    try (Desk.Opened opened = opened(choice)) {
      return ScreenFace.run(surface, opened.bench(), zone);
    }
  }

  /** One to watch goes well; one to practise on may be any. */
  private PracticeBench practice(LineHome.Choice.Rehearse rehearse) throws IOException, Unreadable {
    Practice practice = Practice.usual(desk);
    return rehearse.watch()
        ? practice.on(NamedNeck.TOO_MUCH)
        : practice.on(new Random().nextInt(Practice.NUMBERED));
  }

  private int typed(Faces faces) throws IOException, Unreadable {
    try (Typing typing = faces.typing()) {
      LineHome.Choice choice = LineHome.ask(items(), typing.source(), typing.out());
      if (choice instanceof LineHome.Choice.Quit quit) {
        return quit.interrupted() ? 130 : 0;
      }
      if (choice instanceof LineHome.Choice.Rehearse rehearse) {
        PracticeBench bench = practice(rehearse);
        return rehearse.watch()
            ? faces.watched(typing, new Player(bench, bench::truth, 1))
            : Faces.typed(typing.source(), typing, bench);
      }
      try (Desk.Opened opened = opened(choice)) {
        return faces.typed(typing, opened);
      }
    }
  }

  private Desk.Opened opened(LineHome.Choice choice) throws IOException, Unreadable {
    return choice instanceof LineHome.Choice.Resume resume
        ? desk.resume(resume.name())
        : desk.start(new Desk.Wish("relief", null, null, null, Role.BEGINNER));
  }

  private List<LineHome.Item> items() throws IOException {
    List<LineHome.Item> items = new ArrayList<>();
    Instant now = desk.clock().instant();
    Dates dates = new Dates(desk.clock().getZone());
    for (Store.Glance glance : desk.unfinished()) {
      String instrument =
          glance.instrument() != null
              ? glance.instrument()
              : glance.kind() != null ? glance.kind() : "an instrument without a name";
      Instant started = glance.started() == null ? now : glance.started();
      String what =
          glance.procedure() + " on " + instrument + ", begun " + dates.seenFrom(now, started);
      items.add(new LineHome.Item(glance.name(), what, due(glance, now)));
    }
    return items;
  }

  /** What is due, in words. */
  private static String due(Store.Glance glance, Instant now) {
    Instant until = glance.waitingUntil();
    if (until != null && until.isAfter(now)) {
      return "Waiting, " + Dates.lasting(Duration.between(now, until)) + " to go";
    }
    if (until != null) {
      return "The wait is over: read again";
    }
    return glance.standing() == null ? "Go on" : "Left with " + glance.standing();
  }
}
