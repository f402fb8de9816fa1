package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reckon.Reckon;

/**
 * What {@code reckon --json} prints: the keys, and numbers against values reckoned apart from this
 * program. Their sources stand in the reference values under {@code src/test/resources}; the
 * numbers here are taken from them.
 */
class ReckonKeysTest {
  private static final String NECK =
      " --scale 34in --joint-fret 17 --read-at 7 --nut-height 0.5mm --last-fret 20";
  private static final String STROKE =
      " --tension 180N --pluck-force 1.7420656N --pluck-at 120mm --return-share 0";

  private static final Map<String, String> KEYS =
      Map.ofEntries(
          Map.entry("frets --scale 34in --frets 24", "from_nut_mm"),
          Map.entry("pitch --note E1", "hz note cents"),
          Map.entry(
              "tension --scale 25.5in --note E4 --plain .010in",
              "newton pound_force unit_weight_g_per_m"),
          Map.entry("pull --scale 34in --string E1:2mm", "newton strings"),
          Map.entry(
              "neck --relief 0.3 --action12 2" + NECK,
              "curvature_per_mm fret_top_mm saddle_mm open_clearance_mm action12_per_relief"),
          Map.entry(
              "relief-as --scale 34in --joint-fret 17 --relief 0.3 --held 17 --read-at 7"
                  + " --to-held 20 --to-read-at 8",
              "relief_mm"),
          Map.entry(
              "contact --relief 0.3 --action12 2" + NECK + STROKE,
              "stroke open_margin_mm margin_mm least_margin_mm stopped_at over_fret rests_on"),
          Map.entry(
              "relief-for" + NECK + STROKE, "stroke relief_mm action12_mm action12_straight_mm"),
          Map.entry("intonation --scale 34in --cents 5", "saddle_travel_mm mm_per_cent"),
          Map.entry(
              "sharpening --scale 647.7mm --note E4 --plain .010in --nut-height 0.4 --action12 1"
                  + " --fret 12",
              "cents"),
          Map.entry("stiffness --scale 647.7mm --note E4 --plain .010in", "inharmonicity_b"),
          Map.entry(
              "saddle --action-change 0.5 --at-fret 12 --thread 0.5mm", "saddle_change_mm turns"),
          Map.entry("arc --radius 241mm --spread 57mm --strings 4", "drop_mm"),
          Map.entry(
              "shim --saddle-change 2.3 --pocket-length 75 --pocket-to-saddle 340",
              "shim_mm end lever_mm"),
          Map.entry("moisture --temperature 70F --humidity 50", "emc_percent"),
          Map.entry(
              "key --key 3/16in --socket 5mm", "fits clearance_mm play_degrees better suiting"),
          Map.entry("thread --thread M3x0.5 --turns 1/4", "travel_mm"),
          Map.entry("gauge --reading 0.30..0.35", "low_mm high_mm"));

  @Test
  void everyTopicPrintsOneObjectWithItsKeys() throws IOException {
    List<String> topics = new ArrayList<>();
    for (Map.Entry<String, String> topic : KEYS.entrySet()) {
      List<String> keys = new ArrayList<>();
      json(topic.getKey()).fieldNames().forEachRemaining(keys::add);
      assertWithMessage(topic.getKey())
          .that(keys)
          .containsExactlyElementsIn(topic.getValue().split(" ", -1))
          .inOrder();
      topics.add(topic.getKey().split(" ", -1)[0]);
    }
    assertThat(topics).containsExactlyElementsIn(Reckon.topics());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          frets --scale 34in --frets 24                      | /from_nut_mm/0    | 48.470144
          frets --scale 863.6mm --frets 24                   | /from_nut_mm/23   | 647.7
          pitch --note E1                                    | /hz               | 41.203445
          pitch --hz 55                                      | /cents            | 0
          pitch --hz 440.2542274                             | /cents            | 1
          tension --scale 647.7mm --note E4 --plain .010in   | /newton           | 72.524005
          tension --scale 647.7mm --note E4 --plain 10thou   | /pound_force      | 16.304045
          tension --scale 25.5in --note E4 --plain .010in    | /unit_weight_g_per_m | 0.39776537
          intonation --scale 34in --cents 10                 | /saddle_travel_mm | 5.0319336
          intonation --scale 34in --cents -10                | /saddle_travel_mm | -4.9454861
          intonation --scale 34in --cents 0                  | /mm_per_cent      | 0.49883492
          stiffness --scale 647.7mm --note E4 --plain .010in | /inharmonicity_b  | 1.3587163e-5
          saddle --action-change -0.5mm --at-fret 12 --thread M3x0.5 | /turns    | -2
          saddle --action-change 0.62542323 --at-fret 17     | /saddle_change_mm | 1
          shim --saddle-change 1mm --pocket-length 75 --pocket-to-saddle 300 | /shim_mm | 0.25
          shim --saddle-change=-2mm --pocket-length 76 --pocket-to-saddle 400 | /shim_mm | 0.46913580
          moisture --temperature 70F --humidity 50           | /emc_percent      | 9.2422874
          key --key 3/16in --socket 5mm                      | /clearance_mm/0   | 0.2575
          key --key 3/16in --socket 5mm                      | /play_degrees/1   | 10.425842
          thread --thread 10-32 --turns 1/4                  | /travel_mm        | 0.1984375
          thread --thread M5x0.8 --turns 45deg               | /travel_mm        | 0.1
          gauge --reading "card passes"                      | /low_mm           | 0.68
          gauge --reading "12..14 thou"                      | /high_mm          | 0.3556
          """)
  void numbersAgreeWithTheReference(String command, String pointer, double wanted)
      throws IOException {
    JsonNode value = json(command).at(pointer);
    assertWithMessage(command).that(value.isNumber()).isTrue();
    double tolerance = Math.max(1e-9, Math.abs(wanted) * 1e-6);
    assertWithMessage(command).that(value.doubleValue()).isWithin(tolerance).of(wanted);
  }

  @Test
  void aBowedNeckAgreesWithTheReference() throws IOException {
    JsonNode neck = json("neck --relief 0.3mm --action12 2mm" + NECK);
    assertThat(neck.get("fret_top_mm").size()).isEqualTo(21);
    assertThat(neck.get("open_clearance_mm").size()).isEqualTo(20);
    assertThat(neck.get("curvature_per_mm").doubleValue()).isWithin(1e-12).of(9.9372775e-06);
    assertThat(neck.get("fret_top_mm").get(0).doubleValue()).isWithin(5e-4).of(1.4494749);
    assertThat(neck.get("fret_top_mm").get(20).doubleValue()).isEqualTo(0.0);
    assertThat(neck.get("saddle_mm").doubleValue()).isWithin(5e-4).of(2.1671117);
    assertThat(neck.get("open_clearance_mm").get(0).doubleValue()).isWithin(5e-4).of(0.76069463);
    assertThat(neck.get("action12_per_relief").doubleValue()).isWithin(1e-4).of(2.2214805);
  }

  @Test
  void aContactMapHasARowForEachStoppedFretAndNullUpToIt() throws IOException {
    JsonNode contact = json("contact --relief 0.3mm --action12 2mm" + NECK + STROKE);
    JsonNode rows = contact.get("margin_mm");
    assertThat(rows.size()).isEqualTo(20);
    for (int k = 1; k <= 20; k++) {
      assertThat(rows.get(k - 1).size()).isEqualTo(20);
      for (int n = 1; n <= 20; n++) {
        assertThat(rows.get(k - 1).get(n - 1).isNull()).isEqualTo(n <= k);
      }
    }
    assertThat(rows.get(0).get(11).doubleValue()).isWithin(1e-3).of(1.050877);
    assertThat(rows.get(4).get(16).doubleValue()).isWithin(1e-3).of(0.76283199);
    assertThat(rows.get(11).get(12).doubleValue()).isWithin(1e-3).of(0.076343211);
    JsonNode least =
        rows.get(contact.get("stopped_at").intValue() - 1)
            .get(contact.get("over_fret").intValue() - 1);
    assertThat(contact.get("least_margin_mm").doubleValue()).isEqualTo(least.doubleValue());
    assertThat(contact.get("open_margin_mm").size()).isEqualTo(20);
    assertThat(contact.get("rests_on").isNull()).isTrue();
    // Pulled, stopped at fret 12 it goes deepest over fret 17 (pluck.margin, r0.3_pulled_k12).
    JsonNode pulled = json("contact --stroke pulled --relief 0.3mm --action12 2mm" + NECK + STROKE);
    assertThat(pulled.get("margin_mm").get(11).get(16).doubleValue())
        .isWithin(1e-3)
        .of(-0.16968259);
  }

  @Test
  void fannedFretsGiveAnArrayForEachString() throws IOException {
    JsonNode strings =
        json("frets --scale-bass 37in --scale-treble 34in --strings 5 --square-fret 7"
                + " --frets 24")
            .get("from_nut_mm");
    assertThat(strings.size()).isEqualTo(5);
    assertThat(strings.get(0).get(11).doubleValue()).isWithin(5e-4).of(939.8 / 2);
    assertThat(strings.get(4).get(11).doubleValue()).isWithin(5e-4).of(863.6 / 2);
  }

  /** Slants by the reference value fret.multiscale_37_34: five strings, 19 mm apart. */
  @Test
  void aFansSlantAgreesWithTheReference() throws IOException {
    String fan =
        "frets --scale-bass 37in --scale-treble 34in --strings 5 --square-fret 7 --frets 24";
    JsonNode given = json(fan + " --spread 76");
    assertThat(given.get("offset_mm").size()).isEqualTo(5);
    assertThat(given.get("offset_mm").get(4).size()).isEqualTo(25);
    double[] wanted = {18.441237, 0, -9.5288625, -22.710207};
    int[] frets = {0, 7, 12, 24};
    for (int i = 0; i < frets.length; i++) {
      double degrees = given.get("slant_degrees").get(frets[i]).doubleValue();
      assertThat(degrees).isWithin(0.005).of(wanted[i]);
      assertThat(given.get("slant_mm").get(frets[i]).doubleValue())
          .isWithin(0.02)
          .of(76 * Math.tan(Math.toRadians(wanted[i])));
    }
    assertThat(json(fan).get("slant_degrees").isNull()).isTrue();
    assertThat(json(fan).get("slant_mm")).isEqualTo(given.get("slant_mm"));
  }

  /** A reading as another convention, and back as it was read: the second way is to return. */
  @Test
  void aReliefConvertedAndConvertedBackIsTheSameReading() throws IOException {
    long seed = 27;
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      int joint = 14 + random.nextInt(8);
      String[] one = held(random, joint);
      String[] other = held(random, joint);
      double relief = (random.nextInt(1400) - 400) / 1000.0;
      String neck = "relief-as --scale 34in --joint-fret " + joint;
      String there = neck + from(one, relief + "") + to(other);
      String where = "seed " + seed + ", round " + i + ": " + there;
      double exact = json(there).get("relief_mm").doubleValue();
      assertWithMessage(where)
          .that(
              json(neck + from(other, json(there).get("relief_mm").asText()) + to(one))
                  .get("relief_mm")
                  .doubleValue())
          .isWithin(1e-9)
          .of(relief);
      Matcher printed =
          Pattern.compile("would read (\\S+) mm").matcher(oneLine(ReckonConversations.run(there)));
      assertWithMessage(where).that(printed.find()).isTrue();
      assertWithMessage(where)
          .that(Double.parseDouble(printed.group(1)))
          .isWithin(0.0005)
          .of(exact);
      double back =
          json(neck + from(other, printed.group(1)) + to(one)).get("relief_mm").doubleValue();
      assertWithMessage(where).that(back).isWithin(0.00021).of(relief);
    }
  }

  private static String[] held(Random random, int joint) {
    int high = 3 + random.nextInt(joint + 2);
    int readAt = 2 + random.nextInt(Math.min(high, joint) - 2);
    return new String[] {"" + high, "" + readAt};
  }

  private static String from(String[] held, String relief) {
    return " --relief=" + relief + " --held " + held[0] + " --read-at " + held[1];
  }

  private static String to(String[] held) {
    return " --to-held " + held[0] + " --to-read-at " + held[1];
  }

  private static String oneLine(ReckonConversations.Ran ran) {
    return ran.out().replace('\n', ' ');
  }

  /** What no instrument can have is said before all else, in text and in JSON. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "intonation --scale 34in --cents 290",
        "saddle --action-change 20 --at-fret 12",
        "shim --saddle-change 30 --pocket-length 75 --pocket-to-saddle 340",
        "frets --scale 34 --frets 3",
        "pitch --hz 9000",
        "tension --scale 25.5in --note E6 --plain .010in",
        "tension --scale 34in --note E1 --unit-weight 3670",
        "pull --scale 34in --string E6:.105in:.045in",
        "neck --relief 8 --action12 2" + NECK,
        "relief-as --scale 34in --joint-fret 17 --relief 4 --read-at 7 --to-held 17 --to-read-at 8",
        "contact --relief 0.3 --action12 2 --pluck-force 300N --tension 180N --pluck-at 120"
            + " --return-share 0"
            + NECK,
        "relief-for --pluck-force 300N --tension 180N --pluck-at 120 --return-share 1" + NECK,
        "sharpening --scale 647.7mm --note E4 --plain .010in --nut-height 9 --action12 9 --fret 1",
        "stiffness --scale 34in --note E1 --wound .105in --core .1in --a4 100",
        "arc --radius 100 --spread 190 --strings 4",
        "thread --thread M3 --turns 400",
        "gauge --reading 12",
      })
  void aNumberThatNoInstrumentHasIsDoubtedFirst(String command) throws IOException {
    JsonNode given = json(command);
    assertWithMessage(command).that(given.fieldNames().next()).isEqualTo("doubt");
    String doubt = given.get("doubt").textValue();
    String said = oneLine(ReckonConversations.run(command));
    assertWithMessage(command).that(said).startsWith(doubt.substring(0, 40));
    assertWithMessage(command).that(doubt).matches("(No|A saddle|Nobody|It may well) .*[.?]");
    assertWithMessage(command).that(doubt).doesNotContain("E+");
  }

  /** E4 of .010 in pulls 72.524005 N by the reference; .009 in by the square of the diameters. */
  @Test
  void anInstrumentIsFoundByItsNameAsInstrumentAddWritesIt(@TempDir Path folder)
      throws IOException {
    Clock clock = Clock.fixed(Instant.parse("2027-03-01T10:00:00Z"), ZoneOffset.UTC);
    String data = folder.resolve("data").toString();
    Captured.of(
        clock,
        "",
        "instrument",
        "add",
        "example-guitar",
        "--kind",
        "electric-25",
        "--data",
        data,
        "--gauges",
        ".046 .036 .026 .017 .013 .010 in");
    Captured.of(
        clock,
        "",
        "instrument",
        "add",
        "flat-guitar",
        "--kind",
        "electric-25",
        "--data",
        data,
        "--gauges",
        ".046 .036 .026 .017 .013 .009 in",
        "--tuning",
        "Eb2 Ab2 Db3 Gb3 Bb3 Eb4");
    JsonNode pull = new ObjectMapper().readTree(pull(clock, data, "example-guitar", "--json"));
    assertThat(pull.get("strings").get(5).doubleValue()).isWithin(1e-3).of(72.524005);
    String file = folder.resolve("data/instruments/example-guitar.yaml").toString();
    assertThat(new ObjectMapper().readTree(pull(clock, data, file, "--json"))).isEqualTo(pull);
    String flat = pull(clock, data, "flat-guitar", "--json");
    assertThat(new ObjectMapper().readTree(flat).get("strings").get(5).doubleValue())
        .isWithin(1e-3)
        .of(72.524005 * 0.81 / Math.pow(2, 1 / 6.0));
    assertThat(pull(clock, data, "flat-guitar")).contains("  Bb3 ");
    assertThat(
            Captured.of(clock, "", "reckon", "pull", "--instrument", "none", "--data", data).err())
        .contains("there is no instrument none; add it first");
  }

  private static String pull(Clock clock, String data, String instrument, String... more) {
    List<String> words = new ArrayList<>(List.of("reckon", "pull", "--instrument", instrument));
    words.addAll(List.of("--data", data));
    words.addAll(List.of(more));
    return Captured.of(clock, "", words.toArray(String[]::new)).out();
  }

  @Test
  void whatIsNotKnownIsNull() throws IOException {
    assertThat(json("gauge --reading touches").get("low_mm").isNull()).isTrue();
    assertThat(json("gauge --reading \"1.00 passes\"").get("high_mm").isNull()).isTrue();
    assertThat(json("saddle --action-change 1 --at-fret 12").get("turns").isNull()).isTrue();
    JsonNode shut = json("key --key 1/8in --socket 3mm");
    assertThat(shut.get("fits").booleanValue()).isFalse();
    assertThat(shut.get("play_degrees").get(0).isNull()).isTrue();
    assertThat(shut.get("better").textValue()).isEqualTo("3mm");
    assertThat(json("key --key 5mm --socket 5mm").get("better").isNull()).isTrue();
  }

  @Test
  void anInstrumentsFileGivesItsStringsAndItsKindTheScale(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("example-bass.yaml");
    Files.writeString(
        file,
        """
        name: example-bass
        kind: bass-34
        strings: E1:.105in:.045in G2:.045in:.018in
        created: 2026-01-01T00:00:00Z
        """);
    JsonNode pull = json("pull --instrument " + file);
    assertThat(pull.get("strings").get(0).doubleValue()).isWithin(1e-3).of(185.91633);
    assertThat(pull.get("strings").get(1).doubleValue()).isWithin(1e-3).of(192.07927);
    assertThat(pull.get("newton").doubleValue()).isWithin(1e-3).of(185.91633 + 192.07927);
    assertThat(ReckonConversations.run("pull --string E1:.105in:.045in --instrument " + file).err())
        .contains("--string: contradicts --instrument; give one of them");
    JsonNode shorter = json("pull --scale 17in --instrument " + file);
    assertThat(shorter.get("newton").doubleValue())
        .isWithin(1e-6)
        .of(pull.get("newton").doubleValue() / 4);
  }

  @Test
  void anInstrumentWithoutItsStringsSaysWhatToWrite(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("example-bass.yaml");
    Files.writeString(file, "name: example-bass\nkind: bass-34\ncreated: 2026-01-01T00:00:00Z\n");
    ReckonConversations.Ran ran = ReckonConversations.run("pull --instrument " + file);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .contains(
            "--instrument: example-bass has no gauges; give one for each string: quarterturn instrument edit example-bass"
                + " --gauges");
  }

  private static JsonNode json(String command) throws JsonProcessingException {
    ReckonConversations.Ran ran = ReckonConversations.run(command + " --json");
    assertWithMessage(command + "\n" + ran.err()).that(ran.status()).isEqualTo(0);
    assertWithMessage(command).that(ran.out().lines().count()).isEqualTo(1);
    return new ObjectMapper().readTree(ran.out());
  }
}
