package quarterturn.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Instrument;
import quarterturn.session.store.Trait;
import quarterturn.session.store.Traits;

/** An instrument's facts in words: its own, and what its kind says where it has none. */
public final class InstrumentFacts {
  private InstrumentFacts() {}

  /**
   * Labels and values for its page.
   *
   * @param kind null where the files no longer know it
   */
  public static Map<String, String> of(Instrument instrument, @Nullable Kind kind) {
    Map<Trait, String> traits = Traits.of(instrument);
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Name", instrument.name());
    for (Trait trait : Trait.values()) {
      String own = traits.get(trait);
      String usual = kind == null ? null : Traits.usual(trait, traits, kind);
      if (trait == Trait.KIND) {
        facts.put(trait.label(), kind == null ? instrument.kind() : kind.name());
      } else if (own != null) {
        facts.put(trait.label(), value(trait, own));
      } else if (usual != null) {
        facts.put(trait.label(), trait == Trait.JOINT_FRET ? "fret " + usual : usual);
      } else if (trait == Trait.STYLE) {
        facts.put(trait.label(), "asked each time");
      }
    }
    return facts;
  }

  /** A fret is named as one, and a window is printed as windows are. */
  private static String value(Trait trait, String text) {
    return trait == Trait.JOINT_FRET
        ? "fret " + text
        : trait.aim() == null ? text : text.replace("..", " to ") + " (its own)";
  }
}
