package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Role;
import quarterturn.procedure.Step;
import quarterturn.procedure.Style;
import quarterturn.procedure.Ways;
import quarterturn.unit.Bracket;

/** Walks every branch of every procedure of the whole set-up by seeded answers. */
class SetupWalkTest {
  private static final List<String> ALONE =
      List.of(
          "intake",
          "strings",
          "nut-clearance",
          "action",
          "neck-angle",
          "intonation",
          "pickups",
          "season",
          "buzz",
          "sign-off");

  private static final int SESSIONS_ALONE = 1200;
  private static final int SESSIONS_WHOLE = 1500;

  private final Set<String> taken = new TreeSet<>();
  private final Set<String> wanted = new TreeSet<>();

  @Test
  void everyBranchIsTaken() throws Exception {
    for (String id : ALONE) {
      Library library = Play.library(id);
      branches(library.procedure(id));
      for (int seed = 0; seed < SESSIONS_ALONE; seed++) {
        walk(library, new Random(seed));
      }
    }
    Library whole = Play.library("setup");
    branches(whole.procedure("setup"));
    for (int seed = 0; seed < SESSIONS_WHOLE; seed++) {
      walk(whole, new Random(seed));
    }
    wanted.add("relief/come-in -> rod-place");
    wanted.add("relief/come-in -> hold-ready");
    wanted.add("relief/play-gate -> turned-or-not");
    assertThat(wanted.size()).isAtLeast(220);
    Set<String> missed = new TreeSet<>(wanted);
    missed.removeAll(taken);
    assertThat(missed).isEmpty();
  }

  private void branches(Procedure procedure) {
    for (Step step : procedure.steps().values()) {
      for (String go : Ways.from(step)) {
        wanted.add(procedure.id() + "/" + step.id() + " -> " + go);
      }
    }
  }

  private void walk(Library library, Random random) throws Exception {
    Role role = random.nextInt(3) == 0 ? Role.TECHNICIAN : Role.BEGINNER;
    Kind kind = library.kind("bass-34");
    Event.Before[] before = random.nextInt(4) == 0 ? new Event.Before[0] : fresh(kind);
    Play play = Play.of(library, role, "bass-34", Style.MEDIUM, before);
    Walker walker = new Walker(kind, random);
    for (int i = 0; i < 700 && !play.prompt().ended(); i++) {
      walker.answer(play);
    }
    List<Place> path = play.state().path;
    for (int i = 1; i < path.size(); i++) {
      Place from = path.get(i - 1);
      taken.add(from.procedure() + "/" + from.step() + " -> " + path.get(i).step());
    }
    calls(path);
    if (play.prompt() instanceof Prompt.HandOver over) {
      assertWithMessage("%s", play.events).that(over.outcome()).isNotEqualTo("procedure-fault");
    }
  }

  /** A call leads on where the called procedure has ended. */
  private void calls(List<Place> path) {
    Set<String> open = new HashSet<>();
    for (int i = 1; i < path.size(); i++) {
      Place from = path.get(i - 1);
      Place to = path.get(i);
      if (!to.procedure().equals(from.procedure())) {
        open.add(from.procedure() + "/" + from.step());
        for (String call : List.copyOf(open)) {
          if (call.startsWith(to.procedure() + "/")) {
            taken.add(call + " -> " + to.step());
            open.remove(call);
          }
        }
      }
    }
  }

  private static Event.Before[] fresh(Kind kind) {
    Event.Before relief =
        new Event.Before(
            Play.NOON,
            Quantity.RELIEF,
            kind.strings().get(0),
            new Bracket(0.35, 0.40),
            null,
            List.of());
    Event.Before action =
        new Event.Before(Play.NOON, Quantity.ACTION, kind.strings().get(0), null, 2.5, List.of());
    return new Event.Before[] {relief, action};
  }

  /** Answers as somebody might, in the window more often than not. */
  private static final class Walker {
    private final Kind kind;
    private final Random random;
    private final boolean good;
    private final Quantity blindTo;
    private final int habit;
    private final int fixed;
    private int prompts;

    Walker(Kind kind, Random random) {
      this.kind = kind;
      this.random = random;
      this.good = random.nextInt(3) > 0;
      Quantity[] all = Quantity.values();
      this.blindTo = all[random.nextInt(all.length)];
      this.habit = random.nextInt(6);
      this.fixed = random.nextInt(1000);
    }

    void answer(Play play) {
      Prompt prompt = play.prompt();
      prompts++;
      if (prompt instanceof Prompt.Choose choose) {
        play.choose(option(choose));
      } else if (prompt instanceof Prompt.Write) {
        play.give(new Answer.Wrote(random.nextBoolean() ? "-" : "110 90 70 50"));
      } else if (prompt instanceof Prompt.Measure measure) {
        play.give(read(measure));
      } else if (prompt instanceof Prompt.TurnRod turn) {
        play.turned(turn.turn().turns(), Feel.SMOOTH);
      } else {
        play.ordinary();
      }
    }

    private String option(Prompt.Choose choose) {
      int size = choose.options().size();
      boolean inRelief = choose.said().procedure().equals("relief");
      if (habit == 1
          && !inRelief
          && Math.floorMod(choose.said().step().hashCode() + fixed, 3) == 0) {
        return choose.options().get(Math.floorMod(fixed, size)).id();
      }
      String special = special(choose.said().procedure(), choose.said().step());
      if (special != null) {
        return special.isEmpty() ? choose.options().get(random.nextInt(size)).id() : special;
      }
      int chance = habit > 2 ? 50 : inRelief ? 40 : habit == 0 ? 2 : 5;
      return choose.options().get(random.nextInt(chance) == 0 ? random.nextInt(size) : 0).id();
    }

    /** An option that a habit asks for, empty for any; null where it asks for none. */
    private @Nullable String special(String procedure, String step) {
      return switch (habit) {
        case 3 -> step.equals("play") ? "buzzes" : procedure.equals("buzz") ? "" : null;
        case 4 -> step.equals("travel") ? "bottomed" : step.equals("joint") ? "screws" : null;
        case 5 -> step.equals("drift") ? "drifts" : step.equals("decide") ? "same-set" : null;
        default -> null;
      };
    }

    private Answer read(Prompt.Measure measure) {
      // Gauges get lost: some are not there from the start, some are missing later on.
      boolean lost = measure.quantity() == blindTo && prompts > (fixed % 2) * 60;
      if ((habit == 2 && lost) || random.nextInt(30) == 0) {
        return new Answer.CannotMeasure();
      }
      if (measure.quantity() == Quantity.RELIEF) {
        return new Answer.Measured(
            random.nextInt(good ? 25 : 4) == 0
                ? List.of(Bracket.touches(), new Bracket(0.55, 0.60), new Bracket(0.40, 0.50))
                    .get(random.nextInt(3))
                : new Bracket(0.35, 0.40));
      }
      if (!measure.quantity().onString()) {
        double value = measure.quantity() == Quantity.HUMIDITY ? 30 + random.nextInt(40) : 21;
        return new Answer.Value(value);
      }
      int string = kind.strings().indexOf(String.valueOf(measure.string()));
      Window window = kind.target(measure.quantity(), Style.MEDIUM, string).window();
      double width = window.highMm() - window.lowMm();
      if (habit == 4 && measure.quantity() == Quantity.ACTION) {
        return new Answer.Value(5);
      }
      int side = random.nextInt(good ? 25 : 3) == 0 ? random.nextBoolean() ? 1 : -1 : 0;
      double middle = Math.max(0.01, window.middleMm() + 0.9 * side * width);
      double value = measure.quantity() == Quantity.INTONATION ? 3.0 * side : middle;
      return measure.quantity().bracket() ? leaves(value) : new Answer.Value(value);
    }

    private Answer leaves(double gap) {
      return new Answer.Measured(
          random.nextInt(40) == 0 ? Bracket.touches() : BenchNeck.leaves(gap));
    }
  }
}
