/**
 * View models of the Bench: what is shown and what each action does, without controls.
 *
 * <p>Decision: <b>a dragged event has the machine to itself.</b> The trace follows every step, with the lines of the step before in
 * the cache; what can be seen is worked out once the hand rests for 120 ms. From a step to the drawn picture, 30 events on 100 m:
 * median 26 ms, 95th percentile 43 ms, longest 106 ms in a real window on two cores ({@code DragTimes} in {@code src/window}). By JMH on
 * two shared cores: 5 ms for the trace of 30 events while one is dragged, 0.36 s for the whole wave on them and 0.003 ms for one
 * of its frames, 18 ms until the marker knows what a new exercise asks for.
 */
package cablewright.ui.desktop.bench.model;
