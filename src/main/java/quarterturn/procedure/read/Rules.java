package quarterturn.procedure.read;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.read.yaml.Faults;

/**
 * What procedures are held to, as far as it could be read: each null where its file has a fault.
 *
 * @param files the files with their faults
 */
record Rules(
    @Nullable Map<String, Hazard> hazards,
    @Nullable Map<String, Kind> kinds,
    @Nullable Limits limits,
    @Nullable Results results,
    List<Faults> files) {}
