package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.line.Invented;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Library;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class SessionLogTest {
  @Test
  void everyEventIsOneDatedLine() {
    assertThat(SessionLog.lines("2027-03-01-demo", Told.everything(), Labels.none(), Told.DATES))
        .containsExactly(
            "Session:   2027-03-01-demo",
            "Procedure: relief, revision 3 (SHA-256 0123abcd)",
            "Name:      Demo bass",
            "Kind:      demo-bass",
            "Playing:   medium",
            "Joint:     fret 16",
            "Role:      beginner",
            "Began:     2027-03-01 10:00",
            "Earlier:   2026-11-02 09:00 rod tightened 1/8 turn, from 0.50 to 0.55 mm",
            "",
            "2027-03-01 10:00  Began relief as beginner.",
            "2027-03-01 10:01  Done: support neck.",
            "2027-03-01 10:02  Understood before \"retune\": string whip.",
            "2027-03-01 10:03  Chose at \"rod place\": headstock.",
            "2027-03-01 10:04  Read humidity: 48 %.",
            "2027-03-01 10:05  Read relief on the lowest string (E): 0.70 to 0.75 mm, held at frets"
                + " 1 and 17, read over fret 8.",
            "2027-03-01 10:06  Correction: this is withdrawn: Read relief on the lowest string (E):"
                + " 0.70 to 0.75 mm, held at frets 1 and 17, read over fret 8.",
            "2027-03-01 10:07  Read relief on the lowest string (E): 0.60 to 0.65 mm, held at frets"
                + " 1 and 17, read over fret 8.",
            "2027-03-01 10:08  Read relief on the highest string (G): 0.55 to 0.60 mm, held at"
                + " frets 1 and 17, read over fret 8.",
            "2027-03-01 10:09  Asked for: loosen 1/8 turn.",
            "2027-03-01 10:10  Rod loosened 1/8 turn. It turned smoothly, with even resistance.",
            "2027-03-01 10:11  Began to wait until 2027-03-01 10:21.",
            "2027-03-01 10:21  The wait is over.",
            "2027-03-01 10:22  Read relief on the lowest string (E): 0.65 to 0.70 mm, held at frets"
                + " 1 and 17, read over fret 8.",
            "2027-03-01 10:23  Could not measure relief on the highest string (G).",
            "2027-03-01 10:24  Asked to take the last turn back.",
            "2027-03-01 10:25  Left: the rod may be half way through a turn.",
            "2027-03-01 20:00  Taken up again.",
            "2027-03-01 20:01  After a break, said of the rod: tightened about 1/8 turn, not sure.",
            "2027-03-01 20:02  Began to wait until 2027-03-02 20:02.",
            "2027-03-01 20:03  The wait was ended early: the neck is known.",
            "2027-03-01 20:04  Read relief on the lowest string (E): touches (no gap), held at frets"
                + " 1 and 17, read over fret 8.",
            "2027-03-01 20:05  Handed over to a repairer: no answer. The rod did not move the neck.",
            "",
            "As found:  lowest string (E) 0.60 to 0.65 mm; highest string (G) 0.55 to 0.60 mm",
            "As left:   lowest string (E) touches (no gap)",
            "Rod:       as found, not sure; 1/4 turn in all, in 2 moves",
            "Row:       lowest 0.60 to 0.65 > highest 0.55 to 0.60 > loosened 1/8 > lowest 0.65 to"
                + " 0.70 > tightened about 1/8, not sure > lowest touches",
            "Ended:     Handed over to a repairer: no answer. The rod did not move the neck.")
        .inOrder();
  }

  @Test
  void withdrawnTurnsAreNotCounted() {
    Summary summary =
        Summary.of(
            List.of(
                Told.relief(1, Which.LOWEST, new Bracket(0.6, 0.65)),
                Told.turned(2, Turn.QUARTER, Feel.SMOOTH),
                new Event.Corrected(Told.minute(3), "turn"),
                Told.turned(4, Turn.EIGHTH, Feel.STIFF),
                Told.turned(5, Turn.NONE, Feel.JAMMED)));
    assertThat(summary.net()).isEqualTo(Turn.EIGHTH);
    assertThat(summary.moves()).isEqualTo(1);
    assertThat(summary.lines())
        .containsExactly(
            "As found:  lowest string (E) 0.60 to 0.65 mm",
            "As left:   relief was not read since the last turn",
            "Rod:       1/8 turn tighter than as found; 1/8 turn in all, in 1 move",
            "Row:       0.60 to 0.65 > tightened 1/8 (stiff) > not turned (jammed)",
            "Ended:     still open")
        .inOrder();
  }

  @Test
  void aCorrectionWithdrawsOneAnswerOnly() {
    Event first = Told.relief(1, Which.LOWEST, new Bracket(0.6, 0.65));
    Event same = Told.relief(1, Which.LOWEST, new Bracket(0.6, 0.65));
    Event correction = new Event.Corrected(Told.minute(2), "read-lowest");
    assertThat(Corrections.standing(List.of(first, same, correction)))
        .containsExactly(first, correction)
        .inOrder();
  }

  @Test
  void anEmptyOrHeadlessRecordIsStillPrinted() {
    assertThat(SessionLog.lines("x\u001b", List.of(), Labels.none(), Told.DATES))
        .contains("Session:   x\uFFFD");
  }

  @Test
  void idsBecomeWordsWhereTheFilesKnowThem() {
    Mark mark = new Mark("demo.yaml", 1, 1);
    Words lay = words("Lay it on its side. The neck must hang free.");
    Step tell =
        new Step.Tell("support-neck", lay, mark, java.util.Set.of(), null, Branch.Fork.to("x"));
    Step choose =
        new Step.Choose(
            "rod-place",
            words("Where is the rod nut?"),
            mark,
            List.of(
                new Step.Option("headstock", "At the headstock", java.util.Set.of(), null, "x")),
            null,
            null);
    Procedure procedure =
        new Procedure(
            "demo",
            1,
            "Demo",
            "To show.",
            List.of(),
            "support-neck",
            "support-neck",
            "support-neck",
            Map.of("support-neck", tell, "rod-place", choose),
            "0",
            List.of());
    Library library =
        new Library(
            Map.of("demo", procedure),
            Map.of(),
            Map.of("string-whip", Invented.WHIP),
            ShippedRules.LIMITS,
            Results.NONE);
    Labels labels = Labels.of(library, "demo");
    assertThat(labels.step("support-neck")).isEqualTo("Lay it on its side");
    assertThat(labels.step("gone")).isEqualTo("gone");
    assertThat(labels.option("rod-place", "headstock")).isEqualTo("At the headstock");
    assertThat(labels.option("rod-place", "gone")).isEqualTo("gone");
    assertThat(labels.hazard("string-whip")).startsWith("WARNING: A string can break");
    assertThat(Labels.of(library, "other").step("support-neck")).isEqualTo("support neck");
    assertThat(labels.step("welcome-back")).isEqualTo("Went on after a break");
    Event.Ended ended = new Event.Ended(Told.BEGAN, "x", false, "owner-relief", "");
    assertThat(EventWords.ended(ended)).isEqualTo("Ended: cause: relief.");
    EventWords words = new EventWords(labels, Told.DATES);
    assertThat(words.of(new Event.Chose(Told.BEGAN, "rod-place", "headstock", null), List.of()))
        .isEqualTo("Chose at \"Where is the rod nut?\": At the headstock.");
  }

  private static Words words(String text) {
    return new Words("The key", text, null, null, List.of(), List.of(), false, null, null, null);
  }
}
