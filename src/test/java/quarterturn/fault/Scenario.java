package quarterturn.fault;

import java.nio.file.Path;

/**
 * Something that the program does with files, to be played again and again on a {@link MemoryDisk}
 * on which a call fails, and looked at afterwards.
 *
 * <p>To write one:
 *
 * <ul>
 *   <li>{@link #play} does it under the folder it is given, through {@code java.nio.file} only, and
 *       notes in fields of its own what was acknowledged: after each method that returned, what
 *       that method promised. A method that throws promised nothing. It must make the same calls
 *       each time, so clocks stand and seeds are fixed. What a person would try once more it may
 *       try once more; an {@code IOException} that it lets out ends it, and is no finding.
 *   <li>{@link #check} opens what is left under another folder as the program would, and asserts
 *       that all acknowledged is there and nothing is that was never asked for. It is called at any
 *       moment, in the middle of a call that {@code play} makes as well, with nothing wrong on the
 *       disk; it may write there, and must leave the fields alone. Any exception is a finding.
 *   <li>{@link Points} plays it: {@link Points#sweep} with power cuts and kills at every call, and
 *       {@link Points#each} with a fault at every call. A finding names its {@link Points.Point},
 *       which {@link Points#at} plays alone: keep that as a test with a name.
 * </ul>
 *
 * <p>A new one is made for each play.
 */
interface Scenario {
  void play(Path folder) throws Exception;

  void check(Path folder) throws Exception;
}
