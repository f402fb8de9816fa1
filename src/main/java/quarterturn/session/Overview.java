package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.ContactMap;
import quarterturn.craft.Window;
import quarterturn.procedure.Guide;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * The data of a session that every face keeps in view.
 *
 * @param session the session's name, to resume it by, or {@link #REHEARSAL}
 * @param instrument the instrument's name, or the kind's where it has none
 * @param kind null until chosen
 * @param window null until the kind and style are chosen
 * @param source where the window comes from, or null
 * @param stage the procedure's title, behind the title of the one that calls it: "Whole set-up:
 *     Neck relief"
 * @param parts the parts of the procedure in order
 * @param part index of the present part
 * @param done indices of the parts before it in which something was really done
 * @param trail readings and turns so far, oldest first
 * @param net the rod's position from as found, plus is tighter
 * @param today turns in the last {@code day}, added up without direction
 * @param day the length of time for {@code today}
 * @param rodPlace id of the option chosen for the place of the rod nut, or null
 * @param stages the state of each result of a set-up
 * @param contact where the player's stroke meets the frets, where enough was read and a picture of
 *     it is asked for; else null
 * @param parting what to do with key and strings before one leaves, a sentence each; empty where
 *     nothing is to be done
 * @param others the readings of other quantities than relief, oldest first
 * @param program how the program is called at a shell
 * @param guide what helps a person beside the steps
 * @param by who works, or null where that was not said
 * @param ticket of the instrument as its file has it now, or null
 */
public record Overview(
    String session,
    String instrument,
    @Nullable Kind kind,
    @Nullable Window window,
    @Nullable String source,
    Role role,
    String stage,
    List<String> parts,
    int part,
    Set<Integer> done,
    List<Entry> trail,
    Turn net,
    Turn today,
    Duration day,
    @Nullable String rodPlace,
    List<Stage> stages,
    @Nullable ContactMap contact,
    List<String> parting,
    List<Entry.Other> others,
    Program program,
    Guide guide,
    @Nullable String by,
    @Nullable String ticket) {
  public Overview {
    others = List.copyOf(others);
    parts = List.copyOf(parts);
    done = Set.copyOf(done);
    trail = List.copyOf(trail);
    stages = List.copyOf(stages);
    parting = List.copyOf(parting);
  }

  /** An overview in a program that needs no options to be called again. */
  public Overview(
      String session,
      String instrument,
      @Nullable Kind kind,
      @Nullable Window window,
      @Nullable String source,
      Role role,
      String stage,
      List<String> parts,
      int part,
      Set<Integer> done,
      List<Entry> trail,
      Turn net,
      Turn today,
      Duration day,
      @Nullable String rodPlace,
      List<Stage> stages,
      @Nullable ContactMap contact,
      List<String> parting) {
    this(
        session,
        instrument,
        kind,
        window,
        source,
        role,
        stage,
        parts,
        part,
        done,
        trail,
        net,
        today,
        day,
        rodPlace,
        stages,
        contact,
        parting,
        List.of(),
        Program.here(),
        Guide.NONE,
        null,
        null);
  }

  /** This overview with other words on what to do before one leaves. */
  public Overview parting(List<String> other) {
    return with(instrument, other, others, program, guide, by, ticket);
  }

  /** This overview with the readings of other quantities than relief. */
  public Overview reading(List<Entry.Other> more) {
    return with(instrument, parting, more, program, guide, by, ticket);
  }

  /** This overview with what helps a person beside the steps. */
  public Overview guided(Guide other) {
    return with(instrument, parting, others, program, other, by, ticket);
  }

  /** This overview in a program that is called in its own way. */
  public Overview calledBy(Program other) {
    return with(instrument, parting, others, other, guide, by, ticket);
  }

  /** This overview with another name for the instrument. */
  public Overview of(String other) {
    return with(other, parting, others, program, guide, by, ticket);
  }

  /** This overview with who works, and by which ticket. */
  public Overview doneBy(@Nullable String who, @Nullable String job) {
    return with(instrument, parting, others, program, guide, who, job);
  }

  private Overview with(
      String instrument,
      List<String> parting,
      List<Entry.Other> others,
      Program program,
      Guide guide,
      @Nullable String by,
      @Nullable String ticket) {
    return new Overview(
        session,
        instrument,
        kind,
        window,
        source,
        role,
        stage,
        parts,
        part,
        done,
        trail,
        net,
        today,
        day,
        rodPlace,
        stages,
        contact,
        parting,
        others,
        program,
        guide,
        by,
        ticket);
  }

  /** Every reading and turn, oldest first. */
  public List<Entry> all() {
    return Stream.concat(trail.stream(), others.stream())
        .sorted(Comparator.comparing(Entry::at))
        .toList();
  }

  /** The name of a session that is not recorded. */
  public static final String REHEARSAL = "rehearsal";

  /** Where the session is: "Whole set-up: Neck relief, part 5 of 7: Turn". */
  public String place() {
    return part < 0 || part >= parts.size()
        ? stage
        : stage + ", part " + (part + 1) + " of " + parts.size() + ": " + parts.get(part);
  }

  /** Whether answers are recorded, so that the session can be resumed. */
  public boolean kept() {
    return !session.equals(REHEARSAL);
  }

  /** A sentence on what is recorded when the person leaves, and how to resume. */
  public String later() {
    return kept()
        ? "Everything is kept. Go on later with:\n" + program.typed("resume " + session)
        : "Of a rehearsal nothing is kept.";
  }

  /** A reading or a turn. */
  public sealed interface Entry {
    Instant at();

    /**
     * A relief reading.
     *
     * @param stale whether a turn or a break has made it stale
     */
    record Reading(Instant at, Which which, Bracket bracket, boolean stale) implements Entry {}

    /**
     * A reading of another quantity: a part of the bow, an action, the air.
     *
     * @param string the string as texts call it, or empty
     * @param value with its unit
     * @param stale whether something done since has made it stale
     */
    record Other(Instant at, Quantity quantity, String string, String value, boolean stale)
        implements Entry {
      /** "bow at the nut end E1 0.15 to 0.20 mm". */
      public String words() {
        return quantity.said() + (string.isEmpty() ? " " : " " + string + " ") + value;
      }
    }

    /**
     * A rod turn, plus tightened.
     *
     * @param feel how it felt, or null where that is not known
     * @param sure false where nobody could tell after a break how far it was turned
     */
    record Turned(Instant at, Turn turn, @Nullable Feel feel, boolean sure) implements Entry {
      /** A turn that was reported when it was made. */
      public Turned(Instant at, Turn turn, Feel feel) {
        this(at, turn, feel, true);
      }
    }

    /** Whether the size of every turn is known. */
    static boolean sure(List<Entry> trail) {
      return trail.stream().allMatch(entry -> !(entry instanceof Turned turned) || turned.sure());
    }
  }
}
