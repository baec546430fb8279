package org.thresholdregister.review;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.wording.Words;

/** What a decision or a test changed in what is found and owed, in sentences. */
public final class WhatChanged {

    private WhatChanged() {}

    /** From one state of a worker's record to the next; empty where only the decision itself was added. */
    public static List<String> between(WorkerRecord before, WorkerRecord after) {
        List<String> changes = new ArrayList<>(inTests(before, after));
        followUps(before, after, "No longer owed: ", changes);
        followUps(after, before, "Owed now: ", changes);
        return List.copyOf(changes);
    }

    /** What is found otherwise on the tests that are in both states, the newest first. */
    public static List<String> inTests(WorkerRecord before, WorkerRecord after) {
        List<String> changes = new ArrayList<>();
        List<TestStory> now = after.stories();
        List<TestStory> then = before.stories();
        for (int i = now.size() - 1; i >= 0; i--) {
            for (Ear ear : Ear.values()) {
                TestStory story = now.get(i);
                String found = story.finding(ear);
                then.stream()
                        .filter(earlier -> earlier.audiogram().equals(story.audiogram()))
                        .map(earlier -> earlier.finding(ear))
                        .filter(earlier -> !earlier.equals(found))
                        .forEach(earlier -> changes.add(
                                story.name() + ", " + Words.ear(ear) + ": " + found + " (before: " + earlier + ")."));
            }
        }
        return List.copyOf(changes);
    }

    private static void followUps(WorkerRecord one, WorkerRecord other, String words, List<String> changes) {
        for (FollowUp followUp : one.judgement().followUps()) {
            if (!other.judgement().followUps().contains(followUp)) {
                changes.add(words + Words.followUp(followUp.kind()) + " by " + Words.day(followUp.dueDate())
                        + followUp.testDate()
                                .map(day -> ", after the test of " + Words.day(day))
                                .orElse("") + ".");
            }
        }
    }
}
