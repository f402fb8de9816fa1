package quarterturn.session;

import java.util.List;

/** What is told or asked beside a session's prompts, in words for every face. */
public sealed interface Question {
  /** What it is, in a few words. */
  String title();

  /** Its text, a paragraph each. */
  List<String> lines();

  /** One sentence on what can be done. */
  String help();

  /** Told; the person goes on. */
  record Show(String title, List<String> lines, String help) implements Question {
    public Show {
      lines = List.copyOf(lines);
    }

    public Show(String title, List<String> lines) {
      this(title, lines, "Enter goes on.");
    }
  }

  /** Told while somebody else is waited for. */
  record Hold(String title, List<String> lines) implements Question {
    public Hold {
      lines = List.copyOf(lines);
    }

    @Override
    public String help() {
      return "It goes on by itself.";
    }
  }

  /** Answered with one line. */
  sealed interface Asked extends Question {
    /** What stands before the place to type. */
    String asks();

    /** Whether what is typed is not to be seen. */
    default boolean hidden() {
      return false;
    }

    /** Whether everybody is to think for a while before anybody answers. */
    default boolean ponder() {
      return false;
    }
  }

  /** A line of words. */
  record Words(
      String title, List<String> lines, String asks, String help, boolean hidden, boolean ponder)
      implements Asked {
    public Words {
      lines = List.copyOf(lines);
    }

    public Words(String title, List<String> lines, String asks, String help) {
      this(title, lines, asks, help, false, false);
    }
  }

  /**
   * Something that can be chosen.
   *
   * @param name what may be typed for it
   * @param label what it is called in a list; empty where there is no list
   * @param detail what more there is to say of it in a list
   * @param group what it is listed under
   */
  record Option(String name, String label, String detail, String group) {
    /** One that the question itself names. */
    public Option(String name) {
      this(name, "", "", "");
    }
  }

  /** One of several; the beginning of its name will do, or its number where they are listed. */
  record Choose(String title, List<String> lines, String asks, String help, List<Option> options)
      implements Asked {
    public Choose {
      lines = List.copyOf(lines);
      options = List.copyOf(options);
    }

    /** Whether the options are to be shown as a list, numbered from 1. */
    public boolean listed() {
      return options.stream().noneMatch(option -> option.label().isEmpty());
    }
  }
}
