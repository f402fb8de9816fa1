package quarterturn.procedure.check.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Tells for each verb of a segment whether it is an order. */
final class Grammar {
  private static final Set<String> DENIALS =
      Words.of(
          "not never cannot neither nor nobody nothing none don't doesn't didn't shouldn't mustn't",
          "can't won't wouldn't needn't dont couldn't");

  private static final Set<String> MODAL_OPENERS = Words.of("could would can will won't couldn't");

  /** Words before "to" that put it to the reader. */
  private static final Set<String> DUTY =
      Words.of(
          "need have ought sure remember time try proceed continue begin start going on best better",
          "wise advised asked required supposed meant necessary important essential good next step",
          "job task thing left want care happy free welcome allowed wish told urged invited ready",
          "encouraged expected obliged prepared recommended sense come moment certain chance need's",
          "helpful turn fine ok safe right alright harmless okay are mind see");

  /** Those of them that are somebody's: the strings have to is nothing the reader has to do. */
  private static final Set<String> OWN_DUTY =
      Words.of(
          "need have ought try want wish are begin start continue going like come meant ready");

  private static final List<String> STEPS =
      Words.phrases("step|job|task|thing|left|next|remains|remaining|cure|remedy|move|work is|all");

  private static final Set<String> CAUSING =
      Words.of("let have ask get tell make help allow order watch invite");

  private static final Set<String> CLAUSES =
      Words.of(
          "if when whenever while because although unless until whether who whom which how where what as before after once since that till why");

  private static final Set<String> OF = Words.of("let take get think turn");

  private static final Set<String> LOOSE = Words.of("that this both all each");

  /** Words after which a verb may stand. */
  private static final Set<String> LICENSING =
      Words.of(
          "and or but nor to not never don't cannot can't mustn't shouldn't you we i they who that us",
          "should must shall ought had better need 'd 'll can could may might will would dare does do",
          "did let help won't doesn't didn't it which neither");

  /** Verbs of giving that may stand in the middle of a clause: with two fingers give it. */
  private static final Set<String> HANDLING =
      Words.of("give bring take move put swing make add apply adjust ease nudge");

  private static final List<String> NEEDLESS =
      Words.phrases(
          "no need|no reason|no sense|no point|instead of|rather than",
          "under no circumstances|on no account|by no means|at no time|in no case|no good",
          "no way|too early|too soon|not yet");

  private static final List<String> WISHES =
      Words.phrases(
          "want you to|ask you to|need you to|advise you to|like you to|urge you to",
          "expect you to|tell you to|invite you to|wish you to");

  /** Words before a noun that could pass for an adverb before a verb. */
  private static final Set<String> COUNTING =
      Words.of("more further extra last next first second third little");

  private static final Set<String> USING =
      Words.of(
          "use take grab apply employ get insert seat put hold fit pick hit strike tap push pull press lean move slide");

  private final Segment at;
  private final int begin;
  private final Mood start;
  private final List<Verb> verbs = new ArrayList<>();

  private Grammar(Segment at, int begin, Mood start) {
    this.at = at;
    this.begin = begin;
    this.start = start;
  }

  /** The verbs of a segment in their order, where one at its head has the mood {@code start}. */
  static List<Verb> verbs(Segment at, int begin, Mood start) {
    Grammar grammar = new Grammar(at, begin, start);
    for (int place = begin; place < at.size(); place++) {
      String word = at.at(place);
      if (grammar.verb(place)) {
        grammar.verbs.add(new Verb(place, Verbs.base(word), grammar.mood(place)));
      }
    }
    return grammar.verbs;
  }

  /** How many words at the head of a segment leave its mood as it is. */
  static int begin(Segment at) {
    int from = 0;
    boolean on = true;
    while (on && from < at.size()) {
      on = false;
      int lead = Lexicon.lead(at, from);
      on = lead > 0;
      from += lead;
      String word = at.at(from);
      boolean numeral = word.matches("\\d{1,2}") && from == 0 && at.size() > 1;
      boolean help = word.equals("do") && !Verbs.bare(at.at(from + 1));
      if (!on && (Lexicon.adverb(word) && !help || numeral && Verbs.bare(at.at(1)))) {
        from++;
        on = true;
      }
    }
    return from;
  }

  private boolean verb(int place) {
    String word = at.at(place);
    if (word.equals("{way}")) {
      return true;
    }
    if (Verbs.bare(word)) {
      return !noun(place);
    }
    String before = at.at(place - 1);
    boolean opens =
        place == begin
            || Words.has("and then to please now", before)
            || Lexicon.STRONG.contains(before);
    return opens && unknown(word) && object(place + 1);
  }

  private static boolean unknown(String word) {
    return word.length() > 2
        && Character.isLetter(word.charAt(0))
        && !word.endsWith("ing")
        && !word.endsWith("ed")
        && !word.endsWith("s")
        && Part.named(word) == null
        && !Amounts.part(word)
        && !Lexicon.adverb(word)
        && !Lexicon.PREPOSITIONS.contains(word)
        && !Lexicon.ARTICLES.contains(word)
        && !Lexicon.SUBJECTS.contains(word)
        && !Lexicon.DOERS.contains(word)
        && !Lexicon.NEGATIONS.contains(word)
        && !Lexicon.SUBORDINATE.contains(word)
        && !Lexicon.FINITE.contains(word)
        && !Lexicon.STRONG.contains(word)
        && !Lexicon.WEAK.contains(word)
        && !Lexicon.PRONOUNS.contains(word);
  }

  /** Whether a word with the form of an order is a noun or a particle where it stands. */
  private boolean noun(int place) {
    String word = at.at(place);
    String before = place == begin ? "" : at.at(place - 1);
    String next = at.at(place + 1);
    if (next.equals("by") && at.at(place + 2).equals(word)) {
      return true;
    }
    if (next.equals("of") && !OF.contains(word)) {
      return true;
    }
    if (word.equals("have") && perfect(place + 1)) {
      return true;
    }
    if (COUNTING.contains(before) && !object(place + 1)) {
      return true;
    }
    if (word.equals("string") && !Lexicon.ARTICLES.contains(next) && !Words.has("it them", next)) {
      return true;
    }
    if (Amounts.part(before)) {
      return true;
    }
    if (Lexicon.ARTICLES.contains(before)
        || !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1))) {
      return !LOOSE.contains(before) || word.equals("turn");
    }
    boolean licensed = before.isEmpty() || Lexicon.adverb(before) || LICENSING.contains(before);
    boolean acting = Verbs.TURNING.contains(word) || HANDLING.contains(word);
    boolean caused = previous() != null && CAUSING.contains(previous().base());
    return !licensed && !(acting && object(place + 1)) && !caused;
  }

  /** Whether "have" only helps what was done: you have turned it. */
  private boolean perfect(int place) {
    int on = place;
    while (Lexicon.adverb(at.at(on)) || at.at(on).equals("not")) {
      on++;
    }
    return Verbs.participle(at.at(on)) || at.at(on).equals("been") || at.at(on).endsWith("ed");
  }

  /** Whether an object, an amount or a way stands from a place on, after adverbs. */
  private boolean object(int place) {
    int on = place;
    while (on < at.size()
        && (Lexicon.adverb(at.at(on))
            || Words.has("on up down back off out round around by in about", at.at(on)))) {
      on++;
    }
    String word = at.at(on);
    return on < at.size()
        && (Lexicon.ARTICLES.contains(word)
            || Lexicon.PRONOUNS.contains(word)
            || Part.named(word) != null
            || word.startsWith("{")
            || word.endsWith("clockwise")
            || Amounts.in(at, on, on + 1));
  }

  private Mood mood(int place) {
    int governor = place - 1;
    while (governor >= begin
        && (Lexicon.adverb(at.at(governor)) || at.at(governor + 1).equals("well"))) {
      governor--;
    }
    String left = governor < begin ? "" : at.at(governor);
    if (refused(place, left)) {
      return Mood.REFUSED;
    }
    if (left.isEmpty()) {
      return start;
    }
    if (at.asked()) {
      return polite(left) ? Mood.ORDER : Mood.SAID;
    }
    if (left.equals("to")) {
      return infinitive(governor);
    }
    if (Lexicon.STRONG.contains(left) || Lexicon.WEAK.contains(left)) {
      return modal(governor);
    }
    if (Lexicon.SUBJECTS.contains(left)) {
      return subject(governor, left);
    }
    if (Words.has("and or but nor", left)) {
      return coordinated(place, governor, left);
    }
    return after(place, governor);
  }

  /** Whether a denial before a verb reaches it. */
  private boolean refused(int place, String left) {
    int denial = begin;
    while (denial < place && !DENIALS.contains(at.at(denial))) {
      denial++;
    }
    boolean needless = at.saysOneOf(NEEDLESS);
    if (denial == place) {
      return needless;
    }
    for (int on = denial + 1; on < place; on++) {
      if (Lexicon.YIELDING.contains(Verbs.base(at.at(on)))) {
        return false;
      }
    }
    boolean own = !verbs.isEmpty() && verbs.get(verbs.size() - 1).place() > denial;
    boolean joined = Words.has("and or nor to", left);
    return !left.equals("but") && !(own && !joined && Lexicon.SUBORDINATE.contains(at.at(begin)));
  }

  /** Whether a question is an order all the same: would you please. */
  private boolean polite(String left) {
    boolean asks = MODAL_OPENERS.contains(at.at(begin)) || MODAL_OPENERS.contains(at.at(begin + 1));
    boolean urged = at.says("please") || at.says("kindly") || at.says("now") || Amounts.in(at);
    return asks && urged && left.equals("you") || at.says("would you mind");
  }

  private Mood infinitive(int to) {
    int before = to - 1;
    while (before >= begin && Lexicon.adverb(at.at(before)) && !DUTY.contains(at.at(before))) {
      before--;
    }
    String word = before < begin ? "" : at.at(before);
    if (word.isEmpty()) {
      return at.at(begin).equals("to") && to == begin ? Mood.SAID : start;
    }
    if (Words.has("is was are remains be", word)) {
      boolean due = at.saysOneOf(STEPS) || Lexicon.DOERS.contains(at.at(before - 1));
      return due && !CLAUSES.contains(at.at(begin))
              || at.says("what is left")
              || at.says("what remains")
          ? Mood.ORDER
          : Mood.SAID;
    }
    if (clause(before)) {
      return Mood.SAID;
    }
    if (at.saysOneOf(WISHES)) {
      return Mood.ORDER;
    }
    if (Lexicon.YIELDING.contains(Verbs.base(word)) && denied(before)) {
      return Mood.ORDER;
    }
    if (DUTY.contains(word) && (!OWN_DUTY.contains(word) || doer(before))) {
      return Mood.ORDER;
    }
    Verb previous = previous();
    boolean passedOn =
        previous != null
            && (USING.contains(previous.base())
                || CAUSING.contains(previous.base()) && !at.saysOneOf(Lexicon.REFERRED));
    return previous != null && passedOn ? previous.mood() : Mood.SAID;
  }

  private boolean denied(int to) {
    return at.words().subList(begin, to).stream().anyMatch(DENIALS::contains);
  }

  private boolean clause(int to) {
    for (int on = begin; on <= to; on++) {
      boolean told = at.at(on).equals("that") && (on == to || Verbs.known(at.at(on - 1)));
      if (CLAUSES.contains(at.at(on)) && !told) {
        return true;
      }
    }
    return false;
  }

  /** Whether whoever does the verb at a place is the reader. */
  private boolean doer(int place) {
    int on = place - 1;
    while (on >= begin
        && (Lexicon.adverb(at.at(on)) || modal(at.at(on)) || at.at(on).equals("are"))) {
      on--;
    }
    return on < begin || Lexicon.DOERS.contains(at.at(on)) || Words.has("and or please", at.at(on));
  }

  private static boolean modal(String word) {
    return Lexicon.STRONG.contains(word) || Lexicon.WEAK.contains(word);
  }

  private Mood modal(int place) {
    int on = place;
    while (on >= begin && (modal(at.at(on)) || Lexicon.adverb(at.at(on)))) {
      on--;
    }
    if (clause(on)) {
      return Mood.SAID;
    }
    if (on >= begin && !Lexicon.DOERS.contains(at.at(on)) && !Words.has("it's and", at.at(on))) {
      return Mood.SAID;
    }
    boolean strong = Lexicon.STRONG.contains(at.at(place));
    return strong || urged() ? Mood.ORDER : Mood.SAID;
  }

  private boolean urged() {
    return Amounts.in(at)
        || at.says("now")
        || at.says("then")
        || at.at(0).equals("next")
        || at.says("safely")
        || at.says("as well");
  }

  private Mood subject(int place, String subject) {
    if (clause(place - 1)) {
      return Mood.SAID;
    }
    if (MODAL_OPENERS.contains(at.at(place - 1))) {
      return polite(subject) ? Mood.ORDER : Mood.SAID;
    }
    boolean aux = place > begin && Lexicon.FINITE.contains(at.at(place - 1));
    boolean told = Words.has("you we one", subject) && !aux && urged();
    return told ? Mood.ORDER : Mood.SAID;
  }

  private @Nullable Verb previous() {
    return verbs.isEmpty() ? null : verbs.get(verbs.size() - 1);
  }

  private Mood coordinated(int place, int conjunction, String left) {
    Verb previous = previous();
    if (previous != null) {
      boolean yields = left.equals("but") || Lexicon.YIELDING.contains(previous.base());
      boolean turned = yields && previous.mood() == Mood.REFUSED;
      return turned ? Mood.ORDER : previous.mood();
    }
    if (clause(conjunction)
        || at.words().subList(begin, conjunction).stream().anyMatch(Grammar::modal)) {
      return Mood.SAID;
    }
    return object(place + 1) ? start : Mood.SAID;
  }

  private boolean referred() {
    return at.saysOneOf(Lexicon.REFERRED);
  }

  /**
   * The mood of a verb after other words of its segment: fingers turn, the gap is large turn it.
   */
  private Mood after(int place, int governor) {
    Verb previous = previous();
    if (previous != null && CAUSING.contains(previous.base()) && place - previous.place() < 8) {
      return referred() ? Mood.SAID : previous.mood();
    }
    if (!object(place + 1) || Lexicon.ARTICLES.contains(at.at(governor))) {
      return Mood.SAID;
    }
    List<String> head = at.words().subList(begin, place);
    boolean finite = head.stream().anyMatch(Lexicon.FINITE::contains);
    boolean acting = Verbs.TURNING.contains(Verbs.base(at.at(place)));
    boolean giving = Verbs.GIVING.contains(Verbs.base(at.at(place))) && Amounts.in(at);
    if (!acting && !giving) {
      return Mood.SAID;
    }
    String first = at.at(begin);
    boolean prelude =
        Lexicon.PREPOSITIONS.contains(first) || first.endsWith("ing") || first.endsWith("ed");
    boolean bare =
        head.stream()
            .noneMatch(
                word ->
                    Lexicon.ARTICLES.contains(word)
                        || Lexicon.PREPOSITIONS.contains(word)
                        || Lexicon.SUBJECTS.contains(word));
    boolean loose = Part.plural(at.at(governor)) || Lexicon.SUBORDINATE.contains(at.at(governor));
    return finite && !loose || prelude && !clauseOnly(first) || bare && Amounts.in(at)
        ? start
        : Mood.SAID;
  }

  private static boolean clauseOnly(String first) {
    return CLAUSES.contains(first) && !Words.has("after before since", first);
  }
}
