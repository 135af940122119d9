// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/drawing_view.h"

#include "app/chart/todays_form.h"
#include "app/wording/survey_words.h"

#include <cmath>
#include <tuple>

namespace days::survey_day {

namespace {

using wording::Words;

std::vector<QStringList> formRows(const surface::Hypsography& chart,
                                  const surface::Hypsography& today, const Words& words) {
    const auto row = [&](const char* what, auto&& say) {
        return QStringList{QString::fromLatin1(what), say(chart), say(today)};
    };
    using Form = surface::Hypsography;
    return {row("area", [&](const Form& f) { return words.area(f.area); }),
            row("volume", [&](const Form& f) { return words.volume(f.volume); }),
            row("mean depth", [&](const Form& f) { return words.depth(f.meanDepth); }),
            row("deepest", [&](const Form& f) { return words.depth(f.maxDepth); }),
            // The shoreline is known at chart level only.
            {QStringLiteral("bank"), words.length(chart.shoreLength), QString()},
            {QStringLiteral("shore development"), QString::number(chart.shoreDevelopment, 'f', 2),
             QString()}};
}

/// In words, how smooth the bottom is drawn; the numbers are the steps that are tried.
QString smoothingOf(double stiffness) {
    return stiffness <= 100.0    ? QStringLiteral("light")
           : stiffness <= 300.0  ? QStringLiteral("moderate")
           : stiffness <= 1000.0 ? QStringLiteral("strong")
                                 : QStringLiteral("very strong");
}

QString alongOf(double contourStiffness) {
    return contourStiffness <= 0.0    ? QStringLiteral("no smoother along contours than across")
           : contourStiffness <= 10.0 ? QStringLiteral("smoother along contours than across")
                                      : QStringLiteral("much smoother along contours than across");
}

QString chosenWords(const surface::DrawReport& report, bool isCellSet, const Words& words) {
    const QString cell =
        isCellSet ? QStringLiteral("Cells of %1, as you set them.").arg(words.length(report.cell))
                  : QStringLiteral("Cells of %1, chosen from the size of the water and how close "
                                   "the soundings lie.")
                        .arg(words.length(report.cell));
    const QString smoothing =
        QStringLiteral("%1 smoothing, %2")
            .arg(smoothingOf(report.stiffness), alongOf(report.contourStiffness));
    const QString capital = smoothing.left(1).toUpper() + smoothing.mid(1);
    if (!report.heldOut) {
        return QStringLiteral("%1 %2: the usual, for want of soundings to try others on.")
            .arg(cell, capital);
    }
    if (report.isChoiceKept) {
        return QStringLiteral("%1 %2: kept from the drawing before, for so small a change. Draw "
                              "chooses anew.")
            .arg(cell, capital);
    }
    return QStringLiteral("%1 %2: what foretold best the %3 soundings that were held out in turn. "
                          "Half of those lay within %4 of the drawing.")
        .arg(cell, capital, Words::count(static_cast<std::size_t>(report.heldOut->soundings)),
             words.fineDepth(units::Depth::metres(report.heldOut->median_m)));
}

std::vector<QStringList> howRows(const surface::DrawReport& report, const Words& words) {
    std::vector<QStringList> rows{
        {QStringLiteral("cells"),
         QStringLiteral("%1 of %2").arg(Words::count(report.cells), words.length(report.cell))},
        {QStringLiteral("soundings used"), Words::count(report.soundingsUsed)},
        {QStringLiteral("left out as spikes"), Words::count(report.spikes.size())}};
    if (report.heldOut) {
        rows.push_back({QStringLiteral("usual error at soundings kept back"),
                        words.fineDepth(units::Depth::metres(report.heldOut->median_m))});
        rows.push_back({QStringLiteral("mean error at soundings kept back"),
                        words.fineDepth(units::Depth::metres(report.heldOut->mean_m))});
    }
    rows.push_back({QStringLiteral("stiffness, along contours"),
                    QStringLiteral("%1, %2")
                        .arg(report.stiffness, 0, 'f', 0)
                        .arg(report.contourStiffness, 0, 'f', 0)});
    return rows;
}

/// What is to be seen to before the water is drawn: of the soundings as they are now where they
/// have been looked over, else of the drawing.
QStringList doubtsOf(const ViewInput& input) {
    const auto& [checked, drawn] = std::tie(input.derived.checked, input.derived.drawn);
    QStringList doubts;
    std::optional<units::Length> apart;
    if (checked && !checked->differences.empty()) {
        apart =
            units::Length::metres(std::fabs(checked->differences.front().difference.inMetres()));
    } else if (!checked && drawn) {
        apart = drawn->report.daysDiffer;
    }
    if (apart) {
        doubts += wording::daysDiffer(*apart, input.words);
    }
    if (drawn && drawn->report.daysWithoutLevel > 0) {
        doubts += wording::daysWithoutLevel(drawn->report.daysWithoutLevel);
    }
    return doubts;
}

QString stateOf(const surface::DrawReport& report, const Words& words) {
    const QString cells = QStringLiteral("cells of %1").arg(words.length(report.cell));
    return report.heldOut
               ? QStringLiteral("%1, off by %2")
                     .arg(cells, words.fineDepth(units::Depth::metres(report.heldOut->median_m)))
               : cells;
}

} // namespace

DrawingView drawingViewOf(const ViewInput& input) {
    DrawingView view;
    view.isStale = input.isStale(water::Step::draw);
    view.canDraw = !input.water.days.empty() || !input.water.leadLine.empty();
    if (input.water.settings.cell) {
        view.cell = input.words.length(*input.water.settings.cell);
    }
    view.doubts = doubtsOf(input).join('\n');
    view.level = input.words.levelChange(input.water.plan.day.levelChange);
    for (const std::string& note : input.derived.notes) {
        view.notes.push_back(QString::fromStdString(note));
    }
    if (const auto dry = input.derived.failures.find(water::Step::level);
        dry != input.derived.failures.end()) {
        view.notes.push_back(QString::fromStdString(dry->second.sentence()));
    }
    const auto& drawn = input.derived.drawn;
    if (!drawn) {
        view.state = QStringLiteral("not drawn yet");
        return view;
    }
    view.state = stateOf(drawn->report, input.words);
    if (drawn->report.daysDiffer) {
        view.state +=
            QStringLiteral(", days differ by %1")
                .arg(input.words.fineDepth(units::Depth::fromLength(*drawn->report.daysDiffer)));
    }
    view.how = howRows(drawn->report, input.words);
    using surface::TrustName;
    view.trustShare = {drawn->trust.shareOf(TrustName::sounded),
                       drawn->trust.shareOf(TrustName::inferred),
                       drawn->trust.shareOf(TrustName::guess)};
    view.trust = QStringLiteral("%1 sounded, %2 inferred, %3 a guess")
                     .arg(Words::share(view.trustShare[0]), Words::share(view.trustShare[1]),
                          Words::share(view.trustShare[2]));
    view.chosen = chosenWords(drawn->report, input.water.settings.cell.has_value(), input.words);
    if (input.derived.form) {
        const auto& today = chart::formOf(input.derived);
        view.hasToday = today->rise != input.derived.form->rise;
        view.form = formRows(input.derived.form->hypsography, today->hypsography, input.words);
        view.hypsography = hypsographyViewOf(input);
    }
    return view;
}

} // namespace days::survey_day
