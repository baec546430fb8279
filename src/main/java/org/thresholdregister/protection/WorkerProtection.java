package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.Noise;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.training.TrainingRule;
import org.thresholdregister.exposure.WorkerExposure;
import org.thresholdregister.roster.WorkerDetails;

/**
 * Everything about one worker's protectors and training.
 *
 * @param noise without any protector
 * @param noiseSource what it rests on; empty where nothing is known of it
 * @param facts what having to wear one rests on
 * @param method what the site's employer picked
 * @param issues all there ever were, the latest first
 * @param fitTests likewise
 * @param trainings likewise
 * @param trainingDue the last day for the next training; empty where the rule set asks for none, or the worker is not
 *     enrolled or has left
 */
public record WorkerProtection(
        WorkerDetails worker,
        LocalDate today,
        Noise noise,
        Optional<WorkerExposure.Source> noiseSource,
        ProtectionTarget target,
        MustWear mustWear,
        MustWear.Facts facts,
        Optional<AttenuationMethod> method,
        List<ProtectorInUse> inUse,
        List<Issue> issues,
        List<FitTest> fitTests,
        List<AttendedTraining> trainings,
        Optional<TrainingRule> trainingRule,
        Optional<LocalDate> trainingDue,
        WorkerCases cases) {

    public WorkerProtection {
        inUse = List.copyOf(inUse);
        issues = List.copyOf(issues);
        fitTests = List.copyOf(fitTests);
        trainings = List.copyOf(trainings);
    }
}
