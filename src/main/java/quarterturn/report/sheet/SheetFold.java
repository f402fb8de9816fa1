package quarterturn.report.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.Labels;
import quarterturn.report.LeftAsIs;
import quarterturn.report.PlayedKind;
import quarterturn.report.SessionSteps;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.unit.Turn;

/** Makes a sheet from the events of a session that were not withdrawn. */
final class SheetFold {
  private final Library library;
  private final Library shipped;
  private final List<Sheet.Remark> notes = new ArrayList<>();
  private final List<Sheet.Remark> strings = new ArrayList<>();
  private final List<Sheet.Remark> findings = new ArrayList<>();
  private final Map<String, Sheet.Remark> hazards = new LinkedHashMap<>();
  private final List<Sheet.Move> moves = new ArrayList<>();
  private final List<Event.Adjusted> settings = new ArrayList<>();
  private final List<Sheet.Pause> waits = new ArrayList<>();
  private @Nullable String complaint;
  private final PlayedKind played;
  private final PlayTest playTest = new PlayTest();
  private final List<Event> before = new ArrayList<>();
  private Event.@Nullable Started started;
  private Event.@Nullable WaitBegan waiting;
  private Event.@Nullable Ended ended;
  private @Nullable String standing;
  private @Nullable Instant discarded;

  /** All events, and those that were not withdrawn. */
  private final List<Event> all;

  private final List<Event> events;

  /**
   * @param all the session's events, oldest first
   */
  SheetFold(List<Event> all, Library library, Library shipped) {
    this.all = List.copyOf(all);
    this.library = library;
    this.shipped = shipped;
    this.events = Corrections.standing(all);
    this.played = PlayedKind.of(events, library);
  }

  Sheet of(String session) {
    if (!events.isEmpty() && events.get(0) instanceof Event.Started first) {
      started = first;
    }
    SessionSteps steps = new SessionSteps(library, all);
    for (Event event : events) {
      take(event, steps);
      before.add(event);
    }
    if (waiting != null) {
      Sheet.Stop at = stop(steps, waiting, waiting.step());
      waits.add(
          new Sheet.Pause(waiting.step(), at, true, waiting.at(), waiting.until(), null, null));
    }
    SheetChanges changes = new SheetChanges(events, new SessionSteps(library, all), library);
    SheetRows rows =
        new SheetRows(
            events, played.kind(), played.style(), changes, new SessionSteps(library, all));
    Instant last = events.isEmpty() ? null : events.get(events.size() - 1).at();
    return new Sheet(
        heading(session),
        complaint,
        notes,
        strings,
        findings,
        rows.rows(),
        playTest.both(),
        rod(),
        settings,
        waits,
        List.copyOf(hazards.values()),
        rows.readings(),
        SheetOpen.of(all, rows.rows(), library).points(moves, ended),
        ended,
        ended == null ? standing : null,
        care(rows.rows()),
        next(last));
  }

  private void take(Event event, SessionSteps steps) {
    event
        .match(
            new Event.Cases<Runnable>(
                this::unsaid,
                accepted -> () -> accepted(accepted, steps),
                told -> () -> newStrings(told, steps, "", fitted(steps.change(told))),
                noted -> () -> noted(noted, steps),
                adjusted -> () -> settings.add(adjusted),
                chose -> () -> chose(chose, steps),
                this::unsaid,
                this::unsaid,
                this::unsaid,
                turned -> () -> move(turned.at(), turned.turn(), turned.feel(), true),
                did -> () -> move(did.at(), did.turned(), did.feel(), did.sure()),
                began -> () -> waiting = began,
                waited -> () -> waited(waited, steps),
                passed -> () -> passed(passed, steps),
                this::unsaid,
                this::unsaid,
                this::unsaid,
                left -> () -> standing = left.standing(),
                this::unsaid,
                end -> () -> ended = end,
                gone -> () -> discarded(gone)))
        .run();
  }

  /** Does nothing, for events that are told elsewhere on the sheet or not at all. */
  private Runnable unsaid(Event event) {
    return () -> {};
  }

  private void discarded(Event.Discarded gone) {
    standing = gone.standing();
    discarded = gone.at();
  }

  private void accepted(Event.Accepted accepted, SessionSteps steps) {
    Labels labels = steps.labels(accepted, accepted.step());
    String about = labels.step(accepted.step());
    for (String hazard : accepted.hazards()) {
      hazards.putIfAbsent(hazard, new Sheet.Remark(accepted.at(), about, labels.hazard(hazard)));
    }
  }

  private void passed(Event.Passed passed, SessionSteps steps) {
    if (steps.waits(passed.step())) {
      Instant at = passed.at();
      Sheet.Stop stop = stop(steps, passed, passed.step());
      waits.add(new Sheet.Pause(passed.step(), stop, false, at, at, at, passed.why()));
    }
  }

  private void noted(Event.Noted noted, SessionSteps steps) {
    Labels labels = steps.labels(noted, noted.step());
    Recorded what = records(labels, noted.step());
    if (what == Recorded.COMPLAINT) {
      complaint = noted.text();
      return;
    }
    if (noted.text().equals("-") || playTest.take(what, noted.step(), noted.text())) {
      return;
    }
    String about = labels.brief(noted.step());
    List<Sheet.Remark> to = what == Recorded.NEW_GAUGES ? strings : notes;
    to.add(new Sheet.Remark(noted.at(), about, noted.text()));
  }

  private @Nullable Recorded records(Labels labels, String step) {
    return labels.procedure() != null
        ? labels.records(step)
        : shipped.procedures().values().stream()
            .map(procedure -> procedure.steps().get(step))
            .filter(Objects::nonNull)
            .findFirst()
            .map(Step::records)
            .orElse(null);
  }

  private void chose(Event.Chose chose, SessionSteps steps) {
    boolean own = List.of(EngineQuestions.KIND, EngineQuestions.STYLE).contains(chose.step());
    if (LeftAsIs.left(chose, library.procedures().values())) {
      String left = LeftAsIs.words(before, played.kind(), played.style());
      findings.add(new Sheet.Remark(chose.at(), "Relief", left));
    } else if (!own) {
      Labels labels = steps.labels(chose, chose.step());
      String about = labels.asked(chose.step());
      String answer = labels.option(chose.step(), chose.option());
      if (labels.gives(chose.step())) {
        playTest.verdict(answer);
      }
      if (!newStrings(chose, steps, about, answer)
          && !playTest.take(records(labels, chose.step()), chose.step(), answer)) {
        findings.add(new Sheet.Remark(chose.at(), about, answer));
      }
    }
  }

  /** Words for a change of strings: "strings of another gauge, material or tuning". */
  private String fitted(@Nullable String change) {
    Results.Change known = change == null ? null : library.results().changes().get(change);
    return known == null ? String.valueOf(change) : known.name();
  }

  private boolean newStrings(Event event, SessionSteps steps, String about, String text) {
    String change = steps.change(event);
    boolean fresh = change != null && change.startsWith(SheetChanges.NEW);
    if (fresh) {
      strings.add(new Sheet.Remark(event.at(), about, text));
    }
    return fresh;
  }

  private void move(Instant at, Turn turn, @Nullable Feel feel, boolean sure) {
    if (turn.turns() != 0 || feel != null) {
      moves.add(new Sheet.Move(at, turn, feel, sure));
    }
  }

  private void waited(Event.Waited waited, SessionSteps steps) {
    boolean begun = waiting != null && waiting.step().equals(waited.step());
    Instant began = begun && waiting != null ? waiting.at() : waited.at();
    Instant until = begun && waiting != null ? waiting.until() : waited.at();
    Sheet.Stop stop = stop(steps, waited, waited.step());
    waits.add(
        new Sheet.Pause(waited.step(), stop, true, began, until, waited.at(), waited.reason()));
    waiting = null;
  }

  /** Where in the work an event happened. */
  static Sheet.Stop stop(SessionSteps steps, Event event, String step) {
    Labels labels = steps.labels(event, step);
    return new Sheet.Stop(labels.stage(), labels.part(step));
  }

  private Sheet.Rod rod() {
    Turn net = Turn.NONE;
    Turn total = Turn.NONE;
    for (Sheet.Move move : moves) {
      net = net.plus(move.turn());
      total = total.plus(move.turn().size());
    }
    return new Sheet.Rod(moves, net, total);
  }

  private Sheet.Heading heading(String session) {
    Kind known = played.kind();
    String id = started == null ? "" : started.procedure();
    Procedure procedure = library.procedures().get(id);
    return new Sheet.Heading(
        session,
        started == null ? null : started.instrument(),
        known == null ? played.id() : known.name(),
        played.style(),
        started == null ? null : started.role(),
        BenchTime.by(all),
        null,
        session.equals(Overview.REHEARSAL) ? null : BenchTime.of(all),
        procedure == null ? id : procedure.title(),
        started == null ? null : started.at(),
        ended == null ? discarded : ended.at());
  }

  /** How it is kept, where the curve of its neck and the height of its strings were set up. */
  private List<String> care(List<Sheet.Row> rows) {
    Set<Quantity> read = rows.stream().map(Sheet.Row::quantity).collect(Collectors.toSet());
    boolean whole = read.containsAll(Set.of(Quantity.RELIEF, Quantity.ACTION));
    return ended != null && !ended.handOver() && whole ? library.results().care() : List.of();
  }

  private List<Sheet.Again> next(@Nullable Instant last) {
    if (last == null || ended == null || ended.handOver()) {
      return List.of();
    }
    List<Sheet.Again> next = new ArrayList<>();
    Limits.Rechecks rechecks = library.limits().rechecks();
    moves.stream()
        .filter(move -> move.turn().turns() != 0)
        .reduce((one, other) -> other)
        .map(move -> again(move.at(), rechecks.day()))
        .filter(again -> again.at().isAfter(last))
        .ifPresent(next::add);
    next.add(again(last, rechecks.week()));
    next.add(again(last, rechecks.season()));
    return next;
  }

  private static Sheet.Again again(Instant from, Limits.Recheck recheck) {
    return new Sheet.Again(from.plus(recheck.after()), recheck.sheet());
  }
}
