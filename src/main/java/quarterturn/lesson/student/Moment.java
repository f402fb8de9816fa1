package quarterturn.lesson.student;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;
import quarterturn.session.Prompt;

/**
 * What a bench's session asks for at one moment.
 *
 * @param before the last reading of what is read now, or null
 * @param answered what the session's last answer read or turned, or null where it did neither
 * @param again whether the last answer is being corrected, so that nothing new is predicted
 * @param asks the step's questions
 */
public record Moment(
    Spot spot,
    Prompt prompt,
    @Nullable Value before,
    @Nullable Value answered,
    boolean again,
    List<LessonQuestion> asks) {}
