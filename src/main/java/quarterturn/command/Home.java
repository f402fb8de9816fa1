package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.Set;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.UnreadableException;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.report.HomeItems;
import quarterturn.session.Dialogue;
import quarterturn.session.Due;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;
import quarterturn.session.store.Dues;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Dates;

/** The home view: unfinished sessions, what is due, and a start. */
record Home(Sessions sessions, Looks looks) {
  int open() throws IOException, UnreadableException, InterruptedException {
    HomeDialogue dialogue = dialogue();
    try (Face face = looks.faces(sessions.clock().getZone()).open()) {
      if (face.ask(dialogue) == Dialogue.End.INTERRUPTED) {
        return ExitStatus.INTERRUPTED;
      }
      HomeDialogue.Choice choice = dialogue.choice();
      if (choice instanceof HomeDialogue.Choice.Resume resume) {
        return face.play(sessions, sessions.beginning(resume.session()));
      } else if (choice instanceof HomeDialogue.Choice.Begin begin) {
        Sessions.Wish wish =
            new Sessions.Wish(begin.procedure(), begin.instrument(), null, null, begin.role());
        return face.start(sessions, wish);
      } else if (choice instanceof HomeDialogue.Choice.Rehearse rehearse) {
        return rehearsed(face, rehearse.watch());
      }
      return ExitStatus.DONE;
    }
  }

  /** Plays a rehearsal: a neck with too much relief to watch, any simulated neck to practise on. */
  private int rehearsed(Face face, boolean watch)
      throws IOException, UnreadableException, InterruptedException {
    Practice practice = Practice.usual(sessions);
    if (!watch) {
      return face.play(practice.on(new Random().nextInt(Practice.NUMBERED)), null);
    }
    PracticeBench bench = practice.on(NamedNeck.TOO_MUCH);
    return face.watch(new Player(bench, bench::truth, 1));
  }

  /** The home view's dialogue; the sessions are read once for it, and no procedure is. */
  private HomeDialogue dialogue() throws IOException, UnreadableException {
    Instant now = sessions.clock().instant();
    Library rules = sessions.rules();
    Limits.Rechecks rechecks = rules.limits().rechecks();
    List<Store.Glance> glances = sessions.store().sessions();
    Set<String> instruments = sessions.store().instrumentNames();
    List<Due> dues = Dues.of(glances, instruments, rechecks, now);
    List<HomeDialogue.Item> begun =
        HomeItems.of(
            glances,
            Dues.pressing(dues, rechecks, now),
            now,
            new Dates(sessions.clock().getZone()));
    return new HomeDialogue(begun, rules.results(), instruments);
  }
}
