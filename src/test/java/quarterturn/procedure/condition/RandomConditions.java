package quarterturn.procedure.condition;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Turn;

/** Conditions that a file can hold, drawn at random. */
public final class RandomConditions {
  /** Ids of steps and options; some are words of the grammar, which an id may be all the same. */
  private static final List<String> IDS =
      List.of(
          "rod-place",
          "relief",
          "rod",
          "neck",
          "turned",
          "every",
          "some",
          "no",
          "called",
          "a",
          "4",
          "and",
          "or",
          "at",
          "least",
          "target",
          "less");

  private static final List<String> OPTIONS =
      List.of("pocket", "sound-hole", "not", "or", "and", "is", "7", "none", "relief");

  private final Random random;

  public RandomConditions(long seed) {
    this.random = new Random(seed);
  }

  public Condition next() {
    int clauses = 1 + random.nextInt(3);
    List<Condition> parts = IntStream.range(0, clauses).mapToObj(i -> clause()).toList();
    return parts.size() == 1 ? parts.get(0) : new Condition.All(parts);
  }

  private Condition clause() {
    return switch (random.nextInt(13)) {
      case 0 -> standings(quantity());
      case 1 -> new Condition.Below(quantity(), amount());
      case 2 -> new Condition.AtLeast(quantity(), amount());
      case 3 ->
          maybeNot(
              new Condition.Differs(
                  bracket(),
                  of(Condition.Differs.More.values()),
                  (5 + random.nextInt(16)) / 100.0));
      case 11 -> maybeNot(new Condition.Creeps(Quantity.RELIEF));
      case 4 -> maybeNot(new Condition.Repeats(bracket(), (2 + random.nextInt(9)) / 100.0));
      case 5 -> maybeNot(chosen());
      case 6 -> maybeNot(new Condition.Reached(of(IDS), 1 + random.nextInt(9)));
      case 7 -> maybeNot(new Condition.Turned(of(Condition.Span.values()), turn()));
      case 8 -> neck();
      case 9 -> strings();
      case 10 -> maybeNot(any(() -> new Condition.Called(of(IDS))));
      default -> rod();
    };
  }

  private Condition standings(Quantity quantity) {
    if (!quantity.bracket()) {
      return maybeNot(new Condition.Against(quantity, Verdict.NOT_MEASURED));
    }
    return any(
        () ->
            switch (random.nextInt(4)) {
              case 0 -> new Condition.Against(quantity, of(Verdict.values()));
              case 3 ->
                  new Condition.Near(quantity, of(new Verdict[] {Verdict.BELOW, Verdict.ABOVE}));
              case 1 ->
                  new Condition.Leans(
                      quantity, of(new Verdict[] {Verdict.BELOW, Verdict.IN, Verdict.ABOVE}));
              default -> new Condition.Not(new Condition.Against(quantity, Verdict.NOT_MEASURED));
            });
  }

  private Quantity last = Quantity.RELIEF;

  private Quantity quantity() {
    last = of(Quantity.values());
    return last;
  }

  private Quantity bracket() {
    return random.nextBoolean() ? Quantity.RELIEF : Quantity.NUT_CLEARANCE;
  }

  /** An amount of the quantity that was drawn last, as a file could write it. */
  private double amount() {
    return switch (last.unit()) {
      case "mm" -> length();
      case "%" -> Amounts.of(last, (250 + random.nextInt(500)) / 10.0 + " %");
      case "C" -> Amounts.of(last, (random.nextInt(600) - 100) / 10.0 + " C");
      default -> Amounts.of(last, (random.nextInt(2000) - 1000) / 20.0 + " cents");
    };
  }

  /** A length that a reading of any quantity can have, by safety/bounds.yaml. */
  private double length() {
    String written =
        switch (random.nextInt(4)) {
          case 0 -> (50 + random.nextInt(150)) / 100.0 + " mm";
          case 1 -> (200 + random.nextInt(580)) / 10.0 + " thou";
          case 2 -> (2 + random.nextInt(3)) + "/" + (52 + random.nextInt(24)) + " in";
          default -> (20 + random.nextInt(58)) / 1000.0 + " in";
        };
    return Amounts.of(Quantity.RELIEF, written);
  }

  private Turn turn() {
    String written =
        switch (random.nextInt(4)) {
          case 0 -> "1/" + (1 + random.nextInt(64)) + " turn";
          case 1 -> (1 + random.nextInt(3)) + " " + (1 + random.nextInt(6)) + "/7 turns";
          case 2 -> (1 + random.nextInt(720)) + " deg";
          default -> (1 + random.nextInt(999)) / 1000.0 + " turn";
        };
    return Amounts.turn(written);
  }

  private Condition chosen() {
    Set<String> options = new LinkedHashSet<>(List.of(of(OPTIONS)));
    while (random.nextBoolean()) {
      options.add(of(OPTIONS));
    }
    // "x is not" lacks its option: no file can ask for an option "not" by itself.
    options = options.equals(Set.of("not")) ? Set.of("pocket") : options;
    return new Condition.Chosen(of(IDS), options);
  }

  private Condition neck() {
    if (random.nextBoolean()) {
      return any(() -> new Condition.Answered(of(Response.values()), 1));
    }
    return maybeNot(new Condition.Answered(of(Response.values()), 1 + random.nextInt(4)));
  }

  private Condition strings() {
    Quantity quantity =
        of(
            new Quantity[] {
              Quantity.RELIEF, Quantity.ACTION, Quantity.INTONATION, Quantity.PICKUP_GAP
            });
    boolean every = random.nextBoolean();
    Supplier<Condition> one = () -> new Condition.Strings(every, quantity, of(Verdict.values()));
    return maybeNot(every ? one.get() : any(one));
  }

  private Condition rod() {
    return switch (random.nextInt(3)) {
      case 0 -> new Condition.Is(of(Role.values()));
      case 1 -> maybeNot(any(() -> new Condition.Felt(of(Feel.values()))));
      default -> maybeNot(any(() -> new Condition.Seems(of(Doubt.values()))));
    };
  }

  private Condition any(Supplier<Condition> one) {
    List<Condition> parts = new ArrayList<>(List.of(one.get()));
    while (random.nextBoolean()) {
      parts.add(one.get());
    }
    return parts.size() == 1 ? parts.get(0) : new Condition.Any(parts);
  }

  private Condition maybeNot(Condition condition) {
    return random.nextBoolean() ? condition : new Condition.Not(condition);
  }

  private <T> T of(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private <T> T of(T[] all) {
    return all[random.nextInt(all.length)];
  }
}
