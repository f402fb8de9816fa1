package quarterturn.fault;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import quarterturn.fault.Weather.Call;
import quarterturn.fault.Weather.Fate;

/** Plays a scenario with a fault at each of its calls. */
final class Points {
  private static final Fault[] SEEN = {
    Fault.FAILS,
    Fault.FAILS_THOUGH_DONE,
    Fault.FAILS_A_WHILE,
    Fault.GONE,
    Fault.TORN,
    Fault.SHORT,
    Fault.FULL
  };

  private final Supplier<? extends Scenario> scenarios;

  Points(Supplier<? extends Scenario> scenarios) {
    this.scenarios = scenarios;
  }

  /**
   * A fault at a call.
   *
   * @param call its number, counted from one
   * @param draw what chance does
   */
  record Point(Fault fault, int call, long draw) {}

  /** What is looked at before each call. */
  private interface Before {
    void call(int number, String what);
  }

  /** Counts calls; a write takes two, so that there is a moment in its middle. */
  private static final class Counting implements Weather {
    private final Before before;
    private int number;

    Counting(Before before) {
      this.before = before;
    }

    @Override
    public Fate of(Call call, String path, int bytes) {
      number++;
      before.call(number, call + " " + path);
      boolean half = call == Call.WRITE && bytes > 1 && number % 2 == 0;
      return half ? Fate.torn(1 + Math.floorMod(number * 31, bytes - 1), null) : Fate.FINE;
    }
  }

  /** How many calls a play has when nothing goes wrong. */
  int calls() {
    Counting counting = new Counting((number, what) -> {});
    play(scenarios.get(), MemoryDisk.empty(), counting, "nothing");
    return counting.number;
  }

  /**
   * Kills the program, and cuts the power, before calls of one play.
   *
   * @param many about how many times; more than there are calls, and each is cut at by more chances
   * @return the number of points
   */
  int sweep(int many) {
    int calls = calls();
    int cuts = Math.max(1, many / calls);
    int step = Math.max(1, calls * (cuts + 1) / many);
    Scenario scenario = scenarios.get();
    MemoryDisk disk = MemoryDisk.empty();
    Counting counting =
        new Counting(
            (number, what) -> {
              if (number % step != 0) {
                return;
              }
              check(scenario, disk.killed(), new Point(Fault.KILLED, number, 0) + " at " + what);
              for (int draw = 0; draw < cuts; draw++) {
                long seed = number * (long) cuts + draw;
                check(scenario, disk.cut(seed), new Point(Fault.CUT, number, seed) + " at " + what);
              }
            });
    play(scenario, disk, counting, "nothing");
    return counting.number / step * (cuts + 1);
  }

  /**
   * Plays the scenario again and again, with a fault that the program sees at one call; then looks
   * at what the program left, and what a power cut leaves of that.
   *
   * @param many about how many times
   * @param from the first number for chance
   * @return the number of points
   */
  int each(int many, long from) {
    List<Point> points = new ArrayList<>();
    int calls = calls();
    int draws = 1 + many / (calls * SEEN.length);
    int step = Math.max(1, calls * SEEN.length * draws / many);
    for (Fault fault : SEEN) {
      int first = 1 + (int) Math.floorMod(from + fault.ordinal(), (long) step);
      for (int call = first; call <= calls; call += step) {
        for (int draw = 0; draw < draws; draw++) {
          points.add(new Point(fault, call, from + draw));
        }
      }
    }
    points.forEach(this::at);
    return points.size();
  }

  /**
   * Plays the scenario with a fault at every call of a kind.
   *
   * @param ending of the path that is asked for
   * @return the number of points
   */
  int every(Fault fault, Call kind, String ending, int draws) {
    List<Integer> numbers = new ArrayList<>();
    MemoryDisk disk = MemoryDisk.empty();
    Counting counting =
        new Counting(
            (number, what) -> {
              if (what.startsWith(kind + " ") && what.endsWith(ending)) {
                numbers.add(number);
              }
            });
    play(scenarios.get(), disk, counting, "nothing");
    for (int number : numbers) {
      for (int draw = 0; draw < draws; draw++) {
        at(new Point(fault, number, draw));
      }
    }
    return numbers.size() * draws;
  }

  /** Plays the scenario with one fault. */
  void at(Point point) {
    Scenario scenario = scenarios.get();
    MemoryDisk disk = MemoryDisk.empty();
    SplittableRandom random = new SplittableRandom(point.draw());
    Counting counting =
        new Counting(
            (number, what) -> {
              if (point.fault().ends() && number >= point.call()) {
                throw new PowerCut();
              }
            });
    String[] where = {point.toString()};
    Weather weather =
        (call, path, bytes) -> {
          Fate fine = counting.of(call, path, bytes);
          int since = counting.number - point.call();
          if (since < 0) {
            return fine;
          }
          if (since == 0) {
            where[0] = point + " at " + call + " " + path;
          }
          return point.fault().fate(call, since, bytes, random);
        };
    play(scenario, disk, weather, point.toString());
    if (point.fault() != Fault.CUT) {
      check(scenario, disk.killed(), where[0]);
    }
    if (point.fault() != Fault.KILLED) {
      check(scenario, disk.cut(point.draw()), where[0] + ", power cut");
    }
  }

  private static void play(Scenario scenario, MemoryDisk disk, Weather weather, String point) {
    disk.weather(weather);
    try {
      scenario.play(disk.top());
    } catch (IOException | PowerCut e) {
      // It ended with a word, or with the machine.
      return;
    } catch (Exception | AssertionError e) {
      throw finding(point + ", while it was played", e);
    }
  }

  private static void check(Scenario scenario, MemoryDisk left, String point) {
    try {
      scenario.check(left.top());
    } catch (Exception | AssertionError e) {
      throw finding(point, e);
    }
  }

  private static Finding finding(String point, Throwable e) {
    return e instanceof Finding known ? known : new Finding(point, e);
  }

  /** What is wrong at a point. */
  static final class Finding extends AssertionError {
    private static final long serialVersionUID = 1L;

    Finding(String point, Throwable e) {
      super(point + ": " + e.getMessage(), e);
    }
  }
}
