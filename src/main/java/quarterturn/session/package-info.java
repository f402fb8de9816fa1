/**
 * Floor 4, between the engine and the faces: prompts, answers, events and instruments. How the next
 * prompt is found, how events are kept on disk and how sessions are looked up are in the packages
 * beside this one.
 */
@NullMarked
package quarterturn.session;

import org.jspecify.annotations.NullMarked;
