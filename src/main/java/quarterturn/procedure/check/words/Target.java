package quarterturn.procedure.check.words;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a verb is about.
 *
 * @param part the part, or null where none is named or the word is not known
 * @param named how it is said
 * @param words the words it is said in
 */
record Target(@Nullable Part part, Said named, Set<String> words) {
  /** How the object of a verb is said. */
  enum Said {
    NOUN,
    PRONOUN,
    NOTHING
  }

  private static final Set<String> PARTICLES =
      Words.of("up down back off out on in round around away over by about apart home through");

  private static final Target NONE = new Target(null, Said.NOTHING, Set.of());

  /** The target of the verb at a place, whose words go on to another place. */
  static Target of(Segment at, int verb, int to, Mentioned mentioned, boolean turning) {
    int on = verb + 1;
    Target far = NONE;
    boolean direct = true;
    while (on < to) {
      String word = at.at(on);
      if (direct && Lexicon.PRONOUNS.contains(word) && !nounAfter(at, on, to)) {
        return new Target(mentioned.meant(word, turning), Said.PRONOUN, Set.of(word));
      }
      if (Lexicon.PREPOSITIONS.contains(word) && !PARTICLES.contains(word)) {
        direct = false;
        if (Words.has("until till so if when while because as before after where than", word)) {
          return far;
        }
        on++;
        continue;
      }
      if (PARTICLES.contains(word) && (Lexicon.ARTICLES.contains(at.at(on + 1)) && on > verb + 1)) {
        direct = false;
      }
      if (word.equals("all") && at.at(on + 1).equals("the") && at.at(on + 2).equals("way")) {
        on += 3;
        continue;
      }
      int end = phrase(at, on, to);
      Target here = noun(at, on, end, to, mentioned);
      if (here != null && (direct || here.part() != null && here.part().ofRod())) {
        return here;
      }
      far = far.named() == Said.NOTHING && here != null && direct ? here : far;
      on = Math.max(end, on + 1);
    }
    return far;
  }

  private static boolean nounAfter(Segment at, int pronoun, int to) {
    boolean fixed = Words.has("it them itself", at.at(pronoun));
    String next = at.at(pronoun + 1);
    return !fixed
        && pronoun + 1 < to
        && !Lexicon.PREPOSITIONS.contains(next)
        && !Lexicon.adverb(next)
        && !Lexicon.ARTICLES.contains(next)
        && !PARTICLES.contains(next)
        && !next.equals("one");
  }

  /** Where the noun phrase that begins at a place ends. */
  private static int phrase(Segment at, int from, int to) {
    int on = from + 1;
    while (on < to
        && !Lexicon.PREPOSITIONS.contains(at.at(on))
        && !Lexicon.ARTICLES.contains(at.at(on))
        && !Lexicon.PRONOUNS.contains(at.at(on))
        && !Lexicon.adverb(at.at(on))
        && !(Part.named(at.at(on - 1)) != null && Part.named(at.at(on)) == null)) {
      on++;
    }
    return on;
  }

  private static @Nullable Target noun(Segment at, int from, int end, int to, Mentioned mentioned) {
    if (Amounts.in(at, from, end)) {
      boolean turn = Part.named(at.at(end - 1)) == Part.TURN && end - from < 4;
      return turn ? new Target(Part.TURN, Said.NOUN, Set.of("turn")) : null;
    }
    Part part = null;
    Part first = null;
    boolean rod = false;
    for (int on = from; on < end; on++) {
      Part here = Part.named(at, on);
      rod |= here == Part.ROD && !at.at(on).equals("wheel");
      first = here != null && part != null && part != here ? part : first;
      part = here == null || here == Part.OTHER && part != null ? part : here;
      boolean set = at.at(on).equals("set") && (on > from + 1 || at.at(on + 1).equals("of"));
      part = set ? Part.STRING : part;
    }
    Set<String> words = new HashSet<>(at.words().subList(from, end));
    Part of = Words.has("of in on at that from", at.at(end)) ? ofPart(at, end, to) : null;
    if (part == Part.SCREW) {
      words.add("screw");
      part = rod && first != Part.COVER ? Part.ROD : of != null ? of : first;
      part = part == null ? mentioned.holder() : part;
    } else if (rod && part != Part.COVER && part != Part.OTHER) {
      part = Part.ROD;
    } else if (part == Part.KEY && (words.contains("tuning") || words.contains("tuner"))) {
      part = Part.TUNER;
    } else if (part == null && of != null && of.made()) {
      part = of;
    }
    boolean said =
        part != null
            || words.contains("screw")
            || Lexicon.ARTICLES.contains(at.at(from)) && end > from + 1;
    return said ? new Target(part == null ? Part.OTHER : part, Said.NOUN, Set.copyOf(words)) : null;
  }

  /** The part that what stands before "of" or "in" belongs to. */
  private static @Nullable Part ofPart(Segment at, int from, int to) {
    Part last = null;
    for (int on = from + 1; on < Math.min(to, from + 5); on++) {
      Part part = Part.named(at, on);
      if (last != null && part == null) {
        return last;
      }
      last = part == null || part == Part.SCREW ? last : part;
    }
    return last;
  }

  boolean is(Part some) {
    return part == some;
  }
}
