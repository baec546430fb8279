package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.BaselineTest;
import org.thresholdregister.core.judging.Determination.BeforeBaseline;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.judging.Determination.Retest;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.NoticeRule;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.ShiftRule;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.shift.ThresholdShift;

/** Letters in Spanish; a native reader's check is wanted. */
final class SpanishLetterWords implements LetterWords {

    @Override
    public String title(LetterKind kind) {
        return switch (kind) {
            case RESULT -> "El resultado de su prueba de audición";
            case SHIFT_NOTICE -> "Aviso por escrito sobre su audición";
            case RETEST_INVITATION -> "Venga, por favor, a una segunda prueba de audición";
            case REFERRAL -> "Remisión para un examen de la audición";
            case BASELINE_REVISION -> "Su nueva prueba de referencia";
            case NOT_WORK_RELATED -> "Lo que se decidió sobre su pérdida auditiva";
        };
    }

    @Override
    public String day(LocalDate date) {
        return SpanishWords.day(date);
    }

    @Override
    public String ear(Ear ear) {
        return SpanishWords.ear(ear);
    }

    @Override
    public String ears(Ears ears) {
        return SpanishWords.ears(ears);
    }

    @Override
    public String purpose(TestPurpose purpose) {
        return SpanishWords.purpose(purpose);
    }

    @Override
    public String shift(ShiftRule rule) {
        return SpanishWords.shift(rule.name());
    }

    @Override
    public String deadline(Deadline deadline) {
        return SpanishWords.deadline(deadline);
    }

    @Override
    public String thresholdCell(Threshold threshold) {
        return SpanishWords.thresholdCell(threshold);
    }

    @Override
    public String finding(Determination found) {
        return switch (found) {
            case BaselineTest ignored ->
                "Esta es la prueba de referencia. Con ella vamos a comparar las otras pruebas.";
            case BeforeBaseline ignored ->
                "Esta prueba se hizo antes de la prueba de referencia. Queda en el registro.";
            case Retest retest ->
                "Esta segunda prueba responde por la prueba del "
                        + day(retest.resolves().date()) + ". " + change(retest.comparison());
            case Judged judged -> judged(judged);
        };
    }

    private String judged(Judged judged) {
        ThresholdShift settling = judged.settlingComparison();
        String since = day(settling.earlier().date());
        String name = shift(judged.ruleSet().shift());
        return switch (judged.outcome()) {
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalStateException("no outcome of a judged test: " + judged.outcome());
            case NO_SHIFT ->
                "No hay un cambio grande desde la prueba de referencia del " + since + ". " + change(settling);
            case AWAITING_RETEST, CONFIRMED ->
                "Este oído oye menos que en la prueba de referencia del " + since + ". Este cambio se llama " + name
                        + ". " + change(settling) + shownTwice(judged);
            case NOT_CONFIRMED ->
                "La prueba del " + day(judged.test().date()) + " mostró un cambio. La segunda prueba, del "
                        + day(judged.settledBy().date()) + ", no lo muestra. Por eso no cuenta como " + name + ". "
                        + change(settling);
            case UNDECIDED ->
                "No podemos decir si la audición de este oído ha cambiado desde la prueba de referencia del " + since
                        + ". Faltan algunos números.";
        };
    }

    private String shownTwice(Judged judged) {
        return secondTest(judged)
                .map(test -> " La prueba del " + day(test.date()) + " también lo muestra.")
                .orElse("");
    }

    private static Optional<Audiogram> secondTest(Judged judged) {
        return switch (judged.resolution()) {
            case Resolution.ByRetest(ThresholdShift retest) -> Optional.of(retest.later());
            case Resolution.BySecondTest(ThresholdShift second) -> Optional.of(second.later());
            case Resolution.ByTestItself ignored -> Optional.empty();
        };
    }

    private static String change(ThresholdShift shift) {
        String allowance = shift.sum().equals(shift.uncorrectedSum()) ? "" : ", ya sin lo que puede deberse a la edad";
        return shift.sum().equals(DecibelRange.UNKNOWN)
                ? "No se conoce el cambio promedio a 2000, 3000 y 4000 Hz."
                : "El cambio promedio a 2000, 3000 y 4000 Hz es de " + SpanishWords.mean(shift.sum()) + allowance + ".";
    }

    @Override
    public String notCompared() {
        return "Esta prueba está en el registro. No se comparó con la prueba de referencia.";
    }

    @Override
    public List<String> nextSteps(NextSteps steps) {
        List<String> said = new ArrayList<>();
        steps.retestBy()
                .ifPresent(day -> said.add("Usted puede hacer una segunda prueba (prueba de repetición), hasta el "
                        + day(day) + ". Con ella se ve si el cambio es real. Le diremos el día, la hora y el lugar."));
        if (steps.writtenNotice()) {
            said.add("Va a recibir un aviso por escrito sobre el cambio.");
        }
        if (steps.protectors()) {
            said.add("Vamos a ver si sus protectores auditivos le quedan bien, y a mostrarle otra vez cómo se usan.");
            said.add("Tal vez le pidamos ir a un médico del oído o a un audiólogo.");
        }
        if (steps.mayRepeat()) {
            said.add("Tal vez le pidamos hacer la prueba otra vez.");
        }
        steps.nextTest().ifPresent(day -> said.add("Su próxima prueba es a más tardar el " + day(day) + "."));
        return said;
    }

    @Override
    public String noticeStatement(RuleSet ruleSet) {
        return ruleSet.notice()
                .map(rule -> "La norma " + ruleSet.paragraph(Step.NOTICE) + " dice que debemos avisarle por escrito "
                        + told(rule, ruleSet) + ", dentro de " + deadline(rule.deadline())
                        + ". Con esta carta lo hacemos.")
                .orElse("Le avisamos de esto por escrito.");
    }

    private String told(NoticeRule rule, RuleSet ruleSet) {
        return switch (rule.occasion()) {
            case SHIFT, CONFIRMED_SHIFT -> {
                String name = shift(ruleSet.shift());
                yield (name.startsWith("pérdida") ? "de una " : "de un ") + name;
            }
            case EVERY_TEST -> "del resultado de cada prueba";
        };
    }

    @Override
    public String quietTime(QuietRule rule) {
        return "No esté en lugares con mucho ruido en las " + Counted.of(rule.hours(), "hora", "horas")
                + " antes de la prueba, ni en el trabajo ni en casa. Cuentan también la música fuerte, las herramientas y"
                + " los motores."
                + (rule.protectorsMayStandIn()
                        ? " Si tiene que trabajar con ruido antes de la prueba, use sus protectores auditivos todo el"
                                + " tiempo."
                        : "");
    }

    @Override
    public String whenAndWhere(Optional<String> booked) {
        return booked.map(words -> "Su prueba: " + words).orElse("Día y hora:\nLugar:");
    }

    @Override
    public String whyRevised(boolean forBetterHearing) {
        return forBetterHearing
                ? "En esta prueba usted oye mejor que en la anterior."
                : "Su audición cambió, y el cambio ha seguido igual.";
    }

    @Override
    public String frequencyHeading() {
        return "Tono, Hz";
    }

    @Override
    public String tableNote() {
        return "Los números son umbrales auditivos en decibeles (dB HL). Cuanto más alto es el número, más fuerte tiene que"
                + " ser un sonido para que se oiga. «>95» quiere decir que no se oyó el sonido más fuerte posible,"
                + " aquí 95.";
    }

    @Override
    public String referralFacts() {
        return "Persona remitida";
    }

    @Override
    public String birthDate() {
        return "Fecha de nacimiento";
    }

    @Override
    public String jobTitle() {
        return "Puesto y departamento";
    }

    @Override
    public String noiseLevel() {
        return "Ruido en el trabajo, promedio de ocho horas";
    }

    @Override
    public String enrolledFrom() {
        return "En el nivel de acción o por encima desde";
    }

    @Override
    public String rules() {
        return "Normas que rigen en el lugar de trabajo";
    }

    @Override
    public String historyHeading() {
        return "Antecedentes";
    }

    @Override
    public String nothingOnRecord() {
        return "De esto no hay nada en este registro.";
    }

    @Override
    public String enclosuresHeading() {
        return "Documentos adjuntos, 29 CFR 1910.95(g)(7)(iii)";
    }

    @Override
    public List<String> enclosures(LocalDate baseline, LocalDate latest) {
        return List.of(
                "(A) Los requisitos para la conservación de la audición, 29 CFR 1910.95(c) a (n)",
                "(B) El audiograma de referencia del " + day(baseline) + " y el audiograma más reciente, del "
                        + day(latest) + ": en esta carta",
                "(C) Niveles de ruido de fondo de la sala de pruebas, Apéndice D",
                "(D) Registros de calibración del audiómetro, párrafo (h)(5)");
    }

    @Override
    public String signatureAndDate() {
        return "Firma y fecha";
    }

    @Override
    public String aProfessional() {
        return "un profesional de la salud";
    }

    @Override
    public String caution() {
        return "Esta carta se hizo con los datos del registro de audición. No es un diagnóstico. Un audiólogo o un médico"
                + " decide qué quieren decir las pruebas y qué se debe hacer.";
    }

    @Override
    public String healthRecord() {
        return "Registro de salud";
    }

    @Override
    public String printed(LocalDate day, String by) {
        return "impreso el " + SpanishWords.shortDay(day) + " por " + by;
    }

    @Override
    public String reprint(LocalDate issuedOn, LocalDate printedOn) {
        return "Copia impresa el " + day(printedOn) + ". La carta se imprimió por primera vez el " + day(issuedOn)
                + ".";
    }
}
