package quarterturn.script;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quarterturn.rehearsal.fleet.Fleet;
import quarterturn.rehearsal.fleet.SoundNecks;
import quarterturn.rehearsal.fleet.Tally;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.NeckFault;

/** The result of a fleet of rehearsals as one JSON object; shares are from 0 to 1. */
public final class FleetJson {
  private FleetJson() {}

  public static String of(Fleet.Result result) {
    SoundNecks sound = result.sound();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("necks", result.necks());
    json.put("seed", result.seed());
    json.putArray("window_mm").add(Fleet.WINDOW.lowMm()).add(Fleet.WINDOW.highMm());
    json.put("out_of_reach", sound.outOfReach().necks());
    json.set("advised", tally(sound.advised()));
    json.set("rule_of_thumb", tally(sound.thumb()));
    json.set("knowing", tally(sound.knowing()));
    json.put("moves_over_floor", sound.overFloor());
    json.put("most_turns", Math.max(sound.mostTurned(), result.faulty().all().mostNet().turns()));
    json.put("missed_faults", result.faulty().missed());
    ArrayNode conditions = json.putArray("conditions");
    result
        .conditions()
        .forEach(
            (condition, necks) -> {
              ObjectNode row = conditions.addObject();
              row.put("condition", condition.words());
              row.set("advised", tally(necks.advised()));
              row.set("knowing", tally(necks.knowing()));
              row.put("moves_over_floor", necks.overFloor());
              row.put("unresolved", necks.unresolved());
              row.put("touching_handed_over", necks.touching().handedOver());
            });
    json.put("set_back_faulted", result.setBacks().faulted());
    ArrayNode faults = json.putArray("faults");
    for (NeckFault fault : NeckFault.values()) {
      for (FirstGap gap : FirstGap.values()) {
        Tally tally = result.faulty().of(fault, gap);
        if (tally.necks() > 0) {
          ObjectNode row = faults.addObject();
          row.put("fault", fault.word());
          row.put("as_found", gap.words());
          row.put("necks", tally.necks());
          row.put("handed_over", tally.handedOver());
          row.put("in_3_moves", tally.within(3));
          row.put("in_5_moves", tally.within(5));
          row.put("most_moves", tally.movesFor(1));
        }
      }
    }
    return json.toString();
  }

  private static ObjectNode tally(Tally tally) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("necks", tally.necks());
    json.put("settled", tally.settled());
    json.put("moves_mean", tally.moves());
    json.put("moves_p95", tally.movesFor(0.95));
    json.put("overshoots", tally.overshoots());
    json.put("unsettled", tally.unsettled());
    json.put("handed_over", tally.handedOver());
    json.put("days_mean", tally.days());
    return json;
  }
}
