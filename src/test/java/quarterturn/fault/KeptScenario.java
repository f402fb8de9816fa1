package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Instrument;
import quarterturn.session.store.Store;

/**
 * Two instruments are added and changed, and a file of the user's is written over: each is as it
 * was or as it was to be, whole. The instruments are invented.
 */
final class KeptScenario implements Scenario {
  private static final Instant AT = Instant.parse("2027-03-01T09:00:00Z");
  private static final String OUT = "out/sheet.txt";

  /** What is written, in turn. */
  private static final List<String> SHEETS =
      List.of("one line\n", "a sheet\n".repeat(300), "a shorter one\n".repeat(20));

  private final Map<String, Instrument> kept = new TreeMap<>();
  private @Nullable Instrument next;
  private @Nullable String sheet;
  private @Nullable String nextSheet;

  private static Instrument instrument(String name, Style style) {
    return new Instrument(
        name, "bass-34", style, null, null, AT, Instrument.Build.UNKNOWN, Map.of());
  }

  @Override
  public void play(Path top) throws Exception {
    Store store = Store.at(top.resolve("data"));
    for (String name : List.of("practice-bass", "other-bass")) {
      next = instrument(name, Style.MEDIUM);
      store.add(next);
      kept.put(name, next);
    }
    Folders.make(top.resolve("out"));
    for (String text : SHEETS) {
      nextSheet = text;
      Folders.write(top.resolve(OUT), text.getBytes(StandardCharsets.UTF_8), sheet != null);
      sheet = text;
    }
    for (Style style : List.of(Style.LIGHT, Style.HARD)) {
      next = instrument("other-bass", style);
      store.replace(next);
      kept.put("other-bass", next);
    }
  }

  @Override
  public void check(Path top) throws Exception {
    Store store = Store.at(top.resolve("data"));
    Store.InstrumentList found = store.instruments();
    assertThat(found.notices()).isEmpty();
    List<Instrument> had = new ArrayList<>(kept.values());
    List<Instrument> anew = new ArrayList<>(had);
    if (next != null) {
      Instrument other = next;
      anew.removeIf(one -> one.name().equals(other.name()));
      anew.add(other);
    }
    assertThat(sorted(found.instruments())).isAnyOf(sorted(had), sorted(anew));
    Path out = top.resolve(OUT);
    String text = Files.exists(out) ? Files.readString(out) : null;
    assertWithMessage("the user's file").that(text).isAnyOf(sheet, nextSheet);
    goesOn(store);
  }

  /** Another instrument can be added, and each be changed. */
  private static void goesOn(Store store) throws Exception {
    for (Instrument one : store.instruments().instruments()) {
      store.replace(instrument(one.name(), Style.MEDIUM));
    }
    store.add(instrument("third-bass", Style.MEDIUM));
    assertThat(store.instrument("third-bass").name()).isEqualTo("third-bass");
  }

  private static List<String> sorted(List<Instrument> instruments) {
    return instruments.stream().map(Instrument::toString).sorted().toList();
  }
}
