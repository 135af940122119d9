// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/spoken_chart.h"

#include "app/chart/first_track.h"
#include "app/chart/todays_form.h"
#include "app/wording/one_line.h"
#include "app/wording/section_words.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"

#include <QStringList>

namespace chart {

namespace {

QStringList sectionsOf(const ChartContent& content) {
    QStringList each;
    for (const sections::Section& section : content.derived.sections->sections) {
        each.append(QStringLiteral("%1, %2").arg(
            wording::oneLine(wording::nameCalled(section.name).toStdString()),
            content.words.depth(section.meanDepth)));
    }
    return each;
}

QStringList marksOf(const ChartContent& content) {
    QStringList each;
    for (const marks::Mark& mark : content.planned->marks) {
        each.append(
            QStringLiteral("%1 %2, %3")
                .arg(mark.rank)
                .arg(wording::calledBy(mark, content.words), content.words.depth(mark.depth)));
    }
    return each;
}

} // namespace

QString spokenChart(const ChartContent& content) {
    if (!content.derived.drawn) {
        return showsFirstTrack(content)
                   ? wording::Tongue::tr("Soundings are in, the water is not drawn yet.")
                   : wording::Tongue::tr("Nothing is on the chart yet.");
    }
    QStringList parts;
    const QString name = content.water ? wording::oneLine(content.water->name) : QString();
    if (const auto& form = formOf(content.derived)) {
        parts.append(wording::Tongue::tr("%1, %2, deepest %3.")
                         .arg(name.isEmpty() ? wording::Tongue::tr("Water without a name") : name,
                              content.words.area(form->hypsography.area),
                              content.words.depth(form->hypsography.maxDepth)));
    }
    if (content.planned && content.shown.contains(LayerKind::marks)) {
        parts.append(
            wording::Tongue::tr("Marks: %1.").arg(marksOf(content).join(QStringLiteral("; "))));
    }
    if (content.derived.sections && content.shown.contains(LayerKind::sections)) {
        parts.append(wording::Tongue::tr("Sections: %1.")
                         .arg(sectionsOf(content).join(QStringLiteral("; "))));
    }
    return parts.join(QLatin1Char(' '));
}

} // namespace chart
