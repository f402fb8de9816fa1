package quarterturn.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.OwnMake;
import quarterturn.session.engine.EngineQuestions;

/**
 * The kind of a session's instrument, and how it is played, from the session's events.
 *
 * @param id the kind's id, or null where none was said
 * @param kind the kind with what is this instrument's own, or null where it is not known
 * @param style how the player plays, or null where it was not said
 */
public record PlayedKind(@Nullable String id, @Nullable Kind kind, @Nullable Style style) {
  public static PlayedKind of(List<Event> events, Library library) {
    if (events.isEmpty() || !(events.get(0) instanceof Event.Started started)) {
      return new PlayedKind(null, null, null);
    }
    String id = started.kind();
    Style style = started.style();
    for (Event event : events) {
      if (event instanceof Event.Chose chose) {
        id = chose.step().equals(EngineQuestions.KIND) ? chose.option() : id;
        style = chose.step().equals(EngineQuestions.STYLE) ? style(chose.option(), style) : style;
      }
    }
    Kind kind = id == null ? null : library.kinds().get(id);
    Kind own = kind == null || started.own() == null ? kind : OwnMake.of(kind, started.own());
    Integer joint = started.jointFret();
    Style played = own == null ? style : own.styled(style);
    return new PlayedKind(id, own == null || joint == null ? own : own.withJoint(joint), played);
  }

  private static @Nullable Style style(String word, @Nullable Style before) {
    for (Style style : Style.values()) {
      if (style.word().equals(word)) {
        return style;
      }
    }
    return before;
  }
}
