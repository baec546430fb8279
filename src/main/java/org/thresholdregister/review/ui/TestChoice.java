package org.thresholdregister.review.ui;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.review.TestStory;

/** Which of a worker's tests is looked at; the latest to begin with. */
class TestChoice {

    /** Is told when another test is chosen. */
    @FunctionalInterface
    interface Listener {
        void chosen(int index);
    }

    private final List<TestStory> stories;
    private final List<Listener> listeners = new ArrayList<>();
    private int index;

    /** @param stories at least one, in order of time */
    TestChoice(List<TestStory> stories) {
        this.stories = stories;
        this.index = stories.size() - 1;
    }

    List<TestStory> stories() {
        return stories;
    }

    TestStory chosen() {
        return stories.get(index);
    }

    boolean isFirst() {
        return index == 0;
    }

    boolean isLast() {
        return index == stories.size() - 1;
    }

    /** Moves by that many tests, as far as there are any. */
    void step(int tests) {
        choose(Math.clamp((long) index + tests, 0, stories.size() - 1));
    }

    void choose(int newIndex) {
        index = newIndex;
        listeners.forEach(listener -> listener.chosen(index));
    }

    /** Chooses this test, where it is among them. */
    void choose(Audiogram test) {
        for (int i = 0; i < stories.size(); i++) {
            if (stories.get(i).audiogram().equals(test)) {
                choose(i);
            }
        }
    }

    /** Tells the listener at once, and of every choice to come. */
    void follow(Listener listener) {
        listeners.add(listener);
        listener.chosen(index);
    }
}
