package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.util.List;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.impairment.ImpairmentDefinition;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.population.ImpairmentRisk;
import org.thresholdregister.core.population.PopulationComparison;
import org.thresholdregister.core.wording.PopulationWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;
import org.thresholdregister.drawing.PopulationCurves;
import org.thresholdregister.review.WhatItMeans;

/** The latest test beside people of the same age and sex, without noise and with it; the age data are to be chosen. */
class PopulationPart extends Div {

    private final transient WhatItMeans meaning;
    private final Div comparisons = new Div();

    PopulationPart(WhatItMeans meaning) {
        this.meaning = meaning;
        addClassName("tr-meaning-part");
        add(new H3("Beside people of the same age and sex"));
        meaning.aboutComparisons().forEach(sentence -> add(new Paragraph(sentence)));
        if (meaning.comparisons(AgeEdition.ISO_7029_2017).isEmpty()) {
            return;
        }
        var edition = new RadioButtonGroup<AgeEdition>("Age data");
        edition.setItems(AgeEdition.ISO_7029_2017, AgeEdition.ISO_7029_2000);
        edition.setItemLabelGenerator(PopulationWords::edition);
        edition.addValueChangeListener(chosen -> show(chosen.getValue()));
        edition.setValue(AgeEdition.ISO_7029_2017);
        add(edition, comparisons);
    }

    private void show(AgeEdition edition) {
        comparisons.removeAll();
        meaning.comparisons(edition).forEach(comparison -> comparisons.add(part(comparison)));
    }

    private static Div part(PopulationComparison comparison) {
        var drawing = new Div();
        drawing.addClassName("tr-meaning-drawing");
        drawing.getElement()
                .setProperty(
                        "innerHTML",
                        AudiogramSvg.forScreen(
                                AudiogramComparison.of(comparison.test()), PopulationCurves.of(comparison)));
        var notes = new UnorderedList(
                PopulationWords.notes(comparison).stream().map(ListItem::new).toArray(ListItem[]::new));
        var part = new Div(new H4(PopulationWords.name(comparison)), drawing, scrolling(table(comparison)), notes);
        if (comparison.population().noise().isPresent()) {
            var risk = new OrderedList(WorkingList.item(PopulationWords.risk(ImpairmentRisk.of(
                    comparison.population(),
                    ImpairmentDefinition.NIOSH_1998.frequencies(),
                    ImpairmentDefinition.NIOSH_1998.fenceDecibels()))));
            risk.addClassName("tr-working");
            part.add(risk);
        }
        part.add(MeaningSection.isNot(PopulationWords.isNot(comparison)));
        return part;
    }

    private static Div scrolling(NativeTable table) {
        var scroll = new Div(table);
        scroll.addClassName("tr-scroll");
        scroll.getElement().setAttribute("tabindex", "0");
        scroll.getElement().setAttribute("role", "region");
        scroll.getElement().setAttribute("aria-label", "Levels of the population and of each ear");
        return scroll;
    }

    private static NativeTable table(PopulationComparison comparison) {
        var table = new NativeTable();
        table.addClassName("tr-table");
        table.setCaptionText(
                "Levels of the population in dB, of each ear in dB HL, and the share of the population whose"
                        + " hearing is worse than the ear's");
        var head = new NativeTableRow();
        Stream.of("Frequency, Hz", "Best tenth", "Median", "Worst tenth")
                .forEach(words -> head.add(heading(words, "col")));
        for (Ear ear : AudiogramComparison.EARS) {
            String name = Words.capitalised(Words.ear(ear));
            head.add(heading(name, "col"), heading(name + ", hear worse", "col"));
        }
        table.getHead().add(head);
        var body = table.addBody();
        comparison.points().forEach(point -> body.add(row(point)));
        return table;
    }

    private static NativeTableRow row(PopulationComparison.Point point) {
        var row = new NativeTableRow(heading(Integer.toString(point.frequency().hertz()), "row"));
        for (var estimate : List.of(point.bestTenth(), point.median(), point.worstTenth())) {
            row.add(figure(PopulationWords.level(estimate)));
        }
        for (Ear ear : AudiogramComparison.EARS) {
            PopulationComparison.Standing standing = point.standing().of(ear);
            row.add(
                    figure(Words.thresholdCell(standing.threshold())),
                    figure(PopulationWords.share(standing.shareWorse())));
        }
        return row;
    }

    private static NativeTableHeaderCell heading(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        cell.addClassName("tr-figures");
        return cell;
    }

    private static NativeTableCell figure(String words) {
        var cell = new NativeTableCell(words);
        cell.addClassName("tr-figures");
        return cell;
    }
}
