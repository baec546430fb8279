package org.thresholdregister.platform.query;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hibernate.jpa.HibernateHints;
import org.thresholdregister.platform.security.SiteScope;

/**
 * A query for a list, put together from fixed JPQL fragments. What a person typed is only ever a parameter. The scope
 * is part of the constructor, so that no list of workers can be asked for without one.
 */
public final class ListQuery {

    private static final char ESCAPE = '!';
    private static final int ROWS_AT_A_TIME = 1000;

    private final EntityManager entityManager;
    private final String from;
    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> parameters = new LinkedHashMap<>();

    /**
     * @param from JPQL from its {@code from} on, such as {@code from Worker w}
     * @param siteAttribute path of the site that the scope is about, such as {@code w.site}
     */
    public ListQuery(EntityManager entityManager, String from, SiteScope scope, String siteAttribute) {
        this.entityManager = entityManager;
        this.from = from;
        switch (scope) {
            case SiteScope.AllSites() -> {}
            case SiteScope.OnlySites(var names) when names.isEmpty() -> conditions.add("1 = 0");
            case SiteScope.OnlySites(var names) -> {
                conditions.add(siteAttribute + " in (" + parameter(names) + ") and " + siteAttribute + " <> ''");
            }
        }
    }

    /** Adds a condition; each {@code ?} in it stands for one of the values, in order. */
    public ListQuery where(String condition, Object... values) {
        String text = condition;
        for (Object value : values) {
            text = text.replaceFirst("\\?", parameter(value));
        }
        conditions.add(text);
        return this;
    }

    /** Keeps rows whose folded text holds each of the typed words. */
    public ListQuery whereMatches(String attribute, String typed) {
        for (String word : SearchText.words(typed)) {
            String pattern = word.replace("!", "!!").replace("%", ESCAPE + "%").replace("_", ESCAPE + "_");
            where(attribute + " like ? escape '" + ESCAPE + "'", "%" + pattern + "%");
        }
        return this;
    }

    /** One page of the list. */
    public <T> List<T> page(String select, String orderBy, int offset, int limit, Function<Tuple, T> row) {
        var query = entityManager.createQuery(
                "select " + select + " " + from + whereClause() + " order by " + orderBy, Tuple.class);
        bind(query);
        return query.setFirstResult(offset)
                .setMaxResults(limit)
                .getResultStream()
                .map(row)
                .toList();
    }

    /** The whole of what a grouping or a distinct choice gives; {@code rest} may group and order. */
    public <T> List<T> all(String select, String rest, Function<Tuple, T> row) {
        var query =
                entityManager.createQuery("select " + select + " " + from + whereClause() + " " + rest, Tuple.class);
        bind(query);
        return query.getResultStream().map(row).toList();
    }

    /** Hands over the whole list row by row, without holding it; {@code rest} may group and order. */
    public void forEach(String select, String rest, Consumer<Tuple> action) {
        var query =
                entityManager.createQuery("select " + select + " " + from + whereClause() + " " + rest, Tuple.class);
        bind(query);
        query.setHint(HibernateHints.HINT_FETCH_SIZE, ROWS_AT_A_TIME);
        try (Stream<Tuple> rows = query.getResultStream()) {
            rows.forEach(action);
        }
    }

    public int count() {
        var query = entityManager.createQuery("select count(*) " + from + whereClause(), Long.class);
        bind(query);
        return Math.toIntExact(query.getSingleResult());
    }

    private String parameter(Object value) {
        String name = "p" + parameters.size();
        parameters.put(name, value);
        return ":" + name;
    }

    private String whereClause() {
        return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }

    private void bind(Query query) {
        parameters.forEach(query::setParameter);
    }
}
