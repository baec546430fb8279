package org.thresholdregister.platform.ui;

import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.QueryParameters;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.platform.query.Order;

/**
 * The filter of a list as the address carries it, so that it can be sent to a colleague. Constants stand in lower case
 * with hyphens: {@code kind=annual-test}. A value that means nothing leads to no page, rather than to a list that is
 * not filtered as asked.
 */
public final class FilterParameters {

    private static final String ORDER = "order";
    private static final String DESCENDING = "-descending";

    public static final FilterParameters NONE = new FilterParameters(Map.of());

    private final Map<String, String> values;

    private FilterParameters(Map<String, String> values) {
        this.values = values;
    }

    /** @throws NotFoundException where a parameter is given more than once */
    public static FilterParameters of(Location location) {
        Map<String, String> values = new LinkedHashMap<>();
        location.getQueryParameters().getParameters().forEach((name, given) -> {
            if (given.size() != 1) {
                throw new NotFoundException("given more than once: " + name);
            }
            values.put(name, given.getFirst());
        });
        return new FilterParameters(values);
    }

    /** The same with this value in place of the one of that name, or without any. */
    public FilterParameters with(String name, Optional<String> value) {
        Map<String, String> changed = new LinkedHashMap<>(values);
        changed.remove(name);
        value.ifPresent(text -> changed.put(name, text));
        return new FilterParameters(changed);
    }

    public FilterParameters withChoice(String name, Optional<? extends Enum<?>> choice) {
        return with(name, choice.map(FilterParameters::word));
    }

    /** An empty text is a value of its own. */
    public Optional<String> text(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** @throws NotFoundException where the value names none of the constants */
    public <E extends Enum<E>> Optional<E> choice(String name, Class<E> constants) {
        return text(name)
                .map(given -> Stream.of(constants.getEnumConstants())
                        .filter(constant -> word(constant).equals(given))
                        .findFirst()
                        .orElseThrow(() -> new NotFoundException("no such " + name)));
    }

    /** @throws NotFoundException where the value is no year of four digits */
    public Optional<Integer> year(String name) {
        return text(name).map(given -> {
            if (!given.matches("[12][0-9]{3}")) {
                throw new NotFoundException("no year");
            }
            return Integer.valueOf(given);
        });
    }

    /** @throws NotFoundException where the value is no date as files have it */
    public Optional<LocalDate> day(String name) {
        return text(name).map(given -> {
            try {
                return LocalDate.parse(given);
            } catch (DateTimeParseException e) {
                throw new NotFoundException("no date");
            }
        });
    }

    public FilterParameters withDay(String name, Optional<LocalDate> day) {
        return with(name, day.map(Dates::inFile));
    }

    /**
     * How a list is ordered: {@code order=due-date} or {@code order=due-date-descending}.
     *
     * @throws NotFoundException where the list has no such column
     */
    public <C extends Enum<C>> Optional<Order<C>> order(Class<C> columns) {
        return text(ORDER).map(given -> {
            boolean descending = given.endsWith(DESCENDING);
            String column = descending ? given.substring(0, given.length() - DESCENDING.length()) : given;
            return new Order<>(
                    Stream.of(columns.getEnumConstants())
                            .filter(constant -> word(constant).equals(column))
                            .findFirst()
                            .orElseThrow(() -> new NotFoundException("no such order")),
                    descending);
        });
    }

    public FilterParameters withOrder(Optional<? extends Order<?>> order) {
        return with(ORDER, order.map(some -> word(some.column()) + (some.descending() ? DESCENDING : "")));
    }

    public QueryParameters toQueryParameters() {
        return QueryParameters.simple(values);
    }

    /** The address of the page with this filter, relative to the application. */
    public String pathOf(String route) {
        return values.isEmpty()
                ? route
                : values.entrySet().stream()
                        .map(entry -> encode(entry.getKey()) + "=" + encode(entry.getValue()))
                        .collect(Collectors.joining("&", route + "?", ""));
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
