package quarterturn.procedure.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads the hazards from {@code safety/hazards.yaml}. */
final class HazardsReader {
  private HazardsReader() {}

  /** Reads the hazards as far as they can be read; ids are kept even of hazards with a fault. */
  static Map<String, Hazard> draft(Faults faults) throws UnreadableException {
    Scalars values = new Scalars(faults);
    Map<String, Hazard> hazards = new LinkedHashMap<>();
    for (Node item : MappingKeys.list(faults, "hazards")) {
      MappingKeys fields = MappingKeys.of(item, "a hazard", faults);
      Scalar id = values.id(fields.required("hazard"), "a hazard");
      Hazard.Word word =
          values.word(
              fields.required("word"), "a signal word", Hazard.Word.values(), Hazard.Word::name);
      String harm = values.fixed(fields.required("harm"));
      String avoid = values.fixed(fields.required("avoid"));
      List<String> with = values.fixedLines(fields.optional("with"));
      List<String> words = values.fixedLines(fields.optional("words"));
      fields.end();
      if (id == null) {
        continue;
      }
      Hazard hazard =
          new Hazard(
              id.text(),
              word == null ? Hazard.Word.WARNING : word,
              harm == null ? "" : harm,
              avoid == null ? "" : avoid,
              with,
              words);
      if (hazards.putIfAbsent(id.text(), hazard) != null) {
        faults.twice(id, "the hazard ", "Give each its own id");
      }
    }
    return hazards;
  }
}
