package org.thresholdregister.benchmark;

import org.thresholdregister.batch.ColumnarJudging;

/** The stages of the register, in a process of its own, once warm. */
final class RegisterStages {

    private RegisterStages() {}

    static void main(String[] arguments) throws Exception {
        MeasuredJudging register = new ColumnarJudging();
        System.out.print(register.measureWarm(JudgingTask.parse(arguments)).lines());
    }
}
