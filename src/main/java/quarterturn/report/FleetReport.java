package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.rehearsal.fleet.Condition;
import quarterturn.rehearsal.fleet.FaultyNecks;
import quarterturn.rehearsal.fleet.Fleet;
import quarterturn.rehearsal.fleet.SetBacks;
import quarterturn.rehearsal.fleet.SoundNecks;
import quarterturn.rehearsal.fleet.Tally;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** The result of a fleet of rehearsals, as text. */
public final class FleetReport {
  private FleetReport() {}

  /** Every figure of the result with the bound or number it is compared with. */
  public static List<String> lines(Fleet.Result result) {
    SoundNecks sound = result.sound();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Fleet of "
            + result.necks()
            + " sound necks and as many with a fault, seed "
            + result.seed()
            + ".");
    lines.add("Whole sessions of a beginner on a bass, range " + Fleet.WINDOW + ".");
    lines.add("The necks are drawn from estimates, no source.");
    lines.add("");
    lines.add(
        "Sound necks. "
            + sound.outOfReach().necks()
            + " can't be settled within the limits even by one who knows them;");
    lines.add("the other " + sound.advised().necks() + ":");
    lines.add("");
    lines.addAll(
        Table.lines(
            List.of("", "with advice", "rule of thumb", "knowing the neck"), compared(sound)));
    lines.add("");
    lines.add("Moves against the fewest there can be: " + Decimals.print(sound.overFloor(), 3));
    lines.add(
        "Most ever turned from as found: "
            + new Turn(Math.max(sound.mostTurned(), result.faulty().all().mostNet().turns())));
    lines.add("");
    if (!result.conditions().isEmpty()) {
      lines.add("Sound necks and readings that are not as the advice expects them:");
      lines.add("");
      lines.addAll(
          Table.lines(
              List.of("", "moves", "knowing", "ratio", "overshoots", "unresolved", "touching lost"),
              conditions(result)));
      lines.add("");
      SetBacks set = result.setBacks();
      lines.add("Sound necks set back between three sessions: " + set.necks());
      lines.add("Rods wrongly held to be at fault there: " + percent(set.faulted()));
      lines.add("");
    }
    lines.add("Necks to be handed over, by what was read first, and in how many moves:");
    lines.add("");
    lines.addAll(
        Table.lines(
            List.of(
                "what is wrong",
                "as found",
                "necks",
                "handed over",
                "within 3",
                "within 5",
                "most"),
            faults(result.faulty())));
    lines.add("");
    lines.add("Missed faults: " + result.faulty().missed());
    return lines;
  }

  /** Moves against overshoots for ten weights of crossing the window. */
  public static List<String> weights(Map<Double, SoundNecks> weights) {
    List<List<String>> rows = new ArrayList<>();
    weights.forEach(
        (weight, necks) ->
            rows.add(
                List.of(
                    Decimals.plain(weight),
                    Decimals.print(necks.overFloor(), 3),
                    Decimals.print(necks.advised().overshoots(), 4),
                    percent(necks.advised().settled()))));
    return Table.lines(List.of("crossing", "moves/floor", "overshoots", "settled"), rows);
  }

  private static List<List<String>> conditions(Fleet.Result result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(condition(Condition.USUAL, result.sound()));
    result.conditions().forEach((condition, necks) -> rows.add(condition(condition, necks)));
    return rows;
  }

  private static List<String> condition(Condition condition, SoundNecks necks) {
    return List.of(
        condition.shown(),
        Decimals.print(necks.advised().moves(), 2),
        Decimals.print(necks.knowing().moves(), 2),
        Decimals.print(necks.overFloor(), 3),
        Decimals.print(necks.advised().overshoots(), 4),
        percent(necks.unresolved()),
        percent(necks.touching().handedOver()));
  }

  private static List<List<String>> compared(SoundNecks sound) {
    return List.of(
        row("settled in range", sound, t -> percent(t.settled())),
        row("moves, mean", sound, t -> Decimals.print(t.moves(), 2)),
        row("moves, 95 of 100 within", sound, t -> String.valueOf(t.movesFor(0.95))),
        row("overshoots a neck", sound, t -> Decimals.print(t.overshoots(), 4)),
        row("unsettled in " + Rehearsal.MOST_MOVES + " moves", sound, t -> percent(t.unsettled())),
        row("wrong hand-overs", sound, t -> percent(t.handedOver())),
        row("days, mean", sound, t -> Decimals.print(t.days(), 2)));
  }

  private static List<String> row(String label, SoundNecks sound, Function<Tally, String> figure) {
    return List.of(
        label,
        figure.apply(sound.advised()),
        figure.apply(sound.thumb()),
        figure.apply(sound.knowing()));
  }

  private static List<List<String>> faults(FaultyNecks faulty) {
    List<List<String>> rows = new ArrayList<>();
    for (NeckFault fault : NeckFault.values()) {
      for (FirstGap gap : FirstGap.values()) {
        Tally tally = faulty.of(fault, gap);
        if (tally.necks() > 0) {
          rows.add(
              List.of(
                  fault.word(),
                  gap.shown(),
                  String.valueOf(tally.necks()),
                  percent(tally.handedOver()),
                  percent(tally.within(3)),
                  percent(tally.within(5)),
                  String.valueOf(tally.movesFor(1))));
        }
      }
    }
    return rows;
  }

  private static String percent(double share) {
    return Decimals.print(100 * share, 2) + " %";
  }
}
