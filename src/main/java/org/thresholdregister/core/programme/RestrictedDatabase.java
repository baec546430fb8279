package org.thresholdregister.core.programme;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.statistics.Proportion;

/**
 * The people who all have the same number of tests, which is what ANSI/ASA S12.13 TR-2002 compares (from memory), and how
 * many were left out for it. Those left out may be the ones who were hurt (Adera et al. 1993), so that their share of
 * shifts stands beside the result.
 *
 * @param tests how many tests each person counts with, the first ones
 * @param successive the tests compared, the second with the first, the third with the second and so on
 */
public record RestrictedDatabase(
        int tests, List<TestToTest> successive, int members, int membersShifted, int excluded, int excludedShifted) {

    /** With fewer tests than this learning hides everything else (from memory). */
    public static final int FEWEST_TESTS = 4;

    /** @throws IllegalArgumentException for fewer than {@value #FEWEST_TESTS} tests */
    public static RestrictedDatabase of(Collection<Member> people, int tests) {
        if (tests < FEWEST_TESTS) {
            throw new IllegalArgumentException("the analysis takes at least " + FEWEST_TESTS + " tests");
        }
        List<Member> in = new ArrayList<>();
        List<Member> out = new ArrayList<>();
        for (Member person : people) {
            boolean belongs = person.tests().size() >= tests
                    && person.pairs().stream().limit(tests - 1L).allMatch(TestPair::isComplete);
            (belongs ? in : out).add(person);
        }
        List<TestToTest> successive = new ArrayList<>();
        for (int k = 0; k < tests - 1; k++) {
            int place = k;
            successive.add(TestToTest.of(
                    in.stream().map(person -> person.pairs().get(place)).toList()));
        }
        return new RestrictedDatabase(tests, List.copyOf(successive), in.size(), shifted(in), out.size(), shifted(out));
    }

    private static int shifted(List<Member> people) {
        return (int) people.stream().filter(Member::shifted).count();
    }

    /** The share of shifts among those who count; empty where nobody does. */
    public Optional<Proportion> shiftsOfMembers() {
        return members == 0 ? Optional.empty() : Optional.of(new Proportion(membersShifted, members));
    }

    /** The share of shifts among those who do not count; empty where everybody does. */
    public Optional<Proportion> shiftsOfExcluded() {
        return excluded == 0 ? Optional.empty() : Optional.of(new Proportion(excludedShifted, excluded));
    }
}
