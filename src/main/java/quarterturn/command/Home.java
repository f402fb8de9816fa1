package quarterturn.command;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jline.terminal.Terminal;
import quarterturn.line.LineHome;
import quarterturn.line.Typing;
import quarterturn.procedure.Role;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.screen.HomeChoice;
import quarterturn.screen.HomeFace;
import quarterturn.screen.HomeItem;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.Surface;
import quarterturn.screen.SystemTerminal;
import quarterturn.session.Store;
import quarterturn.unit.NotUnderstood;

/** The home view: unfinished sessions, what is due, and a start. */
final class Home {
  private static final String RELIEF =
      "Bring the curve of the neck into this player's window. You need a capo, feeler leaves, a"
          + " pitch meter, the key for the rod nut and eye protection.";

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
    HomeItem start = new HomeItem("Neck relief", RELIEF, "");
    ScreenFace.Outcome outcome;
    try (Terminal terminal = SystemTerminal.open()) {
      try (Surface surface = Surface.open(terminal, faces.settings(terminal))) {
        HomeChoice choice = HomeFace.run(surface, shown, List.of(start));
        if (choice instanceof HomeChoice.Interrupted) {
          return ScreenFace.INTERRUPTED;
        }
        if (choice instanceof HomeChoice.Quit) {
          return ScreenFace.DONE;
        }
        LineHome.Choice chosen =
            choice instanceof HomeChoice.Resume resume
                ? new LineHome.Choice.Resume(unfinished.get(resume.index()).name())
                : new LineHome.Choice.Start();
        try (Desk.Opened opened = opened(chosen)) {
          outcome = ScreenFace.run(surface, opened.bench(), ZoneId.systemDefault());
        }
      }
      ScreenFace.say(terminal, outcome);
    }
    return outcome.status();
  }

  private int typed(Faces faces) throws IOException, Unreadable {
    try (Typing typing = faces.typing()) {
      LineHome.Choice choice = LineHome.ask(items(), typing.source(), typing.out());
      if (choice instanceof LineHome.Choice.Quit quit) {
        return quit.interrupted() ? 130 : 0;
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
