package quarterturn.procedure.check.words;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences of the project's own that order an act, and sentences that do not. */
class OrdersTest {
  /** A line of a file of sentences; one that begins with a space goes on with the line above. */
  private static List<String> sentences(String name) throws IOException {
    List<String> all = new ArrayList<>();
    String path = "/quarterturn/procedure/words/" + name + ".txt";
    try (InputStream file = Objects.requireNonNull(OrdersTest.class.getResourceAsStream(path))) {
      for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n", 0)) {
        boolean goesOn = line.startsWith(" ");
        all.add(goesOn ? all.remove(all.size() - 1) + "\n" + line : line);
      }
    }
    assertThat(all.size()).isAtLeast(60);
    return all;
  }

  private static Set<Act> acts(String text) {
    Set<Act> acts = new TreeSet<>();
    for (Order order : Orders.in(text)) {
      if (order.act() != null) {
        acts.add(order.act());
      }
    }
    return acts;
  }

  @ParameterizedTest
  @ValueSource(strings = {"rod-turns", "rod-turns-more"})
  void aTurnOfTheRodIsFoundHoweverItIsOrdered(String name) throws IOException {
    List<String> missed =
        sentences(name).stream().filter(s -> !acts(s).contains(Act.TURN_ROD)).toList();
    assertThat(missed).isEmpty();
  }

  @Test
  void otherActsAreFound() throws IOException {
    List<String> missed = new ArrayList<>();
    Set<Act> shown = new TreeSet<>(Set.of(Act.TURN_ROD));
    List<String> lines = new ArrayList<>(sentences("other-acts"));
    lines.addAll(sentences("other-acts-more"));
    for (String line : lines) {
      Act act = Act.valueOf(line.substring(0, line.indexOf(' ')));
      shown.add(act);
      if (!acts(line.substring(line.indexOf(' ') + 1)).contains(act)) {
        missed.add(line);
      }
    }
    assertThat(missed).isEmpty();
    assertThat(shown).containsExactlyElementsIn(Act.values());
  }

  @ParameterizedTest
  @ValueSource(strings = {"explanations", "negations", "reports", "no-orders-more"})
  void whatOrdersNothingIsLeftAlone(String name) throws IOException {
    for (String sentence : sentences(name)) {
      assertWithMessage(sentence).that(acts(sentence)).isEmpty();
    }
  }

  /** A long text says no more than a short one: each sentence among others is read as alone. */
  @Test
  void sentencesThatOrderNothingOrderNothingTogether() throws IOException {
    for (String name : List.of("explanations", "negations", "reports")) {
      List<String> all =
          sentences(name).stream().map(s -> s.matches(".*[.?!]") ? s : s + ".").toList();
      List<String> found =
          Orders.in(String.join(" ", all)).stream()
              .filter(order -> order.act() != null)
              .map(Order::sentence)
              .toList();
      assertWithMessage(name).that(found).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "The strings are slack. Tighten it an eighth. | TURN_ROD",
        "Look at the pickup. Lower it a little. | SET_PICKUP",
        "Look at the plate. Loosen its screws. |",
        "Look at the neck. Loosen its screws. | LOOSEN_NECK",
        "Hold the peg. Turn it a quarter turn. |",
        "Hold the key in the rod nut. Turn it a quarter turn. | TURN_ROD",
      })
  void aPronounStandsForThePartNamedBefore(String text, String act) {
    assertThat(acts(text)).isEqualTo(act == null ? Set.of() : Set.of(Act.valueOf(act)));
  }

  @Test
  void theSentenceIsQuotedAsItIsWritten() {
    List<Order> orders = Orders.in("It is stiff.  Now Tighten\n the ROD by ½ turn. Read it.");
    assertThat(orders.get(0).sentence()).isEqualTo("Now Tighten the ROD by ½ turn.");
  }

  /** A text before explains a pronoun; what it orders is its own. */
  @Test
  void aTextBeforeExplainsPronouns() {
    assertThat(Orders.in("Lower it by 1 mm.", "Measure the pickup."))
        .containsExactly(new Order("lower", Act.SET_PICKUP, true, false, "Lower it by 1 mm."));
  }

  /** However long a text without a mark is, reading it takes a time that grows with its length. */
  @Test
  void aLongTextIsReadInTime() {
    for (String part : List.of("turn ", "tighten the rod, ", "not if to and ", "{", "a-", "1/")) {
      assertThat(Orders.in(part.repeat(4000)).size()).isAtMost(4000);
    }
  }
}
