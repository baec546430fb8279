package org.thresholdregister.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * Goes through the tests of a plant in order of time and tells which units came under suspicion, knowing at each test
 * only what came before it.
 *
 * <p>A test is held against the mean of up to {@value #EARLIER_TESTS} earlier tests of its worker. What everybody's tests
 * commonly change (age, noise, practice) is taken off as far as the plant's earlier tests show it. The differences of a
 * channel are standardised by their usual spread, cut off at three times it, so that nobody's true loss counts for much,
 * and summed for each unit and direction.
 */
public final class InstrumentWatch {

    private static final int EARLIER_TESTS = 4;
    private static final double CUT_OFF = 3;
    /** A spread in dB of one threshold's change that is common in practice stands in until the plant has shown its own. */
    private static final double USUAL_SPREAD_DB = 6;

    private static final double WEIGHT_OF_USUAL = 30;
    private static final double WEIGHT_OF_NO_DRIFT = 50;
    private static final double WIDEST_CHANGE_DB = 20;
    /** Each test makes the plant's earlier ones weigh less, so that the latest four hundred or so say what is usual. */
    private static final double REMEMBERED = 1 - 1.0 / 400;

    private final WatchSettings settings;
    private final Map<String, Unit> units = new HashMap<>();
    private final Map<String, List<WatchedTest>> earlier = new HashMap<>();
    private final Set<WatchedTest> suspect = new HashSet<>();
    private final Map<Double, Double> limits = new HashMap<>();
    private final Usual[] usual = new Usual[Channel.ALL.size()];
    private final List<Suspicion> suspicions = new ArrayList<>();

    private InstrumentWatch(WatchSettings settings) {
        this.settings = settings;
        for (int i = 0; i < usual.length; i++) {
            usual[i] = new Usual();
        }
    }

    /** All suspicions, in order of the day they were signalled, then by unit. */
    public static List<Suspicion> suspicions(Collection<WatchedTest> tests, WatchSettings settings) {
        var watch = new InstrumentWatch(settings);
        tests.stream()
                .filter(test -> !test.unit().isBlank())
                .sorted(WatchedTest.IN_ORDER)
                .forEach(watch::see);
        watch.units.values().forEach(unit -> unit.last().ifPresent(watch.suspicions::add));
        return watch.suspicions.stream()
                .sorted(Comparator.comparing(Suspicion::signalledOn).thenComparing(Suspicion::unit))
                .toList();
    }

    private void see(WatchedTest test) {
        List<WatchedTest> before = earlier.computeIfAbsent(test.worker(), unseen -> new ArrayList<>());
        List<WatchedTest> sound =
                before.stream().filter(one -> !suspect.contains(one)).toList();
        List<WatchedTest> latest = sound.subList(Math.max(0, sound.size() - EARLIER_TESTS), sound.size());
        if (!latest.isEmpty()) {
            compare(test, latest);
        }
        before.add(test);
    }

    private void compare(WatchedTest test, List<WatchedTest> latest) {
        Unit unit = units.computeIfAbsent(test.unit(), Unit::new);
        double[][] differences = differences(test.test(), latest);
        double shrink = Math.sqrt(2.0 / (1 + 1.0 / latest.size()));
        unit.begin(test);
        for (int i = 0; i < usual.length; i++) {
            OptionalDouble mean = Channel.ALL.get(i).mean(differences);
            if (mean.isPresent()) {
                double difference = mean.getAsDouble();
                double centred = difference - usual[i].drift();
                double spread = usual[i].spread() / shrink;
                unit.add(i, centred, Math.clamp(centred / spread, -CUT_OFF, CUT_OFF), spread);
                usual[i].learn(difference, shrink);
            }
        }
        unit.end();
    }

    private static double[][] differences(Audiogram test, List<WatchedTest> latest) {
        double[][] differences = new double[Ear.values().length][Frequency.values().length];
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                differences[ear.ordinal()][frequency.ordinal()] = difference(test, latest, ear, frequency);
            }
        }
        return differences;
    }

    /** NaN where the test or all the earlier ones have no plain number. */
    private static double difference(Audiogram test, List<WatchedTest> latest, Ear ear, Frequency frequency) {
        OptionalInt now = test.threshold(ear, frequency).range().exact();
        double before = latest.stream()
                .map(one -> one.test().threshold(ear, frequency).range().exact())
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt)
                .average()
                .orElse(Double.NaN);
        return now.isPresent() ? now.getAsInt() - before : Double.NaN;
    }

    /** How a channel commonly changes at this plant: the spread of a change between two single tests, and the drift. */
    private static final class Usual {
        private double weight;
        private double sum;
        private double squares;

        /** @param shrink makes a difference from a mean of tests as wide as one from a single test */
        private void learn(double difference, double shrink) {
            double cut = Math.clamp(difference, -WIDEST_CHANGE_DB, WIDEST_CHANGE_DB);
            weight *= REMEMBERED;
            sum = sum * REMEMBERED + cut;
            squares = squares * REMEMBERED + (cut - drift()) * (cut - drift()) * shrink * shrink;
            weight++;
        }

        private double drift() {
            return sum / (weight + WEIGHT_OF_NO_DRIFT);
        }

        private double spread() {
            double usualSquares = WEIGHT_OF_USUAL * 2 * USUAL_SPREAD_DB * USUAL_SPREAD_DB;
            return Math.sqrt((squares + usualSquares) / (weight + WEIGHT_OF_USUAL));
        }
    }

    /** The sums of one unit. Allowance and limit of a channel are set when the channel leaves rest, by the spread then. */
    private final class Unit {
        private final String name;
        private final List<WatchedTest> tests = new ArrayList<>();
        private final Side[] sides = new Side[2 * Channel.ALL.size()];
        private Optional<Open> open = Optional.empty();

        private Unit(String name) {
            this.name = name;
        }

        private void begin(WatchedTest test) {
            tests.add(test);
        }

        private void add(int channel, double centredDb, double standardised, double spread) {
            addTo(2 * channel, centredDb, standardised, spread);
            addTo(2 * channel + 1, centredDb, -standardised, spread);
        }

        private void addTo(int place, double centredDb, double standardised, double spread) {
            Side side = sides[place];
            if (side == null || side.sum.isAtRest()) {
                side = new Side(place / 2, tests.size() - 1, sumFor(spread));
                sides[place] = side;
            }
            side.add(centredDb, standardised);
        }

        /** Spreads are told apart by a tenth of a dB. */
        private CumulativeSum sumFor(double spread) {
            double allowance = settings.biasDb() / 2 / (Math.ceil(spread * 10) / 10);
            double between = (double) settings.testsBetweenFalseSignals() * sides.length;
            return new CumulativeSum(
                    allowance, limits.computeIfAbsent(allowance, some -> CumulativeSum.limitFor(some, between)));
        }

        /** Looks at the sums once all channels have had the test. */
        private void end() {
            int latest = tests.size() - 1;
            List<Side> signalled = Arrays.stream(sides)
                    .filter(side -> side != null && side.signalled)
                    .toList();
            if (signalled.isEmpty()) {
                open.ifPresent(this::close);
                open = Optional.empty();
                return;
            }
            Open now = open.orElseGet(() -> new Open(latest));
            signalled.stream().filter(side -> side.sum.isAtLimit()).forEach(side -> now.note(side, latest));
            open = Optional.of(now);
            suspect.addAll(tests.subList(now.first, tests.size()));
        }

        /** What came after the sums began to fall for good is sound again. */
        private void close(Open ended) {
            tests.subList(ended.latest + 1, tests.size()).forEach(suspect::remove);
            suspicions.add(
                    suspicion(ended, Optional.of(tests.get(ended.latest).test().date()), ended.latest + 1));
        }

        private Optional<Suspicion> last() {
            return open.map(one -> suspicion(one, Optional.empty(), tests.size()));
        }

        private Suspicion suspicion(Open one, Optional<LocalDate> until, int end) {
            return new Suspicion(
                    name,
                    tests.get(one.first).test().date(),
                    tests.get(one.signalledAt).test().date(),
                    until,
                    one.signalledAt - one.first + 1,
                    one.signs(),
                    tests.subList(one.first, end));
        }
    }

    /** One direction of a channel from when it left rest on. */
    private static final class Side {
        private final int channel;
        private final int first;
        private final CumulativeSum sum;
        private double totalDb;
        private int count;
        private boolean signalled;

        private Side(int channel, int first, CumulativeSum sum) {
            this.channel = channel;
            this.first = first;
            this.sum = sum;
        }

        private void add(double centredDb, double standardised) {
            sum.add(standardised);
            signalled = (signalled || sum.isAtLimit()) && !sum.isAtRest();
            if (!sum.isAtRest()) {
                totalDb += centredDb;
                count++;
            }
        }
    }

    /** A suspicion that lasts. */
    private static final class Open {
        private final int signalledAt;
        private final Map<Integer, Suspicion.Sign> signs = new HashMap<>();
        private int first;
        private int latest;

        private Open(int signalledAt) {
            this.signalledAt = signalledAt;
            this.first = signalledAt;
            this.latest = signalledAt;
        }

        private void note(Side side, int test) {
            first = Math.min(first, side.first);
            latest = test;
            signs.put(
                    side.channel,
                    new Suspicion.Sign(Channel.ALL.get(side.channel), side.totalDb / side.count, side.count));
        }

        private List<Suspicion.Sign> signs() {
            return signs.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(Map.Entry::getValue)
                    .toList();
        }
    }
}
