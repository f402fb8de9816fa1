package quarterturn.lesson.student;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;
import quarterturn.session.Prompt;

/**
 * What a bench's session asks for at one moment.
 *
 * @param before the last reading of what is read now or by what a turn is judged, or null
 * @param step the step of the gauge for that
 * @param came what has come of rounds, by their numbers
 * @param again whether the last answer is being corrected, so that nothing new is predicted
 * @param repeats whether what is read now was read since the instrument was last changed
 * @param turns whether the last reading asks for a turn of the rod
 * @param asks the step's questions
 */
public record Moment(
    Spot spot,
    Prompt prompt,
    @Nullable Value before,
    double step,
    Map<Integer, Value> came,
    boolean again,
    boolean repeats,
    boolean turns,
    List<LessonQuestion> asks) {}
