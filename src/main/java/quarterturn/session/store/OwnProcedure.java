package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Results;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/**
 * A procedure of the user's own, to be offered.
 *
 * @param title its title, or its id where it can't be read
 * @param fault the first of what is wrong with its file, or empty
 */
public record OwnProcedure(String id, String title, String fault) {
  /**
   * Those of a folder; those that the results offer, by their name or as called by name alone, are
   * left out. A folder {@code blocks} holds none.
   */
  public static List<OwnProcedure> in(@Nullable Path own, Results results) throws IOException {
    Shelf shelf = new Shelf(own);
    List<OwnProcedure> found = new ArrayList<>();
    for (String id : shelf.own()) {
      if (results.offers().stream().noneMatch(offer -> offer.procedure().equals(id))) {
        found.add(read(shelf, id));
      }
    }
    return found;
  }

  private static OwnProcedure read(Shelf shelf, String id) {
    try {
      return new OwnProcedure(id, shelf.load(id).main().title(), "");
    } catch (UnreadableException e) {
      return new OwnProcedure(id, id, e.faults().get(0).brief());
    } catch (IOException e) {
      return new OwnProcedure(id, id, Printable.of(String.valueOf(e.getMessage())));
    }
  }

  /**
   * The option to start it; its label has the id too where another of {@code all} has its title.
   */
  Question.Option option(List<OwnProcedure> all, String group) {
    boolean alone = all.stream().filter(one -> one.title.equals(title)).count() == 1;
    String detail = fault.isEmpty() ? "A procedure of your own." : "It can't be started. " + fault;
    return new Question.Option(id, alone ? title : title + ", " + id, detail, group);
  }
}
