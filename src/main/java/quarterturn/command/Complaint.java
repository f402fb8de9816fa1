package quarterturn.command;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import quarterturn.command.place.Letters;
import quarterturn.command.place.Where;
import quarterturn.platform.Encodings;
import quarterturn.procedure.condition.Quote;
import quarterturn.unit.Printable;

/** An error as the user should read it. */
final class Complaint {
  private Complaint() {}

  /**
   * An error, with what to do where it is a named folder that can't be written.
   *
   * @param where the folders of the command, or null
   */
  static String of(Exception e, @Nullable Where where) {
    String said = of(e);
    if (where == null || said.contains("--data")) {
      return said;
    }
    @Nullable String file = e instanceof FileSystemException of ? of.getFile() : null;
    boolean record = said.startsWith("could not write to");
    Path lesson = where.lesson();
    if (lesson != null && (record || file != null && Where.within(lesson, file))) {
      return "FOLDER: " + said + "; name another folder";
    }
    return file != null && where.keeps(file) || lesson == null && record
        ? said + "; choose another folder with --data"
        : said;
  }

  static String of(Exception e) {
    String letters = Letters.of(e, Encodings.ofFileNames());
    if (letters != null) {
      return clean(letters);
    }
    if (e instanceof FileSystemException file) {
      String reason = file.getReason();
      if (reason != null && !reason.isEmpty()) {
        String where = file.getFile();
        return where == null || reason.contains(where)
            ? clean(reason)
            : clean(where + ": " + reason);
      }
      if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
        return clean(file.getFile()) + " is in the way: no folder can be there";
      }
      if (e instanceof NoSuchFileException) {
        return "there is no file " + clean(file.getFile());
      }
      if (e instanceof AccessDeniedException) {
        return "no permission for " + clean(file.getFile());
      }
    }
    if (e instanceof UnmatchedArgumentException unmatched) {
      return clean(unmatched.isUnknownOption() ? option(unmatched) : unmatched(unmatched));
    }
    if (e instanceof ParameterException wrong && wrong.getArgSpec() != null) {
      return clean(value(wrong, wrong.getArgSpec()));
    }
    return e.getMessage() == null
        ? "it stopped without a reason"
        : clean(e.getMessage().replaceFirst("is not a boolean$", "is not true or false"));
  }

  /** A word too many; where a command or a topic was to stand, those there are. */
  private static String unmatched(UnmatchedArgumentException e) {
    Set<String> names = e.getCommandLine().getSubcommands().keySet();
    return "\""
        + e.getUnmatched().get(0)
        + "\" "
        + (names.isEmpty()
            ? "has no place here"
            : "is none of "
                + String.join(", ", names)
                + Quote.asking(e.getUnmatched().get(0), names));
  }

  /** An option that is not known, with the nearest that is. */
  private static String option(UnmatchedArgumentException e) {
    String typed = e.getUnmatched().get(0).replaceAll("=.*", "");
    return "there is no option "
        + typed
        + Quote.asking(typed, e.getCommandLine().getCommandSpec().optionsMap().keySet());
  }

  /** A value that an option does not take; of words, those there are. */
  private static String value(ParameterException e, ArgSpec argument) {
    Object[] words = argument.type().getEnumConstants();
    String message = String.valueOf(e.getMessage());
    if (words == null || e.getValue() == null || !message.contains("expected one of")) {
      return message.replaceFirst("is not a boolean$", "is not true or false");
    }
    List<String> known =
        Arrays.stream(words).map(word -> word.toString().toLowerCase(Locale.ROOT)).toList();
    return (argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel())
        + ": \""
        + e.getValue()
        + "\" is none of "
        + String.join(", ", known)
        + Quote.asking(e.getValue(), known);
  }

  private static String clean(String text) {
    return text.lines().map(Printable::of).collect(Collectors.joining(System.lineSeparator()));
  }
}
