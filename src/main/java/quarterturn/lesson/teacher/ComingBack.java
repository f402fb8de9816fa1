package quarterturn.lesson.teacher;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.Order;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * The questions asked of those at a bench, and whether each comes back next time, for a teacher to
 * change.
 *
 * @param bench as it is called
 */
record ComingBack(Desk desk, String bench, List<Order.ComeBack> asked) {
  /** The question which of them to change. */
  Question question() {
    List<String> lines = new ArrayList<>();
    for (Order.ComeBack one : asked) {
      lines.add(
          (lines.size() + 1)
              + ". "
              + Printable.of(one.student())
              + (one.again() ? ", comes back: " : ", does not: ")
              + Printable.of(one.question()));
    }
    return new Question.Words(
        bench + ": What comes back? A number changes it",
        lines,
        "Which to change",
        "Type its number, or several; Enter leaves all as it is.");
  }

  /** Changes those whose numbers are typed, and returns what was done. */
  List<String> change(String typed) throws RefusedException, IOException {
    List<Order.ComeBack> changed = new ArrayList<>();
    for (String number : typed.isBlank() ? new String[0] : typed.split("[,;\\s]+")) {
      int at = number.matches("[1-9]\\d{0,3}") ? Integer.parseInt(number) - 1 : -1;
      if (at < 0 || at >= asked.size()) {
        throw new NotUnderstoodException("type numbers from 1 to " + asked.size());
      }
      changed.add(asked.get(at));
    }
    List<String> out = new ArrayList<>();
    for (Order.ComeBack one : changed) {
      out.add(desk.decide(new Order.ComeBack(one.student(), one.question(), !one.again())));
    }
    return out;
  }
}
