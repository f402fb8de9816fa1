package quarterturn.session.store.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Samples;
import quarterturn.session.store.Store;
import quarterturn.unit.Turn;

/** Invented data folders. */
public final class Invented {
  public static final String FIRST = "2027-03-01-relief-k3f9";
  public static final String SECOND = "2027-03-02-relief-x2m7";
  public static final String THIRD = "2027-03-03-season-a1b2";

  private Invented() {}

  /** A folder with three sessions and two instruments. */
  public static Path folder(Path data) throws IOException {
    Files.createDirectories(data.resolve("sessions"));
    session(data, FIRST, Samples.everyKind());
    session(data, SECOND, List.of(Samples.relief(1, Which.LOWEST, 0.3, 0.35)));
    session(data, THIRD, List.of());
    for (String name : List.of("blue-guitar", "my-bass")) {
      Map<FormField, String> facts =
          Map.of(FormField.KIND, "bass-34", FormField.TICKET, "4711", FormField.CUSTOMER, "Ana");
      Store.at(data).add(FormFields.instrument(name, Instant.EPOCH, facts));
    }
    return data;
  }

  public static void session(Path data, String name, List<Event> events) throws IOException {
    Journal.Header header = new Journal.Header(name, "relief", 3, "ab".repeat(32));
    try (Journal journal = Journal.create(file(data, name), header)) {
      journal.append(events);
    }
  }

  /** Adds an event to a session. */
  public static void more(Path data, String name) throws IOException {
    try (Journal journal = Journal.open(file(data, name))) {
      journal.append(List.of(Samples.turned(9, Turn.EIGHTH)));
    }
  }

  public static Path file(Path data, String session) {
    return data.resolve("sessions").resolve(session + ".jsonl");
  }

  /** Every file under a folder by its path, with what it holds; hidden ones too. */
  public static Map<String, String> holds(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    if (Files.exists(folder)) {
      try (Stream<Path> walked = Files.walk(folder)) {
        for (Path file : walked.filter(Files::isRegularFile).toList()) {
          String text = Files.readString(file, StandardCharsets.ISO_8859_1);
          all.put(folder.relativize(file).toString().replace('\\', '/'), text);
        }
      }
    }
    return all;
  }
}
