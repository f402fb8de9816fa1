package quarterturn.procedure.check.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Verbs, by what they do to a part of the instrument. */
final class Verbs {
  /** Verbs that can only mean a turn where a rod nut is their object. */
  static final Set<String> TURNING =
      Words.of(
          "tighten loosen turn rotate crank twist wind unwind spin torque snug cinch tauten swivel",
          "untighten overtighten screw unscrew wrench swing {way}");

  /** Verbs that mean a turn where the rod itself is their object. */
  static final Set<String> SETTING =
      Words.of(
          "adjust tweak tension stress slacken ease relax release force nudge back straighten undo",
          "correct tune trim unload load preload set-up detension retension bottom max");

  /** Verbs that give the rod an amount, or move its key to a place. */
  static final Set<String> GIVING =
      Words.of(
          "give bring take move put go push pull run work send make add apply do repeat redo",
          "keep continue carry advance increase decrease reduce lower raise step set draw drive lean",
          "let open close shift proceed finish start begin resume follow walk coax grant allow allot",
          "use spend help");

  /** Verbs that cut or wear wood and metal away, or join them for good. */
  static final Set<String> WORKING =
      Words.of(
          "cut file sand saw drill glue solder hammer chisel plane heat steam deepen widen grind",
          "level crown recrown dress shim shave scrape carve epoxy superglue rout ream");

  static final Set<String> FITTING =
      Words.of(
          "mount fit change swap replace restring string install mount renew exchange put switch");

  static final Set<String> LOOSENING =
      Words.of(
          "slacken loosen detune untune release relax drop lower unwind slack let bring tune",
          "downtune take ease");

  static final Set<String> REMOVING =
      Words.of(
          "unscrew remove detach unbolt loosen undo take lift pull separate release slacken open",
          "free back");

  static final Set<String> MOVING =
      Words.of(
          "lower raise move slide shift turn screw adjust set file sand shim bring wind push pull",
          "tilt drop lift shave take push back");

  /** Verbs of looking, reading and saying: nothing is moved by them. */
  static final Set<String> MINDING =
      Words.of(
          "note say read write remember expect look see check think consider mark count know watch",
          "feel learn recall compare imagine measure wait rest leave record tell ask stop find",
          "understand observe mind mention guess predict listen sight try play show describe call",
          "report choose decide learn stay avoid start type hear hang lay keep store print lie");

  /** What else one is told to do at a bench. */
  static final Set<String> OTHER =
      Words.of(
          "get have press hold seat clean rock support rub wipe shine wear face come insert fetch",
          "grab help want need touch tap tape slip bend stretch oil polish plug unplug start begin",
          "bolt fasten cover shorten lengthen retune fix fill ensure be act help stop clamp pluck",
          "strap dab smear spread spray wrap drape grease lubricate hit weigh load iron clip snip capo strum place pick throw buy order confirm return reach prepare ready continue");

  private static final Map<String, String> BASES = bases();

  private Verbs() {}

  private static Map<String, String> bases() {
    Map<String, String> bases = new HashMap<>();
    for (Set<String> some :
        new Set[] {
          OTHER, MINDING, MOVING, REMOVING, LOOSENING, FITTING, WORKING, GIVING, SETTING, TURNING
        }) {
      for (String verb : some) {
        inflect(bases, verb);
      }
    }
    Map<String, String> irregular =
        Map.ofEntries(
            Map.entry("given", "give"),
            Map.entry("taken", "take"),
            Map.entry("made", "make"),
            Map.entry("brought", "bring"),
            Map.entry("done", "do"),
            Map.entry("put", "put"),
            Map.entry("swung", "swing"),
            Map.entry("run", "run"),
            Map.entry("wound", "wind"),
            Map.entry("spun", "spin"),
            Map.entry("cut", "cut"),
            Map.entry("set", "set"),
            Map.entry("drawn", "draw"),
            Map.entry("driven", "drive"),
            Map.entry("sent", "send"));
    bases.putAll(irregular);
    return bases;
  }

  private static void inflect(Map<String, String> bases, String verb) {
    bases.put(verb, verb);
    String stem = verb.endsWith("e") ? verb.substring(0, verb.length() - 1) : verb;
    String doubled = verb + verb.substring(verb.length() - 1);
    for (String end : new String[] {"ing", "ed"}) {
      bases.put(stem + end, verb);
      bases.put(doubled + end, verb);
    }
  }

  /** Whether a word is a verb that is told of here, in whichever form. */
  static boolean known(String word) {
    return BASES.containsKey(base(word));
  }

  /** The form that an order has: turning, retighten and turned are turn, tighten and turn. */
  static String base(String word) {
    String known = BASES.get(word);
    if (known == null && word.startsWith("re")) {
      known = BASES.get(word.substring(2));
    }
    return known == null ? word : known;
  }

  /** Whether a word has the form of an order. */
  static boolean bare(String word) {
    return known(word) && (base(word).equals(word) || ("re" + base(word)).equals(word));
  }

  /** Whether a word is such a verb ending in -ing. */
  static boolean gerund(String word) {
    return word.endsWith("ing") && known(word) && !bare(word);
  }

  /** Whether a word is such a verb in the form of what was done. */
  static boolean participle(String word) {
    return known(word) && !gerund(word) && (!bare(word) || Words.has("put cut set run", word));
  }
}
