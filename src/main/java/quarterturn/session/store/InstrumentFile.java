package quarterturn.session.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import quarterturn.platform.Folders;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Strays;
import quarterturn.session.Instrument;
import quarterturn.session.journal.Fields;
import quarterturn.session.journal.NotAnEventException;
import quarterturn.unit.Printable;

/** An instrument's YAML file, which its owner may read and edit. */
final class InstrumentFile {
  /**
   * The most bytes that are read of one. A constant of the compiler's, so that it is known before
   * the class is.
   */
  static final int MOST_BYTES = 16_384;

  private static final String HEAD = "# An instrument known to quarterturn.\n";
  private static final YAMLMapper YAML = mapper();

  private static final String WINDOWS = "windows";

  private static final List<FormField> MADE_LIKE =
      List.of(
          FormField.SCALE,
          FormField.TUNING,
          FormField.GAUGES,
          FormField.RADIUS,
          FormField.NECK,
          FormField.NUT,
          FormField.ROD,
          FormField.BRIDGE,
          FormField.PICKUP,
          FormField.HANDED);

  private InstrumentFile() {}

  private static YAMLMapper mapper() {
    LoaderOptions limits = new LoaderOptions();
    limits.setCodePointLimit(MOST_BYTES);
    limits.setMaxAliasesForCollections(0);
    limits.setNestingDepthLimit(4);
    YAMLFactory factory =
        YAMLFactory.builder()
            .loaderOptions(limits)
            .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
            .disable(YAMLGenerator.Feature.SPLIT_LINES)
            .build();
    return YAMLMapper.builder(factory)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .build();
  }

  /**
   * Writes a new file.
   *
   * @throws FileAlreadyExistsException when the file exists
   */
  static void write(Path file, Instrument instrument) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    replace(file, instrument);
  }

  /** Writes a file, new or in place of an old one; see {@link Folders#replace}. */
  static void replace(Path file, Instrument instrument) throws IOException {
    Folders.replace(file, text(instrument).getBytes(StandardCharsets.UTF_8));
  }

  private static String text(Instrument instrument) throws IOException {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    Map<FormField, String> fields = FormFields.of(instrument);
    node.put("name", instrument.name());
    put(node, fields, FormField.KIND);
    put(node, fields, FormField.STYLE);
    if (instrument.jointFret() != null) {
      node.put(FormField.JOINT_FRET.word(), instrument.jointFret());
    }
    put(node, fields, FormField.STRINGS);
    MADE_LIKE.forEach(field -> put(node, fields, field));
    ObjectNode windows = node.objectNode();
    instrument.windows().forEach((aim, window) -> windows.put(aim.word(), aim.text(window)));
    if (!windows.isEmpty()) {
      node.set(WINDOWS, windows);
    }
    put(node, fields, FormField.TICKET);
    put(node, fields, FormField.CUSTOMER);
    node.put("created", instrument.created().toString());
    return HEAD + YAML.writeValueAsString(node);
  }

  private static void put(ObjectNode node, Map<FormField, String> fields, FormField field) {
    String text = fields.get(field);
    if (text != null) {
      node.put(field.word(), text);
    }
  }

  /**
   * Reads a file.
   *
   * @throws IOException naming the file and what is wrong with it
   */
  static Instrument read(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    if (Files.size(file) > MOST_BYTES) {
      throw new Misread(name, "", "it is far too large for an instrument", null);
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      Instrument instrument = instrument(YAML.readTree(bytes));
      if (!name.equals(instrument.name() + ".yaml")) {
        String why = "it names its instrument " + instrument.name() + "; the two must agree";
        throw new Misread(name, "", why, null);
      }
      return instrument;
    } catch (JsonProcessingException e) {
      String where = e.getLocation() == null ? "" : ":" + e.getLocation().getLineNr();
      String first = String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("");
      throw new Misread(name, where, "it is no YAML: " + Printable.of(first), e);
    } catch (CharacterCodingException e) {
      throw new Misread(name, "", "it is no text in UTF-8", e);
    } catch (NotAnEventException | IllegalArgumentException e) {
      throw new Misread(name, "", String.valueOf(e.getMessage()), e);
    }
  }

  /** A file that holds no instrument of its name. */
  static final class Misread extends IOException {
    private static final long serialVersionUID = 1L;

    private static final String IT = "it ";

    private final String name;
    private final String why;

    /**
     * One with a reason.
     *
     * @param where ":" and the line, or empty
     */
    Misread(String name, String where, String why, @Nullable Exception cause) {
      super(
          name + where + (why.startsWith(IT) ? " " + why.substring(IT.length()) : ": " + why),
          cause);
      this.name = name;
      this.why = (where.isEmpty() ? "" : "line " + where.substring(1) + ": ") + why;
    }

    /** The line for it in a list. */
    String line() {
      return Strays.line(name, why);
    }
  }

  private static Instrument instrument(JsonNode node) throws NotAnEventException {
    if (!node.isObject()) {
      throw new NotAnEventException("it holds no instrument");
    }
    Fields f = new Fields(node);
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    String name = f.text("name");
    typed.put(FormField.KIND, f.text("kind"));
    Style style = f.wordOrNull("style", Style.values(), Style::word);
    put(typed, FormField.STYLE, style == null ? null : style.word());
    Integer joint = f.wholeOrNull("joint-fret");
    put(typed, FormField.JOINT_FRET, joint == null ? null : joint.toString());
    put(typed, FormField.STRINGS, f.textOrNull("strings"));
    for (FormField field : MADE_LIKE) {
      checked(typed, field, f.amountOrNull(field.word()));
    }
    Fields windows = f.fieldsOrNull(WINDOWS);
    if (windows != null) {
      for (FormField field : FormField.values()) {
        if (field.aim() != null) {
          checked(typed, field, windows.textOrNull(field.aim().word()));
        }
      }
      windows.nothingElse();
    }
    for (FormField field : List.of(FormField.TICKET, FormField.CUSTOMER)) {
      checked(typed, field, f.amountOrNull(field.word()));
    }
    Instant created = f.instant("created");
    f.nothingElse();
    return FormFields.instrument(name, created, typed);
  }

  /** Adds a fact's text after a check; an error names the field. */
  private static void checked(Map<FormField, String> typed, FormField field, @Nullable String text)
      throws NotAnEventException {
    if (text != null) {
      try {
        FormFields.check(field, text);
      } catch (IllegalArgumentException e) {
        throw new NotAnEventException(
            "its field \"" + field.word() + "\" is wrong: " + e.getMessage());
      }
      typed.put(field, text);
    }
  }

  private static void put(Map<FormField, String> typed, FormField field, @Nullable String text) {
    if (text != null) {
      typed.put(field, text);
    }
  }
}
