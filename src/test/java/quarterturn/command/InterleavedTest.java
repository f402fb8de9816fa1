package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;
import quarterturn.session.listing.Glance;

/** Three sessions are begun from home and gone between, a few answers at a time. */
@Tag("slow")
class InterleavedTest {
  private static final Map<String, Double> FOUND = Map.of("blue", 0.6, "green", 0.5, "red", 0.3);

  @TempDir Path folder;

  @Test
  void theyLoseNothing() throws Exception {
    Shop shop = Shop.of(folder, "blue", "green", "red");
    BusyFace face = new BusyFace(shop, 16, FOUND);
    face.types("relief blue technician", "relief green technician", "relief red technician");
    assertThat(shop.home("Ana").open(face, true)).isEqualTo(0);

    List<Glance> sessions = shop.store().sessions();
    assertThat(sessions.stream().map(Glance::instrument).toList())
        .containsExactlyElementsIn(FOUND.keySet());
    for (Glance glance : sessions) {
      List<Event> kept = shop.store().read(glance.name()).events();
      assertWithMessage(glance.on()).that(glance.ended()).isNotNull();
      assertWithMessage(glance.on()).that(kept).isEqualTo(face.left.get(glance.name()));
      assertWithMessage(glance.on()).that(reads(kept)).containsNoneIn(others(glance.on()));
    }
    // Nobody stayed with one: each was taken up again between the others.
    List<String> between = face.played.subList(3, face.played.lastIndexOf("blue"));
    assertThat(between).containsAtLeast("blue", "green");
  }

  private static List<Double> reads(List<Event> events) {
    return events.stream()
        .filter(Event.Read.class::isInstance)
        .map(Event.Read.class::cast)
        .filter(read -> read.quantity() == Quantity.RELIEF && read.bracket() != null)
        .map(read -> read.bracket().lowMm())
        .toList();
  }

  /** What was found on the other instruments. */
  private static List<Double> others(String instrument) {
    return FOUND.keySet().stream().filter(n -> !n.equals(instrument)).map(FOUND::get).toList();
  }
}
