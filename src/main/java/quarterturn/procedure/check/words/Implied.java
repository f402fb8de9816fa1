package quarterturn.procedure.check.words;

import java.util.List;
import java.util.Set;

/** Finds turns of the rod that a segment orders without an imperative: one more eighth is due. */
final class Implied {
  private static final List<String> DUE =
      Words.phrases(
          "is next|all it takes is|what it takes is|comes next|is due|is needed",
          "is called for|is required|follows|is in order|comes after|comes then|next is",
          "next comes|then comes|now comes|now follows|then follows|next follows|is wanted",
          "is left|remains|are needed|are due|will do|is the next|are next|is now due",
          "what remains is|time for|ready for|is recommended|is advised|is best",
          "is still to come|is to follow|must follow|should follow|must be made",
          "should be made|must be added|should be added|is the cure|is the thing to do",
          "is now needed|is still needed|how about|what about|is what such|is what it takes",
          "is what this|is now called for|is to be made|is to be added|is to be given",
          "is what it needs|on to|now for|is the remedy|next up|is advisable|suggest",
          "recommend|propose|advise|comes now|is now in order|has to follow|is necessary",
          "is now required|we need|you need|you want|should be given|must be given",
          "should do it|ought to do it|has to be made|needs to be made|is now next",
          "is your next step|come next|follow|in order now|needed now|due now|go for",
          "consider");

  private static final List<String> NEEDS =
      Words.phrases(
          "needs|takes another|takes one more|takes a further|wants|gets|requires|could use",
          "calls for|deserves|asks for|must have|should have|should get|must get|can take",
          "can have|will take|has to have|is due|may have|wants to have|still needs",
          "may now have");

  private static final List<String> BOUND =
      Words.phrases(
          "must|should|needs to|has to|is to|ought to|wants to|shall|need to|have to|are to",
          "is supposed to|is meant to|will have to|can now|may now");

  private static final Set<String> ON =
      Words.of("on with by to ahead and straight right further then");

  private static final List<String> HARMLESS =
      Words.phrases("no harm in|nothing wrong with|no risk in|no problem with|is worth");

  private static final List<String> TRAVELS = List.of("goes", "comes", "moves", "travels");

  /** Amounts that say little: a hair more on the rod. */
  private static final List<String> VAGUE =
      Words.phrases("hair more|bit more|touch more|little more|tad more|notch more");

  private static final List<String> URGING =
      Words.phrases(
          "another|more|further|again|clockwise|anticlockwise|counterclockwise|extra",
          "tighter|looser|rod|nut|key|back|on|now|next|then|additional|please|once");

  /**
   * How an amount with no verb would stand in its sentence.
   *
   * @param fresh whether it begins anew, or goes on with an order
   * @param headed whether only a few words without a verb stand before it, and they urge it
   */
  record Continued(boolean fresh, boolean headed) {}

  private Implied() {}

  /** Whether words of a sentence make an order of an amount that stands alone. */
  static boolean urges(List<Segment> all) {
    return all.stream().anyMatch(at -> at.saysOneOf(URGING));
  }

  /**
   * Whether a turn of the rod is ordered.
   *
   * @param verbs the verbs that were found in it
   * @param leads whether an order follows in the same sentence
   * @param continued how an amount alone would stand in the sentence
   */
  static boolean turn(
      Segment at,
      int begin,
      List<Verb> verbs,
      Mentioned mentioned,
      boolean leads,
      Continued continued) {
    String first = at.at(begin);
    boolean clause =
        Words.has(
                "if when while because although unless until who whom where before after since than till which",
                first)
            && !at.says("after that")
            && !at.says("after this");
    boolean suggested = at.says("how about") || at.says("what about") || at.says("why not");
    if (clause || at.asked() && !suggested || at.saysOneOf(Lexicon.REFERRED)) {
      return false;
    }
    boolean rod = rod(at, mentioned);
    boolean amount = Amounts.in(at);
    boolean denied = at.words().stream().anyMatch(word -> Lexicon.NEGATIONS.contains(word));
    boolean due = at.saysOneOf(DUE);
    for (int place = begin; place < at.size(); place++) {
      String word = at.at(place);
      if (acts(word)
          && Verbs.gerund(word)
          && gerund(at, begin, place, verbs, rod, due, denied, leads)) {
        return true;
      }
      if (acts(word) && Verbs.participle(word) && rod && participle(at, place, verbs, denied)) {
        return true;
      }
    }
    if (denied || !rod && (!mentioned.nearRod() || Part.turned(at))) {
      return false;
    }
    boolean subject = rod && definite(at);
    boolean bound = subject && at.saysOneOf(BOUND) && (amount || Amounts.way(at));
    boolean needs = amount && NEEDS.stream().anyMatch(need -> needs(at, need));
    boolean travels = subject && at.says("o'clock") && at.saysOneOf(TRAVELS);
    boolean third = amount && acting(at) || travels;
    return amount && due
        || bound && !at.says("be")
        || needs
        || third
        || fragment(at, begin, verbs, rod, continued);
  }

  /** Whether a segment has any of the words without which it orders no turn in this way. */
  static boolean possible(Segment at) {
    return at.words().stream().anyMatch(Implied::inflected)
        || Amounts.way(at)
        || Amounts.in(at)
        || at.saysOneOf(VAGUE);
  }

  private static boolean inflected(String word) {
    return acts(word) && (Verbs.gerund(word) || Verbs.participle(word));
  }

  private static boolean acts(String word) {
    String base = Verbs.base(word);
    return Verbs.TURNING.contains(base)
        || Verbs.SETTING.contains(base)
        || Verbs.GIVING.contains(base);
  }

  private static boolean rod(Segment at, Mentioned mentioned) {
    boolean named =
        at.words().stream()
            .anyMatch(
                word ->
                    Part.named(word) == Part.ROD
                        || Part.named(word) == Part.NUT
                        || Part.named(word) == Part.KEY);
    boolean other = Part.turned(at);
    boolean pronoun = at.says("it") || at.says("that") || at.says("this");
    return named && !other || pronoun && (mentioned.nothing() || mentioned.nearRod()) && !other;
  }

  private static boolean definite(Segment at) {
    for (String part :
        List.of("rod", "nut", "key", "handle", "wheel", "wrench", "adjuster", "truss")) {
      if (at.says("the " + part)
          || at.says("this " + part)
          || at.says("your " + part)
          || at.says("the truss " + part)
          || at.says("the rod " + part)) {
        return true;
      }
    }
    return at.says("it");
  }

  private static boolean gerund(
      Segment at,
      int begin,
      int place,
      List<Verb> verbs,
      boolean rod,
      boolean due,
      boolean denied,
      boolean leads) {
    boolean turning = Verbs.TURNING.contains(Verbs.base(at.at(place)));
    boolean about = rod || Amounts.in(at) || Amounts.way(at);
    for (Verb verb : verbs) {
      boolean next =
          verb.place() < place
              && at.words().subList(verb.place() + 1, place).stream()
                  .allMatch(word -> ON.contains(word) || Lexicon.adverb(word));
      boolean goes =
          Words.has(
              "keep continue carry go start begin try resume proceed finish consider suggest recommend",
              verb.base());
      if (next && goes && verb.mood() == Mood.ORDER && (turning || about)) {
        return !at.words().subList(verb.place(), place).contains("without");
      }
      boolean by = Words.has("by with", at.at(place - 1));
      if (by
          && verb.place() < place
          && verb.mood() == Mood.ORDER
          && about
          && !Verbs.MINDING.contains(verb.base())) {
        return true;
      }
    }
    boolean unstopped =
        Words.has("stop cease quit", at.at(place - 1))
            && (at.says("don't stop")
                || at.says("not stop")
                || at.says("never stop")
                || at.says("not cease")
                || at.says("not quit"));
    boolean mind = at.says("mind") && at.says("you");
    if (unstopped || mind && about) {
      return true;
    }
    if (about && at.saysOneOf(HARMLESS)) {
      return true;
    }
    if (denied) {
      return false;
    }
    boolean suited = Words.has("needs wants requires deserves", at.at(place - 1)) && definite(at);
    boolean headed = place == begin && at.opener().isEmpty() && Amounts.in(at) && leads;
    return about && (due || suited && turning || headed && turning);
  }

  private static boolean participle(Segment at, int place, List<Verb> verbs, boolean denied) {
    boolean until =
        at.says("until you have")
            || at.says("until it is")
            || at.says("before you have")
            || at.says("until the");
    if (until && denied && (at.says("stop") || at.says("rest") || at.says("read"))) {
      return at.says("stop") || at.says("rest");
    }
    boolean be = Words.of("be get being").stream().anyMatch(at.words().subList(0, place)::contains);
    boolean bound =
        at.saysOneOf(BOUND) || at.saysOneOf(List.of("can", "may", "could")) && Amounts.in(at);
    boolean asked =
        at.words().subList(0, place).stream()
            .anyMatch(Words.of("whether if when how until unless who which")::contains);
    if (be && bound && definite(at) && !denied && !asked) {
      return !at.words().subList(0, place).contains("before") && !at.says("only");
    }
    for (Verb verb : verbs) {
      boolean causes = Words.has("have get see make ensure check want", verb.base());
      if (causes
          && verb.place() < place
          && verb.mood() == Mood.ORDER
          && !denied
          && !at.says("how")
          && !at.says("whether")
          && !at.says("if")) {
        return Verbs.TURNING.contains(Verbs.base(at.at(place))) && !Verbs.bare(at.at(place));
      }
    }
    return false;
  }

  /**
   * Whether the rod is said to need an amount: the subject before the verb, the amount after it.
   */
  private static boolean needs(Segment at, String need) {
    String all = " " + String.join(" ", at.words()) + " ";
    int place = all.indexOf(" " + need + " ");
    if (place < 0) {
      return false;
    }
    List<String> before = List.of(all.substring(0, place).strip().split(" "));
    List<String> after = List.of(all.substring(place + 1).strip().split(" "));
    return definite(new Segment(before, "", false)) && Amounts.in(new Segment(after, "", false));
  }

  /** Whether somebody at the bench is told of as doing it: the player now turns the nut. */
  private static boolean acting(Segment at) {
    for (int place = 1; place < at.size(); place++) {
      String word = at.at(place);
      boolean does =
          word.endsWith("s")
              && Verbs.TURNING.contains(Verbs.base(word.substring(0, word.length() - 1)));
      String before = Lexicon.adverb(at.at(place - 1)) ? at.at(place - 2) : at.at(place - 1);
      if (does && Lexicon.DOERS.contains(before)) {
        return true;
      }
    }
    return false;
  }

  /** Whether an amount stands there with no verb at all: another half turn. */
  private static boolean fragment(
      Segment at, int begin, List<Verb> verbs, boolean rod, Continued continued) {
    boolean own = begin > 0 || rod || at.saysOneOf(URGING);
    boolean joined = Words.has("and or but", at.at(0));
    boolean urged = own && (continued.fresh() || begin > 0 && !joined) || continued.headed();
    return urged
        && verbs.isEmpty()
        && verbless(at)
        && at.size() < 14
        && (Amounts.in(at) || rod && at.saysOneOf(VAGUE));
  }

  /** Whether no word says what somebody or something does or did. */
  static boolean verbless(Segment at) {
    for (int place = 0; place < at.size(); place++) {
      boolean turns = at.at(place).equals("turns") && !Amounts.counts(at.at(place - 1));
      if (turns || finite(at.at(place))) {
        return false;
      }
    }
    return true;
  }

  private static boolean finite(String word) {
    boolean third = word.endsWith("s") && !word.equals("turns") && Part.named(word) == null;
    return Lexicon.FINITE.contains(word)
        || third && Verbs.bare(word.substring(0, word.length() - 1))
        || Verbs.known(word) && !Verbs.bare(word) && Part.named(word) == null
        || Lexicon.SUBJECTS.contains(word) && !word.equals("one");
  }
}
