package quarterturn.screen;

/**
 * A line of the home view.
 *
 * @param label the instrument or what is begun
 * @param detail the stage it stands at, or what it is for
 * @param due when something is due, such as "settled since 12:10"; empty for nothing
 */
public record HomeItem(String label, String detail, String due) {}
