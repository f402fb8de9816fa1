package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Intonation;
import quarterturn.craft.SaddleHeight;
import quarterturn.craft.Scale;
import quarterturn.craft.ScrewThread;
import quarterturn.craft.Shim;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Tension;
import quarterturn.craft.WoodMoisture;
import quarterturn.procedure.read.Shelf;
import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.Temperature;
import quarterturn.unit.Turn;

/** What the shipped questions give as an answer is what the program itself works out. */
class AskNumbersTest {
  private static final Frequency E4 = new Frequency(329.63);
  private static final Scale BASS = new Scale(Length.mm(864));
  private static final Scale GUITAR = new Scale(Length.mm(648));

  private static Library load(String procedure) throws IOException {
    try {
      return new Shelf(null).load(procedure);
    } catch (UnreadableException e) {
      throw new AssertionError(e);
    }
  }

  private static List<LessonQuestion> asks(String procedure) throws IOException {
    List<LessonQuestion> asks = new ArrayList<>();
    load(procedure).main().steps().values().forEach(step -> asks.addAll(step.words().ask()));
    return asks;
  }

  /** The one answer to a question that has all of these words. */
  private static String answer(String procedure, String... words) throws IOException {
    List<String> found =
        asks(procedure).stream()
            .filter(ask -> List.of(words).stream().allMatch(ask.question()::contains))
            .map(ask -> String.valueOf(ask.answer()))
            .toList();
    assertWithMessage(procedure + " " + List.of(words)).that(found).hasSize(1);
    return found.get(0);
  }

  private static String shown(String format, double number) {
    return String.format(Locale.ROOT, format, number);
  }

  /** What arrives over a fret of 1 mm at the saddle. */
  private static double arriving(int fret) {
    return 1 / SaddleHeight.change(Length.mm(1), fret).mm();
  }

  @Test
  void saddleHeight() throws IOException {
    String both =
        shown("%.1f mm at fret 12, ", arriving(12)) + shown("and %.2f mm at fret 1.", arriving(1));
    assertThat(answer("action", "1 mm", "fret 12")).isEqualTo(both);
    double drop = SaddleHeight.change(Length.mm(0.4), 12).mm();
    assertThat(answer("action", "0.4 mm too high")).startsWith(shown("%.1f mm", drop));
    assertThat(answer("nut-clearance", "higher saddle"))
        .contains(
            shown("1 mm at the saddle gives %.2f mm over fret 1, ", arriving(1))
                + shown("and %.1f mm over fret 12", arriving(12)));
  }

  @Test
  void saddlePlace() throws IOException {
    double bass = Intonation.travel(BASS, 12, new Cents(6)).mm();
    assertThat(answer("intonation", "6 cents sharp", "864 mm"))
        .startsWith(shown("About %.0f mm away", bass));
    double guitar = Intonation.travel(GUITAR, 12, new Cents(6)).mm();
    assertThat(answer("intonation", "same 6 cents", "648 mm"))
        .isEqualTo(shown("Less far, about %.1f mm.", guitar));
  }

  @Test
  void pickupScrew() throws IOException {
    ScrewThread thread = ScrewThread.parse("0.5mm");
    assertThat(thread.travel(new Turn(2)).mm()).isWithin(1e-9).of(2.5 - 1.5);
    assertThat(answer("pickups", "1.5 mm", "2.5 mm", "0.5 mm a turn"))
        .isEqualTo("Down by 1 mm, two turns.");
  }

  private static double pull(String gauge, double ratio) {
    return Tension.of(
            GUITAR, new Frequency(E4.hertz() * ratio), StringGauge.parse(gauge).unitWeight())
        .newtons();
  }

  @Test
  void pullOfAString() throws IOException {
    double thicker = pull(".010in", 1) / pull(".009in", 1) - 1;
    assertThat(answer("strings", ".009 in", ".010 in"))
        .startsWith(shown("%.0f %% more.", 100 * thicker));
    double gone = 1 - pull(".010in", new Cents(-200).ratio()) / pull(".010in", 1);
    assertThat(answer("strings", "whole tone lower"))
        .startsWith(shown("About a fifth, %.0f %%.", 100 * gone));
  }

  @Test
  void shim() throws IOException {
    double lever = 1 / Shim.of(Length.mm(1), Length.mm(75), Length.mm(340)).thickness().mm();
    assertThat(lever).isGreaterThan(4);
    assertThat(answer("neck-angle", "75 mm", "340 mm", "0.25 mm"))
        .startsWith(shown("%.1f mm, more than four times", 0.25 * lever));
  }

  @Test
  void moistureOfWood() throws IOException {
    Temperature room = new Temperature(20);
    double before = WoodMoisture.percent(room, new Humidity(50));
    double after = WoodMoisture.percent(room, new Humidity(30));
    assertThat(answer("season", "20 C", "50 %", "30 %"))
        .startsWith(
            shown("It falls from about %.0f %% ", before) + shown("to about %.0f %%", after));
  }

  @Test
  void turnsOfTheRod() throws IOException {
    Turn all = new Turn(Turn.EIGHTH.turns() * 0.15 / 0.05);
    Turn most = load("relief").limits().perReading();
    assertThat(all.turns()).isWithin(1e-9).of(3 / 8.0);
    assertThat(most).isLessThan(all);
    assertThat(answer("relief", "1/8 turn moved", "0.05 mm", "0.15 mm"))
        .startsWith("3/8 turn in all, but at most 1/4 turn now");
    assertThat(most).isEqualTo(Turn.QUARTER);
  }

  /** A lesson can be held on each stage of a set-up. */
  @Test
  void everyStageHasAllKindsOfQuestion() throws IOException {
    List<String> stages =
        List.of(
            "intake",
            "strings",
            "relief",
            "relief-check",
            "nut-clearance",
            "action",
            "neck-angle",
            "intonation",
            "pickups",
            "season",
            "buzz");
    for (String stage : stages) {
      List<LessonQuestion> asks = asks(stage);
      assertWithMessage(stage)
          .that(asks.stream().map(LessonQuestion::kind).toList())
          .containsAtLeastElementsIn(LessonQuestion.Kind.values());
      for (LessonQuestion ask : asks) {
        boolean key = ask.answer() != null;
        assertWithMessage(ask.toString())
            .that(key || ask.kind() == LessonQuestion.Kind.PREDICT)
            .isTrue();
        assertWithMessage(ask.toString())
            .that(ask.kind() != LessonQuestion.Kind.IDEA || !ask.ideas().isEmpty())
            .isTrue();
      }
    }
  }
}
