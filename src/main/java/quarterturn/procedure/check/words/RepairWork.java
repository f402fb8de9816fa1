package quarterturn.procedure.check.words;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Work that no text orders of whoever reads it: it is a qualified repairer's, or it does harm.
 *
 * @param verbs what is done; empty where any verb but one of looking will do
 * @param with words of which one stands behind the verb; empty where the verb is enough
 * @param where what the words behind the verb have to show besides
 */
record RepairWork(Set<String> verbs, Set<String> with, Pattern where) {
  private static final String UPON =
      "\\b(on|onto|upon|across|over|along|into|under|around|through)( \\S+){0,3} ";

  private static final String NEAR =
      "\\b(on|onto|across|over|above|in|into|near|by|beside|under|before|at|against)( \\S+){0,3} ";

  private static final String WOOD =
      "(board|fingerboard|fretboard|frets?|wood|top|neck|heel|bridge|body|instrument|guitar|bass|crack)\\b";

  private static final String HEAT =
      "radiator heater oven stove hob fire sun sunshine steam fireplace";

  private static final List<RepairWork> ALL =
      List.of(
          work("glue epoxy superglue cement solder bake steam prise pry lever drill rout ream", ""),
          work("heat", "", "\\b" + WOOD),
          work("bend flex", "", "^ (the |its )?neck (back|over|straight|forward|against|until)\\b"),
          work("knock bang beat whack", "", "\\b(in|out|off|down|home|loose|back|free)\\b"),
          work("", "glue superglue epoxy cyanoacrylate adhesive solder varnish lacquer putty"),
          work("", "drill cordless sander grinder hacksaw saw jigsaw chisel crowbar"),
          work("", "pliers hammer mallet vice vise"),
          work("", "emery sandpaper abrasive"),
          work(
              "",
              "lips teeth mouth",
              "\\b(in|into|between) (\\S+ )?(lips|teeth|mouth)\\b|\\bwith (\\S+ )?teeth\\b"),
          work("", "hairdryer dryer kettle candle flame"),
          work("", "gun iron", "\\b(heat|hot air|hot|soldering|clothes|flat) (gun|iron)\\b"),
          work("", HEAT, NEAR + "(" + HEAT.replace(' ', '|') + ")\\b"),
          work(
              "",
              "weight weights sand sandbag kilo kilos kg pounds brick bricks dumbbell bucket",
              "^(?!.*weight of).*\\b(neck|headstock)\\b"),
          work(
              "lay put place leave let press spread drape set hold rest spray pour drip sprinkle run",
              "wet damp soaked soaking dripping sodden water",
              UPON + WOOD),
          work("wrap cover", "wet damp soaked soaking dripping", "\\b" + WOOD),
          work("soak drench moisten flood swamp", "", "\\b" + WOOD),
          work("open reach", "amplifier amp"),
          work(
              "take remove unscrew undo lift pull",
              "amplifier amp mains",
              "\\b(back|cover|lid|grille|panel|chassis|plate|screws|apart)\\b"),
          work(
              "touch press poke prod push wiggle bend bridge",
              "wire wires valve valves tubes fuse capacitor chassis"),
          work("unhook hook pull flick", "spring springs"));

  private static final Set<String> TELLING = telling();

  private static final Set<String> LEAVING = Words.of("let ask have get leave take bring show");

  /** Words that put a thing out of the way. */
  private static final Pattern AWAY =
      Pattern.compile("\\b(away|aside|out of|off the|clear of|far from|no|not|never|without)\\b");

  private static RepairWork work(String verbs, String with) {
    return work(verbs, with, "");
  }

  private static RepairWork work(String verbs, String with, String where) {
    return new RepairWork(words(verbs), words(with), Pattern.compile(where));
  }

  private static Set<String> words(String line) {
    return line.isEmpty() ? Set.of() : Words.of(line);
  }

  /** Verbs by which nothing is done to an instrument. */
  private static Set<String> telling() {
    Set<String> all = new HashSet<>(Verbs.MINDING);
    all.removeAll(Words.of("hang lay try play keep leave rest start"));
    return Set.copyOf(all);
  }

  /** Whether a verb and the words behind it order such work. */
  static boolean is(String verb, Segment tail) {
    boolean left = LEAVING.contains(verb) && tail.saysOneOf(Lexicon.REFERRED);
    return !left && !TELLING.contains(verb) && ALL.stream().anyMatch(one -> one.done(verb, tail));
  }

  private boolean done(String verb, Segment tail) {
    boolean known = verbs.contains(verb);
    boolean near = with.isEmpty() || tail.words().stream().anyMatch(with::contains);
    return (known || verbs.isEmpty())
        && near
        && where.matcher(tail.all()).find()
        && !(verbs.isEmpty() && AWAY.matcher(tail.all()).find());
  }
}
