package quarterturn.procedure.read;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Source;

/**
 * Reads and checks mutated files, bytes and structure, in a process of its own, so that its memory
 * can be bounded. Arguments: the folder of procedures, how many, a seed. Prints how many were read,
 * how many were clean, a digit, and the longest time of one, in milliseconds.
 */
public final class MutatedFiles {
  /** Large files are slower, so they come seldom. */
  private static final int LARGE_ONE_IN = 1000;

  private final Library shipped;
  private final List<String> hazards;

  /** The walks of what a mutant calls unchanged. */
  private final Walks walks = new Walks();

  private final Shelf shelf = new Shelf(null);
  private int read;
  private int clean;

  /** How many letters the faults had, so that no compiler leaves their wording out. */
  private long letters;

  private MutatedFiles(Library shipped) {
    this.shipped = shipped;
    this.hazards = List.copyOf(shipped.hazards().keySet());
    Loaded loaded = new Loaded(shipped, Map.of(), Set.of(), Set.of());
    Checker.check(loaded, List.copyOf(shipped.procedures().keySet()), walks);
  }

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    int count = Integer.parseInt(args[1]);
    SplittableRandom random = new SplittableRandom(Long.parseLong(args[2]));
    MutatedFiles files = new MutatedFiles(new Shelf(null).load("setup"));
    List<byte[]> small = new ArrayList<>();
    for (String id :
        List.of("pickups", "buzz", "neck-angle", "sign-off", "nut-clearance", "relief-check")) {
      small.add(Files.readAllBytes(folder.resolve(id + ".yaml")));
    }
    byte[] large = Files.readAllBytes(folder.resolve("relief.yaml"));
    // The first ones only warm up.
    for (int i = 0; i < 300; i++) {
      files.check(mutate(i % 30 == 0 ? large : small.get(i % small.size()), random));
    }
    files.read = 0;
    files.clean = 0;
    long slowest = 0;
    for (int i = 0; i < count; i++) {
      boolean big = random.nextInt(LARGE_ONE_IN) == 0;
      byte[] mutant = mutate(big ? large : small.get(random.nextInt(small.size())), random);
      long start = System.nanoTime();
      files.check(mutant);
      slowest = Math.max(slowest, System.nanoTime() - start);
    }
    System.out.println(
        files.read
            + " "
            + files.clean
            + " "
            + files.letters % 10
            + " "
            + Duration.ofNanos(slowest).toMillis());
  }

  private void check(byte[] bytes) {
    Procedure procedure;
    try {
      Faults faults = new Faults(Source.of("mutant.yaml", bytes));
      ProcedureReader.Draft draft =
          ProcedureReader.draft(
              faults, bytes, hazards, new ShelfFiles(shelf, faults, shipped.hazards().values()));
      boolean calls =
          draft.names().calls().stream().allMatch(c -> shipped.procedures().containsKey(c.text()));
      if (!faults.none() || !calls) {
        letters += String.valueOf(faults.sorted()).length();
        return;
      }
      procedure = draft.procedure();
    } catch (UnreadableException e) {
      return;
    }
    read++;
    Map<String, Procedure> all = new LinkedHashMap<>(shipped.procedures());
    all.put(procedure.id(), procedure);
    Library library =
        new Library(all, shipped.kinds(), shipped.hazards(), shipped.limits(), shipped.results());
    Loaded loaded = new Loaded(library, Map.of(), Set.of(), Set.of());
    List<Fault> findings = Checker.check(loaded, List.of(procedure.id()), walks.copy());
    letters += String.valueOf(findings).length();
    clean += findings.isEmpty() ? 1 : 0;
  }

  private static byte[] mutate(byte[] good, SplittableRandom random) {
    return random.nextBoolean() ? bytes(good, random) : structure(good, random);
  }

  private static byte[] bytes(byte[] good, SplittableRandom random) {
    byte[] bytes = good.clone();
    for (int i = random.nextInt(1, 4); i > 0 && bytes.length > 1; i--) {
      int at = random.nextInt(bytes.length);
      int to = Math.min(bytes.length, at + random.nextInt(1, 60));
      switch (random.nextInt(4)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes[at] = (byte) "\n\t :-[]{}&*!|>'\"%@?,#".charAt(random.nextInt(21));
        case 2 -> bytes = joined(bytes, 0, at, to, bytes.length);
        default -> bytes = joined(bytes, 0, to, at, bytes.length);
      }
    }
    return bytes;
  }

  private static byte[] joined(byte[] bytes, int from, int to, int start, int end) {
    byte[] both = Arrays.copyOf(Arrays.copyOfRange(bytes, from, to), to - from + end - start);
    System.arraycopy(bytes, start, both, to - from, end - start);
    return both;
  }

  /** Lines are dropped, doubled, moved, set deeper or flatter, and words change places. */
  private static byte[] structure(byte[] good, SplittableRandom random) {
    List<String> lines =
        new ArrayList<>(List.of(new String(good, StandardCharsets.UTF_8).split("\n", -1)));
    for (int i = random.nextInt(1, 3); i > 0; i--) {
      int at = random.nextInt(lines.size());
      int other = random.nextInt(lines.size());
      String line = lines.get(at);
      switch (random.nextInt(7)) {
        case 0 -> lines.remove(at);
        case 1 -> lines.add(other, line);
        case 2 -> lines.set(at, lines.set(other, line));
        case 3 -> lines.set(at, "  " + line);
        case 4 -> lines.set(at, line.startsWith("  ") ? line.substring(2) : line);
        default -> lines.set(at, word(line, lines.get(other), random));
      }
    }
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }

  /** A word of another line in place of one of this line. */
  private static String word(String line, String other, SplittableRandom random) {
    String[] words = line.split(" ", -1);
    String[] others = other.strip().split(" ", -1);
    words[random.nextInt(words.length)] = others[random.nextInt(others.length)];
    return String.join(" ", words);
  }
}
