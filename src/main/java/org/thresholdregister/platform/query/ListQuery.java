package org.thresholdregister.platform.query;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.persistence.TypedQuery;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.jpa.HibernateHints;
import org.thresholdregister.platform.security.SiteScope;

/**
 * A query for a list, put together from fixed JPQL fragments. What a person typed is only ever a parameter. The scope
 * is part of the making, so that no list can be asked for without one.
 */
public final class ListQuery {

    private static final char ESCAPE = '!';
    private static final int ROWS_AT_A_TIME = 1000;

    private final EntityManager entityManager;
    private final String listed;
    private final String owner;
    private final String ownerPrefix;
    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> parameters = new LinkedHashMap<>();

    private ListQuery(EntityManager entityManager, String listed, String owner, String site, SiteScope scope) {
        this.entityManager = entityManager;
        this.listed = listed;
        this.owner = owner;
        this.ownerPrefix = site.substring(0, site.indexOf('.') + 1);
        switch (scope) {
            case SiteScope.AllSites() -> {}
            case SiteScope.OnlySites(var names) when names.isEmpty() -> conditions.add("1 = 0");
            case SiteScope.OnlySites(var names) ->
                conditions.add("%s in (%s) and %s <> ''".formatted(site, parameter(names), site));
        }
    }

    /**
     * A list of things that have a site themselves.
     *
     * @param listed entity and alias, such as {@code Worker w}
     * @param site path of the site that the scope is about, such as {@code w.site}
     */
    public static ListQuery of(EntityManager entityManager, String listed, String site, SiteScope scope) {
        return new ListQuery(entityManager, listed, "", site, scope);
    }

    /**
     * A list of things that belong to something that has a site.
     *
     * @param listed entity and alias, such as {@code StoredFollowUp f}
     * @param owner what they belong to and how, such as {@code Worker w on w.id = f.workerId}; each has one
     * @param site path of the owner's site, such as {@code w.site}
     */
    public static ListQuery ofOwned(
            EntityManager entityManager, String listed, String owner, String site, SiteScope scope) {
        return new ListQuery(entityManager, listed, owner, site, scope);
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

    /**
     * One page of the list.
     *
     * @param orderBy what decides the order, then what breaks ties; all of it in one direction
     */
    public <T> List<T> page(
            String select, List<String> orderBy, boolean descending, int offset, int limit, Function<Tuple, T> row) {
        String direction = descending ? " desc" : " asc";
        // A column named twice makes H2 fail on long lists.
        String order = orderBy.stream().distinct().map(path -> path + direction).collect(Collectors.joining(", "));
        // An outer join keeps what is listed in front, so that a page in its own order is read from an index.
        String join = orderBy.getFirst().startsWith(ownerPrefix) ? "join" : "left join";
        return query(select, join, "order by " + order, Tuple.class)
                .setFirstResult(offset)
                .setMaxResults(limit)
                .getResultStream()
                .map(row)
                .toList();
    }

    /** The whole of what a grouping or a distinct choice gives; {@code rest} may group and order. */
    public <T> List<T> all(String select, String rest, Function<Tuple, T> row) {
        return query(select, "join", rest, Tuple.class)
                .getResultStream()
                .map(row)
                .toList();
    }

    /** Hands over the whole list row by row, without holding it; {@code rest} may group and order. */
    public void forEach(String select, String rest, Consumer<Tuple> action) {
        TypedQuery<Tuple> query =
                query(select, "join", rest, Tuple.class).setHint(HibernateHints.HINT_FETCH_SIZE, ROWS_AT_A_TIME);
        try (Stream<Tuple> rows = query.getResultStream()) {
            rows.forEach(action);
        }
    }

    public int count() {
        return Math.toIntExact(query("count(*)", "join", "", Long.class).getSingleResult());
    }

    private <R> TypedQuery<R> query(String select, String join, String rest, Class<R> type) {
        String where = conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
        boolean asksForOwner = !owner.isEmpty() && (select + where + rest).contains(ownerPrefix);
        String from = listed + (asksForOwner ? " " + join + " " + owner : "");
        TypedQuery<R> query =
                entityManager.createQuery("select " + select + " from " + from + where + " " + rest, type);
        parameters.forEach(query::setParameter);
        return query;
    }

    private String parameter(Object value) {
        String name = "p" + parameters.size();
        parameters.put(name, value);
        return ":" + name;
    }
}
