package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Readings;
import quarterturn.unit.Turn;

/** Kinds, hazards and limits as they are read. */
public class LibraryFilesTest {
  public static final String KINDS =
      """
      kinds:
        - kind: invented-bass
          name: An invented bass
          scale: 34 in
          strings: [E1, A1, D2, G2]
          frets: 20
          joint-fret: 17
          read-at: 8
          rod: bass
          relief:
            light: {window: 0.15..0.30 mm, source: invented}
            medium: {window: 12..18 thou, source: invented}
            hard: {window: "0.35..0.50 mm", source: invented}
      """;

  public static final String HAZARDS =
      """
      hazards:
        - hazard: string-break
          word: WARNING
          harm: A string can break.
          avoid: Wear eye protection.
        - hazard: key-slips
          word: NOTICE
          harm: The key can slip.
          avoid: Seat it to full depth.
      """;

  @Test
  void aKind() throws UnreadableException {
    Map<String, Kind> kinds = Readings.kinds("kinds.yaml", Readings.utf8(KINDS));
    assertThat(kinds.keySet()).containsExactly("invented-bass");
    Kind kind = kinds.values().iterator().next();
    // Inches to millimetres by definition: 25.4.
    assertThat(kind.scale().mm()).isWithin(1e-9).of(863.6);
    assertThat(kind.strings()).containsExactly("E1", "A1", "D2", "G2").inOrder();
    assertThat(List.of(kind.frets(), kind.jointFret(), kind.readAt()))
        .containsExactly(20, 17, 8)
        .inOrder();
    assertThat(kind.prior()).isEqualTo(Prior.BASS);
    assertThat(kind.target(Style.LIGHT))
        .isEqualTo(new Kind.Target(new Window(0.15, 0.30), "invented"));
    assertThat(kind.target(Style.MEDIUM).window().lowMm()).isWithin(1e-9).of(0.3048);
    assertThat(kind.target(Style.MEDIUM).window().highMm()).isWithin(1e-9).of(0.4572);
    assertThat(kind.target(Style.HARD).window()).isEqualTo(new Window(0.35, 0.50));
  }

  @Test
  void hazardsKeepTheirOrder() throws UnreadableException {
    Map<String, Hazard> hazards = Readings.hazards("hazards.yaml", Readings.utf8(HAZARDS));
    assertThat(hazards.values())
        .containsExactly(
            new Hazard(
                "string-break",
                Hazard.Word.WARNING,
                "A string can break.",
                "Wear eye protection.",
                List.of(),
                List.of()),
            new Hazard(
                "key-slips",
                Hazard.Word.NOTICE,
                "The key can slip.",
                "Seat it to full depth.",
                List.of(),
                List.of()))
        .inOrder();
  }

  /** The values are our policy on common practice, no source. */
  @Test
  void theLimitsThatComeWithTheProgram() throws UnreadableException {
    Limits limits = Readings.limits("limits.yaml", Readings.bytes("/safety/limits.yaml"));
    assertThat(limits)
        .isEqualTo(
            new Limits(
                Turn.QUARTER,
                Turn.EIGHTH,
                Turn.SIXTEENTH,
                new Turn(0.5),
                24,
                new Turn(1),
                2,
                4,
                4,
                2,
                2,
                5,
                60,
                120,
                Set.of(Feel.JAMMED, Feel.NOISE, Feel.SLIPPED),
                Set.of(
                    "jammed",
                    "noise",
                    "slipped",
                    "stiffer",
                    "stripped",
                    "no-response",
                    "wrong-way",
                    "end-of-travel",
                    "limit",
                    "damage"),
                Set.of("noise", "damage"),
                Set.of(Fact.ROD_IDENTIFIED, Fact.KEY_FITS),
                Set.of(Fact.DETUNED),
                Set.of(Fact.DETUNED),
                List.of("tool-slip", "rod-force", "wrong-key"),
                Duration.ofHours(24),
                new Turn(1),
                3,
                Duration.ofHours(6),
                Duration.ofDays(7),
                new Limits.Clocks(Duration.ofMinutes(10), Duration.ofDays(400)),
                0.15,
                0.25,
                new Limits.Answers(0.05, 0.02, 0.20, Turn.EIGHTH),
                new Limits.Climate(Duration.ofDays(7), 10),
                new Limits.Rechecks(
                    new Limits.Recheck(
                        Duration.ofHours(24),
                        "relief-check",
                        "A day after the rod was turned, read the relief again.",
                        "a day after the last turn: the relief"),
                    new Limits.Recheck(
                        Duration.ofDays(7),
                        "relief-check",
                        "A week after the rod was turned, read the relief again.",
                        "a week on: pitch, relief and action, as the wood comes to rest"),
                    new Limits.Recheck(
                        Duration.ofDays(90),
                        "season",
                        "A season after the last session, see whether the instrument has moved.",
                        "a season on: the whole of it, as the air becomes another"),
                    2,
                    Duration.ofDays(7))));
  }
}
