package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.engine.Engine;

/**
 * An instrument of a kind, made in one of the ways that instruments are made.
 *
 * @param recorded whether its owner has said so beforehand
 */
record Build(Kind kind, BridgeKind bridge, RodKind rod, boolean recorded) {
  /** Every kind with every bridge and rod; a kind without a rod has none in any build. */
  static List<Build> of(Iterable<Kind> kinds) {
    List<Build> all = new ArrayList<>();
    for (Kind kind : kinds) {
      for (BridgeKind bridge : BridgeKind.values()) {
        for (RodKind rod : RodKind.values()) {
          if (kind.make().rod() || rod == RodKind.NONE_FITTED) {
            all.add(new Build(kind, bridge, rod, false));
            all.add(new Build(kind, bridge, rod, true));
          }
        }
      }
    }
    return all;
  }

  /** A technician before it; it needs everything. */
  PracticeBench bench(Library library) throws Exception {
    Kind made = made();
    InstrumentTraits traits = NamedNeck.NEGLECTED.on(made, Style.MEDIUM);
    SimulatedNeck neck = new SimulatedNeck(traits.neck(), new SplittableRandom(1));
    return PracticeBench.start(
        library,
        new Engine(library, new BeliefAdvisor()),
        new Event.Started(
            Rehearsal.START,
            library.main().id(),
            1,
            "digest",
            Role.TECHNICIAN,
            "demo",
            kind.id(),
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            recorded ? own() : null,
            null),
        new SimulatedInstrument(traits, neck, made),
        "Hello.",
        PracticeBench.Kept.NOWHERE);
  }

  private Event.Own own() {
    boolean fixed = bridge == BridgeKind.FIXED;
    return new Event.Own(
        null, List.of(), List.of(), null, fixed, Map.of(), null, bridge, null, rod);
  }

  private Kind made() {
    Make make = kind.make();
    return new Kind(
        kind.id(),
        kind.name(),
        kind.scale(),
        kind.strings(),
        kind.frets(),
        kind.jointFret(),
        kind.readAt(),
        kind.prior(),
        kind.windows(),
        new Make(
            make.radius(),
            make.spread(),
            make.gauges(),
            bridge,
            make.bassScale(),
            make.course(),
            make.fretless(),
            rod != RodKind.NONE_FITTED,
            make.soundHole(),
            make.special()));
  }

  /** The true answer, also to what a simulated instrument does not show. */
  Answer answer(PracticeBench bench) {
    String step = bench.prompt().said().step();
    String shows =
        step.equals("rod-kind")
            ? rod.word()
            : step.equals("build") && bridge == BridgeKind.FLOATING ? "locking-nut" : null;
    return shows(bench.prompt(), shows) ? new Answer.Chose(String.valueOf(shows)) : bench.truth();
  }

  private static boolean shows(Prompt prompt, @Nullable String option) {
    return prompt instanceof Prompt.Choose choose
        && choose.options().stream().anyMatch(one -> one.id().equals(option));
  }

  @Override
  public String toString() {
    return String.join(" ", kind.id(), bridge.word(), rod.word(), recorded ? "on record" : "asked");
  }
}
