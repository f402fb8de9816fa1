package quarterturn.procedure.check.words;

import java.util.ArrayList;
import java.util.List;

/** Reads what a text orders. An order is an imperative, or what does the work of one. */
public final class Orders {
  /** What makes a second turn of one that the program fills in. */
  private static final List<String> AGAIN =
      Words.phrases("again|twice|more|further|another|times|once more|extra");

  private static final List<String> GOING =
      Words.phrases(
          "again|twice|more|further|another|times|extra|until|till|hard|harder|fully",
          "completely|tight|same|on|to the stop");

  private final Mentioned mentioned = new Mentioned();
  private final List<Order> orders = new ArrayList<>();

  private Orders() {}

  /** What a text orders, in the order it is said. */
  public static List<Order> in(String text) {
    return in(text, "");
  }

  /**
   * What a text orders.
   *
   * @param before a text read before it, by which its pronouns are understood
   */
  public static List<Order> in(String text, String before) {
    Orders reading = new Orders();
    for (Sentence sentence : Sentence.of(before)) {
      sentence.segments().forEach(at -> reading.mentioned.hear(at, 0, at.size()));
    }
    reading.mentioned.begin();
    Sentence.of(text).forEach(reading::read);
    return List.copyOf(reading.orders);
  }

  private void read(Sentence sentence) {
    List<Segment> all = sentence.segments();
    List<List<Verb>> verbs = verbs(all);
    Mood last = Mood.SAID;
    for (int at = 0; at < all.size(); at++) {
      Segment segment = all.get(at);
      int found = orders.size();
      int heard = 0;
      List<Verb> here = verbs.get(at);
      for (int one = 0; one < here.size(); one++) {
        Verb verb = here.get(one);
        mentioned.hear(segment, heard, verb.place());
        heard = verb.place();
        int next = lets(here, one) ? one + 2 : one + 1;
        int to = next < here.size() ? here.get(next).place() : segment.size();
        if (verb.mood() == Mood.ORDER) {
          order(sentence, segment, verb, to, tail(all, verbs, at, verb.place(), to));
        }
      }
      boolean leads =
          at + 1 < all.size() && verbs.get(at + 1).stream().anyMatch(v -> v.mood() == Mood.ORDER);
      boolean turned =
          orders.subList(found, orders.size()).stream().anyMatch(o -> o.act() == Act.TURN_ROD);
      boolean result =
          at + 1 < all.size()
              && all.get(at + 1).at(0).equals("and")
              && all.get(at + 1).words().stream().anyMatch(Lexicon.FINITE::contains);
      if (!turned
          && !result
          && !all.get(0).says("for example")
          && Implied.possible(segment)
          && Implied.turn(
              segment,
              Grammar.begin(segment),
              here,
              mentioned,
              leads,
              continued(all, verbs, at, last))) {
        orders.add(new Order("", Act.TURN_ROD, true, true, sentence.said()));
      }
      mentioned.hear(segment, heard, segment.size());
      last = here.isEmpty() ? last : here.get(here.size() - 1).mood();
    }
  }

  /** Whether the next verb only says what is let happen: let it go down. */
  private static boolean lets(List<Verb> verbs, int one) {
    return verbs.get(one).base().equals("let")
        && one + 1 < verbs.size()
        && Words.has("go come run drop sink", verbs.get(one + 1).base());
  }

  private static Implied.Continued continued(
      List<Segment> all, List<List<Verb>> verbs, int at, Mood last) {
    String opener = all.get(at).opener();
    boolean fresh = !opener.equals(",") && !opener.equals("(");
    boolean headed = Implied.urges(all) && urges(all, verbs, at);
    return new Implied.Continued(fresh || last == Mood.ORDER || headed, headed);
  }

  private static boolean urges(List<Segment> all, List<List<Verb>> verbs, int to) {
    for (int at = 0; at < to; at++) {
      if (!verbless(all.get(at), verbs.get(at)) || all.get(at).size() > 4) {
        return false;
      }
    }
    return true;
  }

  private void order(Sentence sentence, Segment segment, Verb verb, int to, Segment tail) {
    boolean turning = Verbs.TURNING.contains(verb.base()) || Amounts.in(tail);
    Target target = Target.of(segment, verb.place(), to, mentioned, turning);
    Act act = Acting.of(verb.base(), target, tail, mentioned);
    boolean goesOn = tail.saysOneOf(verb.base().equals("{way}") ? AGAIN : GOING);
    boolean adds = Amounts.literal(tail) || goesOn;
    boolean onPart = target.named() != Target.Said.NOTHING;
    orders.add(new Order(verb.base(), act, onPart, adds, sentence.said()));
  }

  /** The words after a verb, with those of the segments after it that have no verb. */
  private static Segment tail(
      List<Segment> all, List<List<Verb>> verbs, int at, int place, int to) {
    Segment segment = all.get(at);
    List<String> words = new ArrayList<>(segment.words().subList(place + 1, to));
    if (to == segment.size()) {
      for (int on = at + 1; on < all.size() && verbless(all.get(on), verbs.get(on)); on++) {
        words.add(",");
        words.addAll(all.get(on).words());
      }
    }
    return new Segment(words, "", false);
  }

  private static boolean verbless(Segment segment, List<Verb> verbs) {
    return verbs.isEmpty() && segment.words().stream().noneMatch(Lexicon.FINITE::contains);
  }

  private static List<List<Verb>> verbs(List<Segment> all) {
    List<List<Verb>> verbs = new ArrayList<>();
    Mood last = Mood.SAID;
    boolean summary = false;
    for (int at = 0; at < all.size(); at++) {
      Segment segment = all.get(at);
      summary = summary && segment.opener().equals(",") || summarises(all, at);
      List<Verb> here =
          Grammar.verbs(segment, Grammar.begin(segment), start(all, at, last, summary));
      verbs.add(here);
      last = here.isEmpty() ? last : here.get(here.size() - 1).mood();
    }
    return verbs;
  }

  private static Mood start(List<Segment> all, int at, Mood last, boolean summary) {
    Segment segment = all.get(at);
    boolean suggested =
        segment.saysOneOf(List.of("how about", "what about", "why not", "why don't you"));
    if (summary || segment.asked() && !suggested) {
      return Mood.SAID;
    }
    if (segment.opener().equals(",") && at > 0 && refers(all.get(at - 1))) {
      return Mood.SAID;
    }
    if (all.subList(0, at).stream().anyMatch(Orders::denies)) {
      return Mood.REFUSED;
    }
    boolean or = Words.has("or nor", segment.at(0));
    boolean list = segment.opener().equals(",") && last == Mood.REFUSED && either(all, at);
    return or ? last : list ? Mood.REFUSED : Mood.ORDER;
  }

  /** Whether a segment breaks off at a denial: do not, whatever happens, turn it. */
  private static boolean denies(Segment at) {
    boolean ends = List.of("not", "never", "don't").contains(at.at(at.size() - 1));
    return ends
        && !List.of("if", "or", "whether", "why", "when").contains(at.at(0))
        && at.size() < 4;
  }

  /** Whether a segment leaves something to a repairer, whose work a list then goes on with. */
  private static boolean refers(Segment at) {
    return at.saysOneOf(Lexicon.REFERRED)
        && at.saysOneOf(List.of("let", "ask", "have", "get", "leave"));
  }

  /** Whether a list of what is not to be done goes on: never oil, turn or force it. */
  private static boolean either(List<Segment> all, int from) {
    for (int at = from; at < all.size() && all.get(at).opener().equals(","); at++) {
      if (all.get(at).says("or") || all.get(at).says("nor")) {
        return true;
      }
    }
    return false;
  }

  /** Whether bare verbs after a colon sum a piece of work up: tune, measure, turn the rod. */
  private static boolean summarises(List<Segment> all, int at) {
    if (at == 0 || at + 1 >= all.size() || !all.get(at).opener().equals(":")) {
      return false;
    }
    boolean told = Words.has("we it a the this", all.get(0).at(0));
    boolean bare = all.get(at).size() == 1 && all.get(at + 1).size() == 1;
    return told && bare && Verbs.bare(all.get(at).at(0)) && Verbs.bare(all.get(at + 1).at(0));
  }
}
