// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/drawing_view.h"

#include "app/chart/todays_form.h"
#include "app/wording/survey_words.h"
#include "app/wording/tongue.h"

#include <cmath>
#include <tuple>

namespace days::survey_day {

namespace {

using wording::Words;

std::vector<QStringList> formRows(const surface::Hypsography& chart,
                                  const surface::Hypsography& today, const Words& words) {
    const auto row = [&](const QString& what, auto&& say) {
        return QStringList{what, say(chart), say(today)};
    };
    using Form = surface::Hypsography;
    return {
        row(wording::Tongue::tr("area"), [&](const Form& f) { return words.area(f.area); }),
        row(wording::Tongue::tr("volume"), [&](const Form& f) { return words.volume(f.volume); }),
        row(wording::Tongue::tr("mean depth"),
            [&](const Form& f) { return words.depth(f.meanDepth); }),
        row(wording::Tongue::tr("deepest"), [&](const Form& f) { return words.depth(f.maxDepth); }),
        // The shoreline is known at chart level only.
        {wording::Tongue::tr("bank"), words.length(chart.shoreLength), QString()},
        {wording::Tongue::tr("shore development"),
         wording::Tongue::number(chart.shoreDevelopment, 2), QString()}};
}

/// In words, how smooth the bottom is drawn; the numbers are the steps that are tried.
QString smoothingOf(double stiffness) {
    return stiffness <= 100.0    ? wording::Tongue::tr("light")
           : stiffness <= 300.0  ? wording::Tongue::tr("moderate")
           : stiffness <= 1000.0 ? wording::Tongue::tr("strong")
                                 : wording::Tongue::tr("very strong");
}

QString alongOf(double contourStiffness) {
    return contourStiffness <= 0.0 ? wording::Tongue::tr("no smoother along contours than across")
           : contourStiffness <= 10.0
               ? wording::Tongue::tr("smoother along contours than across")
               : wording::Tongue::tr("much smoother along contours than across");
}

QString chosenWords(const surface::DrawReport& report, bool isCellSet, const Words& words) {
    const QString cell =
        isCellSet
            ? wording::Tongue::tr("Cells of %1, as you set them.").arg(words.length(report.cell))
            : wording::Tongue::tr("Cells of %1, chosen from the size of the water and how close "
                                  "the soundings lie.")
                  .arg(words.length(report.cell));
    const QString smoothing =
        wording::Tongue::tr("%1 smoothing, %2")
            .arg(smoothingOf(report.stiffness), alongOf(report.contourStiffness));
    const QString capital = smoothing.left(1).toUpper() + smoothing.mid(1);
    if (!report.heldOut) {
        return wording::Tongue::tr("%1 %2: the usual, for want of soundings to try others on.")
            .arg(cell, capital);
    }
    if (report.isChoiceKept) {
        return wording::Tongue::tr(
                   "%1 %2: kept from the drawing before, for so small a change. Draw "
                   "chooses anew.")
            .arg(cell, capital);
    }
    return wording::Tongue::tr(
               "%1 %2: what foretold best the %3 soundings that were held out in turn. "
               "Half of those lay within %4 of the drawing.")
        .arg(cell, capital, Words::count(static_cast<std::size_t>(report.heldOut->soundings)),
             words.fineDepth(units::Depth::metres(report.heldOut->median_m)));
}

std::vector<QStringList> howRows(const surface::DrawReport& report, const Words& words) {
    std::vector<QStringList> rows{
        {wording::Tongue::tr("cells"),
         wording::Tongue::tr("%1 of %2")
             .arg(Words::count(report.cells), words.length(report.cell))},
        {wording::Tongue::tr("soundings used"), Words::count(report.soundingsUsed)},
        {wording::Tongue::tr("left out as spikes"), Words::count(report.spikes.size())}};
    if (report.heldOut) {
        rows.push_back({wording::Tongue::tr("usual error at soundings kept back"),
                        words.fineDepth(units::Depth::metres(report.heldOut->median_m))});
        rows.push_back({wording::Tongue::tr("mean error at soundings kept back"),
                        words.fineDepth(units::Depth::metres(report.heldOut->mean_m))});
    }
    rows.push_back({wording::Tongue::tr("stiffness, along contours"),
                    QStringLiteral("%1, %2")
                        .arg(wording::Tongue::number(report.stiffness, 0))
                        .arg(wording::Tongue::number(report.contourStiffness, 0))});
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
    const QString cells = wording::Tongue::tr("cells of %1").arg(words.length(report.cell));
    return report.heldOut
               ? wording::Tongue::tr("%1, off by %2")
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
        view.notes.push_back(wording::Tongue::ofCore(note));
    }
    if (const auto dry = input.derived.failures.find(water::Step::level);
        dry != input.derived.failures.end()) {
        view.notes.push_back(wording::Tongue::sentence(dry->second));
    }
    const auto& drawn = input.derived.drawn;
    if (!drawn) {
        view.state = wording::Tongue::tr("not drawn yet");
        return view;
    }
    view.state = stateOf(drawn->report, input.words);
    if (drawn->report.daysDiffer) {
        view.state +=
            wording::Tongue::tr(", days differ by %1")
                .arg(input.words.fineDepth(units::Depth::fromLength(*drawn->report.daysDiffer)));
    }
    view.how = howRows(drawn->report, input.words);
    using surface::TrustName;
    view.trustShare = {drawn->trust.shareOf(TrustName::sounded),
                       drawn->trust.shareOf(TrustName::inferred),
                       drawn->trust.shareOf(TrustName::guess)};
    view.trust = wording::Tongue::tr("%1 sounded, %2 inferred, %3 a guess")
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
