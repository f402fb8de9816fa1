package quarterturn.procedure.check.words;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Tells which act a verb and its target are. */
final class Acting {
  private static final Set<String> CLOCKED =
      Words.of("round around clockwise toward towards away o'clock past beyond");

  private Acting() {}

  /**
   * The act of a verb, or null where it changes nothing.
   *
   * @param tail the words after the verb, and those of later segments that have no verb
   */
  static @Nullable Act of(String verb, Target target, Segment tail, Mentioned mentioned) {
    if (turnsRod(verb, target, tail, mentioned)) {
      return Act.TURN_ROD;
    }
    Part part = target.part();
    boolean screws = target.words().contains("screw");
    if (forces(verb, part, tail) || RepairWork.is(verb, tail)) {
      return Act.REPAIR;
    }
    boolean near = tail.saysOneOf(List.of("post", "bridge", "pitch", "string"));
    boolean lot =
        target.words().stream().anyMatch(Words.of("lot set everything all them")::contains)
            && !target.words().contains("ends");
    if (tail.saysOneOf(List.of("stroke", "strokes")) && tail.says("file")) {
      return Act.WORK_NUT;
    }
    boolean all = target.named() == Target.Said.NOTHING && tail.says("all of them");
    if ((part == null && near || lot || all) && Words.has("cut snip clip sever nip", verb)) {
      return Act.CUT_STRING;
    }
    if (part == null || part == Part.OTHER && verb.equals("tune")) {
      boolean down =
          verb.equals("tune") && tail.says("down") || Words.has("detune untune downtune", verb);
      return down ? Act.SLACKEN : Words.has("restring string", verb) ? Act.CHANGE_STRINGS : null;
    }
    return switch (part) {
      case STRING -> string(verb, target, tail);
      case TUNER -> target.named() == Target.Said.NOUN ? tuner(verb, tail) : null;
      case NECK -> neck(verb, tail, screws);
      case SADDLE -> saddle(verb, target, tail, screws);
      case PICKUP ->
          Verbs.MOVING.contains(verb) || screws && Verbs.TURNING.contains(verb)
              ? Act.SET_PICKUP
              : null;
      case SLOT, NUT -> slotted(verb) ? Act.WORK_NUT : null;
      case FRET -> fret(verb, tail) ? Act.WORK_FRETS : null;
      case BOARD -> Verbs.WORKING.contains(verb) ? Act.WORK_WOOD : null;
      case OTHER ->
          verb.equals("restring") || Words.has("string", verb) ? Act.CHANGE_STRINGS : null;
      default -> null;
    };
  }

  /** Whether the neck is bent or the rod nut worked on by other means than its key. */
  private static boolean forces(String verb, @Nullable Part part, Segment tail) {
    boolean neck = part == Part.NECK || part == Part.BOARD;
    boolean nut = part == Part.ROD || part == Part.NUT || part == Part.KEY;
    boolean upon = tail.says("neck") || tail.says("headstock");
    return neck && Words.has("clamp weigh load iron", verb)
        || (part == null || part == Part.OTHER) && upon && Words.has("hang clamp", verb)
        || nut && Words.has("oil grease lubricate heat hammer hit strike tap", verb);
  }

  private static boolean slackens(String verb, Segment tail) {
    return Words.has("back unwind slacken loosen", verb)
        || Words.has("turn let wind ease", verb) && tail.saysOneOf(List.of("back", "down", "off"));
  }

  private static @Nullable Act tuner(String verb, Segment tail) {
    return slackens(verb, tail) ? Act.SLACKEN : raises(verb, tail) ? Act.RAISE_PITCH : null;
  }

  private static boolean raises(String verb, Segment tail) {
    return Words.has("wind turn bring crank", verb)
        && tail.saysOneOf(List.of("up", "over", "above"))
        && !tail.says("pitch");
  }

  private static boolean slotted(String verb) {
    return Verbs.WORKING.contains(verb)
        || Words.has("lower raise fill replace swap change deepen", verb);
  }

  private static boolean fret(String verb, Segment tail) {
    return Verbs.WORKING.contains(verb)
        || Words.has("replace lower seat knock tap reseat pull", verb)
        || verb.equals("press") && (tail.says("in") || tail.says("home"));
  }

  private static @Nullable Act saddle(String verb, Target target, Segment tail, boolean screws) {
    if (verb.equals("raise") || verb.equals("shim")) {
      return Act.RAISE_SADDLE;
    }
    boolean moved = Verbs.MOVING.contains(verb) || Verbs.WORKING.contains(verb);
    boolean turned = screws && Verbs.TURNING.contains(verb);
    boolean action = target.words().contains("action") && Words.has("slide turn", verb);
    boolean out = tail.says("out") || tail.says("off") || tail.says("from");
    boolean taken =
        Words.has("remove replace swap", verb) || out && Words.has("draw pull take lift", verb);
    return (moved || turned || taken) && !action ? Act.LOWER_SADDLE : null;
  }

  private static @Nullable Act neck(String verb, Segment tail, boolean screws) {
    boolean off = tail.says("off") || tail.says("out") || tail.says("apart") || tail.says("away");
    boolean on = tail.says("on") || tail.says("in") || tail.says("back") || tail.says("down");
    if (Words.has("unscrew detach unbolt loosen remove separate undo slacken", verb)
        || off && (Verbs.REMOVING.contains(verb) || Words.has("draw slide ease", verb))
        || screws && Words.has("take back release free", verb)) {
      return Act.LOOSEN_NECK;
    }
    if (screws && Words.has("tighten fasten screw drive turn do", verb)
        || on && Words.has("screw bolt fasten fix put fit refit tighten", verb)
        || Words.has("fasten bolt refit remount", verb)) {
      return Act.FASTEN_NECK;
    }
    return Verbs.WORKING.contains(verb) ? Act.WORK_WOOD : null;
  }

  private static @Nullable Act string(String verb, Target target, Segment tail) {
    Set<String> words = target.words();
    if (words.contains("ends") || words.contains("end")) {
      return null;
    }
    if (Words.has("cut snip clip sever nip", verb)) {
      return Act.CUT_STRING;
    }
    if (raises(verb, tail) && !words.contains("new")) {
      return Act.RAISE_PITCH;
    }
    boolean fresh =
        words.stream()
            .anyMatch(
                Words.of(
                        "new other fresh heavier lighter thicker thinner different another second set spare next")
                    ::contains);
    boolean off = tail.says("off") || tail.says("out");
    boolean fitted =
        Words.has("change replace exchange renew restring swap mount install", verb)
            || verb.equals("remove")
            || off && Words.has("take pull get", verb)
            || fresh
                && Words.has("fit put string use", verb)
                && (!verb.equals("put") || tail.says("on"));
    if (fitted) {
      return Act.CHANGE_STRINGS;
    }
    boolean whole =
        words.contains("every")
            || words.contains("all")
            || words.contains("strings")
            || words.contains("them")
            || words.contains("both");
    boolean little = tail.says("a little") || words.contains("each") && tail.says("little");
    boolean down = tail.says("down") || tail.says("lower") || tail.says("slack");
    boolean slack =
        Words.has("slacken loosen detune untune release relax downtune unwind ease", verb)
            || down && Words.has("tune bring let take turn wind drop get", verb)
            || Words.has("drop lower", verb);
    return !slack ? null : whole && !little ? Act.SLACKEN : Act.EASE_STRING;
  }

  private static boolean turnsRod(String verb, Target target, Segment tail, Mentioned mentioned) {
    boolean amount = Amounts.in(tail);
    boolean way = Amounts.way(tail) || tail.says("o'clock");
    boolean turning = Verbs.TURNING.contains(verb);
    boolean setting = Verbs.SETTING.contains(verb);
    if (Verbs.MINDING.contains(verb) || Words.has("retune tune", verb) && !target.is(Part.ROD)) {
      return false;
    }
    Part part = target.part();
    if (target.named() == Target.Said.NOTHING) {
      boolean near = mentioned.nearRod();
      boolean going = Verbs.GIVING.contains(verb) || Verbs.SETTING.contains(verb);
      return turning && (amount || way) && (near || mentioned.rod())
          || turning && near && (mentioned.ownRod() || tail.saysOneOf(Amounts.ON))
          || (amount || way) && near && !Words.has("tune", verb)
          || going && tail.saysOneOf(Amounts.ON) && mentioned.rod() && near && repeats(verb, tail);
    }
    boolean slack = target.words().contains("slack") && (tail.says("rod") || tail.says("nut"));
    if (slack && Words.has("take remove use", verb)) {
      return true;
    }
    if (part == null) {
      return turning
          || amount
          || way && Verbs.GIVING.contains(verb)
          || setting && Amounts.more(tail);
    }
    return switch (part) {
      case ROD ->
          turning
              || setting
              || amount
              || way
              || Verbs.GIVING.contains(verb) && given(verb, target, tail);
      case NUT ->
          turning && !verb.equals("screw")
              || amount
              || way
              || setting && !Words.has("trim", verb)
              || Verbs.GIVING.contains(verb) && given(verb, target, tail) && !slotted(verb);
      case KEY ->
          turning
              || amount
              || way
              || Words.has("nudge force", verb)
              || Verbs.GIVING.contains(verb) && CLOCKED.stream().anyMatch(tail::says)
              || pressed(verb, tail);
      case TURN ->
          amount && !others(tail) && !mentioned.nearOther()
              || Words.has(
                      "repeat redo do make undo take add apply give tighten loosen turn follow reverse double perform finish complete execute try",
                      verb)
                  && !mentioned.nearOther();
      case RELIEF -> amount || way;
      case NECK ->
          turning && amount && !target.words().contains("screw")
              || amount
                  && !target.words().contains("screw")
                  && (setting || Verbs.GIVING.contains(verb))
              || Words.has("straighten", verb)
              || verb.equals("tighten")
                  && !target.words().contains("screw")
                  && !tail.says("pocket");
      case STRING, FRET, BOARD, SLOT, OTHER ->
          target.named() == Target.Said.PRONOUN
                  && (amount || way)
                  && (turning || mentioned.rod() && !Verbs.MINDING.contains(verb))
              || tail.says("o'clock") && mentioned.rod();
      default -> target.named() == Target.Said.PRONOUN && tail.says("o'clock") && mentioned.rod();
    };
  }

  private static boolean others(Segment tail) {
    return tail.words().stream().map(Part::named).anyMatch(part -> part != null && part.turned());
  }

  private static boolean pressed(String verb, Segment tail) {
    boolean upon = tail.at(0).equals("on") || tail.at(0).equals("upon") || tail.at(0).equals("at");
    return upon && Words.has("lean push pull heave press hang bear stand haul", verb);
  }

  private static boolean repeats(String verb, Segment tail) {
    return Words.has("repeat redo continue go keep carry proceed back ease do", verb)
        && !tail.says("tuning")
        && !tail.says("reading");
  }

  /** Whether a verb of giving moves the rod or its nut, though no amount is said. */
  private static boolean given(String verb, Target target, Segment tail) {
    boolean out = tail.says("off") || tail.says("out");
    boolean removed = out && Words.has("take put", verb) && !Amounts.in(tail);
    return Amounts.more(tail)
        && !removed
        && !Words.has("leave set let keep spend use open close", verb);
  }
}
