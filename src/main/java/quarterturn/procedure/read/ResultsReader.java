package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Guide;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads results and changes from {@code procedures/results.yaml}. */
final class ResultsReader {
  private final Faults faults;
  private final Scalars values;
  private final Map<String, Results.Result> results = new LinkedHashMap<>();
  private final Map<String, Results.Change> changes = new LinkedHashMap<>();
  private final List<Results.Offer> offers = new ArrayList<>();
  private final List<String> care = new ArrayList<>();
  private final Set<String> named = new LinkedHashSet<>();
  private final Stricter stricter;
  private final @Nullable Limits limits;

  private ResultsReader(Faults faults, @Nullable Limits limits, Results program) {
    this.faults = faults;
    this.limits = limits;
    this.values = new Scalars(faults);
    this.stricter = new Stricter(faults);
    results.putAll(program.results());
    changes.putAll(program.changes());
  }

  /**
   * Reads results and changes as far as they can be read.
   *
   * @param limits what counts as another climate, or null where that is not known
   * @param shipped the file that comes with the program, where this is a user's own: what it leaves
   *     out is as there, and of what it says of a change only more may be spoiled; else null
   */
  static Results draft(Faults faults, @Nullable Limits limits, @Nullable Faults shipped)
      throws UnreadableException {
    Results program = shipped == null ? Results.NONE : draft(shipped, limits, null);
    ResultsReader reader = new ResultsReader(faults, limits, program);
    MappingKeys fields = MappingKeys.ofFile(faults);
    boolean whole = shipped == null;
    reader.values.items(fields.value("results", whole)).forEach(reader::result);
    reader.values.items(fields.value("changes", whole)).forEach(reader::change);
    reader.values.items(fields.value("offers", whole)).forEach(reader::offer);
    for (Node line : reader.values.items(fields.optional("care"))) {
      Optional.ofNullable(reader.values.fixed(line)).ifPresent(reader.care::add);
    }
    Guide guide =
        new Guide(
            reader.entries(fields.optional("words")),
            reader.entries(fields.optional("needs")),
            reader.entries(fields.optional("meanwhile")));
    fields.endFile();
    if (!fields.has("offers")) {
      reader.offers.addAll(program.offers());
    }
    if (!fields.has("care")) {
      reader.care.addAll(program.care());
    }
    for (String needed : List.of(Results.ROD, Results.CLIMATE)) {
      if (!reader.changes.containsKey(needed)) {
        faults.add(
            Slip.UNKNOWN_ID,
            fields.mark(),
            "the change " + needed + " is missing",
            "Add it to the changes; the program makes it by itself");
      }
    }
    return new Results(
        reader.results,
        reader.changes,
        reader.offers,
        reader.care,
        guide.isEmpty() ? program.guide() : guide);
  }

  /** Names, each with what is said of it. */
  private List<Guide.Entry> entries(@Nullable Node list) {
    List<Guide.Entry> entries = new ArrayList<>();
    for (Node item : values.items(list)) {
      MappingKeys fields = MappingKeys.of(item, "an entry", faults);
      String name = values.fixed(fields.required("name"));
      String means = values.fixed(fields.required("means"));
      fields.end();
      if (name != null && means != null) {
        entries.add(new Guide.Entry(name, means));
      }
    }
    return entries;
  }

  private void result(Node item) {
    MappingKeys fields = MappingKeys.of(item, "a result", faults);
    Scalar id = values.id(fields.required("result"), "a result");
    Results.Result before = id == null ? null : results.get(id.text());
    String name = values.fixed(fields.value("name", before == null));
    Scalar by = values.id(fields.optional("by"), "a procedure");
    Quantity quantity = values.word(fields.optional("quantity"), "a quantity", Quantity.values());
    fields.end();
    if (before != null && quantity != null && quantity != before.quantity()) {
      String was = before.quantity() == null ? "a verdict" : before.quantity().word();
      stricter.laxer(fields.key("quantity"), "the result " + before.id(), was);
    }
    if (id != null && (name != null || before != null) && added(id, "result")) {
      String procedure = by != null ? by.text() : before == null ? null : before.by();
      results.put(
          id.text(),
          new Results.Result(
              id.text(),
              name != null ? name : before == null ? "" : before.name(),
              procedure,
              before == null ? quantity : before.quantity()));
    }
  }

  private void change(Node item) {
    MappingKeys fields = MappingKeys.of(item, "a change", faults);
    Scalar id = values.id(fields.required("change"), "a change");
    Results.Change before = id == null ? null : changes.get(id.text());
    String name = name(id, fields.value("name", before == null));
    Set<String> spoils = known(fields.value("spoils", before == null));
    Set<String> recheck = known(fields.optional("recheck"));
    fields.end();
    if (id == null || (name == null && before == null) || !added(id, "change")) {
      return;
    }
    if (before != null) {
      String of = " of " + before.id();
      spoils = fields.has("spoils") ? spoils : before.spoils();
      stricter.all(fields.key("spoils"), "spoils" + of, spoils, before.spoils(), one -> one);
      Set<String> looked = new LinkedHashSet<>(recheck);
      looked.addAll(spoils);
      if (fields.has("recheck")) {
        stricter.all(fields.key("recheck"), "recheck" + of, looked, before.recheck(), one -> one);
      } else {
        recheck = new LinkedHashSet<>(before.recheck());
        recheck.removeAll(spoils);
      }
    }
    String said = name != null ? name : before == null ? "" : before.name();
    changes.put(id.text(), new Results.Change(id.text(), said, spoils, recheck));
  }

  /** The name of a change; that of climate states the figures that make it one. */
  private @Nullable String name(@Nullable Scalar id, @Nullable Node name) {
    if (id == null || !id.text().equals(Results.CLIMATE)) {
      return values.fixed(name);
    }
    String line = values.line(name);
    return line == null || limits == null ? line : limits.climate().in(line);
  }

  private void offer(Node item) {
    MappingKeys fields = MappingKeys.of(item, "an offer", faults);
    Scalar id = values.id(fields.required("procedure"), "a procedure");
    String name = words(fields, "name");
    String start = words(fields, "start");
    offers.add(new Results.Offer(id == null ? "" : id.text(), name, start, words(fields, "about")));
    fields.end();
  }

  private String words(MappingKeys fields, String key) {
    return Objects.requireNonNullElse(values.fixed(fields.optional(key)), "");
  }

  private boolean added(Scalar id, String what) {
    if (!named.add(what + " " + id.text())) {
      faults.twice(id, "", "Give each its own id");
      return false;
    }
    return true;
  }

  private Set<String> known(@Nullable Node node) {
    Set<String> found = new LinkedHashSet<>();
    for (Node item : values.items(node)) {
      Scalar id = values.scalar(item);
      if (id != null && !results.containsKey(id.text())) {
        values.unknown(Slip.UNKNOWN_ID, id, "a result", List.copyOf(results.keySet()));
      } else if (id != null) {
        found.add(id.text());
      }
    }
    return found;
  }
}
