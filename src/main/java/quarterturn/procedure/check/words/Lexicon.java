package quarterturn.procedure.check.words;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Words that hold a sentence together, and what they say of the verb after them. */
final class Lexicon {
  static final Set<String> ARTICLES =
      Words.of(
          "the a an this that these those your my our its their his her every each all both any some",
          "another one no which whose either neither");

  static final Set<String> PRONOUNS = Words.of("it them this that these those both itself");

  /** Pronouns that can only be a subject. */
  static final Set<String> SUBJECTS = Words.of("you we i they he she who people everybody one");

  /** Who carries the work out: an obligation of theirs is an order. */
  static final Set<String> DOERS =
      Words.of(
          "you we i one everyone everybody player beginner learner student pupil reader user",
          "technician owner");

  static final Set<String> NEGATIONS =
      Words.of(
          "not never no nobody nothing neither nor cannot none hardly seldom nowhere without don't",
          "doesn't didn't shouldn't mustn't can't won't wouldn't needn't isn't aren't wasn't dont",
          "avoid refrain stop cease resist quit forbid rather instead");

  /** Verbs whose negation asks for the act after them: don't forget to, do not stop. */
  static final Set<String> YIELDING =
      Words.of(
          "forget fail hesitate neglect omit miss afraid shy worry wait stop mind fear pause cease",
          "quit delay scruple skip refuse resist avoid");

  /** Words that begin a clause which orders nothing. */
  static final Set<String> SUBORDINATE =
      Words.of(
          "if when whenever while as because since although though unless until till whether where",
          "wherever who whom whose what how lest than once that which why before after so");

  static final Set<String> STRONG = Words.of("should must shall ought had better need 'd 'll");

  static final Set<String> WEAK = Words.of("can could may might will would dare");

  static final Set<String> FINITE =
      Words.of(
          "is are was were has have had does did be been 's reads stands touches buzzes moves gets",
          "stood went ended came stopped made felt fell grew took gave kept began left ran brought told",
          "seems feels comes goes lies sits shows slips creaks jams holds stops settles");

  static final Set<String> PREPOSITIONS =
      Words.of(
          "by to until till with in into at from for of on onto over under through along toward",
          "towards against between behind beside near per than as so if when while because where",
          "beyond before after during within and or but then without upon across");

  /** Adverbs that may stand before a verb without changing what it is. */
  static final Set<String> ADVERBS =
      Words.of(
          "now then next first second third finally last please kindly just simply only always also",
          "again once more still even perhaps maybe thereafter afterwards afterward meanwhile hence",
          "therefore thus too well ok okay right alright yes so do ahead immediately straightaway",
          "both further together thereupon instead anyway otherwise lastly there here step later",
          "soon today tomorrow twice already yet rather best quickly sometimes fast hard");

  /** Phrases at the head of a clause that leave its mood as it is, longest first. */
  private static final List<List<String>> LEADS =
      phrases(
          "after that",
          "after this",
          "after which",
          "in that case",
          "in this case",
          "if so",
          "if not",
          "if needed",
          "if necessary",
          "if you like",
          "if need be",
          "at last",
          "at once",
          "this time",
          "from there",
          "from here",
          "once more",
          "one more time",
          "as usual",
          "as before",
          "to begin with",
          "to start with",
          "to finish",
          "of course",
          "by now",
          "by hand",
          "go ahead and",
          "go on and",
          "come on and",
          "go and",
          "by all means",
          "with this done",
          "with that done",
          "that done",
          "this done",
          "in addition",
          "for now",
          "as a next step",
          "as the next step",
          "as a last step",
          "in the end",
          "on top of that",
          "all right",
          "at the same time",
          "why not",
          "why don't you",
          "how about",
          "what about",
          "or else",
          "else",
          "or",
          "nor",
          "and",
          "but",
          "not only",
          "be so kind and",
          "be a good sport and");

  /** Who does what a text leaves to somebody else. */
  static final List<String> REFERRED =
      Words.phrases(
          "repairer|repairers|repairer's|luthier|maker|workshop|shop|expert|professional",
          "specialist|qualified|repairman");

  private Lexicon() {}

  private static List<List<String>> phrases(String... phrases) {
    return Stream.of(phrases).map(phrase -> List.of(phrase.split(" "))).toList();
  }

  /** How many words of such a phrase begin at a place; none where there is no phrase. */
  static int lead(Segment at, int from) {
    for (List<String> lead : LEADS) {
      int to = from + lead.size();
      if (at.at(from).equals(lead.get(0))
          && to <= at.size()
          && at.words().subList(from, to).equals(lead)) {
        return lead.size();
      }
    }
    return 0;
  }

  static boolean adverb(String word) {
    return ADVERBS.contains(word) || word.endsWith("ly") && word.length() > 4;
  }

  /** A word as it is looked up: possessives and some short forms opened. */
  static List<String> spelled(String word) {
    return switch (word) {
      case "°" -> List.of("degrees");
      case "&", "+" -> List.of("and");
      case "/" -> List.of("or");
      case "let's" -> List.of("let", "us");
      case "\"", "“", "”", "'", "_", "`", "~", "#", "^", "‘", "’", "«", "»" -> List.of();
      case "o'clock", "oclock" -> List.of("o'clock");
      case "gonna" -> List.of("going", "to");
      case "wanna" -> List.of("want", "to");
      case "gotta" -> List.of("must");
      default -> opened(word);
    };
  }

  private static List<String> opened(String word) {
    int at = word.indexOf('\'');
    if (at <= 0 || word.endsWith("n't")) {
      return List.of(word);
    }
    String end = word.substring(at);
    boolean verb =
        PRONOUNS.contains(word.substring(0, at)) || SUBJECTS.contains(word.substring(0, at));
    return switch (end) {
      case "'s" -> verb ? List.of(word.substring(0, at), "is") : List.of(word.substring(0, at));
      case "'re" -> List.of(word.substring(0, at), "are");
      case "'ve" -> List.of(word.substring(0, at), "have");
      default -> List.of(word.substring(0, at), end);
    };
  }
}
