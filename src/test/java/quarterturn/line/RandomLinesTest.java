package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** Lines made at random never break the face, and never accept a hazard by accident. */
class RandomLinesTest {
  private static final List<String> WORDS =
      List.of(
          "",
          " ",
          "u",
          "understood",
          "Understood ",
          "understoo",
          "understood.",
          "uu",
          "yes",
          "done",
          "1",
          "2",
          "99",
          "back",
          "again",
          "why",
          "?",
          "log",
          "headstock",
          "s",
          "0.30",
          "passes",
          "lifts",
          "0.30 passes 0.35 lifts",
          "touches",
          "cannot",
          ";",
          "1/8",
          "1/8 smooth",
          "other way 1/8",
          "other way 1/8 stiff",
          "0",
          "0 jammed",
          "undo",
          "smooth",
          "jammed",
          "wait",
          "lift",
          "lift known neck",
          "48",
          "quit",
          "1/0",
          "\u001b[2J",
          "\u0000",
          "\u202e",
          "\ud800",
          "💥",
          "9999999999999",
          "-",
          "tighten",
          "deg");

  @Test
  void thirtyFiveThousandLines() {
    Random random = new Random(20_270_301);
    Count count = new Count();
    int accepted = 0;
    int sessions = 0;
    while (count.lines < 35_000) {
      ScriptedBench bench = new ScriptedBench(prompts(random));
      StringWriter out = new StringWriter();
      PrintWriter writer = new PrintWriter(out);
      Source source = new Source(bench, random, count);
      int status = LineFace.run(bench, source, writer, new Dates(ZoneOffset.UTC));
      assertThat(status).isEqualTo(0);
      assertThat(bench.left() || bench.prompt().ended()).isTrue();
      for (String line : out.toString().split("\\R", -1)) {
        assertThat(Printable.of(line)).isEqualTo(line);
      }
      accepted += bench.accepted().size();
      sessions++;
    }
    assertThat(accepted).isEqualTo(count.understood);
    assertWithMessage("the test reached its hazards").that(accepted).isGreaterThan(200);
    assertThat(sessions).isGreaterThan(50);
  }

  private static List<Prompt> prompts(Random random) {
    List<Prompt> all =
        List.of(
            Invented.tell(),
            Invented.caution(),
            Invented.place(),
            Invented.relief(),
            Invented.humidity(),
            Invented.loosen(),
            Invented.tighten(),
            Invented.settle(),
            Invented.rest());
    List<Prompt> prompts = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      prompts.add(all.get(random.nextInt(all.size())));
    }
    prompts.add(Invented.done());
    return prompts;
  }

  private static final class Count {
    int lines;
    int understood;
  }

  private record Source(ScriptedBench bench, Random random, Count count) implements LineSource {
    @Override
    public @Nullable String readLine(String prompt, List<String> words) {
      count.lines++;
      String line = line(words);
      String exact = line.strip();
      boolean asked = bench.prompt() instanceof Prompt.Caution && !words.contains("no");
      if (asked && (exact.equalsIgnoreCase("u") || exact.equalsIgnoreCase("understood"))) {
        count.understood++;
      }
      return random.nextInt(500) == 0 && !asked ? null : line;
    }

    private String line(List<String> words) {
      int kind = random.nextInt(10);
      if (kind < 3) {
        return words.get(random.nextInt(words.size()));
      }
      if (kind < 8) {
        return WORDS.get(random.nextInt(WORDS.size()));
      }
      StringBuilder line = new StringBuilder();
      for (int i = random.nextInt(kind == 8 ? 4 : 60); i > 0; i--) {
        line.append(WORDS.get(random.nextInt(WORDS.size())));
        line.append(kind == 8 ? " " : Character.toString(random.nextInt(0x3000)));
      }
      return line.toString();
    }

    @Override
    public void pause(Duration time) {
      bench.pass(time);
    }

    @Override
    public boolean typedByHand() {
      return true;
    }

    @Override
    public int width() {
      return 20 + random.nextInt(60);
    }
  }
}
